/** What is asked of a judge of an order for two coupled sets, and what the judge answers. */
import type { Refusal } from '#outcome';
import type { Metres, Newtons } from '#quantities';
import type { OrderPhysics, Standing } from '#state';
import type { Breach, OrderVerdict, ProofDue } from '../verdict.ts';

type SetToJudge = { readonly physics: OrderPhysics; readonly start: Standing };

export type PairToJudge = {
  readonly first: SetToJudge;
  readonly second: SetToJudge;
  /** One piece on two sets, by the name that its share has on each. */
  readonly shared: readonly { readonly first: string; readonly second: string }[];
  /** Height of the second batten over the first while a piece is on both, m. */
  readonly band: { readonly leastM: number; readonly mostM: number };
};

/** One set of the two, and the other one. */
export type Side = 'first' | 'second';
export const SIDES: readonly Side[] = ['first', 'second'];
export const otherOf = (side: Side): Side => (side === 'first' ? 'second' : 'first');

/**
 * What one set would have if one of the two stopped and the other went on: all of the pieces that
 * they share, or nothing of them. The imbalance is the largest on the way.
 */
export type OneStops = {
  readonly step: number;
  readonly set: string;
  readonly all: { readonly imbalance: Newtons; readonly at: Metres };
  readonly nothing: { readonly imbalance: Newtons; readonly at: Metres };
  /** How far one may fall behind the other before the band is left. */
  readonly lag: Metres;
};

export type PairVerdict = {
  /** Each set alone, its steps counted by themselves: zones and common flights are of both. */
  readonly sets: Readonly<Record<Side, OrderVerdict>>;
  /** All rules of both and of the pair, by the steps of the pair. */
  readonly broken: Breach | null;
  readonly alsoBroken: readonly Breach[];
  readonly cautions: readonly Breach[];
  readonly refused: { readonly step: number; readonly refusal: Refusal } | null;
  readonly assumed: readonly string[];
  readonly oneStops: readonly OneStops[];
  readonly proofsDue: readonly ProofDue[];
};
