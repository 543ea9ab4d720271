/** Every case that runs anywhere, run once here; and the lists held to the folders. */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { judgeCase } from '#selfcheck';
import { CALCULATIONS, CASES } from './cases.ts';
import { DEVELOPMENT_CASES } from './development-cases.ts';
import { record } from './record.ts';

it.each(CASES.map((one) => [one.id, one.title, one] as const))('%s %s', (id, _title, one) => {
  const { fault } = judgeCase(one);
  expect(fault).toBeNull();
  const errors = one.run();
  const { tolerance, unit } = one;
  const worst = errors.reduce((most, error) => Math.max(most, error), 0);
  record({ id, worst, tolerance, unit, cases: errors.length });
});

type Found = {
  readonly calculation: string;
  readonly id: string;
  readonly title: string;
  readonly runsAnywhere: boolean;
};

const found: readonly Found[] = CALCULATIONS.flatMap((calculation) =>
  readdirSync(join(import.meta.dirname, calculation), { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .map(({ name }) => {
      const folder = join(import.meta.dirname, calculation, name);
      const paper = join(folder, 'case.md');
      const head = existsSync(paper) ? readFileSync(paper, 'utf8').split('\n', 1).join() : '';
      const [, id = 'no case.md', title = ''] = /^(VAL-[A-Z]+-\d+)\s+(.+)$/.exec(head) ?? [];
      const runsAnywhere = existsSync(join(folder, 'case.ts'));
      return { calculation, id, title, runsAnywhere };
    }),
);

describe('the lists of cases', () => {
  it('name every case.ts once, under its id, its title and the name of its folder', () => {
    const inFolders = found
      .filter(({ runsAnywhere }) => runsAnywhere)
      .map(({ calculation, id, title }) => `${calculation} ${id} ${title}`);
    const listed = CASES.map(({ calculation, id, title }) => `${calculation} ${id} ${title}`);
    expect(listed.toSorted()).toEqual(inFolders.toSorted());
    expect(new Set(CASES.map(({ id }) => id)).size).toBe(CASES.length);
  });

  it('name every case that needs a development tool', () => {
    for (const calculation of CALCULATIONS) {
      const wanted = found
        .filter((one) => one.calculation === calculation && !one.runsAnywhere)
        .map(({ id }) => id);
      expect([calculation, DEVELOPMENT_CASES[calculation]]).toEqual([
        calculation,
        wanted.toSorted(),
      ]);
    }
  });
});
