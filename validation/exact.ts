/** Fractions of whole numbers, for oracles in which nothing is ever rounded. */
export type Exact = { readonly top: bigint; readonly bottom: bigint };

const gcd = (a: bigint, b: bigint): bigint => (b === 0n ? a : gcd(b, a % b));

const exactly = (top: bigint, bottom: bigint): Exact => {
  const sign = bottom < 0n ? -1n : 1n;
  const shared = gcd(top < 0n ? -top : top, sign * bottom) || 1n;
  return { top: (sign * top) / shared, bottom: (sign * bottom) / shared };
};

/** `'-12.375'` and such, to the last digit written. */
export const exact = (text: string): Exact => {
  const [whole = '', part = ''] = text.split('.');
  return exactly(BigInt(whole + part), 10n ** BigInt(part.length));
};

export const plus = (...terms: readonly Exact[]): Exact =>
  terms.reduce((a, b) => exactly(a.top * b.bottom + b.top * a.bottom, a.bottom * b.bottom));
export const times = (...factors: readonly Exact[]): Exact =>
  factors.reduce((a, b) => exactly(a.top * b.top, a.bottom * b.bottom));
export const minus = (a: Exact, b: Exact): Exact => plus(a, { ...b, top: -b.top });
export const over = (a: Exact, b: Exact): Exact => exactly(a.top * b.bottom, a.bottom * b.top);

/** −1, 0 or 1 as the first is less than, equal to or more than the second. */
export const compare = (a: Exact, b: Exact): number => Math.sign(Number(minus(a, b).top));
export const least = (a: Exact, b: Exact): Exact => (compare(a, b) <= 0 ? a : b);
export const greatest = (a: Exact, b: Exact): Exact => (compare(a, b) >= 0 ? a : b);

const DIGITS = 10n ** 30n;

/** The nearest number, but for the last binary place. */
export const asNumber = ({ top, bottom }: Exact): number => Number((top * DIGITS) / bottom) / 1e30;

/** kg in a pound (international agreement of 1959), and m/s²: both exact. */
export const POUND_EXACTLY = exact('0.45359237');
export const GRAVITY_EXACTLY = exact('9.80665');
