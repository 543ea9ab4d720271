import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { newtons } from './brands.ts';
import { FOOT, GRAVITY, INCH, OUNCE, POUND, POUND_FORCE, YARD } from './conversions.ts';
import type { Dimension, UnitSystem } from './dimensions.ts';
import { formatImbalance, formatQuantity } from './format-quantity.ts';
import { parseQuantity } from './parse-quantity.ts';
import { QUANTITY_REFUSALS } from './refusal-codes.ts';

const SEED = 71_923;
const RUNS = { seed: SEED, numRuns: 300 };

const DIMENSIONS: readonly Dimension[] = [
  'length',
  'mass',
  'force',
  'massPerLength',
  'massPerArea',
  'energy',
  'duration',
  'speed',
  'pressure',
  'forcePerLength',
  'moment',
  'area',
  'sectionModulus',
  'secondMoment',
  'angle',
  'ratio',
  'count',
];

const read = (dimension: Dimension, text: string): number => {
  const answer = parseQuantity(dimension, text, { signed: true });
  if (!answer.ok) throw new Error(`${text} was refused: ${JSON.stringify(answer.error)}`);
  return answer.value;
};

/** Largest value tried and the step of its print, both in SI and written here by hand. */
const STEPS: readonly (readonly [Dimension, UnitSystem, 'sheet' | 'fine', number, number])[] = [
  ['length', 'customary', 'sheet', 40, INCH / 8],
  ['length', 'customary', 'fine', 40, INCH / 16],
  ['length', 'metric', 'sheet', 40, 1e-3],
  ['length', 'metric', 'fine', 40, 1e-4],
  ['mass', 'customary', 'sheet', 2000, POUND],
  ['mass', 'customary', 'fine', 2000, POUND / 2],
  ['mass', 'metric', 'sheet', 2000, 0.1],
  ['mass', 'metric', 'fine', 2000, 0.01],
  ['force', 'customary', 'sheet', 50_000, POUND_FORCE],
  ['force', 'metric', 'sheet', 1000, 1],
  ['force', 'metric', 'fine', 50_000, 1],
  ['force', 'customary', 'sheet', 2e6, 100 * POUND_FORCE],
  ['force', 'metric', 'sheet', 2e6, 1000],
  ['massPerLength', 'customary', 'sheet', 20, (0.001 * POUND) / FOOT],
  ['massPerLength', 'metric', 'sheet', 20, 0.001],
  ['massPerArea', 'customary', 'sheet', 2, (0.1 * OUNCE) / YARD ** 2],
  ['massPerArea', 'metric', 'sheet', 2, 0.001],
  ['energy', 'customary', 'sheet', 20_000, FOOT * POUND_FORCE],
  ['energy', 'metric', 'sheet', 20_000, 10],
  ['duration', 'metric', 'sheet', 119, 0.1],
  ['duration', 'metric', 'sheet', 7000, 6],
  ['duration', 'metric', 'sheet', 90_000, 36],
  ['speed', 'customary', 'sheet', 20, 0.01 * FOOT],
  ['speed', 'metric', 'sheet', 20, 0.01],
  ['pressure', 'customary', 'sheet', 90_000, POUND_FORCE / FOOT ** 2],
  ['pressure', 'customary', 'sheet', 4e8, POUND_FORCE / INCH ** 2],
  ['pressure', 'metric', 'sheet', 4e8, 1e5],
  ['pressure', 'customary', 'sheet', 3e11, (1000 * POUND_FORCE) / INCH ** 2],
  ['pressure', 'metric', 'sheet', 3e11, 1e8],
  ['forcePerLength', 'customary', 'sheet', 20_000, POUND_FORCE / FOOT],
  ['forcePerLength', 'metric', 'sheet', 20_000, 10],
  ['moment', 'customary', 'sheet', 5000, FOOT * POUND_FORCE],
  ['moment', 'metric', 'sheet', 5000, 10],
  ['area', 'customary', 'sheet', 500, 0.1 * FOOT ** 2],
  ['area', 'metric', 'sheet', 500, 0.01],
  ['forcePerLength', 'metric', 'fine', 900, 0.1],
  ['sectionModulus', 'customary', 'sheet', 1e-3, 0.001 * INCH ** 3],
  ['sectionModulus', 'metric', 'sheet', 1e-3, 1e-8],
  ['secondMoment', 'customary', 'sheet', 1e-4, 0.001 * INCH ** 4],
  ['secondMoment', 'metric', 'fine', 1e-4, 1e-11],
  ['angle', 'metric', 'sheet', 3, (0.1 * Math.PI) / 180],
  ['ratio', 'metric', 'sheet', 3, 0.01],
  ['ratio', 'metric', 'fine', 3, 0.001],
  ['count', 'metric', 'sheet', 1000, 1],
];

