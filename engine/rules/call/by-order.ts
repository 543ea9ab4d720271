/** A step judged as an order of work is: replayed from how the set stands now. */
import type { Refusal } from '#outcome';
import type { OrderPhysics, SetNow, Standing, Step } from '#state';
import { isSameHeight } from '../limits.ts';
import type { Breach, OrderVerdict } from '../order/verdict.ts';
import { verifyOrder } from '../order/verify-order.ts';
import { isBricks } from './call-case.ts';
import { type CallFinding, callFinding, orderFinding } from './finding.ts';

export type StepJudged = {
  readonly findings: readonly CallFinding[];
  /** How the set stands after the step; null where it cannot be replayed. */
  readonly expects: Standing | null;
};

export type Held = { readonly held: 'held' | 'unheld'; readonly rule: string | null };

type Replay = {
  readonly physics: OrderPhysics;
  readonly start: Standing;
  readonly before: readonly Step[];
};

/** What a pull on a stop has shown is forgotten with the next change of height or items. */
const FORGETS: ReadonlySet<Step['act']> = new Set([
  'fly',
  'attach',
  'takeUp',
  'rest',
  'release',
  'hangOnSteel',
  'takeOffSteel',
]);

const remembersPull = (steps: readonly Step[]): boolean => {
  const last = steps.findLastIndex(({ act }) => FORGETS.has(act));
  return steps.slice(last + 1).some(({ act }) => act === 'ease');
};

/** Bricks as they lay loose before the steps were done. */
const stockBefore = (physics: OrderPhysics, steps: readonly Step[]): OrderPhysics => ({
  ...physics,
  galleries: physics.galleries.map((gallery) => {
    const stock: Record<string, number> = { ...gallery.stock };
    for (const step of steps) {
      if (!isBricks(step) || step.gallery !== gallery.id) continue;
      const back = step.act === 'add' ? step.count : -step.count;
      stock[step.kind] = Math.max(0, (stock[step.kind] ?? 0) + back);
    }
    return { ...gallery, stock };
  }),
});

/**
 * From where a step is replayed: as the set stands, or, where a pull on a stop has shown what it
 * weighs, from where it was found, so that what the pull has shown counts.
 */
const replayOf = (set: SetNow, standing: Standing, physics: OrderPhysics): Replay => {
  const plain = { physics: lockOf(physics, set), start: standing, before: [] };
  if (set.since === null || !remembersPull(set.since.steps)) return plain;
  const { start, steps } = set.since;
  const replay = { physics: stockBefore(plain.physics, steps), start, before: steps };
  const end = verifyOrder(replay.physics, start, steps, WORST).states.at(-1);
  return end !== undefined && isSameStanding(end.standing, standing) ? replay : plain;
};

/** A lock that somebody does not trust holds nothing (V3). */
const lockOf = (physics: OrderPhysics, { lockDoubt }: Pick<SetNow, 'lockDoubt'>): OrderPhysics =>
  lockDoubt === null ? physics : { ...physics, lockLimitN: 0 };

const plates = ({ stack }: Standing): string =>
  stack
    .filter(({ tag, count }) => tag !== 'spreader' && count > 0)
    .map(({ kind, count, tag }) => `${kind} ${count} ${tag}`)
    .join(', ');

const itemsOn = ({ items }: Standing): string =>
  Object.entries(items)
    .filter(([, phase]) => phase !== 'away' && phase !== 'beside')
    .map(([id, phase]) => `${id} ${phase}`)
    .toSorted()
    .join(', ');

const isSameStanding = (one: Standing, other: Standing): boolean =>
  isSameHeight(one.height, other.height) &&
  one.service === other.service &&
  plates(one) === plates(other) &&
  itemsOn(one) === itemsOn(other);

const WORST = { doubt: 'worst', faults: 'check' } as const;
const WRITTEN = { doubt: 'none', faults: 'check' } as const;

const breachesOf = ({ broken, alsoBroken }: OrderVerdict): readonly Breach[] =>
  broken === null ? [] : [broken, ...alsoBroken];

/** The rule that a set breaks as it stands, or why it cannot be read; null where it is held. */
const startRule = (
  physics: OrderPhysics,
  standing: Standing,
  options: typeof WORST | typeof WRITTEN,
): string | null => {
  const { broken, refused } = verifyOrder(physics, standing, [], options);
  return broken?.rule ?? refused?.refusal.code ?? null;
};

