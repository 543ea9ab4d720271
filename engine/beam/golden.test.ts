import { expect, it } from 'vitest';
import {
  demoBatten,
  ELECTRIC_1,
  largestMoment,
  POUND_FOOT,
  POUND_FORCE,
  pounds,
  solved,
} from './example-battens.ts';
import type { BattenCase } from './types.ts';

/**
 * The design's own table for the demo house, computed there on half-foot elements: a figure of
 * ours and no outside check (those are in validation/beam). The table is rounded, so half a pound
 * each, and the half-foot mesh shows in none of them. Moments to 1 lb·ft: half for rounding, half
 * for a peak between two element ends.
 */
const TABLE: readonly (readonly [string, BattenCase, readonly number[], number])[] = [
  ['bare batten', demoBatten([]), [24, 31, 30, 30, 31, 24], 19],
  ['Electric 1', demoBatten(ELECTRIC_1), [171, 183, 183, 187, 189, 87], 154],
  [
    'Electric 1, third line 1 in. short',
    demoBatten(ELECTRIC_1, { thirdShort: 1 }),
    [179, 148, 234, 154, 196, 87],
    260,
  ],
  [
    'Electric 1, third line 3 in. short',
    demoBatten(ELECTRIC_1, { thirdShort: 3 }),
    [197, 78, 337, 88, 210, 89],
    569,
  ],
  [
    'Electric 1 on a batten a hundred times as stiff',
    demoBatten(ELECTRIC_1, { stiffer: 100 }),
    [184, 185, 181, 171, 152, 127],
    452,
  ],
  [
    'that batten, third line 1 in. short',
    demoBatten(ELECTRIC_1, { stiffer: 100, thirdShort: 1 }),
    [157, 133, 335, 124, 127, 123],
    804,
  ],
  [
    'tower flat on picks at −6, 0, +6',
    demoBatten([-6, 0, 6].map((x) => pounds(x, 640 / 3))),
    [9, 79, 318, 311, 81, 10],
    361,
  ],
  [
    'tower flat on picks at ±4.5',
    demoBatten([-4.5, 4.5].map((x) => pounds(x, 320))),
    [10, 70, 327, 319, 72, 10],
    141,
  ],
  ['tower flat on one pick', demoBatten([pounds(0, 640)]), [14, 17, 377, 365, 23, 13], 1167],
  ['250 lb at the end', demoBatten([pounds(25, 250)]), [23, 32, 36, 1, 0, 327], 634],
];

it.each(TABLE)('%s comes out as in the golden table', (_, the, lines, moment) => {
  const solution = solved(the);
  const found = solution.tensions.map((each) => each / POUND_FORCE);
  for (const [index, wanted] of lines.entries()) {
    expect(Math.abs((found[index] ?? Number.NaN) - wanted), `line ${index}`).toBeLessThanOrEqual(
      0.5,
    );
  }
  const peak = largestMoment(solution) / POUND_FOOT;
  expect(Math.abs(peak - moment)).toBeLessThanOrEqual(1);
  expect(found.map((each) => Math.round(each) === 0)).toEqual(lines.map((each) => each === 0));
});

it('250 lb at the end leaves one line slack, and it is named', () => {
  const { slack } = solved(demoBatten([pounds(25, 250)]));
  expect(slack).toEqual([false, false, false, false, true, false]);
});
