/** Limits of the house that a step would pass: what is kept clear, floors, and the plan. */
import { measure } from '#findings';
import type { Gallery, House, KeepOut, LineSet } from '#house';
import { GRAVITY } from '#quantities';
import type { Hang } from '#show';
import type { GalleryNow, Standing } from '#state';
import { message } from '#texts';
import { isAbove } from '../limits.ts';
import type { CallRule } from './call-case.ts';
import { callFinding } from './finding.ts';

type Span = readonly [low: number, high: number];

/** What touches by less than a hair does not enter. */
const HAIR_M = 1e-6;

const overlaps = ([a, b]: Span, [c, d]: Span): boolean => b - c > HAIR_M && d - a > HAIR_M;

/** A point, or a span, against a bound of a box; a bound that is left out goes on. */
const isWithin = (
  span: Span,
  bound: readonly [number | null, number | null] | undefined,
): boolean => {
  if (bound === undefined) return true;
  const [low, high] = [bound[0] ?? Number.NEGATIVE_INFINITY, bound[1] ?? Number.POSITIVE_INFINITY];
  // A batten of no known depth is a line, and one that lies in the box is in it.
  return span[0] === span[1] ? span[0] > low && span[0] < high : overlaps(span, [low, high]);
};

/** What the batten and all that hangs takes up and down stage. */
const depthOf = ({ y }: LineSet, hang: Hang | null): Span | null => {
  if (!y.known) return null;
  const half = hang?.halfDepth.known === true ? hang.halfDepth.value : 0;
  return [y.value - half, y.value + half];
};

/** Lowest point of what hangs with the batten at a height; what lies on the deck is at zero. */
const lowestM = (hang: Hang | null, { items }: Standing, heightM: number): number =>
  (hang?.items ?? [])
    .filter(({ id, drop }) => drop.known && items[id] === 'flying')
    .reduce((lowest, { drop, pick }) => {
      const hangsM = (drop.known ? drop.value : 0) + (pick.known ? pick.value : 0);
      return Math.min(lowest, Math.max(0, heightM - hangsM));
    }, heightM);

const enters = (keepOut: KeepOut, [across, along]: readonly [Span, Span], up: Span): boolean =>
  isWithin(across, keepOut.x) && isWithin(along, keepOut.y) && isWithin(up, keepOut.z);

/**
 * CAL-016: the way of a batten with what hangs on it through a box that is kept clear (V11). One
 * that stands in it already may move out of it.
 *
 * Omits   items whose drop nobody has given, and a set whose place nobody has: no box is judged
 */
export const keptClear: CallRule = ({ asked: { set: id, step }, set, facts }) => {
  const lineSet = facts.house.lineSets.find((each) => each.id === id);
  const { standing } = set;
  if (step.act !== 'fly' || standing === null || lineSet === undefined) return [];
  const along = depthOf(lineSet, facts.hang);
  const { left, right } = lineSet.batten;
  if (along === null) return [];
  const across: Span = [
    left.known ? left.value : Number.NEGATIVE_INFINITY,
    right.known ? right.value : Number.POSITIVE_INFINITY,
  ];
  const [fromM, toM] = [standing.height, step.to];
  const spanAt = (heightM: number): Span => [lowestM(facts.hang, standing, heightM), heightM];
  const up: Span = [spanAt(Math.min(fromM, toM))[0], Math.max(fromM, toM)];
  const isIn = (keepOut: KeepOut, span: Span) => enters(keepOut, [across, along], span);
  return facts.house.keepOuts
    .filter((each) => isIn(each, up) && !(isIn(each, spanAt(fromM)) && !isIn(each, spanAt(toM))))
    .map((each) =>
      callFinding('CAL-016', {
        at: { set: id },
        facts: {
          zone: each.name,
          from: measure(fromM, 'length'),
          to: measure(toM, 'length'),
          lower: measure(up[0], 'length'),
          upper: measure(up[1], 'length'),
        },
      }),
    );
};

