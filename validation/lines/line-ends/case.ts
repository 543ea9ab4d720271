import type { Termination } from '#house';
import { terminationEfficiency } from '#lines';
import { INCH } from '#quantities';
import type { ValidationCase } from '../../form.ts';
import { unlike } from '../../unlike.ts';

/** Kind of end, diameter in inches, per cent of the catalogue strength. */
const TABLE_4: readonly (readonly [Termination, number, number])[] = [
  ['spelterSocket', 1 / 2, 100],
  ['swagedSocket', 1 / 2, 95],
  ['mechanicalSplice', 1 / 4, 95],
  ['mechanicalSplice', 1, 95],
  ['handTuckedSplice', 1 / 2, 86],
  ['wedgeSocket', 1 / 2, 75],
  ['clips', 1 / 4, 80],
  ['clips', 1 / 2, 80],
];

const FROM_MEMORY: readonly (readonly [Termination, number, number])[] = [
  ['handTuckedSplice', 1 / 4, 90],
  ['handTuckedSplice', 5 / 16, 89],
  ['handTuckedSplice', 3 / 8, 88],
  ['handTuckedSplice', 7 / 16, 87],
  ['handTuckedSplice', 5 / 8, 84],
  ['handTuckedSplice', 3 / 4, 82],
  ['handTuckedSplice', 7 / 8, 80],
  ['handTuckedSplice', 1, 80],
  ['compressionSleeve', 1 / 4, 100],
];

const found = (termination: Termination, diameterIn: number) =>
  terminationEfficiency(termination, diameterIn * INCH);

export const theCase: ValidationCase = {
  id: 'VAL-LIN-05',
  title: 'What the end of a line leaves of its strength',
  calculation: 'lines',
  unit: 'shares unlike the table',
  tolerance: 0,
  run: () => [
    ...TABLE_4.map(([end, inches, perCent]) => unlike(found(end, inches)?.value, perCent / 100)),
    unlike(found('mechanicalSplice', 1.125), null),
  ],
  also: [
    {
      what: 'figures from memory, told as such',
      unit: 'shares unlike the figure, or not told',
      tolerance: 0,
      run: () =>
        FROM_MEMORY.flatMap(([end, inches, perCent]) => [
          unlike(found(end, inches)?.value, perCent / 100),
          unlike(found(end, inches)?.source.includes('from memory'), true),
        ]),
    },
  ],
};
