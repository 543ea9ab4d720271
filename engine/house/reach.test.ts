import { describe, expect, it } from 'vitest';
import { FOOT, INCH, metres } from '#quantities';
import { deadBands, type HeightSpan, nextPlateHeight, reachWindow } from './reach.ts';

/** A single and a double purchase set, and two galleries, typed in feet. */
const SET = {
  panAtLowM: 59.5 * FOOT,
  panThicknessM: 0.25 * FOOT,
  lowStopM: 3 * FOOT,
  highStopM: 61 * FOOT,
  purchase: 1,
  reachLowM: 0.25 * FOOT,
  reachHighM: 5.5 * FOOT,
} as const;
const UPPER = { ...SET, galleryFloorM: 58 * FOOT };
const MID = { ...SET, galleryFloorM: 38 * FOOT };
const DOUBLE = { panAtLowM: 57 * FOOT, purchase: 2 } as const;

const span = (fromFt: number, toFt: number): HeightSpan => ({
  from: metres(fromFt * FOOT),
  to: metres(toFt * FOOT),
});
const inFeet = (window: HeightSpan | null): readonly number[] | null =>
  window === null
    ? null
    : [window.from, window.to].map((heightM) => Math.round((heightM / FOOT) * 1e6) / 1e6);

describe('nextPlateHeight', () => {
  it('is the pan, its thickness and the plates', () => {
    expect(nextPlateHeight(12, 0.08, 0.9)).toBeCloseTo(12.98, 12);
  });
});

describe('reachWindow', () => {
  it('is cut to the travel', () => {
    expect(inFeet(reachWindow(UPPER, 12 * INCH))).toEqual([3, 5.5]);
    const high = { ...MID, highStopM: 24 * FOOT };
    expect(inFeet(reachWindow(high, 12 * INCH))).toEqual([20.25, 24]);
  });

  it('lies clear of both stops where the gallery is half way up', () => {
    expect(inFeet(reachWindow(MID, 12 * INCH))).toEqual([20.25, 25.5]);
    expect(inFeet(reachWindow({ ...MID, ...DOUBLE }, 12 * INCH))).toEqual([32.5, 43]);
  });

  it('is one height where only a stop brings the plate into reach', () => {
    expect(inFeet(reachWindow({ ...UPPER, ...DOUBLE }, 12 * INCH))).toEqual([3, 3]);
    const atTop = { ...MID, highStopM: 20.25 * FOOT };
    expect(inFeet(reachWindow(atTop, 12 * INCH))).toEqual([20.25, 20.25]);
  });

  it('is none a sixteenth of an inch past that', () => {
    expect(reachWindow({ ...UPPER, ...DOUBLE }, (12 - 1 / 16) * INCH)).toBeNull();
    const atTop = { ...MID, highStopM: 20.25 * FOOT };
    expect(reachWindow(atTop, (12 + 1 / 16) * INCH)).toBeNull();
  });

  it('keeps a window of one height through every thickness typed in inches', () => {
    const lost = Array.from({ length: 400 }, (_, index) => (index + 1) / 10).filter((inches) => {
      const panAtLowM = (58.25 - 0.25) * FOOT - inches * INCH;
      const window = reachWindow({ ...UPPER, panAtLowM }, inches * INCH);
      return window === null || window.to < window.from || window.from !== UPPER.lowStopM;
    });
    expect(lost).toEqual([]);
  });

  it('keeps one at the high stop as well, and inside the travel', () => {
    const missed = Array.from({ length: 400 }, (_, index) => (index + 1) / 10).filter((inches) => {
      // The batten height at which the plate comes down to the highest reach, and no higher.
      const highStopM = (3 + (59.5 + 0.25 + inches / 12 - 38 - 5.5)) * FOOT;
      const window = reachWindow({ ...MID, highStopM }, inches * INCH);
      return window === null || window.from > highStopM || window.to > highStopM;
    });
    expect(missed).toEqual([]);
  });

  it('never leaves the travel', () => {
    for (const stackIn of [0, 6, 12, 36, 60]) {
      for (const geometry of [UPPER, MID, { ...MID, ...DOUBLE }, { ...UPPER, ...DOUBLE }]) {
        const window = reachWindow(geometry, stackIn * INCH);
        expect(window?.from ?? 9).toBeGreaterThanOrEqual(geometry.lowStopM);
        expect(window?.to ?? 9).toBeLessThanOrEqual(geometry.highStopM);
      }
    }
  });
});

describe('deadBands', () => {
  const travel = span(3, 61);

  it('are what is left between the windows', () => {
    const bands = deadBands([span(20.25, 25.5), null, span(3, 5.5)], travel);
    expect(bands.map(inFeet)).toEqual([
      [5.5, 20.25],
      [25.5, 61],
    ]);
  });

  it('are the whole travel where no gallery reaches', () => {
    expect(deadBands([null], travel)).toEqual([travel]);
    expect(deadBands([], travel)).toEqual([travel]);
  });

  it('are none where the windows cover it', () => {
    expect(deadBands([span(3, 40), span(30, 61)], travel)).toEqual([]);
    expect(deadBands([span(3, 61), span(10, 20)], travel)).toEqual([]);
  });

  it('are none between windows that touch, though feet in metres do not quite meet', () => {
    const low = { from: metres(3 * FOOT), to: metres(0.1 * FOOT + 0.2 * FOOT + 20 * FOOT) };
    const high = { from: metres(20.3 * FOOT + 4e-15), to: metres(61 * FOOT - 4e-15) };
    expect(deadBands([low, high], travel)).toEqual([]);
  });

  it('are there where a window begins above the low stop', () => {
    expect(deadBands([span(4, 61)], travel).map(inFeet)).toEqual([[3, 4]]);
  });
});
