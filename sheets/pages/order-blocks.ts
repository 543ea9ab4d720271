/** What stands round the steps of an order: what was checked, what it needs, what is still due. */

import type { SetAssessment } from '#assessment';
import type { House } from '#house';
import type { Assumption, CheckedOrder } from '#orders';
import { message, phrase } from '#texts';
import { orderCode } from '../order-code.ts';
import type { Block, List, Notice, Words } from '../sheet.ts';
import { blank, box, strong } from '../sheet.ts';
import { filled } from '../words/fill-words.ts';
import { sayAssumption } from '../words/say-assumption.ts';
import { sayBearing } from '../words/say-bearing.ts';
import { energyWords } from '../words/say-energy.ts';
import { sayFinding } from '../words/say-finding.ts';
import { height } from '../words/say-set.ts';
import {
  balanceWords,
  heldWords,
  type OrderWords,
  platesWords,
  restraintWords,
  sayForce,
} from '../words/say-standing.ts';
import { proofsOf } from './proofs.ts';

const triedWords = ({ checked }: CheckedOrder, house: House): string => {
  const doubt =
    checked.doubt === 'worst'
      ? phrase(house, 'every mass at its worst')
      : phrase(house, 'every mass as listed, no tolerance tried');
  const faults =
    checked.faults === 'check'
      ? phrase(
          house,
          'after each step the worst single fault is held, or its path is closed and empty',
        )
      : phrase(house, 'single faults NOT tried, and the lock counted for all of its limit');
  return phrase(house, 'every state and the whole of every way is held; {doubt}; {faults}', {
    doubt,
    faults,
  });
};

/** What the judge was asked to try, as one sentence. */
export const checkedWords = (order: CheckedOrder, house: House): string =>
  phrase(house, 'Replayed step by step: {tried}.', { tried: triedWords(order, house) });

const isMasses = ({ is }: Assumption): boolean => is === 'massesAsWritten';

/** A check that left something out says so in a frame of its own. */
const gapsOf = ({ checked, assumed }: CheckedOrder): readonly string[] => [
  ...(checked.doubt === 'none' && !assumed.some(isMasses)
    ? [message('No tolerance was tried: weigh or pull before you start.')]
    : []),
  ...(checked.faults === 'skip'
    ? [
        message(
          'No single fault was tried, and the lock counts for all of its limit: ' +
            'nobody anywhere in the run or in a drop zone, at any step.',
        ),
      ]
    : []),
];

const energyLine = ({ verdict, physics }: CheckedOrder, house: House): string => {
  const known = verdict.states
    .map(({ releasableJ }) => releasableJ)
    .filter((each) => each !== null);
  return known.length < verdict.states.length
    ? ''
    : phrase(house, ' Most that a state could set free: {energy}.', {
        energy: energyWords(Math.max(...known), physics, house),
      });
};

/** Once for all the sets of which it is true, each with how far it falls short. */
const massesOf = (orders: readonly CheckedOrder[], house: House): readonly string[] => {
  const sets = orders.flatMap(({ set, assumed }) =>
    assumed.flatMap((each) => {
      if (each.is !== 'massesAsWritten') return [];
      return each.byN === null
        ? [set]
        : [phrase(house, '{set} (short by {byN})', { set, byN: sayForce(each.byN, house, 'up') })];
    }),
  );
  return sets.length === 0 ? [] : [filled(MASSES_OF, house, { sets: sets.join(', ') })];
};

const MASSES_OF = message(
  'MASSES ARE TAKEN AS THEY ARE WRITTEN. WEIGH OR PULL-TEST FIRST: with every mass at its worst ' +
    'no order was found for set {sets}.',
);

/** One frame for everything that the judge was not asked to try. */
export const gapBlocks = (orders: readonly CheckedOrder[], house: House): readonly Notice[] => {
  const [order, ...others] = orders;
  const masses =
    order !== undefined && others.length === 0
      ? order.assumed.filter(isMasses).map((each) => sayAssumption(each, house))
      : massesOf(orders, house);
  const gaps = [
    ...new Set([...masses, ...orders.flatMap(gapsOf).map((gap) => filled(gap, house))]),
  ];
  return gaps.length === 0
    ? []
    : [
        {
          kind: 'notice',
          degree: 'caution',
          heading: phrase(house, 'CAUTION: NOT ALL OF IT WAS CHECKED'),
          words: [gaps.join(' ')],
        },
      ];
};

export const checkedBlocks = (order: CheckedOrder, house: House): readonly Block[] => [
  ...gapBlocks([order], house),
  {
    kind: 'text',
    words: [
      strong(phrase(house, 'Order {orderCode}. ', { orderCode: orderCode(order) })),
      checkedWords(order, house),
      energyLine(order, house),
    ],
  },
  ...cautionList(order, house),
  ...grantedList(order, house),
];

