/** A number with its unit in the house's system; an imbalance with its direction in words. */
import type { Measure } from '#findings';
import type { House } from '#house';
import type { Rounding } from '#quantities';
import { formatImbalance, formatQuantity, newtons } from '#quantities';
import { imbalanceWords } from '#texts';

export type SayOptions = {
  /** Loads `up`, limits and margins `down`, everything else to the nearest. */
  readonly round?: Rounding;
  /** `fine` where parts must add up before the reader's eyes: half pounds, one more digit. */
  readonly style?: 'sheet' | 'fine';
};

const HOUR_S = 3600;
const MINUTE_S = 60;

const DAY_S = 86_400;

/** From a month on nobody counts hours: `365 days`. */
const A_MONTH_S = 30 * DAY_S;

const sayDays = (seconds: number, round: Rounding): string =>
  `${{ up: Math.ceil, down: Math.floor, nearest: Math.round }[round](seconds / DAY_S)} days`;

/** From an hour on in hours and minutes, as a watch says it: `4 h`, `22 h 37 min`. */
const sayHours = (seconds: number, round: Rounding): string => {
  const whole = { up: Math.ceil, down: Math.floor, nearest: Math.round }[round];
  const minutes = whole(seconds / MINUTE_S);
  const hours = Math.floor(minutes / (HOUR_S / MINUTE_S));
  const rest = minutes - hours * (HOUR_S / MINUTE_S);
  return rest === 0 ? `${hours} h` : `${hours} h ${rest} min`;
};

export const sayMeasure = (
  { value, kind }: Measure,
  house: Pick<House, 'units' | 'words'>,
  { round = 'nearest', style = 'sheet' }: SayOptions = {},
): string => {
  if (kind === 'duration' && value >= A_MONTH_S) return sayDays(value, round);
  if (kind === 'duration' && value >= HOUR_S) return sayHours(value, round);
  return kind === 'imbalance'
    ? formatImbalance(newtons(value), house, {
        words: imbalanceWords(house),
        // An imbalance is a load; only where parts must add up does it go to the nearest.
        round: style === 'fine' && round === 'nearest' ? 'nearest' : 'up',
        style,
      })
    : formatQuantity(kind, value, house, { round, style });
};
