/** Yesterday's sheet: the card of set 11 as a page description, byte for byte. */
import { describe, expect, it } from 'vitest';
import { type SheetContext, sheetOf } from '#sheets';
import { openExample } from '../../examples/open-example.ts';

const printedAt = '2026-11-25T18:55:00+01:00';
const stamp = { revision: '4', printedAt, printedBy: 'head flyperson' };

describe('a page description', () => {
  it('is what it was: a change is meant, looked at on paper, and pinned anew', async () => {
    const context: SheetContext = { ...openExample('kestlemere'), findings: [], stamp };
    const sheet = sheetOf(context, 'balance-card/11');
    const text = `${JSON.stringify(sheet, null, 1)}\n`;
    await expect(text).toMatchFileSnapshot('./balance-card-11.json');
  });
});
