/** Laws of the judge over random orders on the example set: it never throws, never forgets. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { metres } from '#quantities';
import type { ItemPhase, Standing, Step } from '#state';
import {
  add,
  attach,
  BARE,
  bullLine,
  DROPS,
  ease,
  fly,
  plantOf,
  RUN,
  release,
  remove,
  standingAt,
} from './example-order.ts';
import type { OrderOptions, OrderVerdict } from './verdict.ts';
import { verifyOrder } from './verify-order.ts';

const SEED = 20_261_127;
const RUNS = { seed: SEED, numRuns: 400 };

const items = fc.constantFrom('lamp', 'frame', 'motor', 'tower', 'nobody');
const heights = fc.constantFrom(1, 1.2, 3, 6, 6.01, 9, 15, 19);
const zones = fc.constantFrom(RUN, ...DROPS, { zone: 'drop', gallery: 'mid' } as const);
const restraints = fc.constantFrom(
  bullLine(),
  bullLine({ rating: null }),
  bullLine({ kind: 'arborSling', from: metres(3), to: metres(3) }),
  bullLine({ kind: 'deadHangSteel', resists: 'in' }),
  bullLine({ kind: 'stands', resists: 'in', from: metres(3), to: metres(3) }),
);
const counts = fc.integer({ min: 1, max: 4 });
const kinds = fc.constantFrom('B', 'C');

const steps: fc.Arbitrary<Step> = fc.oneof(
  items.map(attach),
  items.map((item): Step => ({ act: 'attach', item, as: 'attachedSlack' })),
  items.map((item): Step => ({ act: 'takeUp', item })),
  items.map((item): Step => ({ act: 'rest', item })),
  items.map(release),
  fc.tuple(counts, kinds).map(([count, kind]) => add(count, kind)),
  fc.tuple(counts, kinds).map(([count, kind]) => remove(count, kind)),
  heights.map(fly),
  restraints.map((restraint): Step => ({ act: 'rig', restraint })),
  restraints.map((restraint): Step => ({ act: 'unrig', restraint })),
  fc.constantFrom<Step>({ act: 'hangOnSteel' }, { act: 'takeOffSteel' }),
  fc.tuple(fc.constantFrom('close', 'reopen'), zones).map(([act, zone]): Step => ({ act, zone })),
  fc.tuple(fc.integer({ min: 0, max: 900 }), fc.boolean()).map(([n, lifted]) => ease(n, lifted)),
);

const phases = fc.constantFrom<ItemPhase>('away', 'attachedSlack', 'attachedResting', 'flying');

const starts: fc.Arbitrary<Standing> = fc
  .record({
    heightM: heights,
    bricks: fc.integer({ min: 0, max: 8 }),
    frame: phases,
    tower: phases,
  })
  .map(({ heightM, bricks, frame, tower }) =>
    standingAt(heightM, bricks, { items: { frame, tower } }),
  );

const orders = fc.record({ start: starts, steps: fc.array(steps, { maxLength: 8 }) });
type Order = { readonly start: Standing; readonly steps: readonly Step[] };

const all: readonly OrderOptions[] = [
  { doubt: 'none', faults: 'skip' },
  { doubt: 'worst', faults: 'skip' },
  { doubt: 'none', faults: 'check' },
  { doubt: 'worst', faults: 'check' },
];

const judge = ({ start, steps: of }: Order, options: OrderOptions): OrderVerdict =>
  verifyOrder(plantOf(), start, of, options);

const breaks = ({ broken }: OrderVerdict): boolean => broken !== null;

const holds = (title: string, law: (order: Order) => void): void => {
  it(`${title} (seed ${SEED})`, () => {
    fc.assert(fc.property(orders, law), RUNS);
  });
};

describe('laws of the judge', () => {
  holds('answers every order with one state for the start and one for each step', (order) => {
    for (const options of all) {
      const { states, refused } = judge(order, options);
      expect(states).toHaveLength((refused?.step ?? order.steps.length) + 1);
    }
  });

  holds('breaks in order, and no earlier than what was replayed', (order) => {
    const { broken, alsoBroken } = judge(order, { doubt: 'worst', faults: 'check' });
    const at = [...(broken === null ? [] : [broken]), ...alsoBroken].map(({ step }) => step);
    expect(at).toEqual(at.toSorted((one, other) => one - other));
  });

  holds('says of the first steps what it said of them alone', (order) => {
    const whole = judge(order, { doubt: 'worst', faults: 'check' });
    const part = judge(
      { ...order, steps: order.steps.slice(0, -1) },
      { doubt: 'worst', faults: 'check' },
    );
    expect(whole.states.slice(0, part.states.length)).toEqual(part.states);
    if (breaks(part)) expect(whole.broken).toEqual(part.broken);
  });

  holds('is never kinder for more doubt or for checking faults', (order) => {
    const isBroken = all.map((options) => breaks(judge(order, options)));
    const [plain, doubtful, faulty, both] = isBroken;
    if (plain) expect([doubtful, faulty]).toEqual([true, true]);
    if (doubtful || faulty) expect(both).toBe(true);
  });

  holds('is never kinder for a weaker lock', ({ start, steps: of }) => {
    const options = { doubt: 'none', faults: 'skip' } as const;
    const strong = verifyOrder(plantOf(), start, of, options);
    const weak = verifyOrder(plantOf({ more: { lockLimitN: 150 } }), start, of, options);
    if (breaks(strong)) expect(breaks(weak)).toBe(true);
  });

  holds('passes no state that neither rest nor rating holds', (order) => {
    const { broken, refused, states } = judge(order, { doubt: 'none', faults: 'skip' });
    if (broken !== null || refused !== null) return;
    for (const { imbalance, holdInN, holdOutN } of states) {
      const leastN = Math.max(imbalance.lowN, -holdOutN);
      expect(leastN).toBeLessThanOrEqual(Math.min(imbalance.highN, holdInN) + 1e-6);
    }
  });

  it('takes an order of no steps on a bare set', () => {
    const verdict = verifyOrder(plantOf(), BARE, [], { doubt: 'worst', faults: 'check' });
    expect(verdict).toMatchObject({ broken: null, refused: null, cautions: [], assumed: [] });
  });
});
