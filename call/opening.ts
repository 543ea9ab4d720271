/** How a call begins: every set of the house as the record has it, and the bricks as counted. */
import { standingOf } from '#assessment';
import type { Payload } from '#events';
import type { House } from '#house';
import { momentMs, momentToJudge } from '#rules';
import { type HouseState, isStale, type Knowledge, type SetState, unknownSetState } from '#state';
import type { CallDocuments } from './desk-types.ts';

type Opening = Pick<Payload<'call opened'>, 'sets' | 'galleries'>;

/**
 * The sets and galleries of `call opened`. What the record leaves out is a doubt that names it. A
 * record older than the house lets stand was carried over: somebody counts before it is relied on.
 */
export const openingOf = (
  { house, state }: Pick<CallDocuments, 'house' | 'state'>,
  nowMs: number,
): Opening => ({
  sets: Object.fromEntries(
    house.lineSets.map(({ id }) => [
      id,
      openingOfSet(state.sets[id] ?? unknownSetState, house, momentToJudge(house, state, nowMs)),
    ]),
  ),
  galleries: Object.fromEntries(
    house.galleries.map(({ id }) => [id, openingOfGallery(state.galleries[id])]),
  ),
});

const openingOfSet = (
  state: SetState,
  house: Pick<House, 'rules'>,
  nowMs: number,
): Opening['sets'][string] => {
  const standing = standingOf(state);
  return {
    standing: standing.known ? standing.value : null,
    doubt: standing.known ? null : standing.needs.join('; ').slice(0, WORDS_MOST),
    knowledge: carriedOver(state.knowledge, house, nowMs),
    tag: state.tag,
  };
};

/** As long as a doubt may be on the wire. */
const WORDS_MOST = 400;

/** Where the house has not said how old a record may be, none of an earlier day is fresh. */
const carriedOver = (
  knowledge: Knowledge,
  { rules }: Pick<House, 'rules'>,
  nowMs: number,
): Knowledge => {
  if (knowledge.basis === 'unknown') return knowledge;
  const { staleAfterSeconds: after } = rules;
  const recordedAtMs = knowledge.at === null ? null : momentMs(knowledge.at);
  const isOld = !after.known || isStale({ recordedAtMs, nowMs, staleAfterSeconds: after.value });
  return isOld ? { ...knowledge, basis: 'carriedOver' } : knowledge;
};

const openingOfGallery = (
  gallery: HouseState['galleries'][string] | undefined,
): Opening['galleries'][string] => {
  const countedAt = gallery?.countedAt ?? null;
  return {
    stock: gallery?.stock ?? {},
    countedMs: countedAt === null ? null : momentMs(countedAt),
    by: gallery?.countedBy ?? null,
  };
};
