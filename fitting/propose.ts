/** Which set for which piece: as near as can be to where it hangs now, in the same order. */
import type { LineSet } from '#house';
import { freeSets, isOverlap, type PlacingAsked } from '#placing';
import type { Hang } from '#show';
import { piecesOnSets } from './bars.ts';
import { leastCost } from './least-cost.ts';
import type { Bar, FitAsked, Mapping, PieceFit } from './types.ts';

export type Proposal = {
  readonly mapping: Mapping;
  /** For each piece, the free sets that cannot take it, by reason. */
  readonly bars: ReadonlyMap<string, PieceFit['bars']>;
};

/** More than all shifts of a whole show, in square metres: to leave a piece out comes last. */
const LEFT_OUT = 1e6;

/** A trim or a place that must change weighs as much as a shift of one metre. */
const CHANGE_M2 = 1;

/** Nothing hangs in the other house yet; what is locked out or held by steel there is not free. */
export const freeIn = ({ from, to }: FitAsked): ReturnType<typeof freeSets> => {
  const show: PlacingAsked['show'] = { ...from.show, hangs: [], keptEmpty: {} };
  const { state, house } = to;
  const piece: PlacingAsked['piece'] = { from: null, hang: NOTHING };
  return freeSets({ house, show, state, piece, wanted: null, keptEmptyToo: true });
};

const NOTHING: PlacingAsked['piece']['hang'] = {
  name: '',
  family: 'other',
  halfDepth: { known: false },
  trims: [],
  items: [],
  deadHungAt: null,
  coupledWith: [],
};

const placeOf = (asked: FitAsked, set: string): number | null => {
  const y = asked.from.house.lineSets.find(({ id }) => id === set)?.y;
  return y?.known ? y.value : null;
};

/** In upstage order; in that of the rail where a place is not known. */
const inDepth = <T>(all: readonly T[], y: (one: T) => number | null): readonly T[] =>
  all.some((each) => y(each) === null)
    ? all
    : all.toSorted((one, other) => (y(one) ?? 0) - (y(other) ?? 0));

const setPlace = ({ y }: LineSet): number | null => (y.known ? y.value : null);

/** A depth that nobody wrote down is taken as none: what overlaps is then for a person to see. */
const depthOf = ({ halfDepth }: Hang): number => (halfDepth.known ? halfDepth.value : 0);

/**
 * The mapping that leaves fewest pieces out, and of those the one that shifts them least: least sum
 * of squares, so that two small shifts come before a large one. `onPiece` hears how far it is.
 */
export const propose = (asked: FitAsked, onPiece: (done: number) => void = () => {}): Proposal => {
  const { show } = asked.from;
  const free = inDepth(freeIn(asked).free, setPlace);
  const pieces = inDepth(show.hangs, ({ set }) => placeOf(asked, set));
  const ask = piecesOnSets(asked);
  const table = pieces.map((hang, index) => {
    const row = free.map((lineSet) => ask(hang, lineSet));
    onPiece(index + 1);
    return row;
  });
  const found = leastCost({
    pieces: pieces.length,
    sets: free.length,
    leftOut: LEFT_OUT,
    cost: (piece, set) => {
      const answer = table[piece]?.[set];
      if (answer === undefined || answer.bars.length > 0) return null;
      const wasM = placeOf(asked, pieces[piece]?.set ?? '');
      const isM = free[set] === undefined ? null : setPlace(free[set]);
      const shiftM = wasM === null || isM === null ? 0 : isM - wasM;
      return shiftM ** 2 + CHANGE_M2 * answer.changes;
    },
    clash: (piece, set, next, nextSet) => {
      const [one, other, near, far] = [pieces[piece], pieces[next], free[set], free[nextSet]];
      if (!one || !other || !near?.y.known || !far?.y.known) return false;
      return isOverlap(far.y.value - near.y.value - depthOf(one) - depthOf(other));
    },
  });
  return {
    mapping: Object.fromEntries(
      pieces.map(({ set }, index) => {
        const at = found[index] ?? null;
        return [set, at === null ? null : (free[at]?.id ?? null)];
      }),
    ),
    bars: new Map(
      pieces.map(({ set }, index) => [set, grouped(table[index] ?? [], free)] as const),
    ),
  };
};

const grouped = (
  row: readonly { readonly bars: readonly Bar[] }[],
  free: readonly LineSet[],
): PieceFit['bars'] => {
  const groups = new Map<string, { bar: Bar; sets: string[] }>();
  row.forEach(({ bars }, index) => {
    for (const bar of bars) {
      const group = groups.get(JSON.stringify(bar)) ?? { bar, sets: [] };
      group.sets.push(free[index]?.id ?? '');
      groups.set(JSON.stringify(bar), group);
    }
  });
  return [...groups.values()];
};
