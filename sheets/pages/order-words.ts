import type { SetAssessment } from '#assessment';
import type { CheckedOrder } from '#orders';
import type { SheetContext } from '../context.ts';
import type { OrderWords } from '../words/say-standing.ts';

/** Names and what was tried, for the words of one order. */
export const orderWordsFor = (
  { house }: Pick<SheetContext, 'house'>,
  { takeoffs }: SetAssessment,
  { physics, checked }: CheckedOrder,
): OrderWords => ({
  house,
  physics,
  nameOf: (id) => takeoffs.find(({ item }) => item.id === id)?.item.name ?? id,
  isDoubtTried: checked.doubt === 'worst',
  areFaultsTried: checked.faults === 'check',
});
