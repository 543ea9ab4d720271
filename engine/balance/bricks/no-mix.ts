/** Why a set has no mix at all, and the least that would have to change. */

import { spreaderCount } from '#house';
import { GRAVITY } from '#quantities';
import { type ClosestMixes, closestMixes } from './closest-mixes.ts';
import {
  type Change,
  causeNotFound,
  type Infeasible,
  type InfeasibleCode,
  type MoreHold,
  notFound,
} from './infeasible.ts';
import { missingLimits, missingPiece } from './missing-limit.ts';
import { holdWindow, massLimitLeft } from './mix-limits.ts';
import type { MixTask } from './mix-task.ts';
import { MASS_TIE, problemOf, ROD_TIE, type StackTask } from './problem.ts';

const REASONS: Readonly<Partial<Record<InfeasibleCode, string>>> = {
  stockTooSmall: 'The stock does not bring the set inside its holds.',
  rodTooShort: 'The rod does not take the bricks that bring the set inside its holds.',
  massLimitTooLow: 'The mass limit of the arbor does not leave the bricks that the holds need.',
  severalLimits: 'Several limits together keep the set outside its holds.',
};

/** The arbor with pipe weight and its plates alone, before any show brick. */
type Base = { readonly overRod: number; readonly overLimit: number; readonly plateMass: number };

const baseOf = (set: MixTask): Base => {
  const { spreader, baseThickness, stackHeight } = set;
  const plates =
    spreader === undefined ? 0 : spreaderCount(baseThickness, spreader.every, spreader.rule);
  const plateMass = plates * (spreader?.mass ?? 0);
  return {
    overRod: baseThickness + plates * (spreader?.thickness ?? 0) - stackHeight,
    overLimit: plateMass - massLimitLeft(set),
    plateMass,
  };
};

/** The middle of what the holds ask; one end where only one is bounded; 0 without holds. */
const middleOf = (from: number, to: number): number => {
  if (from === Number.NEGATIVE_INFINITY && to === Number.POSITIVE_INFINITY) return 0;
  if (from === Number.NEGATIVE_INFINITY) return to;
  return to === Number.POSITIVE_INFINITY ? from : (from + to) / 2;
};

const holdsBrokenBy = (set: MixTask, mass: number): readonly MoreHold[] => {
  const tieN = (GRAVITY * MASS_TIE) / set.purchase;
  return (set.holds ?? []).flatMap(({ heightM, baselineN, inN, outN }): MoreHold[] => {
    const left = baselineN - (GRAVITY * mass) / set.purchase;
    if (left > inN + tieN) return [{ heightM, direction: 'in', byN: left - inN }];
    if (left < -outN - tieN) return [{ heightM, direction: 'out', byN: -outN - left }];
    return [];
  });
};

/**
 * Stronger holds with which the set has a mix: those that the mix nearest to what all of them ask
 * still breaks. Where not even the pipe weight is allowed, that has to be mended with them.
 */
const strongerHolds = (set: MixTask, task: StackTask, base: Base): Change => {
  const { massFrom, massTo } = holdWindow(set);
  const nearest = closestMixes(
    problemOf({
      ...task,
      want: middleOf(massFrom, massTo),
      massFrom: Number.NEGATIVE_INFINITY,
      massTo: massLimitLeft(set),
    }),
    0,
  );
  const mix = nearest.best[0];
  if (mix !== undefined) {
    return { moreHold: holdsBrokenBy(set, mix.mass), proven: nearest.proven };
  }
  return {
    ...(base.overRod > 0 ? { moreRod: base.overRod } : {}),
    ...(base.overLimit > 0 ? { moreMassLimit: base.overLimit } : {}),
    moreHold: holdsBrokenBy(set, base.plateMass),
    proven: false,
  };
};

/** No bricks at all would do: the holds contradict each other, the base, or the bricks' sizes. */
const noLimitHelps = (set: MixTask, task: StackTask, base: Base, stronger: Change): Infeasible => {
  const { massFrom, massTo } = holdWindow(set);
  const weak = (reason: string): Infeasible => ({
    code: 'holdsTooWeak',
    reason,
    smallestChange: stronger,
    otherChanges: [],
  });
  if (massFrom > massTo + 2 * MASS_TIE) {
    return weak('No arbor mass lies inside all the holds: one asks for more, another for less.');
  }
  if (base.plateMass > massTo + MASS_TIE) {
    return weak('Without any show brick the set is already more arbor heavy than its holds.');
  }
  const piece = missingPiece({ ...task, massFrom, massTo });
  return {
    code: 'bricksTooCoarse',
    reason: 'The holds ask for a mass that no number of these bricks gives.',
    smallestChange: stronger,
    otherChanges: piece === undefined ? [] : [piece],
  };
};

const BASE_FAULTS = {
  baseTooHigh: 'The pipe weight alone is higher than the rod.',
  baseTooHeavy: 'Carriage and pipe weight alone pass the mass limit.',
} as const;

/** Why `mixForSet` found no mix for this set, from its search. */
export const noMixForSet = (set: MixTask, task: StackTask, closest: ClosestMixes): Infeasible => {
  if (!closest.proven) return notFound(closest.pairs);
  const base = baseOf(set);
  const stronger = strongerHolds(set, task, base);
  const missing = missingLimits({ ...task, ...holdWindow(set) }, massLimitLeft(set));
  const [first, ...others] = missing.fixes;
  if (first === undefined) {
    return missing.proven
      ? noLimitHelps(set, task, base, stronger)
      : causeNotFound(closest.pairs, stronger);
  }
  const hasHolds = (set.holds ?? []).length > 0;
  const otherChanges = [...others.map(({ change }) => change), ...(hasHolds ? [stronger] : [])];
  const answer = { smallestChange: first.change, otherChanges };
  if (first.code !== 'severalLimits') {
    const fault = base.overRod > ROD_TIE ? 'baseTooHigh' : 'baseTooHeavy';
    if (base.overRod > ROD_TIE || base.overLimit > MASS_TIE) {
      return { code: fault, reason: BASE_FAULTS[fault], ...answer };
    }
  }
  return { code: first.code, reason: REASONS[first.code] ?? '', ...answer };
};
