/** A result, or what was missing to reach it. What needs an unknown value is itself unknown. */
export type Reckoned<T> =
  | { readonly known: true; readonly value: T }
  | { readonly known: false; readonly needs: readonly string[] };

export const reckoned = <T>(value: T): { readonly known: true; readonly value: T } => ({
  known: true,
  value,
});

export const blocked = (
  needs: readonly string[],
): { readonly known: false; readonly needs: readonly string[] } => ({ known: false, needs });
