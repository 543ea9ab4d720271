/** The steps of an order that are worked out of balance, each with its peaks and its way out. */

import type { House } from '#house';
import { type CheckedOrder, type StepBetween, stepsBetween } from '#orders';
import type { OrderState } from '#rules';
import type { Restraint } from '#state';
import { phrase } from '#texts';
import type { List, Row, Table, Words } from '../sheet.ts';
import { strong } from '../sheet.ts';
import { filled } from '../words/fill-words.ts';
import { peaksOf } from '../words/on-the-way.ts';
import { height } from '../words/say-set.ts';
import { heldWords, type OrderWords, sayImbalance } from '../words/say-standing.ts';
import { sayStep } from '../words/say-step.ts';
import { stepTitle } from '../words/step-title.ts';
import { inHouseWords } from '../words/trade-translation.ts';

/** Steel carries a set for weeks; what is rigged for a move is what a permit is for. */
const isForMove = ({ kind }: Pick<Restraint, 'kind'>): boolean => kind !== 'deadHangSteel';

const leansOut = ({ limit, standing }: OrderState): boolean =>
  limit === 'nominal' || standing.restraints.some(isForMove);

/** Zones are closed and opened round the move; they do not move the set. */
const isMoved = ({ step }: StepBetween): boolean => step.act !== 'close' && step.act !== 'reopen';

/** Steps before, during or after which no lock within its planning limit holds the set. */
export const outOfBalance = (order: CheckedOrder): readonly StepBetween[] =>
  stepsBetween(order).filter(
    (between) => isMoved(between) && (leansOut(between.before) || leansOut(between.after)),
  );

export const restraintsOf = ({ steps, verdict }: CheckedOrder): readonly Restraint[] => [
  ...(verdict.states[0]?.standing.restraints ?? []).filter(isForMove),
  ...steps.flatMap((step) =>
    step.act === 'rig' && isForMove(step.restraint) ? [step.restraint] : [],
  ),
];

const peakWords = (forceN: number, isThere: boolean, house: House): Words =>
  isThere ? [strong(sayImbalance(forceN, house))] : [phrase(house, 'none')];

const thenWords = (after: OrderState, house: House): string =>
  after.limit === 'nominal'
    ? filled('By the lock, past its planning limit.', house)
    : heldWords(after, house);

const rowOf = (between: StepBetween, words: OrderWords): Row => {
  const { house } = words;
  const { lowN, highN } = peaksOf(between, words);
  const [from = '', to = ''] = [between.before, between.after].map(({ standing }) =>
    height(standing.height, house),
  );
  return {
    cells: [
      [strong(`${between.number}`)],
      [strong(`${stepTitle(between, words)}.`)],
      [
        from === to
          ? phrase(house, 'at {from}', { from })
          : phrase(house, '{from} to {to}', { from, to }),
      ],
      peakWords(highN, highN > 0, house),
      peakWords(lowN, lowN < 0, house),
      [thenWords(between.after, house)],
    ],
    rule: 'hair',
  };
};

const peakHead = (side: string, house: House): string =>
  `${phrase(house, 'Peak')}, ${inHouseWords(side, house)}`;

export const movesTable = (order: CheckedOrder, words: OrderWords): Table => ({
  kind: 'table',
  columns: [
    { head: phrase(words.house, 'Step'), align: 'right', share: 0.06 },
    { head: phrase(words.house, 'Do'), align: 'left', share: 0.25 },
    { head: phrase(words.house, 'Path'), align: 'left', share: 0.15 },
    { head: peakHead('batten heavy', words.house), align: 'left', share: 0.16 },
    { head: peakHead('arbor heavy', words.house), align: 'left', share: 0.16 },
    { head: phrase(words.house, 'Held then'), align: 'left', share: 0.22 },
  ],
  rows: outOfBalance(order).map((between) => rowOf(between, words)),
});

/** One sentence for all the steps that are given up alike. */
export const abandonList = (order: CheckedOrder, words: OrderWords): List => {
  const said = outOfBalance(order).map((between) => sayStep(between, words));
  const ways = [...new Set(said.map(({ abandon }) => abandon))];
  return {
    kind: 'list',
    heading: phrase(words.house, 'To give it up'),
    items: ways.map((way): Words => {
      const numbers = said.filter(({ abandon }) => abandon === way).map(({ number }) => number);
      const steps =
        numbers.length === 1 ? phrase(words.house, 'Step') : phrase(words.house, 'Steps');
      return [strong(`${steps} ${numbers.join(', ')}: `), way];
    }),
  };
};
