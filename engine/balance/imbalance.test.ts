import { describe, expect, it } from 'vitest';
import type { BalanceSet } from './balance-set.ts';
import {
  asPounds,
  DOUBLE_PURCHASE,
  feet,
  hung,
  pounds,
  poundsPerFoot,
  SEVEN_LINES,
  SIX_LINES,
} from './example-sets.ts';
import {
  contactInterval,
  imbalanceAt,
  imbalanceBelow,
  imbalanceParts,
  imbalanceUncertainty,
  linesMass,
} from './imbalance.ts';
import type { BalanceItem } from './item.ts';

const TOWER: BalanceItem = {
  kind: 'tipping',
  mass: pounds(640),
  drop: feet(22),
  pick: feet(1),
  centre: 0.46,
  uncertainty: pounds(12.8),
};
const CURTAIN: BalanceItem = {
  kind: 'cloth',
  mass: pounds(520),
  drop: feet(30),
  tie: feet(0.5),
  hem: pounds(22),
  uncertainty: pounds(26),
  hemUncertainty: pounds(1.1),
};
const BRIDGE: BalanceItem = {
  kind: 'standing',
  mass: pounds(520),
  drop: feet(14),
  pick: feet(1),
};
const LOOM: BalanceItem = {
  kind: 'loom',
  massPerLength: poundsPerFoot(3.1),
  length: feet(50),
  fixedAt: feet(38),
  uncertainty: pounds(7.75),
};

const tower = hung(SIX_LINES, 637.5, [TOWER]);
const curtain = hung(SIX_LINES, 537.5, [CURTAIN]);

/** Worked in pounds and feet: B + n·w·(z_t − z_e) − A/r, each number as the house has it. */
describe('imbalanceAt', () => {
  it.each([
    ['six lines, on the low stop', SIX_LINES, 3, 169 + 0.66 * (66.5 - 5) - 161],
    ['six lines, on the high stop', SIX_LINES, 61, 169 + 0.66 * (8.5 - 63) - 161],
    ['seven lines, half way', SEVEN_LINES, 32, 196.26 + 0.77 * (37.5 - 34) - 195],
    ['double purchase, on the low stop', DOUBLE_PURCHASE, 3, 196.26 + 0.77 * 61.5 - 207.5],
    ['double purchase, high', DOUBLE_PURCHASE, 61, 196.26 + 0.77 * (37.5 - 63) - 207.5],
  ])('of a bare set: %s', (_name, set, heightFt, wantedLb) => {
    expect(asPounds(imbalanceAt(set, feet(heightFt)))).toBeCloseTo(wantedLb, 9);
  });

  it('keeps its parts apart, and they add up', () => {
    const parts = imbalanceParts({ ...tower, purchase: 2 }, feet(10));
    expect(parts.battenKg).toBe(pounds(169));
    expect(parts.itemsKg).toEqual([TOWER.mass * 0.46]);
    expect(parts.linesKg).toBeCloseTo(pounds(0.66 * (66.5 - 3.5 - 12)), 12);
    expect(parts.arborKg).toBeCloseTo(pounds(798.5 / 2), 12);
    expect(linesMass({ ...tower, purchase: 2 }, feet(10))).toBe(parts.linesKg);
  });

  it('counts two bricks on the arbor of a double purchase as one at the batten', () => {
    const one = imbalanceAt(DOUBLE_PURCHASE, feet(20));
    const other = imbalanceAt(hung(DOUBLE_PURCHASE, 50, []), feet(20));
    expect(asPounds(one) - asPounds(other)).toBeCloseTo(25, 9);
  });
});

