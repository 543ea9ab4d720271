/** What a call leaves behind, set by set: read before it is closed. */
import { platesOf } from '#call';
import type { HouseNow, SetNow } from '#state';
import type { SetReckoning } from '../reckoning/reckon.ts';
import { isTallyOff, tallyOf } from './first-sets.ts';

export type Leaves = {
  /** Leave is out, asked for, or an order is half done: it is written as not known, or as it is. */
  readonly underWay: readonly string[];
  readonly unheld: readonly string[];
  readonly unknown: readonly string[];
  readonly tagged: readonly string[];
  readonly restrained: readonly string[];
  readonly withNotes: readonly string[];
  readonly lockDoubted: readonly string[];
  /** Known, and neither bare and empty nor as the show hangs it. */
  readonly otherwise: readonly { readonly id: string; readonly how: HowOtherwise }[];
  /** Known at the end: the state document says how they stand. */
  readonly known: readonly string[];
};

export type HowOtherwise =
  | { readonly is: 'plates'; readonly on: number; readonly byShow: number }
  | { readonly is: 'pieces'; readonly missing: readonly string[] }
  | { readonly is: 'notInShow'; readonly pieces: readonly string[] };

const isOn = (phase: string | undefined): boolean =>
  phase !== undefined && phase !== 'away' && phase !== 'beside';

/** Plates that the show has on the arbor with all of it hung; null where nobody knows. */
export const byShowOf = ({ set }: SetReckoning): number | null =>
  set.hang !== null && set.plan.known ? platesOf(set.plan.value.stack.runs) : null;

const otherwiseOf = (each: SetReckoning, set: SetNow): HowOtherwise | null => {
  const { standing } = set;
  if (standing === null) return null;
  const planned = (each.set.hang?.items ?? []).map(({ id }) => id);
  const there = Object.entries(standing.items).flatMap(([id, phase]) => (isOn(phase) ? [id] : []));
  const strange = there.filter((id) => !planned.includes(id));
  if (strange.length > 0) return { is: 'notInShow', pieces: strange };
  const missing = planned.filter((id) => !there.includes(id));
  if (missing.length > 0) return { is: 'pieces', missing };
  const byShow = byShowOf(each);
  const tally = tallyOf(set, byShow);
  return tally !== null && byShow !== null && isTallyOff(tally, set)
    ? { is: 'plates', on: tally.on, byShow }
    : null;
};

/** In the order of the rail. */
export const leavesOf = (now: HouseNow, sets: readonly SetReckoning[]): Leaves => {
  const all = sets.flatMap((each) => {
    const set = now.sets[each.id];
    return set === undefined ? [] : [{ id: each.id, each, set }];
  });
  const those = (is: (set: SetNow) => boolean): readonly string[] =>
    all.filter(({ set }) => is(set)).map(({ id }) => id);
  return {
    underWay: those(({ leave, asked }) => leave !== null || asked !== null),
    unheld: those(({ held, standing }) => held === 'unheld' && standing !== null),
    unknown: those(({ standing, leave }) => standing === null || leave !== null),
    tagged: those(({ tag }) => tag !== null),
    restrained: those(({ standing }) => (standing?.restraints.length ?? 0) > 0),
    withNotes: those(({ notes }) => notes.length > 0),
    lockDoubted: those(({ lockDoubt }) => lockDoubt !== null),
    otherwise: all.flatMap(({ id, each, set }) => {
      const how = otherwiseOf(each, set);
      return how === null ? [] : [{ id, how }];
    }),
    known: those(({ standing, leave }) => standing !== null && leave === null),
  };
};
