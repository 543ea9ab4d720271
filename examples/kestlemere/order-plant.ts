/**
 * Sets of Kestlemere as the worked orders need them: what hangs in the show, or what the plan of
 * the demo says instead; loose bricks as at the start of the fit-up, before any set is loaded.
 */
import { assessSet, orderPhysicsOf } from '#assessment';
import { known } from '#house';
import { assert } from '#outcome';
import { FOOT, kilograms, metres, POUND } from '#quantities';
import type { Item } from '#show';
import type { OrderGallery, OrderPhysics } from '#state';
import { openExample } from '../open-example.ts';

const { house, show, state } = openExample('kestlemere');

const FIT_UP = {
  ...state,
  galleries: {
    upper: { stock: { F: 280, H: 26, O: 21 }, reserved: [], countedAt: null, countedBy: null },
    mid: { stock: { F: 52, H: 14, O: 0 }, reserved: [], countedAt: null, countedBy: null },
  },
};

/** With the batten out the arbor stands at deck level, where loaders reach it (X10). */
const DECK: OrderGallery = {
  id: 'deck',
  name: 'Deck at the arbor pit',
  floorM: 0,
  reachFromM: 0.25 * FOOT,
  reachToM: 5.5 * FOOT,
  stock: { F: 0, H: 0, O: 0 },
};

const hangOf = (set: string) => {
  const hang = show.hangs.find((each) => each.set === set);
  assert(hang !== undefined, `set ${set} hangs`);
  return hang;
};

const itemsOf = (set: string): readonly Item[] => hangOf(set).items;

/** A hard piece that never meets the deck: only its mass matters. */
const hardPiece = (id: string, massLb: number, toleranceLb: number): Item => {
  const [donor] = itemsOf('D3');
  assert(donor !== undefined, 'the frame on D3 lends its shape');
  const by = { basis: 'estimated', source: 'worked order' } as const;
  return {
    ...donor,
    id,
    name: id,
    takeoff: {
      by: 'mass',
      mass: known(kilograms(massLb * POUND), by, toleranceLb * POUND),
      hem: null,
    },
    drop: known(metres(0.5 * FOOT), by),
    pick: known(metres(0), by),
  };
};

/** Electric 1 with its six moving heads one by one, 79 lb each. */
const electric = (): readonly Item[] => [
  ...[1, 2, 3, 4, 5, 6].map((number) => hardPiece(`head${number}`, 79, 1.58)),
  ...itemsOf('5').filter(({ id }) => id !== 'heads'),
];

const physicsWith = (set: string, items: readonly Item[]): OrderPhysics => {
  const lineSet = house.lineSets.find(({ id }) => id === set);
  assert(lineSet !== undefined, `set ${set} is in the house`);
  const hang = { ...hangOf('D3'), set, items, deadHungAt: null, bricks: null };
  const only = { ...show, hangs: [hang] };
  const physics = orderPhysicsOf(assessSet(house, only, FIT_UP, lineSet), house, FIT_UP);
  assert(physics.known, `the physics of set ${set} is known`);
  return { ...physics.value, galleries: [...physics.value.galleries, DECK] };
};

const asInShow = (set: string): OrderPhysics => physicsWith(set, itemsOf(set));

export const ORDER_PLANT = {
  curtain: asInShow('1'),
  electric: physicsWith('5', electric()),
  harbourDrop: asInShow('9'),
  tower: asInShow('11'),
  header: physicsWith('27', [hardPiece('header', 250, 62)]),
  lightHeader: physicsWith('27', [hardPiece('header', 188, 0)]),
  heavyHeader: physicsWith('27', [hardPiece('header', 312, 0)]),
  silk: asInShow('34'),
  bridge: asInShow('36'),
  effectsUnit: physicsWith('38', [hardPiece('unit', 110, 2.2)]),
  doublePurchase: physicsWith('D1', [hardPiece('header', 300, 6)]),
  frame: asInShow('D3'),
} as const satisfies Readonly<Record<string, OrderPhysics>>;
