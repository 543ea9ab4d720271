/** The steps of an order as rows: a group for each, which no page parts. */

import type { House } from '#house';
import { type CheckedOrder, stepsBetween } from '#orders';
import { FOOT, GRAVITY, POUND } from '#quantities';
import type { Step } from '#state';
import { phrase } from '#texts';
import type { Inline, Row, SheetData, Table, Words } from '../sheet.ts';
import { blank, box, strong } from '../sheet.ts';
import type { SaidStep } from '../words/say-step.ts';
import { lengthUnit, massUnit } from '../words/say-units.ts';
import { inHouseWords } from '../words/trade-translation.ts';

const LEFT_SHARE = 0.58;

const term = (text: string): Inline => strong(`${text}: `);

const row = (left: Words, right: Words): Row => ({ cells: [left, right], rule: 'hair' });

/** Who calls what and what comes back: a wrong or missing answer is a STOP. */
const callWords = ({ call, answer }: SaidStep): Words => [
  term(call.by),
  `\u201C${call.says}\u201D `,
  term(answer.by),
  `\u201C${answer.says}\u201D`,
];

const endWords = ({ done }: SaidStep, house: House): Words => [
  term(phrase(house, 'At the end')),
  `\u201C${done}\u201D`,
];

const expectWords = ({ expect, pause: { isHoldPoint, words } }: SaidStep, house: House): Words => {
  const [first = '', ...others] = expect;
  const rest = others.length === 0 ? ' ' : ` ${others.join(' ')} `;
  return [
    term(phrase(house, 'After it')),
    strong(first),
    rest,
    isHoldPoint ? strong(words) : words,
  ];
};

const proofWords = ({ proofs }: SaidStep, house: House): Words => [
  ...proofs.flatMap((text): Words => [box, ` ${text}. `]),
  phrase(house, 'Initials '),
  blank(8),
];

const headRow = ({ number, does }: SaidStep): Row => ({
  cells: [[box, strong(` ${number}  ${does}`)]],
  rule: 'thick',
  isGroup: true,
});

const stepRows = (said: SaidStep, house: House): readonly Row[] => [
  headRow(said),
  row(
    [`${said.who}, ${said.where}. ${said.zone}`],
    [term(phrase(house, 'Stop if')), `${said.stopIf}.`],
  ),
  row(
    [...callWords(said), ' ', ...endWords(said, house)],
    [term(phrase(house, 'Give up')), said.abandon],
  ),
  row(expectWords(said, house), proofWords(said, house)),
];

/** A zone closed or opened takes one row: the set does not move. */
const zoneRows = (said: SaidStep, house: House): readonly Row[] => [
  headRow(said),
  row(
    [`${said.who}. `, ...callWords(said)],
    [
      term(phrase(house, 'Stop if')),
      `${said.stopIf}. `,
      term(phrase(house, 'Give up')),
      said.abandon,
    ],
  ),
];

export const stepTable = (
  steps: readonly { readonly act: Step['act']; readonly said: SaidStep }[],
  house: House,
): Table => ({
  kind: 'table',
  columns: [
    {
      head: inHouseWords('Do, and what to expect: read a step whole, then do it', house),
      align: 'left',
      share: LEFT_SHARE,
    },
    {
      head: phrase(house, 'When to stop, and how to give it up'),
      align: 'left',
      share: 1 - LEFT_SHARE,
    },
  ],
  rows: steps.flatMap(({ act, said }) =>
    act === 'close' || act === 'reopen' ? zoneRows(said, house) : stepRows(said, house),
  ),
});

/** One row a step, for a spreadsheet; an imbalance there is its size with its side beside it. */
export const stepData = (
  order: CheckedOrder,
  said: readonly SaidStep[],
  house: House,
): SheetData => {
  const [perLength, perMass] = house.units === 'customary' ? [FOOT, POUND] : [1, 1];
  const size = (forceN: number): number =>
    Number((Math.abs(forceN) / GRAVITY / perMass).toFixed(1));
  const side = (forceN: number): string =>
    inHouseWords(forceN > 0 ? 'batten heavy' : 'arbor heavy', house);
  return {
    columns: [
      'number',
      'step',
      `${inHouseWords('batten', house)} height (${lengthUnit(house.units)})`,
      `from (${massUnit(house.units)})`,
      'from side',
      `to (${massUnit(house.units)})`,
      'to side',
      'plates (count)',
    ],
    rows: stepsBetween(order).map(({ number, after }, index) => {
      const { lowN, highN } = after.imbalance;
      const plates = after.standing.stack
        .filter(({ tag }) => tag !== 'spreader')
        .reduce((sum, { count }) => sum + count, 0);
      const heightNumber = Number((after.standing.height / perLength).toFixed(3));
      return [
        number,
        said[index]?.does ?? '',
        heightNumber,
        size(lowN),
        side(lowN),
        size(highN),
        side(highN),
        plates,
      ];
    }),
  };
};
