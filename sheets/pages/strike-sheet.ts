/** The strike of one set, step by step, from an order that was replayed and not refused. */

import type { SetAssessment } from '#assessment';
import type { House } from '#house';
import { type CheckedOrder, stepsBetween, whyNotPrinted } from '#orders';
import { fail, ok, type Refusal, type Result, refusal } from '#outcome';
import { phrase } from '#texts';
import { hangName, type SheetContext } from '../context.ts';
import { orderCode } from '../order-code.ts';
import { besideWords, makeSheet, setDependsOn, voidWords } from '../page-parts.ts';
import { SHEET_REFUSALS } from '../refusal-codes.ts';
import type { Sheet } from '../sheet.ts';
import { sayStep } from '../words/say-step.ts';
import { lockedOutNotice } from './locked-out.ts';
import {
  checkedBlocks,
  dueBlocks,
  keepAwayBlocks,
  restraintBlocks,
  startBlocks,
} from './order-blocks.ts';
import { orderWordsFor } from './order-words.ts';
import { stepData, stepTable } from './step-table.ts';

const carriesPerson = ({ takeoffs }: SetAssessment): boolean =>
  takeoffs.some(({ item }) => item.carriesPerson);

/** Why an order gives no strike sheet of a set; null where it does. */
export const whyNoStrike = (
  set: SetAssessment,
  order: CheckedOrder,
  house: House,
): string | null => {
  if (set.lineSet.id !== order.set)
    return phrase(house, 'the order is for set {set}', { set: order.set });
  if (order.job !== 'strike') return phrase(house, 'the order is a {job}', { job: order.job });
  if (carriesPerson(set)) {
    return phrase(house, 'an item is tagged as carrying a person: out of scope');
  }
  return whyNotPrinted(order);
};

/**
 * The strike sheet of a set, or why there is none. It takes no order that broke a rule, that was
 * not replayed to its end, or that is for another set; and it never plans one itself.
 */
export const strikeSheet = (
  context: SheetContext,
  set: SetAssessment,
  order: CheckedOrder,
): Result<Sheet, Refusal> => {
  const { house, show } = context;
  const id = `strike-sheet/${set.lineSet.id}`;
  const why = whyNoStrike(set, order, house);
  if (why !== null) {
    const accepted = phrase(house, 'a strike of this set, replayed to its end with nothing broken');
    return fail(refusal(SHEET_REFUSALS.notToWorkBy.code, id, { found: why, accepted }));
  }
  const words = orderWordsFor(context, set, order);
  const said = stepsBetween(order).map((between) => ({
    act: between.step.act,
    said: sayStep(between, words),
  }));
  return ok(
    makeSheet(context, {
      id,
      kind: 'strike-sheet',
      title: phrase(house, 'Strike sheet, order {code}', { code: orderCode(order) }),
      number: set.lineSet.id,
      name: hangName(set, show, house),
      beside: besideWords(context, set),
      blocks: [
        ...lockedOutNotice(set, house),
        ...checkedBlocks(order, house),
        ...restraintBlocks(order, house),
        ...startBlocks(order, words),
        ...keepAwayBlocks(
          said.map(({ said: { clear } }) => clear),
          house,
        ),
        stepTable(said, house),
        ...dueBlocks(order, set, house),
        { kind: 'inkLines', count: 3 },
      ],
      voidIf: voidWords(context, set),
      dependsOn: { of: setDependsOn(context, set), order: orderCode(order) },
      data: stepData(
        order,
        said.map((each) => each.said),
        house,
      ),
    }),
  );
};
