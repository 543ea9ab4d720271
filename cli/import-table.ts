import { readFile } from 'node:fs/promises';
import { basename } from 'node:path';
import { type JsonObject, readShowValue, writeDocument } from '#documents';
import {
  applyMapping,
  columnName,
  guessColumns,
  guessMapping,
  headingOf,
  type Mapping,
  readTable,
  type Sheet,
  type TableName,
} from '#exchange';
import type { House } from '#house';
import { fail, ok, type Refusal, type Result } from '#outcome';
import { EXIT, type ExitCode } from './exit-codes.ts';
import { wrote } from './export-table.ts';
import { type Opened, openDocuments } from './open-documents.ts';
import { COMMAND_REFUSALS } from './refusal-codes.ts';
import { sayRefusals, type Voice } from './voice.ts';

export type ImportOptions = {
  readonly house: string;
  readonly show: string;
  readonly file: string;
  readonly sheet?: string;
  readonly table?: TableName;
  readonly heading?: readonly string[];
  readonly unit?: readonly string[];
  readonly knownBy?: string;
  readonly out?: string;
};

type Refused<T> = Result<T, readonly Refusal[]>;

const refused = (
  name: keyof typeof COMMAND_REFUSALS,
  found: string,
  accepted: string,
): { readonly ok: false; readonly error: readonly Refusal[] } =>
  fail([{ code: COMMAND_REFUSALS[name].code, path: '', found, accepted }]);

const bytesOf = async (file: string): Promise<Refused<Uint8Array>> => {
  try {
    return ok(new Uint8Array(await readFile(file)));
  } catch (fault) {
    const found = `it could not be read (${(fault as { code?: string }).code})`;
    return refused('noFile', found, 'a file named .csv or .xlsx');
  }
};

const sheetOf = async ({ file, sheet }: ImportOptions): Promise<Refused<Sheet>> => {
  const bytes = await bytesOf(file);
  const sheets = bytes.ok ? readTable(basename(file), bytes.value) : bytes;
  if (!sheets.ok) return sheets;
  const named = sheets.value.filter(({ name }) => sheet === undefined || name === sheet);
  const [one, ...more] = named;
  if (one !== undefined && more.length === 0) return ok(one);
  const names = sheets.value.map(({ name }) => JSON.stringify(name)).join(', ');
  return refused('noTable', `${named.length} sheets to read`, `--sheet with one of ${names}`);
};

/** `C=ft` to the column and what is said of it. */
const said = (words: string, sheet: Sheet): Refused<readonly [number, string]> => {
  const [, letters, what] = /^([A-Z]{1,2})=(.+)$/is.exec(words) ?? [];
  const width = Math.max(...sheet.rows.map((row) => row.length));
  const at = Array.from({ length: width }, (_, column) => columnName(column)).indexOf(
    letters?.toUpperCase() ?? '',
  );
  if (at >= 0 && what !== undefined) return ok([at, what]);
  return refused('noColumn', JSON.stringify(words), `A to ${columnName(width - 1)}, as in C=ft`);
};

const allSaid = (all: readonly string[] = [], sheet: Sheet): Refused<Map<number, string>> => {
  const map = new Map<number, string>();
  for (const words of all) {
    const one = said(words, sheet);
    if (!one.ok) return one;
    map.set(...one.value);
  }
  return ok(map);
};

const mappingOf = (sheet: Sheet, house: House, options: ImportOptions): Refused<Mapping> => {
  const headings = allSaid(options.heading, sheet);
  if (!headings.ok) return headings;
  const units = allSaid(options.unit, sheet);
  if (!units.ok) return units;
  const guess = guessMapping(sheet, house);
  const width = Math.max(...sheet.rows.map((row) => row.length));
  const head = Array.from({ length: width }, (_, column) => ({
    is: 'text' as const,
    text: headings.value.get(column) ?? sheet.rows[guess.headRow]?.[column]?.text ?? '',
  }));
  const renamed = { ...sheet, rows: sheet.rows.with(guess.headRow, head) };
  const mapping = guessColumns({ ...guess, table: options.table ?? guess.table }, renamed, house);
  return ok({
    ...mapping,
    columns: mapping.columns.map((one) => ({
      ...one,
      unit: units.value.get(one.column) ?? one.unit,
    })),
    same:
      options.knownBy === undefined
        ? []
        : [{ to: { is: 'field', field: 'knownBy' }, text: options.knownBy }],
  });
};

const mappingLines = ({ table, headRow, columns }: Mapping): readonly string[] => [
  `Read as ${table}, headings in row ${headRow + 1}:`,
  ...columns.map(({ column, heading, to, unit }) => {
    const as = to === null ? 'left out' : headingOf(table, to);
    const measured = unit === null ? as : `${as}, ${unit}`;
    return `  ${columnName(column)} ${JSON.stringify(heading)}: ${measured}`;
  }),
];

const judged = (opened: Opened, document: JsonObject): Refused<JsonObject> => {
  const read = readShowValue(document, opened.house.house);
  return read.ok ? ok(read.value.raw) : read;
};

/** Reads a table into a show. Nothing is written without a file to write to. */
export const importTable = async (voice: Voice, options: ImportOptions): Promise<ExitCode> => {
  const opened = await openDocuments(voice, { ...options, state: undefined });
  if (opened === null) return EXIT.badInput;
  const { house } = opened.house;
  const sheet = await sheetOf(options);
  const mapping = sheet.ok ? mappingOf(sheet.value, house, options) : sheet;
  if (!sheet.ok || !mapping.ok) {
    sayRefusals(voice, options.file, mapping.ok ? [] : mapping.error);
    return EXIT.badInput;
  }
  voice.out(`${mappingLines(mapping.value).join('\n')}\n`);
  const show = opened.show.raw;
  const applied = applyMapping({ mapping: mapping.value, sheet: sheet.value, show, house });
  const next = applied.ok ? judged(opened, applied.value.document) : applied;
  if (!applied.ok || !next.ok) {
    sayRefusals(voice, options.file, next.ok ? [] : next.error);
    return EXIT.badInput;
  }
  const { changes } = applied.value;
  voice.out(`${changes.length} changes${changes.length > 0 ? ':' : '.'}\n`);
  for (const { where, words } of changes) voice.out(`  ${where}: ${words}\n`);
  if (options.out === undefined) return EXIT.clear;
  if (!(await wrote(voice, options.out, writeDocument(next.value)))) return EXIT.badInput;
  voice.out(`${options.out} written.\n`);
  return EXIT.clear;
};
