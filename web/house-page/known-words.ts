/** A value that somebody stands behind, in words: how much, how it is known, and who says so. */
import type { MeasureKind } from '#findings';
import type { House, Known } from '#house';
import { decimalMarkOf, formatLength, metres, type Rounding } from '#quantities';
import { basisWords, sayMeasure } from '#sheets';
import { phrase, type Voice } from '#texts';

export type KnownWords = {
  readonly value: string;
  readonly basis: string;
  readonly source: string;
};

export const unknownWord = (voice: Voice): string => phrase(voice, 'unknown');

/** In whose units, words and language a value is said. */
type Reader = Pick<House, 'units'> & Voice;

export type SayHow = {
  /** A number is one thing over another of its kind: 8, 30. */
  readonly kind: MeasureKind | 'flag' | 'number';
  /** Limits go down, everything else to the nearest. */
  readonly round?: Rounding;
  readonly style?: 'sheet' | 'fine';
};

const sayValue = (
  value: number | boolean,
  house: Reader,
  { kind, round = 'nearest', style = 'sheet' }: SayHow,
): string => {
  if (typeof value === 'boolean') return phrase(house, value ? 'yes' : 'no');
  if (kind === 'flag' || kind === 'number') {
    return String(value).replace('.', decimalMarkOf(house));
  }
  const words = sayMeasure({ value, kind }, house, { round, style });
  // A length of time is a rule that somebody wrote down in whole hours or minutes.
  return kind === 'duration' ? words.replace(/[.,]0+(?!\d)/, '') : words;
};

const sourceWords = (known: Extract<Known<unknown>, { known: true }>, voice: Voice): string => {
  const { source, by, on } = known.provenance;
  return [source, by === undefined ? undefined : phrase(voice, 'by {by}', { by }), on]
    .filter((part) => part !== undefined)
    .join(', ');
};

/** To a sixteenth of an inch, and not in feet; a millimetre is as fine as a metric rule goes. */
export const smallLengthWords = (length: Known<number>, house: Reader): string =>
  length.known
    ? formatLength(metres(length.value), house, {
        style: house.units === 'customary' ? 'fine' : 'sheet',
        customaryLength: 'inches',
      })
    : unknownWord(house);

/** Unknown is said as a value of its own, with its reason where one is given. */
export const knownWords = (
  known: Known<number> | Known<boolean>,
  house: Reader,
  how: SayHow,
): KnownWords => {
  if (!known.known) return { value: unknownWord(house), basis: '', source: known.why ?? '' };
  const { value, tolerance, provenance } = known;
  const spread =
    tolerance === undefined || tolerance === 0
      ? ''
      : ` ± ${sayValue(tolerance, house, { kind: how.kind, style: 'fine' })}`;
  return {
    value: `${sayValue(value, house, how)}${spread}`,
    basis: basisWords(provenance.basis, house),
    source: sourceWords(known, house) || phrase(house, 'no source given'),
  };
};
