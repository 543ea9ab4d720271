/**
 * Which column of a foreign table is which of ours. A guess from the headings is a value that a
 * person sees and changes; what it leaves open is asked, and nothing is filled in.
 */
import type { House } from '#house';
import type { Refusal } from '#outcome';
import { type Dimension, parseQuantity, unitsOf } from '#quantities';
import {
  bricksHeading,
  type Field,
  fieldsOf,
  REFERENCE_WORDS,
  type TableName,
  TRIM_REFERENCES,
  type TrimReference,
  trimHeading,
} from './fields.ts';
import { BLANK, type Cell, cellName, quoted, refuse, type Sheet } from './sheet.ts';

export type Target =
  | { readonly is: 'field'; readonly field: string }
  | { readonly is: 'trim'; readonly name: string; readonly reference: TrimReference }
  | { readonly is: 'bricks'; readonly kind: string };

export type ColumnMapping = {
  /** From 0, as in the sheet. */
  readonly column: number;
  readonly heading: string;
  /** Null: the column is left out. */
  readonly to: Target | null;
  /** The unit of bare numbers, from the heading or chosen by a person; null: not said. */
  readonly unit: string | null;
};

export type Mapping = {
  readonly table: TableName;
  /** The row of the headings, from 0; what is above it is left out. */
  readonly headRow: number;
  readonly columns: readonly ColumnMapping[];
  /** What a person says of every row whose own cell is blank, such as how all is known. */
  readonly same: readonly { readonly to: Target; readonly text: string }[];
};

export const headingOf = (table: TableName, to: Target): string => {
  if (to.is === 'trim') return trimHeading(to.name, to.reference);
  if (to.is === 'bricks') return bricksHeading(to.kind);
  return fieldNamed(table, to.field)?.heading ?? to.field;
};

export const fieldNamed = (table: TableName, name: string): Field | undefined =>
  fieldsOf(table).find(({ field }) => field === name);

/** What bare numbers of a target measure; null where it takes no unit. */
const dimensionOf = (table: TableName, to: Target): Dimension | null => {
  if (to.is === 'trim') return 'length';
  const reads = to.is === 'field' ? fieldNamed(table, to.field)?.reads : undefined;
  return reads?.is === 'measure' ? reads.dimension : null;
};

/** The units that may be chosen for a column; none where it needs none. */
export const unitsFor = (table: TableName, to: Target): readonly string[] => {
  const dimension = dimensionOf(table, to);
  return dimension === null ? [] : unitsOf(dimension);
};

const UNIT_AT_END = /\s*[([]\s*([^()[\]]+?)\s*[)\]]\s*$/;

const unitFits = (dimension: Dimension, unit: string): boolean =>
  parseQuantity(dimension, `1 ${unit}`).ok;

const TRIM_WORDS = /^(in|out|low|high|playing|show|storage|working)(?:\s+(?:trim|height))?$/;

const ownTarget = (heading: string): Target | null => {
  const [, name, words] = /^Trim: (.+) \(([a-z ]+)\)$/.exec(heading) ?? [];
  const reference = TRIM_REFERENCES.find((one) => REFERENCE_WORDS[one] === words);
  return name === undefined || reference === undefined ? null : { is: 'trim', name, reference };
};

const bricksTarget = (heading: string, house: House): Target | null => {
  const word = heading.replace(/^bricks:\s*/i, '').toLowerCase();
  const kind = house.brickKinds.find(
    ({ id, name }) => id.toLowerCase() === word || name.toLowerCase() === word,
  );
  return kind === undefined ? null : { is: 'bricks', kind: kind.id };
};

/** A heading is compared without its unit, in lower case, its signs as spaces. */
const target = (table: TableName, heading: string, house: House): Target | null => {
  const own = ownTarget(heading);
  if (own !== null) return table === 'schedule' ? own : null;
  const bare = heading.replace(UNIT_AT_END, '').trim();
  const words = bare
    .toLowerCase()
    .replace(/[.:_]+/g, ' ')
    .replace(/\s+/g, ' ')
    .trim();
  const found = fieldsOf(table).find(
    (one) =>
      one.heading.toLowerCase() === bare.toLowerCase() || one.words.some((word) => word === words),
  );
  if (found !== undefined) return { is: 'field', field: found.field };
  if (table === 'takeoff') return null;
  const [, name] = TRIM_WORDS.exec(words) ?? [];
  if (name !== undefined) return { is: 'trim', name, reference: 'batten' };
  return bricksTarget(bare, house);
};

