/**
 * Text of others as it is shown: signs that do not print, and those that turn the writing round,
 * stand by their number, so that a cell looks like what it is.
 */
const HIDDEN = /[\p{Cc}\p{Cf}\p{Co}\p{Cs}\p{Zl}\p{Zp}]/gu;

const numbered = (sign: string): string =>
  `⟨U+${(sign.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0')}⟩`;

const SHOWN_MAX = 60;

export const shownText = (text: string, most = SHOWN_MAX): string => {
  const letters = [...text.slice(0, most * 4)];
  const cut = letters.length > most ? [...letters.slice(0, most - 1), '…'] : letters;
  return cut.join('').replace(HIDDEN, numbered);
};
