import type { MassTakeoff } from '#show';
import { HEM_NAME } from './cloth.ts';
import type { Composition } from './composition.ts';
import { single } from './composition.ts';
import type { FigureName, ToleranceByBasis } from './figure.ts';
import { figureOf, termOf } from './figure.ts';
import { times } from './line.ts';

/** A mass that somebody gives whole; for a cloth, what is in its hem stands beside it. */
export const composeMass = (
  { mass, hem }: MassTakeoff,
  name: string,
  toleranceByBasis: ToleranceByBasis,
): Composition => {
  const figure = figureOf(mass, MASS, toleranceByBasis);
  const hemFigure = hem && figureOf(hem, HEM, toleranceByBasis);
  return {
    drafts: [single(name, times(figure))],
    hemDrafts: hemFigure && [{ ...single(HEM_NAME, times(hemFigure)), isHem: true }],
    faults: [],
    working: {
      title: 'mass, given whole',
      formula: 'M',
      terms: [termOf(figure)],
      source: 'as given; nothing is worked out',
    },
    hemWorking: hemFigure && {
      title: HEM_NAME,
      formula: 'u',
      terms: [termOf(hemFigure)],
      source: 'as given; nothing is worked out',
    },
  };
};

const MASS: FigureName = { symbol: 'M', meaning: 'mass', kind: 'mass', field: 'takeoff.mass' };

const HEM: FigureName = {
  symbol: 'u',
  meaning: HEM_NAME,
  kind: 'mass',
  field: 'takeoff.hem',
  ifNone: '0 kg',
};
