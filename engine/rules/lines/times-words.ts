const TENTHS = 10;
/** A factor typed as 7.6 must not come out as 7.5. */
const HAIR = 1e-9;

/**
 * How many times, in tenths, never rounded up: a factor of 7.99 is 7.9 and not 8. A count prints
 * without tenths and a ratio in per cent, so the words are made here.
 */
export const timesWords = (times: number): string => {
  const tenths = Math.floor(times * TENTHS * (1 + HAIR));
  return tenths % TENTHS === 0 ? `${tenths / TENTHS}` : (tenths / TENTHS).toFixed(1);
};
