/**
 * The stage from above: house at the foot, upstage up, stage right at the left as the house sees
 * it. Pipes at their places with their lift lines and how deep what hangs on them is; wells, bays,
 * galleries, traps, and what is kept free.
 */

import type { HouseMoment, SetAssessment } from '#assessment';
import type { House } from '#house';
import { phrase } from '#texts';
import type { FieldScale, FieldSize, FieldView } from '../field-view.ts';
import { fieldScale, fitted } from '../field-view.ts';
import { textWidth } from '../lettering.ts';
import { measureStrip } from '../measure-strip.ts';
import { stageDepth } from '../section/building.ts';
import { upstageOf } from '../section/hangings.ts';
import { spread } from '../section/spread.ts';
import { type Drawing, group, lettering, point, polyline, type Shape } from '../shape.ts';
import { halfWidth, keptFree, planBuilding } from './building.ts';
import { planBays, planSet } from './hangings.ts';

export type PlanSubject = {
  readonly house: House;
  readonly sets: readonly SetAssessment[];
  readonly moment: HouseMoment;
};

export type PlanStrips = { readonly sets: number; readonly foot: number };

export type PlanOptions = FieldSize & {
  readonly letter: number;
  readonly view: FieldView;
  readonly strips: PlanStrips;
  readonly chosen?: string | null;
};

export type PlanParts = {
  readonly field: Drawing;
  /** Numbers of the sets, beside their pipes. */
  readonly sets: Drawing;
  readonly foot: Drawing;
  readonly scale: FieldScale;
};

export const planStrips = (letter: number): PlanStrips => ({ sets: letter * 5, foot: letter * 4 });

export const wholePlan = (house: House): FieldView => {
  const half = halfWidth(house);
  const { toY } = stageDepth(house);
  // Room for the names of bays at the right.
  // A lift in the pit lies downstage of the plaster line.
  const openings = house.openings.map(({ y: [from] }) => from - 0.5);
  const bottom = Math.min(-2, ...openings);
  return { left: -half - 0.6, right: half + 2.4, bottom, top: toY + 1.25 };
};

const LEADER = 14;
const COLUMN_GAP = 6;

type SetAt = { readonly id: string; readonly y: number };
type NumberAt = SetAt & { readonly at: number; readonly right: number };

/** Each number at its own pipe, by turns in a near and a far column, where both have room. */
const numbersOf = (
  shown: readonly SetAt[],
  { height, letter, strips }: PlanOptions,
): readonly NumberAt[] => {
  const widest = Math.max(0, ...shown.map(({ id }) => textWidth(id, letter, { weight: 'strong' })));
  const isRoom = LEADER + COLUMN_GAP + 2 * widest <= strips.sets;
  const columns = isRoom ? 2 : 1;
  return Array.from({ length: columns }, (_, column) => {
    const mine = shown.filter((__, index) => index % columns === column);
    const places = spread(
      mine.map(({ y }) => y),
      letter * 1.02,
      { from: letter / 2, to: height - letter / 2 },
    );
    const right = strips.sets - LEADER - column * (widest + COLUMN_GAP);
    return mine.map((each, index) => ({ ...each, right, at: places[index] ?? each.y }));
  }).flat();
};

/** As many numbers as stand beside their own pipe: else one would be read for its neighbour's. */
const readable = (inSight: readonly SetAt[], options: PlanOptions): readonly NumberAt[] => {
  const { letter, chosen = null } = options;
  for (let every = 1; every < inSight.length; every += 1) {
    const shown = inSight.filter(({ id }, index) => index % every === 0 || id === chosen);
    const numbers = numbersOf(shown, options);
    if (numbers.every(({ at, y }) => Math.abs(at - y) <= letter / 2)) return numbers;
  }
  return numbersOf(
    inSight.filter(({ id }, index) => index === 0 || id === chosen),
    options,
  );
};

/** Numbers that have no room are every second or third, and the set in hand is always there. */
const setStrip = (
  { house, sets }: PlanSubject,
  options: PlanOptions,
  scale: FieldScale,
): Drawing => {
  const { height, letter, strips, chosen = null } = options;
  const width = strips.sets;
  const inSight = sets
    .flatMap((set) => {
      const upstageM = upstageOf(set);
      const y = upstageM === null ? -1 : scale.yOf(upstageM);
      return y < 0 || y > height ? [] : [{ id: set.lineSet.id, y }];
    })
    .toSorted((one, other) => one.y - other.y);
  const shapes = readable(inSight, options).flatMap(({ id, y, at, right }): readonly Shape[] => {
    const isChosen = id === chosen;
    return [
      lettering(right, at + letter * 0.34, id, letter, {
        anchor: 'end',
        pen: isChosen ? 'blue' : 'ink',
        weight: isChosen ? 'strong' : 'plain',
      }),
      polyline([point(right + 3, at), point(width - LEADER / 2, at), point(width, y)], {
        stroke: isChosen ? 'blue' : 'line',
        weight: 'hair',
      }),
    ];
  });
  return {
    width,
    height,
    title: phrase(house, 'Sets of {name}, upstage up', { name: house.name }),
    shapes,
  };
};

export const planTitle = ({ house, moment }: PlanSubject): string =>
  phrase(house, 'Plan of the stage of {name}, {is}, battens and what hangs', {
    name: house.name,
    is: moment.is,
  });

/** Everything that is in the view. */
export const planParts = (subject: PlanSubject, options: PlanOptions): PlanParts => {
  const { house, sets, moment } = subject;
  const { width, height, letter, view, strips, chosen = null } = options;
  const scale = fieldScale(view, { width, height });
  return {
    field: {
      width,
      height,
      title: planTitle(subject),
      shapes: [
        group(planBuilding(house, scale, letter), { part: 'building' }),
        ...sets.map((set) => {
          const { id } = set.lineSet;
          const shapes = planSet(set, scale, { moment, isChosen: id === chosen });
          return group(shapes, { part: `set ${id}` });
        }),
        ...keptFree(house, scale, letter),
        ...planBays(subject, scale, letter),
      ],
    },
    sets: setStrip(subject, options, scale),
    foot: measureStrip(house, scale, {
      letter,
      view,
      height: strips.foot,
      words: phrase(house, 'from the centre line; stage right at the left'),
    }),
    scale,
  };
};

/** The whole plan with its strips on one paper: for print and for files. */
export const planDrawing = (
  subject: PlanSubject,
  { width, height, letter, ...options }: Omit<PlanOptions, 'view' | 'strips'>,
): Drawing => {
  const strips = planStrips(letter);
  const room = { width: width - strips.sets, height: height - strips.foot };
  const view = fitted(wholePlan(subject.house), room);
  const parts = planParts(subject, { ...options, ...room, letter, strips, view });
  const at = (x: number, y: number, drawing: Drawing): Shape =>
    group(drawing.shapes, { at: point(x, y) });
  return {
    width,
    height,
    title: planTitle(subject),
    shapes: [
      at(strips.sets, 0, parts.field),
      at(0, 0, parts.sets),
      at(strips.sets, room.height, parts.foot),
    ],
  };
};
