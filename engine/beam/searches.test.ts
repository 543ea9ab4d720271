import { describe, expect, it } from 'vitest';
import { FOOT, GRAVITY, POUND } from '#quantities';
import {
  demoBatten,
  ELECTRIC_1,
  largestMoment,
  POUND_FOOT,
  solved,
  twoSpans,
} from './example-battens.ts';
import { heaviestAt } from './heaviest-load.ts';
import { placePicks } from './place-picks.ts';
import { turnsToEven, turnsToLevel } from './turn-lines.ts';
import type { BattenCase } from './types.ts';

const electric = demoBatten(ELECTRIC_1, { thirdShort: 1 });

const found = <T extends object, E>(
  answer: { readonly ok: true; readonly value: T } | { readonly ok: false; readonly error: E },
): Exclude<T, { readonly unstable: unknown }> => {
  if (!answer.ok) throw new Error(JSON.stringify(answer.error));
  if ('unstable' in answer.value) throw new Error('unstable');
  return answer.value as Exclude<T, { readonly unstable: unknown }>;
};

const apply = (the: BattenCase, trims: readonly number[]): BattenCase => ({
  ...the,
  lines: the.lines.map((line, i) => ({ ...line, trim: trims[i] ?? Number.NaN })),
});

describe('turns that level a batten', () => {
  it('bring every line to one height, and each to what it carries on rigid supports', () => {
    const { turns, trims, after } = found(turnsToLevel(electric));
    const again = solved(apply(electric, trims));
    expect(again.tensions).toEqual(after.tensions);
    const [first = Number.NaN] = after.deflection.atLines;
    for (const y of after.deflection.atLines) expect(Math.abs(y - first)).toBeLessThan(1e-12);
    const rigid = solved(demoBatten(ELECTRIC_1)).rigid();
    for (const [i, each] of after.tensions.entries()) {
      expect(each).toBeCloseTo(rigid?.tensions[i] ?? Number.NaN, 7);
    }
    expect(turns.reduce((sum, turn) => sum + turn, 0)).toBeCloseTo(0, 12);
    for (const [i, turn] of turns.entries()) {
      expect((electric.lines[i]?.trim ?? 0) + turn).toBeCloseTo(trims[i] ?? Number.NaN, 12);
    }
    // The third is an inch short: it is the one to let out, by most of that inch;
    // the others have to make up for their stretch.
    expect(Math.min(...turns)).toBe(turns[2]);
    expect(turns[2]).toBeLessThan(-0.7 * (FOOT / 12));
  });

  it('need none on a level batten', () => {
    const { trims } = found(turnsToLevel(electric));
    const { turns } = found(turnsToLevel(apply(electric, trims)));
    for (const turn of turns) expect(Math.abs(turn)).toBeLessThan(1e-12);
  });

  it('leave a line that hangs loose on a level batten just touching', () => {
    const ended = demoBatten([{ x: 25 * FOOT, mass: 250 * POUND }]);
    const { after, trims } = found(turnsToLevel(ended));
    expect(solved(ended).rigid()?.slack[4]).toBe(true);
    const y = after.deflection.atLines[4] ?? Number.NaN;
    expect(after.tensions[4]).toBeCloseTo(0, 6);
    expect(Math.abs(y + (trims[4] ?? Number.NaN))).toBeLessThan(1e-9);
  });

  it('are none where the batten tips', () => {
    const two = {
      ...twoSpans([{ x: 6, mass: 9 }]),
      lines: [1, 3].map((x) => ({ x, stiffness: 1e5 })),
    };
    const tipped = turnsToLevel(two);
    expect(turnsToEven(two)).toEqual(tipped);
    expect(tipped).toMatchObject({ ok: true, value: { unstable: { code: 'tipsOver' } } });
  });
});

describe('turns that share the load evenly', () => {
  it('make all lines alike under a load in their middle', () => {
    const even: BattenCase = {
      ...demoBatten([{ x: 0, mass: 200 }]),
      lines: electric.lines,
    };
    const { after, turns } = found(turnsToEven(even));
    const sum = after.tensions.reduce((total, each) => total + each, 0);
    for (const each of after.tensions) expect(each).toBeCloseTo(sum / 6, 6);
    expect(turns.reduce((total, turn) => total + turn, 0)).toBeCloseTo(0, 12);
  });

  it('make them go straight with x under any other, which is the nearest to even', () => {
    const { after, before } = found(turnsToEven(electric));
    const xs = electric.lines.map(({ x }) => x);
    const [t0 = 0, , , , , t5 = 0] = after.tensions;
    const slope = (t5 - t0) / ((xs[5] ?? 0) - (xs[0] ?? 0));
    for (const [i, each] of after.tensions.entries()) {
      expect(each).toBeCloseTo(t0 + slope * ((xs[i] ?? 0) - (xs[0] ?? 0)), 6);
    }
    // No other shares that balance are nearer to one another: one step off them is farther.
    const spread = (tensions: readonly number[]): number => {
      const mean = tensions.reduce((sum, each) => sum + each, 0) / tensions.length;
      return tensions.reduce((sum, each) => sum + (each - mean) ** 2, 0);
    };
    expect(spread(after.tensions)).toBeLessThan(spread(before.tensions));
    const step = [1, -2, 1, 0, 0, 0].map((each, i) => (after.tensions[i] ?? 0) + each);
    const back = [1, -2, 1, 0, 0, 0].map((each, i) => (after.tensions[i] ?? 0) - each);
    expect(spread(step)).toBeGreaterThan(spread(after.tensions));
    expect(spread(back)).toBeGreaterThan(spread(after.tensions));
  });
});

