/** The heaviest load that may still be added at one place. */
import { fail, ok, type Refusal, type Result } from '#outcome';
import { GRAVITY } from '#quantities';
import { refuse } from './refusal-codes.ts';
import { solveBatten } from './solve-batten.ts';
import { allowableMoment } from './strength.ts';
import type { BattenAnswer, BattenCase, BattenSolution } from './types.ts';

/** Limits that a search holds; one that is absent is not held, and the answer says which are. */
export type BattenLimits = {
  /** N, of each line at the batten. */
  readonly line?: number;
  /** Share of the allowable moment, 1 for all of it. */
  readonly utilisation?: number;
  /** kg on the whole batten besides itself. */
  readonly liveMass?: number;
};

export type Heaviest = {
  /** kg. */
  readonly mass: number;
  /** `nothing`: even the heaviest that is tried breaks no limit that was given. */
  readonly stoppedBy: 'line' | 'bending' | 'liveMass' | 'tipping' | 'nothing';
  /** Which line, where one stops it. */
  readonly line: number | null;
};

/** Nobody hangs fifty tonnes; a search that gets there met no limit. */
const MOST_KG = 50_000;
const COARSE_STEPS = 64;
/** A gram is far below what anybody weighs. */
const FINE_KG = 1e-3;

/**
 * The heaviest mass m at x for which every limit still holds. Adding a load never makes the total
 * less, but it can take load off a line before it puts some on, so the first mass that breaks a
 * limit is looked for from nothing upward, and then halved down to a gram.
 *
 * Source  search on `solveBatten`: between two changes of which lines are tight, tensions and
 *         moments go straight with m, so a limit passed and met again within one of the 64 coarse
 *         steps of the range would be a change of lines twice within it
 * Holds   the batten as it is breaks no limit; else the mass is 0 and what stops it is named
 * Check   VAL-BEM-11
 */
export const heaviestAt = (
  the: BattenCase,
  x: number,
  limits: BattenLimits,
): Result<Heaviest, readonly Refusal[]> => {
  const faults = limitFaults(limits);
  if (faults.length > 0) return fail(faults);
  const with0 = solveBatten({ ...the, loads: [...the.loads, { x, mass: 0 }] });
  if (!with0.ok) return with0;
  if (limits.utilisation !== undefined && allowableMoment(the.pipe) === null) {
    return fail([
      refuse('notSought', 'limits.utilisation', {
        found: 'a pipe without yield strength and section modulus',
        accepted: 'a pipe of which both are given, so that bending can be held to a limit',
      }),
    ]);
  }
  const breaks = (mass: number): Stop | null => stopAt(the, { x, mass }, limits);
  const at0 = breaks(0);
  if (at0 !== null) return ok({ mass: 0, ...at0 });
  return ok(between(breaks, reachOf(the, limits)));
};

const limitFaults = (limits: BattenLimits): readonly Refusal[] => {
  const given = Object.entries(limits).filter(([, limit]) => limit !== undefined);
  if (given.length === 0) {
    return [refuse('notSought', 'limits', { found: 'none', accepted: 'one limit, or more' })];
  }
  return given
    .filter(([, limit]) => !(limit >= 0))
    .map(([name, limit]) =>
      refuse('notSought', `limits.${name}`, { found: String(limit), accepted: '0 or more' }),
    );
};

type Stop = Pick<Heaviest, 'stoppedBy' | 'line'>;

/** A load that surely breaks a limit: what all lines or the live limit take, and some more. */
const reachOf = (
  { lines, supports = [] }: BattenCase,
  { line, liveMass }: BattenLimits,
): number => {
  // A stand may take any load off the lines.
  const isHung = line !== undefined && supports.length === 0;
  return Math.min(
    MOST_KG,
    isHung ? (1.01 * line * lines.length) / GRAVITY + 1 : MOST_KG,
    liveMass === undefined ? MOST_KG : 1.01 * liveMass + 1,
  );
};

const between = (breaks: (mass: number) => Stop | null, reachKg: number): Heaviest => {
  let lowKg = 0;
  let high: { readonly kg: number; readonly stop: Stop } | null = null;
  for (let step = 1; step <= COARSE_STEPS && high === null; step++) {
    const kg = (reachKg * step) / COARSE_STEPS;
    const stop = breaks(kg);
    if (stop === null) lowKg = kg;
    else high = { kg, stop };
  }
  if (high === null) return { mass: reachKg, stoppedBy: 'nothing', line: null };
  while (high.kg - lowKg > FINE_KG) {
    const kg: number = (lowKg + high.kg) / 2;
    const stop = breaks(kg);
    if (stop === null) lowKg = kg;
    else high = { kg, stop };
  }
  return { mass: lowKg, ...high.stop };
};

const stopAt = (
  the: BattenCase,
  load: { readonly x: number; readonly mass: number },
  limits: BattenLimits,
): Stop | null => {
  const loads = [...the.loads, load];
  const { liveMass } = limits;
  const hungKg = loads.reduce((sum, { mass }) => sum + mass, 0);
  if (liveMass !== undefined && hungKg > liveMass) return { stoppedBy: 'liveMass', line: null };
  const solved = solveBatten({ ...the, loads });
  if (!solved.ok) throw new Error('defect: a batten was taken before and is not now');
  return stopOf(solved.value, limits);
};

const stopOf = (answer: BattenAnswer, limits: BattenLimits): Stop | null => {
  if ('unstable' in answer) {
    // Nothing yet hangs from a pipe without weight: that is no reason to hang nothing.
    return answer.unstable.code === 'noLoad' ? null : { stoppedBy: 'tipping', line: null };
  }
  const line = overLine(answer, limits.line);
  if (line !== null) return { stoppedBy: 'line', line };
  const used = answer.utilisation?.value ?? 0;
  return limits.utilisation !== undefined && used > limits.utilisation
    ? { stoppedBy: 'bending', line: null }
    : null;
};

const overLine = ({ tensions }: BattenSolution, limit: number | undefined): number | null => {
  if (limit === undefined) return null;
  const found = tensions.findIndex((each) => each > limit);
  return found === -1 ? null : found;
};
