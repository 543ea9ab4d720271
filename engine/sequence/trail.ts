/** The way to a state of the search, and what it costs. */
import { unreachable } from '#outcome';
import type { Deed, Place } from './actions.ts';
import { HANGING, type Site } from './site.ts';
import { SAME_M } from './span.ts';

/** A state of the search, and how it was come to. */
export type Trail = {
  readonly place: Place;
  readonly deed: Deed;
  readonly before: Trail | null;
  readonly cost: number;
  /** The handling that one more such plate would go on with. */
  readonly run: string;
  /** Who is at work: loaders by their gallery, or riggers; null where the last deed was neither. */
  readonly visit: number | null;
  /** What it has cost and must still cost at least. */
  readonly rank: number;
};

/** One flight outweighs all handlings, and one handling all plates: there are fewer than 1000. */
export const FLIGHT = 1e6;
/** So much for a handling, and as much again for a visit to a gallery or to the batten. */
export const HANDLING = 1e3;
const PLATE = 1;
/** Riggers at the batten, beside the numbers of the galleries. */
const RIGGERS = -1;

/** Where every search begins. */
export const firstTrail = (place: Place): Trail => ({
  place,
  deed: { deed: 'start' },
  before: null,
  cost: 0,
  run: '',
  visit: null,
  rank: 0,
});

export const followed = (site: Site, before: Trail, place: Place, deed: Deed): Trail => {
  const run = deed.deed === 'brick' ? `${deed.act}${deed.kind},${deed.gallery}` : '';
  const visit = visitOf(deed);
  const isNewVisit = visit !== null && visit !== before.visit;
  const handlings = (run !== '' && run === before.run ? 0 : 1) + (isNewVisit ? 1 : 0);
  const cost = before.cost + costOf(deed, handlings);
  const trail = { place, deed, before, run, visit, cost };
  return { ...trail, rank: cost + leastAhead(site, trail) };
};

const visitOf = (deed: Deed): number | null => {
  if (deed.deed === 'brick') return deed.gallery;
  const isRigging =
    deed.deed === 'attach' ||
    deed.deed === 'takeUp' ||
    deed.deed === 'rest' ||
    deed.deed === 'release';
  return isRigging ? RIGGERS : null;
};

const costOf = ({ deed }: Deed, handlings: number): number => {
  switch (deed) {
    case 'start':
      return 0;
    case 'fly':
      return FLIGHT;
    case 'brick':
      return PLATE + handlings * HANDLING;
    case 'attach':
    case 'takeUp':
    case 'rest':
    case 'release':
    case 'hangOnSteel':
    case 'takeOffSteel':
    case 'untie':
      return handlings * HANDLING;
    default:
      return unreachable(deed);
  }
};

/**
 * No way from here costs less: every plate that is missing or too many, one handling for each kind
 * of them but the one in hand, and every item that is not yet as it should be.
 */
const leastAhead = (site: Site, { place, run }: Pick<Trail, 'place' | 'run'>): number => {
  const { load, span } = place;
  let [plates, handlings] = [0, 0];
  load.counts.forEach((count, kind) => {
    const missing = (site.counts.goal[kind] ?? 0) - count;
    if (missing === 0) return;
    plates += Math.abs(missing);
    if (!run.startsWith(`${missing > 0 ? 'add' : 'remove'}${kind},`)) handlings += 1;
  });
  site.items.forEach(({ wanted }, index) => {
    if (wanted !== null && wanted !== (load.phases[index] === HANGING)) handlings += 1;
  });
  const { height } = site.goal;
  const isThere = height === null || (span.lo <= height + SAME_M && span.hi >= height - SAME_M);
  return plates * PLATE + handlings * HANDLING + (isThere ? 0 : FLIGHT);
};
