/** A printed table of beams on equal spans, held against the program row by row. */
import { asNumber, type Exact } from '../exact.ts';
import type { Comparison } from '../form.ts';
import { battenOf, partsOff, solved } from './asking.ts';
import {
  allLoaded,
  bentSpan,
  deepest,
  digitsOff,
  evenSpans,
  fractions,
  type Kind,
  SCALES,
  SPAN,
} from './even-spans.ts';
import { threeMoments } from './three-moments.ts';

export type Row = {
  readonly spans: number;
  /** Support moments and reactions as fractions, in order. */
  readonly moments: string;
  readonly reactions: string;
  /** Largest moment of each span, by symmetry to the middle one; and where, as a share of it. */
  readonly spanMoments: readonly (readonly [string, string])[];
  /** Largest deflection of each span, as printed, with where; and that in its middle. */
  readonly deflections: readonly (readonly [string, string | null])[];
  readonly middles: string;
};

const span = asNumber(SPAN);
const numbers = (list: string): readonly number[] =>
  list === '' ? [] : fractions(list).map((each: Exact) => asNumber(each));

/** Reactions, moments over supports and in spans, each as a part of w·L or P, w·L² or P·L. */
export const forcesOff = (kind: Kind, rows: readonly Row[]): readonly number[] =>
  rows.flatMap((row) => {
    const beam = evenSpans(allLoaded(row.spans), kind);
    const solution = solved(battenOf(beam));
    const { reaction, moment } = SCALES[kind];
    const oracle = threeMoments(beam);
    const overSupports = beam.supports.map((x) => solution.at(asNumber(x)).moment);
    // The table and the theorem must say the same before the program is held to either.
    const table = numbers(row.moments).map((each) => each * moment);
    const inSpans = row.spanMoments.flatMap(([value, share], i) => {
      const [at = NaN, wanted = NaN] = [...numbers(share), ...numbers(value)];
      return partsOff([solution.at((i + at) * span).moment], [wanted * moment], moment);
    });
    return [
      ...partsOff(table, oracle.moments, moment),
      ...partsOff(overSupports, table, moment),
      ...partsOff(
        solution.tensions,
        numbers(row.reactions).map((each) => each * reaction),
        reaction,
      ),
      ...inSpans,
    ];
  });

const bentOf = (kind: Kind, spans: number) => {
  const beam = evenSpans(allLoaded(spans), kind);
  const moments = threeMoments(beam).moments.map((each) => asNumber(each) / SCALES[kind].moment);
  return (i: number) =>
    bentSpan(kind, true, { left: moments[i] ?? NaN, right: moments[i + 1] ?? NaN });
};

/** Deflections in the middle and where they are largest, as parts of w·L⁴/EI or P·L³/EI. */
export const deflectionsOff = (kind: Kind, rows: readonly Row[]): readonly number[] =>
  rows.flatMap((row) => {
    const solution = solved(battenOf(evenSpans(allLoaded(row.spans), kind)));
    const scale = SCALES[kind].deflection;
    const bent = bentOf(kind, row.spans);
    const errors = numbers(row.middles).flatMap((wanted, i) =>
      partsOff([solution.at((i + 0.5) * span).deflection], [wanted * scale], scale),
    );
    const each = Array.from({ length: row.spans }, (_, i) => ({ i, ...deepest(bent(i)) }));
    const most = Math.max(...each.map(({ y }) => y));
    return [
      ...errors,
      ...each.flatMap(({ i, t, y }) =>
        partsOff([solution.at((i + t) * span).deflection], [y * scale], scale),
      ),
      Math.abs(solution.deflection.max.value / scale - most),
    ];
  });

/** Against the digits that the table prints, in units of the last. */
export const printedOff = (kind: Kind, rows: readonly Row[]): readonly number[] =>
  rows.flatMap(({ spans, deflections }) => {
    const solution = solved(battenOf(evenSpans(allLoaded(spans), kind)));
    const bent = bentOf(kind, spans);
    return deflections.flatMap(([value, share], i) => {
      const { t } = deepest(bent(i));
      const y = solution.at((i + t) * span).deflection / SCALES[kind].deflection;
      return [digitsOff(y, value), ...(share === null ? [] : [digitsOff(t, share)])];
    });
  });

export const deflectionComparison = (
  kind: Kind,
  rows: readonly Row[],
): Comparison & { readonly what: string } => ({
  what: 'deflections',
  unit: kind === 'even' ? 'of w·L⁴/EI' : 'of P·L³/EI',
  tolerance: 1e-9,
  run: () => deflectionsOff(kind, rows),
});

export const printedComparison = (
  kind: Kind,
  rows: readonly Row[],
): Comparison & { readonly what: string } => ({
  what: 'deflections as printed',
  unit: 'last digits printed',
  tolerance: 0.51,
  run: () => printedOff(kind, rows),
});
