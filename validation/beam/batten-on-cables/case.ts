import { asNumber } from '../../exact.ts';
import type { ValidationCase } from '../../form.ts';
import { battenOf, partsOff, solved } from '../asking.ts';
import { EVEN, onFive, WITH_POINTS } from '../cables.ts';
import { digitsOff } from '../even-spans.ts';
import { type ExactLoad, threeMoments } from '../three-moments.ts';

type Row = {
  readonly loads: readonly ExactLoad[];
  readonly wires: boolean;
  readonly totalN: number;
  readonly reactions: string;
  readonly moments: string;
  /** mm, of each wire. */
  readonly stretch: string | null;
};

const ROWS: readonly Row[] = [
  {
    loads: EVEN,
    wires: false,
    totalN: 1500,
    reactions: '192.092, 393.878, 328.061, 393.878, 192.092',
    moments: '-12.5, -127.679, -89.286, -127.679, -12.5',
    stretch: null,
  },
  {
    loads: EVEN,
    wires: true,
    totalN: 1500,
    reactions: '195.069, 385.095, 340.799, 382.837, 196.198',
    moments: '-12.5, -117.257, -99.180, -113.305, -12.5',
    stretch: '1.9646, 4.5572, 4.6337, 5.8800, 3.3592',
  },
  {
    loads: WITH_POINTS,
    wires: false,
    totalN: 2400,
    reactions: '348.152, 509.704, 700.906, 690.754, 150.484',
    moments: '-12.5, -181.469, -241.472, -273.305, -12.5',
    stretch: null,
  },
  {
    loads: WITH_POINTS,
    wires: true,
    totalN: 2400,
    reactions: '347.075, 512.725, 705.543, 676.727, 157.931',
    moments: '-12.5, -185.238, -238.440, -247.242, -12.5',
    stretch: '3.4955, 6.0676, 9.5929, 10.3938, 2.7040',
  },
];

const reckoned = ({ loads, wires }: Row) => {
  const beam = onFive(loads, wires);
  return {
    beam,
    exact: threeMoments(beam),
    solution: solved({ ...battenOf(beam), tensionOnly: true }),
  };
};

const momentsOf = (row: Row): readonly number[] => {
  const { beam, solution } = reckoned(row);
  return beam.supports.map((x) => solution.at(asNumber(x)).moment);
};

const printed = (found: readonly number[], list: string): readonly number[] =>
  list.split(', ').map((each, i) => digitsOff(found[i] ?? NaN, each));

const rowPrinted = (row: Row): readonly number[] => {
  const { solution } = reckoned(row);
  const { stretch } = row;
  return [
    ...printed(solution.tensions, row.reactions),
    ...printed(momentsOf(row), row.moments),
    ...(stretch === null
      ? []
      : printed(
          solution.deflection.atLines.map((each) => each * 1000),
          stretch,
        )),
  ];
};

const spansPrinted = (): readonly number[] => {
  const [rigid, wires, rigidPoints, wirePoints] = ROWS.map((row) => reckoned(row).solution);
  const left = wires?.at(0.5 + ((wires.tensions[0] ?? NaN) - 50) / 100).moment ?? NaN;
  const right = wires?.at(14.5 - ((wires.tensions[4] ?? NaN) - 50) / 100).moment ?? NaN;
  return [
    digitsOff(rigid?.moment.max.value ?? NaN, '88.450'),
    digitsOff(left, '92.726'),
    digitsOff(right, '94.370'),
    digitsOff(wires?.moment.max.value ?? NaN, '94.370'),
    digitsOff(rigidPoints?.at(2).moment ?? NaN, '322.23'),
    digitsOff(rigidPoints?.moment.max.value ?? NaN, '409.17'),
    digitsOff(wirePoints?.moment.max.value ?? NaN, '422.07'),
  ];
};

export const theCase: ValidationCase = {
  id: 'VAL-BEM-07',
  title: 'A batten on five lines, rigid and of wire',
  calculation: 'beam',
  unit: 'of the load, the load by 1 m',
  tolerance: 1e-9,
  run: () =>
    ROWS.flatMap((row) => {
      const { exact, solution } = reckoned(row);
      return [
        ...partsOff(solution.tensions, exact.reactions, row.totalN),
        ...partsOff(momentsOf(row), exact.moments, row.totalN),
        ...partsOff(
          solution.rigid()?.tensions ?? [],
          threeMoments(onFive(row.loads, false)).reactions,
          row.totalN,
        ),
      ];
    }),
  also: [
    {
      what: 'as printed',
      unit: 'last digits printed',
      tolerance: 0.51,
      run: () => [...ROWS.flatMap(rowPrinted), ...spansPrinted()],
    },
  ],
};
