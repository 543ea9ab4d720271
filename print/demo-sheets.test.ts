import { describe, expect, it } from 'vitest';
import { judge } from '#rules';
import { allSheets, type Sheet } from '#sheets';
import { openExample } from '../examples/open-example.ts';
import { renderPdf } from './index.ts';
import { readBack } from './read-back.ts';
import { bodyWords, edgeWords } from './sheet-words.ts';

const sheetsOf = (name: 'kestlemere' | 'skelderwick'): readonly Sheet[] => {
  const example = openExample(name);
  const { house, show, state, assessment } = example;
  const nowMs = Date.parse('2026-11-25T18:55:00Z');
  return allSheets({
    ...example,
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
const CASES = HOUSES.flatMap((house) => PAPERS.map((paper) => ({ house, paper })));

describe.each(CASES)('the sheets of $house on $paper', ({ house, paper }) => {
  const sheets = sheetsOf(house);

  it('say all that they have to say, with header and footer on every page', {
    timeout: 60_000,
  }, async () => {
    for (const sheet of sheets) {
      const pages = readBack(await renderPdf(sheet, paper));
      const whole = pages.map(({ text }) => text).join('');
      for (const words of bodyWords(sheet)) expect(whole, sheet.id).toContain(words);
      for (const { text } of pages) {
        for (const words of edgeWords(sheet)) expect(text, sheet.id).toContain(words);
      }
      if (sheet.kind === 'balance-card') expect(pages, sheet.id).toHaveLength(1);
    }
  });
});
