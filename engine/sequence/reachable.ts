import { deedsFrom, firstPlace, flightsFrom, type Place } from './actions.ts';
import type { HeldLoads } from './held-loads.ts';
import type { Loads } from './load.ts';
import { isWithin, overlap, pointSpan, type Span } from './span.ts';
import { firstTrail, followed, type Trail } from './trail.ts';

/** Whether any order at all comes to the goal, and how many states it took to know. */
export type Reached =
  /** By a way that is nowhere claimed to be a good one. */
  | { readonly order: 'exists'; readonly trail: Trail; readonly searched: number }
  | { readonly order: 'none'; readonly searched: number }
  | { readonly order: 'stopped'; readonly searched: number };

/** Where in its stretch a state meets the goal, and can be left without more than stood before. */
export const goalSpan = ({ site }: Loads, held: HeldLoads, { load, span }: Place): Span | null => {
  const { goal, items, counts } = site;
  if (load.onSteel !== (goal.service === 'deadHung')) return null;
  if (load.counts.some((count, kind) => count !== counts.goal[kind])) return null;
  const done = items.every(({ wanted, start }, index) => {
    const phase = load.phases[index];
    if (wanted === null) return phase === start;
    return wanted ? phase === 3 : phase === 0;
  });
  if (!done) return null;
  const there = goal.height === null ? span : overlap(span, pointSpan(goal.height));
  if (there === null) return null;
  for (const left of held.left(load)) {
    const both = overlap(there, left);
    if (both !== null) return both;
  }
  return null;
};

/**
 * Whether the goal can be come to, without regard to what it costs. A set that may stand in a
 * stretch may be flown over all of it, so a state is a stack and a whole stretch, and there are
 * few of them; each is taken once, so the search ends, and it is exhaustive when it says `none`.
 */
export const reachable = (loads: Loads, held: HeldLoads, statesMost: number): Reached => {
  const world = { loads, held };
  const { site } = loads;
  const seen = new Map<string, Span[]>();
  const waiting: Trail[] = [];
  let searched = 0;
  const keep = (trail: Trail): void => {
    const { load, order, taken, span } = trail.place;
    const key = `${load.key}#${order}#${taken.join(',')}`;
    const known = seen.get(key) ?? [];
    if (known.some((other) => isWithin(span, other))) return;
    seen.set(key, [...known, span]);
    waiting.push(trail);
  };
  const arrive = (trail: Trail): void => {
    for (const { place, deed } of flightsFrom(world, trail.place)) {
      const flown = followed(site, trail, place, deed);
      keep(flown);
      if (deed.deed !== 'fly' || deed.isWhole) continue;
      for (const further of flightsFrom(world, place)) {
        keep(followed(site, flown, further.place, further.deed));
      }
    }
    keep(trail);
  };
  const first = firstTrail(firstPlace(world));
  if (held.left(loads.first).some((span) => isWithin(first.place.span, span))) arrive(first);
  for (let trail = waiting.pop(); trail !== undefined; trail = waiting.pop()) {
    searched += 1;
    if (goalSpan(loads, held, trail.place) !== null) return { order: 'exists', trail, searched };
    if (searched >= statesMost) return { order: 'stopped', searched };
    for (const { place, deed } of deedsFrom(world, trail.place)) {
      arrive(followed(site, trail, place, deed));
    }
  }
  return { order: 'none', searched };
};
