/** The address as a value, and links that change it without loading the page again. */
import { useSyncExternalStore } from 'react';
import { type Address, type Place, readAddress, writeAddress } from './address.ts';

const listeners = new Set<() => void>();

const subscribe = (listener: () => void): (() => void) => {
  listeners.add(listener);
  window.addEventListener('popstate', listener);
  return () => {
    listeners.delete(listener);
    window.removeEventListener('popstate', listener);
  };
};

const current = (): string => `${location.pathname}${location.search}`;

/** Where the browser stands now; read when something happens, not while drawing. */
export const addressNow = (): Address => readAddress(location.pathname, location.search);

export const useAddress = (): Address => {
  const written = useSyncExternalStore(subscribe, current);
  const [path = '', query = ''] = written.split('?');
  return readAddress(path, query);
};

const goTo = (url: string, { replace }: { readonly replace: boolean }): void => {
  if (url === current()) return;
  if (replace) history.replaceState(null, '', url);
  else history.pushState(null, '', url);
  for (const listener of listeners) listener();
};

/** Another place in the same house and show. */
export const go = (place: Place, options = { replace: false }): void =>
  goTo(writeAddress({ ...addressNow(), place }), options);

export const goToAddress = (address: Address, options = { replace: false }): void =>
  goTo(writeAddress(address), options);
