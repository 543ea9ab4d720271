/**
 * Why an input was not taken. Every refusal says where, what was found and what is accepted, so
 * that a person can mend the input without reading our code.
 */
export type Refusal = {
  /** Stable code, declared once in the room that raises it: `DOC-104`, `QTY-002`. */
  readonly code: string;
  /** Where, as a path a person can follow: `lineSets[3].lowStop`. Empty for the whole input. */
  readonly path: string;
  readonly found: string;
  readonly accepted: string;
};

export const refusal = (
  code: string,
  path: string,
  { found, accepted }: { readonly found: string; readonly accepted: string },
): Refusal => ({ code, path, found, accepted });
