/** Who types on this device: what a person last put into the title block. There is no log-in. */
const KEY = 'counterpoise.by';

/** Written into the record where nobody has given a name; it is not made up. */
export const NOBODY = 'name not given';

export const nameOnDevice = (): string => {
  try {
    return localStorage.getItem(KEY)?.trim() || NOBODY;
  } catch {
    return NOBODY;
  }
};

export const rememberName = (name: string): void => {
  try {
    localStorage.setItem(KEY, name.slice(0, 80));
  } catch {
    // A device that keeps nothing asks again next time.
  }
};
