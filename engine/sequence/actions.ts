/** What can be done next, each with the heights at which it can be done. */
import type { HeldLoads } from './held-loads.ts';
import type { Load, Loads } from './load.ts';
import { AWAY, HANGING, type Phase, RESTING, type Site, SLACK } from './site.ts';
import { onMultiples, overlap, pointSpan, type Span } from './span.ts';

/** A set at rest somewhere in a stretch of heights, all of which hold. */
export type Place = {
  readonly load: Load;
  /** Show bricks above the base from the bottom up: one letter each, the number of its kind. */
  readonly order: string;
  /** Bricks that galleries have given, where the search counts them: gallery by gallery. */
  readonly taken: readonly number[];
  readonly span: Span;
};

export type Deed =
  | { readonly deed: 'start' }
  /**
   * From somewhere in `from`, the part of the last stretch that is joined to the new one. A flight
   * that begins or ends with a piece on its rest comes to one side of it only.
   */
  | { readonly deed: 'fly'; readonly from: Span; readonly isWhole: boolean }
  | {
      readonly deed: 'brick';
      readonly act: 'add' | 'remove';
      readonly kind: number;
      readonly gallery: number;
    }
  | { readonly deed: 'attach'; readonly item: number; readonly as: Phase }
  | { readonly deed: 'takeUp' | 'rest' | 'release'; readonly item: number }
  | { readonly deed: 'hangOnSteel' | 'takeOffSteel' | 'untie' };

export type Move = { readonly place: Place; readonly deed: Deed };

type World = { readonly loads: Loads; readonly held: HeldLoads };

export const firstPlace = ({ loads }: World): Place => ({
  load: loads.first,
  order: loads.site.order.join(''),
  taken: loads.site.galleries.flatMap(() => loads.site.kinds.map(() => 0)),
  span: pointSpan(loads.site.start.height),
});

/** Every deed but flying. */
export const deedsFrom = (world: World, place: Place): readonly Move[] => [
  ...bricksFrom(world, place),
  ...itemsFrom(world, place),
  ...holdsFrom(world, place),
];

const meet = (one: Span, others: readonly Span[]): readonly Span[] =>
  others.flatMap((other) => {
    const both = overlap(one, other);
    return both === null ? [] : [both];
  });

/**
 * One plate on or off. The gallery must reach the top of the stack as it is before the plate goes
 * on, or with the plate that comes off still on it: the same height, asked of the load before.
 */
const bricksFrom = ({ loads, held }: World, place: Place): readonly Move[] => {
  const { site } = loads;
  const { load, order, taken, span } = place;
  const made: Move[] = [];
  load.windows.forEach((window, gallery) => {
    const reach = window === null ? null : overlap(span, window);
    if (reach === null) return;
    const at =
      site.options.heightStepM === null ? reach : onMultiples(reach, site.options.heightStepM);
    if (at === null) return;
    const put = (kind: number, sign: 1 | -1): void => {
      const count = (load.counts[kind] ?? 0) + sign;
      if (count > (site.counts.most[kind] ?? 0)) return;
      // An arbor is no lift for bricks: one that came on in this order is no stock elsewhere.
      const isCarried = sign === -1 && count >= (site.counts.start[kind] ?? 0);
      const given = isCarried ? taken : takenAfter(site, taken, { gallery, kind, sign });
      if (given === null) return;
      const counts = load.counts.map((each, index) => (index === kind ? count : each));
      const next = loads.changed(load, { counts });
      if (!next.fitsArbor && sign === 1) return;
      const after = sign === 1 ? order + String(kind) : order.slice(0, -1);
      for (const both of meet(at, held.rest(next))) {
        made.push({
          place: { load: next, order: after, taken: given, span: both },
          deed: { deed: 'brick', act: sign === 1 ? 'add' : 'remove', kind, gallery },
        });
      }
    };
    for (const kind of site.kinds.keys()) put(kind, 1);
    const top = order.at(-1);
    if (top !== undefined) put(Number(top), -1);
  });
  return made;
};

