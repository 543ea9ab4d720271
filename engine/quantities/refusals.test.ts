import { describe, expect, it } from 'vitest';
import type { Dimension } from './dimensions.ts';
import { parseQuantity } from './parse-quantity.ts';
import { QUANTITY_REFUSALS } from './refusal-codes.ts';
import type { QuantityRefusal } from './refuse.ts';

const refusalOf = (dimension: Dimension, text: string, signed = false): QuantityRefusal => {
  const answer = parseQuantity(dimension, text, { signed });
  if (answer.ok) throw new Error(`${text} was read as ${answer.value}`);
  return answer.error;
};

const codesOf = (dimension: Dimension, ...texts: readonly string[]): string[] => [
  ...new Set(texts.map((text) => refusalOf(dimension, text).code)),
];

describe('each reason to refuse', () => {
  it('[QTY-001] nothing written', () => {
    expect(codesOf('mass', '', '   ', '\u00A0')).toEqual(['QTY-001']);
    expect(refusalOf('mass', '').found).toBe('nothing');
  });

  it('[QTY-002] more than 60 characters', () => {
    const refused = refusalOf('length', `${'0'.repeat(58)}1 m`);
    expect(refused.code).toBe('QTY-002');
    expect(refused.found).toHaveLength(61);
  });

  it('[QTY-003] digits of another script, and a raised figure in the number', () => {
    expect(codesOf('length', '٣ m', '３ m', '5² m', '5⁴ m', '⅟4 in', '४ ft')).toEqual(['QTY-003']);
  });

  it('[QTY-004] no readable number', () => {
    const texts = ['lb', 'NaN lb', 'Infinity lb', '∞ lb', 'about 5 lb', '5. lb', '1, lb', '/2 lb'];
    expect(codesOf('mass', ...texts)).toEqual(['QTY-004']);
    expect(codesOf('length', '-')).toEqual(['QTY-009']);
  });

  it('[QTY-005] no unit, on the whole or on its second part', () => {
    expect(codesOf('length', '24', '6 1/2', `24'-6`, '7,48')).toEqual(['QTY-005']);
  });

  it('[QTY-006] units that are not read', () => {
    expect(codesOf('mass', '5 stone', '5 ton', '1e3 lb', '5 lb/', '35#')).toEqual(['QTY-006']);
    expect(codesOf('length', '5 m foo', `24'-`, `24' 6 foo`, '5 M')).toEqual(['QTY-006']);
    expect(codesOf('pressure', '5 mPa', '5 mpa')).toEqual(['QTY-006']);
    expect(refusalOf('length', '5 parsecs')).toEqual({
      code: 'QTY-006',
      found: '5 parsecs',
      accepted: 'a length in ft, in, yd, m, cm, mm',
    });
  });

  it('[QTY-007] a unit of another kind of measure, and it says which', () => {
    expect(refusalOf('mass', '50 lbf')).toEqual({
      code: 'QTY-007',
      found: '50 lbf (lbf measures a force)',
      accepted: 'a mass in lb, oz, kg, g, t',
    });
    expect(refusalOf('length', '5 m2').found).toBe('5 m2 (m2 measures an area)');
    expect(refusalOf('length', '5 lb/100 ft').found).toContain('a mass per length');
    expect(refusalOf('energy', '5 N·m').found).toContain('a moment');
    expect(refusalOf('ratio', '5 kg').code).toBe('QTY-007');
    expect(refusalOf('length', '5 m³').found).toBe('5 m³ (m3 measures a section modulus)');
    expect(codesOf('secondMoment', '0.31 in³', '0.31 in', '0.31 in²')).toEqual(['QTY-007']);
    expect(codesOf('sectionModulus', '0.326 in⁴', '326 mm²')).toEqual(['QTY-007']);
  });

  it('[QTY-008] a mass where a force is asked for', () => {
    expect(codesOf('force', '50 lb', '22 kg', '12 lb 8 oz')).toEqual(['QTY-008']);
    expect(codesOf('forcePerLength', '525 lb/ft')).toEqual(['QTY-008']);
    expect(codesOf('pressure', '50 lb/ft2')).toEqual(['QTY-008']);
    expect(refusalOf('force', '50 lb').accepted).toContain('lbf');
  });

  it('[QTY-009] a sign where none belongs', () => {
    expect(codesOf('mass', '-5 lb', '+5 lb', '−5 lb', '- 5 lb')).toEqual(['QTY-009']);
  });

  it('[QTY-010] two signs, or one inside', () => {
    expect(codesOf('length', '--5 ft', '+-5 ft', `24'--6"`, '5 - 3 ft', `24' +6"`)).toEqual([
      'QTY-010',
    ]);
    expect(codesOf('mass', '12 lb - 8 oz', '5-3 lb', '5- lb')).toEqual(['QTY-010']);
    expect(refusalOf('length', '--5 ft', true).code).toBe('QTY-010');
  });

  it('[QTY-011] a comma that can be read two ways', () => {
    expect(codesOf('mass', '1,234 lb', '12,500 kg', '999,999 g')).toEqual(['QTY-011']);
    expect(parseQuantity('mass', '0,500 kg')).toEqual({ ok: true, value: 0.5 });
    expect(parseQuantity('mass', '1,2345 kg')).toEqual({ ok: true, value: 1.2345 });
  });

  it('[QTY-012] numbers in groups', () => {
    const texts = ['1,234.5 lb', '1.234,5 lb', '1,234,567 lb', '1 234 lb', '1.2.3 lb', '2.5½ lb'];
    expect(codesOf('mass', ...texts)).toEqual(['QTY-012']);
    expect(codesOf('length', '½4 in')).toEqual(['QTY-012']);
  });

  it('[QTY-013] a fraction not under one', () => {
    expect(codesOf('length', '9/8 in', '8/8 in', '6 5/4 in', `24'-6 3/2"`)).toEqual(['QTY-013']);
    expect(parseQuantity('length', '7/8 in').ok).toBe(true);
  });

  it('[QTY-014] a fraction over zero', () => {
    expect(codesOf('length', '1/0 in', '6 1/0 in', '0/0 in')).toEqual(['QTY-014']);
  });

  it('[QTY-015] a second part that is a whole of the first', () => {
    expect(codesOf('length', `24' 12"`, `24'-13"`)).toEqual(['QTY-015']);
    expect(codesOf('mass', '12 lb 16 oz')).toEqual(['QTY-015']);
    expect(codesOf('duration', '1 h 60 min', '1 min 60 s')).toEqual(['QTY-015']);
    expect(parseQuantity('length', `24' 11 7/8"`).ok).toBe(true);
    expect(parseQuantity('mass', '12 lb 15.9 oz').ok).toBe(true);
  });

  it('[QTY-016] a first part that is not whole', () => {
    expect(codesOf('length', `24.5' 6"`, `24 1/2 ft 6 in`)).toEqual(['QTY-016']);
    expect(codesOf('mass', '12,5 lb 8 oz')).toEqual(['QTY-016']);
  });

  it('[QTY-017] parts that do not go together', () => {
    expect(codesOf('length', '7 m 48 cm', '6 in 24 ft', '24 ft 6 oz')).toEqual(['QTY-017']);
    expect(codesOf('duration', '1 h 2 min 3 s 4 s')).toEqual(['QTY-017']);
  });

  it('[QTY-018] a weight of cloth without its basis', () => {
    const texts = ['25 oz', '25 oz/yd', '475 g', '475 g/m', '1 lb'];
    expect(codesOf('massPerArea', ...texts)).toEqual(['QTY-018']);
    expect(refusalOf('massPerArea', '25 oz').accepted).toContain('a factor of 1.5 at');
    expect(refusalOf('massPerArea', '25 oz').accepted).toContain('25 oz/lin yd @ 54 in');
  });

  it('[QTY-019] a running weight of cloth without a usable width', () => {
    const texts = [
      '25 oz/lin yd',
      '25 oz/lin yd @',
      '25 oz/lin yd @ 0 in',
      '25 oz/lin yd @ 54',
      '25 oz/lin yd @ 54 lb',
      '25 oz/lin yd @ 54 in @ 54 in',
      '25 oz/yd2 @ 54 in',
      '25 oz @ 54 in',
    ];
    expect(codesOf('massPerArea', ...texts)).toEqual(['QTY-019']);
    expect(codesOf('mass', '25 lb @ 54 in')).toEqual(['QTY-019']);
  });

  it('[QTY-020] a ratio without its per cent sign', () => {
    expect(codesOf('ratio', '5', '0.05')).toEqual(['QTY-020']);
    expect(refusalOf('ratio', '5').accepted).toBe('5 %');
  });

  it('[QTY-021] what is not a count', () => {
    expect(codesOf('count', '1.5', '1/2', '12 lb', 'two', '1 000')).toEqual(['QTY-021']);
  });

  it('[QTY-022] larger than anything in a theatre', () => {
    expect(codesOf('mass', `${'9'.repeat(50)} kg`)).toEqual(['QTY-022']);
    expect(codesOf('count', '1000000000001')).toEqual(['QTY-022']);
  });
});

describe('the list of codes', () => {
  it('numbers them from 1 without a gap or a repeat, and explains each', () => {
    expect(QUANTITY_REFUSALS.map((each) => each.code)).toEqual(
      QUANTITY_REFUSALS.map((_, index) => `QTY-${String(index + 1).padStart(3, '0')}`),
    );
    for (const { title, meaning } of QUANTITY_REFUSALS) {
      expect(title.length).toBeGreaterThan(5);
      expect(meaning.endsWith('.')).toBe(true);
    }
  });
});
