import { describe, expect, it } from 'vitest';
import { ONE, single } from './composition.ts';
import { given } from './example-items.ts';
import type { FigureName } from './figure.ts';
import { countOf, figureOf } from './figure.ts';
import { lineOf, massOf, onePlus, times, toleranceNeedsOf } from './line.ts';

const name = (meaning: string): FigureName => ({
  symbol: 'x',
  meaning,
  kind: 'mass',
  field: `takeoff.${meaning}`,
});

const figure = (meaning: string, value: number, basis: 'weighed' | 'estimated' = 'weighed') =>
  figureOf(given(value, basis), name(meaning), { weighed: 0.1 });

describe('a line', () => {
  it('counts, multiplies and adds a share', () => {
    const count = countOf(3, 'takeoff.count', 'number');
    const draft = {
      ...single('part', times(figure('a', 2)), onePlus(figure('b', 0.5))),
      count,
    };
    // 3 × 2 × 1.5 = 9; at worst 3 × 2.2 × 1.55 = 10.23.
    const line = lineOf(draft);
    expect(line).toMatchObject({ name: 'part', count: 3, eachKg: 3, totalKg: 9 });
    expect(line.uncertaintyKg).toBeCloseTo(1.23, 12);
  });

  it('rests on the weakest of its figures, and is calculated where it has several', () => {
    expect(lineOf(single('a', times(figure('a', 1)))).basis).toBe('weighed');
    const product = single('ab', times(figure('a', 1)), times(figure('b', 1)));
    expect(lineOf(product).basis).toBe('calculated');
    const weak = single('ab', times(figure('a', 1)), times(figure('b', 1, 'estimated')));
    expect(lineOf(weak).basis).toBe('estimated');
  });

  it('with a figure missing has neither total nor basis', () => {
    const draft = single('part', times(figure('a', 2)), times(figure('b', -1)));
    expect(lineOf(draft)).toMatchObject({
      count: 1,
      eachKg: null,
      totalKg: null,
      uncertaintyKg: null,
      basis: null,
    });
  });

  it('names each source once', () => {
    const sheet = figureOf(
      { known: true, value: 2, provenance: { basis: 'published', source: 'maker’s sheet' } },
      name('a'),
      {},
    );
    expect(lineOf(single('part', times(sheet), times(sheet))).source).toBe('maker’s sheet');
  });
});

describe('the mass of several lines', () => {
  it('adds them, with what they may be off by', () => {
    const drafts = [single('a', times(figure('a', 30))), single('b', times(figure('b', 40)))];
    expect(massOf(drafts, [])).toEqual({
      known: true,
      value: { massKg: 70, uncertaintyKg: 7, uncertaintyRssKg: 5 },
    });
  });

  it('is known without its uncertainty where a tolerance is missing', () => {
    const drafts = [single('a', times(figure('a', 30, 'estimated')))];
    expect(massOf(drafts, [])).toEqual({
      known: true,
      value: { massKg: 30, uncertaintyKg: null, uncertaintyRssKg: null },
    });
    expect(toleranceNeedsOf(drafts)).toHaveLength(1);
  });

  it('is blocked by every missing figure at once, and by what is missing beside', () => {
    const drafts = [single('a', times(figure('a', -1))), single('b', times(figure('b', -2)))];
    expect(massOf(drafts, ['more'])).toEqual({
      known: false,
      needs: [
        'more',
        'a (takeoff.a): found -1, wanted a finite number, 0 or more',
        'b (takeoff.b): found -2, wanted a finite number, 0 or more',
      ],
    });
  });

  it('of no line is nothing', () => {
    expect(massOf([], [])).toMatchObject({ known: true, value: { massKg: 0 } });
    expect(ONE.value).toBe(1);
  });
});
