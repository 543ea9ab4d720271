/** The rows of a mapped sheet: what each says of which field, as text, and in which cell. */
import type { Refusal } from '#outcome';
import { headingOf, isBareNumber, type Mapping, type Target, unitsFor } from './mapping.ts';
import type { RefusalName } from './refusal-codes.ts';
import { BLANK, type Cell, cellName, quoted, refuse, type Sheet } from './sheet.ts';

export type Said = {
  readonly to: Target;
  readonly text: string;
  readonly where: string;
  /** Whether the row says it itself, and not a person of all rows. */
  readonly isOwn: boolean;
};

export type RowIn = {
  /** The row in the sheet, for a refusal about the whole of it. */
  readonly where: string;
  readonly said: readonly Said[];
};

const REFUSED: Readonly<Record<Exclude<Cell['is'], 'text' | 'number'>, RefusalName>> = {
  formula: 'formula',
  date: 'dateCell',
  error: 'errorCell',
};

const unitOf = (unit: string | null, text: string, mapping: Mapping, to: Target): string => {
  if (unit === null || unitsFor(mapping.table, to).length === 0) return text;
  return isBareNumber(text) ? `${text} ${unit}` : text;
};

type Gathered = { readonly rows: readonly RowIn[]; readonly refusals: readonly Refusal[] };

const cellRefusal = (where: string, cell: Cell): Refusal | null => {
  if (cell.is === 'text' || cell.is === 'number') return null;
  const accepted = 'the text or the figure itself, with its unit';
  return refuse(REFUSED[cell.is], where, { found: `${cell.is} ${quoted(cell.text)}`, accepted });
};

const rowIn = (mapping: Mapping, sheet: Sheet, row: number): RowIn & Pick<Gathered, 'refusals'> => {
  const said: Said[] = [];
  const refusals: Refusal[] = [];
  for (const { column, to, unit } of mapping.columns) {
    const cell = sheet.rows[row]?.[column] ?? BLANK;
    const where = cellName(sheet.name, row, column);
    if (to === null) continue;
    const refused = cellRefusal(where, cell);
    const text = cell.text.trim();
    if (refused !== null) refusals.push(refused);
    else if (text !== '')
      said.push({ to, text: unitOf(unit, text, mapping, to), where, isOwn: true });
  }
  return { where: cellName(sheet.name, row, 0), said, refusals };
};

/** What holds for every row is added where the row itself says nothing of it. */
const withSame = ({ where, said }: RowIn, mapping: Mapping): RowIn => {
  const own = new Set(said.map(({ to }) => headingOf(mapping.table, to)));
  const more = mapping.same.filter(({ to }) => !own.has(headingOf(mapping.table, to)));
  return { where, said: [...said, ...more.map((one) => ({ ...one, where, isOwn: false }))] };
};

/** Rows without a filled cell in any mapped column are passed over. */
export const rowsIn = (mapping: Mapping, sheet: Sheet): Gathered => {
  const rows: RowIn[] = [];
  const refusals: Refusal[] = [];
  for (let row = mapping.headRow + 1; row < sheet.rows.length; row += 1) {
    const read = rowIn(mapping, sheet, row);
    refusals.push(...read.refusals);
    if (read.said.length > 0) rows.push(withSame(read, mapping));
  }
  return { rows, refusals };
};

export const saidOf = ({ said }: RowIn, field: string): Said | undefined =>
  said.find(({ to }) => to.is === 'field' && to.field === field);
