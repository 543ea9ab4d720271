/** The largest by a size; the first of several that are equal, none of an empty list. */
export const worstBy = <T>(all: readonly T[], sizeOf: (one: T) => number): T | undefined =>
  all.reduce<T | undefined>(
    (worst, one) => (worst === undefined || sizeOf(one) > sizeOf(worst) ? one : worst),
    undefined,
  );
