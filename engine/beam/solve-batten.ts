/** A batten on its lines: the whole answer, or the reason why there is none. */
import { fail, ok, type Refusal, type Result } from '#outcome';
import { type Bar, barOf, cubed, resultantOf } from './bars.ts';
import { battenFaults } from './batten-faults.ts';
import {
  bentBatten,
  deflectionExtremes,
  extremesOf,
  momentsOf,
  sagBetween,
  shearExtremes,
  stationAt,
} from './segments.ts';
import { allowableMoment, utilisationOf } from './strength.ts';
import { changeOf, type Held, holdAll, holdTensionOnly, scaledTies, type Tie } from './ties.ts';
import type { BattenAnswer, BattenCase, BattenSolution, Shared, Unstable } from './types.ts';

/**
 * Tensions of the lift lines of a batten, and how it bends.
 *
 *     E·I·y'''' = q      y(x_i) + trim_i = T_i / k_i  where tight,  ≤ 0 where slack (T_i = 0)
 *     Σ T = Σ m·g        Σ T·x = Σ m·g·x
 *
 *     y  m, down from the level of unstretched true lines     T  N     trim  m, a short line lifts
 *
 * Source  Euler-Bernoulli beam; tension-only lines as least energy with T ≥ 0, worked in
 *         docs/derivations/batten-on-lines.md; check-values sections 4.1 to 4.9
 * Holds   small bending; lines upright; the arbor end of all lines level and still
 * Omits   shear bending of the pipe and the sway of the lines (both far below a line's stretch);
 *         twist where a load hangs up or down stage of the pipe, which bends nothing here
 * Check   VAL-BEM-01 to VAL-BEM-12
 *
 * Refuses (BEM codes) what is no batten. A batten that would move is no refusal: it is `unstable`,
 * with its reason and without a number.
 */
export const solveBatten = (the: BattenCase): Result<BattenAnswer, readonly Refusal[]> => {
  const faults = battenFaults(the);
  return faults.length > 0 ? fail(faults) : ok(reckoned(the));
};

type Model = {
  readonly bars: readonly Bar[];
  /** Lift lines, then supports, then picks piece by piece. */
  readonly ties: readonly Tie[];
};

const complianceOf = (stiffness: number | null): number => (stiffness === null ? 0 : 1 / stiffness);

const modelOf = (the: BattenCase): Model => {
  const { pipe, left, right, loads, lines, supports = [], pieces = [] } = the;
  const own = { from: left, to: right, mass: pipe.massPerLength * (right - left) };
  const flexibility = 1 / (pipe.elasticModulus * pipe.secondMoment);
  const ties = [
    ...lines.map(({ x, stiffness, trim = 0 }) => ({ x, stiffness, trim })),
    ...supports.map(({ x, stiffness, height }) => ({ x, stiffness, trim: height })),
  ].map(
    ({ x, stiffness, trim }): Tie => ({
      lifts: { bar: 0, x },
      hangsOn: null,
      compliance: complianceOf(stiffness),
      trim,
    }),
  );
  const picks = pieces.flatMap((piece, index) =>
    piece.picks.map(
      ({ x, stiffness, trim = 0 }): Tie => ({
        lifts: { bar: index + 1, x },
        hangsOn: { bar: 0, x },
        compliance: complianceOf(stiffness),
        trim,
      }),
    ),
  );
  return {
    bars: [
      barOf([own, ...loads], flexibility),
      ...pieces.map((piece) =>
        barOf(piece.loads, piece.bendingStiffness === null ? 0 : 1 / piece.bendingStiffness),
      ),
    ],
    ties: [...ties, ...picks],
  };
};

const reckoned = (the: BattenCase): BattenAnswer => {
  const model = modelOf(the);
  const unstable = whyUnstable(the, model);
  if (unstable !== null) return { unstable };
  const held = hold(the, model);
  if (held === null) {
    return {
      unstable: {
        code: 'notDetermined',
        reason:
          'Lines, supports and picks that do not stretch share the load in more ways than one. ' +
          'Give some of them a stiffness.',
      },
    };
  }
  return solutionOf(the, held, model);
};

