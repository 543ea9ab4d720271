import type { Basis, Known } from '#house';
import type { Lack, Opinion } from './rule.ts';

const BASIS_WORDS: Readonly<Record<Basis, string>> = {
  weighed: 'weighed',
  measured: 'measured',
  published: 'published',
  calculated: 'calculated',
  estimated: 'estimated',
  houseRule: 'house rule',
  commonPractice: 'common practice, no source',
  assumption: 'assumption',
  invented: 'invented',
};

/** Who stands behind a value: its basis, its source, by whom and when. */
export const sourceOf = (value: Known<unknown> & { readonly known: true }): string => {
  const { basis, source, by, on } = value.provenance;
  return [BASIS_WORDS[basis], source, by, on].filter((part) => part !== undefined).join(', ');
};

export const lack = (lacks: string, blocks: string, of: Lack['of'] = 'set'): Lack => ({
  lacks,
  blocks,
  of,
});

/** A value's name with the reason that somebody gave for not knowing it. */
const missing = (name: string, value: Known<unknown>): string =>
  value.known || value.why === undefined ? name : `${name} (${value.why})`;

/** Judges by a value where it is known, and else says what is missing and what that blocks. */
export const byKnown = <T>(
  value: Known<T>,
  name: string,
  blocks: string,
  judge: (value: T, source: string) => readonly Opinion[],
  of: Lack['of'] = 'set',
): readonly Opinion[] =>
  value.known ? judge(value.value, sourceOf(value)) : [lack(missing(name, value), blocks, of)];

type Wanted = Readonly<Record<string, readonly [value: Known<unknown>, name: string]>>;

type Values<W extends Wanted> = {
  readonly [P in keyof W]: W[P][0] extends Known<infer T> ? T : never;
};

/** Judges by several values at once; every one that is not known is named. */
export const byAllKnown = <W extends Wanted>(
  wanted: W,
  blocks: string,
  judge: (values: Values<W>) => readonly Opinion[],
): readonly Opinion[] => {
  const lacks: Lack[] = [];
  const values: Record<string, unknown> = {};
  for (const [field, [value, name]] of Object.entries(wanted)) {
    if (value.known) values[field] = value.value;
    else lacks.push(lack(missing(name, value), blocks));
  }
  return lacks.length > 0 ? lacks : judge(values as Values<W>);
};
