/** Where the batten stops: one height for all that is done between two flights. */
import { holdsAt, nodeAt } from './held.ts';
import { type HeldLoads, ratedFor } from './held-loads.ts';
import type { Load } from './load.ts';
import type { Site } from './site.ts';
import { overlap, pointSpan, SAME_M, type Span } from './span.ts';
import type { Trail } from './trail.ts';

/** All that is done at one height. */
export type Halt = { readonly heightM: number; readonly trails: readonly Trail[] };

export const haltsOf = (
  site: Site,
  held: HeldLoads,
  last: Trail,
  lastSpan: Span,
): readonly Halt[] => {
  const trails: Trail[] = [];
  for (let each: Trail | null = last; each !== null; each = each.before) trails.unshift(each);
  const groups: Trail[][] = [];
  for (const trail of trails) {
    if (trail.deed.deed === 'fly' || groups.length === 0) groups.push([trail]);
    else groups.at(-1)?.push(trail);
  }
  return groups.map((group, index) => {
    const next = groups[index + 1]?.[0]?.deed;
    const narrowest = group.at(-1)?.place.span ?? lastSpan;
    const end =
      next?.deed === 'fly' ? next.from : index === groups.length - 1 ? lastSpan : narrowest;
    const span = overlap(narrowest, end) ?? narrowest;
    return { heightM: chosen(site, held, group, span), trails: group };
  });
};

/** Evenly spread inside a stretch, so that an end with no margin is never the first choice. */
const SAMPLES = 16;

const chosen = (site: Site, held: HeldLoads, group: readonly Trail[], span: Span): number => {
  const loads = [...new Set(group.map(({ place }) => place.load))];
  let [best, least] = [span.lo, Number.POSITIVE_INFINITY];
  for (const heightM of candidates(site, loads, span, group[0])) {
    const strain = Math.max(...loads.map((load) => strainAt(site, held, load, heightM)));
    // A later candidate must be better by more than rounding, or the choice would flicker.
    if (strain < least - 1e-9) [best, least] = [heightM, strain];
  }
  return best;
};

const candidates = (
  site: Site,
  loads: readonly Load[],
  span: Span,
  first: Trail | undefined,
): readonly number[] => {
  const { physics, options, goal } = site;
  const marks = [physics.lowStop.heightM, physics.highStop.heightM, physics.workingM];
  const nodes = loads.flatMap((load) => load.nodes.map(({ heightM }) => heightM));
  const special = [...(goal.height === null ? [] : [goal.height]), ...marks, ...nodes];
  const lengthM = span.hi - span.lo;
  const even = Array.from(
    { length: SAMPLES },
    (_, index) => span.lo + ((index + 0.5) / SAMPLES) * lengthM,
  );
  const stepM = options.heightStepM ?? options.neatM;
  const neat = even.map((heightM) => Math.round(heightM / stepM) * stepM);
  const sound = [...special, ...neat].flatMap((heightM) => {
    const on = overlap(span, pointSpan(heightM));
    return on === null || isOnRest(site, first, heightM) ? [] : [heightM];
  });
  // A stretch may be shorter than a neat step: then its middle, and at last its end.
  return sound.length > 0 ? sound : [...even.toSorted((a, b) => towards(span, a, b)), span.lo];
};

const towards = ({ lo, hi }: Span, one: number, other: number): number =>
  Math.abs(one - (lo + hi) / 2) - Math.abs(other - (lo + hi) / 2);

/** A flight that begins on a rest has to leave it. */
const isOnRest = (site: Site, first: Trail | undefined, heightM: number): boolean =>
  first?.deed.deed === 'fly' && !first.deed.isWhole && Math.abs(heightM - site.restAtM) <= SAME_M;

/** Share of the hold that is used, the worse way. */
const strainAt = (site: Site, { trust }: HeldLoads, load: Load, heightM: number): number => {
  const node = nodeAt(load.nodes, heightM);
  if (node === null) return Number.POSITIVE_INFINITY;
  const doubtN = site.options.doubtShare * node.doubtN;
  const { inN, outN } = holdsAt(ratedFor(site, trust, load), pointSpan(heightM), trust.lockN);
  const { lowN, highN } = node.contact;
  return Math.max(0, (lowN + doubtN) / inN, (doubtN - highN) / outN);
};
