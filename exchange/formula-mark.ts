/**
 * The one rule for texts that a spreadsheet would reckon: they go out with an apostrophe before
 * them, by which spreadsheets know a text, and lose it on the way in. A text that begins with an
 * apostrophe of its own is marked too, so that nothing is lost. Files and the clipboard keep it.
 */

/**
 * What a spreadsheet program takes for the beginning of a formula (common practice: OWASP, CSV
 * injection), the full-width forms of East Asian keyboards among them.
 */
const FORMULA_START = /^['=+\-@\t\r\n＝＋－＠]/;
const MARKED = /^'(?=['=+\-@\t\r\n＝＋－＠])/;

export const startsLikeFormula = (text: string): boolean => FORMULA_START.test(text);

export const marked = (text: string): string => (startsLikeFormula(text) ? `'${text}` : text);

export const unmarked = (text: string): string => text.replace(MARKED, '');