const unitIn = (table: TableName, heading: string, to: Target | null): string | null => {
  const dimension = to === null ? null : dimensionOf(table, to);
  const unit = UNIT_AT_END.exec(heading)?.[1];
  if (dimension === null || unit === undefined) return null;
  return unitFits(dimension, unit) ? unit : null;
};

const keyOf = (to: Target): string => JSON.stringify(to);

const columnsOf = (
  table: TableName,
  cells: readonly Cell[],
  house: House,
): readonly ColumnMapping[] => {
  const taken = new Set<string>();
  return cells.map(({ text }, column) => {
    const heading = text.trim();
    const guess = target(table, heading, house);
    const to = guess === null || taken.has(keyOf(guess)) ? null : guess;
    if (to !== null) taken.add(keyOf(to));
    return { column, heading, to, unit: unitIn(table, heading, to) };
  });
};

/** Headings may stand below a title and an address, but not far below. */
const HEAD_ROWS_MAX = 20;

const TABLES: readonly TableName[] = ['schedule', 'takeoff'];

const matched = ({ columns }: Mapping): number => columns.filter(({ to }) => to !== null).length;

/** The row and the table of which most headings are known; the first of equals. */
export const guessMapping = (sheet: Sheet, house: House): Mapping =>
  sheet.rows
    .slice(0, HEAD_ROWS_MAX)
    .flatMap((cells, headRow) =>
      TABLES.map(
        (table): Mapping => ({ table, headRow, columns: columnsOf(table, cells, house), same: [] }),
      ),
    )
    .reduce((best, one) => (matched(one) > matched(best) ? one : best), {
      table: 'schedule',
      headRow: 0,
      columns: columnsOf('schedule', sheet.rows[0] ?? [], house),
      same: [],
    });

/** The same guess for a table that a person has chosen. */
export const guessColumns = (mapping: Mapping, sheet: Sheet, house: House): Mapping => ({
  ...mapping,
  columns: columnsOf(mapping.table, sheet.rows[mapping.headRow] ?? [], house),
});

export const isBareNumber = (text: string): boolean => /^[+\-−]?\s*[\d.,]+$/.test(text.trim());

const below = (mapping: Mapping, sheet: Sheet, column: number): readonly Cell[] =>
  sheet.rows.slice(mapping.headRow + 1).map((row) => row[column] ?? BLANK);

const unitQuestions = (
  mapping: Mapping,
  sheet: Sheet,
  { column, to, unit }: ColumnMapping,
): readonly Refusal[] => {
  const dimension = to === null ? null : dimensionOf(mapping.table, to);
  if (to === null || dimension === null) return [];
  const where = cellName(sheet.name, mapping.headRow, column);
  const accepted = `one of ${unitsFor(mapping.table, to).join(', ')}`;
  if (unit !== null) {
    if (unitFits(dimension, unit)) return [];
    return [refuse('unitOther', where, { found: quoted(unit), accepted })];
  }
  const bare = below(mapping, sheet, column).filter(({ text }) => isBareNumber(text));
  const found = `${bare.length} bare numbers, the first ${quoted(bare[0]?.text ?? '')}`;
  return bare.length === 0 ? [] : [refuse('unitAsked', where, { found, accepted })];
};

const isSet = (to: Target | null): boolean => to?.is === 'field' && to.field === 'set';

/** What a person must still say before a mapping can be applied. */
export const openQuestions = (mapping: Mapping, sheet: Sheet): readonly Refusal[] => {
  const faults: Refusal[] = [];
  const seen = new Map<string, string>();
  const width = Math.max(...sheet.rows.map((row) => row.length), 0);
  if (!mapping.columns.some(({ to }) => isSet(to))) {
    const found = 'no column mapped to Set';
    faults.push(refuse('setUnmapped', sheet.name, { found, accepted: 'a column for Set' }));
  }
  for (const one of mapping.columns) {
    const where = cellName(sheet.name, mapping.headRow, one.column);
    if (one.to === null) continue;
    if (one.column >= width) {
      const accepted = `a column up to ${width}`;
      faults.push(refuse('columnMissing', where, { found: `column ${one.column + 1}`, accepted }));
    }
    const before = seen.get(keyOf(one.to));
    if (before !== undefined) {
      const found = `${quoted(headingOf(mapping.table, one.to))}, which ${before} is too`;
      faults.push(refuse('mappedTwice', where, { found, accepted: 'one column for a field' }));
    }
    seen.set(keyOf(one.to), where);
    faults.push(...unitQuestions(mapping, sheet, one));
  }
  return faults;
};
