/**
 * The answer of a function that can say no. A refusal is an answer like any other: the caller
 * must look at `ok` before it can reach the value, so nobody uses a number that was never given.
 */
export type Result<T, E> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly error: E };

export const ok = <T>(value: T): { readonly ok: true; readonly value: T } => ({ ok: true, value });

export const fail = <E>(error: E): { readonly ok: false; readonly error: E } => ({
  ok: false,
  error,
});
