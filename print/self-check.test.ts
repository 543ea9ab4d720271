import { describe, expect, it } from 'vitest';
import type { SelfCheckRecord } from '#selfcheck';
import { allSheets, type Sheet, type SheetContext, selfCheckSheet } from '#sheets';
import { openExample } from '../examples/open-example.ts';
import { renderPdf } from './index.ts';
import { readBack } from './read-back.ts';
import { edgeWords } from './sheet-words.ts';

const stamp = { revision: '4', printedAt: '2026-11-25T18:55:00+01:00', printedBy: 'TD' };
const example = openExample('kestlemere');
const { state } = example.selfCheck;
if (state.is !== 'done') throw new Error('the example is done');

const fault = '0.02 kg is over 0.005 kg';
const failing: SelfCheckRecord = {
  ...example.selfCheck,
  state: {
    ...state,
    report: {
      ...state.report,
      failed: [{ id: 'VAL-BAL-99', title: 'A wrong case', calculation: 'balance', fault }],
    },
  },
};

const running: SelfCheckRecord = {
  ...example.selfCheck,
  state: { is: 'running', done: 1, total: 42 },
};

const cards = new Map<SelfCheckRecord, readonly Sheet[]>();

/** Made once for both papers. */
const cardsOf = (selfCheck: SelfCheckRecord): readonly Sheet[] => {
  const made = cards.get(selfCheck) ?? balanceCards({ ...example, findings: [], stamp, selfCheck });
  cards.set(selfCheck, made);
  return made;
};

const balanceCards = (context: SheetContext): readonly Sheet[] =>
  allSheets(context).filter(({ kind }) => kind === 'balance-card');

describe.each(['letter', 'a4'] as const)('on %s', (paper) => {
  it('the report is one page, and says which copy of the program it holds for', async () => {
    const sheet = selfCheckSheet(example.selfCheck, stamp);
    const pages = readBack(await renderPdf(sheet, paper));
    expect(pages).toHaveLength(1);
    const text = pages[0]?.text ?? '';
    for (const words of edgeWords(sheet)) expect(text).toContain(words);
    expect(text).toContain('0123456789ab');
  });

  it('a failed case is on the first page of each balance card, which stays one page', {
    timeout: 60_000,
  }, async () => {
    const cards = cardsOf(failing).slice(0, 10);
    expect(cards.length).toBeGreaterThan(0);
    for (const sheet of cards) {
      const pages = readBack(await renderPdf(sheet, paper));
      expect(pages[0]?.text, sheet.id).toContain('SELF-CHECK');
      expect(pages, sheet.id).toHaveLength(1);
    }
  });

  it('the foot has room to say that the self-check is not finished', async () => {
    const [card] = cardsOf(running);
    if (card === undefined) throw new Error('there are cards');
    const [page] = readBack(await renderPdf(card, paper));
    for (const words of edgeWords(card)) expect(page?.text).toContain(words);
  });
});
