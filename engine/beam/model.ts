/** A batten as bars and ties: what bends, and what holds it. */
import { type Bar, barOf } from './bars.ts';
import { type Held, holdAll, holdTensionOnly, scaledTies, type Tie } from './ties.ts';
import type { BattenCase } from './types.ts';

export type Model = {
  /** The batten, then each piece. */
  readonly bars: readonly Bar[];
  /** Lift lines, then supports, then picks piece by piece. */
  readonly ties: readonly Tie[];
};

const complianceOf = (stiffness: number | null): number => (stiffness === null ? 0 : 1 / stiffness);

export const modelOf = (the: BattenCase): Model => {
  const { pipe, left, right, loads, lines, supports = [], pieces = [] } = the;
  const own = { from: left, to: right, mass: pipe.massPerLength * (right - left) };
  const bars = [barOf([own, ...loads], 1 / (pipe.elasticModulus * pipe.secondMoment))];
  const ties: Tie[] = [];
  const hangsOn = null;
  for (const { x, stiffness, trim = 0 } of lines) {
    ties.push({ lifts: { bar: 0, x }, hangsOn, compliance: complianceOf(stiffness), trim });
  }
  for (const { x, stiffness, height: trim } of supports) {
    ties.push({ lifts: { bar: 0, x }, hangsOn, compliance: complianceOf(stiffness), trim });
  }
  for (const { bendingStiffness, loads: own, picks } of pieces) {
    const bar = bars.push(barOf(own, complianceOf(bendingStiffness))) - 1;
    for (const { x, stiffness, trim = 0 } of picks) {
      const compliance = complianceOf(stiffness);
      ties.push({ lifts: { bar, x }, hangsOn: { bar: 0, x }, compliance, trim });
    }
  }
  return { bars, ties };
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

export const hold = (the: BattenCase, model: Model): Held | null => {
  const scaled = scaledTies(model.bars, model.ties, the);
  return the.tensionOnly === false
    ? holdAll(scaled)
    : holdTensionOnly(scaled, () => startOf(model));
};
