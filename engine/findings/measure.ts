import type { Dimension } from '#quantities';

/** A dimension, or an imbalance: a force at the batten whose sign becomes words on paper. */
export type MeasureKind = Dimension | 'imbalance';

/** An SI number with what it measures, so that the page can print it in the house's units. */
export type Measure = { readonly value: number; readonly kind: MeasureKind };

export const measure = (value: number, kind: MeasureKind): Measure => ({ value, kind });
