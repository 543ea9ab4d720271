import { describe, expect, it } from 'vitest';
import { type Piece, pass } from './piece.ts';

const EVEN: Piece = { lengthM: 8, netN: 120, netSlope: 0, massKg: 400, massSlope: 0 };

const relative = (found: number, wanted: number): number => Math.abs(found / wanted - 1);

describe('a piece of the way', () => {
  it.each([
    ['driven evenly', EVEN, 0],
    ['driven more and more', { ...EVEN, netSlope: 30 }, 0],
    ['driven less and less', { ...EVEN, netSlope: -10 }, 0],
    ['driven, then slowed', { ...EVEN, netSlope: -20 }, 0.5],
    ['slowed less and less', { ...EVEN, netN: -120, netSlope: 10 }, 2],
    ['slowed to rest', { ...EVEN, netN: -120 }, 1],
    ['slowed to rest, ever more', { ...EVEN, netN: -20, netSlope: -30 }, 1],
    ['not driven at all', { ...EVEN, netN: 0 }, 1.5],
  ])('is the same with a mass that hardly changes: %s', (_how, piece, speedMs) => {
    const stays = pass(piece, speedMs).end;
    for (const massSlope of [-1e-9, 1e-9]) {
      const { end } = pass({ ...piece, massSlope }, speedMs);
      // The change is 2e-11 of the mass; near rest it is its root.
      expect(relative(end.travelledM, stays.travelledM)).toBeLessThanOrEqual(1e-10);
      expect(Math.abs(end.speedMs - stays.speedMs)).toBeLessThanOrEqual(1e-9);
      expect(relative(end.timeS, stays.timeS)).toBeLessThanOrEqual(1e-9);
    }
  });

  it.each([-12, 25])('is the same in one and in a hundred parts, mass slope %s', (massSlope) => {
    for (const [netN, netSlope, speedMs] of [
      [120, 0, 0],
      [60, 40, 0],
      [200, -40, 0.1],
      [-90, 5, 2],
    ] as const) {
      const piece: Piece = { lengthM: 8, netN, netSlope, massKg: 400, massSlope };
      const whole = pass(piece, speedMs).end;
      let speed: number = speedMs;
      let [timeS, went] = [0, 0];
      for (let part = 0; part < 100; part++) {
        const atM = 0.08 * part;
        const { end } = pass(
          {
            lengthM: 0.08,
            netN: netN + netSlope * atM,
            netSlope,
            massKg: 400 + massSlope * atM,
            massSlope,
          },
          speed,
        );
        speed = end.speedMs;
        timeS += end.timeS;
        went += end.travelledM;
        if (end.speedMs === 0) break;
      }
      expect(relative(went, whole.travelledM)).toBeLessThanOrEqual(1e-12);
      expect(relative(timeS, whole.timeS)).toBeLessThanOrEqual(1e-10);
      expect(Math.abs(speed - whole.speedMs)).toBeLessThanOrEqual(1e-10);
    }
  });

  it('says how it was where the force turned', () => {
    const { turn, end } = pass({ ...EVEN, netSlope: -20 }, 0);
    expect(turn?.travelledM).toBe(6);
    expect(turn?.speedMs).toBeCloseTo(Math.sqrt((2 * 360) / 400), 12);
    expect(end.speedMs).toBeLessThan(turn?.speedMs ?? 0);
    expect(pass(EVEN, 0).turn).toBeNull();
    // At rest before it.
    expect(pass({ ...EVEN, netN: -120, netSlope: 20 }, 0.1).turn).toBeNull();
  });

  it('stays where it is slowed from rest', () => {
    expect(pass({ ...EVEN, netN: -1 }, 0).end).toEqual({ travelledM: 0, speedMs: 0, timeS: 0 });
  });
});
