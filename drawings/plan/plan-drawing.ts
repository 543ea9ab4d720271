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

export const planStrips = (letter: number): PlanStrips => ({ sets: letter * 4, foot: letter * 4 });

export const wholePlan = (house: House): FieldView => {
  const half = halfWidth(house);
  const { toY } = stageDepth(house);
  // Room for the names of bays at the right.
  // A lift in the pit lies downstage of the plaster line.
  const openings = house.openings.map(({ y: [from] }) => from - 0.5);
  const bottom = Math.min(-2, ...openings);
  return { left: -half - 0.6, right: half + 2.4, bottom, top: toY + 1.25 };
};

/** Numbers that stand over one another are every second or third, and the set in hand. */
const setStrip = (
  { house, sets }: PlanSubject,
  { height, letter, strips, chosen = null }: PlanOptions,
  scale: FieldScale,
): Drawing => {
  const apart = letter * 1.02;
  const most = Math.max(1, Math.floor((height - letter) / apart));
  const inSight = sets
    .flatMap((set) => {
      const upstageM = upstageOf(set);
      const y = upstageM === null ? -1 : scale.yOf(upstageM);
      return y < 0 || y > height ? [] : [{ id: set.lineSet.id, y }];
    })
    .toSorted((one, other) => one.y - other.y);
  const every = Math.ceil(inSight.length / most);
  const shown = inSight.filter(({ id }, index) => index % every === 0 || id === chosen);
  const places = spread(
    shown.map(({ y }) => y),
    apart,
    { from: letter / 2, to: height - letter / 2 },
  );
  const width = strips.sets;
  const shapes = shown.flatMap(({ id, y }, index): readonly Shape[] => {
    const at = places[index] ?? y;
    const pen = id === chosen ? 'blue' : 'ink';
    return [
      lettering(width - 14, at + letter * 0.34, id, letter, {
        anchor: 'end',
        pen,
        weight: id === chosen ? 'strong' : 'plain',
      }),
      polyline([point(width - 11, at), point(width - 6, at), point(width, y)], {
        stroke: 'line',
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
