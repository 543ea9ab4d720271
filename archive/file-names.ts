/** Names of files: lower case, no signs that mean something to a file system. */

const SLUG_MAX = 60;

/** `Trim: playing (1)` is `trim-playing-1`; never empty, and never a name that is taken. */
export const slug = (text: string, taken: ReadonlySet<string> = new Set()): string => {
  const plain = text
    .normalize('NFKD')
    .toLowerCase()
    .replace(/\p{M}+/gu, '')
    .replace(/[^a-z0-9]+/g, '-')
    .slice(0, SLUG_MAX)
    .replace(/^-+|-+$/g, '');
  const name = plain === '' ? 'unnamed' : plain;
  if (!taken.has(name)) return name;
  let count = 2;
  while (taken.has(`${name}-${count}`)) count += 1;
  return `${name}-${count}`;
};

/** Ids of documents are letters, digits, points and dashes, so they are names as they are. */
export const showFolder = (houseId: string, showId: string): string => `shows/${houseId}/${showId}`;
