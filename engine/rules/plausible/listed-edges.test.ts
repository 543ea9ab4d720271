import { describe, expect, it } from 'vitest';
import type { LineSet } from '#house';
import { kilograms, kilogramsPerMetre, kilogramsPerSquareMetre, metres } from '#quantities';
import type { Item, Takeoff } from '#show';
import {
  exampleArbor,
  exampleItem,
  exampleSet,
  given,
  motorSet,
  nobodyKnows,
} from '../example-house.ts';
import { massesOfItem, massesOfSet } from './listed-masses.ts';

const itemOf = (takeoff: Takeoff, changes: Partial<Item> = {}): Item => ({
  ...exampleItem,
  ...changes,
  takeoff,
});

const batten = (changes: Partial<LineSet['batten']>): LineSet => ({
  ...exampleSet,
  batten: { ...exampleSet.batten, ...changes },
});

const cloth: Takeoff = {
  by: 'cloth',
  width: given(metres(8)),
  areaMass: given(kilogramsPerSquareMetre(0.4)),
  fullness: given(0),
  hemAllowance: given(0),
  paint: given(0),
  moisture: given(0),
  bottomMassPerLength: given(kilogramsPerMetre(0.5)),
  ties: null,
};

const lamp = (name: string, massKg: number, clampKg: number | null = null): Takeoff => ({
  by: 'units',
  units: [
    {
      name,
      count: 2,
      each: given(kilograms(massKg)),
      clampEach: clampKg === null ? null : given(kilograms(clampKg)),
      xs: null,
    },
  ],
});

/** What an item lists, each as what, value, band and what it is like. */
const listed = (takeoff: Takeoff, changes: Partial<Item> = {}, lineSet = exampleSet) =>
  massesOfItem(itemOf(takeoff, changes), lineSet).map(
    ({ what, value, band, like }) => `${what}: ${value} ${band}, ${like}`,
  );

describe('the masses that are listed', () => {
  it('[UNI-001] of a cloth by area are those of cloth and bottom', () => {
    expect(listed(cloth)).toEqual([
      'cloth of Frame, per area: 0.4 cloth, null',
      'bottom of Frame, per length: 0.5 hemPerLength, null',
    ]);
  });

  it('[UNI-001] of units are those of lamp and clamp, by their names', () => {
    expect(listed(lamp(' Profile ', 8, 1))).toEqual([
      'one  Profile : 8 unit, unit profile',
      'clamp of  Profile : 1 clamp, clamp profile',
    ]);
  });

  it('[UNI-001] of loom, pipe and hardware are one each', () => {
    const perLength = given(kilogramsPerMetre(2));
    const length = given(metres(10));
    expect(listed({ by: 'loom', massPerLength: perLength, length, fixedAt: length })).toEqual([
      'Frame, per length: 2 loom, null',
    ]);
    expect(listed({ by: 'pipe', massPerLength: perLength, length, fittings: null })).toEqual([
      'Frame, per length: 2 pipe, null',
    ]);
    const lines = [{ name: 'Shackle', count: 4, each: given(kilograms(0.1)) }];
    expect(listed({ by: 'hardware', lines })).toEqual([
      'one Shackle: 0.1 hardware, hardware shackle',
    ]);
  });

  it('[UNI-001] of a frame are those of its parts', () => {
    const part = { name: 'Part', count: 1, length: given(metres(2)), width: given(metres(1)) };
    const frame = {
      by: 'frame',
      members: [{ ...part, massPerLength: given(kilogramsPerMetre(1)) }],
      sheets: [{ ...part, area: given(2), massPerArea: given(kilogramsPerSquareMetre(9)) }],
      hardware: [{ ...part, each: given(kilograms(3)) }],
      allowance: given(0),
    } as unknown as Takeoff;
    expect(listed(frame)).toEqual([
      'Part, per length: 1 member, member part',
      'Part, per area: 9 sheet, sheet part',
      'one Part: 3 hardware, hardware part',
    ]);
  });

  const whole: Takeoff = { by: 'mass', mass: given(kilograms(50)), hem: null };

  it('[UNI-001] of a whole cloth is also that over the batten, where all of it is known', () => {
    const drop = given(metres(5));
    expect(listed(whole, { kind: 'cloth', drop })).toEqual([
      'Frame: 50 item, null',
      'cloth of Frame, per area of the batten’s length: 1 hungCloth, null',
    ]);
    const alone = ['Frame: 50 item, null'];
    expect(listed(whole, { kind: 'clear', drop })).toEqual(alone);
    expect(listed(whole, { kind: 'cloth', drop: nobodyKnows })).toEqual(alone);
    expect(listed(whole, { kind: 'cloth', drop: given(metres(0)) })).toEqual(alone);
    expect(listed({ ...whole, mass: nobodyKnows }, { kind: 'cloth', drop })).toEqual([]);
  });

  it('[UNI-001] of no take-off that is written here are a defect, and not none', () => {
    expect(() => listed({ ...whole, by: 'guess' } as never)).toThrow('guess');
  });

  it('[UNI-001] over a batten need both its ends, in their order', () => {
    const drop = given(metres(5));
    const over = (lineSet: LineSet) => listed(whole, { kind: 'cloth', drop }, lineSet).length;
    expect(over(exampleSet)).toBe(2);
    expect(over(batten({ left: nobodyKnows }))).toBe(1);
    expect(over(batten({ right: nobodyKnows }))).toBe(1);
    expect(over(batten({ left: given(metres(5)) }))).toBe(1);
    expect(over(batten({ left: given(metres(6)) }))).toBe(1);
  });

  it('[UNI-001] of a set are those of batten, lines and arbor, by its type', () => {
    const text = (lineSet: LineSet) =>
      massesOfSet(lineSet).map(
        ({ what, value, band, like }) => `${what}: ${value} ${band}, ${like}`,
      );
    expect(text(exampleSet)).toEqual([
      'batten per length: 4 battenPerLength, batten',
      'batten with its fittings, per length: 5 battenPerLength, batten',
      'lift line per length: 0.16 liftLine, lift line',
      'arbor without bricks: 40 carriage, arbor of type a',
    ]);
    expect(text(batten({ mass: nobodyKnows }))).toHaveLength(3);
    expect(text(batten({ right: nobodyKnows }))).toHaveLength(3);
    expect(text(motorSet)).toHaveLength(3);
    const carriageMass = nobodyKnows;
    expect(text({ ...exampleSet, arbor: { ...exampleArbor, carriageMass } })).toHaveLength(3);
  });
});
