/**
 * Two plain sets in round numbers with one header on both: 300 N of it on set 7 and 200 N on set 8.
 * Each is as the plain set of the other tests: U is 40 N on the low stop at 1 m and falls by 10 N
 * for each metre out, a brick is 100 N, the lock holds 200 N.
 */
import { assert } from '#outcome';
import { metres } from '#quantities';
import type { OrderPhysics, PairStep, Standing, Step } from '#state';
import { unsaid } from '../../example-assessment.ts';
import { add, attach, BARE, plantOf, RUN, standingAt } from '../example-order.ts';
import type { OrderRuleCode } from '../rule-codes.ts';
import type { Breach, OrderOptions } from '../verdict.ts';
import type { PairToJudge, PairVerdict } from './pair-verdict.ts';
import { verifyPair } from './verify-pair.ts';

export const HEADER = { header: 'flying' } as const;

export const setPhysics = (
  set: string,
  weightN: number,
  more: Partial<OrderPhysics> = {},
): OrderPhysics =>
  plantOf({ pieces: { header: { weightN }, lamp: { weightN: 50 } }, more: { set, ...more } });

export const of7 = (step: Step): PairStep => ({ set: '7', step });
export const of8 = (step: Step): PairStep => ({ set: '8', step });
export const together = (to7: number, to8: number): PairStep => ({
  together: [
    { set: '7', to: metres(to7) },
    { set: '8', to: metres(to8) },
  ],
});

export const close = (zone: 'run' | 'upper' | 'mid'): Step => ({
  act: 'close',
  zone: zoneOf(zone),
});
export const reopen = (zone: 'run' | 'upper' | 'mid'): Step => ({
  act: 'reopen',
  zone: zoneOf(zone),
});

const zoneOf = (zone: 'run' | 'upper' | 'mid') =>
  zone === 'run' ? RUN : ({ zone: 'drop', gallery: zone } as const);

export type PairTrial = {
  readonly pair?: Partial<PairToJudge>;
  readonly starts?: readonly [Standing, Standing];
  readonly steps?: readonly PairStep[];
  readonly options?: Partial<OrderOptions>;
};

/** Battens from one below the other to three above it. */
const BAND = { leastM: -1, mostM: 3 };

export const triedPair = ({
  pair,
  starts = [BARE, BARE],
  steps = [],
  options,
}: PairTrial): PairVerdict =>
  verifyPair(
    {
      first: { physics: setPhysics('7', 300), start: starts[0] },
      second: { physics: setPhysics('8', 200), start: starts[1] },
      shared: [{ first: 'header', second: 'header' }],
      band: BAND,
      ...pair,
    },
    steps,
    { doubt: 'none', faults: 'skip', ...options },
  );

const breachesOf = ({ broken, alsoBroken, cautions }: PairVerdict): readonly Breach[] => [
  ...(broken === null ? [] : [broken]),
  ...alsoBroken,
  ...cautions,
];

export const pairRules = (trial: PairTrial): readonly string[] =>
  breachesOf(triedPair(trial)).map(({ rule }) => rule);

/** The first breach of one rule, whose sentence can be said with what it carries. */
export const pairBreach = (rule: OrderRuleCode, trial: PairTrial): Breach => {
  const found = breachesOf(triedPair(trial)).find((each) => each.rule === rule);
  assert(found !== undefined, `${rule} is broken; found ${pairRules(trial).join(', ')}`);
  const lacks = unsaid(found.finding);
  assert(lacks.length === 0, `${rule} can be said; it lacks ${lacks.join(', ')}`);
  return found;
};

/** Both laden with the header in the air, the run closed. */
export const flownPair = (m7: number, m8: number): readonly [Standing, Standing] => [
  standingAt(m7, 3, { items: HEADER, closed: [RUN] }),
  standingAt(m8, 2, { items: HEADER, closed: [RUN] }),
];

/** The whole of a right order: on both, bricks for both at one gallery, and out together. */
export const RIGHT: readonly PairStep[] = [
  of7(attach('header')),
  of8(attach('header')),
  of7(close('upper')),
  of7(add(3)),
  of8(add(2)),
  of8(reopen('upper')),
  of7(close('run')),
  together(5, 7),
];
