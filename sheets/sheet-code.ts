/**
 * The code of a sheet: a short name for everything that the sheet depends on. Printed again from
 * the same documents it is the same; after a change that matters to this sheet it is another, and
 * so a scanned or typed code can be answered with "current" or "superseded".
 */

/** No I, L, O or U: they are read as 1, 1, 0 and V. Crockford's alphabet, from memory. */
const LETTERS = '0123456789ABCDEFGHJKMNPQRSTVWXYZ';
const LETTER_BITS = 5n;
const CODE_LENGTH = 8;

/** FNV-1a, 64 bit: offset basis and prime as published by Fowler, Noll and Vo. */
const OFFSET_BASIS = 0xcbf29ce484222325n;
const PRIME = 0x100000001b3n;
const SIXTY_FOUR_BITS = (1n << 64n) - 1n;

const bytesOf = (text: string): readonly number[] =>
  [...text].flatMap((letter) => {
    const point = letter.codePointAt(0) ?? 0;
    if (point < 0x80) return [point];
    return [point & 0xff, (point >> 8) & 0xff, (point >> 16) & 0xff];
  });

/** FNV-1a over the letters of a text; plain ASCII gives the published values. */
export const fnv1a64 = (text: string): bigint =>
  bytesOf(text).reduce(
    (hash, byte) => ((hash ^ BigInt(byte)) * PRIME) & SIXTY_FOUR_BITS,
    OFFSET_BASIS,
  );

/** JSON with the keys of every object in order, so that one content has one text. */
export const canonicalText = (value: unknown): string => {
  if (Array.isArray(value)) return `[${value.map(canonicalText).join(',')}]`;
  if (typeof value !== 'object' || value === null) return JSON.stringify(value);
  const entries = Object.entries(value)
    .filter(([, each]) => each !== undefined)
    .toSorted(([one], [other]) => (one < other ? -1 : 1))
    .map(([key, each]) => `${JSON.stringify(key)}:${canonicalText(each)}`);
  return `{${entries.join(',')}}`;
};

/** Eight letters of what a sheet depends on, in two groups: `7F3K-Q2MX`. */
export const sheetCode = (content: unknown): string => {
  const hash = fnv1a64(canonicalText(content));
  // The high bits are folded onto the low ones, since FNV mixes the low ones least.
  const folded = hash ^ (hash >> 24n);
  const letters = Array.from({ length: CODE_LENGTH }, (_, index) => {
    const bits = (folded >> (BigInt(index) * LETTER_BITS)) & 31n;
    return LETTERS[Number(bits)] ?? '';
  }).join('');
  return `${letters.slice(0, 4)}-${letters.slice(4)}`;
};

/** A code as a person may type it: small letters, no hyphen, O for 0 and I or L for 1. */
export const sameCode = (typed: string, code: string): boolean => {
  const plain = (text: string): string =>
    text
      .toUpperCase()
      .replace(/[^0-9A-Z]/g, '')
      .replaceAll('O', '0')
      .replace(/[IL]/g, '1');
  return plain(typed) === plain(code);
};
