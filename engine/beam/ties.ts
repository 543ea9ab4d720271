/**
 * Bars held by ties that pull and never push: which ties are tight, and how hard each pulls.
 *
 * A tie i lifts bar p at x_p and hangs on the building or on another bar q at x_q. It stretches by
 * its compliance c, and `trim` is how much too short it is:
 *
 *     y_p(x_p) − y_q(x_q) + trim = c·T     where it is tight
 *     y_p(x_p) − y_q(x_q) + trim ≤ 0       where it is slack, T = 0
 *
 * Together with the balance of forces and moments of every bar these are the conditions for least
 * energy, which one set of tensions and no other satisfies. The system is symmetric:
 *
 *     [ A  P ] [ T ]   [ r ]      A_ij = c_i·δ_ij + Σ f·σ_i·σ_j·|x_i − x_j|³/12
 *     [ Pᵀ 0 ] [ z ] = [ w ]      P_i = (σ_i, σ_i·x_i) of each bar, σ +1 lifting, −1 hanging on it
 *
 * Source  minimum of complementary energy with T ≥ 0; docs/derivations/batten-on-lines.md
 */
import { type Factors, factorise, solveWith } from '#numerics';
import { type Bar, bentAt, cubed, resultantOf } from './bars.ts';

export type End = { readonly bar: number; readonly x: number };

export type Tie = {
  readonly lifts: End;
  /** Null: the building. */
  readonly hangsOn: End | null;
  /** m/N; 0 does not stretch. */
  readonly compliance: number;
  readonly trim: number;
};

/** Everything in lengths of `length` about `origin`, forces of `force`, and m/N of `base`. */
type Scaled = {
  readonly bars: readonly Bar[];
  readonly ties: readonly Tie[];
  readonly origin: number;
  readonly length: number;
  readonly force: number;
  readonly base: number;
  /** A, row by row. */
  readonly yields: Float64Array;
  /** P, row by row: two columns for each bar. */
  readonly balances: Float64Array;
  readonly right: Float64Array;
};

export type Held = {
  readonly scaled: Scaled;
  /** N. */
  readonly tensions: Float64Array;
  /** Which ties are in the last solve, in order. */
  readonly tight: readonly number[];
  readonly factors: Factors;
  /** y = a + b·x of each bar, x from its middle: metres and slope. */
  readonly lines: readonly { readonly a: number; readonly b: number }[];
};

/** Tensions and gaps nearer to nothing than this share of all loads are nothing: rounding. */
const ROUNDING = 1e-11;

const endsOf = ({
  lifts,
  hangsOn,
}: Tie): readonly { readonly end: End; readonly sign: 1 | -1 }[] =>
  hangsOn === null
    ? [{ end: lifts, sign: 1 }]
    : [
        { end: lifts, sign: 1 },
        { end: hangsOn, sign: -1 },
      ];

export type Span = { readonly left: number; readonly right: number };

export const scaledTies = (
  bars: readonly Bar[],
  ties: readonly Tie[],
  { left, right }: Span,
): Scaled => {
  const [origin, length] = [(left + right) / 2, (right - left) / 2];
  const loads = bars.map((bar) => resultantOf(bar, origin));
  const force = loads.reduce((sum, { forceN }) => sum + forceN, 0);
  const softest = ties.reduce((most, { compliance }) => Math.max(most, compliance), 0);
  const limpest = bars.reduce((most, { flexibility }) => Math.max(most, flexibility), 0);
  const base = limpest * length ** 3 + softest;
  const [count, width] = [ties.length, 2 * bars.length];
  const ends = ties.map(endsOf);
  const yields = new Float64Array(count * count);
  const balances = new Float64Array(count * width);
  const rightSide = new Float64Array(count + width);
  for (let i = 0; i < count; i++) {
    const tie = ties[i];
    if (tie === undefined) continue;
    let gap = tie.trim;
    for (const { end, sign } of ends[i] ?? []) {
      const bar = bars[end.bar];
      if (bar === undefined) continue;
      balances[i * width + 2 * end.bar] = sign;
      balances[i * width + 2 * end.bar + 1] = (sign * (end.x - origin)) / length;
      gap += sign * bar.flexibility * bentAt(bar, end.x);
    }
    rightSide[i] = gap / (force * base);
    for (let j = 0; j <= i; j++) {
      const value = sharedYield(bars, ends[i] ?? [], ends[j] ?? []) / base;
      yields[i * count + j] = value;
      yields[j * count + i] = value;
    }
    yields[i * count + i] = (yields[i * count + i] ?? 0) + tie.compliance / base;
  }
  for (const [index, { forceN, momentNm }] of loads.entries()) {
    rightSide[count + 2 * index] = forceN / force;
    rightSide[count + 2 * index + 1] = momentNm / (force * length);
  }
  return { bars, ties, origin, length, force, base, yields, balances, right: rightSide };
};

