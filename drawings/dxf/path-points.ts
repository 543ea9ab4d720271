/** The lines of SVG path data, for forms that have no curves; absolute M, L, H, V, C, Z only. */
import { assert } from '#outcome';
import { type Point, point } from '../shape.ts';

export type Run = { readonly points: readonly Point[]; readonly closed: boolean };

/** Pieces of a curve of a sign, which is no larger than a letter. */
const PIECES = 8;

const bezier = (from: Point, one: Point, two: Point, to: Point): readonly Point[] =>
  Array.from({ length: PIECES }, (_, index) => {
    const t = (index + 1) / PIECES;
    const s = 1 - t;
    const mix = (a: number, b: number, c: number, d: number): number =>
      s ** 3 * a + 3 * s ** 2 * t * b + 3 * s * t ** 2 * c + t ** 3 * d;
    return point(mix(from.x, one.x, two.x, to.x), mix(from.y, one.y, two.y, to.y));
  });

const numbersOf = (text: string): readonly number[] =>
  (text.match(/-?\d*\.?\d+/g) ?? []).map(Number);

const pointsAfter = (command: string, n: readonly number[], from: Point): readonly Point[] => {
  const [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0] = n;
  switch (command) {
    case 'M':
    case 'L':
      return Array.from({ length: n.length / 2 }, (_, at) =>
        point(n[at * 2] ?? 0, n[at * 2 + 1] ?? 0),
      );
    case 'H':
      return [point(a, from.y)];
    case 'V':
      return [point(from.x, a)];
    case 'C':
      return bezier(from, point(a, b), point(c, d), point(e, f));
    default:
      assert(false, `no way to draw ${command} without curves`);
  }
};

export const runsOfPath = (d: string): readonly Run[] => {
  const runs: { points: Point[]; closed: boolean }[] = [];
  for (const [, command = '', rest = ''] of d.matchAll(/([A-Za-z])([^A-Za-z]*)/g)) {
    const last = runs.at(-1);
    if (command === 'Z') {
      if (last !== undefined) last.closed = true;
      continue;
    }
    const from = last?.points.at(-1) ?? point(0, 0);
    const points = pointsAfter(command, numbersOf(rest), from);
    if (command === 'M' || last === undefined) runs.push({ points: [...points], closed: false });
    else last.points.push(...points);
  }
  return runs;
};
