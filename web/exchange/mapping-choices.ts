/** What a foreign column can be, in the order of our own tables. */
import {
  fieldNames,
  headingWords,
  isBareNumber,
  type Mapping,
  type Sheet,
  type Target,
  unitsFor,
} from '#exchange';
import type { House } from '#house';
import type { Show } from '#show';
import { ENGLISH, phrase, type Voice } from '#texts';

/** Columns in which a person said something stand in `own`; the rest are guesses. */
export type MappingState = { readonly mapping: Mapping; readonly own: ReadonlySet<number> };

export type Choice = { readonly key: string; readonly words: string; readonly to: Target };
export type Choices = readonly { readonly of: string; readonly choices: readonly Choice[] }[];

export const keyOf = (to: Target | null): string => (to === null ? '' : JSON.stringify(to));

const choiceOf = (table: Mapping['table'], to: Target, voice: Voice): Choice => ({
  key: keyOf(to),
  words: headingWords(voice, table, to),
  to,
});

const once = (targets: readonly Target[]): readonly Target[] => [
  ...new Map(targets.map((to) => [keyOf(to), to])).values(),
];

/** Trims that the show has, and one named as the column is. */
const trimTargets = (show: Show, heading: string, guess: Target | null): readonly Target[] =>
  once([
    ...(guess?.is === 'trim' ? [guess] : []),
    ...show.hangs.flatMap(({ trims }) =>
      trims.map(({ name, reference }): Target => ({ is: 'trim', name, reference })),
    ),
    ...(heading === ''
      ? []
      : [{ is: 'trim', name: heading.slice(0, 120), reference: 'batten' } satisfies Target]),
  ]);

export const choicesFor = (
  mapping: Mapping,
  at: number,
  {
    house,
    show,
    voice = ENGLISH,
  }: { readonly house: House; readonly show: Show; readonly voice?: Voice },
): Choices => {
  const { table, columns } = mapping;
  const column = columns[at];
  const of = (targets: readonly Target[]): readonly Choice[] =>
    targets.map((to) => choiceOf(table, to, voice));
  const fields = fieldNames(table).map((field): Target => ({ is: 'field', field }));
  if (table === 'takeoff') return [{ of: phrase(voice, 'Item'), choices: of(fields) }];
  const bricks = house.brickKinds
    .filter(({ serves }) => serves.show)
    .map(({ id }): Target => ({ is: 'bricks', kind: id }));
  return [
    { of: phrase(voice, 'Set and piece'), choices: of(fields) },
    {
      of: phrase(voice, 'Trims'),
      choices: of(trimTargets(show, column?.heading ?? '', column?.to ?? null)),
    },
    { of: phrase(voice, 'Bricks'), choices: of(bricks) },
  ];
};

const cellsBelow = (mapping: Mapping, sheet: Sheet, column: number) =>
  sheet.rows
    .slice(mapping.headRow + 1)
    .flatMap((row) => row[column] ?? [])
    .filter(({ text }) => text.trim() !== '');

const SHOWN = 3;

/** The first filled cells of a column; what a program would work out is said to be that. */
export const firstValues = (mapping: Mapping, sheet: Sheet, column: number): readonly string[] =>
  cellsBelow(mapping, sheet, column)
    .slice(0, SHOWN)
    .map(({ is, text }) => (is === 'text' || is === 'number' ? text : `${is}: ${text}`));

export type UnitAsk = {
  readonly units: readonly string[];
  /** Numbers without a unit: somebody must say what they measure. */
  readonly bare: number;
};

export const unitAsk = (mapping: Mapping, sheet: Sheet, at: number): UnitAsk => {
  const column = mapping.columns[at];
  const units =
    column === undefined || column.to === null ? [] : unitsFor(mapping.table, column.to);
  const bare =
    units.length === 0 || column === undefined
      ? 0
      : cellsBelow(mapping, sheet, column.column).filter(({ text }) => isBareNumber(text)).length;
  return { units, bare };
};

/** Cells of mapped columns that a spreadsheet would reckon; here they are words. */
export const formulaLike = (
  mapping: Mapping,
  sheet: Sheet,
  isLike: (text: string) => boolean,
): number =>
  mapping.columns
    .filter(({ to }) => to !== null)
    .flatMap(({ column }) => cellsBelow(mapping, sheet, column))
    .filter(({ is, text }) => is === 'text' && isLike(text) && !isBareNumber(text)).length;
