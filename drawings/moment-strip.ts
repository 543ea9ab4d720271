/** Bending along the batten: sagging below the axis, hogging above, as the pipe itself bends. */

import type { BattenSolution } from '#beam';
import { FOOT, POUND_FORCE } from '#quantities';
import { phrase } from '#texts';
import { type BattenSubject, placesAlong, roundAtLeast, solvedOf } from './batten-frame.ts';
import { placeOfLoad } from './batten-hung-loads.ts';
import { momentWords, roughPlaceWords } from './batten-words.ts';
import { textWidth } from './lettering.ts';
import type { Shape } from './shape.ts';
import { circle, group, lettering, line, point, polygon, polyline } from './shape.ts';

export type Strip = { readonly shapes: readonly Shape[]; readonly height: number };

const HALF_WIDE = 46;
const HALF_NARROW = 38;

const sizeOf = ({ moment }: BattenSolution): number =>
  Math.max(Math.abs(moment.max.value), Math.abs(moment.min.value));

/** The moment at the edge of the strip: a round figure in the house's unit. */
const edgeOf = (solved: BattenSolution, { before, house }: BattenSubject): number => {
  const was = before === undefined ? null : solvedOf(before);
  const mostNm = Math.max(sizeOf(solved), was === null ? 0 : sizeOf(was));
  const unitNm = house.units === 'customary' ? POUND_FORCE * FOOT : 1;
  return roundAtLeast(mostNm / unitNm) * unitNm;
};

type Axis = {
  readonly y: number;
  readonly half: number;
  readonly edgeNm: number;
  readonly yOf: (momentNm: number) => number;
};

const curve = (solved: BattenSolution, axis: Axis, subject: BattenSubject): readonly Shape[] => {
  const { structure, state, xOf } = subject;
  const corners = [
    ...structure.lines.map(({ x }) => x),
    ...state.loads.map(({ load }) => placeOfLoad(load)),
  ];
  const points = placesAlong(structure, corners).map((x) =>
    point(xOf(x), axis.yOf(solved.at(x).moment)),
  );
  const ends = [point(xOf(structure.right), axis.y), point(xOf(structure.left), axis.y)];
  return [
    group([polygon([...points, ...ends], { hatch: 'lock' })]),
    group([polyline(points, { stroke: 'ink', weight: 'mid' })], { part: 'moment' }),
  ];
};

const ghost = (axis: Axis, subject: BattenSubject): readonly Shape[] => {
  const { before, structure, xOf } = subject;
  const was = before === undefined ? null : solvedOf(before);
  if (was === null) return [];
  const points = placesAlong(structure, []).map((x) => point(xOf(x), axis.yOf(was.at(x).moment)));
  return [polyline(points, { stroke: 'ink2', weight: 'thin', dash: 'other' })];
};

/** A figure at an extreme, clear of the edges of the paper. */
const extreme = (
  { x, value }: { readonly x: number; readonly value: number },
  axis: Axis,
  { xOf, width, letter, house, isNarrow }: BattenSubject,
): readonly Shape[] => {
  const words = isNarrow
    ? momentWords(house, value)
    : `${momentWords(house, value)}, ${roughPlaceWords(house, x)}`;
  const half = textWidth(words, letter, { weight: 'strong' }) / 2;
  const at = Math.min(Math.max(xOf(x), half), width - half);
  const y = axis.yOf(value);
  const isSagging = value > 0;
  return [
    circle(xOf(x), y, 3.2, { stroke: 'ink', weight: 'mid', fill: 'paper' }),
    lettering(at, isSagging ? y + letter * 1.25 : y - letter * 0.5, words, letter, {
      anchor: 'middle',
      weight: 'strong',
      backed: true,
    }),
  ];
};

/** What the pipe may take, as two thin dashed lines where they lie within the strip. */
const limits = (
  { allowable }: BattenSolution,
  axis: Axis,
  { structure, xOf }: BattenSubject,
): readonly Shape[] => {
  if (allowable === null || allowable.moment > axis.edgeNm) return [];
  const [from, to] = [xOf(structure.left), xOf(structure.right)];
  const dashed = (allowedNm: number, a: number, b: number): Shape =>
    line(a, axis.yOf(allowedNm), b, axis.yOf(allowedNm), {
      stroke: 'ink',
      weight: 'thin',
      dash: 'hidden',
    });
  return [
    dashed(allowable.moment, from, to),
    dashed(-allowable.moment, from, to),
    ...structure.splices.flatMap(({ x, strength }) =>
      [1, -1].map((way) => dashed(way * allowable.moment * strength, xOf(x) - 9, xOf(x) + 9)),
    ),
  ];
};

const headWords = (
  { allowable }: BattenSolution,
  edgeNm: number,
  { isNarrow, house }: BattenSubject,
): string => {
  const isWithin = allowable !== null && allowable.moment <= edgeNm;
  if (isNarrow) {
    return isWithin
      ? phrase(house, 'bending: sagging below, hogging above; dashed: allowed')
      : phrase(house, 'bending: sagging below, hogging above');
  }
  const head = phrase(house, 'bending of the pipe: sagging below the line, hogging above it');
  if (allowable === null) return head;
  const allowed = momentWords(house, allowable.moment, 'down');
  return isWithin
    ? phrase(house, '{head}; dashed lines: {allowed} allowed', { head, allowed })
    : phrase(house, '{head}; the {allowed} allowed lie outside this strip', { head, allowed });
};

/** Too little to draw: under a thousandth of the edge nothing would be seen. */
const SEEN = 1e-3;

export const momentStrip = (subject: BattenSubject, top: number): Strip => {
  const { state, structure, letter, isNarrow, xOf } = subject;
  const solved = solvedOf(state);
  if (solved === null) return { shapes: [], height: 0 };
  const half = isNarrow ? HALF_NARROW : HALF_WIDE;
  const y = top + letter * 2.7 + half;
  const edgeNm = edgeOf(solved, subject);
  const axis: Axis = { y, half, edgeNm, yOf: (momentNm) => y + (momentNm / edgeNm) * half };
  const extremes = [solved.moment.max, solved.moment.min].filter(
    ({ value }) => Math.abs(value) > SEEN * edgeNm,
  );
  const words = headWords(solved, edgeNm, subject);
  return {
    shapes: [
      lettering(0, top + letter, words, letter, { pen: 'ink2' }),
      ...curve(solved, axis, subject),
      ...ghost(axis, subject),
      line(xOf(structure.left), y, xOf(structure.right), y, { stroke: 'ink', weight: 'thin' }),
      ...limits(solved, axis, subject),
      ...extremes.flatMap((each) => extreme(each, axis, subject)),
    ],
    height: letter * 4.3 + 2 * half,
  };
};
