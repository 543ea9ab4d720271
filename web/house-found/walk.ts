/** The walk round the house: rail by rail, set by set, and what is left to write down of each. */
import type { SetAssessment } from '#assessment';
import { type House, purchaseOf } from '#house';
import { isStale } from '#state';
import { ENGLISH, phrase, type Voice } from '#texts';
import type { SetReckoning } from '../reckoning/reckon.ts';

export type Walk = {
  /** Null where nobody has said from where the sets are flown. */
  readonly rail: string | null;
  readonly sets: readonly SetReckoning[];
};

export const walkOf = (
  { rails }: Pick<House, 'rails'>,
  sets: readonly SetReckoning[],
): readonly Walk[] => {
  const of = (id: string | null) =>
    sets.filter(({ set }) => {
      const known = rails.some((rail) => rail.id === set.lineSet.railId);
      return id === null ? !known : set.lineSet.railId === id;
    });
  return [
    ...rails.map(({ id, name }) => ({ rail: name, sets: of(id) })),
    { rail: null, sets: of(null) },
  ].filter((walk) => walk.sets.length > 0);
};

/** In the order in which they are walked up to. */
export const walkedSets = (walk: readonly Walk[]): readonly SetReckoning[] =>
  walk.flatMap(({ sets }) => sets);

/** What nobody has written down yet; nothing where the set is done. */
export const leftOf = (
  { lineSet, recorded }: Pick<SetAssessment, 'lineSet' | 'recorded'>,
  voice: Voice = ENGLISH,
): readonly string[] => {
  const { state } = recorded;
  const hasArbor = purchaseOf(lineSet.suspension) !== null;
  const isFixed = lineSet.suspension === 'deadHung';
  const { basis } = state.knowledge;
  return [
    ...(hasArbor && state.stack === null ? [phrase(voice, 'bricks on the arbor')] : []),
    ...(state.height === null ? [phrase(voice, 'batten height')] : []),
    ...(hasArbor && state.lock === null ? [phrase(voice, 'rope lock')] : []),
    ...(state.items === null && !isFixed ? [phrase(voice, 'what hangs')] : []),
    ...(basis === 'unknown' || basis === 'carriedOver' ? [phrase(voice, 'how it is known')] : []),
  ];
};

/** How old a record is, in words, and whether the house calls it stale. */
export type Age = { readonly words: string; readonly isStale: boolean };

const MINUTE_MS = 60_000;
const HOUR_MS = 60 * MINUTE_MS;
const DAY_MS = 24 * HOUR_MS;

const spanWords = (ms: number, voice: Voice): string => {
  if (ms < MINUTE_MS) return phrase(voice, 'just now');
  if (ms < HOUR_MS) {
    return phrase(voice, '{minutes} min old', { minutes: Math.floor(ms / MINUTE_MS) });
  }
  return ms < 2 * DAY_MS
    ? phrase(voice, '{hours} h old', { hours: Math.floor(ms / HOUR_MS) })
    : phrase(voice, '{days} days old', { days: Math.floor(ms / DAY_MS) });
};

export const ageOf = (
  at: string | null,
  { rules }: Pick<House, 'rules'>,
  nowMs: number,
  voice: Voice = ENGLISH,
): Age => {
  const recordedAtMs = at === null ? null : new Date(at).getTime();
  if (recordedAtMs === null || Number.isNaN(recordedAtMs)) return { words: '', isStale: false };
  const { staleAfterSeconds } = rules;
  return {
    words: spanWords(nowMs - recordedAtMs, voice),
    isStale:
      staleAfterSeconds.known &&
      isStale({ recordedAtMs, nowMs, staleAfterSeconds: staleAfterSeconds.value }),
  };
};
