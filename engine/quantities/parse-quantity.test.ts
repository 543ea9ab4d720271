import { describe, expect, it } from 'vitest';
import type { Dimension } from './dimensions.ts';
import { formatQuantity } from './format-quantity.ts';
import { parseQuantity } from './parse-quantity.ts';

const read = (dimension: Dimension, text: string, signed = false): number => {
  const answer = parseQuantity(dimension, text, { signed });
  if (!answer.ok) throw new Error(`${text} was refused: ${JSON.stringify(answer.error)}`);
  return answer.value;
};

/** The right-hand sides are worked by hand from 1 in = 25.4 mm and 1 lb = 0.45359237 kg. */
const READ: readonly (readonly [Dimension, string, number])[] = [
  ['length', `24'-6 1/2"`, 7.4803],
  ['length', `24' 6"`, 7.4676],
  ['length', `24'6"`, 7.4676],
  ['length', `24' - 6"`, 7.4676],
  ['length', `24'-6-1/2"`, 7.4803],
  ['length', '24ft 6in', 7.4676],
  ['length', '24 FT. 6 IN.', 7.4676],
  ['length', '24.5 ft', 7.4676],
  ['length', '24′-6½″', 7.4803],
  ['length', '24’–6 ½”', 7.4803],
  ['length', '24\u00A0ft\u20096\u202Fin', 7.4676],
  ['length', `0'-0 1/8"`, 0.003175],
  ['length', '6 1/2 in', 0.1651],
  ['length', '34 3/8"', 0.873125],
  ['length', `34⅜''`, 0.873125],
  ['length', '3⁄8 in', 0.009525],
  ['length', '.5 in', 0.0127],
  ['length', '7.48 m', 7.48],
  ['length', '7,48 m', 7.48],
  ['length', '0,475 m', 0.475],
  ['length', '748 cm', 7.48],
  ['length', '7480mm', 7.48],
  ['length', '1 yd', 0.9144],
  ['length', '0 ft', 0],
  ['mass', '35 lb', 15.87573295],
  ['mass', '35 LBS', 15.87573295],
  ['mass', '12 lb 8 oz', 5.669904625],
  ['mass', '12 1/2 lb', 5.669904625],
  ['mass', '15.9 kg', 15.9],
  ['mass', '1234,5 kg', 1234.5],
  ['mass', '500 g', 0.5],
  ['mass', '2 t', 2000],
  ['force', '50 lbf', 222.411080763025],
  ['force', '222 N', 222],
  ['force', '1.2 kN', 1200],
  ['force', '1.986 MN', 1_986_000],
  ['force', '22.7 kgf', 222.610955],
  ['force', '5 daN', 50],
  ['massPerLength', '0.110 lb/ft', 0.163698033792651],
  ['massPerLength', '11 lb/100 ft', 0.163698033792651],
  ['massPerLength', '11 lb / 100ft', 0.163698033792651],
  ['massPerLength', '4.05 kg/m', 4.05],
  ['massPerLength', '475 g/m', 0.475],
  ['massPerArea', '475 g/m2', 0.475],
  ['massPerArea', '475 g/m²', 0.475],
  ['massPerArea', '475 gsm', 0.475],
  ['massPerArea', '0.475 kg/m²', 0.475],
  ['massPerArea', '14 oz/yd2', 0.474680464648352],
  ['massPerArea', '14 oz/yd²', 0.474680464648352],
  ['massPerArea', '14 oz/yd^2', 0.474680464648352],
  ['massPerArea', '14 oz/sq yd', 0.474680464648352],
  ['massPerArea', '1.2 lb/ft2', 5.85891316365966],
  ['massPerArea', '25 oz/lin yd @ 54 in', 0.565095791248038],
  ['massPerArea', `25 oz/linear yd@4'-6"`, 0.565095791248038],
  ['massPerArea', '300 g/lin m @ 150 cm', 0.2],
  ['energy', '40 J', 40],
  ['energy', '1.5 kJ', 1500],
  ['energy', '10 ft·lbf', 13.558179483314],
  ['energy', '10 ft-lbf', 13.558179483314],
  ['duration', '6 s', 6],
  ['duration', '1.5 min', 90],
  ['duration', '2 h', 7200],
  ['duration', '1 h 30 min 15 s', 5415],
  ['speed', '1.5 m/s', 1.5],
  ['speed', '3 ft/s', 0.9144],
  ['speed', '10 mph', 4.4704],
  ['speed', '36 km/h', 10],
  ['pressure', '1 psi', 6894.757293168361],
  ['pressure', '36 ksi', 248211262.554061],
  ['pressure', '144 psf', 6894.757293168361],
  ['pressure', '5 kPa', 5000],
  ['pressure', '235 MPa', 235e6],
  ['pressure', '235 N/mm²', 235e6],
  ['forcePerLength', '525 lbf/ft', 7661.799042033342],
  ['forcePerLength', '7.7 kN/m', 7700],
  // 4.4482216152605 N over 0.0254 m.
  ['forcePerLength', '1 lbf/in', 175.126835246476],
  ['forcePerLength', '99.29 N/mm', 99290],
  ['moment', '10 lbf·ft', 13.558179483314],
  ['moment', '1.2 kN·m', 1200],
  ['moment', '5 N m', 5],
  ['area', '245 ft2', 22.7612448],
  ['area', '20 m²', 20],
  // 25.4³ mm³ is 16387.064 mm³ and 25.4⁴ mm⁴ is 416231.4256 mm⁴, both exactly.
  ['sectionModulus', '1 in³', 1.6387064e-5],
  ['sectionModulus', '1 in^3', 1.6387064e-5],
  ['sectionModulus', '1 IN3', 1.6387064e-5],
  ['sectionModulus', '1 cu in', 1.6387064e-5],
  ['sectionModulus', '5.35 cm³', 5.35e-6],
  ['sectionModulus', '5350 mm3', 5.35e-6],
  ['sectionModulus', '0,001 m³', 0.001],
  ['secondMoment', '1 in⁴', 4.162314256e-7],
  ['secondMoment', '1 in^4', 4.162314256e-7],
  ['secondMoment', '1 in4', 4.162314256e-7],
  ['secondMoment', '12.9 cm⁴', 1.29e-7],
  ['secondMoment', '129000 mm^4', 1.29e-7],
  ['secondMoment', '0.0001 m⁴', 0.0001],
  ['angle', '180 deg', Math.PI],
  ['angle', '90°', Math.PI / 2],
  ['ratio', '5 %', 0.05],
  ['ratio', '50%', 0.5],
  ['count', '12', 12],
];

