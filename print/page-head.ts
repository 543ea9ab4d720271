/** The header of every page: what sheet it is on the left, and its facts on the right. */

import type { Column, Content } from 'pdfmake/interfaces.js';
import { textWidth } from '#drawings';
import type { Sheet } from '#sheets';
import { ENGLISH, phrase } from '#texts';
import type { Edges } from './paper.ts';
import { LEADING, linesIn } from './room.ts';
import { textRuns } from './words.ts';

const HEADER_TOP = 25;
const HEADER_SIZE = 12;
/** A sheet whose header takes less begins its body here all the same. */
const HEADER_LEAST = 102;
/** From the words of the header to the rule under it, and from there to the body. */
const ABOVE_RULE = 3;
const BELOW_RULE = 5;
const GAP = 12;
/** The widest that the facts may be, and what their terms take of it. */
const FACTS_MOST = 280;
const TERMS_WIDTH = 58;
/** Five facts must stand beside one title. */
const FACT_LEADING = 0.92;
const NAME_SIZES = [28, 24, 20, 17, 14] as const;
const SMALLEST_NAME = 14;
const NUMBER_SIZE = 28;
const HEAVY = { weight: 'strong', width: 'head' } as const;

export type PageOf = { readonly page: number; readonly pages: number };

/** For widths and heights that must be known before the pages are counted. */
const WIDEST_PLACE: PageOf = { page: 99, pages: 99 };

type Fact = Sheet['facts'][number];

type Said = Pick<Sheet, 'facts' | 'tongue'>;

const factWords = ({ term, value }: Fact, { page, pages }: PageOf, { tongue }: Said): string => {
  const voice = { ...ENGLISH, tongue };
  return term === phrase(voice, 'revision')
    ? `${value}, ${phrase(voice, 'page {page} of {pages}', { page, pages })}`
    : value;
};

const factsWidth = (sheet: Said): number => {
  const widths = sheet.facts.map((fact) =>
    textWidth(factWords(fact, WIDEST_PLACE, sheet), HEADER_SIZE, { weight: 'strong' }),
  );
  return Math.min(FACTS_MOST, Math.max(...widths) + TERMS_WIDTH);
};

const factRows = (sheet: Sheet, place: PageOf): Column => ({
  table: {
    widths: [TERMS_WIDTH - 8, '*'],
    body: sheet.facts.map((fact) => [
      { text: textRuns(fact.term, { size: HEADER_SIZE }), lineHeight: FACT_LEADING },
      {
        text: textRuns(factWords(fact, place, sheet), { size: HEADER_SIZE, bold: true }),
        lineHeight: FACT_LEADING,
      },
    ]),
  },
  layout: {
    hLineWidth: () => 0,
    vLineWidth: () => 0,
    paddingLeft: (column) => (column === 0 ? 0 : 6),
    paddingRight: () => 0,
    paddingTop: () => 0,
    paddingBottom: () => 0,
  },
  width: factsWidth(sheet),
});

/** The largest size at which the name stands on one line. */
const nameSize = (name: string, room: number): number =>
  NAME_SIZES.find((size) => textWidth(name, size, HEAVY) <= room) ?? SMALLEST_NAME;

const numberBox = (number: string): Column => ({
  table: {
    widths: ['auto'],
    body: [[{ text: textRuns(number, { face: 'Wide', bold: true, size: NUMBER_SIZE }) }]],
  },
  layout: {
    hLineWidth: () => 2,
    vLineWidth: () => 2,
    paddingLeft: () => 8,
    paddingRight: () => 8,
    paddingTop: () => -3,
    paddingBottom: () => -1,
  },
  width: 'auto',
});

/** Room for the number of a set in its frame, and the gap behind it. */
const boxWidth = (number: string | null): number =>
  number === null ? 0 : textWidth(number, NUMBER_SIZE, HEAVY) + 32;

const titleBlock = ({ title, number, name, beside }: Sheet, room: number): Column => {
  const size = nameSize(name, room - boxWidth(number));
  const named: Column = {
    text: textRuns(name, { face: 'Wide', bold: true, size }),
    // A name that needs two lines takes the height of the number's box.
    margin: [0, size === SMALLEST_NAME ? 2 : (NUMBER_SIZE - size) * 0.75, 0, 0],
    width: '*',
  };
  return {
    stack: [
      { text: textRuns(title, { size: HEADER_SIZE }) },
      number === null ? named : { columns: [numberBox(number), named], columnGap: 10 },
      ...(beside === null
        ? []
        : [{ text: textRuns(beside, { size: HEADER_SIZE }), margin: [0, 2, 0, 0] } as Content]),
    ],
    width: '*',
  };
};

const titleRoom = (sheet: Sheet, width: number): number => width - factsWidth(sheet) - GAP;

export const headerContent = (sheet: Sheet, place: PageOf, { width, margin }: Edges): Content => ({
  margin: [margin, HEADER_TOP, margin, 0],
  columns: [titleBlock(sheet, titleRoom(sheet, width)), factRows(sheet, place)],
  columnGap: GAP,
});

const titleHeight = ({ title, number, name, beside }: Sheet, room: number): number => {
  const line = HEADER_SIZE * LEADING;
  const nameRoom = room - boxWidth(number);
  const size = nameSize(name, nameRoom);
  const box = number === null ? 0 : NUMBER_SIZE * LEADING;
  const named = Math.max(box, linesIn(name, size, nameRoom, HEAVY) * size * LEADING);
  const under = beside === null ? 0 : linesIn(beside, HEADER_SIZE, room) * line + 2;
  return linesIn(title, HEADER_SIZE, room) * line + named + under;
};

const factsHeight = (sheet: Sheet): number => {
  const room = factsWidth(sheet) - TERMS_WIDTH;
  const lines = sheet.facts.map((fact) =>
    linesIn(factWords(fact, WIDEST_PLACE, sheet), HEADER_SIZE, room, { weight: 'strong' }),
  );
  return lines.reduce((sum, count) => sum + count * HEADER_SIZE * LEADING * FACT_LEADING, 0);
};

/** Where the body begins: long names and long facts push it down and run into nothing. */
export const headerHeight = (sheet: Sheet, { width }: Edges): number => {
  const taken = Math.max(titleHeight(sheet, titleRoom(sheet, width)), factsHeight(sheet));
  return Math.max(HEADER_LEAST, HEADER_TOP + taken + ABOVE_RULE + BELOW_RULE);
};

/** The rule under the header, where the body begins. */
export const headerRule = (margin: number, width: number, height: number): Content => ({
  canvas: [
    {
      type: 'line',
      x1: margin,
      y1: height - BELOW_RULE,
      x2: margin + width,
      y2: height - BELOW_RULE,
      lineWidth: 1.8,
    },
  ],
  absolutePosition: { x: 0, y: 0 },
});
