/**
 * What is truly so in a drill, beside what the record has: what hands really did, whether the set
 * is truly held after it, and what it sets free where it is not.
 */
import { setFreeAt } from '#assessment';
import type { Refusal } from '#outcome';
import { type Breach, type OrderOptions, verifyOrder } from '#rules';
import type { OrderPhysics, Standing, Step } from '#state';
import { isBrickStep } from './plates.ts';

/** What an instructor plants; steps are counted from 0. */
export type DrillFault =
  /** So many bricks more, or fewer, than are counted aloud. */
  | { readonly is: 'miscount'; readonly step: number; readonly by: number }
  /** A restraint that is told to be on, or off, and is not. */
  | { readonly is: 'forgotten'; readonly step: number }
  /** A piece that is told to be tied on, and is not. */
  | { readonly is: 'unclipped'; readonly step: number }
  /** This step and the next are done the wrong way round. */
  | { readonly is: 'wrongOrder'; readonly step: number };

/** Work that can be done the wrong way round: of a zone nobody is deceived for long. */
const isWork = (step: Step | undefined): step is Step =>
  step !== undefined && step.act !== 'close' && step.act !== 'reopen';

const isSwapped = (one: Step | undefined, other: Step | undefined): boolean =>
  isWork(one) && isWork(other) && one.act !== other.act;

/** Every fault that can be planted in an order. */
export const faultsOf = (steps: readonly Step[]): readonly DrillFault[] =>
  steps.flatMap((step, at): readonly DrillFault[] => {
    const swapped: readonly DrillFault[] = isSwapped(step, steps[at + 1])
      ? [{ is: 'wrongOrder', step: at }]
      : [];
    if (isBrickStep(step)) {
      const fewer = step.count > 1 ? [-2, -1] : [-1];
      return [
        ...[...fewer, 1, 2].map((by) => ({ is: 'miscount', step: at, by }) as const),
        ...swapped,
      ];
    }
    if (step.act === 'rig' || step.act === 'unrig') {
      return [{ is: 'forgotten', step: at }, ...swapped];
    }
    return step.act === 'attach' ? [{ is: 'unclipped', step: at }, ...swapped] : swapped;
  });

/** What hands do when the step of this number is told done. */
export const reallyDone = (
  steps: readonly Step[],
  at: number,
  fault: DrillFault | null,
): readonly Step[] => {
  const step = steps[at];
  if (step === undefined) return [];
  if (fault?.is === 'wrongOrder' && (fault.step === at || fault.step === at - 1)) {
    const other = steps[fault.step === at ? at + 1 : at - 1];
    return other === undefined ? [] : [other];
  }
  if (fault?.step !== at || fault.is === 'wrongOrder') return [step];
  if (fault.is !== 'miscount') return [];
  const count = isBrickStep(step) ? Math.max(0, step.count + fault.by) : 0;
  return isBrickStep(step) && count > 0 ? [{ ...step, count }] : [];
};

/** As things are, and not as a judge doubts them: masses as written, and no fault but this one. */
const AS_IT_IS = { doubt: 'none', faults: 'skip' } as const satisfies OrderOptions;
/** As the rules judge it: one brick miscounted, one piece dropped, on top of all. */
const AS_JUDGED = { doubt: 'none', faults: 'check' } as const satisfies OrderOptions;

/** Rules by which nothing holds a set: the others are about people, reach and registers. */
const LETS_GO: ReadonlySet<string> = new Set([
  ...['ORD-001', 'ORD-002', 'ORD-003', 'ORD-004', 'ORD-005', 'ORD-006', 'ORD-007', 'ORD-008'],
  ...['ORD-010', 'ORD-020', 'ORD-021', 'ORD-022', 'ORD-026', 'ORD-038'],
]);

/** A set that nothing held. */
export type RanAway = {
  readonly rule: string;
  readonly says: string;
  readonly energyJ: number;
  readonly way: 'in' | 'out' | null;
  readonly fromM: number;
  readonly endM: number;
};

export type WorldAfter = {
  readonly truth: Standing;
  readonly ran: RanAway | null;
  /** What the rules would say of it, if the record had it so. */
  readonly broken: { readonly rule: string; readonly says: string } | null;
  /** Hands found that it cannot be done; null where it was done. */
  readonly cannot: Pick<Refusal, 'found' | 'accepted'> | null;
};

/** However many bricks the world has: a gallery is never the first to know. */
const withBricks = (physics: OrderPhysics): OrderPhysics => ({
  ...physics,
  galleries: physics.galleries.map((gallery) => ({
    ...gallery,
    stock: Object.fromEntries(physics.bricks.map(({ id }) => [id, MANY])),
  })),
});
const MANY = 10_000;

const breachesOf = (broken: Breach | null, alsoBroken: readonly Breach[]): readonly Breach[] =>
  broken === null ? [] : [broken, ...alsoBroken];

/** Under this much a set that nothing holds creeps, and a hand feels it: J. */
const CREEPS_J = 1;

const ranFrom = (
  physics: OrderPhysics,
  standings: readonly Standing[],
  { rule, says, where }: Breach,
): RanAway | null => {
  const [free] = standings
    .map((standing) => setFreeAt(physics, { ...standing, height: where }))
    .toSorted((one, other) => other.energy - one.energy);
  if (free === undefined || free.energy < CREEPS_J) return null;
  return { rule, says, energyJ: free.energy, way: free.way, fromM: where, endM: free.end };
};

/**
 * The world after hands did something. Where nothing holds it then, it runs: from where the rule
 * breaks, to where it would come to rest.
 *
 * Source  `verifyOrder` of the true standing; `setFreeAt`
 * Omits   friction, and what a crew does on seeing it begin to run (each makes it less)
 */
export const worldAfter = (
  physics: OrderPhysics,
  truth: Standing,
  done: readonly Step[],
): WorldAfter => {
  const wide = withBricks(physics);
  const { states, broken, alsoBroken, refused } = verifyOrder(wide, truth, done, AS_IT_IS);
  const after = states.at(-1)?.standing ?? truth;
  const ran = breachesOf(broken, alsoBroken)
    .filter(({ rule }) => LETS_GO.has(rule))
    .flatMap((breach) => ranFrom(wide, [truth, after], breach) ?? []);
  const judged = verifyOrder(wide, truth, done, AS_JUDGED).broken;
  return {
    truth: after,
    ran: ran.toSorted((one, other) => other.energyJ - one.energyJ)[0] ?? null,
    broken: judged === null ? null : { rule: judged.rule, says: judged.says },
    cannot: refused === null ? null : refused.refusal,
  };
};
