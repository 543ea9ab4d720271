/** An order on a set of plain numbers as the judge saw it, and that as an answer. */
import { type SetFree, setFreeAt } from '#assessment';
import type { Finding } from '#findings';
import { type Breach, type OrderState, type OrderVerdict, ruleOf, verifyOrder } from '#rules';
import type { OrderPhysics, Standing, Step } from '#state';
import type { Asked } from './asked.ts';
import { physicsOf, standingOf } from './plain-set.ts';

/** The order with what the words of a step need beside it. */
export type Replayed = {
  readonly physics: OrderPhysics;
  readonly start: Standing;
  readonly steps: readonly Step[];
  readonly checked: { readonly doubt: 'worst' | 'none'; readonly faults: 'check' | 'skip' };
  readonly verdict: OrderVerdict;
};

export const replayed = (
  { set, start: plain, doubt, lock }: Asked,
  steps: readonly Step[],
): Replayed => {
  const physics = physicsOf(set);
  const start = standingOf(plain);
  const checked = { doubt, faults: lock === 'planning' ? 'check' : 'skip' } as const;
  const releasableJ = (standing: Standing): number => setFreeAt(physics, standing).energy;
  const verdict = verifyOrder(physics, start, steps, { ...checked, releasableJ });
  return { physics, start, steps, checked, verdict };
};

/** How the set stands at first, and after each step. N at the batten, batten heavy positive. */
export type StateAnswer = {
  readonly standing: Standing;
  /**
   * Contact that the set may choose in, and half width of what nature has chosen in; null where
   * masses are taken as they are written, whatever they may be off by.
   */
  readonly imbalance: {
    readonly low: number;
    readonly high: number;
    readonly doubt: number | null;
  };
  /** The largest single hold each way. */
  readonly holds: { readonly in: number; readonly out: number };
  readonly heldBy: string;
  readonly limit: 'planning' | 'nominal' | null;
  /** What it would set free, if all that holds it gave way at once. */
  readonly free: SetFree;
};

export type BreachAnswer = {
  readonly rule: string;
  readonly cites: string | null;
  readonly says: string;
  /** Counted from 0; −1 is how the set stands before the first. */
  readonly step: number;
  readonly height: number;
  readonly by: number | null;
  readonly energy: number | null;
  readonly finding: Finding;
};

export type VerdictAnswer = {
  readonly accepted: boolean;
  readonly broken: BreachAnswer | null;
  readonly alsoBroken: readonly BreachAnswer[];
  readonly cautions: readonly BreachAnswer[];
  readonly assumed: readonly string[];
  readonly proofsDue: OrderVerdict['proofsDue'];
};

const isDoubtAsked = ({ checked: { doubt, faults } }: Replayed): boolean =>
  doubt === 'worst' || faults === 'check';

export const statesOf = (order: Replayed): readonly StateAnswer[] =>
  order.verdict.states.map(
    ({ standing, imbalance, holdInN, holdOutN, heldBy, limit }: OrderState) => ({
      standing,
      imbalance: {
        low: imbalance.lowN,
        high: imbalance.highN,
        doubt: isDoubtAsked(order) ? imbalance.doubtN : null,
      },
      holds: { in: holdInN, out: holdOutN },
      heldBy,
      limit,
      free: setFreeAt(order.physics, standing),
    }),
  );

export const verdictOf = ({ verdict }: Replayed): VerdictAnswer => {
  const { broken, alsoBroken, cautions, refused, assumed, proofsDue } = verdict;
  return {
    accepted: broken === null && refused === null,
    broken: broken === null ? null : breachOf(broken),
    alsoBroken: alsoBroken.map(breachOf),
    cautions: cautions.map(breachOf),
    assumed,
    proofsDue,
  };
};

const breachOf = ({
  rule,
  step,
  where,
  byN,
  says,
  releasableJ,
  finding,
}: Breach): BreachAnswer => ({
  rule,
  cites: ruleOf(rule)?.cites ?? null,
  says,
  step,
  height: where,
  by: byN,
  energy: releasableJ,
  finding,
});
