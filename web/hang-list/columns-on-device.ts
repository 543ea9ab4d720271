/** Which columns this device hides: a matter of its width and of the person, not of the show. */
import { type Column, HIDEABLE, isColumn } from './columns.ts';

const KEY = 'counterpoise.hang-list.hidden';

/** What is not the name of a column that may be hidden is passed over: it hides nothing. */
export const hiddenIn = (text: string | null): ReadonlySet<Column> =>
  new Set(
    (text ?? '').split(' ').filter((name): name is Column => isColumn(name) && isHideable(name)),
  );

const isHideable = (column: Column): boolean => HIDEABLE.includes(column);

export const hiddenOnDevice = (): ReadonlySet<Column> => {
  try {
    return hiddenIn(localStorage.getItem(KEY));
  } catch {
    return new Set();
  }
};

export const rememberHidden = (hidden: ReadonlySet<Column>): void => {
  try {
    localStorage.setItem(KEY, [...hidden].join(' '));
  } catch {
    // A device that keeps nothing shows every column next time.
  }
};
