/**
 * A sheet as plain data: what stands on it, in what order, and what goes round it. It knows no
 * size of paper and no colour; `print` makes pages of it and the screens preview the same blocks.
 */

import type { Drawing } from '#drawings';
import type { Tongue } from '#texts';

/** A run of words; `blank` is a line to write on, so many letters wide; `box` is one to tick. */
export type Inline =
  | string
  | { readonly strong: string }
  | { readonly blank: number }
  | { readonly box: true };

export type Words = readonly Inline[];

export type Column = {
  readonly head: string;
  /** The unit of every number below, in the head of the column too. */
  readonly unit?: string;
  readonly align: 'left' | 'right';
  /** Share of the width of the table. */
  readonly share: number;
  /** Left empty for a pencil, with a rule on either side. */
  readonly isWritten?: boolean;
};

export type Row = {
  readonly cells: readonly Words[];
  /** Thick round what a reader must not miss; group above the first row of a group. */
  readonly rule: 'hair' | 'thick';
  /** Nothing hangs there, or it is only said for completeness. */
  readonly isMuted?: boolean;
  /** The first cell runs over the whole row. */
  readonly isGroup?: boolean;
};

export type Heading = { readonly kind: 'heading'; readonly text: string };
export type Paragraph = {
  readonly kind: 'text';
  readonly words: Words;
  /** Smaller than working text: what a card rests on, not what is done by it. */
  readonly isNote?: boolean;
  /** As small as a footer: what a cut-off part takes along from the edges of its page. */
  readonly isEdge?: boolean;
};
export type Notice = {
  readonly kind: 'notice';
  /** Plain: between two rules. Note: one line round it. Caution: dashed. Danger: doubled, wedge. */
  readonly degree: 'plain' | 'note' | 'caution' | 'danger';
  readonly heading: string;
  readonly words: Words;
};
export type DrawingBlock = { readonly kind: 'drawing'; readonly drawing: Drawing };
export type Table = {
  readonly kind: 'table';
  readonly columns: readonly Column[];
  readonly rows: readonly Row[];
};
export type List = {
  readonly kind: 'list';
  readonly heading: string;
  readonly items: readonly Words[];
};
/** Proofs that a person still owes: a box each, and blanks for what was found. */
export type Proofs = { readonly kind: 'proofs'; readonly items: readonly Words[] };
/** Ruled lines for corrections in ink, each with a place for initials. */
export type InkLines = {
  readonly kind: 'inkLines';
  readonly count: number;
  /** Of corrections and of initials; absent is English. */
  readonly words?: readonly [corrections: string, initials: string];
};
export type Columns = {
  readonly kind: 'columns';
  readonly shares: readonly number[];
  readonly columns: readonly (readonly Block[])[];
};
/** Small cards to be cut apart, so many a row; one is never broken over two pages. */
export type Tickets = {
  readonly kind: 'tickets';
  readonly perRow: number;
  readonly tickets: readonly (readonly Block[])[];
};

export type Block =
  | Heading
  | Paragraph
  | Notice
  | DrawingBlock
  | Table
  | List
  | Proofs
  | InkLines
  | Columns
  | Tickets;

export const SHEET_KINDS = [
  'balance-card',
  'take-off',
  'schedule',
  'hanging-card',
  'brick-tickets',
  'gallery-stock',
  'house-sheet',
  'beam-and-floor',
  'section',
  'plan',
  'calculation-report',
  'self-check',
  'strike-sheet',
  'loading-sheet',
  'unloading-sheet',
  'permit',
  'briefing',
  'handover',
  'preset-check',
] as const;

export type SheetKind = (typeof SHEET_KINDS)[number];

/** Who printed what and when; words are taken as they are, there is no clock here. */
export type Stamp = {
  readonly revision: string;
  /** ISO date and time with its offset, as the printer's clock said it. */
  readonly printedAt: string;
  readonly printedBy: string;
};

export type Sheet = {
  /** `balance-card/11`, `take-off`. */
  readonly id: string;
  readonly kind: SheetKind;
  /** `Balance card`. */
  readonly title: string;
  /** The number of the set, framed, where the sheet is about one. */
  readonly number: string | null;
  readonly name: string;
  /** What hangs next to it, so that a slip of a row is seen; null on sheets of the whole house. */
  readonly beside: string | null;
  readonly orientation: 'portrait' | 'landscape';
  /** House, show, revision, printed, units. The printer adds page n of m behind the revision. */
  readonly facts: readonly { readonly term: string; readonly value: string }[];
  readonly blocks: readonly Block[];
  readonly footer: {
    readonly voidIf: string;
    readonly code: string;
    readonly qr: Drawing;
    readonly cautions: readonly string[];
  };
  /** Words on the hatched frame of what is not real; null for a sheet of a real house. */
  readonly frame: string | null;
  /** What it is said in; absent is English. Paper adds few words of its own. */
  readonly tongue?: Tongue | undefined;
  /** ISO date and time for the file, so that the same sheet gives the same bytes. */
  readonly printedAt: string;
  /** The numbers of the sheet one in a cell, for a spreadsheet; null where there is no table. */
  readonly data: SheetData | null;
};

/** A table for other programs: plain numbers, each column with its unit in its head. */
export type SheetData = {
  readonly columns: readonly string[];
  readonly rows: readonly (readonly (string | number | null)[])[];
};

export const strong = (text: string): Inline => ({ strong: text });
export const blank = (letters: number): Inline => ({ blank: letters });
export const box: Inline = { box: true };
