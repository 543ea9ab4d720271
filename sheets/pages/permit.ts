/** The out-of-balance permit of a set: what leans on a restraint, or on its lock past planning. */

import type { SetAssessment } from '#assessment';
import { balanceDrawing } from '#drawings';
import type { House } from '#house';
import type { CheckedOrder } from '#orders';
import type { Restraint } from '#state';
import { message, phrase } from '#texts';
import { hangName, type SheetContext } from '../context.ts';
import { orderCode } from '../order-code.ts';
import { BODY_WIDTH, besideWords, makeSheet, setDependsOn, voidWords } from '../page-parts.ts';
import type { Block, Sheet, Words } from '../sheet.ts';
import { blank, box, strong } from '../sheet.ts';
import { filled } from '../words/fill-words.ts';
import { sayBearing } from '../words/say-bearing.ts';
import { restraintWords } from '../words/say-standing.ts';
import { inHouseWords } from '../words/trade-translation.ts';
import { lockedOutNotice } from './locked-out.ts';
import { gapBlocks } from './order-blocks.ts';
import { orderWordsFor } from './order-words.ts';
import { abandonList, movesTable, outOfBalance, restraintsOf } from './permit-moves.ts';

/** Whether an order may be worked by the sheets of the set alone. */
export const needsPermit = (order: CheckedOrder): boolean => outOfBalance(order).length > 0;

const DRAWING = { width: BODY_WIDTH.portrait, height: 200, letter: 12 } as const;

/** Jumps and the heights of them, where the show says what hangs. */
const curveBlocks = (set: SetAssessment, house: House): readonly Block[] =>
  set.plan.known && set.hang !== null && set.hang.deadHungAt === null
    ? [
        {
          kind: 'heading',
          text: filled('Over the travel, all hung and all bricks on', house),
        },
        { kind: 'drawing', drawing: balanceDrawing(set, house, DRAWING) },
      ]
    : [];

/** Rated by the search; anchor and all that it pulls on are for a person who may say so. */
const restraintItems = (restraint: Restraint, house: House): Words => [
  box,
  strong(` ${restraintWords(restraint, house)}. `),
  phrase(house, 'Rated '),
  blank(7),
  phrase(house, ', anchor '),
  blank(12),
  phrase(house, ' rated '),
  blank(7),
  phrase(house, ', owner '),
  restraint.owner ?? blank(10),
  phrase(house, ', tag '),
  restraint.tag ?? blank(5),
  '.',
];

const restraintBlocks = (order: CheckedOrder, house: House): readonly Block[] => {
  const restraints = restraintsOf(order);
  if (restraints.length === 0) {
    return [
      {
        kind: 'text',
        words: [
          strong(phrase(house, 'Restraint: ')),
          filled(
            'none. The lock is trusted past its planning limit, up to what the house rates it ' +
              'for, with the run closed and empty. Its rope is dry and it was tested: date ',
            house,
          ),
          blank(9),
          '.',
        ],
      },
    ];
  }
  return [
    {
      kind: 'list',
      heading: phrase(house, 'Restraint, rating, direction and anchor'),
      items: [
        ...restraints.map((each) => restraintItems(each, house)),
        [
          phrase(house, '{bearing} Checked by ', { bearing: sayBearing(order.bearing, house) }),
          blank(14),
          '.',
        ],
      ],
    },
  ];
};

const PLACES = [
  [
    message('Leader'),
    message('Rail operator'),
    message('Leader of the restraint'),
    message('Marshal of the run'),
  ],
  [
    message('Watcher at the batten'),
    message('Watcher at the arbor'),
    message('Marshal, drop zone'),
    'Marshal, drop zone',
  ],
] as const;

const placesOf = (places: readonly string[], house: House): readonly Block[] =>
  places.map((place) => ({
    kind: 'text',
    words: [`${inHouseWords(place, house)} `, blank(13)],
  }));

const peopleBlocks = (house: House): readonly Block[] => [
  { kind: 'heading', text: phrase(house, 'People, one at each place') },
  {
    kind: 'columns',
    shares: [0.5, 0.5],
    columns: PLACES.map((places) => placesOf(places, house)),
  },
  {
    kind: 'text',
    words: [
      strong(phrase(house, 'In the zone, by name, each with a way out: ')),
      blank(24),
      filled(
        '. Nobody else is under the batten, at the rail, in the arbor well, on a gallery or a ' +
          'level below, in line with a bull line or inside the angle at a block that it turns on.',
        house,
      ),
    ],
  },
];

