import type { CheckedOrder } from '#orders';
import { sheetCode } from './sheet-code.ts';

/** Eight letters for an order as it was judged: start, steps, and what was asked of the judge. */
export const orderCode = ({ set, steps, verdict, checked }: CheckedOrder): string =>
  sheetCode({ set, start: verdict.states[0]?.standing ?? null, steps, checked });
