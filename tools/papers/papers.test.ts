import { describe, expect, it } from 'vitest';
import type { Measured } from '../../validation/record.ts';
import { readList } from './compute.ts';
import { firstDifference } from './difference.ts';
import { printedError, readMeasured } from './measured.ts';
import { CannotMake, table } from './paper.ts';
import { unpaired, validationPage } from './validation.ts';
import { readCases } from './validation-case.ts';

const CASE = `
# VAL-BEAM-02  Two equal spans

Claim    three lifts share
         the load as 3 : 10 : 3
Given    w = 150 N/m
Oracle   three-moment equation
Accept   1 in 10⁹: same closed form

More words, that are no field.
`;

const caseOf = (text: string) => readCases(text, 'validation/beam/two/case.md')[0];

const BEAM = {
  id: 'VAL-BEAM-02',
  title: 'Two equal spans',
  claim: 'three lifts share the load as 3 : 10 : 3',
  oracle: 'three-moment equation',
  accept: '1 in 10⁹: same closed form',
  file: 'validation/beam/two/case.md',
};

const error = (worst: number, id = BEAM.id): Measured => ({
  id,
  worst,
  tolerance: 1e-9,
  unit: 'relative',
  cases: 3,
});

describe('a case.md', () => {
  it('reads as id, title and fields of one line or more', () => {
    expect(caseOf(CASE)).toEqual({ ok: true, value: BEAM });
  });

  it('says which field is missing', () => {
    expect(caseOf(CASE.replace('Oracle', 'Miracle'))).toEqual({
      ok: false,
      reasons: ['validation/beam/two/case.md: VAL-BEAM-02 has no Oracle'],
    });
  });

  it('must begin with an id', () => {
    expect(caseOf('Claim x')).toMatchObject({ ok: false });
  });

  it('may hold two', () => {
    expect(readCases(CASE + CASE, 'x')).toHaveLength(2);
  });
});

describe('measured errors', () => {
  it.each([
    [0, '0'],
    [9.9e-13, '0'],
    [3.4e-10, '3e-10'],
    [0.0449, '0.04'],
    [0.96, '1'],
    [12.3, '10'],
  ])('prints %d as %s', (worst, text) => {
    expect(printedError(worst)).toBe(text);
  });

  it('keeps the worst of one case and adds its comparisons', () => {
    const lines = [error(1e-11), error(4e-10), error(2e-10)].map((one) => JSON.stringify(one));
    expect(readMeasured(lines.join('\n')).get(BEAM.id)).toEqual({ ...error(4e-10), cases: 9 });
  });

  it('refuses one case in two units', () => {
    const lines = [error(1), { ...error(1), unit: 'N' }].map((one) => JSON.stringify(one));
    expect(() => readMeasured(lines.join('\n'))).toThrow(CannotMake);
  });
});

describe('VALIDATION.md', () => {
  it('has a row for each case', () => {
    const text = validationPage([BEAM], new Map([[BEAM.id, error(4e-10)]]));
    expect(text).toContain('| 4e-10 relative | 3 |');
    expect(text).toContain('## beam');
  });

  it('is not made of claims that nobody measured, nor the other way round', () => {
    const other = new Map([['VAL-MOT-01', error(0, 'VAL-MOT-01')]]);
    expect(unpaired([BEAM, BEAM], other)).toEqual([
      'VAL-BEAM-02 is described twice',
      'VAL-BEAM-02 records no error',
      'VAL-BEAM-02 records no error',
      'VAL-MOT-01 is recorded, but no case.md describes it',
    ]);
    expect(() => validationPage([BEAM], other)).toThrow(CannotMake);
  });
});

describe('the rest', () => {
  it('finds where a paper and its copy part', () => {
    expect(firstDifference('a\nb\n', 'a\nb\n')).toBeUndefined();
    expect(firstDifference('a\nb\n', 'a\nc\n')).toBe(':2 says "b", and should say "c"');
    expect(firstDifference('a\nb\n', 'a')).toBe(':2 says "b", and should say nothing');
  });

  it('keeps a bar inside its cell', () => {
    expect(table(['A'], [['|x|\ny']])[2]).toBe('| \\|x\\| y |');
    expect(table(['A'], [['__a <b']])[2]).toBe('| \\_\\_a &lt;b |');
  });

  it('reads the list of calculations', () => {
    expect(readList('balance  what is left over\n  bricks\n')).toEqual([
      ['balance', 'what is left over'],
      ['bricks', ''],
    ]);
  });
});
