import type { ValidationCase } from '../../form.ts';
import { partsOff, solved } from '../asking.ts';
import { digitsOff } from '../even-spans.ts';

const FOOT = 0.3048;
const INCH = 0.0254;
const POUND = 0.45359237;
/** N. */
const LBF = POUND * 9.80665;
const PSI = LBF / INCH ** 2;

/** Three spans of 10 ft under 20 lb/ft, 1-1/2 in schedule 40 pipe of nominal wall. */
const pipe = () =>
  solved({
    pipe: {
      massPerLength: (20 * POUND) / FOOT,
      secondMoment: 0.3099 * INCH ** 4,
      sectionModulus: 0.3262 * INCH ** 3,
      elasticModulus: 29e6 * PSI,
    },
    left: 0,
    right: 30 * FOOT,
    lines: [0, 10, 20, 30].map((feet) => ({ x: feet * FOOT, stiffness: null })),
    loads: [],
  });

export const theCase: ValidationCase = {
  id: 'VAL-BEM-09',
  title: 'Three spans of ten feet in pounds and inches',
  calculation: 'beam',
  unit: 'of 600 lbf, 600 lbf by 10 ft',
  tolerance: 1e-9,
  run: () => {
    const { tensions, moment } = pipe();
    const inchPounds = [moment.min.value, moment.max.value].map((each) => each / (LBF * INCH));
    return [
      ...partsOff(
        tensions.map((each) => each / LBF),
        [80, 220, 220, 80],
        600,
      ),
      ...partsOff(inchPounds, [-2400, 1920], 600 * 120),
    ];
  },
  also: [
    {
      what: 'stress and deflection as printed',
      unit: 'last digits printed',
      tolerance: 0.51,
      run: () => {
        const { stress, deflection } = pipe();
        return [
          digitsOff((stress ?? NaN) / PSI, '7357'),
          digitsOff(deflection.max.value / INCH, '0.2647'),
        ];
      },
    },
  ],
};
