/** What hangs below the pipe at its true place: points by their letters, patches as combs. */

import type { PlacedLoad } from '#assessment';
import type { Load } from '#beam';
import { phrase } from '#texts';
import type { BattenSubject } from './batten-frame.ts';
import { fromCentre } from './batten-front.ts';
import { tagOf } from './hanging-points.ts';
import { linesOfText, textWidth } from './lettering.ts';
import { massWords } from './printed.ts';
import { inRows } from './rows.ts';
import type { Shape } from './shape.ts';
import { circle, group, lettering, line, rect } from './shape.ts';
import { LEADING } from './text-block.ts';

export type LoadsTier = { readonly shapes: readonly Shape[]; readonly height: number };

type Drawn = {
  /** Its place among the loads of the state. */
  readonly index: number;
  readonly tag: string;
  readonly of: string;
  readonly load: Load;
};

/** Loads of what hangs, each with the letter of its item. */
export const drawnLoads = (
  loads: readonly PlacedLoad[],
  items: readonly string[],
): readonly Drawn[] =>
  loads.flatMap(({ of, load }, index) => {
    const item = items.indexOf(of);
    return item === -1 ? [] : [{ index, tag: tagOf(item), of, load }];
  });

export const placeOfLoad = (load: Load): number =>
  'x' in load ? load.x : (load.from + load.to) / 2;

type Label = Drawn & {
  readonly x: number;
  readonly words: readonly string[];
  readonly halfWidth: number;
};

const labelsOf = (drawn: readonly Drawn[], subject: BattenSubject): readonly Label[] => {
  const { letter, house, isNarrow, xOf } = subject;
  return drawn.flatMap((each) => {
    const { load } = each;
    if (!('x' in load)) return [];
    const words = isNarrow ? [] : [massWords(house, load.mass), fromCentre(load.x, house)];
    const widths = words.map((text) => textWidth(text, letter));
    const halfWidth = Math.max(letter * 1.5, ...widths) / 2 + 3;
    return [{ ...each, x: xOf(load.x), words, halfWidth }];
  });
};

const tagShapes = (
  { x, tag, words, index }: Label,
  y: number,
  { letter, inHand }: BattenSubject,
): readonly Shape[] => {
  const radius = letter * 0.72;
  const held = index === inHand;
  return [
    circle(x, y + radius, radius, {
      stroke: held ? 'blue' : 'ink',
      weight: held ? 'pencil' : 'mid',
      fill: 'paper',
    }),
    lettering(x, y + radius + letter * 0.33, tag, letter, { anchor: 'middle', weight: 'strong' }),
    ...words.map((text, row) =>
      lettering(x, y + 2 * radius + letter * (1.05 + row * LEADING), text, letter, {
        anchor: 'middle',
        pen: row === 0 ? 'ink' : 'ink2',
        backed: true,
      }),
    ),
  ];
};

/**
 * Rows where tags would touch. The load in hand hangs lowest, alone in its row: wherever it goes it
 * lies clear of the others, and nothing else moves.
 */
const rowsOf = (labels: readonly Label[], { inHand }: BattenSubject): readonly number[] => {
  const others = labels.filter(({ index }) => index !== inHand);
  const rows = inRows(
    others.map(({ x, halfWidth }) => ({ from: x - halfWidth, to: x + halfWidth })),
  );
  const lowest = Math.max(0, ...rows.map((row) => row + 1));
  return labels.map((label) => rows[others.indexOf(label)] ?? lowest);
};

/** Single loads, each on a line from the pipe. */
const pointTier = (
  labels: readonly Label[],
  subject: BattenSubject,
  { top, pipeY }: { readonly top: number; readonly pipeY: (acrossM: number) => number },
): LoadsTier => {
  const { letter } = subject;
  const rows = rowsOf(labels, subject);
  const rowHeight = letter * 1.44 + 4 + (subject.isNarrow ? 0 : letter * 2 * LEADING);
  const placed = labels.map((label, index) => ({
    label,
    y: top + rowHeight * (rows[index] ?? 0),
  }));
  const hangers = placed.map(({ label, y }) => hanger(label, { y, pipeY }, subject));
  const tags = placed.map(({ label, y }) =>
    group(tagShapes(label, y, subject), { part: `load ${label.index}` }),
  );
  const count = Math.max(0, ...rows.map((row) => row + 1));
  return { shapes: [...hangers, ...tags], height: count * rowHeight };
};

const hanger = (
  { load, x, index }: Label,
  { y, pipeY }: { readonly y: number; readonly pipeY: (acrossM: number) => number },
  { inHand }: BattenSubject,
): Shape =>
  line(x, pipeY(placeOfLoad(load)) + 3, x, y, {
    stroke: index === inHand ? 'blue' : 'ink',
    weight: index === inHand ? 'pencil' : 'thin',
  });

