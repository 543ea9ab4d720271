/** One job on one set, as the search sees it: what is fixed, what may change, and the bounds. */
import type { OrderBrick, OrderGallery, OrderPhysics, Restraint, StackRun, Standing } from '#state';
import type { Rated } from './held.ts';
import type { Span } from './span.ts';
import type { OrderGoal, OrderOptions } from './types.ts';

/** How an item is, as the search writes it. What is on steel counts as hanging, steel under it. */
export const AWAY = 0;
export const SLACK = 1;
export const RESTING = 2;
export const HANGING = 3;
export type Phase = typeof AWAY | typeof SLACK | typeof RESTING | typeof HANGING;

export type SiteItem = {
  readonly id: string;
  readonly start: Phase;
  /** True: to hang; false: to be away; null: as it is. */
  readonly wanted: boolean | null;
  /** Lies by itself, picks taut, where `restAtM` is. */
  readonly rests: boolean;
  /** Index of an equal item that goes on and comes off before this one; they are one job. */
  readonly twin: number | null;
};

export type Site = {
  readonly physics: OrderPhysics;
  readonly options: OrderOptions;
  readonly goal: OrderGoal;
  readonly start: Standing;
  readonly kinds: readonly OrderBrick[];
  readonly galleries: readonly OrderGallery[];
  /** Plates that nobody may take off: pipe weight, and what lies under it. */
  readonly base: readonly StackRun[];
  /** Show bricks above those, from the bottom up, as indexes of kinds. */
  readonly order: readonly number[];
  readonly counts: { readonly start: Counts; readonly goal: Counts; readonly most: Counts };
  readonly items: readonly SiteItem[];
  readonly travel: Span;
  readonly work: readonly Span[];
  readonly restAtM: number;
  /** Restraints that stand at the start, and whether one of them forbids to move. */
  readonly tied: {
    readonly all: readonly Restraint[];
    readonly rated: readonly Rated[];
    /** Those of them that a person tends, and may lose. */
    readonly tended: readonly Rated[];
    readonly fixed: boolean;
  };
  readonly steelN: number | null;
  /** Galleries and kinds of which there is so little that the search must count them. */
  readonly scarce: readonly (readonly boolean[])[];
};

export type Counts = readonly number[];

/** Kinds of restraint that hold one height and are taken off before the set moves. */
const FIXED: ReadonlySet<Restraint['kind']> = new Set([
  'arborSling',
  'choke',
  'pinnedPiece',
  'stands',
]);

/** Ropes that people tend; the rest is made fast. */
const TENDED: ReadonlySet<Restraint['kind']> = new Set(['bullLine', 'choke', 'winch']);

export const siteOf = (
  physics: OrderPhysics,
  start: Standing,
  goal: OrderGoal,
  options: OrderOptions,
): Site => {
  const kinds = kindsOf(physics, start, goal, options);
  const { base, order } = splitStack(start, kinds);
  const counts = countsOf({ kinds, order, base, goal, options });
  const steel = start.restraints.find(({ kind }) => kind === 'deadHangSteel');
  const tied = start.restraints.filter(({ kind }) => kind !== 'deadHangSteel');
  const ratings = tied.map((each) => ({ kind: each.kind, rated: ratedOf(each) }));
  const { travel, restAtM, work } = options;
  const low = travel?.fromM ?? physics.lowStop.heightM;
  return {
    physics,
    options,
    goal,
    start,
    kinds,
    galleries: physics.galleries,
    base,
    order,
    counts,
    items: itemsOf(physics, start, goal, options),
    travel: { lo: low, hi: travel?.toM ?? physics.highStop.heightM },
    work: work?.map(({ fromM, toM }) => ({ lo: fromM, hi: toM })) ?? [
      { lo: physics.lowStop.heightM, hi: physics.workingM },
    ],
    restAtM: restAtM ?? restingHeight(start) ?? physics.workingM,
    tied: {
      all: tied,
      rated: ratings.flatMap(({ rated }) => rated),
      tended: ratings.flatMap(({ kind, rated }) => (TENDED.has(kind) ? rated : [])),
      fixed: tied.some(({ kind }) => FIXED.has(kind)),
    },
    steelN: steel?.rating ?? options.steelN,
    scarce: physics.galleries.map(({ stock }) =>
      kinds.map(({ id }, kind) => (stock[id] ?? 0) < (counts.most[kind] ?? 0)),
    ),
  };
};

