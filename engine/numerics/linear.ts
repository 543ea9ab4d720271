/** A square matrix taken apart by elimination, for as many right sides as come. */
export type Factors = {
  readonly size: number;
  /** Row by row; below the diagonal the multipliers, on and above it what is left. */
  readonly rows: readonly number[];
  readonly order: readonly number[];
};

/** A pivot smaller than this share of the largest entry is nothing but rounding. */
const SINGULAR_SHARE = 1e-14;

/**
 * Takes a matrix apart, row by row of `size` numbers; the array is used up. Null where the matrix
 * is singular to working precision.
 *
 * Source  Gaussian elimination with partial pivoting, any text on numerical linear algebra
 */
export const factorise = (rows: number[], size: number): Factors | null => {
  const order: number[] = [];
  for (let row = 0; row < size; row++) order.push(row);
  let largest = 0;
  for (const entry of rows) if (Math.abs(entry) > largest) largest = Math.abs(entry);
  for (let at = 0; at < size; at++) {
    const pivot = pivotRow(rows, size, at);
    if (!(Math.abs(rows[pivot * size + at] ?? 0) > SINGULAR_SHARE * largest)) return null;
    if (pivot !== at) exchange(rows, order, { size, one: at, other: pivot });
    eliminate(rows, size, at);
  }
  return { size, rows, order };
};

const pivotRow = (rows: readonly number[], size: number, at: number): number => {
  let best = at;
  for (let row = at + 1; row < size; row++) {
    if (Math.abs(rows[row * size + at] ?? 0) > Math.abs(rows[best * size + at] ?? 0)) best = row;
  }
  return best;
};

type Exchange = { readonly size: number; readonly one: number; readonly other: number };

const exchange = (rows: number[], order: number[], { size, one, other }: Exchange): void => {
  for (let column = 0; column < size; column++) {
    const kept = rows[one * size + column] ?? 0;
    rows[one * size + column] = rows[other * size + column] ?? 0;
    rows[other * size + column] = kept;
  }
  const kept = order[one] ?? 0;
  order[one] = order[other] ?? 0;
  order[other] = kept;
};

const eliminate = (rows: number[], size: number, at: number): void => {
  const pivot = rows[at * size + at] ?? 1;
  for (let row = at + 1; row < size; row++) {
    const factor = (rows[row * size + at] ?? 0) / pivot;
    rows[row * size + at] = factor;
    if (factor === 0) continue;
    for (let column = at + 1; column < size; column++) {
      const index = row * size + column;
      rows[index] = (rows[index] ?? 0) - factor * (rows[at * size + column] ?? 0);
    }
  }
};

/** The answer for one right side of as many numbers as the matrix has rows. */
export const solveWith = (
  { size, rows, order }: Factors,
  right: readonly number[],
): readonly number[] => {
  const answer: number[] = [];
  for (let row = 0; row < size; row++) {
    let sum = right[order[row] ?? 0] ?? 0;
    for (let column = 0; column < row; column++) {
      sum -= (rows[row * size + column] ?? 0) * (answer[column] ?? 0);
    }
    answer.push(sum);
  }
  for (let row = size - 1; row >= 0; row--) {
    let sum = answer[row] ?? 0;
    for (let column = row + 1; column < size; column++) {
      sum -= (rows[row * size + column] ?? 0) * (answer[column] ?? 0);
    }
    answer[row] = sum / (rows[row * size + row] ?? 1);
  }
  return answer;
};
