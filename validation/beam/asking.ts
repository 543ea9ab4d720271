/** Textbook beams put to the program: forces become masses, fractions become numbers. */
import { type BattenAnswer, type BattenCase, type BattenSolution, solveBatten } from '#beam';
import { asNumber, type Exact } from '../exact.ts';
import type { ExactBeam } from './three-moments.ts';

export const GRAVITY = 9.80665;

/** N·m²: the pipe of check-values 4.6, NPS 1-1/2 schedule 40 of nominal wall. */
export const PIPE = { massPerLength: 0, secondMoment: 1.289867e-7, elasticModulus: 2e11 };
export const RIGIDITY = PIPE.secondMoment * PIPE.elasticModulus;

export const answered = (the: BattenCase): BattenAnswer => {
  const answer = solveBatten(the);
  if (!answer.ok) throw new Error(`refused: ${JSON.stringify(answer.error)}`);
  return answer.value;
};

export const solved = (the: BattenCase): BattenSolution => {
  const answer = answered(the);
  if ('unstable' in answer) throw new Error(`unstable: ${answer.unstable.reason}`);
  return answer;
};

/** The same beam as the program is asked it; lines may push, as the tables have it. */
export const battenOf = (beam: ExactBeam): BattenCase => {
  const { left, right, supports, softness = [], lowered = [], loads } = beam;
  return {
    pipe: PIPE,
    left: asNumber(left),
    right: asNumber(right),
    lines: supports.map((x, i) => ({
      x: asNumber(x),
      stiffness: stiffnessOf(softness[i]),
      trim: lowered[i] === undefined ? 0 : -asNumber(lowered[i]),
    })),
    loads: loads.map((load) =>
      'at' in load
        ? { x: asNumber(load.at), mass: asNumber(load.force) / GRAVITY }
        : {
            from: asNumber(load.from),
            to: asNumber(load.to),
            mass: (asNumber(load.perLength) * (asNumber(load.to) - asNumber(load.from))) / GRAVITY,
          },
    ),
    tensionOnly: false,
  };
};

const stiffnessOf = (softness: Exact | undefined): number | null =>
  softness === undefined || softness.top === 0n ? null : 1 / asNumber(softness);

/** Differences against exact values, each as a part of `scale`. */
export const partsOff = (
  found: readonly number[],
  wanted: readonly (Exact | number)[],
  scale: number,
): readonly number[] => {
  if (found.length !== wanted.length) return [Number.NaN];
  return wanted.map((each, i) => {
    const value = typeof each === 'number' ? each : asNumber(each);
    return Math.abs((found[i] ?? Number.NaN) - value) / scale;
  });
};