/** The tally after a plate was taken from a gallery or given back; null where there is none. */
const takenAfter = (
  site: Site,
  taken: readonly number[],
  {
    gallery,
    kind,
    sign,
  }: { readonly gallery: number; readonly kind: number; readonly sign: 1 | -1 },
): readonly number[] | null => {
  const kindId = site.kinds[kind]?.id ?? '';
  const stock = site.galleries[gallery]?.stock[kindId] ?? 0;
  if (!isCounted(site, kind)) return taken;
  const slot = gallery * site.kinds.length + kind;
  const after = (taken[slot] ?? 0) + sign;
  return after > stock ? null : taken.map((each, index) => (index === slot ? after : each));
};

/** A kind is counted at all galleries where any of them may run out of it. */
const isCounted = (site: Site, kind: number): boolean =>
  site.scarce.some((gallery) => gallery[kind] === true);

const itemsFrom = (world: World, place: Place): readonly Move[] => {
  const { site } = world.loads;
  const { phases, onSteel, tied } = place.load;
  // On steel nothing on the batten is touched; a slung or tied set may be worked on.
  if (onSteel) return [];
  return site.items.flatMap((item, index): readonly Move[] => {
    const phase = phases[index] ?? AWAY;
    const deeds: (readonly [Deed, Phase, Span | null])[] = [];
    const atRest = item.rests ? pointSpan(site.restAtM) : null;
    const canCome = phase === AWAY && item.wanted === true && hasRoom(site, phases);
    if (canCome && isTurn(site, phases, index)) {
      if (atRest === null)
        deeds.push([{ deed: 'attach', item: index, as: HANGING }, HANGING, null]);
      else {
        deeds.push([{ deed: 'attach', item: index, as: SLACK }, SLACK, null]);
        deeds.push([{ deed: 'attach', item: index, as: RESTING }, RESTING, atRest]);
      }
    }
    if (phase === SLACK && atRest !== null) {
      deeds.push([{ deed: 'takeUp', item: index }, RESTING, atRest]);
    }
    if (phase === HANGING && atRest !== null && !tied) {
      deeds.push([{ deed: 'rest', item: index }, RESTING, atRest]);
    }
    const canGo = phase === SLACK || phase === RESTING || (phase === HANGING && !item.rests);
    if (canGo && item.wanted === false && isTurn(site, phases, index)) {
      deeds.push([{ deed: 'release', item: index }, AWAY, null]);
    }
    return deeds.flatMap(([deed, to, only]) => itemMoves(world, place, { index, deed, to, only }));
  });
};

const hasRoom = ({ items, options }: Site, phases: readonly Phase[]): boolean =>
  options.sharesBatten ||
  items.every(({ wanted }, index) => wanted !== false || phases[index] === AWAY);

/** Equal items go in one order only: another order is the same work with other names. */
const isTurn = (site: Site, phases: readonly Phase[], index: number): boolean => {
  const twin = site.items[index]?.twin ?? null;
  return twin === null || (phases[twin] ?? AWAY) !== site.items[twin]?.start;
};

const NOWHERE: Span = { lo: Number.POSITIVE_INFINITY, hi: Number.NEGATIVE_INFINITY };

/** Riggers are at the batten: it must hold before and after as it does with people under it. */
const itemMoves = (
  { loads, held }: World,
  { load, order, taken, span }: Place,
  {
    index,
    deed,
    to,
    only,
  }: {
    readonly index: number;
    readonly deed: Deed;
    readonly to: Phase;
    readonly only: Span | null;
  },
): readonly Move[] => {
  const phases = load.phases.map((each, at) => (at === index ? to : each));
  const next = loads.changed(load, { phases });
  // Picks are drawn tight from the rail, with the run closed; all else is hands at the batten.
  const isAtBatten = deed.deed === 'attach' || deed.deed === 'release';
  const [before, after] = isAtBatten ? [held.open, held.work] : [held.rest, held.rest];
  const calm = (part: Span, of: Load): readonly Span[] =>
    isAtBatten ? meet(part, held.calm(of)) : [part];
  return meet(only === null ? span : (overlap(span, only) ?? NOWHERE), loads.site.work)
    .flatMap((part) => meet(part, before(load)))
    .flatMap((part) => meet(part, after(next)))
    .flatMap((part) => calm(part, load))
    .flatMap((part) => calm(part, next))
    .map((part) => ({ place: { load: next, order, taken, span: part }, deed }));
};

