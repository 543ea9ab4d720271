/** Restraints on and off, and the set on its steel and off it. */
import { measure } from '#findings';
import type { Restraint, Standing, Step } from '#state';
import { isAbove } from '../limits.ts';
import { breach, unheld } from './breach.ts';
import { slackSteel } from './brick-steps.ts';
import type { Done } from './done.ts';
import { isSpanned, restraintWords } from './holds.ts';
import { type Impossible, impossible, listed } from './impossible.ts';
import { loadOf, offSteel, type Scene, shortOf, steelAt } from './scene.ts';
import type { Breach } from './verdict.ts';

type RestraintStep = Extract<Step, { readonly act: 'rig' | 'unrig' }>;
type SteelStep = Extract<Step, { readonly act: 'hangOnSteel' | 'takeOffSteel' }>;

const isSame = (one: Restraint, other: Restraint): boolean =>
  one.kind === other.kind &&
  one.resists === other.resists &&
  one.rating === other.rating &&
  one.from === other.from &&
  one.to === other.to;

/** What the register lacks of a restraint (V13), and what a choke needs (X7). */
export const registerBreaches = (scene: Scene, restraint: Restraint): readonly Breach[] => {
  const facts = { what: restraintWords(restraint) };
  return [
    ...(isSpanned(restraint) ? [] : [breach(scene, { rule: 'ORD-018', facts })]),
    ...(restraint.owner === null || restraint.tag === null
      ? [breach(scene, { rule: 'ORD-019', facts })]
      : []),
    ...(restraint.kind === 'choke' ? [breach(scene, { rule: 'ORD-037' })] : []),
  ];
};

export const handleRestraint = (scene: Scene, step: RestraintStep): Done | Impossible => {
  const { standing, physics } = scene;
  if (step.act === 'rig') {
    const restraints = [...standing.restraints, step.restraint];
    return {
      scene: { ...scene, standing: { ...standing, restraints } },
      breaches: registerBreaches(scene, step.restraint),
      proofs: [`see ${restraintWords(step.restraint)} taut and tagged at the rail`],
    };
  }
  const at = standing.restraints.findIndex((each) => isSame(each, step.restraint));
  if (at < 0) {
    const rigged = listed(standing.restraints.map(restraintWords));
    return impossible('notRigged', scene.step, restraintWords(step.restraint), rigged);
  }
  const next = {
    ...scene,
    standing: { ...standing, restraints: standing.restraints.toSpliced(at, 1) },
  };
  const short = shortOf(next, loadOf(next), physics.lockLimitN);
  return {
    scene: next,
    breaches: short === null ? [] : [unheld(next, 'ORD-020', short)],
    proofs: [],
  };
};

/** On the steel: all that hangs goes over to it. Off the steel: the steel leaves with it. */
export const handleSteel = (scene: Scene, step: SteelStep): Done | Impossible => {
  const { standing, physics } = scene;
  const wanted = step.act === 'hangOnSteel' ? 'in' : 'deadHung';
  if (standing.service !== wanted) {
    return impossible('onSteel', scene.step, standing.service, wanted);
  }
  if (step.act === 'hangOnSteel') {
    const items = Object.entries(standing.items).map(([id, phase]) => [
      id,
      phase === 'flying' ? 'heldElsewhere' : phase,
    ]);
    const next: Standing = {
      ...standing,
      service: 'deadHung',
      items: Object.fromEntries(items),
    };
    return {
      scene: { ...scene, seen: null, standing: next },
      breaches: steelBreaches(scene, 'flying'),
      proofs: ['see every steel tight and its shackle moused'],
    };
  }
  const next = { ...scene, seen: null, standing: offSteel(standing) };
  const short = shortOf(next, loadOf(next), physics.lockLimitN);
  return {
    scene: next,
    breaches: [...(short === null ? [] : [unheld(next, 'ORD-021', short)]), ...slackSteel(scene)],
    proofs: ['see the steel easing and not slack before the first shackle is opened'],
  };
};

/** The steel takes all that hangs on it, every item at its heaviest. */
export const steelBreaches = (
  scene: Scene,
  phase: 'flying' | 'heldElsewhere',
): readonly Breach[] => {
  const { standing, physics } = scene;
  const hangsN = Object.entries(standing.items)
    .filter((each) => each[1] === phase)
    .reduce((sum, [id]) => sum + physics.itemMostN(id), 0);
  const ratedN = steelAt(standing);
  if (ratedN !== null && !isAbove(hangsN, ratedN)) return [];
  return [
    breach(scene, {
      rule: 'ORD-023',
      byN: hangsN - (ratedN ?? 0),
      measured: measure(hangsN, 'force'),
      limit: measure(ratedN ?? 0, 'force'),
    }),
  ];
};
