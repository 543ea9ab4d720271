/** The state document that a call leaves behind, so that every screen can read it. */
import { type CallDocuments, stateAfter, type WhoCloses } from '#call';
import { readState, stateDocument, writeDocument } from '#documents';
import { type HouseNow, type HouseState, unknownSetState } from '#state';

/**
 * What people reported was taken as they said it. Where it does not fit the house or the show, a
 * brick that there is not, a piece that nobody has, the set is written as unknown, with a remark.
 */
export const textAfterCall = (
  { house, show, state }: CallDocuments,
  now: HouseNow,
  who: WhoCloses,
): string => {
  const textOf = (each: HouseState): string => writeDocument(stateDocument(each, house.units));
  const isSound = (each: HouseState): boolean => readState(textOf(each), house, show).ok;
  const after = named(stateAfter(state, now, who));
  if (isSound(after)) return textOf(after);
  const nothing: HouseState = { ...after, sets: {}, galleries: {} };
  const unsound = Object.entries(after.sets)
    .filter(([id, set]) => !isSound({ ...nothing, sets: { [id]: set } }))
    .map(([id]) => id);
  const known = new Set(house.lineSets.map(({ id }) => id));
  const sets = Object.entries(after.sets).flatMap(([id, set]) => {
    if (!unsound.includes(id)) return [[id, set] as const];
    const tagged = { ...unknownSetState, tag: set.tag };
    const isTagSound = isSound({ ...nothing, sets: { [id]: tagged } });
    return known.has(id) ? [[id, isTagSound ? tagged : unknownSetState] as const] : [];
  });
  const galleries = Object.entries(after.galleries).filter(([id, gallery]) =>
    isSound({ ...nothing, galleries: { [id]: gallery } }),
  );
  const remarks = unsound.map((id) => `Set ${id}: what the call recorded does not fit the house.`);
  return textOf({
    ...after,
    sets: Object.fromEntries(sets),
    galleries: Object.fromEntries(galleries),
    remarks: [...after.remarks, ...remarks].slice(-REMARKS_MAX),
  });
};

const REMARKS_MAX = 200;

/** One name is one person; a second of the same name was none. */
const named = (state: HouseState): HouseState => ({
  ...state,
  sets: Object.fromEntries(
    Object.entries(state.sets).map(([id, set]) => {
      const { by, second } = set.knowledge;
      const isSame = by !== null && by === second;
      return [id, isSame ? { ...set, knowledge: { ...set.knowledge, second: null } } : set];
    }),
  ),
});
