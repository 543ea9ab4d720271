/** Reads what a room declares: every object with a `code`, wherever it lies in the module. */
import { join } from 'node:path';
import { ROOT } from '../running/program.ts';
import { CODE, type CodeFile } from '../tidy/declared-codes.ts';
import { listFiles } from '../tidy/sources.ts';
import { byText, CannotMake } from './paper.ts';

export type Entry = {
  readonly code: string;
  readonly file: string;
  readonly fields: Readonly<Record<string, unknown>>;
};

const isObject = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null;

/** Depth is limited: a module that refers to itself must not hang the maker. */
const entriesIn = (value: unknown, file: string, depth = 0): readonly Entry[] => {
  if (!isObject(value) || depth > 4) return [];
  if (typeof value.code === 'string' && CODE.test(value.code)) {
    return [{ code: value.code, file, fields: value }];
  }
  return Object.values(value).flatMap((inner) => entriesIn(inner, file, depth + 1));
};

/** One for each code: an object may be exported under two names. */
const oncePerCode = (entries: readonly Entry[]): readonly Entry[] => [
  ...new Map(entries.map((entry) => [entry.code, entry])).values(),
];

export const declaredEntries = async (name: CodeFile): Promise<readonly Entry[]> => {
  const files = listFiles().filter((path) => path.endsWith(`/${name}`));
  if (files.length === 0) throw new CannotMake([`no room has a ${name}`]);
  const modules = await Promise.all(
    files.map(async (file) => entriesIn(await import(join(ROOT, file)), file)),
  );
  return oncePerCode(modules.flat()).toSorted((a, b) => byText(a.code, b.code));
};

/** A text field of an entry; its absence is a reason that the paper cannot be made. */
export const textOf = ({ code, file, fields }: Entry, name: string): string => {
  const value = fields[name];
  if (typeof value === 'string' && value.trim() !== '') return value;
  throw new CannotMake([`${file}: ${code} has no ${name}`]);
};
