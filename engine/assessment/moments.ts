/**
 * The house at one moment: where each batten is, and what hangs on it. A record is one moment, and
 * each trim, cue or step of an order is a planned one; the two are never mixed in one drawing
 * without its word.
 */
import type { Cue, Item } from '#show';
import type { ItemPhase, Standing } from '#state';
import type { SetAssessment } from './types.ts';

export type SetMoment = {
  /** Height of the batten, m; null where nobody knows it. */
  readonly heightM: number | null;
  /** Ids of what hangs or lies on the batten; null where nobody knows. */
  readonly items: readonly string[] | null;
};

export type HouseMoment = {
  /** What was recorded, or what somebody intends. */
  readonly is: 'recorded' | 'planned';
  readonly sets: ReadonlyMap<string, SetMoment>;
};

const isOn = (phase: ItemPhase): boolean => phase !== 'away' && phase !== 'beside';

const allOf = ({ hang }: SetAssessment): readonly string[] => hang?.items.map(({ id }) => id) ?? [];

const recordedSet = ({ recorded: { state } }: SetAssessment): SetMoment => ({
  // Between two heights it is somewhere: a drawing that chose one would say more than is known.
  heightM:
    state.height === null || state.height.low !== state.height.high ? null : state.height.low,
  items: state.items?.flatMap(({ item, phase }) => (isOn(phase) ? [item] : [])) ?? null,
});

const momentOf = (
  is: HouseMoment['is'],
  sets: readonly SetAssessment[],
  of: (set: SetAssessment) => SetMoment,
): HouseMoment => ({ is, sets: new Map(sets.map((set) => [set.lineSet.id, of(set)])) });

/** As it was last recorded, never as it is planned. */
export const recordedMoment = (sets: readonly SetAssessment[]): HouseMoment =>
  momentOf('recorded', sets, recordedSet);

/** Heights of the batten at the trims of a set, by name; a trim told at a lens may be unknown. */
const trimHeights = ({ hang, plan }: SetAssessment): ReadonlyMap<string, number> => {
  const worked = plan.known ? plan.value.trims : [];
  const told = (hang?.trims ?? []).flatMap(({ name, height, reference }) =>
    height.known && reference === 'batten' ? [[name, height.value as number] as const] : [],
  );
  return new Map([
    ...told,
    ...worked.map(({ trim, height }) => [trim.name, height as number] as const),
  ]);
};

const restingHeight = ({ lineSet }: SetAssessment): number | null =>
  lineSet.lowStop.height.known ? lineSet.lowStop.height.value : null;

const plannedAt = (set: SetAssessment, heightM: number | null): SetMoment => ({
  heightM: set.hang === null ? restingHeight(set) : heightM,
  items: allOf(set),
});

/** Names of all trims of the show, each once, the most used first. */
export const trimNames = (sets: readonly SetAssessment[]): readonly string[] => {
  const counts = new Map<string, number>();
  for (const { hang } of sets) {
    for (const { name } of hang?.trims ?? []) counts.set(name, (counts.get(name) ?? 0) + 1);
  }
  return [...counts].toSorted(([, one], [, other]) => other - one).map(([name]) => name);
};

/**
 * Every set at its trim of that name; a set without one at its highest trim, and one that the show
 * does not use on its low stop.
 */
export const trimMoment = (sets: readonly SetAssessment[], name: string): HouseMoment =>
  momentOf('planned', sets, (set) => {
    const heights = trimHeights(set);
    const highest = heights.size === 0 ? null : Math.max(...heights.values());
    return plannedAt(set, heights.get(name) ?? highest);
  });

/**
 * After so many cues, in their order in the show: 0 is before the first. A set that has moved is
 * where its last move ended, one that will move is where its first begins, and one that never does
 * is at its highest trim. What a cue lets go is gone after it.
 */
export const cueMoment = (
  sets: readonly SetAssessment[],
  cues: readonly Cue[],
  done: number,
): HouseMoment =>
  momentOf('planned', sets, (set) => {
    const own = cues.flatMap((cue, index) => (cue.set === set.lineSet.id ? [{ cue, index }] : []));
    const last = own.findLast(({ index }) => index < done);
    const heights = [...trimHeights(set).values()];
    const highest = heights.length === 0 ? null : Math.max(...heights);
    return plannedAt(set, last?.cue.to ?? own[0]?.cue.from ?? highest);
  });

/** Another moment, but with one set as a step of an order leaves it: planned, all of it. */
export const stepMoment = (
  before: HouseMoment,
  set: string,
  { height, items }: Pick<Standing, 'height' | 'items'>,
): HouseMoment => ({
  is: 'planned',
  sets: new Map([
    ...before.sets,
    [
      set,
      {
        heightM: height,
        items: Object.entries(items).flatMap(([id, phase]) => (isOn(phase) ? [id] : [])),
      },
    ],
  ]),
});

/**
 * Top and bottom of one item below its batten, m above the deck: what would sink below the deck
 * lies on it. Null where its drop is not known, and where it has none.
 *
 *     z_top = h − pick     z_bottom = h − pick − drop     neither below 0
 */
export const hungSpan = ({ pick, drop }: Item, battenM: number) => {
  if (!drop.known || drop.value === 0) return null;
  const topM = battenM - (pick.known ? pick.value : 0);
  return { topM: Math.max(0, topM), bottomM: Math.max(0, topM - drop.value) };
};

/** Height of the lowest thing on a batten, m; null where it is not known. */
export const lowestOf = ({ hang }: SetAssessment, { heightM, items }: SetMoment): number | null => {
  if (heightM === null || items === null) return null;
  const hung = (hang?.items ?? []).filter(({ id }) => items.includes(id));
  if (hung.some(({ drop }) => !drop.known)) return null;
  return Math.min(heightM, ...hung.flatMap((item) => hungSpan(item, heightM)?.bottomM ?? []));
};
