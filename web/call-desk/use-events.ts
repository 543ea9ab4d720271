/** Events of the open call, read on from page to page: what was said and done, in its order. */
import { useEffect, useSyncExternalStore } from 'react';
import type { HouseEvent } from '#events';
import type { CallNow } from '#state';
import { askPage } from '../live/server.ts';

type Read = {
  readonly call: string;
  readonly events: readonly HouseEvent[];
  /** Number of the last event that was read. */
  readonly seq: number;
};

let read: Read | null = null;
let isAsking = false;
const listeners = new Set<() => void>();

const subscribe = (listener: () => void): (() => void) => {
  listeners.add(listener);
  return () => listeners.delete(listener);
};

/** More than a call of a long day. */
const PAGES_MAX = 400;

const readOn = async ({ id, seq }: CallNow, upTo: number): Promise<void> => {
  if (isAsking) return;
  isAsking = true;
  if (read?.call !== id) read = { call: id, events: [], seq: seq - 1 };
  for (let page = 0; page < PAGES_MAX && read.seq < upTo; page++) {
    const answer = await askPage(read.seq);
    const last = answer?.events.at(-1);
    if (answer === null || last === undefined) break;
    read = { ...read, events: [...read.events, ...answer.events], seq: last.seq };
    for (const listener of listeners) listener();
  }
  isAsking = false;
};

const NONE: readonly HouseEvent[] = [];

/** Null while nothing of this call was read. Without the server what was read before stands. */
export const useEventsOf = (call: CallNow, upTo: number): readonly HouseEvent[] | null => {
  useEffect(() => {
    void readOn(call, upTo);
  }, [call, upTo]);
  const all = useSyncExternalStore(subscribe, () => read);
  if (all?.call !== call.id) return null;
  return all.events.length === 0 ? NONE : all.events;
};
