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

/**
 * The whole system with every tie in it, in lengths of `length` about `origin`, forces of `force`,
 * and m/N of `base`.
 */
type Scaled = {
  readonly bars: readonly Bar[];
  readonly ties: readonly Tie[];
  readonly origin: number;
  readonly length: number;
  readonly loadN: number;
  readonly force: number;
  readonly base: number;
  /** One for each tie, and two for the balance of each bar. */
  readonly size: number;
  /** [A P; Pᵀ 0], row by row. */
  readonly saddle: readonly number[];
  /** [r; w]. */
  readonly right: readonly number[];
};

export type Held = {
  readonly scaled: Scaled;
  /** N. */
  readonly tensions: readonly number[];
  /** Which ties are in the last solve, in order. */
  readonly tight: readonly number[];
  readonly factors: Factors;
  /** What that solve gave, scaled: tensions of the tight ties, then two numbers for each bar. */
  readonly answer: readonly number[];
  /** y = a + b·x of each bar, x from its middle: metres and slope. */
  readonly lines: readonly { readonly a: number; readonly b: number }[];
};

/** Tensions and gaps nearer to nothing than this share of all loads are nothing: rounding. */
const ROUNDING = 1e-11;

export type Span = { readonly left: number; readonly right: number };

export const scaledTies = (
  bars: readonly Bar[],
  ties: readonly Tie[],
  { left, right }: Span,
): Scaled => {
  const [origin, length] = [(left + right) / 2, (right - left) / 2];
  const loads = bars.map((bar) => resultantOf(bar, origin));
  const loadN = loads.reduce((sum, { forceN }) => sum + forceN, 0);
  // Lines that may push can strain a batten that carries nothing: then forces are told in newtons.
  const force = loadN > 0 ? loadN : 1;
  const softest = ties.reduce((most, { compliance }) => Math.max(most, compliance), 0);
  const limpest = bars.reduce((most, { flexibility }) => Math.max(most, flexibility), 0);
  const base = limpest * length ** 3 + softest;
  const size = ties.length + 2 * bars.length;
  const saddle = Array<number>(size * size).fill(0);
  const rightSide: number[] = [];
  const put = (row: number, column: number, value: number): void => {
    saddle[row * size + column] = value;
    saddle[column * size + row] = value;
  };
  for (let i = 0; i < ties.length; i++) {
    const tie = ties[i];
    if (tie === undefined) continue;
    for (let j = 0; j < i; j++) {
      const other = ties[j];
      if (other !== undefined) put(i, j, sharedYield(bars, tie, other) / base);
    }
    put(i, i, (sharedYield(bars, tie, tie) + tie.compliance) / base);
    for (let bar = 0; bar < bars.length; bar++) {
      put(i, ties.length + 2 * bar, leverOf(tie, bar, null));
      put(i, ties.length + 2 * bar + 1, leverOf(tie, bar, origin) / length);
    }
    const gap = tie.trim + bentUnder(bars, tie.lifts) - bentUnder(bars, tie.hangsOn);
    rightSide.push(gap / (force * base));
  }
  for (const { forceN, momentNm } of loads) {
    rightSide.push(forceN / force, momentNm / (force * length));
  }
  return { bars, ties, origin, length, loadN, force, base, size, saddle, right: rightSide };
};

/** Force, or moment about an origin, that a pull of one gives to a bar. */
const leverOf = ({ lifts, hangsOn }: Tie, bar: number, origin: number | null): number => {
  if (lifts.bar === bar) return origin === null ? 1 : lifts.x - origin;
  if (hangsOn?.bar !== bar) return 0;
  return origin === null ? -1 : origin - hangsOn.x;
};

/** How far the loads of a bar bend it down at a tie's end, from the straight line. */
const bentUnder = (bars: readonly Bar[], end: End | null): number => {
  const bar = end === null ? undefined : bars[end.bar];
  return end === null || bar === undefined ? 0 : bar.flexibility * bentAt(bar, end.x);
};

const sharedYield = (bars: readonly Bar[], one: Tie, other: Tie): number => {
  const lifted = endsYield(bars, one.lifts, other.lifts);
  if (one.hangsOn === null && other.hangsOn === null) return lifted;
  return (
    lifted -
    endsYield(bars, one.lifts, other.hangsOn) -
    endsYield(bars, one.hangsOn, other.lifts) +
    endsYield(bars, one.hangsOn, other.hangsOn)
  );
};

const endsYield = (bars: readonly Bar[], one: End | null, other: End | null): number =>
  one === null || other === null || one.bar !== other.bar
    ? 0
    : (bars[one.bar]?.flexibility ?? 0) * cubed(one.x - other.x);

