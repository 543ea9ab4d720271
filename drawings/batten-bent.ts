/** The pipe as it bends, drawn larger than it is, with the true level as a thin line. */
import type { StructureState } from '#assessment';
import { type BattenSubject, placesAlong, solvedOf } from './batten-frame.ts';
import type { Point, Shape } from './shape.ts';
import { group, line, point, polygon, polyline, rect } from './shape.ts';

const PIPE = 6;

export type BentPipe = {
  readonly shapes: readonly Shape[];
  /** Middle of the pipe as drawn. */
  readonly yAt: (acrossM: number) => number;
};

type Place = { readonly levelY: number; readonly times: number };

const yOf = (
  state: StructureState,
  { levelY, times }: Place,
  { perMetre }: BattenSubject,
): ((acrossM: number) => number) => {
  const solved = solvedOf(state);
  return (acrossM) =>
    solved === null ? levelY : levelY + solved.at(acrossM).deflection * times * perMetre;
};

const alongPipe = (subject: BattenSubject, yAt: (acrossM: number) => number): readonly Point[] =>
  placesAlong(subject.structure, []).map((x) => point(subject.xOf(x), yAt(x)));

const shifted = (points: readonly Point[], by: number): readonly Point[] =>
  points.map(({ x, y }) => point(x, y + by));

export const bentPipe = (subject: BattenSubject, place: Place): BentPipe => {
  const { structure, state, before, xOf } = subject;
  const yAt = yOf(state, place, subject);
  const points = alongPipe(subject, yAt);
  const level = line(
    xOf(structure.left) - 6,
    place.levelY,
    xOf(structure.right) + 6,
    place.levelY,
    {
      stroke: 'line',
      weight: 'thin',
      dash: 'centre',
    },
  );
  const ghost =
    before === undefined || solvedOf(state) === null
      ? []
      : [
          polyline(alongPipe(subject, yOf(before, place, subject)), {
            stroke: 'ink2',
            weight: 'thin',
            dash: 'other',
          }),
        ];
  const outline = [...shifted(points, -PIPE / 2), ...shifted(points, PIPE / 2).toReversed()];
  return {
    shapes: [
      level,
      group([polygon(outline, { stroke: 'ink', weight: 'mid', fill: 'paper' })], {
        part: 'bent pipe',
      }),
      ...ghost,
      ...splices(subject, yAt),
    ],
    yAt,
  };
};

/** A joint of two lengths of pipe, as a sleeve. */
const splices = (
  { structure, xOf }: BattenSubject,
  yAt: (acrossM: number) => number,
): readonly Shape[] =>
  structure.splices.map(({ x }) =>
    rect(xOf(x) - 5, yAt(x) - PIPE / 2 - 1.5, 10, PIPE + 3, {
      stroke: 'ink',
      weight: 'mid',
      fill: 'paper',
      hatch: 'lock',
    }),
  );
