/** S9 to S12: high stop, unknown mass, double purchase, dead-hung. */
import type { Standing } from '#state';
import {
  add,
  attach,
  close,
  DP7,
  fly,
  RUN,
  release,
  remove,
  restraint,
  SP7,
  standing,
  type WorkedOrder,
} from './write-order.ts';

const UNIT = standing(
  61,
  SP7,
  [
    ['F', 4],
    ['H', 1],
  ],
  { unit: 'flying' },
);

const S9: readonly WorkedOrder[] = [
  {
    scenario: 'S9',
    name: 'the unit first, the bricks from the deck',
    plant: 'effectsUnit',
    start: UNIT,
    steps: [release('unit'), ...remove('deck', [1, 'H'], [4, 'F'])],
    refusedBy: null,
    pounds: [
      [0, -43],
      [1, -153],
      [4, -41],
    ],
  },
  {
    scenario: 'S9',
    name: 'arbor first',
    plant: 'effectsUnit',
    start: UNIT,
    steps: remove('deck', [1, 'H'], [4, 'F']),
    refusedBy: 'ORD-004',
    pounds: [[3, 69]],
  },
];

const bareHeader = standing(3, SP7, [], { header: 'flying' });

/** The drill itself, with its doubt, stands in the tests of the rules (R8). */
const S10: readonly WorkedOrder[] = [
  {
    scenario: 'S10',
    name: '9 bricks on the stop, at the weight of the label',
    plant: 'header',
    start: standing(3, SP7, []),
    steps: [attach('header'), ...add('upper', [9, 'F'])],
    refusedBy: null,
    pounds: [[3, 74]],
  },
  {
    scenario: 'S10',
    name: '9 bricks, if it is light',
    plant: 'lightHeader',
    start: bareHeader,
    steps: add('upper', [9, 'F']),
    refusedBy: null,
    pounds: [[2, 12]],
  },
  {
    scenario: 'S10',
    name: '9 bricks, if it is heavy',
    plant: 'heavyHeader',
    start: bareHeader,
    steps: add('upper', [9, 'F']),
    refusedBy: null,
    pounds: [[2, 136]],
  },
  {
    scenario: 'S10',
    name: '10 bricks for the label, if it is light',
    plant: 'lightHeader',
    start: bareHeader,
    steps: [...add('upper', [10, 'F']), close(RUN), fly(30)],
    refusedBy: 'ORD-008',
    pounds: [
      [2, -13],
      [5, -55],
    ],
  },
  {
    scenario: 'S10',
    name: '10 bricks for the label, if it is heavy',
    plant: 'heavyHeader',
    start: bareHeader,
    steps: [...add('upper', [10, 'F']), close(RUN), fly(30)],
    refusedBy: 'ORD-007',
    pounds: [
      [2, 111],
      [5, 69],
    ],
  },
];

const DOUBLE = standing(3, DP7, [['F', 24]], { header: 'flying' });

const S11: readonly WorkedOrder[] = [
  {
    scenario: 'S11',
    name: 'two bricks on the arbor for one at the batten',
    plant: 'doublePurchase',
    start: DOUBLE,
    steps: [...remove('upper', [24, 'F']), release('header')],
    refusedBy: null,
    pounds: [
      [0, 36],
      [2, 336],
      [4, 36],
    ],
  },
  {
    scenario: 'S11',
    name: 'brick for pound, as on single purchase',
    plant: 'doublePurchase',
    start: DOUBLE,
    steps: [...remove('upper', [12, 'F']), release('header')],
    refusedBy: 'ORD-005',
    pounds: [[4, -114]],
  },
];

const FRAME: Standing = {
  ...standing(38, DP7, [], { frame: 'heldElsewhere' }),
  restraints: [restraint('deadHangSteel', 1000, [38, 38])],
  service: 'deadHung',
};

const S12: readonly WorkedOrder[] = [
  {
    scenario: 'S12',
    name: 'bricks on while the steel holds, and 18 to keep it tight',
    plant: 'frame',
    start: FRAME,
    steps: [...add('mid', [18, 'F']), { act: 'takeOffSteel' }, ...add('mid', [1, 'F'])],
    refusedBy: null,
    pounds: [
      [4, 11],
      [6, -2],
    ],
  },
  {
    scenario: 'S12',
    name: 'the steel off with nothing on the arbor',
    plant: 'frame',
    start: FRAME,
    steps: [{ act: 'takeOffSteel' }],
    refusedBy: 'ORD-021',
    pounds: [[1, 236]],
  },
  {
    scenario: 'S12',
    name: '21 bricks: the steel goes slack',
    plant: 'frame',
    start: FRAME,
    steps: [...add('mid', [21, 'F']), { act: 'takeOffSteel' }],
    refusedBy: 'ORD-022',
    pounds: [[4, -27]],
  },
];

export const OTHER_ORDERS: readonly WorkedOrder[] = [...S9, ...S10, ...S11, ...S12];