type Ends = ReturnType<typeof endsOf>;

const sharedYield = (bars: readonly Bar[], one: Ends, other: Ends): number => {
  let sum = 0;
  for (const { end, sign } of one) {
    for (const { end: far, sign: farSign } of other) {
      if (end.bar !== far.bar) continue;
      sum += (bars[end.bar]?.flexibility ?? 0) * sign * farSign * cubed(end.x - far.x);
    }
  }
  return sum;
};

const factorsFor = (
  { yields, balances, ties, bars }: Scaled,
  tight: readonly number[],
): Factors | null => {
  const [count, width] = [ties.length, 2 * bars.length];
  const size = tight.length + width;
  const rows = new Float64Array(size * size);
  for (const [row, i] of tight.entries()) {
    for (const [column, j] of tight.entries()) {
      rows[row * size + column] = yields[i * count + j] ?? 0;
    }
    for (let column = 0; column < width; column++) {
      const value = balances[i * width + column] ?? 0;
      rows[row * size + tight.length + column] = value;
      rows[(tight.length + column) * size + row] = value;
    }
  }
  return factorise(rows, size);
};

type Solved = { readonly factors: Factors; readonly answer: Float64Array };

const solveTight = (scaled: Scaled, tight: readonly number[]): Solved | null => {
  const factors = factorsFor(scaled, tight);
  if (factors === null) return null;
  const { right, ties, bars } = scaled;
  const own = new Float64Array(tight.length + 2 * bars.length);
  for (const [row, i] of tight.entries()) own[row] = right[i] ?? 0;
  for (let column = 0; column < 2 * bars.length; column++) {
    own[tight.length + column] = right[ties.length + column] ?? 0;
  }
  return { factors, answer: solveWith(factors, own) };
};

/** How far each tie would have to stretch, in scaled metres: above 0 on a slack one is wrong. */
const overstretch = (scaled: Scaled, tight: readonly number[], answer: Float64Array): number[] => {
  const { yields, balances, right, ties, bars } = scaled;
  const [count, width] = [ties.length, 2 * bars.length];
  return ties.map((_, i) => {
    let stretch = right[i] ?? 0;
    for (const [row, j] of tight.entries()) {
      stretch -= (yields[i * count + j] ?? 0) * (answer[row] ?? 0);
    }
    for (let column = 0; column < width; column++) {
      stretch -= (balances[i * width + column] ?? 0) * (answer[tight.length + column] ?? 0);
    }
    return stretch;
  });
};

const scaleOfGaps = ({ right, ties }: Scaled): number => {
  let most = 1e-3;
  for (let index = 0; index < ties.length; index++) {
    most = Math.max(most, Math.abs(right[index] ?? 0));
  }
  return most;
};

/** The one consistent answer with every tie tight, whatever the signs; null if there is none. */
export const holdAll = (scaled: Scaled): Held | null => {
  const tight = scaled.ties.map((_, index) => index);
  const solved = solveTight(scaled, tight);
  return solved === null ? null : heldBy(scaled, tight, solved);
};

/**
 * The consistent answer with ties that only pull. `start` is a set of ties that carry every bar by
 * themselves without pushing, from which the search may set out; null where none is consistent.
 */
export const holdTensionOnly = (scaled: Scaled, start: readonly number[]): Held | null =>
  byDropping(scaled) ?? byExchange(scaled, start);

/** Quick and nearly always right: leave out what pushes, until nothing does; then look at gaps. */
const byDropping = (scaled: Scaled): Held | null => {
  let tight = scaled.ties.map((_, index) => index);
  const least = 2 * scaled.bars.length;
  while (tight.length >= least) {
    const solved = solveTight(scaled, tight);
    if (solved === null) return null;
    const { answer } = solved;
    const pulling = tight.filter((_, row) => (answer[row] ?? 0) >= -ROUNDING);
    if (pulling.length === tight.length) {
      const stretch = overstretch(scaled, tight, answer);
      const limit = ROUNDING * scaleOfGaps(scaled);
      const isSound = stretch.every((each, i) => tight.includes(i) || each <= limit);
      return isSound ? heldBy(scaled, tight, solved) : null;
    }
    tight = pulling;
  }
  return null;
};

/**
 * Descends in energy from a set that holds: goes towards the best answer of the tight ties, lets go
 * of the first that would push, takes on the slack one that is stretched most. It ends, since no
 * set of ties is met twice while the energy falls.
 */
