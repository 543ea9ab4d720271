/** The record of how things stand: read for every edit, and made where there is none yet. */
import { useMemo, useSyncExternalStore } from 'react';
import { blankState, readStateValue } from '#documents';
import type { Refusal } from '#outcome';
import { message, phrase, type Voice } from '#texts';
import type { Looked, StateEdit } from '../editing/state-edits.ts';
import type { JsonObject } from '../keeping/json.ts';
import { mayEdit } from '../keeping/kept.ts';
import { NOBODY, nameOnDevice, rememberName } from '../keeping/name-on-device.ts';
import { useKeeper } from '../keeping/use-keeper.ts';
import { useWork } from '../reckoning/use-work.ts';

/** As it is being typed, with its spaces; what the device keeps has none at its ends. */
let typedName: string | null = null;
const listeners = new Set<() => void>();

const subscribe = (listener: () => void): (() => void) => {
  listeners.add(listener);
  return () => listeners.delete(listener);
};

const nameNow = (): string => {
  const kept = nameOnDevice() === NOBODY ? '' : nameOnDevice();
  return typedName?.trim() === kept ? typedName : kept;
};

const typeName = (name: string): void => {
  typedName = name;
  rememberName(name);
  for (const listener of listeners) listener();
};

/** Who looks is asked once on this device, for every form, and never made up. */
export const useWho = () => ({ by: useSyncExternalStore(subscribe, nameNow), type: typeName });

export type HouseRecord = {
  readonly document: JsonObject | null;
  /** Now, as the house has it: the clock of an invented house stands still. */
  readonly now: () => string;
  /** What was not understood, and nothing changed then. Nothing happens without a record. */
  readonly edit: (edit: StateEdit) => readonly Refusal[];
  /** The same, and the record is made where there is none; or why it could not be kept. */
  readonly change: (edit: StateEdit, who: Looked) => Promise<readonly Refusal[]>;
};

export const useRecord = (): HouseRecord => {
  const keeper = useKeeper();
  const { kept, house, nowMs } = useWork();
  const houseId = String(kept.house.document['id']);
  const id = kept.state?.id ?? `state:${houseId}`;
  const document = kept.state?.document ?? null;
  return useMemo(() => {
    const edit: HouseRecord['edit'] = ({ write, what }) => {
      const state = keeper.state();
      const held = state.phase === 'open' ? state.documents[id] : undefined;
      if (held === undefined || state.phase !== 'open') return [];
      if (!mayEdit(state, held)) {
        return [inWords(held.save.is === 'held' ? UNANSWERED : NOT_LIVE, house)];
      }
      const next = write(held.document);
      const read = readStateValue(next, house);
      if (!read.ok) return read.error;
      keeper.edit(id, next, what);
      return [];
    };
    const change: HouseRecord['change'] = async (asked, who) => {
      const state = keeper.state();
      if (state.phase === 'open' && state.documents[id] !== undefined) return edit(asked);
      if (state.phase === 'open' && state.asOf !== null) return [inWords(NOT_LIVE, house)];
      const begun = asked.write(blankState({ house: houseId, demo: house.demo, ...who }));
      const read = readStateValue(begun, house);
      if (!read.ok) return read.error;
      const answer = await keeper.add(id, 'state', begun, asked.what);
      if (answer.outcome === 'saved') return [];
      if (answer.outcome === 'refused') return answer.refusals;
      if (answer.outcome === 'unreached') return [inWords(NOT_REACHED, house)];
      // Somebody else has made the record since: it is fetched, and this can be written again.
      await keeper.refresh();
      return [inWords(MADE_SINCE, house)];
    };
    const now = (): string => new Date(house.demo ? nowMs : Date.now()).toISOString();
    return { document, now, edit, change };
  }, [keeper, id, houseId, house, nowMs, document]);
};

const inWords = (refusal: Refusal, voice: Voice): Refusal => ({
  ...refusal,
  found: phrase(voice, refusal.found),
  accepted: phrase(voice, refusal.accepted),
});

const NOT_REACHED: Refusal = {
  code: 'not reached',
  path: 'record',
  found: message('no answer of the server'),
  accepted: message('this written down again when it answers'),
};
const NOT_LIVE: Refusal = {
  code: 'not live',
  path: 'record',
  found: message('a copy on this device, while the server is not reached'),
  accepted: message('this written down again when it answers'),
};
const UNANSWERED: Refusal = {
  code: 'not answered',
  path: 'record',
  found: message('an entry before it that the server has not answered'),
  accepted: message('this written down again, after that one is sent or dropped'),
};
const MADE_SINCE: Refusal = {
  code: 'made since',
  path: 'record',
  found: message('a record that somebody else has just made'),
  accepted: message('this written down again, into that record'),
};
