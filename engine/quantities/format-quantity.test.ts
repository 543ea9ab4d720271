import { describe, expect, it } from 'vitest';
import { kilograms, metres, newtons } from './brands.ts';
import { FOOT, INCH, POUND, POUND_FORCE } from './conversions.ts';
import {
  formatForce,
  formatImbalance,
  formatLength,
  formatMass,
  formatQuantity,
} from './format-quantity.ts';

/** Tests write an underline where the print has a no-break space. */
const shown = (text: string): string => text.replaceAll('\u00A0', '_');

const UK = { batten: 'bar heavy', arbor: 'cradle heavy', under: 'under' };

describe('a length', () => {
  const length = metres(7.4803);

  it('is in feet and inches to an eighth, or in millimetres of a metre', () => {
    expect(shown(formatLength(length, 'customary'))).toBe(`24'-6_1/2"`);
    expect(shown(formatLength(length, 'metric'))).toBe('7.480_m');
  });

  it('is in decimal feet or in inches where asked', () => {
    const feet = formatLength(length, 'customary', { customaryLength: 'decimalFeet' });
    const inches = formatLength(metres(34.375 * INCH), 'customary', { customaryLength: 'inches' });
    expect(shown(feet)).toBe('24.54_ft');
    expect(shown(inches)).toBe('34_3/8_in');
  });

  it.each([
    [0, `0'-0"`],
    [0.5 * INCH, `0'-0_1/2"`],
    [5 * FOOT + 0.25 * INCH, `5'-0_1/4"`],
    [11.99 * INCH, `1'-0"`],
    [24 * FOOT, `24'-0"`],
    [-2.5 * FOOT, `−2'-6"`],
    [-0.01 * INCH, `0'-0"`],
  ])('%d m prints as %s', (si, text) => {
    expect(shown(formatQuantity('length', si, 'customary'))).toBe(text);
  });

  it('goes to a sixteenth and to a tenth of a millimetre when fine', () => {
    const sixteenth = metres(6.0625 * INCH);
    expect(shown(formatLength(sixteenth, 'customary', { style: 'fine' }))).toBe(`0'-6_1/16"`);
    expect(shown(formatLength(length, 'metric', { style: 'fine' }))).toBe('7.4803_m');
  });
});

describe('a mass', () => {
  it('is in whole pounds, or in tenths of a kilogram', () => {
    expect(shown(formatMass(kilograms(35 * POUND), 'customary'))).toBe('35_lb');
    expect(shown(formatMass(kilograms(35 * POUND), 'metric'))).toBe('15.9_kg');
  });

  it('has half pounds for bricks when fine', () => {
    const fine = (pounds: number): string =>
      shown(formatMass(kilograms(pounds * POUND), 'customary', { style: 'fine' }));
    expect([fine(12.5), fine(12), fine(0.5), fine(0)]).toEqual([
      '12_1/2_lb',
      '12_lb',
      '1/2_lb',
      '0_lb',
    ]);
  });

  it('does not round up what is already whole, though its double is a hair over', () => {
    for (let pounds = 1; pounds <= 3000; pounds += 1) {
      const text = formatMass(kilograms(pounds * POUND), 'customary', { round: 'up' });
      expect(shown(text)).toBe(`${pounds}_lb`);
    }
  });
});

describe('rounding', () => {
  const pounds = (lb: number, round: 'nearest' | 'up' | 'down'): string =>
    shown(formatQuantity('mass', lb * POUND, 'customary', { round }));

  it('nearest takes halves away from zero', () => {
    expect([pounds(12.5, 'nearest'), pounds(12.49, 'nearest')]).toEqual(['13_lb', '12_lb']);
    expect(pounds(-12.5, 'nearest')).toBe('−13_lb');
  });

  it('up goes away from zero, so that a load is never understated', () => {
    expect([pounds(12.01, 'up'), pounds(-12.01, 'up')]).toEqual(['13_lb', '−13_lb']);
  });

  it('down goes toward minus infinity, so that a short margin shows as short', () => {
    expect([pounds(12.99, 'down'), pounds(0.3, 'down')]).toEqual(['12_lb', '0_lb']);
    expect(pounds(-0.3, 'down')).toBe('−1_lb');
  });

  it('never prints a zero with a sign', () => {
    expect([pounds(-0.2, 'nearest'), pounds(-0, 'down')]).toEqual(['0_lb', '0_lb']);
  });

  it('throws on what is not finite or has too many digits', () => {
    expect(() => formatQuantity('mass', Number.NaN, 'metric')).toThrow('must be finite');
    expect(() => formatQuantity('mass', 1e300, 'metric')).toThrow('too large to print');
  });
});