/** The outermost two ties of each bar carry it whatever else is slack: where a search sets out. */
const startOf = ({ bars, ties }: Model): readonly number[] =>
  bars
    .flatMap((_, bar) => {
      const own = ties
        .map((tie, index) => ({ index, x: tie.lifts.x, isOwn: tie.lifts.bar === bar }))
        .filter(({ isOwn }) => isOwn)
        .toSorted((one, other) => one.x - other.x);
      return [own[0]?.index, own.at(-1)?.index].filter((index) => index !== undefined);
    })
    .toSorted((one, other) => one - other);

const hold = (the: BattenCase, model: Model): Held | null => {
  const scaled = scaledTies(model.bars, model.ties, the);
  return the.tensionOnly === false ? holdAll(scaled) : holdTensionOnly(scaled, startOf(model));
};

/** Resultants nearer to a line than this share of the batten's length are on it. */
const ON_THE_LINE = 1e-9;

const whyUnstable = (the: BattenCase, { bars, ties }: Model): Unstable | null => {
  const origin = (the.left + the.right) / 2;
  const sums = bars.map((bar) => resultantOf(bar, origin));
  const forceN = sums.reduce((sum, each) => sum + each.forceN, 0);
  if (!(forceN > 0)) {
    return { code: 'noLoad', reason: 'Nothing weighs on the lines, so nothing keeps them tight.' };
  }
  const xs = ties.filter(({ lifts }) => lifts.bar === 0).map(({ lifts }) => lifts.x);
  const [least, most] = [Math.min(...xs), Math.max(...xs)];
  if (xs.length < 2 || !(most > least)) {
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

const written = (metres: number): string => String(Math.round(metres * 1000) / 1000);

const isSlack = (held: Held, index: number): boolean =>
  !held.tight.includes(index) && (held.tensions[index] ?? 0) === 0;

const sharedBy = (the: BattenCase, held: Held): Shared => ({
  tensions: the.lines.map((_, index) => held.tensions[index] ?? 0),
  slack: the.lines.map((_, index) => isSlack(held, index)),
});

/** The same batten with lines that do not stretch; null where that is not one answer. */
const rigidOf = (the: BattenCase): Shared | null => {
  const rigid = { ...the, lines: the.lines.map((line) => ({ ...line, stiffness: null })) };
  const held = hold(rigid, modelOf(rigid));
  return held === null ? null : sharedBy(rigid, held);
};

const solutionOf = (the: BattenCase, held: Held, { bars, ties }: Model): BattenSolution => {
  const [bar] = bars;
  const line = held.lines[0];
  if (bar === undefined || line === undefined) throw new Error('defect: no batten');
  const { origin } = held.scaled;
  const bent = bentBatten(underAll(bar, ties, held), the, { ...line, origin });
  const moments = momentsOf(bent);
  const moment = extremesOf(moments);
  const largestNm = Math.max(moment.max.value, -moment.min.value);
  const { sectionModulus } = the.pipe;
  const allowable = allowableMoment(the.pipe);
  const atSplices = (the.splices ?? []).map((splice) => ({
    ...splice,
    moment: stationAt(bent, splice.x).moment,
  }));
  const shared = sharedBy(the, held);
  assertBalance(the, held, bars);
  return {
    ...shared,
    supports: (the.supports ?? []).map((_, index) => held.tensions[the.lines.length + index] ?? 0),
    picks: picksOf(the, held),
    moment,
    shear: shearExtremes(bent),
    deflection: {
      ...deflectionExtremes(bent),
      atLines: the.lines.map(({ x }) => stationAt(bent, x).deflection),
    },
    sag: largestSag(the, shared, (from, to) => sagBetween(bent, from, to)),
    stress: sectionModulus === undefined ? null : largestNm / sectionModulus,
    allowable,
    utilisation: utilisationOf(allowable, moments, atSplices),
    rigid: () => rigidOf(the),
    sensitivity: () => the.lines.map((_, row) => trimChange(the, held, row)),
    at: (x) => stationAt(bent, x),
    influence: (x) => influenceAt(the, held, x),
  };
};

/** The batten's own loads, its lines and supports as forces upward, and picks downward. */
const underAll = (bar: Bar, ties: readonly Tie[], held: Held): Bar => {
  const pointXs = [...bar.pointXs];
  const pointForces = [...bar.pointForces];
  for (const [index, { lifts, hangsOn }] of ties.entries()) {
    const tensionN = held.tensions[index] ?? 0;
    // A tie that only just touches carries nothing, and still is a place to measure from.
    if (tensionN === 0 && !held.tight.includes(index)) continue;
    if (lifts.bar === 0) {
      pointXs.push(lifts.x);
      pointForces.push(-tensionN);
    } else if (hangsOn !== null) {
      pointXs.push(hangsOn.x);
      pointForces.push(tensionN);
    }
  }
  return { ...bar, pointXs, pointForces };
};

const picksOf = (the: BattenCase, held: Held): readonly (readonly number[])[] => {
  let next = the.lines.length + (the.supports ?? []).length;
  return (the.pieces ?? []).map(({ picks }) =>
    picks.map(() => {
      next += 1;
      return held.tensions[next - 1] ?? 0;
    }),
  );
};

/** What nobody may see: forces that do not add up to the loads, or numbers that are none. */
const assertBalance = (the: BattenCase, held: Held, bars: readonly Bar[]): void => {
  const origin = (the.left + the.right) / 2;
  const loadN = bars.reduce((sum, bar) => sum + resultantOf(bar, origin).forceN, 0);
  const lifting = the.lines.length + (the.supports ?? []).length;
  const heldN = held.tensions.subarray(0, lifting).reduce((sum, each) => sum + each, 0);
  const largestN = held.tensions.reduce((most, each) => Math.max(most, Math.abs(each)), loadN);
  // A hundred roundings of numbers of the size of the largest force, and no more.
  if (!(Math.abs(heldN - loadN) <= 1e-8 * largestN)) {
    throw new Error(`defect: lines carry ${heldN} N of ${loadN} N`);
  }
};

const largestSag = (
  { lines }: BattenCase,
  { slack }: Shared,
  sag: (from: number, to: number) => { readonly x: number; readonly value: number },
): BattenSolution['sag'] => {
  const xs = lines
    .filter((_, index) => slack[index] === false)
    .map(({ x }) => x)
    .toSorted((one, other) => one - other);
  let worst: BattenSolution['sag'] = null;
  for (let index = 0; index + 1 < xs.length; index++) {
    const [from, to] = [xs[index] ?? 0, xs[index + 1] ?? 0];
    const each = { ...sag(from, to), span: to - from };
    if (worst === null || each.value / each.span > worst.value / worst.span) worst = each;
  }
  return worst;
};

const trimChange = (the: BattenCase, held: Held, row: number): readonly number[] => {
  if (!held.tight.includes(row)) return the.lines.map(() => 0);
  const gaps = (tie: number): number => (tie === row ? 1 : 0);
  return [...changeOf(held, { gaps, force: 0, moment: 0 }).subarray(0, the.lines.length)];
};

const influenceAt = (the: BattenCase, held: Held, x: number): readonly number[] => {
  const { bars, ties, origin } = held.scaled;
  const flexibility = bars[0]?.flexibility ?? 0;
  const gaps = (tie: number): number => {
    const { lifts, hangsOn } = ties[tie] ?? {};
    const sign = lifts?.bar === 0 ? 1 : -1;
    const at = lifts?.bar === 0 ? lifts.x : (hangsOn?.x ?? 0);
    return sign * flexibility * cubed(at - x);
  };
  const change = changeOf(held, { gaps, force: 1, moment: x - origin });
  return [...change.subarray(0, the.lines.length)];
};