describe('where a piece meets the deck', () => {
  const bridge = hung(SEVEN_LINES, 512.5, [BRIDGE]);

  it('has two values at one height: the value is the one above', () => {
    expect(asPounds(imbalanceAt(tower, feet(23)))).toBeCloseTo(24.69, 9);
    expect(asPounds(imbalanceBelow(tower, feet(23)))).toBeCloseTo(24.69 - 0.54 * 640, 9);
    expect(asPounds(imbalanceBelow(curtain, feet(30.5)))).toBeCloseTo(-5.21, 9);
    expect(asPounds(imbalanceAt(curtain, feet(30.5)))).toBeCloseTo(16.79, 9);
  });

  it('lets deck and batten share the load: lowest and highest', () => {
    const standing = contactInterval(bridge, feet(15));
    expect(asPounds(standing.high)).toBeCloseTo(196.26 + 520 + 0.77 * 37.5 - 707.5, 9);
    expect(asPounds(standing.high - standing.low)).toBeCloseTo(520, 9);
    const tilting = contactInterval(tower, feet(23));
    expect(asPounds(tilting.high - tilting.low)).toBeCloseTo(0.54 * 640, 9);
    expect(tilting.high).toBe(imbalanceAt(tower, feet(23)));
    expect(tilting.low).toBe(imbalanceBelow(tower, feet(23)));
  });

  it('has one value elsewhere', () => {
    for (const heightFt of [3, 14.9, 15.1, 40]) {
      const { low, high } = contactInterval(bridge, feet(heightFt));
      expect([low, high]).toEqual(Array(2).fill(imbalanceAt(bridge, feet(heightFt))));
      expect(imbalanceBelow(bridge, feet(heightFt))).toBe(low);
    }
  });

  it('takes nothing of a piece whose picks are about to come taut', () => {
    const low = { ...tower, lowStop: feet(0.5) };
    expect(asPounds(imbalanceAt(low, feet(1)) - imbalanceBelow(low, feet(1)))).toBeCloseTo(
      0.46 * 640,
      9,
    );
  });

  it('leaves a resting piece to the deck, and its whole load in doubt', () => {
    const sign = { kind: 'clear', mass: pounds(85), drop: feet(6), pick: feet(2) } as const;
    const set = hung(SEVEN_LINES, 87.5, [sign]);
    const { low, high } = contactInterval(set, feet(5));
    expect(low).toBe(imbalanceAt(set, feet(5)));
    expect(asPounds(high - low)).toBeCloseTo(85, 9);
  });
});

describe('imbalanceUncertainty', () => {
  const doubtful = (set: BalanceSet): BalanceSet => ({
    ...set,
    battenUncertainty: pounds(3.38),
    carriageUncertainty: pounds(1.9),
    brickUncertainty: pounds(15.1),
  });
  const ofPlant = 3.38 + 1.9 + 15.1;

  it('adds up linearly, each at its worst', () => {
    const found = imbalanceUncertainty(doubtful(SIX_LINES), feet(20));
    expect(asPounds(found)).toBeCloseTo(ofPlant, 9);
  });

  it('halves what is on the arbor of a double purchase', () => {
    const found = imbalanceUncertainty(doubtful(DOUBLE_PURCHASE), feet(20));
    expect(asPounds(found)).toBeCloseTo(3.38 + (1.9 + 15.1) / 2, 9);
  });

  it('doubts only the part of a piece that hangs', () => {
    const at = (heightFt: number) =>
      asPounds(imbalanceUncertainty(doubtful(tower), feet(heightFt))) - ofPlant;
    expect(at(10)).toBeCloseTo(12.8 * 0.46, 9);
    expect(at(22.99)).toBeCloseTo(12.8 * 0.46, 9);
    expect(at(23)).toBeCloseTo(12.8, 9);
    expect(at(50)).toBeCloseTo(12.8, 9);
  });

  it('doubts cloth by its share, and its hem once the hem is up', () => {
    const at = (heightFt: number) => asPounds(imbalanceUncertainty(curtain, feet(heightFt)));
    expect(at(0.5)).toBeCloseTo(0, 9);
    expect(at(15.5)).toBeCloseTo(13, 9);
    expect(at(30.5)).toBeCloseTo(27.1, 9);
    expect(at(60)).toBeCloseTo(27.1, 9);
  });

  it('doubts the hanging part of a loom', () => {
    const set = { ...SIX_LINES, items: [LOOM] };
    expect(asPounds(imbalanceUncertainty(set, feet(38)))).toBeCloseTo(7.75 / 2, 9);
    expect(asPounds(imbalanceUncertainty(set, feet(4)))).toBeCloseTo((7.75 * 4) / 50, 9);
  });

  it('has none where nobody has said any, and none of a piece that weighs nothing', () => {
    expect(imbalanceUncertainty(SIX_LINES, feet(20))).toBe(0);
    const nothing = { kind: 'clear', mass: 0, uncertainty: 5 } as const;
    expect(imbalanceUncertainty({ ...SIX_LINES, items: [nothing] }, feet(20))).toBe(0);
  });
});
