import { freeLength, type LineRun, lineStiffness, publishedAxialStiffness } from '#lines';
import { INCH } from '#quantities';
import type { ValidationCase } from '../../form.ts';

/** x of the line, free length and spring rate in kN/m. */
const LINES = [
  [0.5, 20, 99.2907],
  [4, 23.5, 84.5027],
  [7.5, 27, 73.5486],
  [11, 30.5, 65.1086],
  [14.5, 34, 58.4063],
] as const;

const runAt = (lineX: number, change: Partial<LineRun> = {}): LineRun => ({
  purchase: 1,
  lineX,
  headX: -1.5,
  loftZ: 20,
  headZ: 20,
  wireEndZ: 8,
  attachZ: 14,
  ...change,
});

/** Across, up, and straight between two blocks. */
const TRIANGLES = [
  [3, 4, 5],
  [12, 5, 13],
  [15, 8, 17],
] as const;

const climbing = (across: number, up: number, mules: LineRun['mules'] = []): number =>
  freeLength({ ...runAt(across), headX: 0, headZ: 20 + up, attachZ: 14 + up, mules });

const lengthErrors = (): readonly number[] => {
  const level = LINES.flatMap(([x, lengthM]) => [
    [freeLength(runAt(x)), lengthM],
    [freeLength(runAt(x, { purchase: 2 })), lengthM + 6],
  ]);
  const sloping = TRIANGLES.flatMap(([across, up, straight]) => [
    [climbing(across, up), 12 + straight + 6],
    // By way of a block straight above the loft block: both sides of the triangle.
    [climbing(across, up, [{ x: across, z: 20 + up }]), 12 + up + across + 6],
  ]);
  return [...level, ...sloping].map(([found = Number.NaN, wanted = Number.NaN]) =>
    Math.abs(found / wanted - 1),
  );
};

export const theCase: ValidationCase = {
  id: 'VAL-LIN-04',
  title: 'Free lengths and spring rates of lines that differ',
  calculation: 'lines',
  unit: 'relative',
  tolerance: 1e-14,
  run: lengthErrors,
  also: [
    {
      what: 'spring rates',
      unit: 'kN/m',
      tolerance: 5e-5,
      run: () =>
        LINES.map(([x, , wantedKnPerM]) => {
          const axialStiffnessN = publishedAxialStiffness('7x19 galvanized', INCH / 4);
          const freeLengthM = freeLength(runAt(x));
          const found = lineStiffness({ axialStiffnessN, freeLengthM });
          return Math.abs(found / 1000 - wantedKnPerM);
        }),
    },
  ],
};
