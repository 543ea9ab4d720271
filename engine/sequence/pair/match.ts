/** The two orders, matched: the fewest flights, then the fewest changes of who is at work. */
import { type Act, type Match, type Next, nextOf, type Spot } from './moves.ts';

type Trail = {
  readonly spot: Spot;
  readonly cost: number;
  /** Who was at work last: a gallery, or riggers at the battens. */
  readonly place: string;
  readonly side: string;
  readonly act: Act | null;
  readonly before: Trail | null;
};

export type Matched =
  | { readonly is: 'matched'; readonly path: readonly Next[]; readonly searched: number }
  /** The spot in which most deeds of the two orders were done. */
  | { readonly is: 'none'; readonly furthest: Spot; readonly searched: number }
  | { readonly is: 'stopped'; readonly searched: number };

const FLIGHT = 1000;
/** Loaders or riggers come where they were not. */
const VISIT = 10;
/** The same people go over to the other set. */
const CHANGE = 1;

export const matched = (match: Match, start: Spot, spotsMost: number): Matched => {
  const open: Trail[] = [{ spot: start, cost: 0, place: '', side: '', act: null, before: null }];
  const best = new Map<string, number>();
  let [furthest, searched] = [start, 0];
  for (let trail = cheapestOf(open); trail !== undefined; trail = cheapestOf(open)) {
    const key = keyOf(trail);
    if ((best.get(key) ?? Number.POSITIVE_INFINITY) <= trail.cost) continue;
    best.set(key, trail.cost);
    searched += 1;
    if (isDone(match, trail.spot)) return { is: 'matched', path: pathOf(trail), searched };
    if (searched >= spotsMost) return { is: 'stopped', searched };
    if (doneOf(trail.spot) > doneOf(furthest)) furthest = trail.spot;
    for (const next of nextOf(match, trail.spot)) open.push(followed(trail, next));
  }
  return { is: 'none', furthest, searched };
};

/** There are some hundreds of spots at most, so a list does. */
const cheapestOf = (open: Trail[]): Trail | undefined => {
  let at = 0;
  open.forEach((trail, index) => {
    if (trail.cost < (open[at]?.cost ?? 0)) at = index;
  });
  return open.splice(at, 1)[0];
};

const keyOf = ({ spot: { done, heightM }, place, side }: Trail): string =>
  [
    done.first,
    done.second,
    heightM.first.toFixed(6),
    heightM.second.toFixed(6),
    place,
    side,
  ].join();

const doneOf = ({ done }: Spot): number => done.first + done.second;

const isDone = ({ courses }: Match, { done, heightM }: Spot): boolean =>
  (['first', 'second'] as const).every((side) => {
    const { points } = courses[side];
    const last = points.at(-1);
    return (
      done[side] === points.length - 1 &&
      last !== undefined &&
      Math.abs(last.standing.height - heightM[side]) <= 1e-7
    );
  });

const placeOf = (act: Act): string => {
  if (act.act === 'together') return '';
  const { step } = act;
  if (step.act === 'fly') return '';
  return 'gallery' in step ? step.gallery : 'batten';
};

const followed = (before: Trail, { act, spot }: Next): Trail => {
  const place = placeOf(act);
  const side = act.act === 'deed' ? act.side : '';
  const isFlight = act.act === 'together' || act.step.act === 'fly';
  const isVisit = place !== '' && place !== before.place;
  const isChange = side !== '' && before.side !== '' && side !== before.side;
  const more = (isFlight ? FLIGHT : 0) + (isVisit ? VISIT : 0) + (isChange ? CHANGE : 0);
  return { spot, place, side, act, before, cost: before.cost + more };
};

const pathOf = (last: Trail): readonly Next[] => {
  const path: Next[] = [];
  for (let trail: Trail | null = last; trail !== null; trail = trail.before) {
    const { act, spot } = trail;
    if (act !== null) path.unshift({ act, spot });
  }
  return path;
};
