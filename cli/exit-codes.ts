/** What the shell is told. Source: calculations.md. */
export const EXIT = {
  /** No finding at stop level. */
  clear: 0,
  /** A finding at stop level. */
  stop: 1,
  /** Bad input, or the command was not understood. */
  badInput: 2,
  /** A fault of the program itself. */
  fault: 3,
} as const;

export type ExitCode = (typeof EXIT)[keyof typeof EXIT];
