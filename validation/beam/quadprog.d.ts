/** The package brings no types. Arrays count from 1: entry 0 of each is left empty. */
declare module 'quadprog' {
  /**
   * Least ½·xᵀ·D·x − dᵀ·x where Aᵀ·x ≥ b, the first `meq` of them with equality; D positive
   * definite. D and d are used up. `message` is empty where it was solved.
   */
  export const solveQP: (
    D: (number[] | undefined)[],
    d: (number | undefined)[],
    A: (number[] | undefined)[],
    b: (number | undefined)[],
    meq: number,
  ) => {
    readonly solution: readonly number[];
    readonly value: readonly number[];
    readonly message: string;
  };
}
