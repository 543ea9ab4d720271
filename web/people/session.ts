/** Who this device is signed in as, as far as it has heard. Part of the first view, and no more. */

import { useEffect, useSyncExternalStore } from 'react';
import type { Role } from '#events';
import { rememberName } from '../keeping/name-on-device.ts';
import { houseFetch } from '../offline/house-fetch.ts';

export type Session = {
  readonly kind: 'nobody' | 'thisMachine' | 'person' | 'program';
  readonly id?: string;
  readonly name?: string;
  readonly role?: Role;
  readonly hasOwner: boolean;
  readonly ownerCode?: string;
  readonly isMine?: boolean;
  /** Who may sign in here by a PIN. */
  readonly byPin: readonly { readonly id: string; readonly name: string }[];
};

/** Null until the server has answered. */
let session: Session | null = null;
const listeners = new Set<() => void>();

export const askSession = async (): Promise<Session | null> => {
  const response = await houseFetch('/api/session').catch(() => null);
  if (response?.ok === true) {
    session = (await response.json()) as Session;
    // What is saved here is saved under this name: the server writes no other.
    if (session.kind === 'person' && session.name !== undefined) rememberName(session.name);
    for (const listener of listeners) listener();
  }
  return session;
};

const subscribe = (listener: () => void): (() => void) => {
  listeners.add(listener);
  return () => listeners.delete(listener);
};

export const useSession = (): Session | null => {
  useEffect(() => {
    if (session === null) void askSession();
  }, []);
  return useSyncExternalStore(subscribe, () => session);
};
