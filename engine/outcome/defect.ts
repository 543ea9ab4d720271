/**
 * A fault of the program itself. It stays on in the show: a wrong number that goes on is worse
 * than a screen that says it stopped.
 */
export function assert(condition: boolean, claim: string): asserts condition {
  if (!condition) throw new Error(`defect: ${claim}`);
}

/** Ends a switch over kinds, so that a new kind without a case fails to compile. */
export const unreachable = (kind: never): never => {
  throw new Error(`defect: no case for ${JSON.stringify(kind)}`);
};
