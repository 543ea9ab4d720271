/** Random battens for the laws, as fast-check draws them; a file for tests only. */
import fc from 'fast-check';
import type { BattenCase, LiftLine, Load } from './types.ts';

const number = (min: number, max: number): fc.Arbitrary<number> =>
  fc.double({ min, max, noNaN: true });

type Load01 = { readonly at: number; readonly to: number | null; readonly mass: number };

const load01: fc.Arbitrary<Load01> = fc.record({
  at: number(0, 1),
  to: fc.option(number(0, 1), { freq: 2 }),
  mass: number(1, 150),
});

const loadIn =
  (left: number, length: number) =>
  ({ at, to, mass }: Load01): Load => {
    if (to === null) return { x: left + at * length, mass };
    return {
      from: left + Math.min(at, to) * length,
      to: left + Math.max(at, to) * length,
      mass,
    };
  };

const line01 = fc.record({
  gap: number(0.3, 1),
  stiffness: number(2e4, 2e5),
  trim: fc.oneof(fc.constant(0), number(-0.02, 0.02)),
});

/** Three to seven wires, some short, some long, and overhangs on which something may hang. */
export const battens: fc.Arbitrary<BattenCase> = fc
  .record({
    left: number(-9, -4),
    length: number(8, 16),
    overhang: number(0.01, 0.12),
    lines: fc.array(line01, { minLength: 3, maxLength: 7 }),
    loads: fc.array(load01, { minLength: 1, maxLength: 8 }),
    massPerLength: number(1, 8),
    secondMoment: number(5e-8, 1e-6),
  })
  .map(({ left, length, overhang, lines, loads, massPerLength, secondMoment }) => {
    const gaps = lines.slice(1).reduce((sum, { gap }) => sum + gap, 0);
    const between = length * (1 - 2 * overhang);
    let x = left + length * overhang;
    const placed = lines.map(({ gap, stiffness, trim }, index): LiftLine => {
      if (index > 0) x += (between * gap) / gaps;
      return { x, stiffness, trim };
    });
    return {
      pipe: { massPerLength, secondMoment, elasticModulus: 2e11 },
      left,
      right: left + length,
      lines: placed,
      loads: loads.map(loadIn(left, length)),
    };
  });
