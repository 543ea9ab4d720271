/**
 * A continuous beam by Clapeyron's theorem of three moments in exact fractions, with overhangs,
 * supports that give and supports out of level. It shares nothing with the program: the unknowns
 * are the moments over the supports, and the forces follow span by span.
 *
 *     M_a·L + 2·M_b·(L + L') + M_c·L'  =  − loads of both spans
 *                                        + 6·E·I·((δ_b − δ_a)/L + (δ_b − δ_c)/L')
 *
 *     δ  m, down; of a support that gives R·c, less how short it is
 *
 * From memory, any text on the theory of structures; tabled by the Handbook of Civil Engineering
 * Calculations, "Theorem of three moments".
 */
import { type Exact, exact, minus, over, plus, times } from '../exact.ts';

export type ExactLoad =
  | { readonly at: Exact; readonly force: Exact }
  /** Along a whole span, or along a whole overhang. */
  | { readonly from: Exact; readonly to: Exact; readonly perLength: Exact };

export type ExactBeam = {
  readonly left: Exact;
  readonly right: Exact;
  readonly supports: readonly Exact[];
  /** Absent: it matters to nothing, with level supports that do not give. */
  readonly rigidity?: Exact;
  /** Length for each force, by support; absent: none gives. */
  readonly softness?: readonly Exact[];
  /** How far each support is below the first true level; absent: none. */
  readonly lowered?: readonly Exact[];
  readonly loads: readonly ExactLoad[];
};

export type ExactAnswer = {
  readonly reactions: readonly Exact[];
  readonly moments: readonly Exact[];
};

const NONE = exact('0');
const TWO = exact('2');
const SIX = exact('6');
const negative = (a: Exact): Exact => minus(NONE, a);
const isLess = (a: Exact, b: Exact): boolean => minus(b, a).top > 0n;
const square = (a: Exact): Exact => times(a, a);
const cube = (a: Exact): Exact => times(a, a, a);

/** A number that depends on the moments over the supports: constant and one factor for each. */
type Form = readonly Exact[];

const formOf = (size: number): Exact[] => Array.from({ length: size + 1 }, () => NONE);

const combine = (size: number, parts: readonly (readonly [Exact, Form])[]): Form =>
  formOf(size).map((_, i) =>
    plus(NONE, ...parts.map(([factor, form]) => times(factor, form[i] ?? NONE))),
  );

type Span = { readonly from: Exact; readonly to: Exact; readonly length: Exact };

const spansOf = ({ supports }: ExactBeam): readonly Span[] =>
  supports.slice(1).map((to, i) => {
    const from = supports[i] ?? NONE;
    return { from, to, length: minus(to, from) };
  });

const within = (
  load: ExactLoad,
  { from, to }: { readonly from: Exact; readonly to: Exact },
): boolean =>
  'at' in load
    ? isLess(from, load.at) && isLess(load.at, to)
    : !isLess(load.from, from) && !isLess(to, load.to);

/** What the loads of a span put on its ends if it rested freely, and their two load terms. */
const spanLoads = (span: Span, loads: readonly ExactLoad[]) => {
  let [left, right, termLeft, termRight] = [NONE, NONE, NONE, NONE];
  for (const load of loads) {
    if (!within(load, span)) continue;
    if ('at' in load) {
      const a = minus(load.at, span.from);
      const b = minus(span.to, load.at);
      left = plus(left, over(times(load.force, b), span.length));
      right = plus(right, over(times(load.force, a), span.length));
      const lengths = square(span.length);
      termRight = plus(
        termRight,
        over(times(load.force, a, minus(lengths, square(a))), span.length),
      );
      termLeft = plus(termLeft, over(times(load.force, b, minus(lengths, square(b))), span.length));
    } else {
      const half = over(times(load.perLength, span.length), TWO);
      const quarter = over(times(load.perLength, cube(span.length)), exact('4'));
      [left, right] = [plus(left, half), plus(right, half)];
      [termLeft, termRight] = [plus(termLeft, quarter), plus(termRight, quarter)];
    }
  }
  return { left, right, termLeft, termRight };
};

