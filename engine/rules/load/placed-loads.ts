import type { PlacedLoad, StructureState } from '#assessment';
import { measure } from '#findings';
import { acrossStage } from '../across-stage.ts';
import { sourceOf } from '../known-values.ts';
import { isAbove } from '../limits.ts';
import { raise } from '../raise.ts';
import { type StructuredCase, whenStructured } from '../rule.ts';
import { worstBy } from '../worst.ts';

/** Loads closer than a millimetre hang at one place: nobody hangs them closer. */
const ONE_PLACE_M = 0.001;

/** What hangs at one place, or on a metre of one stretch, its tolerances counted in. */
type Placed = {
  readonly state: StructureState;
  readonly xM: number;
  readonly worst: number;
  readonly tolerance: number;
  readonly of: readonly string[];
};

/** LOD-005: at no one place hangs more than the point limit of the batten (C14). */
export const pointLimit = whenStructured((the) => {
  const worst = worstBy(states(the).flatMap(places), (one) => one.worst);
  if (worst === undefined) return [];
  const { lineSet } = the.set;
  const { pointLimit: limit } = lineSet;
  if (!limit.known || !isAbove(worst.worst, limit.value)) return [];
  return [
    raise('LOD-005', {
      at: { set: lineSet.id, heightM: worst.state.height },
      measured: measure(worst.worst, 'mass'),
      limit: measure(limit.value, 'mass'),
      limitSource: sourceOf(limit),
      facts: { ...placeFacts(worst), tolerance: measure(worst.tolerance, 'mass') },
    }),
  ];
});

/** LOD-006: no stretch of the batten has more spread on its length than its limit (C14). */
export const perLengthLimit = whenStructured((the) => {
  const worst = worstBy(states(the).flatMap(stretches), (one) => one.worst);
  if (worst === undefined) return [];
  const { lineSet } = the.set;
  const { perLengthLimit: limit } = lineSet;
  if (!limit.known || !isAbove(worst.worst, limit.value)) return [];
  return [
    raise('LOD-006', {
      at: { set: lineSet.id, heightM: worst.state.height },
      measured: measure(worst.worst, 'massPerLength'),
      limit: measure(limit.value, 'massPerLength'),
      limitSource: sourceOf(limit),
      facts: { ...placeFacts(worst), tolerance: measure(worst.tolerance, 'massPerLength') },
    }),
  ];
});

const placeFacts = ({ state, xM, of }: Placed) => ({
  ...acrossStage(xM),
  state: state.name,
  height: measure(state.height, 'length'),
  items: of.join(' and '),
});

/** The bare batten carries its fittings only, which its limits are not about. */
const states = ({ structure }: StructuredCase): readonly StructureState[] =>
  structure.states.filter(({ kind }) => kind !== 'bare');

/** The assessment names the fittings of a line so; they hang on the line and not on the batten. */
const FITTINGS = /^fittings at line \d+$/;

const hungOf = ({ loads }: StructureState): readonly PlacedLoad[] =>
  loads.filter(({ of }) => !FITTINGS.test(of));

type PointMass = PlacedLoad & { readonly xM: number };

const places = (state: StructureState): readonly Placed[] => {
  const points = hungOf(state).flatMap((placed): readonly PointMass[] =>
    'x' in placed.load ? [{ ...placed, xM: placed.load.x }] : [],
  );
  return points.map(({ xM }) =>
    summed(
      state,
      xM,
      points
        .filter((one) => Math.abs(one.xM - xM) <= ONE_PLACE_M)
        .map((one) => ({ of: one.of, value: one.load.mass, tolerance: one.uncertaintyKg ?? 0 })),
    ),
  );
};

/** Between two ends of spread loads nothing changes, so that the start of each is enough. */
const stretches = (state: StructureState): readonly Placed[] => {
  const spread = hungOf(state).flatMap(({ of, load, uncertaintyKg }) => {
    if ('x' in load || load.from === load.to) return [];
    const [fromM, toM] = [Math.min(load.from, load.to), Math.max(load.from, load.to)];
    const lengthM = toM - fromM;
    return [
      { of, fromM, toM, value: load.mass / lengthM, tolerance: (uncertaintyKg ?? 0) / lengthM },
    ];
  });
  return spread.map(({ fromM }) =>
    summed(
      state,
      fromM,
      spread.filter((one) => one.fromM <= fromM && fromM < one.toM),
    ),
  );
};

type Part = { readonly of: string; readonly value: number; readonly tolerance: number };

const summed = (state: StructureState, xM: number, parts: readonly Part[]): Placed => {
  const tolerance = parts.reduce((sum, part) => sum + part.tolerance, 0);
  return {
    state,
    xM,
    worst: parts.reduce((sum, part) => sum + part.value, tolerance),
    tolerance,
    of: [...new Set(parts.map(({ of }) => of))],
  };
};
