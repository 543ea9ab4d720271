import { describe, expect, it } from 'vitest';
import { given } from './example-items.ts';
import type { FigureName } from './figure.ts';
import { countOf, figureOf, termOf } from './figure.ts';

const WIDTH: FigureName = { symbol: 'b', meaning: 'width', kind: 'length', field: 'takeoff.width' };
const SHARE: FigureName = { ...WIDTH, meaning: 'paint', kind: 'ratio', ifNone: '0 %' };
const COUNT: FigureName = { ...WIDTH, meaning: 'ties', kind: 'count' };

describe('a figure', () => {
  it('takes its own tolerance before that of the house', () => {
    expect(figureOf(given(4, 'weighed', 0.3), WIDTH, { weighed: 0.5 }).tolerance).toBe(0.3);
  });

  it('takes the share that the house sets for its basis', () => {
    expect(figureOf(given(4, 'weighed'), WIDTH, { weighed: 0.02 }).tolerance).toBeCloseTo(0.08, 12);
  });

  it('has no tolerance where neither is set, and says of what and why', () => {
    const figure = figureOf(given(4, 'houseRule'), WIDTH, { weighed: 0.02 });
    expect(figure.tolerance).toBeNull();
    expect(figure.toleranceNeeds).toEqual([
      'tolerance of the width (takeoff.width): none given, and the house sets none for what is ' +
        'house rule',
    ]);
    expect(figure.value).toBe(4);
  });

  it('names its field and the reason where it is unknown', () => {
    expect(figureOf({ known: false, why: 'torn label' }, WIDTH, {}).needs).toEqual([
      'width (takeoff.width): torn label',
    ]);
    expect(figureOf({ known: false }, SHARE, {}).needs).toEqual([
      'paint (takeoff.width): not given; write 0 % if there is none',
    ]);
  });

  it('takes a count for exact unless a tolerance is given', () => {
    expect(figureOf(given(20, 'estimated'), COUNT, { estimated: 0.25 }).tolerance).toBe(0);
    expect(figureOf(given(20, 'estimated', 2), COUNT, {}).tolerance).toBe(2);
  });

  it('has no value where the value is out of its range', () => {
    const figure = figureOf(given(-1), WIDTH, {});
    expect(figure.value).toBeNull();
    expect(figure.needs).toEqual([
      'width (takeoff.width): found -1, wanted a finite number, 0 or more',
    ]);
  });

  it('takes zero and the last share below the limit', () => {
    expect(figureOf(given(0), WIDTH, {}).value).toBe(0);
    expect(figureOf(given(2.99), SHARE, {}).value).toBe(2.99);
    expect(figureOf(given(3), SHARE, {}).value).toBeNull();
  });
});

describe('the term of a figure', () => {
  it('says who says so', () => {
    expect(termOf(figureOf(given(4, 'commonPractice'), WIDTH, {}))).toEqual({
      symbol: 'b',
      meaning: 'width',
      value: { value: 4, kind: 'length' },
      source: 'common practice',
    });
  });

  it('is unknown where the figure is', () => {
    expect(termOf(figureOf({ known: false }, WIDTH, {}))).toEqual({
      symbol: 'b',
      meaning: 'width',
      value: null,
    });
  });

  it('of a count on a list has no basis of its own', () => {
    expect(termOf(countOf(3, 'takeoff.lines[0].count', 'shackles')).source).toBeUndefined();
  });
});