describe('the heaviest load at one place', () => {
  const plain = twoSpans([{ from: 0, to: 6, mass: 60 }]);
  const strong: BattenCase = {
    ...plain,
    pipe: { ...plain.pipe, sectionModulus: 5.346e-6, yieldStrength: 241.3e6 },
  };

  it('holds the limit of a line, and a gram more breaks it', () => {
    const limit = 1000;
    const { mass, stoppedBy, line } = found(heaviestAt(plain, 3, { line: limit }));
    // On a line its own load goes into that line alone: 1000 N less 5/4 of 30 kg.
    expect(mass).toBeCloseTo(limit / GRAVITY - 37.5, 2);
    expect(mass).toBeLessThanOrEqual(limit / GRAVITY - 37.5);
    expect([stoppedBy, line]).toEqual(['line', 1]);
  });

  it('holds the limit of bending', () => {
    const { mass, stoppedBy } = found(heaviestAt(strong, 1.5, { utilisation: 1, line: 1e5 }));
    expect(stoppedBy).toBe('bending');
    const use = (kg: number): number =>
      solved({ ...strong, loads: [...strong.loads, { x: 1.5, mass: kg }] }).utilisation?.value ?? 0;
    expect(use(mass)).toBeLessThanOrEqual(1);
    expect(use(mass + 0.002)).toBeGreaterThan(1);
  });

  it('holds the live limit of the batten, whatever hangs already', () => {
    const { mass, stoppedBy } = found(heaviestAt(plain, 1, { liveMass: 100 }));
    expect(stoppedBy).toBe('liveMass');
    expect(mass).toBeCloseTo(40, 2);
    expect(found(heaviestAt(plain, 1, { liveMass: 50 }))).toMatchObject({ mass: 0 });
    expect(found(heaviestAt(plain, 1, { liveMass: 0 }))).toMatchObject({ stoppedBy: 'liveMass' });
  });

  it('stops where the batten tips', () => {
    const short = {
      ...plain,
      lines: plain.lines.slice(1).map((line) => ({ ...line, x: line.x - 1 })),
    };
    // 60 kg at 3 m between lines at 2 and 5 m: 60 kg at 1 m is as far the other way about 2 m.
    const { mass, stoppedBy } = found(heaviestAt(short, 1, { line: 1e5 }));
    expect(stoppedBy).toBe('tipping');
    expect(mass).toBeCloseTo(60, 2);
  });

  it('goes on where a stand takes what the lines may not', () => {
    const stood = { ...plain, supports: [{ x: 1.5, stiffness: null, height: 0.1 }] };
    const { mass, stoppedBy } = found(heaviestAt(stood, 1.5, { line: 2000 }));
    expect([mass, stoppedBy]).toEqual([50_000, 'nothing']);
  });

  it('says that nothing stopped it, and does not make up a limit', () => {
    const onLine = found(heaviestAt({ ...strong, loads: [] }, 3, { utilisation: 1 }));
    expect(onLine).toEqual({ mass: 50_000, stoppedBy: 'nothing', line: null });
  });

  it('is nothing where a limit is broken already', () => {
    expect(found(heaviestAt(plain, 1, { line: 100 }))).toMatchObject({
      mass: 0,
      stoppedBy: 'line',
      line: 0,
    });
  });
});

describe('places to pick a piece', () => {
  const batten = demoBatten([]);
  const tower = { mass: 640 * POUND, centre: 0, halfFrom: 2 * FOOT, halfTo: 10 * FOOT };

  it('are the lines for the tower flat of the demo: two fifths of the bending', () => {
    const [best] = found(placePicks(batten, { ...tower, count: 2 }));
    const onLines = [-4.5, 4.5].map((x) => ({ x: x * FOOT, mass: 320 * POUND }));
    const moment = largestMoment(solved(demoBatten(onLines)));
    // The golden table of the design has 141 lb·ft there, against 361 on picks at −6, 0, 6.
    expect(moment / POUND_FOOT).toBeCloseTo(141, 0);
    expect(best?.largestMoment).toBeLessThanOrEqual(moment);
    // Neighbouring places may beat the line by a little, and are as good as on it.
    expect(Math.abs((best?.xs[1] ?? 0) - 4.5 * FOOT)).toBeLessThan(0.3 * FOOT);
    expect(best?.xs[0]).toBeCloseTo(-(best?.xs[1] ?? 0), 12);
  });

  it('come best first, each with the answer that it is judged by', () => {
    const places = found(placePicks(batten, { ...tower, count: 3 }));
    const moments = places.map(({ largestMoment: each }) => each);
    expect(moments).toEqual(moments.toSorted((one, other) => one - other));
    for (const { xs, largestMoment: each, largestTension } of places) {
      const loads = xs.map((x) => ({ x, mass: tower.mass / 3 }));
      const again = solved(demoBatten(loads));
      expect(largestMoment(again)).toBeCloseTo(each, 8);
      expect(Math.max(...again.tensions)).toBeCloseTo(largestTension, 8);
    }
    const asDrawn = [-6, 0, 6].map((x) => ({ x: x * FOOT, mass: tower.mass / 3 }));
    expect(moments[0]).toBeLessThan(largestMoment(solved(demoBatten(asDrawn))));
  });

  it('are none where every place tips the batten', () => {
    const out = { ...twoSpans([]), lines: [1, 2].map((x) => ({ x, stiffness: 1e5 })) };
    const task = { mass: 50, centre: 4, count: 2, halfFrom: 0.5, halfTo: 1 };
    expect(placePicks({ ...out, loads: [{ x: 1.5, mass: 1 }] }, task)).toEqual({
      ok: true,
      value: [],
    });
  });
});
