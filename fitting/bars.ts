/** What a set does to a piece: why it cannot hang there at all, and what must change if it does. */
import { assessSet, type SetAssessment } from '#assessment';
import { readShowValue } from '#documents';
import { type House, type LineSet, lockHoldOf } from '#house';
import type { Hang, Show } from '#show';
import { fittedShow } from './fitted-show.ts';
import type { Bar, FitAsked } from './types.ts';

export type PieceOnSet = {
  readonly bars: readonly Bar[];
  /** Trims, places and heights that must be written otherwise. */
  readonly changes: number;
};

/** A foot turned into metres differs from one typed in metres in the last binary place. */
const MORE_KG = 1e-9;

const barsOf = (set: SetAssessment, hang: Hang, house: House): readonly Bar[] => {
  const { lineSet, hung, choice, plan } = set;
  if (!lineSet.y.known) return [{ is: 'placeNotKnown' }];
  if (lineSet.suspension === 'deadHung' && hang.deadHungAt === null) return [{ is: 'noTravel' }];
  const limit = lineSet.liveLimit;
  if (hung.known && limit.known && hung.value.withoutLoom > limit.value + MORE_KG) {
    return [{ is: 'tooHeavy', massKg: hung.value.withoutLoom, limitKg: limit.value }];
  }
  // That the search for a mix gave up is not that there is none.
  if (choice.known && 'infeasible' in choice.value && choice.value.infeasible.code !== 'notFound') {
    return [{ is: 'noMix', limit: choice.value.infeasible.code }];
  }
  const lock = lockHoldOf(lineSet, house.rules);
  if (!plan.known || !lock.known) return [];
  const worstN = Math.max(0, ...plan.value.trims.map(({ imbalance }) => Math.abs(imbalance)));
  return worstN > lock.value ? [{ is: 'pastLock', worstN, lockN: lock.value }] : [];
};

/** Sets built alike answer alike, wherever they stand. */
const buildOf = (lineSet: LineSet): string =>
  JSON.stringify({ ...lineSet, id: '', y: lineSet.y.known, remark: '', railId: '' });

/** One piece on each set alone, asked once for all sets that are built alike. */
export const piecesOnSets = (asked: FitAsked): ((hang: Hang, lineSet: LineSet) => PieceOnSet) => {
  const known = new Map<string, PieceOnSet>();
  return (hang, lineSet) => {
    const key = `${hang.set} ${buildOf(lineSet)}`;
    const before = known.get(key);
    if (before !== undefined) return before;
    const answer = pieceOnSet(asked, hang, lineSet);
    known.set(key, answer);
    return answer;
  };
};

const pieceOnSet = (asked: FitAsked, hang: Hang, lineSet: LineSet): PieceOnSet => {
  const { house } = asked.to;
  const alone = { [hang.set]: lineSet.id };
  const { document, changes } = fittedShow(asked, alone, { id: 'fit', name: 'fit' });
  const read = readShowValue({ ...document, cues: [], hangs: withoutCalls(document) }, house);
  const show: Show | null = read.ok ? read.value.show : null;
  const set = assessSet(house, show, null, lineSet);
  const must = (changes.get(hang.set) ?? []).filter(({ is }) => is !== 'bricks' && is !== 'cue');
  return { bars: barsOf(set, hang, house), changes: must.length };
};

/** Cues are no matter of whether a piece can hang; nor is the cue that calls a release. */
const withoutCalls = (
  document: FitAsked['from']['document'],
): FitAsked['from']['document'][string] =>
  JSON.parse(JSON.stringify(document['hangs'] ?? []), (key, value) =>
    key === 'cue' ? undefined : value,
  );