type Seen = {
  readonly own: readonly Breach[];
  /** What the set breaks before the step, where the step does not mend it. */
  readonly left: string | null;
  readonly verdict: OrderVerdict;
};

const seenWith = (
  { physics, start, before }: Replay,
  standing: Standing,
  step: Step,
  options: typeof WORST | typeof WRITTEN,
): Seen => {
  const verdict = verifyOrder(physics, start, [...before, step], options);
  const own = breachesOf(verdict).filter((each) => each.step === before.length);
  const after = verdict.states.at(before.length + 1);
  // To keep people out is right whatever holds; a pull that was felt needs no second look here.
  const isMendless = step.act === 'close' || before.length > 0;
  const broken = isMendless ? null : startRule(physics, standing, options);
  const isLeft =
    broken !== null &&
    (after === undefined || startRule(physics, after.standing, options) !== null);
  return { own, left: isLeft ? broken : null, verdict };
};

const isBroken = ({ own, left }: Seen): boolean => own.length > 0 || left !== null;

/**
 * What one step breaks, every mass at its worst and every single fault tried. Where it breaks
 * nothing with the masses as they are written, that is one rule of its own: a scale or a pull
 * settles it. How the set stood before is held against no step after which it is held.
 */
export const judgeStep = (
  id: string,
  set: SetNow,
  standing: Standing,
  { step, physics }: { readonly step: Step; readonly physics: OrderPhysics },
): StepJudged => {
  const replay = replayOf(set, standing, physics);
  const worst = seenWith(replay, standing, step, WORST);
  const { refused } = worst.verdict;
  if (refused !== null) return { findings: [impossibleAs(refused.refusal)], expects: null };
  const expects = worst.verdict.states.at(-1)?.standing ?? null;
  if (!isBroken(worst)) return { findings: [], expects };
  const rule = worst.own[0]?.rule ?? worst.left ?? '';
  if (!isBroken(seenWith(replay, standing, step, WRITTEN))) {
    return { findings: [callFinding('CAL-024', { at: { set: id }, facts: { rule } })], expects };
  }
  return { findings: [...worst.own.map(asFinding), ...leftBroken(id, worst.left)], expects };
};

const asFinding = ({ rule, finding }: Breach): CallFinding => orderFinding(rule, finding);

const leftBroken = (id: string, rule: string | null): readonly CallFinding[] =>
  rule === null ? [] : [callFinding('CAL-005', { at: { set: id }, facts: { rule } })];

/** A step that cannot be replayed has the code of that refusal, and nobody can agree to it. */
const impossibleAs = ({ code, found, accepted }: Refusal): CallFinding => ({
  rule: code,
  says: `Found: ${found}. Accepted: ${accepted}.`,
  isHold: true,
  finding: null,
});

/** Steps at which the judge of an order asks whether the set is held. */
const ASKS_HOLD: ReadonlySet<Step['act']> = new Set([
  'attach',
  'takeUp',
  'rest',
  'release',
  'add',
  'remove',
  'fly',
  'unrig',
  'takeOffSteel',
]);

/** Whether it is held by what a pull has shown of it: at the last step that asked. */
const isHeldByPull = ({ physics, start, before }: Replay): boolean => {
  const asked = before.findLastIndex(({ act }) => ASKS_HOLD.has(act));
  if (asked < 0) return false;
  const verdict = verifyOrder(physics, start, before, WORST);
  return !breachesOf(verdict).some(({ step }) => step === asked);
};

/**
 * Whether the set is held as it stands (V1), and by which rule it is not. One that is held only
 * with the masses as they are written is held, and says that by CAL-024.
 */
export const heldNow = (set: SetNow, standing: Standing, physics: OrderPhysics): Held => {
  const replay = replayOf(set, standing, physics);
  const rule = startRule(lockOf(physics, set), standing, WORST);
  if (rule === null || (replay.before.length > 0 && isHeldByPull(replay))) {
    return { held: 'held', rule: null };
  }
  const written = startRule(lockOf(physics, set), standing, WRITTEN);
  return written === null ? { held: 'held', rule: 'CAL-024' } : { held: 'unheld', rule: written };
};
