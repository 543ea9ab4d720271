/** A generated paper: where it lies and how it is made. */
export type Paper = {
  readonly path: string;
  readonly make: () => Promise<string>;
};

/** Why a paper cannot be made: one line for each thing to mend. */
export class CannotMake extends Error {
  readonly reasons: readonly string[];

  constructor(reasons: readonly string[]) {
    super(reasons.join('\n'));
    this.reasons = reasons;
  }
}

export const HEAD = '<!-- Made by `npm run papers`. Do not edit: change what it is made from. -->';

/** A cell of a table: one line, no bar that would end it, and nothing read as markup. */
export const cell = (text: string): string =>
  text
    .replace(/\s+/g, ' ')
    .replace(/\||__/g, (mark) => [...mark].map((letter) => `\\${letter}`).join(''))
    .replaceAll('<', '&lt;')
    .trim();

export const table = (
  head: readonly string[],
  rows: readonly (readonly string[])[],
): readonly string[] => [
  `| ${head.join(' | ')} |`,
  `| ${head.map(() => '---').join(' | ')} |`,
  ...rows.map((row) => `| ${row.map(cell).join(' | ')} |`),
];

export const page = (lines: readonly string[]): string => `${lines.join('\n').trimEnd()}\n`;

/** By code unit, which is the same on every machine; a locale's order is not. */
export const byText = (a: string, b: string): number => (a === b ? 0 : a < b ? -1 : 1);

export const distinct = (texts: readonly string[]): readonly string[] =>
  [...new Set(texts)].toSorted(byText);
