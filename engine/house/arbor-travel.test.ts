import { describe, expect, it } from 'vitest';
import { FOOT } from '#quantities';
import { handLineTravel, panHeight, travelRoom } from './arbor-travel.ts';

const inFeet = (heightM: number): number => heightM / FOOT;

const SINGLE = {
  panAtLowM: 59.5 * FOOT,
  arborLengthM: 7 * FOOT,
  headBlockM: 68 * FOOT,
  lowStopM: 3 * FOOT,
  highStopM: 61 * FOOT,
  purchase: 1,
} as const;
const DOUBLE = { ...SINGLE, panAtLowM: 57 * FOOT, arborLengthM: 10 * FOOT, purchase: 2 } as const;

describe('panHeight', () => {
  it('falls as far as the batten rises on single purchase', () => {
    const at = (battenFt: number) => inFeet(panHeight({ ...SINGLE, battenM: battenFt * FOOT }));
    expect(at(3)).toBeCloseTo(59.5, 9);
    expect(at(33)).toBeCloseTo(29.5, 9);
    expect(at(61)).toBeCloseTo(1.5, 9);
  });

  it('falls half as far on double purchase', () => {
    const at = (battenFt: number) => inFeet(panHeight({ ...DOUBLE, battenM: battenFt * FOOT }));
    expect(at(3)).toBeCloseTo(57, 9);
    expect(at(38)).toBeCloseTo(39.5, 9);
    expect(at(61)).toBeCloseTo(28, 9);
  });
});

describe('travelRoom', () => {
  it('is what is left above with the batten in and below with it out', () => {
    const single = travelRoom(SINGLE);
    expect([inFeet(single.above), inFeet(single.below)].map((n) => n.toFixed(9))).toEqual([
      '1.500000000',
      '1.500000000',
    ]);
    expect(inFeet(travelRoom(DOUBLE).above)).toBeCloseTo(1, 9);
    expect(inFeet(travelRoom(DOUBLE).below)).toBeCloseTo(28, 9);
  });

  it('shows a double purchase that is listed as single: its arbor leaves the building', () => {
    expect(inFeet(travelRoom({ ...DOUBLE, purchase: 1 }).below)).toBeCloseTo(-1, 9);
  });
});

describe('handLineTravel', () => {
  it('is that of the batten by the reeving', () => {
    expect(handLineTravel(8, 1)).toBe(8);
    expect(handLineTravel(8, 0.5)).toBe(4);
    expect(handLineTravel(8, 2)).toBe(16);
  });
});
