/**
 * How every set stands, for who takes the house over: from the call that runs, else from the
 * document of the record. What neither knows is null.
 */
import { type SetAssessment, standingOf } from '#assessment';
import type { GalleryState, Knowledge, Restraint, SetNow, Standing } from '#state';
import type { SheetContext } from '../context.ts';

/** `isOurs`: the program says it, else a person may have. */
export type Doubt = { readonly words: string; readonly isOurs: boolean };

export type SetOnRecord = {
  readonly set: SetAssessment;
  readonly standing: Standing | null;
  /** What was last known of it, where it is not known now. */
  readonly last: Standing | null;
  /** Why it is not known; empty where it is. */
  readonly doubts: readonly Doubt[];
  readonly knowledge: Knowledge;
  /** As the rules of a call judged it; null where no call has. */
  readonly held: SetNow['held'] | null;
  readonly rule: string | null;
  readonly lock: 'closed' | 'open' | null;
  readonly ring: 'on' | 'off' | null;
  readonly collar: 'secured' | 'loose' | null;
  readonly tag: { readonly number: string; readonly reason: string } | null;
  /** Also what was last known to hold a set that is not known now: it may still be rigged. */
  readonly restraints: readonly Restraint[];
  readonly service: Standing['service'] | null;
  /** What only a call knows: work under way, notes, overrides, order of work. */
  readonly live: SetNow | null;
};

const fromCall = (set: SetAssessment, now: SetNow): SetOnRecord => {
  const { standing, last, doubt, knowledge, held, rule, lock, ring, collar, tag } = now;
  const seen = standing ?? last;
  return {
    ...{ set, standing, last, knowledge, held, rule, lock, ring, collar, tag },
    doubts: standing === null && doubt !== null ? [{ words: doubt, isOurs: false }] : [],
    restraints: seen?.restraints ?? [],
    service: seen?.service ?? null,
    live: now,
  };
};

const fromDocument = (set: SetAssessment): SetOnRecord => {
  const { state } = set.recorded;
  const { knowledge, lock, ring, collar, tag, restraints, service } = state;
  const standing = standingOf(state);
  return {
    ...{ set, knowledge, lock, ring, collar, tag, service },
    standing: standing.known ? standing.value : null,
    last: null,
    doubts: standing.known ? [] : standing.needs.map((words) => ({ words, isOurs: true })),
    held: null,
    rule: null,
    restraints: restraints ?? [],
    live: null,
  };
};

/** Every set in rail order. One without an arbor is no part of a call: the document has it. */
export const setsOnRecord = ({
  assessment,
  now,
}: Pick<SheetContext, 'assessment' | 'now'>): readonly SetOnRecord[] =>
  assessment.sets.map((set) => {
    const live = set.lineSet.arbor === null ? undefined : now?.sets[set.lineSet.id];
    return live === undefined ? fromDocument(set) : fromCall(set, live);
  });

/** A set of which neither a height nor a stack is asked for: nothing of it is counted. */
export const isCounted = ({ set }: SetOnRecord): boolean => set.lineSet.arbor !== null;

export type GalleryOnRecord = {
  readonly stock: Readonly<Record<string, number>>;
  readonly countedAt: string | null;
  readonly countedBy: string | null;
};

export const galleryOnRecord = (
  { now, state }: Pick<SheetContext, 'now' | 'state'>,
  id: string,
): GalleryOnRecord | null => {
  const live = now?.galleries[id];
  if (live === undefined) return state?.galleries[id] ?? null;
  const { stock, countedMs, countedBy } = live;
  const countedAt = countedMs === null ? null : new Date(countedMs).toISOString();
  return { stock, countedAt, countedBy };
};

/** As the call found it when it was opened, or as the document has it. */
export const galleryBefore = (
  { state }: Pick<SheetContext, 'state'>,
  id: string,
): GalleryState | null => state?.galleries[id] ?? null;

/** People of a call are ids in its record; their names stand at their posts, or are given. */
export const personName = (
  by: string | null,
  { now, people = {} }: Pick<SheetContext, 'now' | 'people'>,
): string | null => {
  if (by === null || by === '') return null;
  const posts = Object.values(now?.posts ?? {});
  return posts.find((post) => post.by === by)?.name ?? people[by] ?? by;
};
