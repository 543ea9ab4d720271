import { newtons } from '#quantities';
import type { OrderGallery, OrderPhysics, Standing } from '#state';
import { planningLockN } from '../states.ts';
import { drillSteps } from './drill-steps.ts';
import { easesOf } from './eases.ts';
import { baseLoad, pulledOnStop } from './pulls-on-stop.ts';
import { type StopLoads, stopLoad, stopLoads } from './stop-loads.ts';
import type { Drill, DrillAsked, DrillPlan, NoDrill } from './types.ts';
import { frictionMostN, hangingAll, type Weighed, weighedItems } from './weighed-items.ts';

/** Heights nearer than this are one. */
const SAME_M = 1e-6;

/**
 * The drill for masses that nobody knows (R8), on the low stop: only so many bricks as leave the
 * set batten heavy with every mass at its lightest; then a pull that, where the set stays under it,
 * proves room for one more; one more; and so on until it lifts. Two steady pulls then weigh it.
 *
 * Source  the-job.md R8, S10; procedure.md, the lift test; C25 for the two pulls
 * Holds   the set on its low stop, in use, nothing else holding it; the masses lie within their
 *         tolerances; friction is no more than the house reckons, in `frictionMostN`
 * Omits   what batten, lines, arbor and stop bear beyond the rating of the stop: others judge it
 */
export const planDrill = (physics: OrderPhysics, start: Standing, asked: DrillAsked): DrillPlan => {
  const attach = asked.items.filter((id) => start.items[id] !== 'flying');
  const wrong = wrongStart(physics, start, attach);
  if (wrong !== null) return { none: [wrong] };
  const hung = hangingAll(start, asked.items);
  const weighed = weighedItems(physics, hung);
  if ('why' in weighed) return { none: [weighed] };
  const unheld = notHeld(physics, start, hung, attach);
  if (unheld !== null) return { none: [unheld] };
  const reasons: NoDrill[] = [];
  for (const kind of asked.kinds) {
    for (const gallery of physics.galleries) {
      const answer = drillFrom({ physics, start, hung, weighed, attach, asked }, kind, gallery);
      if (!('why' in answer)) return { drill: answer };
      reasons.push(answer);
    }
  }
  if (reasons.length === 0) return { none: [{ why: 'noBricks' }] };
  // What a gallery lacks does not matter where the lock holds all of the doubt.
  const spared = reasons.find(({ why }) => why === 'notNeeded');
  return { none: spared === undefined ? reasons : [spared] };
};

const wrongStart = (
  { lowStop, itemMostN }: OrderPhysics,
  { height, service, restraints, items }: Standing,
  attach: readonly string[],
): NoDrill | null => {
  if (service !== 'in') return { why: 'outOfUse' };
  if (Math.abs(height - lowStop.heightM) > SAME_M) return { why: 'notOnLowStop' };
  if (restraints.length > 0) return { why: 'restrained' };
  const unheard = attach.find((id) => !(itemMostN(id) > 0));
  if (unheard !== undefined) return { why: 'notOfSet', item: unheard };
  const phases = Object.entries(items);
  const resting = phases.find(([, phase]) => phase.startsWith('attached'));
  const elsewhere = phases.find(([id, phase]) => phase === 'heldElsewhere' && attach.includes(id));
  const [item] = resting ?? elsewhere ?? [];
  return item === undefined ? null : { why: 'notHanging', item };
};

/** Before and after all hangs, with no brick of the drill on. */
const notHeld = (
  physics: OrderPhysics,
  start: Standing,
  hung: Standing,
  attach: readonly string[],
): NoDrill | null => {
  const [before, after] = [stopLoad(physics, start), stopLoad(physics, hung)];
  // Riggers are at the batten while an item goes on, and one item may drop again.
  const leastN = before.listedN - before.doubtN + planningLockN(physics);
  if (attach.length > 0 && leastN < 0) return { why: 'arborHeavy', byN: newtons(-leastN) };
  const lightestN = after.listedN - after.doubtN;
  if (lightestN < 0) return { why: 'arborHeavy', byN: newtons(-lightestN) };
  const mostN = after.listedN + after.doubtN;
  const { ratedN } = physics.lowStop;
  return mostN > ratedN
    ? { why: 'stopNotRated', mostN: newtons(mostN), ratedN: newtons(ratedN) }
    : null;
};

type Case = {
  readonly physics: OrderPhysics;
  readonly start: Standing;
  readonly hung: Standing;
  readonly weighed: Weighed;
  readonly attach: readonly string[];
  readonly asked: DrillAsked;
};

const drillFrom = (the: Case, kind: string, gallery: OrderGallery): Drill | NoDrill => {
  const { physics, start, hung, weighed, attach, asked } = the;
  const from = { kind, gallery: gallery.id };
  const stops = stopLoads(physics, hung, { kind, gallery });
  const { loads } = stops;
  const frictionN = frictionMostN(physics, hung);
  const pulled = pulledOnStop(loads, { ...asked, frictionN });
  const doubtN = (loads[baseLoad(loads)] ?? loads[0]).doubtN + weighed.laterN;
  if (!asked.anyway && doubtN <= physics.lockLimitN) {
    return { why: 'notNeeded', doubtN: newtons(doubtN), lockN: newtons(physics.lockLimitN) };
  }
  if (pulled === null) return tooFew(stops, from);
  const { base, most, callN } = pulled;
  if (callN > physics.handsSteadyN) {
    const [pull, hands] = [newtons(callN), newtons(physics.handsSteadyN)];
    return { why: 'pulledTooHard', pull, hands, ...from };
  }
  const { steps, easeAt } = drillSteps(physics, start, { from, pulled, attach });
  return {
    ...from,
    steps,
    baseBricks: base,
    mostBricks: most,
    pull: newtons(callN),
    frictionN: newtons(frictionN),
    doubtN: newtons(doubtN),
    eases: withSteps(easesOf(loads, pulled, { frictionN, weighed }), easeAt),
    weighs: weighed.items,
  };
};

const withSteps = (eases: ReturnType<typeof easesOf>, easeAt: readonly number[]): Drill['eases'] =>
  eases.flatMap((ease, index) => {
    const step = easeAt[index];
    return step === undefined ? [] : [{ step, ...ease }];
  });

const tooFew = (
  { loads, limit }: StopLoads,
  from: { readonly kind: string; readonly gallery: string },
): NoDrill => ({ why: 'tooFewBricks', fit: loads.length - 1, limit, ...from });