const TOOTH = 7;
const TEETH_APART = 12;

/** A comb from end to end of a patch, its words where no hanger crosses them if there is such. */
const comb = (
  each: Drawn,
  y: number,
  { hangers, subject }: { readonly hangers: readonly number[]; readonly subject: BattenSubject },
): readonly Shape[] => {
  const { load, tag, index } = each;
  if ('x' in load) return [];
  const { letter, house, xOf, inHand } = subject;
  const [from, to] = [xOf(load.from), xOf(load.to)];
  const held = index === inHand;
  const style = held
    ? ({ stroke: 'blue', weight: 'pencil' } as const)
    : ({ stroke: 'ink', weight: 'thin' } as const);
  const teeth = Math.max(2, Math.round((to - from) / TEETH_APART));
  const words = phrase(house, '{tag}  {at} spread', { tag, at: massWords(house, load.mass) });
  const width = textWidth(words, letter, { weight: 'strong' }) + 8;
  const x = quietPlace({ from, to, width, hangers });
  return [
    line(from, y, to, y, style),
    ...Array.from({ length: teeth + 1 }, (_, tooth) => {
      const at = from + ((to - from) * tooth) / teeth;
      return line(at, y, at, y + TOOTH, style);
    }),
    rect(x, y - letter * 0.62, width, letter * 1.24, { fill: 'paper' }),
    lettering(x + width / 2, y + letter * 0.34, words, letter, {
      anchor: 'middle',
      weight: 'strong',
    }),
  ];
};

const quietPlace = ({
  from,
  to,
  width,
  hangers,
}: {
  readonly from: number;
  readonly to: number;
  readonly width: number;
  readonly hangers: readonly number[];
}): number => {
  const room = Math.max(0, to - from - width);
  const steps = Math.max(1, Math.floor(room / 6));
  const places = Array.from({ length: steps + 1 }, (_, step) => from + (room * step) / steps);
  const crossed = (x: number): number =>
    hangers.filter((hanger) => hanger > x - 3 && hanger < x + width + 3).length;
  return places.reduce(
    (best, place) => (crossed(place) < crossed(best) ? place : best),
    places[0] ?? from,
  );
};

export const loadsTier = (
  subject: BattenSubject,
  place: { readonly top: number; readonly pipeY: (acrossM: number) => number },
): LoadsTier => {
  const { state, items, letter } = subject;
  const drawn = drawnLoads(state.loads, items);
  const labels = labelsOf(drawn, subject);
  const patches = drawn.filter(({ load }) => !('x' in load));
  const combHeight = letter * 1.5;
  const hangers = labels.map(({ x }) => x);
  const points = pointTier(labels, subject, {
    ...place,
    top: place.top + patches.length * combHeight,
  });
  const combs = patches.flatMap((each, row) =>
    comb(each, place.top + row * combHeight + letter * 0.4, { hangers, subject }),
  );
  return {
    shapes: [...points.shapes, ...combs],
    height: patches.length * combHeight + points.height,
  };
};

/** One line an item: its letter, its name, how many places and what hangs at each. */
const itemWords = (subject: BattenSubject): readonly string[] => {
  const { state, items, house } = subject;
  const drawn = drawnLoads(state.loads, items);
  return items.flatMap((of, item) => {
    const masses = drawn.filter((each) => each.of === of).map(({ load }) => load.mass);
    if (masses.length === 0) return [];
    const counts = new Map<string, number>();
    for (const mass of masses) {
      const words = massWords(house, mass);
      counts.set(words, (counts.get(words) ?? 0) + 1);
    }
    const each = [...counts].map(([words, count]) => (count === 1 ? words : `${count} × ${words}`));
    return [`${tagOf(item)}  ${of}: ${each.join(', ')}`];
  });
};

/** The letters, and all of it in one figure; names run on where there is room. */
export const loadsKey = (subject: BattenSubject, top: number): LoadsTier => {
  const { letter, width, state, house, isNarrow } = subject;
  const whole = phrase(house, '{at} with pipe and fittings, which are not drawn', {
    at: massWords(house, state.mass),
  });
  const entries = [...itemWords(subject), whole];
  const texts = isNarrow
    ? entries.flatMap((entry) => linesOfText(entry, letter, width))
    : linesOfText(entries.join(';   '), letter, width);
  return {
    shapes: texts.map((text, row) =>
      lettering(0, top + letter * (1 + row * LEADING), text, letter, { pen: 'ink2' }),
    ),
    height: texts.length * letter * LEADING,
  };
};
