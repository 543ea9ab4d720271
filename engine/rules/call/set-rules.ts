/** What keeps one set from being worked, whatever the step does to its balance. */
import { measure } from '#findings';
import { isStale, type SetNow } from '#state';
import { message } from '#texts';
import { restraintWords } from '../order/holds.ts';
import { momentMs } from '../record/moment.ts';
import { type CallRule, isMove, isZoneWork } from './call-case.ts';
import { callFinding } from './finding.ts';

/** CAL-001: a stop on this set, or on everything. */
export const noStop: CallRule = ({ now, asked: { set } }) =>
  now.stops
    .filter((stop) => stop.set === null || stop.set === set)
    .slice(0, 1)
    .map((stop) =>
      callFinding('CAL-001', {
        at: { set },
        facts: { words: stop.words === '' ? message('no reason recorded') : stop.words },
      }),
    );

/** CAL-002: one step at a time on one set. What is asked now is not in the state yet. */
export const oneStepAtATime: CallRule = ({ asked: { set: id }, set }) => {
  const isAsked = set.asked !== null;
  const what = set.leave !== null ? message('under way') : isAsked ? message('asked for') : null;
  return what === null ? [] : [callFinding('CAL-002', { at: { set: id }, facts: { what } })];
};

/** CAL-004: of a set that is not known only a zone is closed; all else is finding it (V12). */
export const knownToStand: CallRule = ({ asked: { set: id, step }, set }) => {
  if (set.standing !== null) return [];
  if (step.act === 'close' && set.last !== null) return [];
  const why = set.doubt ?? message('nobody has said why');
  return [callFinding('CAL-004', { at: { set: id }, facts: { why } })];
};

/** CAL-006: at rest with hands off, lock closed and ring on (V2); a zone may still be closed. */
export const lockedAndRinged: CallRule = ({ asked: { set: id, step }, set }) => {
  if (step.act === 'close' || set.leave !== null) return [];
  const what = openWords(set);
  return what === null ? [] : [callFinding('CAL-006', { at: { set: id }, facts: { what } })];
};

const openWords = ({ lock, ring }: Pick<SetNow, 'lock' | 'ring'>): string | null => {
  if (ring === 'on') return lock === 'open' ? message('its lock open') : null;
  return lock === 'open' ? message('its lock open and its ring off') : message('its ring off');
};

/** CAL-007: collar secured unless bricks are handled (V4). Handling ends with securing it. */
export const collarSecured: CallRule = ({ asked: { set: id, step }, set }) =>
  set.collar === 'secured' || step.act === 'close' || set.leave !== null
    ? []
    : [callFinding('CAL-007', { at: { set: id } })];

/** CAL-015: a tag keeps a set from being changed (V10); people are kept out all the same. */
export const noTag: CallRule = ({ asked: { set: id, step }, set: { tag } }) =>
  tag === null || step.act === 'close'
    ? []
    : [
        callFinding('CAL-015', {
          at: { set: id },
          facts: { tag: tag.number, reason: tag.reason },
        }),
      ];

/** CAL-017: nothing is rigged that is not in the register with one owner and a tag (V13). */
export const registered: CallRule = ({ asked: { set: id, step } }) => {
  if (step.act !== 'rig') return [];
  const { owner, tag } = step.restraint;
  const isBlank = (words: string | null): boolean => words === null || words.trim() === '';
  if (!isBlank(owner) && !isBlank(tag)) return [];
  const missing = isBlank(owner)
    ? isBlank(tag)
      ? message('no owner and no tag')
      : message('no owner')
    : message('no tag');
  const facts = { what: restraintWords(step.restraint), missing };
  return [callFinding('CAL-017', { at: { set: id }, facts })];
};

/** CAL-018: a line that is led goes along with a move; everything else comes off before (V13). */
export const goesAlong: CallRule = ({ asked: { set: id, step }, set }) => {
  if (!isMove(step)) return [];
  return (set.standing?.restraints ?? []).flatMap((restraint) => {
    const what = restraintWords(restraint);
    if (restraint.kind !== 'bullLine' && restraint.kind !== 'winch') {
      const why = message('take it off, or it stops the set or is torn off');
      return [callFinding('CAL-018', { at: { set: id }, facts: { what, why } })];
    }
    if (restraint.owner !== null && restraint.tag !== null) return [];
    const why = message('it has no owner or no tag, so nobody leads it');
    return [callFinding('CAL-018', { at: { set: id }, facts: { what, why } })];
  });
};

/** CAL-021: out of scope, for every step of it (V15). */
export const noPerson: CallRule = ({ asked: { set: id }, facts: { hang } }) =>
  (hang?.items ?? [])
    .filter(({ carriesPerson }) => carriesPerson)
    .map((item) => callFinding('CAL-021', { at: { set: id, item: item.id } }));

/**
 * CAL-022: what was carried over from an earlier day, or counted by nobody, is looked at once it
 * is older than the house lets a record stand (C84).
 */
export const countedInTime: CallRule = ({ asked: { set: id, step }, set, facts }) => {
  if (set.standing === null || isZoneWork(step)) return [];
  const { basis, by, at } = set.knowledge;
  if (basis !== 'carriedOver' && by !== null) return [];
  const after = facts.house.rules.staleAfterSeconds;
  const recordedAtMs = at === null ? null : momentMs(at);
  const isOld =
    !after.known || isStale({ recordedAtMs, nowMs: facts.nowMs, staleAfterSeconds: after.value });
  if (!isOld) return [];
  return [
    callFinding('CAL-022', {
      at: { set: id },
      facts: {
        what:
          basis === 'carriedOver' ? message('was carried over') : message('has nobody behind it'),
      },
    }),
  ];
};

/** CAL-023: paper that came later says something about the set, and people have not said what. */
export const notesSettled: CallRule = ({ asked: { set: id, step }, set: { notes } }) =>
  notes.length === 0 || step.act === 'close'
    ? []
    : [callFinding('CAL-023', { at: { set: id }, measured: measure(notes.length, 'count') })];

/** CAL-025: without its physics a step cannot be judged; a zone can be closed without any. */
export const knownPlant: CallRule = ({ asked: { set: id, step }, facts }) =>
  facts.physics !== null || step.act === 'close'
    ? []
    : [callFinding('CAL-025', { at: { set: id }, facts: { needs: facts.needs.join('; ') } })];
