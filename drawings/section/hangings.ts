/** Every set at its place, with what hangs on it at its height. */
import { type HouseMoment, hungSpan, type SetAssessment } from '#assessment';
import type { House } from '#house';
import type { Item } from '#show';
import { arborSpan } from '../arbor-shapes.ts';
import type { FieldScale } from '../field-view.ts';
import { glyphAt } from '../glyphs.ts';
import { circle, group, line, rect, type Shape, type Style } from '../shape.ts';

export type HangingOptions = {
  readonly moment: HouseMoment;
  readonly chosen: string | null;
  /** Arbors as outlines beyond, where they are at the operating side. */
  readonly arbors: boolean;
};

const BATTEN = 3;
const BLOCK = 2.5;
const SIGN = 16;

/** The set's place upstage, m; null where nobody has told it. */
export const upstageOf = ({ lineSet: { y } }: SetAssessment): number | null =>
  y.known ? y.value : null;

const itemShapes = (
  item: Item,
  { hang }: SetAssessment,
  { scale, upstageM, heightM }: { scale: FieldScale; upstageM: number; heightM: number },
): readonly Shape[] => {
  const span = hungSpan(item, heightM);
  const x = scale.xOf(upstageM);
  if (span === null) return [];
  const [top, bottom] = [scale.yOf(span.topM), scale.yOf(span.bottomM)];
  const family = hang?.family ?? 'other';
  if (family === 'soft') {
    return [line(x, top, x, bottom, { stroke: 'ink', weight: 'pencil', thing: 'scenery' })];
  }
  const half = hang?.halfDepth.known ? hang.halfDepth.value * scale.perMetre : null;
  // Nobody has told how deep it is: its line alone, as a thing that is hidden.
  if (half === null || half === 0) {
    return [
      line(x, top, x, bottom, { stroke: 'ink', weight: 'mid', dash: 'hidden', thing: 'scenery' }),
    ];
  }
  const outline: Style =
    family === 'electric'
      ? { stroke: 'ink', weight: 'thin', dash: 'hidden', thing: 'scenery' }
      : { stroke: 'ink', weight: 'mid', thing: 'scenery' };
  const [left, right] = [x - half, x + half];
  return [
    rect(left, top, right - left, bottom - top, outline),
    ...(family === 'hard'
      ? [line(left, bottom, right, top, { stroke: 'ink', weight: 'hair', thing: 'scenery' })]
      : []),
  ];
};

const arborShape = (
  { lineSet }: SetAssessment,
  { scale, upstageM, heightM }: { scale: FieldScale; upstageM: number; heightM: number },
): readonly Shape[] => {
  const span = arborSpan(lineSet, heightM);
  if (span === null) return [];
  const half = 3;
  const [top, bottom] = [scale.yOf(span.topM), scale.yOf(span.bottomM)];
  const x = scale.xOf(upstageM);
  return [
    rect(x - half, top, 2 * half, bottom - top, {
      stroke: 'line',
      weight: 'thin',
      thing: 'arbors',
    }),
    line(x - half - 1, bottom, x + half + 1, bottom, {
      stroke: 'line',
      weight: 'mid',
      thing: 'arbors',
    }),
  ];
};

const setShapes = (
  set: SetAssessment,
  house: House,
  scale: FieldScale,
  { moment, chosen, arbors }: HangingOptions,
): readonly Shape[] => {
  const upstageM = upstageOf(set);
  const now = moment.sets.get(set.lineSet.id);
  if (upstageM === null || now === undefined) return [];
  const { loftBlockHeight } = house.stage;
  const x = scale.xOf(upstageM);
  const top = loftBlockHeight.known ? scale.yOf(loftBlockHeight.value) : null;
  const block =
    top === null
      ? []
      : [circle(x, top + BLOCK, BLOCK, { stroke: 'ink', weight: 'thin', thing: 'blocks' })];
  if (now.heightM === null) {
    const lowM = set.lineSet.lowStop.height.known ? set.lineSet.lowStop.height.value : 0;
    const foot = scale.yOf(lowM);
    const head = top ?? 0;
    return [
      ...block,
      line(x, head, x, foot, { stroke: 'line', weight: 'thin', dash: 'plan', thing: 'liftLines' }),
      glyphAt('unknown', x - SIGN / 2, (head + foot) / 2 - SIGN / 2, SIGN),
    ];
  }
  const { heightM, items } = now;
  const place = { scale, upstageM, heightM };
  const hung = (set.hang?.items ?? []).filter(({ id }) => items?.includes(id));
  const y = scale.yOf(heightM);
  const isEmpty = items !== null && items.length === 0;
  const isChosen = set.lineSet.id === chosen;
  return [
    ...block,
    ...(top === null
      ? []
      : [
          line(x, top, x, y, {
            stroke: isChosen ? 'blue' : 'line',
            weight: isChosen ? 'pencil' : 'hair',
            thing: 'liftLines',
          }),
        ]),
    ...(arbors ? arborShape(set, place) : []),
    ...hung.flatMap((item) => itemShapes(item, set, place)),
    circle(
      x,
      y,
      BATTEN,
      isEmpty
        ? { stroke: 'ink', weight: 'thin', fill: 'paper', thing: 'battens' }
        : { fill: 'ink', thing: 'battens' },
    ),
    ...(items === null ? [glyphAt('unknown', x - SIGN / 2, y + BATTEN + 1, SIGN)] : []),
    ...(isChosen ? [circle(x, y, BATTEN + 4, { stroke: 'blue', weight: 'pencil' })] : []),
  ];
};

export const hangingShapes = (
  sets: readonly SetAssessment[],
  house: House,
  scale: FieldScale,
  options: HangingOptions,
): readonly Shape[] =>
  sets.map((set) =>
    group(setShapes(set, house, scale, options), { part: `set ${set.lineSet.id}` }),
  );
