/** Which unit and how many digits each measure gets on paper and on screens. */
import type { Dimension, UnitSystem } from './dimensions.ts';

export type Form = {
  readonly unit: string;
  /** Digits after the point on a sheet, and where a finer reading is asked for. */
  readonly sheet: number;
  readonly fine: number;
  /** Used below this size in the base unit; the last form of a list has no limit. */
  readonly belowSi: number;
};

type Forms = Readonly<Record<UnitSystem, readonly Form[]>>;

const form = (unit: string, sheet: number, fine: number, belowSi = Infinity): Form => ({
  unit,
  sheet,
  fine,
  belowSi,
});

const both = (...forms: readonly Form[]): Forms => ({ customary: forms, metric: forms });

const forms = (customary: readonly Form[], metric: readonly Form[]): Forms => ({
  customary,
  metric,
});

/** A little above the limit, so that 1000 N itself is still in newtons. */
const UP_TO_1000 = 1000 + 1e-6;

/** N, between what a house carries (100 kN) and the stiffness EA of a wire rope (over 0.5 MN). */
const STIFFNESS_FROM = 3e5;
/** Pa, between the strength of a metal and its modulus of elasticity. */
const MODULUS_FROM = 5e9;

export const FORMS: Readonly<Record<Dimension, Forms>> = {
  length: forms([form('ft', 2, 3)], [form('m', 3, 4)]),
  mass: forms([form('lb', 0, 1)], [form('kg', 1, 2)]),
  force: forms(
    [form('lbf', 0, 1, STIFFNESS_FROM), form('kip', 1, 2)],
    [form('N', 0, 1, UP_TO_1000), form('kN', 2, 3, STIFFNESS_FROM), form('MN', 3, 4)],
  ),
  massPerLength: forms([form('lb/ft', 3, 4)], [form('kg/m', 3, 4)]),
  massPerArea: forms([form('oz/yd²', 1, 2)], [form('g/m²', 0, 1)]),
  energy: forms([form('ft·lbf', 0, 1)], [form('J', 0, 1, UP_TO_1000), form('kJ', 2, 3)]),
  duration: both(form('s', 1, 2, 120), form('min', 1, 2, 7200), form('h', 2, 3)),
  speed: forms([form('ft/s', 2, 3)], [form('m/s', 2, 3)]),
  pressure: forms(
    [form('psf', 0, 1, 100e3), form('psi', 0, 1, MODULUS_FROM), form('ksi', 0, 1)],
    [
      form('Pa', 0, 1, UP_TO_1000),
      form('kPa', 2, 3, 1e6),
      form('MPa', 1, 2, MODULUS_FROM),
      form('GPa', 1, 2),
    ],
  ),
  forcePerLength: forms(
    [form('lbf/ft', 0, 1)],
    [form('N/m', 0, 1, UP_TO_1000), form('kN/m', 2, 3)],
  ),
  moment: forms([form('lbf·ft', 0, 1)], [form('N·m', 0, 1, UP_TO_1000), form('kN·m', 2, 3)]),
  area: forms([form('ft²', 1, 2)], [form('m²', 2, 3)]),
  sectionModulus: forms([form('in³', 3, 4)], [form('cm³', 2, 3)]),
  secondMoment: forms([form('in⁴', 3, 4)], [form('cm⁴', 2, 3)]),
  angle: both(form('deg', 1, 2)),
  ratio: both(form('%', 0, 1)),
  count: both(form('', 0, 0)),
};

/** Three digits or more after the decimal mark, on a sheet, of a unit by its label. */
export const printsThousandths = (dimension: Dimension, label: string | undefined): boolean =>
  Object.values(FORMS[dimension]).some((each) =>
    each.some(({ unit, sheet }) => unit === label && sheet >= 3),
  );
