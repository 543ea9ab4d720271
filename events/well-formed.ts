/** Whether a text has no half of a pair of surrogates, which no UTF-8 can carry (RFC 7493, 2.1). */
export const isWellFormed = (text: string): boolean => !/\p{Surrogate}/u.test(text);
