/** What is asked of a judge of an order, and what the judge answers. */
import type { Finding } from '#findings';
import type { Refusal } from '#outcome';
import type { Metres } from '#quantities';
import type { Standing } from '#state';
import type { OrderRuleCode } from './rule-codes.ts';

export type OrderOptions = {
  /** Every mass at its worst, or every mass as listed. */
  readonly doubt: 'worst' | 'none';
  /** With `skip` the lock counts for its nominal limit everywhere, and no fault is tried. */
  readonly faults: 'check' | 'skip';
  /** Energy that a standing would set free, J; where it is absent no energy is given. */
  readonly releasableJ?: (standing: Standing) => number;
};

/** One rule that one step breaks. */
export type Breach = {
  readonly rule: OrderRuleCode;
  /** Counted from 0; −1 is how the set stands before the first step. */
  readonly step: number;
  /** Height of the batten where it breaks, m. */
  readonly where: Metres;
  /** How far past its limit, N; null where the rule has no limit in newtons. */
  readonly byN: number | null;
  /** The rule in plain words; `finding` has the sentence with its numbers. */
  readonly says: string;
  /** What the set would set free there, J; null where it was not reckoned. */
  readonly releasableJ: number | null;
  readonly finding: Finding;
};

export type OrderState = {
  readonly standing: Standing;
  readonly imbalance: {
    readonly lowN: number;
    readonly highN: number;
    readonly doubtN: number;
  };
  /** Largest single hold against the batten coming in and going out; never a sum. */
  readonly holdInN: number;
  readonly holdOutN: number;
  readonly heldBy: string;
  /** Which limit of the lock this state leans on; null where it leans on no lock. */
  readonly limit: 'planning' | 'nominal' | null;
  readonly releasableJ: number | null;
};

/** A proof on the floor that no list replaces. Step −1 is before the first. */
export type ProofDue = { readonly step: number; readonly proof: string };

export type OrderVerdict = {
  /** The start, then one after each step that could be replayed. */
  readonly states: readonly OrderState[];
  readonly broken: Breach | null;
  readonly alsoBroken: readonly Breach[];
  readonly cautions: readonly Breach[];
  /** The step that cannot be replayed, where there is one; the replay ends before it. */
  readonly refused: { readonly step: number; readonly refusal: Refusal } | null;
  readonly assumed: readonly string[];
  readonly proofsDue: readonly ProofDue[];
};
