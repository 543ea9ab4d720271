/** The units that a person may write, with the spellings taken for each. */
import { FOOT, GRAVITY, INCH, OUNCE, POUND, POUND_FORCE, YARD } from './conversions.ts';
import type { Dimension } from './dimensions.ts';

export type Unit = {
  /** As it is printed and named in messages. */
  readonly label: string;
  /** What one of it is in the base unit of its dimension. */
  readonly si: number;
  readonly spellings: readonly string[];
  /** Customary and time words are read in any case; metric symbols are not: mPa is not MPa. */
  readonly anyCase: boolean;
};

const inAnyCase = (label: string, si: number, ...also: readonly string[]): Unit => ({
  label,
  si,
  spellings: [label, ...also],
  anyCase: true,
});

const asWritten = (label: string, si: number, ...also: readonly string[]): Unit => ({
  ...inAnyCase(label, si, ...also),
  anyCase: false,
});

const DEGREE = Math.PI / 180;
const KILOGRAM_FORCE = GRAVITY;
const FOOT_POUND_SPELLINGS = ['lbf·ft', 'ft·lbf', 'ft-lbf', 'lbf-ft'] as const;

const UNITS: Readonly<Record<Dimension, readonly Unit[]>> = {
  length: [
    inAnyCase('ft', FOOT, "'", 'feet', 'foot'),
    inAnyCase('in', INCH, '"', 'inch', 'inches'),
    inAnyCase('yd', YARD, 'yard', 'yards', 'yds'),
    asWritten('m', 1, 'metre', 'metres', 'meter', 'meters'),
    asWritten('cm', 0.01),
    asWritten('mm', 0.001),
  ],
  mass: [
    inAnyCase('lb', POUND, 'lbs', 'pound', 'pounds'),
    inAnyCase('oz', OUNCE, 'ounce', 'ounces'),
    asWritten('kg', 1, 'Kg', 'KG', 'kgs'),
    asWritten('g', 0.001),
    asWritten('t', 1000, 'tonne', 'tonnes'),
  ],
  force: [
    inAnyCase('lbf', POUND_FORCE),
    inAnyCase('kip', 1000 * POUND_FORCE, 'kips'),
    asWritten('N', 1),
    asWritten('kN', 1000, 'KN'),
    asWritten('MN', 1e6),
    asWritten('daN', 10),
    asWritten('kgf', KILOGRAM_FORCE),
  ],
  massPerLength: [
    inAnyCase('lb/ft', POUND / FOOT),
    inAnyCase('lb/100 ft', POUND / (100 * FOOT)),
    inAnyCase('oz/ft', OUNCE / FOOT),
    inAnyCase('oz/yd', OUNCE / YARD, 'oz/yard'),
    asWritten('kg/m', 1),
    asWritten('g/m', 0.001),
    asWritten('kg/100 m', 0.01),
  ],
  massPerArea: [
    inAnyCase('oz/yd²', OUNCE / YARD ** 2, 'oz/sq yd'),
    inAnyCase('lb/ft²', POUND / FOOT ** 2, 'lb/sq ft'),
    inAnyCase('oz/ft²', OUNCE / FOOT ** 2, 'oz/sq ft'),
    asWritten('g/m²', 0.001, 'gsm'),
    asWritten('kg/m²', 1),
  ],
  energy: [
    inAnyCase('ft·lbf', FOOT * POUND_FORCE, ...FOOT_POUND_SPELLINGS),
    asWritten('J', 1),
    asWritten('kJ', 1000),
  ],
  duration: [
    inAnyCase('s', 1, 'sec', 'second', 'seconds'),
    inAnyCase('min', 60, 'minute', 'minutes'),
    inAnyCase('h', 3600, 'hr', 'hour', 'hours'),
    inAnyCase('d', 86_400, 'day', 'days'),
  ],
  speed: [
    inAnyCase('ft/s', FOOT),
    inAnyCase('ft/min', FOOT / 60),
    inAnyCase('mph', (5280 * FOOT) / 3600),
    asWritten('m/s', 1),
    asWritten('m/min', 1 / 60),
    asWritten('km/h', 1 / 3.6),
  ],
  pressure: [
    inAnyCase('psf', POUND_FORCE / FOOT ** 2, 'lbf/ft²', 'lbf/sq ft'),
    inAnyCase('psi', POUND_FORCE / INCH ** 2, 'lbf/in²', 'lbf/sq in'),
    inAnyCase('ksi', (1000 * POUND_FORCE) / INCH ** 2),
    asWritten('Pa', 1, 'N/m²'),
    asWritten('kPa', 1e3, 'kN/m²'),
    asWritten('MPa', 1e6, 'N/mm²'),
    asWritten('GPa', 1e9),
  ],
  forcePerLength: [
    inAnyCase('lbf/ft', POUND_FORCE / FOOT),
    inAnyCase('lbf/in', POUND_FORCE / INCH),
    asWritten('N/m', 1),
    asWritten('kN/m', 1000),
    asWritten('N/mm', 1000),
  ],
  moment: [
    inAnyCase('lbf·ft', FOOT * POUND_FORCE, ...FOOT_POUND_SPELLINGS),
    inAnyCase('lbf·in', INCH * POUND_FORCE, 'in·lbf'),
    asWritten('N·m', 1),
    asWritten('kN·m', 1000),
  ],
  area: [
    inAnyCase('ft²', FOOT ** 2, 'sq ft'),
    inAnyCase('in²', INCH ** 2, 'sq in'),
    inAnyCase('yd²', YARD ** 2, 'sq yd'),
    asWritten('m²', 1),
    asWritten('cm²', 1e-4),
    asWritten('mm²', 1e-6),
  ],
  sectionModulus: [
    inAnyCase('in³', INCH ** 3, 'cu in'),
    asWritten('cm³', 1e-6),
    asWritten('mm³', 1e-9),
    asWritten('m³', 1),
  ],
  secondMoment: [
    inAnyCase('in⁴', INCH ** 4),
    asWritten('cm⁴', 1e-8),
    asWritten('mm⁴', 1e-12),
    asWritten('m⁴', 1),
  ],
  angle: [inAnyCase('deg', DEGREE, '°', 'degree', 'degrees'), asWritten('rad', 1)],
  ratio: [inAnyCase('%', 0.01, 'percent', 'per cent')],
  count: [],
};