describe.each(STEPS)('%s in %s units, %s', (dimension, units, style, max, step) => {
  const values = fc.double({ min: -max, max, noNaN: true });
  const noise = 1e-8 * step + 1e-9 * max;
  /** A count has no sign to type, so its laws are tried on what is not negative. */
  const sized = dimension === 'count' ? values.map(Math.abs) : values;

  it(`reads its own print to within half a step (seed ${SEED})`, () => {
    fc.assert(
      fc.property(sized, (si) => {
        const back = read(dimension, formatQuantity(dimension, si, units, { style }));
        expect(Math.abs(back - si)).toBeLessThanOrEqual(step / 2 + noise);
      }),
      RUNS,
    );
  });

  it(`rounds a load up and a margin down, by less than a step (seed ${SEED})`, () => {
    fc.assert(
      fc.property(sized, (si) => {
        const options = { style } as const;
        const up = read(
          dimension,
          formatQuantity(dimension, si, units, { ...options, round: 'up' }),
        );
        const down = read(
          dimension,
          formatQuantity(dimension, si, units, { ...options, round: 'down' }),
        );
        expect(Math.abs(up)).toBeGreaterThanOrEqual(Math.abs(si) - noise);
        expect(Math.abs(up - si)).toBeLessThan(step + noise);
        expect(down).toBeLessThanOrEqual(si + noise);
        expect(Math.abs(down - si)).toBeLessThan(step + noise);
      }),
      RUNS,
    );
  });

  it(`prints without an ordinary space, a signed zero or an exponent (seed ${SEED})`, () => {
    fc.assert(
      fc.property(sized, (si) => {
        const text = formatQuantity(dimension, si, units, { style });
        expect(text).not.toMatch(/ |e\d|^−[0.'-]*"?(\u00A0|$)/);
      }),
      RUNS,
    );
  });
});

describe('reading', () => {
  const pieces = fc.constantFrom(
    ...['1', '24', '6', '0', '1/2', '3/0', '½', '1,234', '7,5', '.5', '-', '−', '+', ' ', '\u00A0'],
    ...[
      "'",
      '"',
      '′',
      '″',
      'ft',
      'in',
      'lb',
      'oz',
      'kg',
      'm',
      'm²',
      'in⁴',
      '³',
      '/',
      '100',
      'ft·lbf',
      '%',
    ],
    ...['@', 'lin yd', 'NaN', 'Infinity', 'e', '٣', '²', '.', ',', 'constructor', '__proto__'],
  );
  const texts = fc.oneof(
    fc.array(pieces, { maxLength: 8 }).map((parts) => parts.join('')),
    fc.array(pieces, { maxLength: 8 }).map((parts) => parts.join(' ')),
    fc.string({ maxLength: 80, unit: 'binary' }),
  );

  it(`answers any text with a finite number or a declared refusal (seed ${SEED})`, () => {
    const codes = new Set(QUANTITY_REFUSALS.map((each) => each.code));
    fc.assert(
      fc.property(
        fc.constantFrom(...DIMENSIONS),
        texts,
        fc.boolean(),
        (dimension, text, signed) => {
          const answer = parseQuantity(dimension, text, { signed });
          if (answer.ok) {
            expect(Number.isFinite(answer.value)).toBe(true);
            expect(Object.is(answer.value, -0)).toBe(false);
            if (!signed) expect(answer.value).toBeGreaterThanOrEqual(0);
          } else {
            expect(codes.has(answer.error.code)).toBe(true);
            expect(answer.error.accepted).not.toBe('');
          }
        },
      ),
      { seed: SEED, numRuns: 5000 },
    );
  });

  it(`reads feet and inches as the same inches (seed ${SEED})`, () => {
    const feet = fc.integer({ min: 0, max: 200 });
    const inches = fc.integer({ min: 0, max: 11 });
    const eighths = fc.integer({ min: 0, max: 7 });
    fc.assert(
      fc.property(feet, inches, eighths, (ft, inch, eighth) => {
        const whole = read('length', `${ft * 12 + inch + eighth / 8} in`);
        const parts = read('length', `${ft}'-${inch} ${eighth}/8"`);
        expect(Math.abs(parts - whole)).toBeLessThanOrEqual(1e-12 * (1 + whole));
      }),
      RUNS,
    );
  });

  it(`reads a decimal comma as a decimal point (seed ${SEED})`, () => {
    const cents = fc.integer({ min: 0, max: 999_999 });
    fc.assert(
      fc.property(cents, (n) => {
        const text = (n / 100).toFixed(2);
        expect(read('mass', `${text.replace('.', ',')} kg`)).toBe(read('mass', `${text} kg`));
      }),
      RUNS,
    );
  });

  it(`turns running cloth at width b into area cloth times a yard over b (seed ${SEED})`, () => {
    const ounces = fc.integer({ min: 1, max: 40 });
    const widths = fc.integer({ min: 36, max: 126 });
    fc.assert(
      fc.property(ounces, widths, (oz, widthIn) => {
        const running = read('massPerArea', `${oz} oz/lin yd @ ${widthIn} in`);
        const area = read('massPerArea', `${oz} oz/yd2`);
        expect(running * widthIn).toBeCloseTo(area * 36, 10);
      }),
      RUNS,
    );
  });
});

describe('an imbalance', () => {
  const loads = fc.double({ min: 1e-3, max: 20_000, noNaN: true });
  const systems = fc.constantFrom<UnitSystem>('customary', 'metric');

  it(`mirrors: the other side has the same size and no sign (seed ${SEED})`, () => {
    fc.assert(
      fc.property(loads, systems, (n, units) => {
        const batten = formatImbalance(newtons(n), units);
        const arbor = formatImbalance(newtons(-n), units);
        expect(batten.replace('batten', 'arbor')).toBe(arbor);
        expect(batten).toMatch(/^[0-9.\u00A0]+(lb|kg) batten heavy$/);
      }),
      RUNS,
    );
  });

  it(`is never printed smaller than it is, nor a step larger (seed ${SEED})`, () => {
    fc.assert(
      fc.property(loads, systems, (n, units) => {
        const [mass = ''] = formatImbalance(newtons(n), units).split(' ');
        const overKg = read('mass', mass) - n / GRAVITY;
        expect(overKg).toBeGreaterThanOrEqual(-1e-6);
        expect(overKg).toBeLessThan((units === 'metric' ? 0.1 : POUND) + 1e-6);
      }),
      RUNS,
    );
  });
});
