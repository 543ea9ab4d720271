import { describe, expect, it } from 'vitest';
import { answerBatten, type BattenReply } from './answer.ts';
import { demoBatten, ELECTRIC_1, solved, twoSpans } from './example-battens.ts';
import type { BattenCase } from './types.ts';

const answered = (the: BattenCase): Exclude<BattenReply, { readonly unstable: unknown }> => {
  const answer = answerBatten(the);
  if (!answer.ok || 'unstable' in answer.value) throw new Error(JSON.stringify(answer));
  return answer.value;
};

const EVEN = { from: 0, to: 6, mass: 60 };
const STRENGTH = { sectionModulus: 5e-6, yieldStrength: 2.4e8 };
const pipe = (changes: object): BattenCase => {
  const plain = twoSpans([EVEN]);
  return { ...plain, pipe: { ...plain.pipe, ...changes } };
};

describe('a batten as plain data', () => {
  const electric = demoBatten(ELECTRIC_1);
  const reply = answered(electric);

  it('has the fields that are fixed, and no others where nothing else was asked', () => {
    const fields = 'tensions slack moment shear deflection sag rigid sensitivity stations'.split(
      ' ',
    );
    expect(Object.keys(reply)).toEqual(fields);
    expect(JSON.parse(JSON.stringify(reply))).toEqual(reply);
    expect(reply.sensitivity.map((row) => row.length)).toEqual([6, 6, 6, 6, 6, 6]);
    expect(reply.deflection.atLines).toHaveLength(6);
  });

  it('says what the solution says', () => {
    const solution = solved(electric);
    expect(reply.tensions).toEqual(solution.tensions);
    expect(reply.rigid).toEqual(solution.rigid());
    expect(reply.moment).toEqual(solution.moment);
    expect(reply.stations.map(({ x }) => solution.at(x))).toEqual(reply.stations);
  });

  it('has stations from end to end in order, with every line among them', () => {
    const xs = reply.stations.map(({ x }) => x);
    expect([xs[0], xs.at(-1)]).toEqual([electric.left, electric.right]);
    expect(xs).toEqual(xs.toSorted((one, other) => one - other));
    expect(new Set(xs).size).toBe(xs.length);
    for (const { x } of electric.lines) expect(xs).toContain(x);
  });

  it('has stress and utilisation where the pipe has what they need', () => {
    const weak = answered(pipe(STRENGTH));
    // M = w·L²/8 over the middle line, w = 10 kg/m, L = 3 m.
    expect(weak.stress).toBeCloseTo((10 * 9.80665 * 9) / 8 / 5e-6, 3);
    expect(weak.allowable?.method).toBe('firstYield');
    expect(weak.allowable?.moment).toBeCloseTo((2.4e8 * 5e-6) / 1.67, 9);
    expect(weak.utilisation).toBeCloseTo(((10 * 9.80665 * 9) / 8 / (2.4e8 * 5e-6)) * 1.67, 12);
    expect(weak.utilisationAt?.x).toBe(3);
    const plastic = answered(pipe({ ...STRENGTH, plasticModulus: 7e-6 }));
    expect(plastic.allowable?.method).toBe('plastic');
    expect(plastic.utilisation).toBeCloseTo(((weak.utilisation ?? 0) * 5) / 7, 12);
    expect('utilisation' in answered(pipe({ sectionModulus: 5e-6 }))).toBe(false);
    expect('stress' in answered(pipe({ yieldStrength: 2.4e8 }))).toBe(false);
  });

  it('uses more where a joint takes less, though the moment is larger elsewhere', () => {
    const splices = [
      { x: 1.5, strength: 0.25 },
      { x: 5, strength: 1 },
    ];
    const jointed = answered({ ...pipe(STRENGTH), splices });
    // R = 3/8·w·L at the end line: M(1.5) = w·(9/8·1.5 − 1.5²/2).
    const moment = 10 * 9.80665 * ((9 / 8) * 1.5 - 1.5 ** 2 / 2);
    expect(jointed.utilisation).toBeGreaterThan(answered(pipe(STRENGTH)).utilisation ?? 0);
    expect(jointed.utilisation).toBeCloseTo((Math.abs(moment) / (2.4e8 * 5e-6)) * 1.67 * 4, 12);
    expect(jointed.utilisationAt).toMatchObject({ x: 1.5, atSplice: true });
  });

  it('has supports and picks where there are any', () => {
    const piece = {
      bendingStiffness: null,
      loads: [{ x: 1.5, mass: 10 }],
      picks: [1, 2].map((x) => ({ x, stiffness: 1e5 })),
    };
    const stood = answered({
      ...twoSpans([EVEN]),
      supports: [{ x: 4.5, stiffness: 1e5, height: 0 }],
      pieces: [piece],
    });
    expect(stood.supports).toHaveLength(1);
    expect(stood.picks?.[0]?.map((each) => each / 9.80665)).toEqual([
      expect.closeTo(5, 9),
      expect.closeTo(5, 9),
    ]);
  });

  it('finds the sag between lines from their straight line, not from the level', () => {
    const tilted = twoSpans([EVEN], {
      lines: [0, 3, 6].map((x) => ({ x, stiffness: null, trim: -0.01 * x })),
    });
    const level = answered(twoSpans([EVEN]));
    expect(answered(tilted).sag?.value).toBeCloseTo(level.sag?.value ?? Number.NaN, 9);
    // Two spans under an even load: 0.00541612·w·L⁴/(E·I), as in check-values 4.1.
    const wanted = (0.00541612 * 10 * 9.80665 * 81) / (1.289867e-7 * 2e11);
    expect(Math.abs((level.sag?.value ?? 0) - wanted)).toBeLessThan(1e-6 * wanted);
    expect(level.sag?.span).toBe(3);
  });

  it('tells of the span that sags most for its length, whichever it is', () => {
    const uneven = [1.5, 4.5].map((middle) =>
      answered(twoSpans([EVEN], { lines: [0, middle, 6].map((x) => ({ x, stiffness: null })) })),
    );
    expect(uneven.map(({ sag }) => sag?.span)).toEqual([4.5, 4.5]);
    expect(uneven[0]?.sag?.value).toBeCloseTo(uneven[1]?.sag?.value ?? Number.NaN, 12);
  });
});

describe('extremes inside one span', () => {
  it('are found where the slope turns twice between two lines: the middle of three spans', () => {
    // Under an even load the middle span rises beside its lines and sags 1/1920 in its middle.
    const { at, deflection } = solved({
      ...twoSpans([{ from: 0, to: 6, mass: 60 }]),
      lines: [0, 2, 4, 6].map((x) => ({ x, stiffness: null })),
    });
    let least = 0;
    for (let step = 0; step <= 6000; step++) least = Math.min(least, at(step / 1000).deflection);
    expect(least).toBeLessThan(-1e-7);
    expect(deflection.min.value).toBeLessThanOrEqual(least);
    expect(deflection.min.value).toBeGreaterThan(least * 1.0001);
    expect(at(3).deflection * 1920).toBeCloseTo((10 * 9.80665 * 16) / (1.289867e-7 * 2e11), 9);
  });
});
