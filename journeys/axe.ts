/** What axe-core finds on a page, in lines that say where and why. */
import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import type { AxeResults } from 'axe-core';
import type { Page } from 'playwright-core';

const AXE = createRequire(import.meta.url).resolve('axe-core/axe.min.js');

/** WCAG 2.0 A and AA, and what 2.2 adds to AA (tags of axe-core). */
export const ALL = { type: 'tag', values: ['wcag2a', 'wcag2aa', 'wcag22aa'] } as const;

/** What another light can change on a page that is otherwise the same. */
export const COLOURS = {
  type: 'rule',
  values: ['color-contrast', 'link-in-text-block'],
} as const;

const linesOf = ({ violations }: AxeResults): readonly string[] =>
  violations.flatMap(({ id, nodes }) =>
    nodes.map(({ target, failureSummary = '' }) =>
      `${id} at ${target.join(' ')}: ${failureSummary}`.replaceAll(/\s+/g, ' '),
    ),
  );

let source: Promise<string> | undefined;

/** The policy of the server lets no foreign script in; the engine is evaluated, not loaded. */
const withAxe = async (page: Page): Promise<void> => {
  if (await page.evaluate(() => 'axe' in globalThis)) return;
  source ??= readFile(AXE, 'utf8');
  await page.evaluate(await source);
};

export const violationsOf = async (
  page: Page,
  runOnly: typeof ALL | typeof COLOURS = ALL,
): Promise<readonly string[]> => {
  await withAxe(page);
  const results = await page.evaluate(
    (only) =>
      (
        globalThis as unknown as { axe: { run: (options: unknown) => Promise<AxeResults> } }
      ).axe.run({ runOnly: only, resultTypes: ['violations'] }),
    runOnly,
  );
  return linesOf(results);
};
