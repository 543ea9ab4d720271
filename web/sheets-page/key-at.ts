/** A sheet is made anew and never changed in place, so the place of a part may name it. */
export const keyAt = (place: number): string => `at ${place}`;