describe('the other measures', () => {
  it.each([
    ['force', 50 * POUND_FORCE, '50_lbf', '222_N'],
    ['force', 1000, '225_lbf', '1000_N'],
    ['force', 1001, '225_lbf', '1.00_kN'],
    ['force', -2000, '−450_lbf', '−2.00_kN'],
    ['force', 247_000 * POUND_FORCE, '247.0_kip', '1.099_MN'],
    ['massPerLength', 0.1637, '0.110_lb/ft', '0.164_kg/m'],
    ['massPerArea', 0.475, '14.0_oz/yd²', '475_g/m²'],
    ['energy', 1500, '1106_ft·lbf', '1.50_kJ'],
    ['duration', 6, '6.0_s', '6.0_s'],
    ['duration', 300, '5.0_min', '5.0_min'],
    ['duration', 9000, '2.50_h', '2.50_h'],
    ['speed', 1.5, '4.92_ft/s', '1.50_m/s'],
    ['pressure', 5000, '104_psf', '5.00_kPa'],
    ['pressure', 235e6, '34084_psi', '235.0_MPa'],
    ['pressure', 200e9, '29008_ksi', '200.0_GPa'],
    ['forcePerLength', 7700, '528_lbf/ft', '7.70_kN/m'],
    ['moment', 800, '590_lbf·ft', '800_N·m'],
    ['area', 22.7612448, '245.0_ft²', '22.76_m²'],
    ['sectionModulus', 0.326 * INCH ** 3, '0.326_in³', '5.34_cm³'],
    ['secondMoment', 0.31 * INCH ** 4, '0.310_in⁴', '12.90_cm⁴'],
    ['angle', Math.PI / 8, '22.5_deg', '22.5_deg'],
    ['ratio', 0.5, '50_%', '50_%'],
    ['count', 12, '12', '12'],
  ] as const)('%s of %d', (dimension, si, customary, metric) => {
    expect(shown(formatQuantity(dimension, si, 'customary'))).toBe(customary);
    expect(shown(formatQuantity(dimension, si, 'metric'))).toBe(metric);
  });

  it('a force has its shorthand', () => {
    expect(shown(formatForce(newtons(2000), 'metric'))).toBe('2.00_kN');
  });
});

describe('an imbalance', () => {
  const lb = (pounds: number): ReturnType<typeof newtons> => newtons(pounds * POUND_FORCE);

  it('names its side in words and has no sign', () => {
    expect(shown(formatImbalance(lb(12), 'customary'))).toBe('12_lb batten heavy');
    expect(shown(formatImbalance(lb(-12), 'customary'))).toBe('12_lb arbor heavy');
    expect(shown(formatImbalance(lb(-12), 'metric'))).toBe('5.5_kg arbor heavy');
    expect(shown(formatImbalance(lb(-12), 'metric', { words: UK }))).toBe('5.5_kg cradle heavy');
    expect(shown(formatImbalance(lb(12), 'metric', { words: UK }))).toBe('5.5_kg bar heavy');
  });

  it('rounds away from zero, so that a little is never nothing', () => {
    expect(shown(formatImbalance(lb(0.3), 'customary'))).toBe('1_lb batten heavy');
    expect(shown(formatImbalance(lb(-12.01), 'customary'))).toBe('13_lb arbor heavy');
    expect(shown(formatImbalance(lb(0.3), 'customary', { style: 'fine' }))).toBe(
      '1/2_lb batten heavy',
    );
  });

  it('says under one, with the side, where the nearest would be nothing', () => {
    const nearest = { round: 'nearest' } as const;
    expect(shown(formatImbalance(lb(0.3), 'customary', nearest))).toBe('under 1_lb batten heavy');
    expect(shown(formatImbalance(lb(-0.05), 'metric', nearest))).toBe('under 0.1_kg arbor heavy');
    expect(shown(formatImbalance(lb(12.3), 'customary', nearest))).toBe('12_lb batten heavy');
  });

  it('prints nothing as 0 and without a side, rounding noise included', () => {
    expect(shown(formatImbalance(newtons(0), 'customary'))).toBe('0_lb');
    expect(shown(formatImbalance(newtons(-1e-12), 'metric'))).toBe('0_kg');
  });
});
