/** What mass limit and holds leave for bricks and plates, in kg on the arbor. */
import { GRAVITY } from '#quantities';
import type { MixHold, MixTask } from './mix-task.ts';

export type MassWindow = { readonly massFrom: number; readonly massTo: number };

/** kg of bricks and plates that the arbor's rating leaves; infinite where there is none. */
export const massLimitLeft = ({ massLimit, baseMass }: MixTask): number =>
  massLimit === undefined ? Number.POSITIVE_INFINITY : massLimit - baseMass;

/** The masses at which U lies inside every hold: (U − in)·r/g to (U + out)·r/g, all together. */
export const holdWindow = ({ holds = [], purchase }: MixTask): MassWindow => {
  const massOf = (weightN: number): number => (weightN * purchase) / GRAVITY;
  const { NEGATIVE_INFINITY, POSITIVE_INFINITY } = Number;
  return {
    massFrom: holds.reduce(
      (most, { baselineN, inN }: MixHold) => Math.max(most, massOf(baselineN - inN)),
      NEGATIVE_INFINITY,
    ),
    massTo: holds.reduce(
      (least, { baselineN, outN }: MixHold) => Math.min(least, massOf(baselineN + outN)),
      POSITIVE_INFINITY,
    ),
  };
};

export const massWindow = (set: MixTask): MassWindow => {
  const { massFrom, massTo } = holdWindow(set);
  return { massFrom, massTo: Math.min(massTo, massLimitLeft(set)) };
};
