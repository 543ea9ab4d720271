/**
 * A batten on its lift lines from the house: what each line pulls, what hangs, how the pipe bends.
 * Across is to scale, heights are not, and how much larger the bend is drawn stands beside it.
 */

import type { SetStructure, StructureState } from '#assessment';
import type { House } from '#house';
import { phrase, toldEach } from '#texts';
import { bentPipe } from './batten-bent.ts';
import {
  type BattenLoadsOptions,
  type BattenSubject,
  BEND_ROOM,
  battenSubject,
  solvedOf,
  timesDrawn,
} from './batten-frame.ts';
import { loadsKey, loadsTier } from './batten-hung-loads.ts';
import { figuresTier, runShapes, unansweredWires, wireShapes } from './batten-lines.ts';
import { tensionWords } from './batten-words.ts';
import { sagWords, utilisationWords } from './bending-words.ts';
import { glyphAt } from './glyphs.ts';
import { linesOfText } from './lettering.ts';
import { momentStrip } from './moment-strip.ts';
import { noAnswerWords } from './no-answer.ts';
import { scaleBar } from './scale-bar.ts';
import type { Drawing, Shape } from './shape.ts';
import { group, lettering, line, rect } from './shape.ts';
import { widthWords } from './tension-width.ts';
import { LEADING, textBlock } from './text-block.ts';

/** A drawing that a hand can be laid on: where a place across the stage is, and the loads' band. */
export type BattenLoadsDrawing = Drawing & {
  readonly xOf: (acrossM: number) => number;
  readonly acrossOf: (x: number) => number;
  readonly loads: { readonly top: number; readonly bottom: number };
};

const LINE_LENGTH = 54;

type Stack = { readonly shapes: readonly Shape[]; readonly bottom: number };

/** The lines run to the head block on the operating side; a phone has the arrow alone. */
const sides = ({ width, letter, house, isNarrow }: BattenSubject): readonly Shape[] => {
  const style = { pen: 'ink2' } as const;
  const isRight = house.stage.operatingSide === 'stageRight';
  const [right, left] = isNarrow
    ? ['', '']
    : [
        isRight ? phrase(house, ', to the head block') : '',
        isRight ? '' : phrase(house, ', to the head block'),
      ];
  return [
    lettering(0, letter, phrase(house, 'stage right{right}', { right }), letter, style),
    lettering(width, letter, phrase(house, 'stage left{left}', { left }), letter, {
      ...style,
      anchor: 'end',
    }),
    lettering(width / 2, letter, phrase(house, 'centre line'), letter, {
      ...style,
      anchor: 'middle',
    }),
  ];
};

type Sentence = {
  readonly text: string;
  readonly isStrong: boolean;
  /** Past what is allowed: the mark of a caution stands before it. */
  readonly isPast?: boolean;
};

const sentences = (
  texts: readonly Sentence[],
  top: number,
  { letter, width }: BattenSubject,
): Stack => {
  const rows = texts.flatMap(({ text, isStrong, isPast = false }) => {
    const weight = isStrong ? 'strong' : 'plain';
    const inset = isPast ? letter * 1.4 : 0;
    return linesOfText(text, letter, width - inset, { weight }).map(
      (row, index) => ({ row, weight, inset, isMarked: isPast && index === 0 }) as const,
    );
  });
  return {
    shapes: rows.flatMap(({ row, weight, inset, isMarked }, index) => [
      ...(isMarked ? [glyphAt('caution', 0, top + index * letter * LEADING, letter * 1.15)] : []),
      lettering(inset, top + letter * (1 + index * LEADING), row, letter, {
        weight,
        pen: weight === 'strong' ? 'ink' : 'ink2',
      }),
    ]),
    bottom: top + rows.length * letter * LEADING,
  };
};

const scaleWords = (times: number, house: House): string => {
  if (times === 1) return phrase(house, 'the pipe is drawn as it bends');
  return times > 1
    ? phrase(house, 'bending drawn {times} times as large', { times })
    : phrase(house, 'bending drawn 1/{times} as large', { times: Math.round(1 / times) });
};

/** What is read off it: bending against what is allowed, sag, and how it is drawn. */
const said = (subject: BattenSubject, times: number, top: number): Stack => {
  const solved = solvedOf(subject.state);
  if (solved === null) return { shapes: [], bottom: top };
  const { lineLimitN, house, isNarrow, before } = subject;
  const limit =
    lineLimitN === null
      ? phrase(house, 'what a line may carry is not known')
      : phrase(house, 'a line may carry {tension}', {
          tension: tensionWords(house, lineLimitN, 'down'),
        });
  const sag = sagWords(solved, subject);
  const was = before === undefined ? '' : phrase(house, ', with two dots: as it was');
  const key = phrase(house, '{scale}: {sag}. Line of dashes and dots: level{was}.', {
    scale: scaleWords(times, house),
    sag,
    was,
  });
  const width = widthWords(lineLimitN, house);
  const lines = `${limit.charAt(0).toUpperCase()}${limit.slice(1)}; ${width}.`;
  const upper = `${key.charAt(0).toUpperCase()}${key.slice(1)}`;
  return sentences(
    [
      {
        text: utilisationWords(solved, subject),
        isStrong: true,
        isPast: (solved.utilisation?.value ?? 0) > 1,
      },
      ...(isNarrow
        ? [
            { text: upper, isStrong: false },
            { text: lines, isStrong: false },
          ]
        : [{ text: `${upper} ${lines}`, isStrong: false }]),
    ],
    top,
    subject,
  );
};

