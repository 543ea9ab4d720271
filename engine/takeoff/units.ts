import type { Known } from '#house';
import type { HardwareTakeoff, UnitsTakeoff } from '#show';
import type { Composition } from './composition.ts';
import { emptyListFaults, sumTerms } from './composition.ts';
import type { ToleranceByBasis } from './figure.ts';
import { countOf, figureOf } from './figure.ts';
import type { Draft } from './line.ts';
import { times } from './line.ts';

type Unit = UnitsTakeoff['units'][number];
type Counted = {
  readonly name: string;
  readonly count: number;
  readonly each: Known<number>;
  readonly field: string;
  /** Whether the part is the unit itself or what holds it. */
  readonly key: 'each' | 'clampEach';
};

/**
 * Mass of a row of units with their clamps.
 *
 *     m = Σ n · ( e + k )
 *
 *     n  -   count      how many of one kind
 *     e  kg  each       with its safety wire and accessories
 *     k  kg  clampEach  where the clamp is not in e already
 *     m  kg  returned
 *
 * Source  sum of the units, the-job.md C12
 * Holds   e, k >= 0, one unit or more
 * Omits   what is not on the list: colour frames, safeties, data splitters (heavier)
 * Check   VAL-TKO-13
 */
export const composeUnits = (
  { units }: UnitsTakeoff,
  toleranceByBasis: ToleranceByBasis,
): Composition => {
  const drafts = units.flatMap((unit, index) => unitDrafts(unit, index, toleranceByBasis));
  return {
    drafts,
    hemDrafts: null,
    faults: emptyListFaults(drafts, 'takeoff.units'),
    working: {
      title: 'mass of the units',
      ...sumTerms(drafts),
      source: 'sum of the units and their clamps',
      omits: 'what is not on the list, such as colour frames, safeties and splitters: heavier',
    },
    hemWorking: null,
  };
};

/**
 * Mass of hardware, line by line: m = Σ n · e.
 *
 * Source  sum of the lines, the-job.md C13
 * Holds   e >= 0, one line or more
 * Omits   what is not on the list (heavier)
 * Check   VAL-TKO-11
 */
export const composeHardware = (
  { lines }: HardwareTakeoff,
  toleranceByBasis: ToleranceByBasis,
): Composition => {
  const drafts = lines.map(({ name, count, each }, index) =>
    countedDraft(
      { name, count, each, field: `takeoff.lines[${index}]`, key: 'each' },
      toleranceByBasis,
    ),
  );
  return {
    drafts,
    hemDrafts: null,
    faults: emptyListFaults(drafts, 'takeoff.lines'),
    working: {
      title: 'mass of the hardware',
      ...sumTerms(drafts),
      source: 'sum of the lines',
      omits: 'what is not on the list: heavier',
    },
    hemWorking: null,
  };
};

/** One position for each unit, and each of them a number. */
export const isPlaced = ({ xs, count }: Pick<Unit, 'xs' | 'count'>): boolean =>
  xs !== null && xs.length === count && xs.every(Number.isFinite);

const unitDrafts = (
  unit: Unit,
  index: number,
  toleranceByBasis: ToleranceByBasis,
): readonly Draft[] => {
  const { name, count, each, clampEach } = unit;
  const field = `takeoff.units[${index}]`;
  const xs = isPlaced(unit) ? unit.xs : null;
  const own = countedDraft({ name, count, each, field, key: 'each' }, toleranceByBasis);
  if (clampEach === null) return [{ ...own, xs }];
  const clamp = countedDraft(
    { name: `clamp of ${name}`, count, each: clampEach, field, key: 'clampEach' },
    toleranceByBasis,
  );
  return [
    { ...own, xs },
    { ...clamp, xs },
  ];
};

const countedDraft = (
  { name, count, each, field, key }: Counted,
  toleranceByBasis: ToleranceByBasis,
): Draft => {
  const figure = figureOf(
    each,
    { symbol: 'e', meaning: `mass of one ${name}`, kind: 'mass', field: `${field}.${key}` },
    toleranceByBasis,
  );
  return {
    name,
    count: countOf(count, `${field}.count`, `number of ${name}`),
    products: [[times(figure)]],
    xs: null,
    isHem: false,
  };
};
