import { bayTotals, type SetOnSteel, wellTotals } from '#lines';
import { POUND, POUND_FORCE } from '#quantities';
import type { ValidationCase } from '../../form.ts';

const SETS = 40;
const BAYS = ['A', 'B', 'C'];
const WELL_XS = [-9, -6, -3, 0, 3, 6, 9];

const arborLb = (index: number): number => 100 + 20 * index;
const purchaseOf = (index: number): 1 | 2 => (index % 5 === 0 ? 2 : 1);
/** Six lines leave out the well in the middle. */
const xsOf = (index: number): readonly number[] =>
  index % 2 === 0 ? WELL_XS : WELL_XS.filter((x) => x !== 0);

/** Tensions as 1 : 2 : 3 ..., which are as unlike as any, and together the arbor's pull. */
const shareOf = (index: number, line: number): number => {
  const lines = xsOf(index).length;
  return (2 * (line + 1)) / (lines * (lines + 1));
};
const tensionLbf = (index: number, line: number): number =>
  (arborLb(index) / purchaseOf(index)) * shareOf(index, line);

const setOf = (index: number): SetOnSteel => ({
  set: `${index}`,
  bay: BAYS[index % 3] ?? null,
  purchase: purchaseOf(index),
  arborMass: arborLb(index) * POUND,
  handLineMass: 0,
  arborWireMass: 0,
  lines: xsOf(index).map((x, line) => ({ x, tension: tensionLbf(index, line) * POUND_FORCE })),
  moving: false,
});

const INDEXES = Array.from({ length: SETS }, (_, index) => index);
const sum = (terms: readonly number[]): number => terms.reduce((total, term) => total + term, 0);

const errors = (): readonly number[] => {
  const sets = INDEXES.map(setOf);
  const bays = bayTotals(sets, { bays: BAYS, movingShare: 0 });
  const wells = WELL_XS.map((x) => ({ id: `${x}`, x, width: 1 }));
  const found = wellTotals(sets, { wells, movingShare: 0 });
  const bayLbf = BAYS.map((_, bay) =>
    sum(INDEXES.filter((n) => n % 3 === bay).map((n) => arborLb(n) / purchaseOf(n))),
  );
  const wellLbf = WELL_XS.map((x) =>
    sum(INDEXES.map((n) => (xsOf(n).includes(x) ? tensionLbf(n, xsOf(n).indexOf(x)) : 0))),
  );
  const horizontalN = bays.map(({ horizontal }) => horizontal.value);
  const wellN = found.wells.map(({ value }) => value);
  return [
    ...horizontalN.map((value, bay) => value / ((bayLbf[bay] ?? 0) * POUND_FORCE)),
    ...wellN.map((value, well) => value / ((wellLbf[well] ?? 0) * POUND_FORCE)),
    sum(horizontalN) / sum(wellN),
  ].map((ratio) => Math.abs(ratio - 1));
};

export const theCase: ValidationCase = {
  id: 'VAL-LIN-11',
  title: 'The head-block beam takes what all loft wells take',
  calculation: 'lines',
  unit: 'relative',
  tolerance: 1e-12,
  run: errors,
};
