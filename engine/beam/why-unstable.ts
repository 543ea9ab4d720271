/** Whether anything holds a batten still, asked of statics before a single number is reckoned. */
import { resultantOf } from './bars.ts';
import type { Model } from './model.ts';
import { type Held, type Tie, touchingOf } from './ties.ts';
import type { BattenCase, Unstable } from './types.ts';

/** Resultants nearer to a line than this share of the batten's length are on it. */
const ON_THE_LINE = 1e-9;

export const whyUnstable = (the: BattenCase, { bars, ties }: Model): Unstable | null => {
  const origin = (the.left + the.right) / 2;
  const sums = bars.map((bar) => resultantOf(bar, origin));
  const forceN = sums.reduce((sum, each) => sum + each.forceN, 0);
  if (!(forceN > 0) && the.tensionOnly !== false) {
    return { code: 'noLoad', reason: 'Nothing weighs on the lines, so nothing keeps them tight.' };
  }
  let [least, most] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (const { lifts } of ties) {
    if (lifts.bar !== 0) continue;
    if (lifts.x < least) least = lifts.x;
    if (lifts.x > most) most = lifts.x;
  }
  if (!(most > least)) {
    return {
      code: 'tooFewLines',
      reason: 'One line alone lets the batten turn about it: two or more must hold it level.',
    };
  }
  if (the.tensionOnly === false) return null;
  const nearM = ON_THE_LINE * (the.right - the.left);
  const atM = origin + sums.reduce((sum, each) => sum + each.momentNm, 0) / forceN;
  if (atM <= least + nearM || atM >= most - nearM) {
    const end = atM <= least + nearM ? least : most;
    return {
      code: 'tipsOver',
      reason:
        `The load as a whole pulls down at x = ${written(atM)} m, on or beyond the outermost ` +
        `line at x = ${written(end)} m, and no line can push: the batten tips over.`,
    };
  }
  return whyPieceTips(the, sums, nearM, origin);
};

const whyPieceTips = (
  { pieces = [] }: BattenCase,
  sums: readonly { readonly forceN: number; readonly momentNm: number }[],
  nearM: number,
  origin: number,
): Unstable | null => {
  for (const [index, { picks }] of pieces.entries()) {
    const sum = sums[index + 1];
    if (sum === undefined || !(sum.forceN > 0)) {
      return {
        code: 'noLoad',
        reason: `Piece ${index + 1} weighs nothing, so its picks hang slack.`,
      };
    }
    const xs = picks.map(({ x }) => x);
    const atM = origin + sum.momentNm / sum.forceN;
    if (atM > Math.min(...xs) + nearM && atM < Math.max(...xs) - nearM) continue;
    return {
      code: 'pieceTips',
      reason:
        `Piece ${index + 1} pulls down at x = ${written(atM)} m, not between its outermost ` +
        'picks: it tips until it hangs from one.',
    };
  }
  return null;
};

/**
 * A batten or a piece that in the end hangs from one tie alone, its weight just below, with nothing
 * on one side or the other that would go taut if it turned: its tension would be a number for a
 * mechanism.
 */
export const whyLoose = (
  { tensionOnly = true }: BattenCase,
  { bars, ties }: Model,
  held: Held,
): Unstable | null => {
  if (!tensionOnly) return null;
  const loose = bars.findIndex((_, bar) => isLoose(ties, held, bar));
  if (loose === -1) return null;
  if (loose > 0) {
    return {
      code: 'pieceTips',
      reason: `Piece ${loose} hangs from one pick alone, the others slack, and can turn about it.`,
    };
  }
  return {
    code: 'tooFewLines',
    reason:
      'One line alone stays tight, and the batten can turn about it: two or more must hold it ' +
      'level.',
  };
};

const isLoose = (ties: readonly Tie[], held: Held, bar: number): boolean => {
  let [pulling, at] = [0, 0];
  for (let index = 0; index < ties.length; index++) {
    const lifts = ties[index]?.lifts;
    if (lifts?.bar !== bar || !((held.tensions[index] ?? 0) > 0)) continue;
    pulling += 1;
    at = lifts.x;
  }
  if (pulling >= 2) return false;
  const sides = touchingOf(held).map((index) => {
    const lifts = ties[index]?.lifts;
    return lifts?.bar === bar ? Math.sign(lifts.x - at) : 0;
  });
  return !(sides.includes(1) && sides.includes(-1));
};

const written = (metres: number): string => String(Math.round(metres * 1000) / 1000);
