import { ok, type Refusal, type Result } from '#outcome';
import { solveBatten } from './solve-batten.ts';
import type { BattenCase, BattenSolution, Extremes, Shared, Station, Unstable } from './types.ts';

/** Stations for a drawing: so many even steps along the batten, and every line. */
const STEPS = 100;

export type BattenReply =
  | { readonly unstable: Unstable }
  | (Shared & {
      readonly moment: Extremes;
      readonly shear: Extremes;
      readonly deflection: Extremes & { readonly atLines: readonly number[] };
      readonly sag: BattenSolution['sag'];
      readonly stress?: number;
      readonly utilisation?: number;
      readonly allowable?: NonNullable<BattenSolution['allowable']>;
      readonly utilisationAt?: Omit<NonNullable<BattenSolution['utilisation']>, 'value'>;
      readonly supports?: readonly number[];
      readonly picks?: readonly (readonly number[])[];
      readonly rigid: Shared | null;
      readonly sensitivity: readonly (readonly number[])[];
      readonly stations: readonly Station[];
    });

/**
 * A batten on its lines as plain data, with stations along it for drawing. The same numbers as
 * `solveBatten`, which has the model and its sources; what was not asked for is left out.
 */
export const answerBatten = (the: BattenCase): Result<BattenReply, readonly Refusal[]> => {
  const solved = solveBatten(the);
  if (!solved.ok) return solved;
  return ok('unstable' in solved.value ? solved.value : replyOf(the, solved.value));
};

const replyOf = (the: BattenCase, solution: BattenSolution): BattenReply => {
  const { stress, allowable, utilisation, supports, picks, at } = solution;
  return {
    tensions: solution.tensions,
    slack: solution.slack,
    moment: solution.moment,
    shear: solution.shear,
    deflection: solution.deflection,
    sag: solution.sag,
    ...(stress === null ? {} : { stress }),
    ...(allowable === null ? {} : { allowable }),
    ...(utilisation === null ? {} : usedOf(utilisation)),
    ...(the.supports === undefined ? {} : { supports }),
    ...(the.pieces === undefined ? {} : { picks }),
    rigid: solution.rigid(),
    sensitivity: solution.sensitivity(),
    stations: stationXs(the).map(at),
  };
};

const usedOf = ({ value, ...at }: NonNullable<BattenSolution['utilisation']>) => ({
  utilisation: value,
  utilisationAt: at,
});

const stationXs = ({ left, right, lines }: BattenCase): readonly number[] => {
  const even = Array.from(
    { length: STEPS + 1 },
    (_, step) => left + ((right - left) * step) / STEPS,
  );
  return [...new Set([...even, ...lines.map(({ x }) => x)])].toSorted((one, other) => one - other);
};
