/** Names of the persons of the house, asked for once: the record has their ids. */
import { useEffect, useSyncExternalStore } from 'react';
import { askPeople, type People } from '../people/ask-people.ts';
import type { Names } from './desk-words.ts';

let names: Names = {};
let isAsked = false;
const listeners = new Set<() => void>();

const subscribe = (listener: () => void): (() => void) => {
  listeners.add(listener);
  return () => listeners.delete(listener);
};

/** Where they are not given the ids stand, which is true and asks for no guess. */
const ask = async (): Promise<void> => {
  isAsked = true;
  const answer = await askPeople<People>('GET', '/api/people').catch(() => null);
  if (answer === null || !answer.ok) {
    isAsked = false;
    return;
  }
  names = Object.fromEntries(answer.value.people.map(({ id, name }) => [id, name]));
  for (const listener of listeners) listener();
};

export const useNames = (): Names => {
  useEffect(() => {
    if (!isAsked) void ask();
  }, []);
  return useSyncExternalStore(subscribe, () => names);
};
