import { deedsFrom, firstPlace, flightsFrom, type Place } from './actions.ts';
import type { HeldLoads } from './held-loads.ts';
import type { Loads } from './load.ts';
import { goalSpan } from './reachable.ts';
import { isWithin } from './span.ts';
import { FLIGHT, firstTrail, followed, HANDLING, type Trail } from './trail.ts';

export type Cheapest =
  | { readonly order: 'exists'; readonly trail: Trail; readonly searched: number }
  | { readonly order: 'none' | 'stopped'; readonly searched: number };

/**
 * The order with the fewest flights, then handlings and visits,
 * then plates: the most promising path first (A*)
 * over stacks, items and stretches of heights. A state that stands in part of another's
 * stretch at no less cost is left out: whatever it can do, the other can.
 */
export const cheapest = (loads: Loads, held: HeldLoads, statesMost: number): Cheapest => {
  const world = { loads, held };
  const queue = queueOf();
  const done = new Map<string, Trail[]>();
  let searched = 0;
  queue.push(firstTrail(firstPlace(world)));
  for (let trail = queue.pop(); trail !== undefined; trail = queue.pop()) {
    const key = keyOf(trail.place);
    const known = done.get(key) ?? [];
    if (known.some((other) => isNoBetter(trail, other))) continue;
    done.set(key, [...known, trail]);
    searched += 1;
    if (goalSpan(loads, held, trail.place) !== null) return { order: 'exists', trail, searched };
    if (searched >= statesMost) return { order: 'stopped', searched };
    const { place } = trail;
    for (const next of deedsFrom(world, place))
      queue.push(followed(loads.site, trail, next.place, next.deed));
    if (trail.deed.deed === 'fly' && trail.deed.isWhole) continue;
    for (const next of flightsFrom(world, place)) {
      queue.push(followed(loads.site, trail, next.place, next.deed));
    }
  }
  return { order: 'none', searched };
};

const keyOf = ({ load, order, taken }: Place): string => `${load.key}#${order}#${taken.join(',')}`;

/** A change costs a handling and a visit at most, so two less make up for it. */
const isNoBetter = (trail: Trail, other: Trail): boolean =>
  isWithin(trail.place.span, other.place.span) &&
  other.cost + (other.run === trail.run && other.visit === trail.visit ? 0 : 2 * HANDLING) <=
    trail.cost &&
  // What has come to one side of a rest does not fly on to the other side at once.
  (other.deed.deed !== 'fly' || other.deed.isWhole || other.cost + FLIGHT <= trail.cost);

/** A heap: the least rank first, and of equals the one that came first. */
const queueOf = () => {
  const heap: (Trail & { readonly turn: number })[] = [];
  let turns = 0;
  const isBefore = (one: number, other: number): boolean => {
    const [a, b] = [heap[one], heap[other]];
    if (a === undefined || b === undefined) return false;
    return a.rank < b.rank || (a.rank === b.rank && a.turn < b.turn);
  };
  const swap = (one: number, other: number): void => {
    const [a, b] = [heap[one], heap[other]];
    if (a === undefined || b === undefined) return;
    heap[one] = b;
    heap[other] = a;
  };
  /** The place itself, or the one of the two below it that goes before it. */
  const lesser = (at: number): number => {
    const [left, right] = [2 * at + 1, 2 * at + 2];
    const least = isBefore(left, at) ? left : at;
    return isBefore(right, least) ? right : least;
  };
  return {
    push: (trail: Trail): void => {
      turns += 1;
      heap.push({ ...trail, turn: turns });
      let at = heap.length - 1;
      while (at > 0) {
        const parent = (at - 1) >> 1;
        if (!isBefore(at, parent)) break;
        swap(at, parent);
        at = parent;
      }
    },
    pop: (): Trail | undefined => {
      const top = heap[0];
      const last = heap.pop();
      if (top === undefined || last === undefined || heap.length === 0) return top;
      heap[0] = last;
      for (let at = 0, least = lesser(0); least !== at; least = lesser(at)) {
        swap(at, least);
        at = least;
      }
      return top;
    },
  };
};
