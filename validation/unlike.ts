/** Tells plain data apart: 0 when they are alike, 1 when not; an "error" for what is no number. */
export const unlike = (found: unknown, wanted: unknown): 0 | 1 =>
  inOrder(found) === inOrder(wanted) ? 0 : 1;

/** As text, fields in one order, so that only what they say counts; NaN is not null. */
const inOrder = (value: unknown): string => {
  if (Array.isArray(value)) return `[${value.map(inOrder).join(',')}]`;
  if (typeof value === 'object' && value !== null) {
    const fields = Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1));
    return `{${fields.map(([name, held]) => `${name}:${inOrder(held)}`).join(',')}}`;
  }
  return typeof value === 'string' ? JSON.stringify(value) : String(value);
};

/** How far a number lies outside two bounds, in its own unit; none between them. */
export const outside = (found: number, low: number, high: number): number =>
  Number.isNaN(found) ? found : Math.max(0, low - found, found - high);

/** Stops a case that has too little left to judge by, such as after passing over what is near. */
export const enough = <T>(found: readonly T[], least: number): readonly T[] => {
  if (found.length >= least) return found;
  throw new Error(`only ${found.length} to compare, and at least ${least} are needed`);
};