const byExchange = (scaled: Scaled, start: readonly number[]): Held | null => {
  const count = scaled.ties.length;
  let tight = [...start];
  let tensions = new Float64Array(count);
  const first = solveTight(scaled, tight);
  if (first === null) return null;
  for (const [row, i] of tight.entries()) tensions[i] = Math.max(0, first.answer[row] ?? 0);
  const limit = ROUNDING * scaleOfGaps(scaled);
  for (let turn = 0; turn < 50 + 30 * count; turn++) {
    const solved = solveTight(scaled, tight);
    if (solved === null) return null;
    const blocked = firstBlocked(tight, tensions, solved.answer);
    if (blocked === null) {
      const stretch = overstretch(scaled, tight, solved.answer);
      const next = mostStretched(stretch, tight, limit);
      if (next === null)
        return isOnly(scaled, tight, stretch) ? heldBy(scaled, tight, solved) : null;
      const reached = new Float64Array(count);
      for (const [row, i] of tight.entries()) reached[i] = Math.max(0, solved.answer[row] ?? 0);
      tensions = reached;
      tight = [...tight, next].toSorted((one, other) => one - other);
      continue;
    }
    const moved = new Float64Array(count);
    for (const [row, i] of tight.entries()) {
      const now = tensions[i] ?? 0;
      moved[i] = Math.max(0, now + blocked.share * ((solved.answer[row] ?? 0) - now));
    }
    moved[blocked.tie] = 0;
    tensions = moved;
    tight = tight.filter((i) => i !== blocked.tie);
  }
  return null;
};

/**
 * Whether no other set of tensions would do as well: ties that only just touch could share too, and
 * if those share with the tight ones in any way they like, nobody can say which carries what.
 */
const isOnly = (scaled: Scaled, tight: readonly number[], stretch: readonly number[]): boolean => {
  const limit = ROUNDING * scaleOfGaps(scaled);
  const touching = stretch.flatMap((each, i) => (!tight.includes(i) && each >= -limit ? [i] : []));
  return touching.length === 0 || factorsFor(scaled, [...tight, ...touching]) !== null;
};

const firstBlocked = (
  tight: readonly number[],
  tensions: Float64Array,
  answer: Float64Array,
): { readonly tie: number; readonly share: number } | null => {
  let found: { readonly tie: number; readonly share: number } | null = null;
  for (const [row, i] of tight.entries()) {
    const [now, wanted] = [tensions[i] ?? 0, answer[row] ?? 0];
    if (wanted >= -ROUNDING) continue;
    const share = now / (now - wanted);
    if (found === null || share < found.share) found = { tie: i, share };
  }
  return found;
};

const mostStretched = (
  stretch: readonly number[],
  tight: readonly number[],
  limit: number,
): number | null => {
  let found: number | null = null;
  for (const [i, each] of stretch.entries()) {
    if (tight.includes(i) || each <= limit) continue;
    if (found === null || each > (stretch[found] ?? 0)) found = i;
  }
  return found;
};

const heldBy = (scaled: Scaled, tight: readonly number[], { factors, answer }: Solved): Held => {
  const { force, base, length, bars, ties } = scaled;
  const tensions = new Float64Array(ties.length);
  for (const [row, i] of tight.entries()) {
    const share = answer[row] ?? 0;
    tensions[i] = Math.abs(share) < ROUNDING ? 0 : share * force;
  }
  const lines = bars.map((_, bar) => ({
    a: -(answer[tight.length + 2 * bar] ?? 0) * force * base,
    b: (-(answer[tight.length + 2 * bar + 1] ?? 0) * force * base) / length,
  }));
  return { scaled, tensions, tight, factors, lines };
};

/**
 * Change of every tension for a change of the right side: `gaps` in metres for each tie, `force`
 * and `moment` (about the middle) added to bar 0. Holds while no tie changes sides.
 */
export const changeOf = (
  { scaled, tight, factors }: Held,
  change: {
    readonly gaps: (tie: number) => number;
    readonly force: number;
    readonly moment: number;
  },
): Float64Array => {
  const { base, length, ties } = scaled;
  const own = new Float64Array(factors.size);
  for (const [row, i] of tight.entries()) own[row] = change.gaps(i) / base;
  own[tight.length] = change.force;
  own[tight.length + 1] = change.moment / length;
  const answer = solveWith(factors, own);
  const all = new Float64Array(ties.length);
  for (const [row, i] of tight.entries()) all[i] = answer[row] ?? 0;
  return all;
};