/** Rows of the system in which these ties are tight and no others: theirs, and every balance. */
const rowsOf = ({ ties, size }: Scaled, tight: readonly number[]): readonly number[] => {
  const rows = [...tight];
  for (let row = ties.length; row < size; row++) rows.push(row);
  return rows;
};

const factorsFor = ({ saddle, size }: Scaled, rows: readonly number[]): Factors | null => {
  if (rows.length === size) return factorise([...saddle], size);
  const kept: number[] = [];
  for (const row of rows) {
    for (const column of rows) kept.push(saddle[row * size + column] ?? 0);
  }
  return factorise(kept, rows.length);
};

type Solved = { readonly factors: Factors; readonly answer: readonly number[] };

const solveTight = (scaled: Scaled, tight: readonly number[]): Solved | null => {
  const rows = rowsOf(scaled, tight);
  const factors = factorsFor(scaled, rows);
  if (factors === null) return null;
  const right = rows.map((row) => scaled.right[row] ?? 0);
  return { factors, answer: solveWith(factors, right) };
};

/** How far each tie would have to stretch, in scaled metres: above 0 on a slack one is wrong. */
const overstretch = (
  scaled: Scaled,
  tight: readonly number[],
  answer: readonly number[],
): readonly number[] => {
  const { saddle, right, size } = scaled;
  const rows = rowsOf(scaled, tight);
  return scaled.ties.map((_, i) => {
    let stretch = right[i] ?? 0;
    for (let at = 0; at < rows.length; at++) {
      stretch -= (saddle[i * size + (rows[at] ?? 0)] ?? 0) * (answer[at] ?? 0);
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
export const holdTensionOnly = (scaled: Scaled, start: () => readonly number[]): Held | null =>
  byDropping(scaled) ?? byExchange(scaled, start());

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
      // With every tie tight there is no gap to look at.
      if (tight.length === scaled.ties.length) return heldBy(scaled, tight, solved);
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
  let tensions = Array<number>(count).fill(0);
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
      const reached = Array<number>(count).fill(0);
      for (const [row, i] of tight.entries()) reached[i] = Math.max(0, solved.answer[row] ?? 0);
      tensions = reached;
      tight = [...tight, next].toSorted((one, other) => one - other);
      continue;
    }
    const moved = Array<number>(count).fill(0);
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
  return (
    touching.length === 0 || factorsFor(scaled, rowsOf(scaled, [...tight, ...touching])) !== null
  );
};

const firstBlocked = (
  tight: readonly number[],
  tensions: readonly number[],
  answer: readonly number[],
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
  const tensions = Array<number>(ties.length).fill(0);
  for (const [row, i] of tight.entries()) {
    const share = answer[row] ?? 0;
    tensions[i] = Math.abs(share) < ROUNDING ? 0 : share * force;
  }
  const lines = bars.map((_, bar) => ({
    a: -(answer[tight.length + 2 * bar] ?? 0) * force * base,
    b: (-(answer[tight.length + 2 * bar + 1] ?? 0) * force * base) / length,
  }));
  return { scaled, tensions, tight, factors, answer, lines };
};

/** Ties that pull, or would at the least movement: those that are not slack with play. */
export const touchingOf = ({ scaled, tight, answer }: Held): readonly number[] => {
  const limit = ROUNDING * scaleOfGaps(scaled);
  return overstretch(scaled, tight, answer).flatMap((stretch, i) =>
    tight.includes(i) || stretch >= -limit ? [i] : [],
  );
};

export type Change = {
  /** m, of each tie. */
  readonly gaps: (tie: number) => number;
  /** N, and N·m about the middle, added to bar 0. */
  readonly force: number;
  readonly moment: number;
};

/**
 * Change of the first `count` tensions for a change of the right side. Holds while no tie changes
 * sides.
 */
export const changeOf = (
  { scaled, tight, factors }: Held,
  { gaps, force, moment }: Change,
  count: number,
): readonly number[] => {
  const { base, length } = scaled;
  const own: number[] = [];
  for (let row = 0; row < tight.length; row++) own.push(gaps(tight[row] ?? 0) / base);
  own.push(force, moment / length);
  while (own.length < factors.size) own.push(0);
  const answer = solveWith(factors, own);
  const all: number[] = [];
  let row = 0;
  for (let tie = 0; tie < count; tie++) {
    const isTight = tight[row] === tie;
    all.push(isTight ? (answer[row] ?? 0) : 0);
    if (isTight) row += 1;
  }
  return all;
};
