/** The briefing of a call: which zones are closed when, who stands where, and the words to call. */

import type { Gallery, House } from '#house';
import type { CheckedOrder, ShowWork } from '#orders';
import { message, phrase } from '#texts';
import type { SheetContext } from '../context.ts';
import { orderCode } from '../order-code.ts';
import { houseFor, makeSheet, voidWords } from '../page-parts.ts';
import type { Block, Sheet, Table, Words } from '../sheet.ts';
import { blank, box, strong } from '../sheet.ts';
import { filled } from '../words/fill-words.ts';
import { inHouseWords } from '../words/trade-translation.ts';
import { CALLS, STAND, worksIn } from '../words/who-may-stand.ts';
import { closedWords, levelsBelow } from './closed-zones.ts';
import type { LeftOut } from './loading-call.ts';
import { needsPermit } from './permit.ts';

/** What lies in a zone and who keeps it; then set by set from which step to which it is closed. */
const zoneBlocks = (
  house: House,
  name: string,
  what: string,
  closed: readonly (string | null)[],
): readonly Block[] => {
  const sets = closed.filter((each) => each !== null);
  return sets.length === 0
    ? []
    : [
        {
          kind: 'text',
          words: [
            box,
            strong(` ${name}: `),
            phrase(house, '{what}. Marshal ', { what }),
            blank(14),
          ],
        },
        { kind: 'text', words: [`${sets.join('. ')}.`] },
      ];
};

const dropBlocks = (
  gallery: Gallery,
  orders: readonly CheckedOrder[],
  house: House,
): readonly Block[] =>
  zoneBlocks(
    house,
    filled('Drop zone of the {name}', house, { name: gallery.name }),
    filled('below it rail and arbor well; {levels}; the deck', house, {
      levels: levelsBelow(gallery, house).join('; '),
    }),
    orders.map((order) => closedWords(order, house, { zone: 'drop', gallery: gallery.id })),
  );

const zonesBlocks = (orders: readonly CheckedOrder[], house: House): readonly Block[] => [
  {
    kind: 'heading',
    text: phrase(house, 'Zones, closed from step to step of the order of each set'),
  },
  ...house.galleries.flatMap((gallery) => dropBlocks(gallery, orders, house)),
  ...zoneBlocks(
    house,
    inHouseWords('Run of the set', house),
    inHouseWords('under its batten and its arbor, on every level', house),
    orders.map((order) => closedWords(order, house, { zone: 'run' })),
  ),
];

const movesBlocks = (orders: readonly CheckedOrder[], house: House): readonly Block[] => {
  const out = orders.filter(needsPermit).map(({ set }) => set);
  return [
    {
      kind: 'text',
      words: [
        strong(phrase(house, 'Out of balance, at the steps and with the people of its permit: ')),
        out.length === 0
          ? phrase(house, 'none.')
          : phrase(house, 'set {out}.', { out: out.join(', ') }),
      ],
    },
  ];
};

const standList = (orders: readonly CheckedOrder[], house: House): Block => ({
  kind: 'list',
  heading: phrase(house, 'Who may stand where'),
  items: worksIn(orders).map((work): Words => {
    const { while: during, who } = STAND[work];
    return [strong(`${filled(during, house)}: `), filled(who, house)];
  }),
});

const callList = (house: House): Block => ({
  kind: 'list',
  heading: phrase(house, 'Words that anybody calls'),
  items: CALLS.map(
    ({ call, means }): Words => [strong(`${phrase(house, call)}: `), filled(means, house)],
  ),
});

const SIGNERS = 6;

const signatures = (house: House): Table => ({
  kind: 'table',
  columns: [message('Name'), message('Signed'), 'Name', 'Signed'].map((head) => ({
    head: phrase(house, head),
    align: 'left',
    share: 0.25,
    isWritten: true,
  })),
  rows: Array.from({ length: SIGNERS }, () => ({
    cells: [[' '], [' '], [' '], [' ']],
    rule: 'hair' as const,
  })),
});

const leftWords = (left: readonly LeftOut[], house: House): readonly Block[] =>
  left.length === 0
    ? []
    : [
        {
          kind: 'text',
          words: [
            strong(phrase(house, 'No order, so nobody works on: ')),
            phrase(house, 'set {out}.', { out: left.map(({ set }) => set).join(', ') }),
          ],
        },
      ];

/** For a call of one kind: its orders in rail order, and the sets that have none. */
export const briefingSheet = (
  context: SheetContext,
  kind: ShowWork['kind'],
  orders: readonly CheckedOrder[],
  left: readonly LeftOut[],
): Sheet => {
  const { house, show } = context;
  return makeSheet(context, {
    id: `briefing/${kind}`,
    kind: 'briefing',
    title: phrase(house, 'Briefing of zones'),
    name: kind === 'load' ? phrase(house, 'Load') : phrase(house, 'Strike'),
    beside: show?.name ?? house.name,
    blocks: [
      ...zonesBlocks(orders, house),
      ...movesBlocks(orders, house),
      ...leftWords(left, house),
      standList(orders, house),
      callList(house),
      signatures(house),
    ],
    voidIf: voidWords(context, null),
    dependsOn: { house: houseFor(context), orders: orders.map(orderCode), left },
  });
};
