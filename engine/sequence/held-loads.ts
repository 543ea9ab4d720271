/** Where each load is held, under one reading of the lock and one restraint more or none. */
import { heldSpans, type Rated } from './held.ts';
import type { Load } from './load.ts';
import { RESTING, type Site } from './site.ts';
import { overlap, pointSpan, SAME_M, type Span } from './span.ts';

/** One way of trusting what holds. */
export type Trust = {
  readonly lockN: number;
  /** While riggers are at the batten. */
  readonly workLockN: number;
  /** One rated restraint beside those that stand; over the whole travel where no span is given. */
  readonly extra: {
    readonly resists: 'in' | 'out';
    readonly ratedN: number;
    readonly span: Span | null;
  } | null;
};

export type HeldLoads = {
  readonly trust: Trust;
  readonly rest: (load: Load) => readonly Span[];
  readonly work: (load: Load) => readonly Span[];
  /** Without the extra restraint: where the work may end. */
  readonly left: (load: Load) => readonly Span[];
  /** Stretches within which the set can be flown. */
  readonly fly: (load: Load) => readonly Span[];
};

export const heldLoads = (site: Site, trust: Trust): HeldLoads => {
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
  const rest = remembered((load) => spansOf(site, trust, load, trust.lockN));
  const work =
    trust.workLockN === trust.lockN
      ? rest
      : remembered((load) => spansOf(site, trust, load, trust.workLockN));
  const fly = remembered((load) => {
    if (load.onSteel || (load.tied && site.tied.fixed) || load.phases.includes(RESTING)) return [];
    const lockN = flyingLockN(site, trust, load);
    return lockN === trust.lockN ? rest(load) : spansOf(site, trust, load, lockN);
  });
  const bare = { ...trust, extra: null };
  const left =
    trust.extra === null ? rest : remembered((load) => spansOf(site, bare, load, trust.lockN));
  return { trust, rest, work, left, fly };
};

/** The part of a stretch that is not held; null where all of it is. */
export const gapIn = (
  site: Site,
  trust: Trust,
  load: Load,
  { span, lockN }: { readonly span: Span; readonly lockN: number },
): Span | null => {
  let [lo, hi] = [span.lo, span.hi];
  const spans = spansOf(site, trust, load, lockN);
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

/** Hands must start, steady and stop what only the lock would hold: |U| + friction within them. */
const flyingLockN = (site: Site, { lockN }: Trust, { phases }: Load): number => {
  const hanging = site.items.flatMap(({ id }, index) => (phases[index] === 3 ? [id] : []));
  const items = Object.fromEntries(hanging.map((id) => [id, 'flying' as const]));
  const { handsBriefN, frictionN } = site.physics;
  return Math.max(0, Math.min(lockN, handsBriefN - frictionN(items)));
};

const spansOf = (site: Site, trust: Trust, load: Load, lockN: number): readonly Span[] => {
  return heldSpans(load.nodes, ratedFor(site, trust, load), lockN, site.options.doubtShare).flatMap(
    (span) => {
      const inRoom = overlap(span, load.room);
      return inRoom === null ? [] : [inRoom];
    },
  );
};

/** All that is engaged beside the lock. */
export const ratedFor = (site: Site, { extra }: Trust, load: Load): readonly Rated[] => {
  const { lowStop, highStop } = site.physics;
  const all: Rated[] = [
    { resists: 'in', ratedN: lowStop.ratedN, span: pointSpan(lowStop.heightM) },
    { resists: 'out', ratedN: highStop.ratedN, span: pointSpan(highStop.heightM) },
  ];
  if (load.tied) all.push(...site.tied.rated);
  if (load.onSteel && site.steelN !== null) {
    all.push({ resists: 'in', ratedN: site.steelN, span: load.room });
  }
  if (extra !== null) {
    const span = extra.span ?? { lo: lowStop.heightM, hi: highStop.heightM };
    all.push({ ...extra, span });
  }
  return all;
};