describe('parseQuantity', () => {
  it.each(READ)('%s: %s is %d', (dimension, text, si) => {
    const value = read(dimension, text);
    expect(Math.abs(value - si)).toBeLessThanOrEqual(1e-12 * Math.abs(si));
    expect(read(dimension, `  ${text} `)).toBe(value);
  });

  it('takes a sign where it is asked to', () => {
    expect(read('length', '-3 ft', true)).toBeCloseTo(-0.9144, 14);
    expect(read('length', `−2'-6"`, true)).toBeCloseTo(-0.762, 14);
    expect(read('length', '+3 ft', true)).toBeCloseTo(0.9144, 14);
    expect(Object.is(read('length', '-0 ft', true), 0)).toBe(true);
  });

  it('takes the largest text and the largest value that are allowed', () => {
    expect(read('length', `${'0'.repeat(57)}1 m`)).toBe(1);
    expect(read('count', '1000000000000')).toBe(1e12);
  });
});

describe('where a comma is the decimal mark', () => {
  const german = (dimension: Dimension, text: string) =>
    parseQuantity(dimension, text, { decimalMark: ',' });

  it.each([
    ['mass', '12,5 kg', 12.5],
    ['mass', '12.5 kg', 12.5],
    ['mass', '0,475 kg', 0.475],
    ['length', '7,480 m', 7.48],
    ['length', '7,48 m', 7.48],
    ['massPerLength', '1,234 kg/m', 1.234],
    ['force', '1,25 kN', 1250],
  ] as const)('reads a %s of %s', (dimension, text, si) => {
    const read = german(dimension, text);
    expect(read.ok && read.value).toBeCloseTo(si, 9);
  });

  it.each(['1,250 lb', '1,250 kg', '999,000 kg'])(
    '[QTY-011] refuses %s in either language, for both readings hang in theatres',
    (text) => {
      for (const read of [german('mass', text), parseQuantity('mass', text)]) {
        expect(read.ok ? read.value : read.error.code).toBe('QTY-011');
      }
    },
  );

  it.each([
    ['mass', '1.250 kg'],
    ['length', '7.480 m'],
  ] as const)('[QTY-023] refuses a %s of %s, which a comma would mark', (dimension, text) => {
    const read = german(dimension, text);
    expect(read.ok ? read.value : read.error.code).toBe('QTY-023');
    expect(parseQuantity(dimension, text).ok).toBe(true);
  });

  it('[QTY-012] refuses thousands and decimals together', () => {
    const read = german('mass', '1.234,5 kg');
    expect(read.ok ? read.value : read.error.code).toBe('QTY-012');
  });

  it('reads back what it prints, in every dimension', () => {
    const reader = { units: 'metric', tongue: { decimalMark: ',' } } as const;
    for (const si of [0.0125, 0.475, 1.234, 12.5, 123.456, 999.994]) {
      for (const dimension of ['length', 'mass', 'force', 'massPerLength', 'energy'] as const) {
        const printed = formatQuantity(dimension, si, reader);
        expect(printed).not.toContain('.');
        const read = german(dimension, printed);
        const point = parseQuantity(dimension, formatQuantity(dimension, si, 'metric'));
        expect(read, printed).toStrictEqual(point);
      }
    }
  });
});