/** How it is taken to stand, and what is there: somebody looks before anybody works. */
const grantedList = ({ assumed }: CheckedOrder, house: House): readonly List[] => {
  const said = assumed.filter((each) => !isMasses(each));
  return said.length === 0
    ? []
    : [
        {
          kind: 'list',
          heading: phrase(house, 'Taken for granted: look before the first step'),
          items: said.map((each): Words => [box, ` ${sayAssumption(each, house)}`]),
        },
      ];
};

const cautionList = ({ verdict }: CheckedOrder, house: House): readonly List[] =>
  verdict.cautions.length === 0
    ? []
    : [
        {
          kind: 'list',
          heading: phrase(house, 'Cautions'),
          items: verdict.cautions.map(({ step, finding }): Words => {
            const where =
              step < 0
                ? phrase(house, 'Before the first step')
                : phrase(house, 'Step {step}', { step: step + 1 });
            return [`${where}: ${sayFinding(finding, house).sentence}`];
          }),
        },
      ];

/** Everything from outside that must be there before the first step. */
export const restraintBlocks = (
  { steps, verdict, bearing }: CheckedOrder,
  house: House,
): readonly List[] => {
  const rigged = steps.flatMap((step) => (step.act === 'rig' ? [step.restraint] : []));
  const already = verdict.states[0]?.standing.restraints ?? [];
  const all = [...already, ...rigged];
  if (all.length === 0) return [];
  const borne: readonly Words[] =
    bearing === null
      ? []
      : [
          [
            phrase(house, '{bearing} Checked by ', { bearing: sayBearing(bearing, house) }),
            blank(12),
            '.',
          ],
        ];
  return [
    {
      kind: 'list',
      heading: phrase(
        house,
        'Have ready before the first step, with anchors that are rated for it',
      ),
      items: [
        ...all.map(
          (restraint): Words => [
            phrase(house, '{restraint}. Owner ', {
              restraint: restraintWords(restraint, house),
            }),
            restraint.owner ?? blank(10),
            phrase(house, ', tag '),
            restraint.tag ?? blank(5),
          ],
        ),
        ...borne,
      ],
    },
  ];
};

/** Begin only if the set stands like this; anything else is another order. */
export const startBlocks = ({ verdict }: CheckedOrder, words: OrderWords): readonly Block[] => {
  const { house } = words;
  const [start] = verdict.states;
  if (start === undefined) return [];
  const { standing } = start;
  const hung = Object.entries(standing.items)
    .filter(([, phase]) => phase !== 'away')
    .map(([id]) => words.nameOf(id));
  const names = {
    at: height(standing.height, house),
    plates: platesWords(standing, house),
    hung: hung.length === 0 ? phrase(house, 'nothing') : hung.join(', '),
    balance: balanceWords(start, words),
  };
  return [
    {
      kind: 'text',
      words: [
        box,
        strong(filled(' Begin only if it stands so: ', house)),
        filled('batten at {at}; {plates}; on the batten: {hung}; {balance}. ', house, names),
        heldWords(start, house),
      ],
    },
    {
      kind: 'text',
      words: [
        strong(phrase(house, 'Speaking: ')),
        filled(
          'set and action are called, said back, then \u201Cdo\u201D. No answer or another ' +
            'one is STOP. Anybody says STOP; then give the step up as it says, and ask the lead.',
          house,
        ),
      ],
    },
  ];
};

/** Said once: where nobody is, whatever the step. */
export const keepAwayBlocks = (
  clear: readonly (string | null)[],
  house: House,
): readonly Block[] => {
  const rules = [...new Set(clear.filter((words) => words !== null))];
  const run = filled('The run of a set: under its batten and its arbor, on every level.', house);
  return [
    { kind: 'text', words: [strong(phrase(house, 'Keep away: ')), [...rules, run].join(' ')] },
  ];
};

export const dueBlocks = (
  { verdict }: CheckedOrder,
  set: SetAssessment,
  house: House,
): readonly Block[] => [
  {
    kind: 'text',
    words: [
      strong(phrase(house, 'Assumed: ')),
      [...verdict.assumed, ...ALWAYS_ASSUMED].map((each) => filled(each, house)).join('; '),
      '.',
    ],
    isNote: true,
  },
  {
    kind: 'text',
    words: [
      strong(phrase(house, 'Not checked: ')),
      filled(
        'neighbouring and coupled sets; what is in the way; lift lines, batten and beams at each ' +
          'step; the anchors of restraints; speed.',
        house,
      ),
    ],
    isNote: true,
  },
  proofsOf(set, house),
];

const ALWAYS_ASSUMED = [
  message('the stack is as counted'),
  message('one person at each place, and none of them does two jobs'),
] as const;
