import type { LoomTakeoff, PipeTakeoff } from '#show';
import type { Composition } from './composition.ts';
import { single } from './composition.ts';
import type { Figure, FigureName, ToleranceByBasis } from './figure.ts';
import { figureOf, termOf } from './figure.ts';
import { times } from './line.ts';

/**
 * Mass of a second pipe below the batten, or of a loom of its full length.
 *
 *     pipe  m = ℓ · w + k
 *     loom  m = ℓ · w
 *
 *     ℓ  m     length
 *     w  kg/m  massPerLength
 *     k  kg    fittings   clamps, chains and couplers of the pipe
 *     m  kg    returned
 *
 * Source  length times mass per length, the-job.md C12 and C18
 * Holds   all figures >= 0
 * Omits   pipe: what hangs on it. loom: connectors and ties (heavier); what of it hangs on the
 *         batten at a height is for the balance to say
 * Check   VAL-TKO-05, VAL-TKO-06, VAL-TKO-09
 */
export const composePipe = (pipe: PipeTakeoff, toleranceByBasis: ToleranceByBasis): Composition => {
  const run = runOf(pipe, toleranceByBasis);
  const fittings =
    pipe.fittings === null ? [] : [figureOf(pipe.fittings, FITTINGS, toleranceByBasis)];
  return {
    drafts: [
      single('pipe', ...run.map(times)),
      ...fittings.map((figure) => single('fittings', times(figure))),
    ],
    hemDrafts: null,
    faults: [],
    working: {
      title: 'mass of the pipe',
      formula: pipe.fittings === null ? 'ℓ · w' : 'ℓ · w + k',
      terms: [...run, ...fittings].map(termOf),
      source: 'length times mass per length',
      omits: 'what hangs on the pipe, which is an item of its own: heavier',
    },
    hemWorking: null,
  };
};

export const composeLoom = (loom: LoomTakeoff, toleranceByBasis: ToleranceByBasis): Composition => {
  const run = runOf(loom, toleranceByBasis);
  return {
    drafts: [single('cable, full length', ...run.map(times))],
    hemDrafts: null,
    faults: [],
    working: {
      title: 'mass of the full length of the loom',
      formula: 'ℓ · w',
      terms: run.map(termOf),
      source: 'length times mass per length',
      omits: 'connectors and ties: heavier; only part of the loom hangs on the batten',
    },
    hemWorking: null,
  };
};

const FITTINGS: FigureName = {
  symbol: 'k',
  meaning: 'fittings of the pipe',
  kind: 'mass',
  field: 'takeoff.fittings',
  ifNone: '0 kg',
};

const runOf = (
  { length, massPerLength }: Pick<PipeTakeoff, 'length' | 'massPerLength'>,
  toleranceByBasis: ToleranceByBasis,
): readonly Figure[] => [
  figureOf(
    length,
    { symbol: 'ℓ', meaning: 'length', kind: 'length', field: 'takeoff.length' },
    toleranceByBasis,
  ),
  figureOf(
    massPerLength,
    {
      symbol: 'w',
      meaning: 'mass per length',
      kind: 'massPerLength',
      field: 'takeoff.massPerLength',
    },
    toleranceByBasis,
  ),
];
