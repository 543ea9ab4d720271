import { describe, expect, it } from 'vitest';
import {
  breakHeights,
  carriedMass,
  contactHeight,
  fullMass,
  loomTooShort,
  loopLowPoint,
} from './carried-mass.ts';
import { feet } from './example-sets.ts';
import type { BalanceItem } from './item.ts';

/** Far enough to be another height, near enough that no slope shows. */
const HAIR_M = 1e-5;

const exactly = (massKg: number) => ({ massKg, lowKg: massKg, highKg: massKg });
const between = (massKg: number, lowKg: number, highKg: number) => ({ massKg, lowKg, highKg });

const CLEAR = { kind: 'clear', mass: 40, drop: 2, pick: 0.5 } as const;
const CLOTH = { kind: 'cloth', mass: 80, drop: 8, tie: 0.25, hem: 6 } as const;
const TIPPING = { kind: 'tipping', mass: 300, drop: 6, pick: 0.5, centre: 0.4 } as const;
const STANDING = { kind: 'standing', mass: 250, drop: 4, pick: 0.5 } as const;
const LOOM = { kind: 'loom', massPerLength: 4, length: 15, fixedAt: 12 } as const;
const DECK_LOOM = { kind: 'deckLoom', massPerLength: 2, length: 10 } as const;

type Case = readonly [string, BalanceItem, number, ReturnType<typeof between>];

const CASES: readonly Case[] = [
  ['clear, picks slack', CLEAR, 0.4, exactly(0)],
  ['clear, picks just taut', CLEAR, 0.5, between(0, 0, 40)],
  ['clear, resting', CLEAR, 1.5, between(0, 0, 40)],
  ['clear, a hair below its lowest point', CLEAR, 2.5 - HAIR_M, between(0, 0, 40)],
  ['clear, just touching', CLEAR, 2.5, between(40, 0, 40)],
  ['clear, a hair above', CLEAR, 2.5 + HAIR_M, exactly(40)],
  ['clear, far above', CLEAR, 18, exactly(40)],
  ['cloth, ties slack', CLOTH, 0.1, exactly(0)],
  ['cloth, ties just taut', CLOTH, 0.25, exactly(0)],
  ['cloth, a quarter up', CLOTH, 2.25, exactly(20)],
  ['cloth, three quarters up', CLOTH, 6.25, exactly(60)],
  ['cloth, hem just touching', CLOTH, 8.25, between(86, 80, 86)],
  ['cloth, a hair above', CLOTH, 8.25 + HAIR_M, exactly(86)],
  ['tipping, picks slack', TIPPING, 0.5 - HAIR_M, exactly(0)],
  ['tipping, picks just taut', TIPPING, 0.5, between(120, 0, 120)],
  ['tipping, a hair off its rest', TIPPING, 0.5 + HAIR_M, exactly(120)],
  ['tipping, half way up', TIPPING, 3.5, exactly(120)],
  ['tipping, a hair below lift-off', TIPPING, 6.5 - HAIR_M, exactly(120)],
  ['tipping, foot just touching', TIPPING, 6.5, between(300, 120, 300)],
  ['tipping, a hair above', TIPPING, 6.5 + HAIR_M, exactly(300)],
  ['standing, on its feet', STANDING, 2, exactly(0)],
  ['standing, a hair below lift-off', STANDING, 4.5 - HAIR_M, exactly(0)],
  ['standing, feet just touching', STANDING, 4.5, between(250, 0, 250)],
  ['standing, a hair above', STANDING, 4.5 + HAIR_M, exactly(250)],
  ['loom, its loop on the deck', LOOM, 2, exactly(8)],
  ['loom, its loop just off the deck', LOOM, 3, exactly(12)],
  ['loom, level with its fixed end', LOOM, 12, exactly(30)],
  ['loom, above its fixed end', LOOM, 18, exactly(42)],
  ['loom, taut', LOOM, 27, exactly(60)],
  ['loom, past taut weighs no more than all of it', LOOM, 30, exactly(60)],
  ['deck loom, most of it on the deck', DECK_LOOM, 3, exactly(6)],
  ['deck loom, taut', DECK_LOOM, 10, exactly(20)],
  ['deck loom, past taut', DECK_LOOM, 12, exactly(20)],
];