const foot = ({ perMetre, house, letter, width, isNarrow }: BattenSubject, y: number): Stack => {
  const bar = scaleBar({
    x: 0,
    y: y + letter * 0.6,
    room: width / 4,
    perMetre,
    units: house.units,
    letter,
  });
  const words = isNarrow
    ? phrase(house, 'heights not to scale')
    : phrase(house, 'across to scale, heights not to scale');
  return {
    shapes: [
      bar,
      lettering(width, y + letter * 1.1, words, letter, { anchor: 'end', pen: 'ink2' }),
    ],
    bottom: y + letter * 1.9,
  };
};

/** The word in a doubled frame, as everything that nothing holds, and the reason beneath. */
const noAnswer = (subject: BattenSubject, top: number): Stack => {
  const { state, house, letter, width } = subject;
  if (!('unstable' in state.beam)) return { shapes: [], bottom: top };
  const { word, reason } = noAnswerWords(state.beam.unstable, house);
  const room = Math.min(width - 16, letter * 46);
  const block = textBlock(
    [
      ...linesOfText(reason, letter, room - letter * 4).map((text) => ({ text })),
      { text: phrase(house, 'No figures are given.') },
    ],
    letter,
    { backed: false },
  );
  const inner = { x: 8, y: top + 8 };
  const height = letter * 1.5 + block.height + letter * 1.2;
  return {
    shapes: [
      rect(inner.x - 4, inner.y - 4, room + 8, height + 8, { stroke: 'red', weight: 'thin' }),
      rect(inner.x, inner.y, room, height, { stroke: 'red', weight: 'pencil' }),
      glyphAt('danger', inner.x + letter * 0.6, inner.y + letter * 0.5, letter * 1.4),
      lettering(inner.x + letter * 2.6, inner.y + letter * 1.6, word, letter * 1.15, {
        weight: 'strong',
        pen: 'red',
      }),
      ...block.at({ x: inner.x + letter * 2.6, y: inner.y + letter * 2 }),
    ],
    bottom: inner.y + height + letter,
  };
};

type Body = Stack & { readonly loads: BattenLoadsDrawing['loads']; readonly times: number };

/** Figures, wires, pipe and what hangs, from the top down. */
const body = (subject: BattenSubject): Body => {
  const { letter, state } = subject;
  const times = timesDrawn(subject);
  const figures = figuresTier(subject, letter * 1.5);
  const isSolved = solvedOf(state) !== null;
  const runY = (isSolved ? figures.foot : letter * 2) + 2;
  const levelY = runY + LINE_LENGTH + BEND_ROOM;
  const pipe = bentPipe(subject, { levelY, times });
  const wires = isSolved
    ? wireShapes(subject, runY, pipe.yAt)
    : unansweredWires(subject, runY, levelY);
  const top = levelY + BEND_ROOM + 6;
  const hung = loadsTier(subject, { top, pipeY: pipe.yAt });
  const key = loadsKey(subject, top + hung.height);
  return {
    shapes: [
      ...(isSolved ? figures.shapes : []),
      ...runShapes(subject, runY),
      ...wires,
      ...pipe.shapes,
      group(hung.shapes, { part: 'loads' }),
      ...key.shapes,
    ],
    bottom: top + hung.height + key.height + letter * 0.6,
    loads: { top: levelY - 8, bottom: top + hung.height },
    times,
  };
};

export const battenLoadsDrawing = (
  structure: SetStructure,
  state: StructureState,
  house: House,
  options: BattenLoadsOptions,
): BattenLoadsDrawing => {
  const subject = battenSubject(structure, state, house, options);
  const { width, letter, xOf, perMetre } = subject;
  const drawn = body(subject);
  const answer = noAnswer(subject, drawn.bottom);
  const strip = momentStrip(subject, answer.bottom);
  const words = said(subject, drawn.times, answer.bottom + strip.height);
  const end = foot(subject, words.bottom + letter * 0.4);
  // A lift line on the centre has its figures there, and is the centre line above the pipe itself.
  const onCentre = structure.lines.some(({ x }) => Math.abs(xOf(x) - width / 2) < letter * 3);
  const centreTop = onCentre ? drawn.loads.top : letter * 1.2;
  return {
    width,
    height: end.bottom,
    title: titleOf(subject),
    shapes: [
      line(width / 2, centreTop, width / 2, drawn.loads.bottom, {
        stroke: 'line',
        weight: 'thin',
        dash: 'centre',
      }),
      ...sides(subject),
      ...drawn.shapes,
      ...answer.shapes,
      ...strip.shapes,
      ...words.shapes,
      ...end.shapes,
    ],
    xOf,
    acrossOf: (x) => (x - width / 2) / perMetre,
    loads: drawn.loads,
  };
};

const titleOf = ({ state, house }: BattenSubject): string => {
  const subject = phrase(house, 'batten on its lines, {name}', {
    name: toldEach(house, state.name),
  });
  if ('unstable' in state.beam) {
    const { word, reason } = noAnswerWords(state.beam.unstable, house);
    return `${subject}: ${word}. ${reason}`;
  }
  const lines = state.lines.map(({ tension, slack }, index) =>
    slack
      ? phrase(house, 'line {index} slack', { index: index + 1 })
      : phrase(house, 'line {index} {tension}', {
          index: index + 1,
          tension: tensionWords(house, tension),
        }),
  );
  return phrase(house, '{subject}, from stage right: {lines}', {
    subject,
    lines: lines.join(', '),
  });
};
