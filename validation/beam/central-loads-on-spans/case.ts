import type { ValidationCase } from '../../form.ts';
import { deflectionComparison, forcesOff, printedComparison, type Row } from '../table-of-spans.ts';

const ROWS: readonly Row[] = [
  {
    spans: 1,
    moments: '0, 0',
    reactions: '1/2, 1/2',
    spanMoments: [['1/4', '1/2']],
    deflections: [['0.0208333', '0.5']],
    middles: '1/48',
  },
  {
    spans: 2,
    moments: '0, -3/16, 0',
    reactions: '5/16, 11/8, 5/16',
    spanMoments: [['5/32', '1/2']],
    deflections: [['0.00931695', '0.44721']],
    middles: '7/768, 7/768',
  },
  {
    spans: 3,
    moments: '0, -3/20, -3/20, 0',
    reactions: '7/20, 23/20, 23/20, 7/20',
    spanMoments: [
      ['7/40', '1/2'],
      ['1/10', '1/2'],
    ],
    deflections: [['0.0115728', '0.46291']],
    middles: '11/960, 1/480, 11/960',
  },
  {
    spans: 4,
    moments: '0, -9/56, -3/28, -9/56, 0',
    reactions: '19/56, 17/14, 25/28, 17/14, 19/56',
    spanMoments: [
      ['19/112', '1/2'],
      ['13/112', '1/2'],
    ],
    deflections: [
      ['0.0109246', '0.45883'],
      ['0.00411429', '0.52'],
    ],
    middles: '',
  },
  {
    spans: 5,
    moments: '0, -3/19, -9/76, -9/76, -3/19, 0',
    reactions: '13/38, 91/76, 73/76, 73/76, 91/76, 13/38',
    spanMoments: [
      ['13/76', '1/2'],
      ['17/152', '1/2'],
      ['5/38', '1/2'],
    ],
    deflections: [
      ['0.0110949', '0.45993'],
      ['0.00357595', null],
      ['0.0060307', '0.5'],
    ],
    middles: '',
  },
];

export const theCase: ValidationCase = {
  id: 'VAL-BEM-02',
  title: 'One to five equal spans, a load in the middle of each',
  calculation: 'beam',
  unit: 'of P, P·L',
  tolerance: 1e-9,
  run: () => forcesOff('central', ROWS),
  also: [deflectionComparison('central', ROWS), printedComparison('central', ROWS)],
};
