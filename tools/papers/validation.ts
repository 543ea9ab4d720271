/** VALIDATION.md: each case, its oracle, its tolerance, and its error today. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Measured } from '../../validation/record.ts';
import { ROOT } from '../running/program.ts';
import { listFiles } from '../tidy/sources.ts';
import { measured, printedError } from './measured.ts';
import { byText, CannotMake, distinct, HEAD, type Paper, page, table } from './paper.ts';
import { readCases, type ValidationCase } from './validation-case.ts';

const allCases = (): readonly ValidationCase[] => {
  const files = listFiles().filter((path) => /^validation\/.*case\.md$/.test(path));
  const read = files.flatMap((file) => readCases(readFileSync(join(ROOT, file), 'utf8'), file));
  const reasons = read.flatMap((one) => (one.ok ? [] : one.reasons));
  if (reasons.length > 0) throw new CannotMake(reasons);
  return read.flatMap((one) => (one.ok ? [one.value] : [])).toSorted((a, b) => byText(a.id, b.id));
};

/** Cases and measurements must pair, one to one; a claim nobody measured is only a claim. */
export const unpaired = (
  cases: readonly ValidationCase[],
  errors: ReadonlyMap<string, Measured>,
): readonly string[] => {
  const ids = cases.map(({ id }) => id);
  const twice = ids.filter((id, index) => ids.indexOf(id) !== index);
  return [
    ...twice.map((id) => `${id} is described twice`),
    ...ids.filter((id) => !errors.has(id)).map((id) => `${id} records no error`),
    ...[...errors.keys()]
      .filter((id) => !ids.includes(id))
      .map((id) => `${id} is recorded, but no case.md describes it`),
  ];
};

const rowOf = (one: ValidationCase, { worst, unit, cases }: Measured): readonly string[] => [
  `[${one.id}](${one.file})`,
  `${one.title}: ${one.claim}`,
  one.oracle,
  one.accept,
  `${printedError(worst)} ${unit}`,
  String(cases),
];

const subjectOf = ({ file }: ValidationCase): string => file.split('/')[1] ?? '';

export const validationPage = (
  cases: readonly ValidationCase[],
  errors: ReadonlyMap<string, Measured>,
): string => {
  const reasons = unpaired(cases, errors);
  if (reasons.length > 0) throw new CannotMake(reasons);
  const subjects = distinct(cases.map(subjectOf));
  const comparisons = [...errors.values()].reduce((sum, { cases: count }) => sum + count, 0);
  const sections = subjects.flatMap((subject) => [
    '',
    `## ${subject}`,
    '',
    ...table(
      ['Case', 'Claim', 'Oracle', 'Accepted', 'Worst error today', 'Compared'],
      cases
        .filter((one) => subjectOf(one) === subject)
        .flatMap((one) => {
          const error = errors.get(one.id);
          return error === undefined ? [] : [rowOf(one, error)];
        }),
    ),
  ]);
  return page([
    HEAD,
    '',
    '# Validation',
    '',
    `${cases.length} cases, ${comparisons} comparisons, each against an oracle that is not this`,
    'program, through the door that the program itself uses. Errors have one significant figure;',
    '0 stands for less than 1e-12. What no case covers is not validated.',
    ...sections,
  ]);
};

export const validation = (again: boolean): Paper => ({
  path: 'VALIDATION.md',
  make: async () => validationPage(allCases(), await measured(again)),
});
