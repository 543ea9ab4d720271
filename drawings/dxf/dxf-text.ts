/**
 * Words and names as DXF takes them. A line of the file is a value, so nothing that a person typed
 * may end one, and what DXF reads as a sign of its own is written by its number.
 */

/** Ends of lines, control and turning signs: a line of DXF has none. */
const NO_LINE = /[\p{Cc}\p{Cf}\p{Zl}\p{Zp}\p{Cs}]/gu;

/** Longest value of a line (DXF Reference, from memory: 255 bytes). */
const VALUE_MAX = 250;

const numbered = (sign: string): string =>
  [...sign]
    .flatMap((one) => Array.from({ length: one.length }, (_, at) => one.charCodeAt(at)))
    .map((code) => `\\U+${code.toString(16).toUpperCase().padStart(4, '0')}`)
    .join('');

/**
 * A text of one line in ASCII. `%%` and `^` begin signs of DXF, and a backslash may begin a number
 * of a letter; they and all beyond ASCII are written as `\U+0025`. Cut where it is too long.
 */
export const dxfText = (text: string): string => {
  const plain = text.replace(NO_LINE, ' ').replaceAll('\u00A0', ' ');
  const signs = [...plain].map((one) => (/[ -~]/.test(one) && !/[%^\\]/.test(one) ? one : null));
  let written = '';
  for (const [at, sign] of [...plain].entries()) {
    const next = written + (signs[at] ?? numbered(sign));
    if (next.length > VALUE_MAX) break;
    written = next;
  }
  return written;
};
