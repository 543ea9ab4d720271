import { type Newtons, newtons } from '#quantities';
import type { BalanceSet } from './balance-set.ts';
import { type MixResult, mixForSet } from './bricks/mix-for-set.ts';
import type { BrickStock, SpreaderPlates } from './bricks/problem.ts';
import { loomTooShort } from './carried-mass.ts';
import { balanceCurve, type Equilibrium, extremesOf, slopeAt } from './curve.ts';
import {
  contactInterval,
  type ImbalanceParts,
  imbalanceAt,
  imbalanceBelow,
  imbalanceParts,
  imbalanceUncertainty,
} from './imbalance.ts';
import { correctedMass, handLinePulls, pullTest } from './pulls.ts';

/** Everything that `compute balance` says of one set. N at the batten, positive batten heavy. */
export type BalanceAnswer = {
  readonly imbalance: readonly Newtons[];
  readonly jumps: readonly {
    readonly height: number;
    readonly below: Newtons;
    readonly above: Newtons;
  }[];
  /** At each height, what deck and batten may share where a piece rests with taut picks. */
  readonly contact: readonly { readonly low: Newtons; readonly high: Newtons }[];
  /** Half width with every uncertainty at its worst. */
  readonly uncertainty: readonly Newtons[];
  readonly parts: readonly ImbalanceParts[];
  /** N per m; below zero the set runs away from where it is. */
  readonly slope: readonly (number | null)[];
  readonly equilibria: readonly Equilibrium[];
  readonly least: { readonly height: number; readonly imbalance: Newtons };
  readonly most: { readonly height: number; readonly imbalance: Newtons };
  /** Steady hand-line pulls, where friction is given. */
  readonly pulls?: readonly { readonly out: Newtons; readonly in: Newtons }[];
  /** Heights asked for that a loom does not reach. */
  readonly loomTooShort: readonly number[];
};

/**
 * The balance of one set at the heights asked for, and over its whole travel.
 *
 * Source  imbalance.ts, curve.ts, pulls.ts
 */
export const answerBalance = (
  set: BalanceSet,
  asked: {
    readonly heights: readonly number[];
    readonly friction?: number;
    readonly handLinePerBatten?: number;
  },
): BalanceAnswer => {
  const { heights, friction, handLinePerBatten = 1 } = asked;
  const curve = balanceCurve(set);
  const { least, most } = extremesOf(curve.nodes);
  const imbalance = heights.map((heightM) => imbalanceAt(set, heightM));
  const pulls =
    friction === undefined
      ? {}
      : {
          pulls: imbalance.map((imbalanceN) =>
            handLinePulls({ imbalanceN, frictionN: friction, handLinePerBatten }),
          ),
        };
  return {
    imbalance,
    jumps: curve.jumps.map(({ height, below, above }) => ({ height, below, above })),
    contact: heights.map((heightM) => contactInterval(set, heightM)),
    uncertainty: heights.map((heightM) => imbalanceUncertainty(set, heightM)),
    parts: heights.map((heightM) => imbalanceParts(set, heightM)),
    slope: heights.map((heightM) => slopeAt(curve, heightM)),
    equilibria: curve.equilibria,
    least,
    most,
    ...pulls,
    loomTooShort: heights.filter((heightM) =>
      set.items.some((item) => loomTooShort(item, heightM)),
    ),
  };
};

/** The mix of show bricks for a set between two heights, from the set's own numbers. */
export const answerMix = (asked: {
  readonly balance: Omit<BalanceSet, 'bricks'>;
  readonly from: number;
  readonly to: number;
  readonly bricks: readonly BrickStock[];
  readonly stackHeight: number;
  readonly spreader?: SpreaderPlates;
  readonly holds?: { readonly in: number; readonly out: number };
}): MixResult => {
  const set = { ...asked.balance, bricks: 0 };
  const { least, most } = extremesOf(balanceCurve(set, asked.from, asked.to).nodes, 'inside');
  const { holds } = asked;
  const ends = [
    { heightM: asked.from, baselineN: imbalanceAt(set, asked.from) },
    { heightM: asked.to, baselineN: imbalanceBelow(set, asked.to) },
  ];
  return mixForSet({
    purchase: set.purchase,
    variants: [{ minN: least.imbalance, maxN: most.imbalance }],
    kinds: asked.bricks,
    baseMass: set.carriage,
    baseThickness: 0,
    stackHeight: asked.stackHeight,
    ...(asked.spreader === undefined ? {} : { spreader: asked.spreader }),
    ...(holds === undefined
      ? {}
      : { holds: ends.map((end) => ({ ...end, inN: holds.in, outN: holds.out })) }),
  });
};

/** What a two-way pull test says, and the mass an item must have for it to be true. */
export const answerPullTest = (asked: {
  readonly out: number;
  readonly in: number;
  readonly handLinePerBatten?: number;
  readonly expectedImbalance?: number;
  readonly itemMass?: number;
  readonly carriedShare?: number;
}): {
  readonly imbalance: Newtons;
  readonly friction: Newtons;
  readonly difference?: Newtons;
  readonly correctedMass?: number;
} => {
  const { expectedImbalance, itemMass, carriedShare = 1 } = asked;
  const measured = pullTest({
    outN: asked.out,
    inN: asked.in,
    handLinePerBatten: asked.handLinePerBatten ?? 1,
  });
  if (expectedImbalance === undefined) return measured;
  const difference = newtons(measured.imbalance - expectedImbalance);
  if (itemMass === undefined) return { ...measured, difference };
  const corrected = correctedMass({
    listedKg: itemMass,
    carriedShare,
    measuredN: measured.imbalance,
    listedN: expectedImbalance,
  });
  return { ...measured, difference, correctedMass: corrected };
};
