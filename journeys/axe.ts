/** What axe-core finds on a page, in lines that say where and why. */
import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import type { AxeResults } from 'axe-core';
import type { Page } from 'playwright-core';

const AXE = createRequire(import.meta.url).resolve('axe-core/axe.min.js');

/** WCAG 2.0 A and AA, and what 2.2 adds to AA (tags of axe-core). */
const TAGS = ['wcag2a', 'wcag2aa', 'wcag22aa'];

const linesOf = ({ violations }: AxeResults): readonly string[] =>
  violations.flatMap(({ id, nodes }) =>
    nodes.map(({ target, failureSummary = '' }) =>
      `${id} at ${target.join(' ')}: ${failureSummary}`.replaceAll(/\s+/g, ' '),
    ),
  );

/** The policy of the server lets no foreign script in; the engine is evaluated, not loaded. */
export const violationsOf = async (page: Page): Promise<readonly string[]> => {
  await page.evaluate(await readFile(AXE, 'utf8'));
  const results = await page.evaluate(
    (tags) =>
      (
        globalThis as unknown as { axe: { run: (options: unknown) => Promise<AxeResults> } }
      ).axe.run({ runOnly: { type: 'tag', values: tags }, resultTypes: ['violations'] }),
    TAGS,
  );
  return linesOf(results);
};
