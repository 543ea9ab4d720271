/** The balance card of one set: by it a head flyperson checks a hang. Worst height first. */

import type { SetAssessment, SetPlan } from '#assessment';
import { balanceDrawing, stackDrawing } from '#drawings';
import { type House, lockHoldOf } from '#house';
import type { CheckedOrder } from '#orders';
import { phrase } from '#texts';
import type { SheetContext } from '../context.ts';
import { hangName } from '../context.ts';
import { BODY_HEIGHT, BODY_WIDTH, besideWords, makeSheet, voidWords } from '../page-parts.ts';
import type { Block, Notice, Paragraph, Sheet, Words } from '../sheet.ts';
import { strong } from '../sheet.ts';
import { hungWords, kindOfSet } from '../words/say-set.ts';
import { AT_SHARE, balanceData, balanceTable } from './balance-table.ts';
import { bareCardBlocks } from './bare-card.ts';
import { bricksParagraph, totalsWords } from './bricks-words.ts';
import { assumedWords, lookFirst, unknownWords } from './card-notes.ts';
import { lockedOutNotice } from './locked-out.ts';
import { heightOfWords, NOTE, TEXT } from './measure.ts';
import { cardDependsOn, orderPointer, strikeToWorkBy } from './order-pointer.ts';
import { needsPermit } from './permit.ts';
import { proofsHeight, proofsOf } from './proofs.ts';
import { readingsOf, worstOf } from './readings.ts';
import { selfCheckNotice } from './self-check-notice.ts';
import { slopeWords } from './slope-words.ts';
import { allBricksOn, worstAfter, worstNotice } from './worst-notice.ts';

const LEFT_SHARE = 0.52;
const GUTTER = 16;
/** Points a block takes beyond its words: padding, rules and the gap below it. */
const PLAIN_NOTICE = 28;
const WORST_HEADING = 23;
const NOTICE_EDGE = 25;
const PARAGRAPH_GAP = 4;
/** Under the two columns. */
const COLUMNS_GAP = 8;
const ROW_PADDING = 2.8;
const HEAD_ROW = 19;
const TABLE_GAP = 8;
const INK_LINES = 2;
const INK_HEIGHT = 4 + INK_LINES * 21.5;
const LETTER = 12;
const LEAST_DRAWING = 210;
const LEAST_STACK = 84;
const MOST_STACK = 210;

const columnWidths = () => {
  const room = BODY_WIDTH.portrait - GUTTER;
  return { left: room * LEFT_SHARE, right: room * (1 - LEFT_SHARE) };
};

/** What the words of the card leave for the drawing, on the lower of the two papers. */
const drawingHeight = (
  notices: readonly Notice[],
  notes: readonly Paragraph[],
  proofs: number,
): number => {
  const width = BODY_WIDTH.portrait;
  const worst = notices.reduce(
    (sum, { words }) => sum + WORST_HEADING + heightOfWords(words, TEXT, width - 70) + NOTICE_EDGE,
    0,
  );
  const words = notes.reduce(
    (sum, { words: each, isNote }) =>
      sum + heightOfWords(each, isNote === true ? NOTE : TEXT, width) + PARAGRAPH_GAP,
    0,
  );
  const rest = PLAIN_NOTICE + worst + words + proofs + INK_HEIGHT + COLUMNS_GAP;
  return Math.max(LEAST_DRAWING, BODY_HEIGHT.portrait - rest);
};

/** Curves after something has left in view, each in one sentence with its own worst. */
const releaseWords = ({ lineSet }: SetAssessment, plan: SetPlan, house: House): readonly Words[] =>
  plan.after.flatMap(({ how, set, curve }) => {
    const worst = worstOf(readingsOf(set, curve));
    return worst === null
      ? []
      : [worstAfter(worst, how, { house, lineSet, isDoubtWhole: plan.doubtsUnsaid.length === 0 })];
  });

const rightColumn = (
  set: SetAssessment,
  plan: SetPlan,
  house: House,
  height: number,
): readonly Block[] => {
  const { right } = columnWidths();
  const table = balanceTable(plan, house, lockHoldOf(set.lineSet, house.rules));
  const rows = table.rows.reduce(
    (sum, { cells }) => sum + heightOfWords(cells[0] ?? [], TEXT, right * AT_SHARE) + ROW_PADDING,
    HEAD_ROW,
  );
  const totals = totalsWords(plan.stack, set, house);
  const left = height - rows - heightOfWords(totals, TEXT, right) - 2 * PARAGRAPH_GAP - TABLE_GAP;
  if (left < LEAST_STACK) {
    return [table, { kind: 'text', words: bricksParagraph(plan.stack, set, house) }];
  }
  const size = { width: right, height: Math.min(left, MOST_STACK), letter: LETTER };
  return [
    table,
    { kind: 'drawing', drawing: stackDrawing(set, house, { ...size, of: 'plan' }) },
    { kind: 'text', words: totals },
  ];
};

