/**
 * The form of a validation case that runs anywhere: in a test, in a terminal, in a server and in
 * a browser. It opens doors of the engine and pure files of `validation`, and nothing else.
 */

/** One for each folder of `validation`, by the same name. */
export const CALCULATIONS = [
  'quantities',
  'house',
  'takeoff',
  'balance',
  'bricks',
  'pull-test',
  'beam',
  'lines',
  'motion',
] as const;

export type Calculation = (typeof CALCULATIONS)[number];

/** What is held against the oracle, in one unit and within one tolerance. */
export type Comparison = {
  /** 'N', 'kg', 'relative', 'stacks miscounted' ...: of the errors and of the tolerance. */
  readonly unit: string;
  /** Largest error accepted; none where whole numbers are compared. */
  readonly tolerance: number;
  /** One error for each comparison, never negative. Not a number, or none at all, is a fault. */
  readonly run: () => readonly number[];
};

export type ValidationCase = Comparison & {
  /** `VAL-HSE-01`, as in the `case.md` beside it; the title too. */
  readonly id: string;
  readonly title: string;
  readonly calculation: Calculation;
  /** Further comparisons in another unit or within another tolerance. */
  readonly also?: readonly (Comparison & { readonly what: string })[];
};
