/** Lift lines above a batten: pull as width and number, slack drawn loose and named. */

import type { LineState } from '#assessment';
import type { House } from '#house';
import { phrase } from '#texts';
import type { BattenSubject } from './batten-frame.ts';
import { fromCentre } from './batten-front.ts';
import { tensionWords } from './batten-words.ts';
import { glyphAt } from './glyphs.ts';
import { textWidth } from './lettering.ts';
import { inRows } from './rows.ts';
import type { Shape } from './shape.ts';
import { circle, group, lettering, line, path, point, polygon, rect } from './shape.ts';
import { tensionWidth } from './tension-width.ts';
import { LEADING } from './text-block.ts';

export type LinesTier = {
  readonly shapes: readonly Shape[];
  /** Where the loft blocks hang; lines run down from here. */
  readonly foot: number;
};

const BLOCK_RADIUS = 4.5;
const MARK = 15;
/** How far a loose line swings out of the straight. */
const BOW = 46;

type Label = { readonly words: string; readonly strong: boolean; readonly pen: 'ink' | 'ink2' };

const isPast = ({ tension }: LineState, { lineLimitN }: BattenSubject): boolean =>
  lineLimitN !== null && tension > lineLimitN;

const labelsOf = (each: LineState, index: number, subject: BattenSubject): readonly Label[] => {
  const { house, isNarrow, before } = subject;
  const distance = isNarrow ? '' : `, ${fromCentre(each.x, house)}`;
  const was = before?.lines[index];
  const doubt = each.uncertainty === null ? '' : `± ${tensionWords(house, each.uncertainty)}`;
  const wasWords =
    was === undefined ? '' : was.slack ? phrase(house, 'slack') : tensionWords(house, was.tension);
  const third = was === undefined ? doubt : phrase(house, 'was {wasWords}', { wasWords });
  const name = phrase(house, 'line {index}{distance}', { index: index + 1, distance });
  return [
    { words: name, strong: false, pen: 'ink2' },
    {
      words: each.slack ? phrase(house, 'SLACK') : tensionWords(house, each.tension),
      strong: true,
      pen: 'ink',
    },
    ...(third === '' ? [] : [{ words: third, strong: false, pen: 'ink2' } as const]),
  ];
};

const widthOf = (label: Label, letter: number): number =>
  textWidth(label.words, letter, { weight: label.strong ? 'strong' : 'plain' });

/** The figures of one line, centred over it; SLACK in a box, past its limit with a mark. */
const figures = (
  labels: readonly Label[],
  each: LineState,
  { x, y }: { readonly x: number; readonly y: number },
  subject: BattenSubject,
): readonly Shape[] => {
  const { letter } = subject;
  const past = isPast(each, subject);
  return labels.flatMap((label, row) => {
    const base = y + letter * (1 + row * LEADING);
    const { words, strong, pen } = label;
    const width = widthOf(label, letter);
    const boxed = each.slack && row === 1;
    const marked = past && row === 1;
    return [
      ...(boxed
        ? [
            rect(x - width / 2 - 4, base - letter * 0.92, width + 8, letter * 1.14, {
              stroke: 'ink',
              weight: 'mid',
              fill: 'paper',
            }),
          ]
        : []),
      ...(marked ? [glyphAt('caution', x - width / 2 - MARK - 3, base - letter * 0.9, MARK)] : []),
      lettering(x, base, words, letter, {
        anchor: 'middle',
        weight: strong ? 'strong' : 'plain',
        pen,
        backed: !boxed,
      }),
    ];
  });
};

const pastLabel = (house: House): Label => ({
  words: phrase(house, 'past its limit'),
  strong: true,
  pen: 'ink',
});

/** All figures in as few rows as they need, then the blocks and the run to the head block. */
export const figuresTier = (subject: BattenSubject, top: number): LinesTier => {
  const { state, letter, xOf } = subject;
  const each = state.lines.map((lineState, index) => {
    const past = isPast(lineState, subject) ? [pastLabel(subject.house)] : [];
    return { lineState, labels: [...labelsOf(lineState, index, subject), ...past] };
  });
  const spans = each.map(({ lineState, labels }) => {
    const half = Math.max(...labels.map((label) => widthOf(label, letter))) / 2 + 3;
    return { from: xOf(lineState.x) - half, to: xOf(lineState.x) + half };
  });
  const rows = inRows(spans);
  const deepest = Math.max(3, ...each.map(({ labels }) => labels.length));
  const rowHeight = letter * (deepest * LEADING + 0.5);
  const count = Math.max(1, ...rows.map((row) => row + 1));
  const shapes = each.map(({ lineState, labels }, index) => {
    // The last row of figures stands nearest to its line.
    const row = count - 1 - (rows[index] ?? 0);
    const free = rowHeight - letter * (labels.length * LEADING + 0.4);
    const y = top + row * rowHeight + free;
    return group(figures(labels, lineState, { x: xOf(lineState.x), y }, subject), {
      part: `tension ${index + 1}`,
    });
  });
  return { shapes, foot: top + count * rowHeight };
};

/** The wires turn over their loft blocks and run together to the head block. */
export const runShapes = (subject: BattenSubject, y: number): readonly Shape[] => {
  const { structure, house, width, xOf } = subject;
  const isRight = house.stage.operatingSide === 'stageRight';
  const xs = structure.lines.map(({ x }) => xOf(x));
  const [end, far] = isRight ? [0, Math.max(...xs)] : [width, Math.min(...xs)];
  const inward = isRight ? 1 : -1;
  const tip = end + inward * 1;
  return [
    line(end, y, far, y, { stroke: 'ink', weight: 'thin' }),
    polygon([point(tip, y), point(tip + inward * 9, y - 4), point(tip + inward * 9, y + 4)], {
      fill: 'solid',
    }),
    ...xs.map((x) =>
      circle(x - inward * BLOCK_RADIUS, y + BLOCK_RADIUS, BLOCK_RADIUS, {
        stroke: 'ink',
        weight: 'mid',
        fill: 'paper',
      }),
    ),
  ];
};

/** A loose line hangs in a bow; a tight one is straight, and the thicker the more it carries. */
const wire = (each: LineState, from: number, to: number, subject: BattenSubject): Shape => {
  const x = subject.xOf(each.x);
  if (each.slack) {
    const third = (to - from) / 3;
    return path(
      `M${x} ${from}C${x + BOW} ${from + third} ${x - BOW} ${from + 2 * third} ${x} ${to}`,
      { stroke: 'ink2', weight: 'mid', dash: 'hidden' },
    );
  }
  return line(x, from, x, to, { stroke: 'ink', weight: tensionWidth(each.tension, subject) });
};

export const wireShapes = (
  subject: BattenSubject,
  top: number,
  pipeY: (acrossM: number) => number,
): readonly Shape[] =>
  subject.state.lines.map((each, index) => {
    const y = pipeY(each.x);
    return group(
      [
        wire(each, top + BLOCK_RADIUS, y, subject),
        circle(subject.xOf(each.x), y, 3, { fill: 'solid' }),
      ],
      { part: `line ${index + 1}` },
    );
  });

/** No answer: the lines are there, and how they pull is not known. */
export const unansweredWires = (
  { structure, xOf }: BattenSubject,
  top: number,
  pipeY: number,
): readonly Shape[] =>
  structure.lines.map(({ x }) =>
    line(xOf(x), top + BLOCK_RADIUS, xOf(x), pipeY, {
      stroke: 'line',
      weight: 'thin',
      dash: 'plan',
    }),
  );