/** A weight of cloth off the bolt. It is a mass per area only once the width is known. */
const RUNNING_UNITS: readonly Unit[] = [
  inAnyCase('oz/lin yd', OUNCE / YARD, 'oz/linear yd', 'oz/running yd', 'oz/lin yard'),
  asWritten('g/lin m', 0.001, 'g/linear m', 'g/running m'),
];

type SmallerUnit = { readonly label: string; readonly count: number };

/** Units whose larger one may be followed by the smaller: 24 ft 6 in, 12 lb 8 oz, 1 h 30 min. */
const NEXT_SMALLER: Readonly<Record<string, SmallerUnit>> = {
  ft: { label: 'in', count: 12 },
  lb: { label: 'oz', count: 16 },
  h: { label: 'min', count: 60 },
  min: { label: 's', count: 60 },
};

/** One spelling for a unit however it is spaced: a product dot is a space, a raised 4 is a 4. */
const key = (spelling: string): string =>
  spelling
    .replace(/[·*]/g, ' ')
    .replace(/²|\^2/g, '2')
    .replace(/³|\^3/g, '3')
    .replace(/⁴|\^4/g, '4')
    .replace(/\s+/g, ' ')
    .replace(/ ?\/ ?/g, '/')
    .replace(/(\d) (?=[a-z])/gi, '$1')
    .trim();

/** Where each spelling of a list of units leads; in any case, and only as it is written. */
type Index = {
  readonly anyCase: ReadonlyMap<string, number>;
  readonly asWritten: ReadonlyMap<string, number>;
};

/** Made once: a document of a house has some thousand measures, and each asks for its unit. */
const indexOf = (units: readonly Unit[]): Index => {
  const spelled = units.flatMap(({ spellings, anyCase }, at) =>
    spellings.map((spelling) => ({ anyCase, at, key: key(spelling) })),
  );
  // The first of two units with one spelling is meant, so the list is laid in from its end.
  const backwards = spelled.toReversed();
  return {
    anyCase: new Map(
      backwards.flatMap((each) => (each.anyCase ? [[each.key.toLowerCase(), each.at]] : [])),
    ),
    asWritten: new Map(backwards.flatMap((each) => (each.anyCase ? [] : [[each.key, each.at]]))),
  };
};

const INDEXES = Object.fromEntries(
  Object.entries(UNITS).map(([dimension, units]) => [dimension, indexOf(units)]),
) as Readonly<Record<Dimension, Index>>;

const DIMENSIONS = Object.keys(UNITS) as readonly Dimension[];

const RUNNING_INDEX = indexOf(RUNNING_UNITS);

const among = (units: readonly Unit[], index: Index, asked: string): Unit | undefined => {
  const anyCase = index.anyCase.get(asked.toLowerCase()) ?? Number.POSITIVE_INFINITY;
  return units[Math.min(anyCase, index.asWritten.get(asked) ?? Number.POSITIVE_INFINITY)];
};

export const findUnit = (dimension: Dimension, written: string): Unit | undefined =>
  among(UNITS[dimension], INDEXES[dimension], key(written));

export const findRunningUnit = (written: string): Unit | undefined =>
  among(RUNNING_UNITS, RUNNING_INDEX, key(written));

/** Which measure a unit belongs to, whatever was asked for. */
export const dimensionOf = (written: string): Dimension | undefined => {
  const asked = key(written);
  return DIMENSIONS.find((dimension) => among(UNITS[dimension], INDEXES[dimension], asked));
};

export const nextSmaller = (unit: Unit | undefined): SmallerUnit | undefined =>
  unit && NEXT_SMALLER[unit.label];

/** The units that are read for a dimension, as they are named in messages. */
export const unitsOf = (dimension: Dimension): readonly string[] =>
  UNITS[dimension].map((unit) => unit.label);
