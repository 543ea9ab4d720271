/** Measures as text that reads back to the same value, and what is written with them. */
import type { UnitSystem } from '#quantities';
import { FOOT, POUND_FORCE } from '#quantities';
import type { Restraint } from '#state';
import type { Json } from './json.ts';

export const restraintOf = (
  { kind, resists, rating, from, to, owner, tag }: Restraint,
  units: UnitSystem,
): Json => ({
  kind,
  resists,
  ...(rating === null ? {} : { rating: forceText(rating, units) }),
  ...(from === null ? {} : { from: lengthText(from, units) }),
  ...(to === null ? {} : { to: lengthText(to, units) }),
  ...(owner === null ? {} : { owner }),
  ...(tag === null ? {} : { tag }),
});

export const lengthText = (si: number, units: UnitSystem): string =>
  measureText(si, units, { size: FOOT, unit: 'ft', siUnit: 'm' });

export const forceText = (si: number, units: UnitSystem): string =>
  measureText(si, units, { size: POUND_FORCE, unit: 'lbf', siUnit: 'N' });

type Unit = { readonly size: number; readonly unit: string; readonly siUnit: string };

/** A thousandth of a micrometre, or of a micronewton: bits of a conversion and nothing else. */
const SAME = 1e-9;

/** In ft or lbf where few digits say it all; else in SI, which loses none. */
const measureText = (si: number, units: UnitSystem, { size, unit, siUnit }: Unit): string => {
  if (units === 'customary') {
    for (const digits of [0, 1, 2, 3, 4]) {
      const text = (si / size).toFixed(digits);
      if (Math.abs(Number(text) * size - si) <= SAME) return `${text} ${unit}`;
    }
  }
  return `${String(si).includes('e') ? si.toFixed(12) : si} ${siUnit}`;
};
