import { describe, expect, it } from 'vitest';
import { dropped, fallInAir, freeFall } from './dropped.ts';
import { feet, pounds } from './example-runs.ts';

const BRICK = {
  mass: pounds(25),
  from: feet(58),
  speed: 0,
  bounce: { least: 2, shareOfFall: 0.25 },
  levels: [
    { name: 'deck', height: 0 },
    { name: 'upper gallery', height: feet(58) },
    { name: 'mid gallery', height: feet(38) },
    { name: 'trap', height: -3 },
  ],
};

describe('a dropped brick', () => {
  it('25 lb from 58 ft: 18.6 m/s, 1966 J, 1.9 s; from 38 ft 15.1 m/s, 1288 J', () => {
    const deck = dropped(BRICK).find(({ name }) => name === 'deck');
    expect(deck?.free.speed).toBeCloseTo(18.6, 1);
    expect(deck?.free.energy).toBeCloseTo(1966, 0);
    expect(deck?.free.time).toBeCloseTo(1.9, 1);
    const lower = dropped({ ...BRICK, from: feet(38) }).find(({ name }) => name === 'deck');
    expect(lower?.free.speed).toBeCloseTo(15.1, 1);
    expect(lower?.free.energy).toBeCloseTo(1288, 0);
  });

  it('falls on every level below, lowest last, and on none at its own height', () => {
    const onto = dropped(BRICK);
    expect(onto.map(({ name }) => name)).toEqual(['mid gallery', 'deck', 'trap']);
    expect(onto[2]?.fall).toBeCloseTo(feet(58) + 3, 12);
  });

  it('clears its reach and the larger part of the allowance of the house', () => {
    const onto = dropped({ ...BRICK, speed: 2 });
    const deck = onto.find(({ name }) => name === 'deck');
    expect(deck?.zone.allowance).toEqual({ distance: 0.25 * feet(58), basis: 'houseRule' });
    expect(deck?.zone.distance).toBeCloseTo(2 * (deck?.free.time ?? 0) + 0.25 * feet(58), 12);
    const mid = onto.find(({ name }) => name === 'mid gallery');
    expect(mid?.zone.allowance.distance).toBe(2);
    expect(mid && 'inAir' in mid).toBe(false);
  });

  it('reaches further in air, which keeps it up longer', () => {
    const air = { dragCoefficient: 1.2, area: 0.03, density: 1.2 };
    const [onto] = dropped({ ...BRICK, speed: 3, air });
    expect(onto?.inAir?.reach).toBeGreaterThan(onto?.free.reach ?? Number.NaN);
    expect(onto?.zone.reach).toBe(onto?.inAir?.reach);
  });
});

describe('a fall in air', () => {
  const light = { massKg: 0.05, fallM: 100, speedMs: 0 };

  it('comes to the speed at which drag is the weight', () => {
    const air = { dragCoefficient: 1, area: 0.05, density: 1.2 };
    const terminal = Math.sqrt((2 * 0.05 * 9.80665) / (1.2 * 0.05));
    expect(fallInAir(light, air).speed).toBeCloseTo(terminal, 9);
    // From rest it is behind one that always falls so fast by (c/g)·ln 2.
    const late = (terminal / 9.80665) * Math.LN2;
    expect(fallInAir(light, air).time).toBeCloseTo(100 / terminal + late, 9);
  });

  it('is a free fall in next to no air', () => {
    const none = fallInAir(
      { ...light, speedMs: 2 },
      { dragCoefficient: 1, area: 1e-12, density: 1 },
    );
    const free = freeFall({ ...light, speedMs: 2 });
    for (const figure of ['time', 'speed', 'energy', 'reach'] as const) {
      expect(none[figure] / free[figure]).toBeCloseTo(1, 7);
    }
  });
});