/** A piece that lies on its rest at the start says where that is. */
const restingHeight = (start: Standing): number | null =>
  Object.values(start.items).includes('attachedResting') ? start.height : null;

/** A rating that is not known holds nothing, and so does one of which nobody says where. */
const ratedOf = ({ resists, rating, from, to }: Restraint): readonly Rated[] =>
  rating === null || from === null || to === null
    ? []
    : [{ resists, ratedN: rating, span: { lo: from, hi: to } }];

const kindsOf = (
  physics: OrderPhysics,
  start: Standing,
  goal: OrderGoal,
  options: OrderOptions,
): readonly OrderBrick[] => {
  const used = new Set([
    ...start.stack.filter(({ tag }) => tag === 'show').map(({ kind }) => kind),
    ...Object.keys(goal.bricks),
    ...Object.keys(options.spare),
  ]);
  return physics.bricks.filter(({ id }) => used.has(id));
};

const splitStack = (
  { stack }: Standing,
  kinds: readonly OrderBrick[],
): { readonly base: readonly StackRun[]; readonly order: readonly number[] } => {
  const from = stack.findLastIndex(({ tag }) => tag !== 'show') + 1;
  const order = stack
    .slice(from)
    .flatMap(({ kind, count }) =>
      Array.from({ length: count }, () => kinds.findIndex(({ id }) => id === kind)),
    );
  return { base: stack.slice(0, from), order };
};

const countsOf = ({
  kinds,
  order,
  base,
  goal,
  options,
}: {
  readonly kinds: readonly OrderBrick[];
  readonly order: readonly number[];
  readonly base: readonly StackRun[];
  readonly goal: OrderGoal;
  readonly options: OrderOptions;
}): Site['counts'] => {
  const start = kinds.map((_, kind) => order.filter((each) => each === kind).length);
  // Show bricks under pipe weight stay where they are, and count towards what is wanted.
  const under = kinds.map(({ id }) =>
    base
      .filter(({ kind, tag }) => kind === id && tag === 'show')
      .reduce((sum, { count }) => sum + count, 0),
  );
  const wanted = kinds.map(({ id }, kind) => (goal.bricks[id] ?? 0) - (under[kind] ?? 0));
  const most = kinds.map(
    ({ id }, kind) => Math.max(start[kind] ?? 0, wanted[kind] ?? 0) + (options.spare[id] ?? 0),
  );
  return { start, goal: wanted, most };
};

const PHASES: Readonly<Record<Standing['items'][string], Phase>> = {
  away: AWAY,
  beside: AWAY,
  attachedSlack: SLACK,
  attachedResting: RESTING,
  flying: HANGING,
  heldElsewhere: AWAY,
};

const itemsOf = (
  physics: OrderPhysics,
  start: Standing,
  goal: OrderGoal,
  options: OrderOptions,
): readonly SiteItem[] => {
  const ids = [...new Set([...Object.keys(start.items), ...Object.keys(goal.items)])];
  const made: SiteItem[] = [];
  for (const id of ids) {
    const phase = start.items[id] ?? 'away';
    const onSteel = start.service === 'deadHung' && phase === 'heldElsewhere';
    const state = onSteel ? HANGING : PHASES[phase];
    const named = goal.items[id];
    const wanted = named === undefined ? null : named === 'on';
    const item = { id, start: state, wanted, rests: options.rests.includes(id) };
    const twin = made.findLastIndex(
      (other) =>
        other.start === item.start &&
        other.wanted === item.wanted &&
        other.rests === item.rests &&
        areEqual(physics, other.id, id),
    );
    made.push({ ...item, twin: twin < 0 || item.rests ? null : twin });
  }
  return made;
};

/** Whether two items hang the same on the batten at every height, whatever their names. */
const areEqual = (physics: OrderPhysics, one: string, other: string): boolean => {
  const alone = (id: string) => physics.curve({ stack: [], items: { [id]: 'flying' } });
  return JSON.stringify(alone(one)) === JSON.stringify(alone(other));
};