type Loose = {
  readonly count: number;
  readonly massKg: number | null;
  readonly floorLengthM: number | null;
};

const looseOf = ({ brickKinds }: House, stock: GalleryNow['stock']): readonly Loose[] =>
  Object.entries(stock)
    .filter(([, count]) => count > 0)
    .map(([id, count]) => {
      const kind = brickKinds.find((each) => each.id === id);
      return {
        count,
        massKg: kind?.mass.known === true ? kind.mass.value : null,
        floorLengthM: kind?.floorLength.known === true ? kind.floorLength.value : null,
      };
    });

type Past = { readonly what: string; readonly kind: 'pressure' | 'count'; readonly value: number };

/** A row that is full to a billionth of a brick is full: lengths come from feet. */
const ROUNDING = 1e-9;

/** What the floor of a gallery would carry, where all that it takes to know it is known. */
const carriedBy = (
  gallery: Gallery,
  loose: readonly Loose[],
): { readonly pressure: number | null; readonly courses: number | null } => {
  const { length, width, peopleAndTools } = gallery;
  const bricksKg = loose.reduce<number | null>(
    (sum, { count, massKg }) => (sum === null || massKg === null ? null : sum + count * massKg),
    0,
  );
  const isFloorKnown = length.known && width.known && peopleAndTools.known && bricksKg !== null;
  const lengths = loose.flatMap(({ floorLengthM }) => (floorLengthM === null ? [] : floorLengthM));
  const isRowKnown = length.known && lengths.length === loose.length && lengths.length > 0;
  const bricks = loose.reduce((sum, { count }) => sum + count, 0);
  return {
    pressure: isFloorKnown
      ? (GRAVITY * (bricksKg + peopleAndTools.value)) / (length.value * width.value)
      : null,
    courses: isRowKnown
      ? Math.ceil(bricks / Math.max(1, Math.floor(length.value / Math.max(...lengths) + ROUNDING)))
      : null,
  };
};

/**
 * CAL-019: bricks that come off lie on the floor of the gallery, with all that lies there already,
 * its people and their tools (V14). What nobody has given of the floor limits nothing here: the
 * house is told of it by UNK-001.
 *
 * Source  the-job.md C43, C44, as FLR-001 has them
 */
export const floorTakes: CallRule = ({ now, asked: { set, step }, facts: { house } }) => {
  if (step.act !== 'remove') return [];
  const gallery = house.galleries.find(({ id }) => id === step.gallery);
  if (gallery === undefined) return [];
  const stock = now.galleries[step.gallery]?.stock ?? {};
  const after = { ...stock, [step.kind]: (stock[step.kind] ?? 0) + step.count };
  const { pressure, courses } = carriedBy(gallery, looseOf(house, after));
  const past: (Past & { readonly limit: number })[] = [];
  if (pressure !== null && gallery.floorLimit.known) {
    const what = message('over its floor');
    past.push({ what, kind: 'pressure', value: pressure, limit: gallery.floorLimit.value });
  }
  if (courses !== null && gallery.coursesAllowed.known) {
    const what = message('courses of bricks');
    past.push({ what, kind: 'count', value: courses, limit: gallery.coursesAllowed.value });
  }
  return past
    .filter(({ value, limit }) => isAbove(value, limit))
    .map(({ what, kind, value, limit }) =>
      callFinding('CAL-019', {
        at: { set, gallery: gallery.id },
        measured: measure(value, kind),
        limit: measure(limit, kind),
        facts: { gallery: gallery.name, what },
      }),
    );
};

const LOADS: ReadonlySet<string> = new Set(['attach', 'takeUp', 'add']);

/** CAL-020: what a rule stops in the plan is not loaded for (V14). To take off is always right. */
export const planStands: CallRule = ({ asked: { set, step }, facts: { planStops } }) => {
  if (!LOADS.has(step.act) || planStops.length === 0) return [];
  const rules = [...new Set(planStops.map(({ code }) => code))].join(', ');
  return [callFinding('CAL-020', { at: { set }, facts: { rules } })];
};
