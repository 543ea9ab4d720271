/** The judge of an order of work on one set: replays it with code of its own, step by step. */
import { unreachable } from '#outcome';
import type { OrderPhysics, Standing, Step } from '#state';
import { ruleOf } from '../declared.ts';
import { breach, unheld } from './breach.ts';
import { handleBricks } from './brick-steps.ts';
import { type Done, saidOnce } from './done.ts';
import { handleEase } from './ease-step.ts';
import { tryFaults } from './faults.ts';
import { handleFly, isOnTravel, travelWords } from './fly-step.ts';
import { isRunClosed } from './holds.ts';
import { type Impossible, impossible, isImpossible, listed } from './impossible.ts';
import { handleItem, isOfSet } from './item-steps.ts';
import {
  handleRestraint,
  handleSteel,
  registerBreaches,
  steelBreaches,
} from './restraint-steps.ts';
import { imbalanceOf, leaningOf, loadOf, type Scene, shortOf } from './scene.ts';
import type { Breach, OrderOptions, OrderState, OrderVerdict, ProofDue } from './verdict.ts';

/**
 * Replays an order on one set and says what it breaks first, where and by how much. It searches
 * for nothing, adds no restraints up, and never throws for an order that makes no sense.
 *
 * Source  the-job.md 4.2 to 4.6: V1, V3, V5, V8, V10, V13, V14 in part, R1 to R9, X2 to X8
 * Omits   what one set does not show: neighbours, coupled sets, other galleries at work, keep-outs
 *         (V6, V7, V9, V11, R10); speed; limits of batten, lines and beams on the way (V14)
 */
export const verifyOrder = (
  physics: OrderPhysics,
  start: Standing,
  steps: readonly Step[],
  options: OrderOptions,
): OrderVerdict => {
  const stock = Object.fromEntries(physics.galleries.map((each) => [each.id, each.stock]));
  const first: Scene = { physics, options, step: -1, standing: start, stock, seen: null };
  const unread = unreadable(first);
  if (unread !== null) return verdictOf({ ...EMPTY, refused: { step: -1, ...unread } });
  let log = logged(EMPTY, startOf(first));
  let scene = first;
  for (const [index, step] of steps.entries()) {
    const before = { ...scene, step: index };
    const done = handle(before, step);
    if (isImpossible(done)) return verdictOf({ ...log, refused: { step: index, ...done } });
    log = logged(log, judged(before, step, done));
    scene = done.scene;
  }
  return verdictOf(log);
};

type Log = {
  readonly states: readonly OrderState[];
  readonly breaches: readonly Breach[];
  readonly proofsDue: readonly ProofDue[];
  readonly assumed: readonly string[];
  readonly refused: OrderVerdict['refused'];
};

const EMPTY: Log = { states: [], breaches: [], proofsDue: [], assumed: [], refused: null };

type Judged = Done & { readonly assumed: readonly string[] };

/** Nothing is replayed from a start that speaks of things the set does not have. */
const unreadable = (scene: Scene): Impossible | null => {
  const { physics, standing } = scene;
  if (!isOnTravel(scene, standing.height)) {
    return impossible('offTravel', -1, `${standing.height} m`, travelWords(scene));
  }
  const kinds = physics.bricks.map(({ id }) => id);
  const plates = standing.stack.filter(({ tag }) => tag !== 'spreader');
  const strange = plates.find(({ kind }) => !kinds.includes(kind));
  if (strange !== undefined) return impossible('unknownKind', -1, strange.kind, listed(kinds));
  const uncounted = plates.find(({ count }) => !Number.isInteger(count) || count < 0);
  if (uncounted !== undefined) {
    return impossible('badCount', -1, String(uncounted.count), 'a whole number');
  }
  const item = Object.keys(standing.items).find(
    (id) => !isOfSet(physics, { ...standing, items: {} }, id),
  );
  return item === undefined
    ? null
    : impossible('unknownItem', -1, item, `an item of set ${physics.set}`);
};

const startOf = (scene: Scene): Judged => {
  const short = shortOf(scene, loadOf(scene), scene.physics.lockLimitN);
  const done: Done = {
    scene,
    breaches: [
      ...scene.standing.restraints.flatMap((each) => registerBreaches(scene, each)),
      ...(scene.standing.service === 'deadHung' ? steelBreaches(scene, 'heldElsewhere') : []),
      ...(short === null ? [] : [unheld(scene, 'ORD-001', short)]),
    ],
    proofs: [],
  };
  return withFaults(done, { isHeld: short === null, act: null });
};

/** What the step broke itself, and what a fault after it would do. */
const judged = (before: Scene, step: Step, done: Done): Judged => {
  const { physics } = before;
  const isHeld = shortOf(done.scene, loadOf(done.scene), physics.lockLimitN) === null;
  const breaches = [
    ...serviceBreaches(before, step),
    ...done.breaches,
    ...handsInZone(done.scene, step),
  ];
  return withFaults({ ...done, breaches }, { isHeld, act: step.act });
};

