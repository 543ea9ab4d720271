import { describe, expect, it } from 'vitest';
import { exampleIn, readFigure, readFigures, readSourced, shownSourced } from './typed-figures.ts';

const EMPTY = { value: '', tolerance: '', how: 'weighed', source: '', by: '', on: '' } as const;
const german = {
  units: 'metric',
  words: 'US',
  tongue: { language: 'de', decimalMark: ',', months: [], date: '', texts: {} },
} as const;

describe('a figure of a form', () => {
  it('is written as it was typed where the mark is a point', () => {
    expect(readFigure('mass', '12.5 kg', '.', 'mass')).toEqual({ ok: true, value: '12.5 kg' });
    expect(readFigure('number', '8.5', '.', 'ratio')).toEqual({ ok: true, value: '8.5' });
  });

  it('goes from a comma to the point of the document, with and without a unit', () => {
    expect(readFigure('mass', '12,5 kg', ',', 'mass')).toEqual({ ok: true, value: '12.5 kg' });
    expect(readFigure('number', '8,5', ',', 'ratio')).toEqual({ ok: true, value: '8.5' });
    expect(readFigure('number', ' 8 ', ',', 'ratio')).toEqual({ ok: true, value: '8' });
    expect(readFigure('count', '12', ',', 'owned')).toEqual({ ok: true, value: '12' });
  });

  it('is refused with its place where it reads two ways, number or measure', () => {
    const refused = { ok: false, error: { code: 'QTY-011', path: 'rules.sheaveRatio' } };
    expect(readFigure('number', '1,250', ',', 'rules.sheaveRatio')).toMatchObject(refused);
    expect(readFigure('mass', '1,250 kg', ',', 'rules.sheaveRatio')).toMatchObject(refused);
  });

  it('that is no number goes on as it is, for the document to refuse', () => {
    expect(readFigure('number', 'eight', ',', 'x')).toEqual({ ok: true, value: 'eight' });
  });

  it('of a list is refused as the list', () => {
    expect(readFigures('length', ['-4,5 m', '0 m'], ',', 'lines')).toEqual({
      ok: true,
      value: ['-4.5 m', '0 m'],
    });
    expect(readFigures('length', ['0 m', '4,5'], ',', 'lines')).toMatchObject({ ok: false });
  });

  it('has its tolerance read as a share or in its own measure', () => {
    const read = (tolerance: string) =>
      readSourced({ ...EMPTY, value: '11,3 kg', tolerance }, 'mass', ',', 'mass');
    expect(read('0,5 %')).toMatchObject({ value: { value: '11.3 kg', tolerance: '0.5 %' } });
    expect(read('0,2 kg')).toMatchObject({ value: { tolerance: '0.2 kg' } });
    expect(read('0,2')).toMatchObject({ ok: false });
  });

  it('is shown with the comma again, and so is an example', () => {
    expect(shownSourced({ ...EMPTY, value: '11.3 kg', tolerance: '0.5 %' }, ',')).toMatchObject({
      value: '11,3 kg',
      tolerance: '0,5 %',
    });
    expect(exampleIn('mass', german)).not.toMatch(/\./);
  });
});
