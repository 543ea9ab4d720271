import { describe, expect, it } from 'vitest';
import { boxesAlong, freeBox, isFree } from './boxes.ts';
import { linesOfText, piecesOfWord, textWidth } from './lettering.ts';
import { inRows } from './rows.ts';
import { point } from './shape.ts';

describe('how wide words are', () => {
  it('grows with the size, the weight and the width of the face', () => {
    const words = '24 lb arbor heavy';
    expect(textWidth(words, 28)).toBeCloseTo(2 * textWidth(words, 14), 9);
    expect(textWidth(words, 14, { weight: 'strong' })).toBeGreaterThan(textWidth(words, 14));
    expect(textWidth(words, 14, { width: 'head' })).toBeGreaterThan(textWidth(words, 14));
  });

  it('gives all figures one width, and a no-break space that of a space', () => {
    const widths = [...'0123456789'].map((figure) => textWidth(figure, 100));
    expect(new Set(widths).size).toBe(1);
    expect(textWidth('6\u00A0in', 14)).toBe(textWidth('6 in', 14));
  });

  it('takes a letter that it does not know as a wide one', () => {
    expect(textWidth('Ж', 100)).toBe(textWidth('H', 100));
  });

  it('breaks at spaces and never at a number and its unit', () => {
    const lines = linesOfText('hands of two, 100\u00A0lbf each way', 14, 60);
    expect(lines.join(' ')).toBe('hands of two, 100\u00A0lbf each way');
    expect(lines.some((line) => line.includes('100\u00A0lbf'))).toBe(true);
    for (const line of lines.filter((each) => each.includes(' '))) {
      expect(textWidth(line, 14)).toBeLessThanOrEqual(60);
    }
  });
});

describe('a word wider than its room', () => {
  it('is in pieces that fit, none of them one letter, and loses nothing', () => {
    const pieces = piecesOfWord('Schnürbodenrollen', 12.5, 52);
    expect(pieces.length).toBeGreaterThan(1);
    for (const piece of pieces) expect(textWidth(piece, 12.5)).toBeLessThanOrEqual(52);
    expect(pieces.at(-1)?.length).toBeGreaterThan(1);
    expect(pieces.map((piece) => piece.replace(/-$/, '')).join('')).toBe('Schnürbodenrollen');
  });

  it('is whole where it fits, and where there is room for nothing', () => {
    expect(piecesOfWord('Bühne', 12.5, 52)).toEqual(['Bühne']);
    expect(piecesOfWord('Schnürboden', 12.5, 4)).toEqual(['Schnürboden']);
  });
});

describe('where words lie', () => {
  const field = { x: 0, y: 0, width: 100, height: 100 };
  const box = (x: number, y: number) => ({ x, y, width: 20, height: 10 });

  it('takes the first place that is free', () => {
    const taken = [box(0, 0)];
    expect(freeBox([box(5, 5), box(50, 50), box(0, 50)], taken, field)).toEqual(box(50, 50));
    expect(isFree(box(50, 50), taken, field)).toBe(true);
    expect(isFree(box(10, 5), taken, field)).toBe(false);
  });

  it('covers as little as it can where nothing is free, and stays on the paper', () => {
    const taken = [{ x: 0, y: 0, width: 100, height: 100 }];
    expect(freeBox([box(95, 0), box(50, 0)], taken, field)).toEqual(box(50, 0));
    expect(isFree(box(95, 0), [], field)).toBe(false);
  });

  it('keeps clear of a line from end to end', () => {
    const boxes = boxesAlong(point(0, 0), point(30, 40), 5);
    expect(boxes[0]).toMatchObject({ x: -5, y: -5 });
    expect(boxes.at(-1)).toMatchObject({ x: 25, y: 35 });
  });
});

describe('rows', () => {
  it('put spans that touch into rows of their own, and use a row again once it is free', () => {
    const spans = [
      { from: 0, to: 10 },
      { from: 5, to: 15 },
      { from: 12, to: 20 },
    ];
    expect(inRows(spans)).toEqual([0, 1, 0]);
    expect(inRows([])).toEqual([]);
  });
});