const withFaults = (
  done: Done,
  { isHeld, act }: { readonly isHeld: boolean; readonly act: Step['act'] | null },
): Judged => {
  const { breaches, leansOnZone } = isHeld
    ? tryFaults(done.scene, act)
    : { breaches: [], leansOnZone: false };
  return {
    ...done,
    breaches: [...done.breaches, ...breaches],
    assumed: [
      ...(leansOnZone ? ['the closed zone is empty: a single fault would run through it'] : []),
      ...assumptionsOf(done.scene),
    ],
  };
};

const assumptionsOf = (scene: Scene): readonly string[] => {
  const { standing, physics } = scene;
  const { lowN, highN } = imbalanceOf(physics, standing);
  const { limit } = leaningOf(scene);
  return [
    ...(limit === null ? [] : ['the lock grips what its limit says, and its rope is dry']),
    ...(Object.values(standing.items).includes('attachedSlack')
      ? ['slack picks are long enough up to the working height, and watched as the set moves']
      : []),
    ...(highN > lowN ? ['what a piece rests on is rated, stands firm and is manned'] : []),
    ...(scene.seen === null
      ? []
      : ['friction is no more than the house reckons, where a pull moved nothing']),
    ...(standing.restraints.some(({ kind }) => kind === 'bullLine')
      ? ['the bull line runs through a device that holds by itself, and hauls']
      : []),
  ];
};

const handle = (scene: Scene, step: Step): Done | Impossible => {
  switch (step.act) {
    case 'attach':
    case 'takeUp':
    case 'rest':
    case 'release':
      return handleItem(scene, step);
    case 'add':
    case 'remove':
      return handleBricks(scene, step);
    case 'fly':
      return handleFly(scene, step);
    case 'rig':
    case 'unrig':
      return handleRestraint(scene, step);
    case 'hangOnSteel':
    case 'takeOffSteel':
      return handleSteel(scene, step);
    case 'close':
    case 'reopen':
      return handleZone(scene, step);
    case 'ease':
      return handleEase(scene, step);
    default:
      return unreachable(step);
  }
};

type ZoneStep = Extract<Step, { readonly act: 'close' | 'reopen' }>;

/** A zone that is closed twice is closed; one that is opened twice is open. */
const handleZone = (scene: Scene, { act, zone }: ZoneStep): Done | Impossible => {
  const { physics, standing } = scene;
  const galleries = physics.galleries.map(({ id }) => id);
  if (zone.zone === 'drop' && !galleries.includes(zone.gallery)) {
    return impossible('unknownGallery', scene.step, zone.gallery, listed(galleries));
  }
  const others = standing.closed.filter(
    (each) =>
      each.zone !== zone.zone ||
      (each.zone === 'drop' && zone.zone === 'drop' && each.gallery !== zone.gallery),
  );
  const closed = act === 'close' ? [...others, zone] : others;
  return {
    scene: { ...scene, standing: { ...standing, closed } },
    breaches: [],
    proofs: act === 'close' ? ['the marshal says: clear'] : [],
  };
};

const SERVICE_WORDS = { paused: 'paused', lockedOut: 'locked out', deadHung: 'hung on steel' };

/** A set out of use does not change; one on steel keeps its height and what hangs on it. */
const serviceBreaches = (scene: Scene, { act }: Step): readonly Breach[] => {
  const { service } = scene.standing;
  if (service === 'in' || act === 'close' || act === 'reopen') return [];
  const isMoved = act === 'fly' || act === 'ease';
  const isHung = act === 'attach' || act === 'release' || act === 'takeUp' || act === 'rest';
  if (service === 'deadHung' && !isMoved && !isHung) return [];
  return [breach(scene, { rule: 'ORD-024', facts: { what: SERVICE_WORDS[service] } })];
};

/** Riggers have to be at the batten; a zone that counts as empty is then not. */
const handsInZone = (scene: Scene, { act }: Step): readonly Breach[] => {
  const isAtBatten = act === 'attach' || act === 'release' || act === 'takeUp' || act === 'rest';
  return isAtBatten && isRunClosed(scene.standing) ? [breach(scene, { rule: 'ORD-035' })] : [];
};

const stateOf = (scene: Scene): OrderState => {
  const { physics, standing, options } = scene;
  return {
    standing,
    imbalance: imbalanceOf(physics, standing),
    ...leaningOf(scene),
    releasableJ: options.releasableJ === undefined ? null : options.releasableJ(standing),
  };
};

const logged = (log: Log, { scene, breaches, proofs, assumed }: Judged): Log => ({
  states: [...log.states, stateOf(scene)],
  breaches: [...log.breaches, ...breaches],
  proofsDue: [...log.proofsDue, ...proofs.map((proof) => ({ step: scene.step, proof }))],
  assumed: [...new Set([...log.assumed, ...assumed])],
  refused: null,
});

/** Cautions apart from what stops: a rule has one level, and it says which. */
const verdictOf = ({ breaches, ...log }: Log): OrderVerdict => {
  const isCaution = ({ rule }: Breach): boolean => ruleOf(rule)?.levels[0] === 'caution';
  const stops = breaches.filter((each) => !isCaution(each));
  return {
    states: log.states,
    broken: stops[0] ?? null,
    alsoBroken: stops.slice(1),
    cautions: saidOnce(breaches.filter(isCaution)),
    refused: log.refused,
    assumed: log.assumed,
    proofsDue: log.proofsDue,
  };
};
