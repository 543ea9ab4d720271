/** Where each load is held, under one reading of the lock and one restraint more or none. */

import { calmSpans } from './calm.ts';
import { faultless, handsOn, meetAll } from './faults.ts';
import { heldSpans, type Rated } from './held.ts';
import type { Load, Loads } from './load.ts';
import { ratedBeside } from './rated-beside.ts';
import { HANGING, RESTING, type Site } from './site.ts';
import { overlap, SAME_M, type Span } from './span.ts';

/** One way of trusting what holds. */
export type Trust = {
  readonly lockN: number;
  /** What may be set free where riggers are at the batten, J. */
  readonly exposedJ: number;
  /** One rated restraint beside those that stand; over the whole travel where no span is given. */
  readonly extra: {
    readonly resists: 'in' | 'out';
    readonly ratedN: number;
    readonly span: Span | null;
    /**
     * Made fast at one height, as stands or a sling are; or a line that runs along, which only
     * pays out, or draws the arbor up against friction too.
     */
    readonly as: 'fast' | 'line' | 'hauled';
  } | null;
};

export type HeldLoads = {
  readonly trust: Trust;
  /** Held as it stands, nobody where it runs. */
  readonly rest: (load: Load) => readonly Span[];
  /** Held after each single fault too, nobody at work on it: the run may be open. */
  readonly open: (load: Load) => readonly Span[];
  /** The same with hands on the set, which may also drop an item or undo the steel. */
  readonly work: (load: Load) => readonly Span[];
  /** Where no more could be set free than riggers may be exposed to. */
  readonly calm: (load: Load) => readonly Span[];
  /** Without the extra restraint: where the work may end. */
  readonly left: (load: Load) => readonly Span[];
  /** Stretches within which the set can be flown. */
  readonly fly: (load: Load) => readonly Span[];
};

export const heldLoads = (loads: Loads, trust: Trust): HeldLoads => {
  const { site } = loads;
  const remembered = (of: (load: Load) => readonly Span[]): HeldLoads['rest'] => {
    const known = new Map<Load, readonly Span[]>();
    return (load) => {
      const old = known.get(load);
      if (old !== undefined) return old;
      const fresh = of(load);
      known.set(load, fresh);
      return fresh;
    };
  };
  const rest = remembered((load) => spansOf(site, trust, load, { lockN: trust.lockN }));
  const isEmpty = site.options.lock === 'nominal';
  const { open, work } = isEmpty ? { open: rest, work: rest } : faultsOf(loads, trust, remembered);
  const fly = remembered((load) => {
    if (load.onSteel || (load.tied && site.tied.fixed) || load.phases.includes(RESTING)) return [];
    const lockN = flyingLockN(site, trust, load);
    const isRest = lockN === trust.lockN && trust.extra === null;
    return isRest ? rest(load) : spansOf(site, trust, load, { lockN, when: 'way' });
  });
  const bare = { ...trust, extra: null };
  const left =
    trust.extra === null
      ? rest
      : remembered((load) => spansOf(site, bare, load, { lockN: trust.lockN }));
  const calm = remembered((load) =>
    trust.exposedJ === Number.POSITIVE_INFINITY
      ? [load.room]
      : calmSpans(load.nodes, trust.exposedJ),
  );
  return { trust, rest, open, work, left, fly, calm };
};

type Remembered = (of: (load: Load) => readonly Span[]) => HeldLoads['rest'];

const FAULTS = new WeakMap<Site, Pick<HeldLoads, 'open' | 'work'>>();

/** Faults do not ask how far the lock or a line is trusted: worked out once a site. */
const faultsOf = (
  loads: Loads,
  { extra }: Trust,
  remembered: Remembered,
): Pick<HeldLoads, 'open' | 'work'> => {
  const fast = extra?.as === 'fast' ? ratedOfExtra(loads.site, extra) : [];
  const known = FAULTS.get(loads.site);
  if (known !== undefined && fast.length === 0) return known;
  const open = remembered((load) => faultless(loads.site, load, fast));
  const work = remembered((load) => meetAll([open(load), handsOn(loads, load, fast)]));
  if (fast.length === 0) FAULTS.set(loads.site, { open, work });
  return { open, work };
};

/** The part of a stretch that is not held; null where all of it is. */
export const gapIn = (
  site: Site,
  trust: Trust,
  load: Load,
  { span, ...how }: How & { readonly span: Span },
): Span | null => {
  let [lo, hi] = [span.lo, span.hi];
  const spans = spansOf(site, trust, load, how);
  let isHeldLow = false;
  let isHeldHigh = false;
  for (const each of spans) {
    if (each.lo > lo + SAME_M || each.hi < lo - SAME_M) continue;
    [lo, isHeldLow] = [each.hi, true];
  }
  for (const each of spans.toReversed()) {
    if (each.hi < hi - SAME_M || each.lo > hi + SAME_M) continue;
    [hi, isHeldHigh] = [each.lo, true];
  }
  const isAll = isHeldLow && isHeldHigh && lo >= span.hi - SAME_M;
  return isAll ? null : { lo: Math.min(lo, hi), hi: Math.max(lo, hi) };
};

const frictionOf = ({ items, physics }: Site, { phases }: Load): number => {
  const hanging = items.flatMap(({ id }, index) => (phases[index] === HANGING ? [id] : []));
  return physics.frictionN(Object.fromEntries(hanging.map((id) => [id, 'flying' as const])));
};

/** Hands must start, steady and stop what only the lock would hold: |U| + friction within them. */
const flyingLockN = (site: Site, { lockN }: Trust, load: Load): number =>
  Math.max(0, Math.min(lockN, site.physics.handsBriefN - frictionOf(site, load)));

type How = { readonly lockN: number; readonly when?: 'rest' | 'way' };

const spansOf = (site: Site, trust: Trust, load: Load, { lockN, when }: How): readonly Span[] =>
  heldSpans(load.nodes, ratedFor(site, trust, load, when), lockN, site.options.doubtShare).flatMap(
    (span) => {
      const inRoom = overlap(span, load.room);
      return inRoom === null ? [] : [inRoom];
    },
  );

/** All that is engaged beside the lock, at rest or under way. */
export const ratedFor = (
  site: Site,
  { extra }: Pick<Trust, 'extra'>,
  load: Load,
  when: 'rest' | 'way' = 'rest',
): readonly Rated[] => {
  const rated = ratedBeside(site, load);
  if (extra === null || (when === 'way' && extra.as === 'fast')) return rated;
  const lessN = when === 'way' && extra.as === 'hauled' ? frictionOf(site, load) : 0;
  return [...rated, ...ratedOfExtra(site, { ...extra, ratedN: extra.ratedN - lessN })];
};

/**
 * A line hauls over the whole travel, and a sling may hold the arbor anywhere. What resists the
 * batten coming in are stands under it, where riggers reach.
 */
const ratedOfExtra = (site: Site, extra: NonNullable<Trust['extra']>): readonly Rated[] => {
  const { resists, ratedN, span } = extra;
  const { lowStop, highStop } = site.physics;
  const whole = { lo: lowStop.heightM, hi: highStop.heightM };
  const spans = span !== null ? [span] : resists === 'in' ? site.work : [whole];
  return spans.map((each) => ({ resists, ratedN, span: each }));
};