const noteOf = (words: Words): Paragraph => ({ kind: 'text', words, isNote: true });

/** Restraint, assumptions and unknowns in one paragraph, which may take so many lines. */
const REST_LINES = 5;

const restraintNote = (strike: CheckedOrder | null, house: House): string => {
  if (strike === null) return phrase(house, 'for the order of work, not made yet. ');
  return needsPermit(strike)
    ? phrase(house, 'by the permit of this set. ')
    : phrase(house, 'none in the order named above. ');
};

const restNote = (
  context: SheetContext,
  set: SetAssessment,
  plan: SetPlan,
  strike: CheckedOrder | null,
): Words => {
  const before: Words = [
    strong(phrase(context.house, 'Restraint: ')),
    restraintNote(strike, context.house),
    ...assumedWords(set, plan, context.house),
    ' ',
  ];
  const fits = (words: Words): boolean =>
    heightOfWords([...before, ...words], NOTE, BODY_WIDTH.portrait) <= REST_LINES * NOTE.line;
  return [...before, ...unknownWords(context, set, fits)];
};

const hungNote = (set: SetAssessment, plan: SetPlan, house: House): string =>
  phrase(house, 'Hung: {hung}. {slope}', {
    hung: hungWords(set, house),
    slope: slopeWords(plan, house),
  });

const plannedBlocks = (
  context: SheetContext,
  set: SetAssessment,
  plan: SetPlan,
): readonly Block[] => {
  const { house } = context;
  const strike = strikeToWorkBy(context, set);
  const worst = worstOf(readingsOf(plan.set, plan.curve));
  if (worst === null) return [];
  const isDoubtWhole = plan.doubtsUnsaid.length === 0;
  const notice = worstNotice(worst, allBricksOn(house), {
    house,
    lineSet: set.lineSet,
    isDoubtWhole,
  });
  const saidAbove = ['BAL-001', 'BAL-002', 'BAL-003', 'STA-003'];
  const look = lookFirst(context, set, {
    most: 2,
    saidAbove: notice.degree === 'caution' ? [...saidAbove, 'BAL-004'] : saidAbove,
  });
  const notes: readonly Paragraph[] = [
    { kind: 'text', words: [hungNote(set, plan, house)] },
    ...[...releaseWords(set, plan, house), ...look].map(noteOf),
    noteOf(restNote(context, set, plan, strike)),
  ];
  const proofs = proofsOf(set, house);
  const locked = lockedOutNotice(set, house);
  // Put on top of every sheet where it is made; here it only takes its height.
  const above = selfCheckNotice(context, 'balance-card');
  const height = drawingHeight([...above, ...locked, notice], notes, proofsHeight(proofs));
  const { left } = columnWidths();
  return [
    orderPointer(strike, house),
    ...locked,
    notice,
    {
      kind: 'columns',
      shares: [LEFT_SHARE, 1 - LEFT_SHARE],
      columns: [
        [
          {
            kind: 'drawing',
            drawing: balanceDrawing(set, house, { width: left, height, letter: LETTER }),
          },
        ],
        rightColumn(set, plan, house, height),
      ],
    },
    ...notes,
    proofs,
    { kind: 'inkLines', count: INK_LINES },
  ];
};

/** Every set has a card; one that takes no bricks, or has nothing hung, says so plainly. */
export const balanceCard = (context: SheetContext, set: SetAssessment): Sheet => {
  const { house, show } = context;
  const isFlown = set.plan.known && set.hang !== null && set.hang.deadHungAt === null;
  const blocks =
    set.plan.known && isFlown
      ? plannedBlocks(context, set, set.plan.value)
      : bareCardBlocks(context, set);
  return makeSheet(context, {
    id: `balance-card/${set.lineSet.id}`,
    kind: 'balance-card',
    title: phrase(house, 'Balance card, {kindOfSet}', { kindOfSet: kindOfSet(set.lineSet, house) }),
    number: set.lineSet.id,
    name: set.hang === null ? phrase(house, 'Empty') : hangName(set, show, house),
    beside: besideWords(context, set),
    blocks,
    voidIf: voidWords(context, set),
    dependsOn: cardDependsOn(context, set, strikeToWorkBy(context, set)),
    data: set.plan.known && isFlown ? balanceData(set.plan.value, house) : null,
  });
};
