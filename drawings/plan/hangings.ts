/** Pipes from above, with their lift lines, what hangs on them, and the bays that carry them. */

import type { HouseMoment, SetAssessment } from '#assessment';
import type { House } from '#house';
import { phrase } from '#texts';
import type { FieldScale } from '../field-view.ts';
import { hangingItems, placesOf } from '../hanging-points.ts';
import { upstageOf } from '../section/hangings.ts';
import { lettering, line, point, polyline, type Shape, type Style } from '../shape.ts';
import { boxOf, halfWidth, isLettered } from './building.ts';

/** Units of a metre below which pipes stand so close that a thick pen would run them together. */
const CLOSE = 26;
/** Half a mark of a lift line on its pipe, of a metre, and in units at most. */
const MARK = { ofMetre: 0.1, most: 3 };

/** Units that a cloth must be deep, and a mark long, to be more than a blot on its pipe. */
const LEAST = { deep: 3, mark: 1.5 };

const isClose = ({ perMetre }: FieldScale): boolean => perMetre < CLOSE;

const hungShapes = (
  set: SetAssessment,
  on: readonly string[],
  { scale, upstageM }: { readonly scale: FieldScale; readonly upstageM: number },
): readonly Shape[] => {
  const half = set.hang?.halfDepth.known ? (set.hang.halfDepth.value as number) : null;
  const { batten } = set.lineSet;
  return hangingItems(set)
    .filter(({ item }) => on.includes(item.id))
    .flatMap((item) => {
      const places = placesOf(item);
      const from = item.span?.from ?? places[0] ?? (batten.left.known ? batten.left.value : null);
      const to = item.span?.to ?? places.at(-1) ?? (batten.right.known ? batten.right.value : null);
      if (from === null || to === null || half === null || half === 0) return [];
      if (2 * half * scale.perMetre < LEAST.deep) return [];
      return [
        boxOf([from, to], [upstageM - half, upstageM + half], scale, {
          stroke: 'ink',
          weight: isClose(scale) ? 'hair' : 'thin',
          thing: 'scenery',
        }),
        ...(set.hang?.family === 'hard'
          ? [
              line(
                scale.xOf(from),
                scale.yOf(upstageM - half),
                scale.xOf(to),
                scale.yOf(upstageM + half),
                { stroke: 'ink', weight: 'hair', thing: 'scenery' },
              ),
            ]
          : []),
      ];
    });
};

export const planSet = (
  set: SetAssessment,
  scale: FieldScale,
  { moment, isChosen }: { readonly moment: HouseMoment; readonly isChosen: boolean },
): readonly Shape[] => {
  const upstageM = upstageOf(set);
  const { batten, lineXs } = set.lineSet;
  if (upstageM === null || !batten.left.known || !batten.right.known) return [];
  const now = moment.sets.get(set.lineSet.id);
  const on = now?.items ?? [];
  const y = scale.yOf(upstageM);
  const [full, bare] = isClose(scale) ? (['thin', 'hair'] as const) : (['mid', 'thin'] as const);
  const pen: Style = isChosen
    ? { stroke: 'blue', weight: 'pencil' }
    : on.length > 0
      ? { stroke: 'ink', weight: full }
      : { stroke: 'line', weight: bare };
  const mark = Math.min(MARK.most, scale.perMetre * MARK.ofMetre);
  return [
    ...hungShapes(set, on, { scale, upstageM }),
    line(scale.xOf(batten.left.value), y, scale.xOf(batten.right.value), y, {
      ...pen,
      thing: 'battens',
    }),
    ...(mark < LEAST.mark ? [] : (lineXs ?? [])).map((x) => {
      const at = scale.xOf(x);
      return line(at, y - mark, at, y + mark, { ...pen, weight: 'thin', thing: 'liftLines' });
    }),
  ];
};

export const planBays = (
  { house, sets }: { readonly house: House; readonly sets: readonly SetAssessment[] },
  scale: FieldScale,
  letter: number,
): readonly Shape[] => {
  const right = scale.xOf(halfWidth(house)) + 6;
  return house.bays.flatMap(({ id, sets: held }) => {
    const ys = sets.flatMap((set) => {
      const upstageM = held.includes(set.lineSet.id) ? upstageOf(set) : null;
      return upstageM === null ? [] : [upstageM];
    });
    if (ys.length === 0) return [];
    const [top, bottom] = [scale.yOf(Math.max(...ys)), scale.yOf(Math.min(...ys))];
    return [
      polyline(
        [point(right - 4, top), point(right, top), point(right, bottom), point(right - 4, bottom)],
        { stroke: 'line', weight: 'thin', thing: 'bays' },
      ),
      lettering(
        right + 5,
        (top + bottom) / 2 + letter * 0.34,
        isLettered(scale, letter) ? phrase(house, 'bay {id}', { id }) : id,
        letter,
        {
          pen: 'ink2',
        },
      ),
    ];
  });
};
