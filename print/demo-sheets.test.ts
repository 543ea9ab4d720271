import { describe, expect, it } from 'vitest';
import { type OrderSource, showOrders } from '#orders';
import { judge } from '#rules';
import { allSheets, type Sheet } from '#sheets';
import { openExample } from '../examples/open-example.ts';
import { renderPdf } from './index.ts';
import { readBack } from './read-back.ts';
import { bodyWords, edgeWords } from './sheet-words.ts';

/** Sets whose orders are printed: with a restraint and without, on steel, both purchases. */
const WORKED = {
  kestlemere: ['1', '9', '17', '34', 'D3'],
  skelderwick: ['1', '5', '12'],
} as const;

type Name = keyof typeof WORKED;

const ordersOf = (name: Name): OrderSource => {
  const { house, show, state } = openExample(name);
  const { jobs, of } = showOrders(house, show, state);
  const sets: readonly string[] = WORKED[name];
  return { jobs: jobs.filter(({ set }) => sets.includes(set)), of };
};

const sheetsOf = (name: Name): readonly Sheet[] => {
  const example = openExample(name);
  const { house, show, state, assessment } = example;
  const nowMs = Date.parse('2026-11-25T18:55:00Z');
  return allSheets({
    ...example,
    orders: ordersOf(name),
    findings: judge(house, show, state, assessment, { nowMs }),
    stamp: {
      revision: '4',
      printedAt: '2026-11-25T18:55:00+01:00',
      printedBy: 'head flyperson',
    },
  });
};

const HOUSES = ['kestlemere', 'skelderwick'] as const;
const PAPERS = ['letter', 'a4'] as const;

/** A report has some fifteen pages and all are made alike: one in eight is printed here. */
const ONE_IN = 8;

const sampled = (sheets: readonly Sheet[]): readonly Sheet[] => {
  const reports = sheets.filter(({ kind }) => kind === 'calculation-report');
  return sheets.filter(
    (sheet) => sheet.kind !== 'calculation-report' || reports.indexOf(sheet) % ONE_IN === 0,
  );
};

describe.each(HOUSES)('the sheets of %s', (house) => {
  const sheets = sampled(sheetsOf(house));

  it.each(PAPERS)(
    'say all that they have to say on %s, with header and footer on every page',
    {
      // Some 300 pages; half a minute where nothing else runs.
      timeout: 240_000,
    },
    async (paper) => {
      for (const sheet of sheets) {
        const pages = readBack(await renderPdf(sheet, paper));
        const whole = pages.map(({ text }) => text).join('');
        for (const words of bodyWords(sheet)) expect(whole, sheet.id).toContain(words);
        for (const { text } of pages) {
          for (const words of edgeWords(sheet)) expect(text, sheet.id).toContain(words);
        }
        if (sheet.kind === 'balance-card') expect(pages, sheet.id).toHaveLength(1);
      }
    },
  );
});
