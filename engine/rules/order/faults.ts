/**
 * The worst single fault after a step: what one slip of one person or one part does. It is held,
 * or nobody is in its path (the-job.md 4.5).
 */
import { measure } from '#findings';
import type { Restraint, Standing, Step } from '#state';
import { isAbove } from '../limits.ts';
import { breach, unheld } from './breach.ts';
import { gravest } from './done.ts';
import { slipEnd } from './fly-step.ts';
import { isRunClosed, largestBrickN, planningLimitN, restraintWords } from './holds.ts';
import { imbalanceOf, type Load, leaningOf, loadOf, type Scene, shortOf } from './scene.ts';
import type { Breach } from './verdict.ts';

export type FaultAnswer = {
  readonly breaches: readonly Breach[];
  /** Faults that are not held, while nobody is in their path. */
  readonly leansOnZone: boolean;
};

const NONE: FaultAnswer = { breaches: [], leansOnZone: false };

/** Steps after which nobody has a hand on the set: it is locked, and left as every set is. */
const HANDS_OFF: ReadonlySet<Step['act']> = new Set(['close', 'reopen', 'fly']);

/**
 * What a fault after a step would do. With hands on the set an item may be let go; once they are
 * off, what hangs is taken to stay clamped and moused, as over any stage. How the set stood before
 * the first step is nobody's step.
 */
export const tryFaults = (scene: Scene, act: Step['act'] | null): FaultAnswer => {
  if (scene.options.faults === 'skip' || act === null) return NONE;
  const areHandsOn = !HANDS_OFF.has(act);
  const slipped = lockSlips(scene);
  const others = [
    ...pastPlanning(scene),
    ...gravest(platesOff(scene)),
    ...gravest(itemsOff(scene)),
    ...(areHandsOn ? gravest(itemsDropped(scene)) : []),
    ...contactLost(scene),
    ...gravest(restraintsLost(scene)),
  ];
  return isRunClosed(scene.standing)
    ? { breaches: slipped, leansOnZone: others.length > 0 }
    : { breaches: [...others, ...slipped], leansOnZone: false };
};

const pastPlanning = (scene: Scene): readonly Breach[] => {
  const short = shortOf(scene, loadOf(scene), planningLimitN(scene.physics));
  return short === null ? [] : [unheld(scene, 'ORD-028', short)];
};

const shifted = ({ lowN, highN, doubt }: Load, byN: number): Load => ({
  lowN: lowN + byN,
  highN: highN + byN,
  doubt,
});

const platesOff = (scene: Scene): readonly Breach[] => {
  const brickN = largestBrickN(scene.physics);
  const cases = [
    { byN: -brickN, where: 'one brick more than was counted' },
    { byN: brickN, where: 'one brick fewer than was counted' },
  ];
  return cases.flatMap(({ byN, where }) => {
    const short = shortOf(scene, shifted(loadOf(scene), byN), scene.physics.lockLimitN);
    return short === null ? [] : [unheld(scene, 'ORD-029', short, { facts: { where } })];
  });
};

const without = (standing: Standing, id: string): Standing => ({
  ...standing,
  items: { ...standing.items, [id]: 'away' },
});

const carried = ({ items }: Standing): readonly string[] =>
  Object.keys(items).filter((id) => items[id] === 'flying' || items[id] === 'attachedResting');

/** With all masses at their worst this is held already: then no item is off by it twice. */
const itemsOff = (scene: Scene): readonly Breach[] => {
  const { physics, options, standing } = scene;
  if (options.doubt === 'worst') return [];
  const doubtN = (each: Standing): number => imbalanceOf(physics, each).doubtN;
  return carried(standing).flatMap((item) => {
    const offN = Math.max(0, doubtN(standing) - doubtN(without(standing, item)));
    const cases = [
      { byN: offN, where: 'heavier by its tolerance' },
      { byN: -offN, where: 'lighter by its tolerance' },
    ];
    return cases.flatMap(({ byN, where }) => {
      const short = shortOf(scene, shifted(loadOf(scene), byN), physics.lockLimitN);
      return short === null ? [] : [unheld(scene, 'ORD-030', short, { item, facts: { where } })];
    });
  });
};

const itemsDropped = (scene: Scene): readonly Breach[] =>
  carried(scene.standing).flatMap((item) => {
    const after = without(scene.standing, item);
    const dropped = { ...scene, standing: after, seen: null };
    const short = shortOf(dropped, loadOf(dropped), scene.physics.lockLimitN);
    return short === null ? [] : [unheld(scene, 'ORD-031', short, { item, after })];
  });

/** A foot that kicks out, or horses that go over: the batten has all that it shared. */
const contactLost = (scene: Scene): readonly Breach[] => {
  const load = loadOf(scene);
  if (!isAbove(load.highN, load.lowN) || scene.standing.service === 'deadHung') return [];
  const short = shortOf(scene, { ...load, lowN: load.highN }, scene.physics.lockLimitN);
  return short === null ? [] : [unheld(scene, 'ORD-032', short)];
};

/** Ropes that people tend. Steel, slings and stands that are made fast count as a stop does. */
const TENDED: ReadonlySet<Restraint['kind']> = new Set(['bullLine', 'winch', 'choke']);

const restraintsLost = (scene: Scene): readonly Breach[] =>
  scene.standing.restraints.flatMap((restraint, index) => {
    if (!TENDED.has(restraint.kind)) return [];
    const rest = scene.standing.restraints.toSpliced(index, 1);
    const after: Standing = { ...scene.standing, restraints: rest };
    const lost = { ...scene, standing: after };
    const short = shortOf(lost, loadOf(lost), scene.physics.lockLimitN);
    const facts = { where: restraintWords(restraint) };
    return short === null ? [] : [unheld(scene, 'ORD-033', short, { facts, after })];
  });

/**
 * The lock slips to the next stop. Within its planning limit it is taken to hold; past that nobody
 * is in its path, and the stop must still be rated for what comes to stand on it.
 */
const lockSlips = (scene: Scene): readonly Breach[] => {
  const { physics, standing } = scene;
  if (leaningOf(scene).limit !== 'nominal') return [];
  const { lowN, doubt } = loadOf(scene);
  const direction = lowN + doubt.mostN > 0 ? 'in' : 'out';
  const end = slipEnd(scene, direction);
  const stop = direction === 'in' ? physics.lowStop : physics.highStop;
  if (end === null || !isAbove(Math.abs(end.imbalanceN), stop.ratedN)) return [];
  return [
    breach(scene, {
      rule: 'ORD-034',
      byN: Math.abs(end.imbalanceN) - stop.ratedN,
      measured: measure(end.imbalanceN, 'imbalance'),
      limit: measure(stop.ratedN, 'force'),
      facts: { to: measure(end.heightM, 'length') },
      after: standing,
    }),
  ];
};
