import type { Reckoned, Working } from '#findings';
import { blocked, measure, reckoned } from '#findings';
import type { Refusal } from '#outcome';
import type { FrameTakeoff, Item } from '#show';
import type { Figure } from './figure.ts';
import { frameParts } from './frame.ts';
import { dropOf } from './item-sizes.ts';
import { lineOf, unique } from './line.ts';
import { refuse } from './refusal-codes.ts';

export type Centre = {
  readonly centre: Reckoned<number>;
  readonly faults: readonly Refusal[];
  readonly working: Working;
};

/**
 * Centre of gravity of built scenery above its foot, as a share of its height.
 *
 *     c = Σ m · z / ( D · Σ m )
 *
 *     m  kg  massKg   mass of a part, all of its kind together
 *     z  m   zM       height of its centre above the foot of the piece
 *     D  m   dropM    from the foot to the top of the piece
 *     c  -   returned, 0 to 1
 *
 * Source  centre of parallel forces; the-job.md C11
 * Holds   D > 0, some part has mass
 * Omits   paint, glue and fixings, taken to lie as the parts do (either way)
 * Check   VAL-TKO-10
 */
export const frameCentre = (frame: FrameTakeoff, drop: Item['drop']): Centre => {
  const parts = frameParts(frame, {});
  const dropFigure = dropOf({ drop });
  const figures = parts.flatMap(({ draft, z }) => [
    draft.count,
    ...draft.products.flat().map(({ figure }) => figure),
    z,
  ]);
  const masses = parts.map(({ draft, z }) => ({
    massKg: lineOf(draft).totalKg ?? 0,
    zM: z.value ?? 0,
  }));
  const massKg = masses.reduce((sum, part) => sum + part.massKg, 0);
  const momentKgM = masses.reduce((sum, part) => sum + part.massKg * part.zM, 0);
  const needs = unique([...figures, dropFigure].flatMap((figure) => figure.needs));
  const share = shareOf(momentKgM, massKg, dropFigure, needs);
  const faults = figures.filter(({ symbol }) => symbol === 'z').flatMap((figure) => figure.faults);
  return {
    centre: share.centre,
    faults: [...faults, ...share.faults],
    working: workingOf({ momentKgM, massKg, dropFigure, centre: share.centre }),
  };
};

const shareOf = (
  momentKgM: number,
  massKg: number,
  { value: dropM }: Figure,
  needs: readonly string[],
): { readonly centre: Reckoned<number>; readonly faults: readonly Refusal[] } => {
  if (needs.length > 0 || dropM === null) return { centre: blocked(needs), faults: [] };
  if (massKg === 0) return { centre: blocked(['parts with mass (takeoff): none']), faults: [] };
  if (dropM === 0) return { centre: blocked(['drop (drop): found 0 m']), faults: [] };
  const centre = momentKgM / (dropM * massKg);
  if (centre <= 1) return { centre: reckoned(centre), faults: [] };
  const said = { found: `a centre at ${centre} of the drop`, accepted: 'a share from 0 to 1' };
  return {
    centre: blocked([
      `heights of the parts (takeoff): found ${said.found}, wanted ${said.accepted}`,
    ]),
    faults: [refuse('centreOutside', 'takeoff', said)],
  };
};

const workingOf = ({
  momentKgM,
  massKg,
  dropFigure,
  centre,
}: {
  readonly momentKgM: number;
  readonly massKg: number;
  readonly dropFigure: Figure;
  readonly centre: Reckoned<number>;
}): Working => ({
  title: 'centre of gravity above the foot, as a share of the drop',
  formula: 'Z / D',
  terms: [
    {
      symbol: 'Z',
      meaning: 'height of the centre above the foot, Σ m z / Σ m',
      value: centre.known ? measure(momentKgM / massKg, 'length') : null,
    },
    {
      symbol: 'D',
      meaning: dropFigure.meaning,
      value: dropFigure.value === null ? null : measure(dropFigure.value, 'length'),
    },
  ],
  result: {
    symbol: 'c',
    meaning: 'centre of gravity above the foot, as a share of the drop',
    value: centre.known ? measure(centre.value, 'ratio') : null,
  },
  limit: null,
  source: 'centre of parallel forces',
  omits: 'paint, glue and fixings are taken to lie as the parts do',
});
