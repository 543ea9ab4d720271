import { type Measure, measure, type Term, type Working } from '#findings';
import type { SetCase } from '../rule.ts';
import { term, workedOut } from '../show-working.ts';

/** The mass of one arbor, as planned or as recorded, with its tolerance at its worst (C86). */
export type ArborMass = {
  readonly stack: 'planned' | 'recorded';
  readonly worstKg: number;
  readonly toleranceKg: number;
  readonly terms: readonly Term[];
};

/**
 * What an arbor has on it. A tolerance that nobody has given is missed with the plan; here it
 * adds nothing. The recorded stack has no tolerance of its own and takes that of the plan's
 * bricks where there is a plan.
 */
export const arborMasses = ({ set: { plan, recorded } }: SetCase): readonly ArborMass[] => {
  const found: ArborMass[] = [];
  let toleranceKg = 0;
  if (plan.known) {
    const { set, stack } = plan.value;
    toleranceKg = (set.carriageUncertainty ?? 0) + (set.brickUncertainty ?? 0);
    found.push({
      stack: 'planned',
      worstKg: stack.arborMass + toleranceKg,
      toleranceKg,
      terms: [
        term('A', 'arbor without bricks', set.carriage, 'mass'),
        term('p', 'pipe weight', stack.pipeMass, 'mass'),
        term('b', 'show bricks', stack.showMass, 'mass'),
        term(
          's',
          'spreader plates not counted in A',
          Math.max(0, stack.arborMass - set.carriage - stack.pipeMass - stack.showMass),
          'mass',
        ),
        term('t', 'tolerance, all at its worst', toleranceKg, 'mass'),
      ],
    });
  }
  if (recorded.arborMass.known) {
    found.push({
      stack: 'recorded',
      worstKg: recorded.arborMass.value + toleranceKg,
      toleranceKg,
      terms: [
        term('A', 'arbor with all on it', recorded.arborMass.value, 'mass'),
        term('t', 'tolerance, all at its worst', toleranceKg, 'mass'),
      ],
    });
  }
  return found;
};

export const arborWorking = (
  { terms, worstKg }: ArborMass,
  limit: { readonly value: Measure; readonly source: string },
): Working =>
  workedOut(
    'mass of the arbor',
    terms.map(({ symbol }) => symbol).join(' + '),
    terms,
    term('arbor', 'mass of the arbor at its worst', worstKg, 'mass'),
    { source: 'sum of its parts', limit },
  );

export const arborFacts = ({ stack, toleranceKg }: ArborMass, fullKg: number) => ({
  stack,
  tolerance: measure(toleranceKg, 'mass'),
  full: measure(fullKg, 'mass'),
});
