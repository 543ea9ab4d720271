/** A number with its unit in the house's system; an imbalance with its direction in words. */
import type { Measure } from '#findings';
import type { House } from '#house';
import type { Rounding } from '#quantities';
import { formatImbalance, formatQuantity, newtons } from '#quantities';

export type SayOptions = {
  /** Loads `up`, limits and margins `down`, everything else to the nearest. */
  readonly round?: Rounding;
  /** `fine` where parts must add up before the reader's eyes: half pounds, one more digit. */
  readonly style?: 'sheet' | 'fine';
};

export const sayMeasure = (
  { value, kind }: Measure,
  house: Pick<House, 'units' | 'words'>,
  { round = 'nearest', style = 'sheet' }: SayOptions = {},
): string =>
  kind === 'imbalance'
    ? formatImbalance(newtons(value), house.units, {
        words: house.words === 'US' ? 'us' : 'uk',
        // An imbalance is a load; only where parts must add up does it go to the nearest.
        round: style === 'fine' && round === 'nearest' ? 'nearest' : 'up',
        style,
      })
    : formatQuantity(kind, value, house.units, { round, style });
