/** S1, S2 and S8: Electric 1 at the low stop, a foot above it, and in part. */
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
  standing,
  type WorkedOrder,
} from './write-order.ts';

const HEADS = ['head1', 'head2', 'head3', 'head4', 'head5', 'head6'];
const ELECTRIC = [...HEADS, 'profiles', 'cable', 'loom'];
const HUNG_ELECTRIC = Object.fromEntries(ELECTRIC.map((id) => [id, 'flying' as const]));

const bareElectric = (heightFt: number): Standing => standing(heightFt, SP6, []);

const S1: readonly WorkedOrder[] = [
  {
    scenario: 'S1',
    name: 'all on at the low stop, then the bricks',
    plant: 'electric',
    start: bareElectric(3),
    steps: [...ELECTRIC.map(attach), close(RUN), ...add('upper', [33, 'F']), fly(36)],
    refusedBy: null,
    pounds: [
      [0, 49],
      [9, 814],
      [12, -11],
      [14, 10],
    ],
  },
  {
    scenario: 'S1',
    name: 'the bricks first',
    plant: 'electric',
    start: bareElectric(3),
    steps: add('upper', [33, 'F']),
    refusedBy: 'ORD-003',
    pounds: [[2, -776]],
  },
  {
    scenario: 'S1',
    name: '16 bricks, then up a foot to see',
    plant: 'electric',
    start: bareElectric(3),
    steps: [...ELECTRIC.map(attach), close(RUN), ...add('upper', [16, 'F']), fly(4)],
    refusedBy: 'ORD-007',
    pounds: [[14, 416]],
  },
];

const S2: readonly WorkedOrder[] = [
  {
    scenario: 'S2',
    name: 'all on a foot above the stop',
    plant: 'electric',
    start: bareElectric(4),
    steps: ELECTRIC.map(attach),
    refusedBy: 'ORD-002',
    pounds: [[9, 816]],
  },
  {
    scenario: 'S2',
    name: 'A, at the low stop',
    plant: 'electric',
    start: bareElectric(4),
    steps: [close(RUN), fly(3), ...ELECTRIC.map(attach), ...add('upper', [33, 'F'])],
    refusedBy: null,
    pounds: [[13, -11]],
  },
  {
    scenario: 'S2',
    name: 'B, rated stands under the batten',
    plant: 'electric',
    start: bareElectric(4),
    steps: [
      { act: 'rig', restraint: restraint('stands', 1200, [4, 4]) },
      ...ELECTRIC.map(attach),
      ...add('upper', [33, 'F']),
      { act: 'unrig', restraint: restraint('stands', 1200, [4, 4]) },
    ],
    refusedBy: null,
    pounds: [[10, 816]],
  },
  {
    scenario: 'S2',
    name: 'C, a brick and a lamp in turn',
    plant: 'electric',
    start: bareElectric(4),
    steps: HEADS.flatMap((head, index) => [
      ...add('upper', [3, 'F'], ...([0, 1, 4].includes(index) ? [[1, 'H'] as const] : [])),
      attach(head),
    ]),
    refusedBy: null,
    pounds: [
      [0, 47],
      [4, -40],
      [5, 39],
      [9, -49],
      [10, 30],
      [13, -45],
      [14, 34],
      [17, -41],
      [18, 38],
      [22, -49],
      [23, 30],
      [26, -45],
      [27, 34],
    ],
  },
];

const LOW_ELECTRIC = standing(7.5, SP6, [['F', 33]], HUNG_ELECTRIC);
const SLING = restraint('arborSling', 1000, [7.5, 7.5]);

const S8: readonly WorkedOrder[] = [
  {
    scenario: 'S8',
    name: 'A, the arbor slung',
    plant: 'electric',
    start: LOW_ELECTRIC,
    steps: [
      { act: 'rig', restraint: SLING },
      release('head1'),
      release('head2'),
      ...remove('upper', [6, 'F']),
      { act: 'unrig', restraint: SLING },
    ],
    refusedBy: null,
    pounds: [
      [0, -3],
      [3, -161],
      [5, -11],
    ],
  },
  {
    scenario: 'S8',
    name: 'B, bricks and lamps in turn',
    plant: 'electric',
    start: LOW_ELECTRIC,
    steps: [
      ...remove('upper', [2, 'F']),
      release('head1'),
      ...remove('upper', [3, 'F']),
      release('head2'),
      ...remove('upper', [1, 'F']),
    ],
    refusedBy: null,
    pounds: [
      [2, 47],
      [4, -32],
      [6, 43],
      [8, -36],
      [10, -11],
    ],
  },
  {
    scenario: 'S8',
    name: 'arbor first',
    plant: 'electric',
    start: LOW_ELECTRIC,
    steps: remove('upper', [6, 'F']),
    refusedBy: 'ORD-004',
    pounds: [[2, 147]],
  },
  {
    scenario: 'S8',
    name: 'lamps first, nothing slung',
    plant: 'electric',
    start: LOW_ELECTRIC,
    steps: [release('head1'), release('head2')],
    refusedBy: 'ORD-005',
    pounds: [[2, -161]],
  },
  {
    scenario: 'S8',
    name: 'the whole arbor stripped',
    plant: 'electric',
    start: LOW_ELECTRIC,
    steps: remove('upper', [33, 'F']),
    refusedBy: 'ORD-004',
    pounds: [[2, 822]],
  },
];

export const ELECTRIC_ORDERS: readonly WorkedOrder[] = [...S1, ...S2, ...S8];
