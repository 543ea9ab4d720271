import { describe, expect, it } from 'vitest';
import type { Block, Sheet } from '#sheets';
import { LOOSE, nextTightness, tightened } from './fit.ts';
import { renderPdf } from './index.ts';
import { readBack } from './read-back.ts';
import { drawingOf, sampleSheet } from './sample-sheet.ts';

const words = (count: number): Block => ({
  kind: 'text',
  words: [Array.from({ length: count }, () => 'words').join(' ')],
});

const card = (height: number, more: readonly Block[] = []): Sheet =>
  sampleSheet({
    kind: 'balance-card',
    blocks: [{ kind: 'drawing', drawing: drawingOf('drawn', 300, height) }, ...more],
  });

const pagesOf = async (sheet: Sheet) => readBack(await renderPdf(sheet, 'letter'));

describe('a balance card', () => {
  it('is left as it is while it fits', () => {
    expect(nextTightness(card(100), LOOSE, { now: 1, loose: 1 })).toBeNull();
    expect(tightened(card(100), LOOSE)).toEqual(card(100));
  });

  it('gives up some of its drawing to stay one page, and none of its words', async () => {
    const sheet = card(560, [words(60)]);
    const pages = await pagesOf(sheet);
    expect(pages).toHaveLength(1);
    expect(pages[0]?.text.split('words')).toHaveLength(61);
    expect(pages[0]?.text).toContain('drawn');
    expect(await pagesOf({ ...sheet, kind: 'hanging-card' })).toHaveLength(2);
  });

  it('is two whole pages where that does not help', async () => {
    const pages = await pagesOf(card(300, [words(900)]));
    expect(pages.length).toBeGreaterThan(1);
    expect(pages.map(({ text }) => text.split('words').length - 1)).toEqual(
      (await pagesOf({ ...card(300, [words(900)]), kind: 'take-off' })).map(
        ({ text }) => text.split('words').length - 1,
      ),
    );
  });

  it('draws smaller in steps, and stops where lettering would be too small', () => {
    const sheet = card(600);
    let tightness = LOOSE;
    const heights: number[] = [];
    for (let step = 0; step < 20; step += 1) {
      const next = nextTightness(sheet, tightness, { now: 2, loose: 2 });
      expect(next).not.toBeNull();
      tightness = next ?? LOOSE;
      if (tightness === LOOSE) break;
      const block = tightened(sheet, tightness).blocks[0];
      heights.push(block?.kind === 'drawing' ? block.drawing.height : 0);
    }
    expect(tightness).toBe(LOOSE);
    expect(heights).toEqual(heights.toSorted((one, other) => other - one));
    expect(heights.at(-1)).toBeGreaterThan(600 * 0.65);
  });
});

describe('ink lines', () => {
  /** A sheet whose words leave room for two ink lines, and not for four. */
  const sheetWith = (count: number): Sheet =>
    sampleSheet({
      blocks: [
        { kind: 'drawing', drawing: drawingOf('drawn', 300, 545) },
        { kind: 'inkLines', count },
      ],
    });

  it('are fewer where that spares a page', async () => {
    expect(await pagesOf(sheetWith(4))).toHaveLength(1);
    const ink = nextTightness(sheetWith(4), LOOSE, { now: 2, loose: 2 })?.ink;
    expect(ink).toBe(2);
  });

  it('are all there where it spares nothing', () => {
    const tight = { drawings: 0, ink: 2 };
    expect(nextTightness(sheetWith(4), tight, { now: 2, loose: 2 })).toBe(LOOSE);
    expect(nextTightness(sheetWith(4), tight, { now: 2, loose: 3 })).toBeNull();
    expect(nextTightness(sheetWith(2), LOOSE, { now: 2, loose: 2 })).toBeNull();
  });
});
