import type { ValidationCase } from '../../form.ts';
import { deflectionComparison, forcesOff, printedComparison, type Row } from '../table-of-spans.ts';

const ROWS: readonly Row[] = [
  {
    spans: 1,
    moments: '0, 0',
    reactions: '1/2, 1/2',
    spanMoments: [['1/8', '1/2']],
    deflections: [['0.0130208', '0.5']],
    middles: '5/384',
  },
  {
    spans: 2,
    moments: '0, -1/8, 0',
    reactions: '3/8, 5/4, 3/8',
    spanMoments: [['9/128', '3/8']],
    deflections: [['0.00541612', '0.42154']],
    middles: '1/192, 1/192',
  },
  {
    spans: 3,
    moments: '0, -1/10, -1/10, 0',
    reactions: '2/5, 11/10, 11/10, 2/5',
    spanMoments: [
      ['2/25', '2/5'],
      ['1/40', '1/2'],
    ],
    deflections: [
      ['0.00688421', '0.44604'],
      ['0.00052083', '0.5'],
    ],
    middles: '13/1920, 1/1920, 13/1920',
  },
  {
    spans: 4,
    moments: '0, -3/28, -1/14, -3/28, 0',
    reactions: '11/28, 8/7, 13/14, 8/7, 11/28',
    spanMoments: [
      ['121/1568', '11/28'],
      ['57/1568', '15/28'],
    ],
    deflections: [
      ['0.00646038', '0.43971'],
      ['0.00189082', '0.54115'],
    ],
    middles: '17/2688, 5/2688, 5/2688, 17/2688',
  },
  {
    spans: 5,
    moments: '0, -2/19, -3/38, -3/38, -2/19, 0',
    reactions: '15/38, 43/38, 37/38, 37/38, 43/38, 15/38',
    spanMoments: [
      ['225/2888', '15/38'],
      ['12/361', '10/19'],
      ['7/152', '1/2'],
    ],
    deflections: [
      ['0.00657161', '0.44143'],
      ['0.00152584', '0.53308'],
      ['0.00315241', '0.5'],
    ],
    middles: '47/7296, 11/7296, 23/7296, 11/7296, 47/7296',
  },
  {
    spans: 6,
    moments: '0, -11/104, -8/104, -9/104, -8/104, -11/104, 0',
    reactions: '41/104, 118/104, 100/104, 106/104, 100/104, 118/104, 41/104',
    spanMoments: [],
    deflections: [],
    middles: '',
  },
  {
    spans: 7,
    moments: '0, -15/142, -11/142, -12/142, -12/142, -11/142, -15/142, 0',
    reactions: '56/142, 161/142, 137/142, 143/142, 143/142, 137/142, 161/142, 56/142',
    spanMoments: [],
    deflections: [],
    middles: '',
  },
];

export const theCase: ValidationCase = {
  id: 'VAL-BEM-01',
  title: 'One to seven equal spans under an even load',
  calculation: 'beam',
  unit: 'of w·L, w·L²',
  tolerance: 1e-9,
  run: () => forcesOff('even', ROWS),
  also: [deflectionComparison('even', ROWS), printedComparison('even', ROWS)],
};
