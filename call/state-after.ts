/** What is kept of a call: the state document as it is when the call is over. */
import {
  type GalleryState,
  type HouseNow,
  type HouseState,
  type SetNow,
  type SetState,
  unknownSetState,
} from '#state';

/** Who closes the call, and when; `nameOf` reads a person's id, where it is one. */
export type WhoCloses = {
  readonly by: string;
  readonly atMs: number;
  readonly nameOf: (by: string) => string;
};

/**
 * The state document with what the call has shown. A set that is not known at the end, or on which
 * work was under way, is written as unknown: what was known before the call is not true of it now.
 */
export const stateAfter = (state: HouseState, now: HouseNow, who: WhoCloses): HouseState => ({
  ...state,
  at: isoOf(who.atMs),
  by: who.by,
  sets: {
    ...state.sets,
    ...Object.fromEntries(
      Object.entries(now.sets).map(([id, set]) => [id, setAfter(set, who, state.sets[id])]),
    ),
  },
  galleries: {
    ...state.galleries,
    ...Object.fromEntries(
      Object.entries(now.galleries).map(([id, { stock, countedMs, countedBy }]) => [
        id,
        {
          stock,
          reserved: state.galleries[id]?.reserved ?? [],
          countedAt: countedMs === null ? null : isoOf(countedMs),
          countedBy: countedBy === null ? null : who.nameOf(countedBy),
        } satisfies GalleryState,
      ]),
    ),
  },
});

const isoOf = (ms: number): string => new Date(ms).toISOString();

const setAfter = (set: SetNow, who: WhoCloses, before: SetState | undefined): SetState => {
  const { standing, leave, tag } = set;
  const pullTest = pullAfter(set, who) ?? before?.pullTest ?? null;
  if (standing === null || leave !== null) return { ...unknownSetState, tag, pullTest };
  const { knowledge, lock, ring, collar } = set;
  const { height, stack, items, restraints, service } = standing;
  return {
    ...{ height: { low: height, high: height }, lock, ring, collar, stack, restraints },
    // Locked out is what a tag says; without its number nobody knows whether it is in use.
    service: service === 'lockedOut' && tag === null ? null : service,
    items: Object.entries(items).map(([item, phase]) => ({ item, phase })),
    tag,
    knowledge: { ...knowledge, by: knowledge.by === null ? null : who.nameOf(knowledge.by) },
    pullTest,
  };
};

const pullAfter = ({ pullTest }: SetNow, { nameOf }: WhoCloses): SetState['pullTest'] =>
  pullTest === null
    ? null
    : { ...pullTest, by: pullTest.by === '' ? 'this machine' : nameOf(pullTest.by) };
