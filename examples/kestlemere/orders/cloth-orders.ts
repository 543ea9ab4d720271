/** S3, S4, S5 and S13: a drop on and off, the house curtain off, the silk that drops away. */
import type { Standing } from '#state';
import {
  add,
  attach,
  close,
  fly,
  RUN,
  release,
  remove,
  restraint,
  SP6,
  SP7,
  standing,
  type WorkedOrder,
} from './write-order.ts';

const S3: readonly WorkedOrder[] = [
  {
    scenario: 'S3',
    name: '4 bricks in, the rest from the mid gallery',
    plant: 'harbourDrop',
    start: standing(3, SP6, []),
    steps: [
      attach('cloth'),
      ...add('upper', [4, 'F']),
      close(RUN),
      fly(4),
      fly(24),
      ...add('mid', [2, 'F'], [1, 'H']),
      fly(28.25),
      fly(60.5),
    ],
    refusedBy: null,
    pounds: [
      [6, -37],
      [7, 22],
      [10, -41],
      [12, 28],
      [13, -15],
    ],
    poundsLow: [[12, -28]],
  },
  {
    scenario: 'S3',
    name: '7 bricks at working height',
    plant: 'harbourDrop',
    start: standing(3, SP6, []),
    steps: [
      attach('cloth'),
      ...add('upper', [4, 'F']),
      close(RUN),
      fly(4),
      ...add('upper', [3, 'F']),
    ],
    refusedBy: 'ORD-003',
    pounds: [
      [6, -37],
      [8, -112],
    ],
  },
];

const HUNG_CLOTH = standing(
  60.5,
  SP6,
  [
    ['F', 6],
    ['H', 1],
  ],
  { cloth: 'flying' },
);

const S4: readonly WorkedOrder[] = [
  {
    scenario: 'S4',
    name: 'half the bricks off at 24 ft on the way in',
    plant: 'harbourDrop',
    start: HUNG_CLOTH,
    steps: [
      close(RUN),
      fly(24),
      ...remove('mid', [1, 'H'], [2, 'F']),
      fly(4),
      fly(3),
      ...remove('upper', [4, 'F']),
      release('cloth'),
    ],
    refusedBy: null,
    pounds: [
      [2, -41],
      [5, 22],
      [7, -37],
      [8, -40],
      [10, 60],
      [12, 49],
    ],
  },
  {
    scenario: 'S4',
    name: 'in to working height with all bricks on',
    plant: 'harbourDrop',
    start: HUNG_CLOTH,
    steps: [close(RUN), fly(4)],
    refusedBy: 'ORD-008',
    pounds: [[2, -99]],
  },
  {
    scenario: 'S4',
    name: 'untied at 4 ft with 4 bricks on',
    plant: 'harbourDrop',
    start: standing(4, SP6, [['F', 4]], { cloth: 'flying' }),
    steps: [release('cloth')],
    refusedBy: 'ORD-005',
    pounds: [
      [0, -37],
      [1, -53],
    ],
  },
];

const CURTAIN = standing(
  60.5,
  SP6,
  [
    ['F', 5],
    ['H', 1],
    ['F', 16],
  ],
  { cloth: 'flying' },
);

const BULL = restraint('bullLine', 250, [3, 28]);

const S5: readonly WorkedOrder[] = [
  {
    scenario: 'S5',
    name: 'a bull line, and bricks off wherever a gallery reaches',
    plant: 'curtain',
    start: CURTAIN,
    steps: [
      close(RUN),
      { act: 'rig', restraint: BULL },
      fly(26.6),
      ...remove('mid', [4, 'F']),
      fly(22),
      ...remove('mid', [3, 'F']),
      // The plan says 21 ft, where the next plate is a sixth of an inch above reach.
      fly(21.05),
      ...remove('mid', [1, 'F']),
      fly(6.16),
      ...[6.16, 6.06, 5.96, 5.86, 5.76, 5.66, 5.56, 5.4].flatMap((heightFt) => [
        fly(heightFt),
        ...remove('upper', [1, 'F']),
      ]),
      fly(3),
      { act: 'unrig', restraint: BULL },
      ...remove('upper', [1, 'H'], [5, 'F']),
      release('cloth'),
    ],
    refusedBy: null,
    pounds: [
      [3, -68],
      [5, 32],
      [7, -41],
      [9, 34],
      [11, 18],
      [13, 43],
      [15, -195],
      [46, -7],
      [48, -46],
      [52, 92],
      [54, 49],
    ],
  },
  {
    scenario: 'S5',
    name: 'in to working height by the lock alone',
    plant: 'curtain',
    start: CURTAIN,
    steps: [close(RUN), fly(4)],
    refusedBy: 'ORD-008',
    pounds: [[2, -430]],
  },
];

const silk = (heightFt: number, show: readonly (readonly [string, number])[]): Standing =>
  standing(heightFt, SP7, show, { track: 'flying', silk: 'flying' });

const S13: readonly WorkedOrder[] = [
  {
    scenario: 'S13',
    name: 'the silk goes at 57 ft',
    plant: 'silk',
    start: silk(57, [['F', 3]]),
    steps: [release('silk')],
    refusedBy: null,
    pounds: [
      [0, -10],
      [1, -48],
    ],
  },
  {
    scenario: 'S13',
    name: 'the silk goes at 60 ft',
    plant: 'silk',
    start: silk(60, [['F', 3]]),
    steps: [release('silk')],
    refusedBy: 'ORD-005',
    pounds: [[1, -52]],
  },
  {
    scenario: 'S13',
    name: 'the silk goes at 60 ft with half a brick more',
    plant: 'silk',
    start: silk(60, [
      ['F', 3],
      ['H', 1],
    ]),
    steps: [release('silk')],
    refusedBy: 'ORD-005',
    pounds: [[1, -65]],
  },
];

export const CLOTH_ORDERS: readonly WorkedOrder[] = [...S3, ...S4, ...S5, ...S13];
