/** Which of a hang's named heights stand in the two columns of the hang list. */
import type { Hang, Trim } from '#show';

export type PlacedTrim = { readonly trim: Trim; readonly index: number };

export type TwoTrims = {
  /** The lowest; alone where there is one height only. */
  readonly low: PlacedTrim | null;
  readonly high: PlacedTrim | null;
  /** Heights between the two, which the Set page shows. */
  readonly between: number;
};

const heightOf = ({ trim }: PlacedTrim): number =>
  trim.height.known ? trim.height.value : Number.POSITIVE_INFINITY;

export const twoTrims = ({ trims }: Pick<Hang, 'trims'>): TwoTrims => {
  const placed = trims.map((trim, index) => ({ trim, index }));
  const byHeight = placed.toSorted((one, other) => heightOf(one) - heightOf(other) || 0);
  return {
    low: byHeight[0] ?? null,
    high: byHeight.length > 1 ? (byHeight.at(-1) ?? null) : null,
    between: Math.max(0, byHeight.length - 2),
  };
};
