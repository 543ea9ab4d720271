/** The lift test: on a stop, unlocked, pulled by hand towards leaving it, an inch at most. */
import { measure } from '#findings';
import type { Step } from '#state';
import { isAbove, isBelow, isSameHeight } from '../limits.ts';
import { breach } from './breach.ts';
import type { Done } from './done.ts';
import { isRunClosed } from './holds.ts';
import { type Impossible, impossible } from './impossible.ts';
import { boundsOf, type Doubt, imbalanceOf, loadOf, type Scene } from './scene.ts';
import type { Breach } from './verdict.ts';

type EaseStep = Extract<Step, { readonly act: 'ease' }>;

/** On the high stop all signs turn over: leaving it is going in. */
type Stop = { readonly sign: 1 | -1; readonly ratedN: number };

const stopOf = ({ physics, standing }: Scene): Stop | null => {
  if (isSameHeight(standing.height, physics.lowStop.heightM)) {
    return { sign: 1, ratedN: physics.lowStop.ratedN };
  }
  return isSameHeight(standing.height, physics.highStop.heightM)
    ? { sign: -1, ratedN: physics.highStop.ratedN }
    : null;
};

export const handleEase = (scene: Scene, step: EaseStep): Done | Impossible => {
  if (!Number.isFinite(step.pull) || step.pull < 0) {
    return impossible('badPull', scene.step, String(step.pull), 'a force of zero or more, N');
  }
  const stop = stopOf(scene);
  const wrong = stop === null ? 'which is no stop' : whyNot(scene, step, stop);
  const bad = [
    ...(isRunClosed(scene.standing) ? [] : [breach(scene, { rule: 'ORD-012' })]),
    ...(wrong === null ? [] : [breach(scene, { rule: 'ORD-026', facts: { where: wrong } })]),
  ];
  if (stop === null || scene.options.doubt === 'none') {
    return { scene, breaches: bad, proofs: [] };
  }
  const seen = seenBy(scene, step, stop);
  const contradicted = isAbove(seen.leastN, seen.mostN);
  return {
    scene: { ...scene, seen: contradicted ? scene.seen : seen },
    breaches: [...bad, ...(contradicted ? [contradiction(scene, step)] : [])],
    proofs: ['two steady pulls with a gauge, out and in, before it is flown'],
  };
};

/** Why it may not be eased: past what holds it either way, or past what hands may pull. */
const whyNot = (scene: Scene, { pull }: EaseStep, { sign, ratedN }: Stop): string | null => {
  const { lowN, highN, doubt } = loadOf(scene);
  const mostN = sign > 0 ? lowN + doubt.mostN : -(highN + doubt.leastN);
  const leastN = sign > 0 ? highN + doubt.leastN : -(lowN + doubt.mostN);
  if (isAbove(mostN, ratedN)) return 'with more on the stop than it is rated for';
  if (isBelow(leastN, 0)) return 'where it may leave the stop by itself';
  if (isAbove(pull, scene.physics.handsBriefN)) return 'with more than hands may pull';
  return null;
};

/**
 * What a pull away from the stop says of the imbalance, as bounds on its distance from the list.
 *
 *     it stayed under pull P:  |U| ≥ P − f        it left under pull P:  |U| ≤ P
 *
 *     f  N  friction at most: it helps the set to stay. When it left, friction was against the
 *           pull too, and a bound that leaves it out is the wider one.
 *
 * Source  statics of the hand line, procedure.md: the lift test
 */
const seenBy = (scene: Scene, { pull, lifted }: EaseStep, { sign }: Stop): Doubt => {
  const { physics, standing } = scene;
  const { lowN, highN, doubtN } = imbalanceOf(physics, standing);
  const had = boundsOf(doubtN, scene.seen);
  const stayedN = pull - frictionMostN(scene);
  if (sign > 0) {
    return lifted
      ? { ...had, mostN: Math.min(had.mostN, pull - highN) }
      : { ...had, leastN: Math.max(had.leastN, stayedN - highN) };
  }
  return lifted
    ? { ...had, leastN: Math.max(had.leastN, -pull - lowN) }
    : { ...had, mostN: Math.min(had.mostN, -stayedN - lowN) };
};

/**
 * The house reckons friction as a share of what hangs and a constant. What may be heavier than it
 * is listed may rub more, and so stay under a harder pull.
 */
const frictionMostN = ({ physics, standing: { items } }: Scene): number => {
  const hung = Object.keys(items).filter((id) => items[id] === 'flying');
  const most = hung.reduce((sum, id) => sum + physics.itemMostN(id), 0);
  const least = hung.reduce((sum, id) => sum + physics.itemLeastN(id), 0);
  const frictionN = physics.frictionN(items);
  if (!isAbove(most + least, 0)) return frictionN;
  const share = (frictionN - physics.frictionN({})) / ((most + least) / 2);
  return frictionN + (share * (most - least)) / 2;
};

const contradiction = (scene: Scene, { pull, lifted }: EaseStep): Breach =>
  breach(scene, {
    rule: 'ORD-027',
    measured: measure(imbalanceOf(scene.physics, scene.standing).highN, 'imbalance'),
    limit: measure(pull, 'force'),
    facts: { where: lifted ? 'it left the stop under' : 'it stayed under' },
  });
