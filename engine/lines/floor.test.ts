import { describe, expect, it } from 'vitest';
import { FOOT, GRAVITY, POUND, POUND_FORCE } from '#quantities';
import { floorLoad, floorRow, rowLoad } from './floor.ts';

const POUND_PER_FOOT = POUND_FORCE / FOOT;
const PSF = POUND_FORCE / FOOT ** 2;
/** Full bricks of the demo: two to the foot. */
const FULL = { massKg: 25 * POUND, floorLengthM: 0.5 * FOOT };
const HALF = { massKg: 12.5 * POUND, floorLengthM: 0.5 * FOOT };

describe('bricks in a row along a gallery', () => {
  it('load it by 50 lb for each foot and course: 8 courses are 400 lb for each foot', () => {
    expect(rowLoad({ ...FULL, courses: 1 }) / POUND_PER_FOOT).toBeCloseTo(50, 9);
    expect(rowLoad({ ...FULL, courses: 8 }) / POUND_PER_FOOT).toBeCloseTo(400, 9);
  });

  it('stand in as few courses as the length allows', () => {
    // 140 bricks fill 70 ft.
    const at = (count: number) => floorRow([{ ...FULL, count }], 70 * FOOT);
    expect([0, 1, 140, 141, 280, 281, 1120].map((count) => at(count).courses)).toEqual([
      0, 1, 1, 2, 2, 3, 8,
    ]);
    expect(at(1120).lineLoad / POUND_PER_FOOT).toBeCloseTo(400, 9);
    expect(at(0).lineLoad).toBe(0);
  });

  it('are laid whole: a gallery of 10 bricks and a half takes 10 in a row', () => {
    const at = (count: number) => floorRow([{ ...FULL, count }], 5.25 * FOOT).courses;
    expect([20, 21].map(at)).toEqual([2, 3]);
    const long = { massKg: 5, floorLengthM: FOOT, count: 1 };
    expect(floorRow([{ ...FULL, count: 20 }, long], 5.25 * FOOT).courses).toBe(5);
  });

  it('fill a row that is full but for rounding, and stand on one another where none fits', () => {
    // 0.3 / 0.1 is a hair under 3.
    expect(floorRow([{ massKg: 5, floorLengthM: 0.1, count: 3 }], 0.3).courses).toBe(1);
    expect(floorRow([{ massKg: 5, floorLengthM: 2, count: 2 }], 1).courses).toBe(2);
  });

  it('are as heavy as the densest kind that is there, in every course', () => {
    const row = floorRow(
      [
        { ...HALF, count: 200 },
        { ...FULL, count: 60 },
      ],
      70 * FOOT,
    );
    expect(row.courses).toBe(2);
    expect(row.lineLoad / POUND_PER_FOOT).toBeCloseTo(100, 9);
    const light = floorRow(
      [
        { ...HALF, count: 200 },
        { ...FULL, count: 0 },
      ],
      70 * FOOT,
    );
    expect(light.lineLoad / POUND_PER_FOOT).toBeCloseTo(50, 9);
  });
});

describe('pressure on a gallery floor', () => {
  it('spreads bricks, people and tools over all of it: 245 ft² at 150 psf are 36,750 lb', () => {
    const pressure = floorLoad({
      bricksKg: 36_000 * POUND,
      peopleAndToolsKg: 750 * POUND,
      lengthM: 70 * FOOT,
      widthM: 3.5 * FOOT,
    });
    expect(pressure / PSF).toBeCloseTo(150, 9);
    // The same limit by the foot of gallery, as the-job.md C44 has it.
    expect((pressure * 3.5 * FOOT) / POUND_PER_FOOT).toBeCloseTo(525, 9);
  });

  it('is the weight of what stands there over its area', () => {
    const floor = { bricksKg: 90, peopleAndToolsKg: 10, lengthM: 5, widthM: 2 };
    expect(floorLoad(floor)).toBeCloseTo(10 * GRAVITY, 12);
  });
});
