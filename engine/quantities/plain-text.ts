/** Brings the many ways in which people and their devices write one measure down to one. */

const VULGAR_FRACTIONS: Readonly<Record<string, string>> = {
  '½': '1/2',
  '⅓': '1/3',
  '⅔': '2/3',
  '¼': '1/4',
  '¾': '3/4',
  '⅕': '1/5',
  '⅖': '2/5',
  '⅗': '3/5',
  '⅘': '4/5',
  '⅙': '1/6',
  '⅚': '5/6',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
  '⅒': '1/10',
};

/**
 * The same text in plain characters. A vulgar fraction gets a gap on both sides, so that `6½` is
 * six and a half and `½4` does not become a twenty-fourth. A raised figure stays where it is after
 * a digit, where it would change the number.
 */
export const plainText = (text: string): string =>
  text
    .replace(/[½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞⅒]/g, (sign) => ` ${VULGAR_FRACTIONS[sign]} `)
    .replace(/(\d) ?⁄ ?(?=\d)/g, '$1/')
    .replace(/[−–‐‑]/g, '-')
    .replace(/['′’‘ʹ]{2}|[″”“ʺ]/g, '"')
    .replace(/[′’‘ʹ]/g, "'")
    .replace(/(\p{L})²/gu, (_, letter) => `${letter}2`)
    .replace(/(\p{L})³/gu, (_, letter) => `${letter}3`)
    .replace(/(\p{L})⁴/gu, (_, letter) => `${letter}4`)
    .replace(/[⋅•∙]/g, '·')
    .replace(/(\p{L})\./gu, '$1 ')
    .replace(/\s+/g, ' ')
    .trim();

/** A digit or numeral sign that is not 0 to 9; after `plainText` none has a meaning left. */
export const hasForeignDigit = (plain: string): boolean =>
  /\p{N}/u.test(plain.replace(/[0-9]/g, ''));