const holdsFrom = (world: World, place: Place): readonly Move[] => {
  const { loads, held } = world;
  const { site } = loads;
  const { load, span, order, taken } = place;
  const made: Move[] = [];
  const go = (deed: Deed, next: Load, at: Span): void => {
    for (const part of meet(at, held.rest(next))) {
      made.push({ place: { load: next, order, taken, span: part }, deed });
    }
  };
  if (load.tied) go({ deed: 'untie' }, loads.changed(load, { tied: false }), span);
  if (load.onSteel && site.goal.service === 'in') {
    const next = loads.changed(load, { onSteel: false });
    for (const at of tightSteel(site, load, span)) go({ deed: 'takeOffSteel' }, next, at);
  }
  const { height, service } = site.goal;
  if (!load.onSteel && service === 'deadHung' && height !== null && site.steelN !== null) {
    const at = overlap(span, pointSpan(height));
    const still = !load.phases.some((phase) => phase === SLACK || phase === RESTING);
    if (at !== null && still)
      go({ deed: 'hangOnSteel' }, loads.changed(load, { onSteel: true }), at);
  }
  return made;
};

/** Steel comes off only while it is tight for every mass in doubt: batten heavy, if only just. */
const tightSteel = (site: Site, load: Load, span: Span): readonly Span[] => {
  const node = site.physics.at({
    ...site.start,
    height: site.start.height,
    stack: stackFor(site, load),
    items: hangingOnly(site, load),
  });
  const doubtN = site.options.doubtShare * node.doubtN;
  return node.lowN - doubtN >= 0 ? [span] : [];
};

const stackFor = (site: Site, { counts }: Load) => [
  ...site.base,
  ...site.kinds.map(({ id }, kind) => ({
    kind: id,
    count: counts[kind] ?? 0,
    tag: 'show' as const,
  })),
];

const hangingOnly = (site: Site, { phases }: Load) =>
  Object.fromEntries(
    site.items.flatMap(({ id }, index) =>
      phases[index] === HANGING ? [[id, 'flying' as const]] : [],
    ),
  );

/**
 * Flights: over the whole stretch that is joined to where the set may be. A resting piece is lifted
 * when the batten goes out, and its picks go slack when it comes in.
 */
export const flightsFrom = ({ loads, held }: World, place: Place): readonly Move[] => {
  const { load, order, taken, span } = place;
  if (load.onSteel || (load.tied && loads.site.tied.fixed)) return [];
  if (!load.phases.includes(RESTING)) {
    return held.fly(load).flatMap((stretch): readonly Move[] => {
      const from = overlap(span, stretch);
      if (from === null || stretch.hi === stretch.lo) return [];
      return [
        {
          place: { load, order, taken, span: stretch },
          deed: { deed: 'fly', from, isWhole: true },
        },
      ];
    });
  }
  const become = (phase: Phase): Load =>
    loads.changed(load, {
      phases: load.phases.map((each) => (each === RESTING ? phase : each)),
    });
  const hereM = loads.site.restAtM;
  const ways = [
    [become(HANGING), { lo: hereM, hi: Number.POSITIVE_INFINITY }],
    [become(SLACK), { lo: Number.NEGATIVE_INFINITY, hi: hereM }],
  ] as const;
  return ways.flatMap(([next, side]) =>
    held.fly(next).flatMap((stretch): readonly Move[] => {
      const to = overlap(stretch, pointSpan(hereM)) === null ? null : overlap(stretch, side);
      if (to === null || to.hi === to.lo) return [];
      return [
        {
          place: { load: next, order, taken, span: to },
          deed: { deed: 'fly', from: span, isWhole: false },
        },
      ];
    }),
  );
};