describe('carriedMass', () => {
  it.each(CASES)('%s', (_name, item, battenM, wanted) => {
    const found = carriedMass(item, battenM);
    expect(found.massKg).toBeCloseTo(wanted.massKg, 9);
    expect(found.lowKg).toBeCloseTo(wanted.lowKg, 9);
    expect(found.highKg).toBeCloseTo(wanted.highKg, 9);
  });

  it('has a piece without a lowest point hang free over the whole travel', () => {
    const item = { kind: 'clear', mass: 40 } as const;
    expect(contactHeight(item)).toBeNull();
    expect(breakHeights(item)).toEqual([]);
    expect(carriedMass(item, 0)).toEqual(exactly(40));
  });

  it('arrives by its slope just below the hem, then all at once', () => {
    const { massKg, highKg } = carriedMass(CLOTH, 8.25 - HAIR_M);
    expect(massKg).toBeCloseTo(80 - (80 / 8) * HAIR_M, 9);
    expect(highKg).toBe(massKg);
  });

  it('hangs a loom from its fixed end alone where the batten is far below it', () => {
    const high = { kind: 'loom', massPerLength: 4, length: 5, fixedAt: 12 } as const;
    expect(carriedMass(high, 6)).toEqual(exactly(0));
    expect(carriedMass(high, 7)).toEqual(exactly(0));
    expect(carriedMass(high, 8).massKg).toBeCloseTo(2, 9);
  });
});

describe('heights typed in feet', () => {
  const QUARTERS = Array.from({ length: 160 }, (_, index) => (index + 1) / 4);
  const PICKS = [0.25, 0.5, 1, 1.75, 2.5];
  /** Every pick and drop whose sum, in metres, may differ in its last place from the trim typed. */
  const TYPED = PICKS.flatMap((pick) => QUARTERS.map((drop) => [pick, drop] as const));

  it('differ from the sum of two lengths in the last place, which is why the rest is tried', () => {
    expect(TYPED.some(([pick, drop]) => feet(pick) + feet(drop) !== feet(pick + drop))).toBe(true);
  });

  it.each(['clear', 'standing', 'tipping'] as const)(
    'meet the contact of a %s piece all the same',
    (kind) => {
      const missed = TYPED.filter(([pick, drop]) => {
        const sizes = { mass: 100, pick: feet(pick), drop: feet(drop), centre: 0.4 };
        const { massKg, lowKg } = carriedMass({ kind, ...sizes }, feet(pick + drop));
        return massKg !== 100 || lowKg !== (kind === 'tipping' ? 40 : 0);
      });
      expect(missed).toEqual([]);
    },
  );

  it('meet the hem of a cloth all the same', () => {
    const missed = TYPED.filter(([tie, drop]) => {
      const item = { kind: 'cloth', mass: 100, hem: 9, tie: feet(tie), drop: feet(drop) } as const;
      const { massKg, lowKg } = carriedMass(item, feet(tie + drop));
      return Math.abs(massKg - 109) > 1e-9 || Math.abs(lowKg - 100) > 1e-9;
    });
    expect(missed).toEqual([]);
  });

  it('meet the picks of a piece that rests, at the height where they come taut', () => {
    const missed = QUARTERS.filter((pick) => {
      const above = feet(3 + pick) - feet(3);
      const sizes = { mass: 100, pick: above, drop: feet(10), centre: 0.4 };
      const taut = carriedMass({ kind: 'clear', ...sizes }, feet(pick));
      const tilting = carriedMass({ kind: 'tipping', ...sizes }, feet(pick));
      return taut.highKg !== 100 || tilting.massKg !== 40;
    });
    expect(missed).toEqual([]);
  });
});

describe('heights at which a load changes', () => {
  it.each([
    ['clear', CLEAR, [0.5, 2.5], 2.5, 40],
    ['cloth', CLOTH, [0.25, 8.25], 8.25, 80],
    ['tipping', TIPPING, [0.5, 6.5], 6.5, 300],
    ['standing', STANDING, [4.5], 4.5, 250],
    ['loom', LOOM, [3, 27], null, 60],
    ['deck loom', DECK_LOOM, [10], null, 20],
  ] as const)('are those of a %s', (_name, item, breaks, contactM, wholeKg) => {
    expect(breakHeights(item)).toEqual(breaks);
    expect(contactHeight(item)).toBe(contactM);
    expect(fullMass(item)).toBe(wholeKg);
  });

  it('are only the ones above the deck', () => {
    expect(breakHeights({ ...LOOM, length: 5 })).toEqual([7, 17]);
    expect(breakHeights({ ...LOOM, length: 5, fixedAt: 0 })).toEqual([5, 5]);
  });
});

describe('a loom', () => {
  it('has its low point below the deck where part of it lies there', () => {
    expect(loopLowPoint(LOOM, 2)).toBe(-0.5);
    expect(loopLowPoint(LOOM, 12)).toBe(4.5);
  });

  it('is too short only past its length', () => {
    expect(loomTooShort(LOOM, 27)).toBe(false);
    expect(loomTooShort(LOOM, 27.1)).toBe(true);
    expect(loomTooShort({ ...LOOM, length: 5 }, 6.9)).toBe(true);
    expect(loomTooShort({ ...LOOM, length: 5 }, 7)).toBe(false);
    expect(loomTooShort(DECK_LOOM, 10)).toBe(false);
    expect(loomTooShort(DECK_LOOM, 10.1)).toBe(true);
    expect([CLEAR, CLOTH, TIPPING, STANDING].some((item) => loomTooShort(item, 90))).toBe(false);
  });
});
