import type { LineState, StructureState } from '#assessment';
import { measure } from '#findings';
import { acrossStage } from '../across-stage.ts';
import { lack } from '../known-values.ts';
import type { Lack, StructuredCase } from '../rule.ts';

/** One line in one state, its masses at their worst. */
export type LoadedLine = {
  readonly state: StructureState;
  readonly line: LineState;
  /** From stage right, the first is 1. */
  readonly number: number;
  /** Of the line itself, below its loft block; 0 where it is not known. */
  readonly wireN: number;
  /** 0 where a doubt is unsaid. */
  readonly toleranceN: number;
  readonly worstN: number;
};

/** Every line in every state, at its loft block. A batten that tips has none: PIP-001. */
export const loadedLines = ({ structure }: StructuredCase): readonly LoadedLine[] =>
  structure.states.flatMap((state) =>
    state.lines.map((line, index): LoadedLine => {
      const topN = line.top.known ? line.top.value : line.tension;
      const toleranceN = line.uncertainty ?? 0;
      return {
        state,
        line,
        number: index + 1,
        wireN: topN - line.tension,
        toleranceN,
        worstN: topN + toleranceN,
      };
    }),
  );

/** What the worst tension of a line lacks. */
export const lineLacks = ({ structure, set: { hung } }: StructuredCase): readonly Lack[] => {
  const needs = structure.states.flatMap(({ lines }) =>
    lines.flatMap(({ top }) => (top.known ? [] : top.needs)),
  );
  const isUnsaid = hung.known && hung.value.uncertainty === null;
  return [
    ...[...new Set(needs)].map((need) => lack(need, 'weight of the lines below their blocks')),
    ...(isUnsaid ? [lack('tolerance of a mass that hangs', 'tension of the lines')] : []),
  ];
};

export const lineFacts = ({ state, line, number }: LoadedLine) => ({
  line: measure(number, 'count'),
  ...acrossStage(line.x),
  state: state.name,
  height: measure(state.height, 'length'),
});

export const toleranceFact = ({ line }: LoadedLine) =>
  line.uncertainty === null ? 'not known' : measure(line.uncertainty, 'force');

/** How many other lines the same is true of in some state; `none` of none. */
export const otherLines = (all: readonly LoadedLine[], than: LoadedLine) => {
  const others = new Set(all.map(({ number }) => number));
  others.delete(than.number);
  return others.size === 0 ? 'none' : measure(others.size, 'count');
};