/** Force on a support from the overhang beside it, and the moment there, sagging positive. */
const overhang = (beam: ExactBeam, support: Exact, side: 'left' | 'right') => {
  let [force, moment] = [NONE, NONE];
  const hang =
    side === 'left' ? { from: beam.left, to: support } : { from: support, to: beam.right };
  for (const load of beam.loads) {
    if ('at' in load) {
      const isThere = side === 'left' ? isLess(load.at, support) : isLess(support, load.at);
      // A load on a support itself is no span's: it is counted with the overhang on the left.
      const isOn = !isLess(load.at, support) && !isLess(support, load.at);
      if (isOn && side === 'left') force = plus(force, load.force);
      if (!isThere || isOn) continue;
      const arm = side === 'left' ? minus(support, load.at) : minus(load.at, support);
      force = plus(force, load.force);
      moment = minus(moment, times(load.force, arm));
    } else if (within(load, hang)) {
      const length = minus(load.to, load.from);
      const middle = over(plus(load.from, load.to), TWO);
      const arm = side === 'left' ? minus(support, middle) : minus(middle, support);
      const whole = times(load.perLength, length);
      force = plus(force, whole);
      moment = minus(moment, times(whole, arm));
    }
  }
  return { force, moment };
};

export const threeMoments = (beam: ExactBeam): ExactAnswer => {
  const { supports, loads, rigidity = NONE, softness = [], lowered = [] } = beam;
  const size = supports.length;
  const spans = spansOf(beam);
  const own = spans.map((span) => spanLoads(span, loads));
  const [first = NONE] = supports;
  const ends = [overhang(beam, first, 'left'), overhang(beam, supports.at(-1) ?? NONE, 'right')];
  const only = (i: number): Form => formOf(size).map((_, j) => (j === i + 1 ? exact('1') : NONE));
  const constant = (value: Exact): Form => formOf(size).map((_, j) => (j === 0 ? value : NONE));
  const reactions = supports.map((_, i): Form => {
    const parts: (readonly [Exact, Form])[] = [];
    const add = (factor: Exact, form: Form): void => void parts.push([factor, form]);
    const [before, after] = [spans[i - 1], spans[i]];
    const one = exact('1');
    add(one, constant(plus(own[i - 1]?.right ?? NONE, own[i]?.left ?? NONE)));
    if (i === 0) add(one, constant(ends[0]?.force ?? NONE));
    if (i === size - 1) add(one, constant(ends[1]?.force ?? NONE));
    for (const [span, far] of [
      [before, i - 1],
      [after, i + 1],
    ] as const) {
      if (span === undefined) continue;
      add(over(one, span.length), only(far));
      add(negative(over(one, span.length)), only(i));
    }
    return combine(size, parts);
  });
  const drops = reactions.map((reaction, i) =>
    combine(size, [
      [softness[i] ?? NONE, reaction],
      [exact('1'), constant(lowered[i] ?? NONE)],
    ]),
  );
  const rows = supports.map((_, i): Form => {
    const [before, after] = [spans[i - 1], spans[i]];
    if (before === undefined || after === undefined) {
      const end = i === 0 ? ends[0] : ends[1];
      return combine(size, [
        [exact('1'), only(i)],
        [exact('-1'), constant(end?.moment ?? NONE)],
      ]);
    }
    const bend = times(SIX, rigidity);
    const here = drops[i] ?? formOf(size);
    return combine(size, [
      [before.length, only(i - 1)],
      [times(TWO, plus(before.length, after.length)), only(i)],
      [after.length, only(i + 1)],
      [exact('1'), constant(plus(own[i - 1]?.termRight ?? NONE, own[i]?.termLeft ?? NONE))],
      [negative(over(bend, before.length)), here],
      [over(bend, before.length), drops[i - 1] ?? formOf(size)],
      [negative(over(bend, after.length)), here],
      [over(bend, after.length), drops[i + 1] ?? formOf(size)],
    ]);
  });
  const moments = eliminated(rows, size);
  const value = (form: Form): Exact =>
    plus(form[0] ?? NONE, ...moments.map((moment, i) => times(form[i + 1] ?? NONE, moment)));
  return { moments, reactions: reactions.map(value) };
};

/** Solves form = 0 for all rows, without rounding. */
const eliminated = (rows: readonly Form[], size: number): readonly Exact[] => {
  const work = rows.map((row) => [...row]);
  for (let column = 1; column <= size; column++) {
    const at = work.findIndex((row, i) => i >= column - 1 && (row[column]?.top ?? 0n) !== 0n);
    const pivot = work[at];
    if (pivot === undefined) throw new Error('the supports do not hold the beam');
    work[at] = work[column - 1] ?? [];
    const scaled = pivot.map((each) => over(each, pivot[column] ?? NONE));
    work[column - 1] = scaled;
    for (const [i, row] of work.entries()) {
      const factor = row[column] ?? NONE;
      if (i === column - 1 || factor.top === 0n) continue;
      work[i] = row.map((each, j) => minus(each, times(factor, scaled[j] ?? NONE)));
    }
  }
  return work.map((row) => negative(row[0] ?? NONE));
};
