import { asNumber, exact } from '../../exact.ts';
import type { ValidationCase } from '../../form.ts';
import { battenOf, partsOff, solved } from '../asking.ts';
import { digitsOff } from '../even-spans.ts';
import { type ExactBeam, threeMoments } from '../three-moments.ts';

/** Spans of 10 and 15 ft; feet and kips are taken for metres and newtons, which changes nothing. */
const T1: ExactBeam = {
  left: exact('0'),
  right: exact('25'),
  supports: ['0', '10', '25'].map(exact),
  loads: [
    { from: exact('0'), to: exact('10'), perLength: exact('2') },
    { at: exact('5'), force: exact('6') },
    { from: exact('10'), to: exact('25'), perLength: exact('3') },
    { at: exact('19'), force: exact('10') },
  ],
};

/** Two spans of 3 m, one under 40 kN/m, the other with 120 kN in its middle. */
const T2: ExactBeam = {
  left: exact('0'),
  right: exact('6'),
  supports: ['0', '3', '6'].map(exact),
  loads: [
    { from: exact('0'), to: exact('3'), perLength: exact('40') },
    { at: exact('4.5'), force: exact('120') },
  ],
};

const exactOff = (beam: ExactBeam, scale: number): readonly number[] => {
  const { reactions, moments } = threeMoments(beam);
  const { tensions, at } = solved(battenOf(beam));
  return [
    ...partsOff(tensions, reactions, scale),
    ...partsOff(
      beam.supports.map((x) => at(asNumber(x)).moment),
      moments,
      scale,
    ),
  ];
};

const first = () => {
  const { tensions, at } = solved(battenOf(T1));
  const [a = NaN, b = NaN, c = NaN] = tensions;
  const left = at(10 - 1e-9).shear;
  return { a, b, c, moment: at(10).moment, left: -left, right: at(10).shear };
};

export const theCase: ValidationCase = {
  id: 'VAL-BEM-06',
  title: 'Published examples of the three-moment equation',
  calculation: 'beam',
  unit: 'of 100 kip, 280 kN',
  tolerance: 1e-9,
  run: () => [...exactOff(T1, 100), ...exactOff(T2, 280)],
  also: [
    {
      what: 'as published',
      unit: 'last digits printed',
      tolerance: 0.51,
      run: () => {
        const { a, b, c, moment, left, right } = first();
        const { tensions, moment: second } = solved(battenOf(T2));
        const [ra = NaN, rb = NaN, rc = NaN] = tensions;
        return [
          digitsOff(moment, '-80.2'),
          digitsOff(a, '4.98'),
          digitsOff(b, '52.87'),
          digitsOff(left, '21.02'),
          digitsOff(right, '31.85'),
          digitsOff(c, '23.15'),
          digitsOff(second.min.value, '-56.25'),
          digitsOff(ra, '41.25'),
          digitsOff(rb, '157.5'),
          digitsOff(rc, '41.25'),
        ];
      },
    },
  ],
};
