/** S6, S7 and S14: the tower that tips up and lies down, the bridge that stands. */
import type { Standing } from '#state';
import {
  add,
  close,
  fly,
  RUN,
  release,
  remove,
  SP6,
  SP7,
  standing,
  type WorkedOrder,
} from './write-order.ts';

const S6: readonly WorkedOrder[] = [
  {
    scenario: 'S6',
    name: 'bricks for the head against the horses, the rest against the foot',
    plant: 'tower',
    start: standing(4, SP6, []),
    steps: [
      { act: 'attach', item: 'flat', as: 'attachedSlack' },
      { act: 'takeUp', item: 'flat' },
      ...add('upper', [12, 'F']),
      close(RUN),
      fly(22.9),
      fly(23),
      ...add('mid', [13, 'F'], [1, 'H']),
      fly(23.05),
      fly(60),
    ],
    refusedBy: null,
    pounds: [
      [0, 47],
      [4, 42],
      [7, 17],
      [11, 25],
      [13, 25],
      [14, -24],
    ],
    poundsLow: [
      [4, -253],
      [11, -321],
    ],
  },
  {
    scenario: 'S6',
    name: 'A, all bricks at working height',
    plant: 'tower',
    start: standing(4, SP6, [], { flat: 'attachedResting' }),
    steps: add('upper', [25, 'F'], [1, 'H']),
    refusedBy: 'ORD-003',
    pounds: [[3, -296]],
  },
  {
    scenario: 'S6',
    name: 'B, half the bricks because half is on the floor',
    plant: 'tower',
    start: standing(4, SP6, [], { flat: 'attachedResting' }),
    steps: [...add('upper', [6, 'F']), close(RUN), fly(6)],
    refusedBy: 'ORD-008',
    pounds: [[5, 189]],
  },
  {
    scenario: 'S6',
    name: 'C, past the contact with bricks for the tilted piece',
    plant: 'tower',
    start: standing(4, SP6, [['F', 12]], { flat: 'attachedResting' }),
    steps: [close(RUN), fly(23.05)],
    refusedBy: 'ORD-010',
    pounds: [[2, 362]],
  },
];

const TOWER = standing(
  60,
  SP6,
  [
    ['F', 25],
    ['H', 1],
  ],
  { flat: 'flying' },
);

const S7: readonly WorkedOrder[] = [
  {
    scenario: 'S7',
    name: 'more than half the bricks off at the contact',
    plant: 'tower',
    start: TOWER,
    steps: [
      close(RUN),
      fly(23),
      ...remove('mid', [1, 'H'], [13, 'F']),
      fly(4),
      { act: 'rest', item: 'flat' },
      ...remove('upper', [12, 'F']),
      release('flat'),
    ],
    refusedBy: null,
    pounds: [
      [2, 25],
      [7, 42],
      [12, 47],
    ],
    poundsLow: [
      [2, -321],
      [5, 17],
    ],
  },
  {
    scenario: 'S7',
    name: 'A, all the way in with the full arbor',
    plant: 'tower',
    start: TOWER,
    steps: [close(RUN), fly(22), fly(12), fly(4)],
    refusedBy: 'ORD-010',
    pounds: [
      [2, -320],
      [3, -306],
      [4, -296],
    ],
  },
  {
    scenario: 'S7',
    name: 'B, unhooked first',
    plant: 'tower',
    start: standing(4, SP6, [['F', 12]], { flat: 'attachedResting' }),
    steps: [release('flat')],
    refusedBy: 'ORD-005',
    pounds: [[1, -253]],
  },
  {
    scenario: 'S7',
    name: 'C, bricks off before the foot touches',
    plant: 'tower',
    start: TOWER,
    steps: [close(RUN), fly(23.05), ...remove('mid', [1, 'H'], [13, 'F'])],
    refusedBy: 'ORD-004',
    pounds: [
      [2, 25],
      [5, 362],
    ],
  },
];

const bridge = (heightFt: number): Standing =>
  standing(
    heightFt,
    SP7,
    [
      ['F', 20],
      ['H', 1],
    ],
    { bridge: 'flying' },
  );

const S14: readonly WorkedOrder[] = [
  {
    scenario: 'S14',
    name: 'landed at its height of contact',
    plant: 'bridge',
    start: bridge(58),
    steps: [close(RUN), fly(15)],
    refusedBy: null,
    pounds: [[2, 38]],
    poundsLow: [[2, -482]],
  },
  {
    scenario: 'S14',
    name: 'landed half an inch low',
    plant: 'bridge',
    start: bridge(58),
    steps: [close(RUN), fly(14.95)],
    refusedBy: 'ORD-010',
    pounds: [[2, -482]],
  },
  {
    scenario: 'S14',
    name: 'unhooked where it landed',
    plant: 'bridge',
    start: bridge(15),
    steps: [release('bridge')],
    refusedBy: 'ORD-005',
    pounds: [[1, -482]],
  },
];

export const HARD_PIECE_ORDERS: readonly WorkedOrder[] = [...S6, ...S7, ...S14];