const signed = (who: string, house: House): Words => [
  `${who} `,
  blank(12),
  phrase(house, ' at '),
  blank(5),
];

const endBlocks = (house: House): readonly Block[] => [
  {
    kind: 'columns',
    shares: [0.48, 0.52],
    columns: [
      [
        {
          kind: 'list',
          heading: phrase(house, 'Leave to begin, after the briefing'),
          items: [
            phrase(house, 'Leader'),
            phrase(house, 'Head flyperson'),
            phrase(house, 'For the house'),
          ].map((who) => signed(who, house)),
        },
      ],
      [
        {
          kind: 'list',
          heading: phrase(house, 'Closed out'),
          items: [
            [box, filled(' Restraint off, by owner and leader; struck out; tag returned.', house)],
            [
              box,
              filled(' Set at ', house),
              blank(6),
              phrase(house, ', held by '),
              blank(9),
              phrase(house, ', ringed; zones open.'),
            ],
            signed(phrase(house, 'Leader'), house),
          ],
        },
      ],
    ],
  },
];

const partOf = (
  { house }: SheetContext,
  set: SetAssessment,
  order: CheckedOrder,
): readonly Block[] => [
  {
    kind: 'heading',
    text: filled(order.job === 'strike' ? 'Strike, order {code}' : 'Load, order {code}', house, {
      code: orderCode(order),
    }),
  },
  ...gapBlocks([order], house),
  ...restraintBlocks(order, house),
  movesTable(order, orderWordsFor({ house }, set, order)),
  abandonList(order, orderWordsFor({ house }, set, order)),
];

/** For orders of one set that the judge accepts, each of which needs a permit. */
export const permitSheet = (
  context: SheetContext,
  set: SetAssessment,
  orders: readonly CheckedOrder[],
): Sheet => {
  const { house, show } = context;
  return makeSheet(context, {
    id: `permit/${set.lineSet.id}`,
    kind: 'permit',
    title: phrase(house, 'Out-of-balance permit'),
    number: set.lineSet.id,
    name: hangName(set, show, house),
    beside: besideWords(context, set),
    blocks: [
      {
        kind: 'notice',
        degree: 'caution',
        heading: phrase(house, 'OUT OF BALANCE: NOT BEFORE IT IS SIGNED'),
        words: [
          filled(
            'No lock within its planning limit holds these steps. Worked by the sheets of the ' +
              'order, after a briefing, by the people named here and nobody else.',
            house,
          ),
        ],
      },
      ...lockedOutNotice(set, house),
      ...orders.flatMap((order) => partOf(context, set, order)),
      ...curveBlocks(set, house),
      ...peopleBlocks(house),
      ...endBlocks(house),
    ],
    voidIf: voidWords(context, set),
    dependsOn: { of: setDependsOn(context, set), orders: orders.map(orderCode) },
  });
};

/** Where both orders were found and accepted, and neither leans on anything. */
export const noPermitSheet = (
  context: SheetContext,
  set: SetAssessment,
  orders: readonly CheckedOrder[],
): Sheet =>
  makeSheet(context, {
    id: `permit/${set.lineSet.id}`,
    kind: 'permit',
    title: phrase(context.house, 'Out-of-balance permit'),
    number: set.lineSet.id,
    name: hangName(set, context.show, context.house),
    beside: besideWords(context, set),
    blocks: [
      {
        kind: 'notice',
        degree: 'note',
        heading: phrase(context.house, 'NO PERMIT IS ASKED FOR'),
        words: [
          filled(
            'Orders {codes} need no restraint and keep the lock within its planning limit.',
            context.house,
            {
              codes: orders
                .map((order) => `${inHouseWords(order.job, context.house)} ${orderCode(order)}`)
                .join(', '),
            },
          ),
        ],
      },
    ],
    voidIf: voidWords(context, set),
    dependsOn: { of: setDependsOn(context, set), orders: orders.map(orderCode) },
  });
