/** A value that somebody stands behind, in words: how much, how it is known, and who says so. */
import type { MeasureKind } from '#findings';
import type { House, Known } from '#house';
import { formatLength, metres, type Rounding } from '#quantities';
import { basisWords, sayMeasure } from '#sheets';

export type KnownWords = {
  readonly value: string;
  readonly basis: string;
  readonly source: string;
};

export const UNKNOWN = 'unknown';

export type SayHow = {
  /** A number is one thing over another of its kind: 8, 30. */
  readonly kind: MeasureKind | 'flag' | 'number';
  /** Limits go down, everything else to the nearest. */
  readonly round?: Rounding;
  readonly style?: 'sheet' | 'fine';
};

const sayValue = (
  value: number | boolean,
  house: Pick<House, 'units' | 'words'>,
  { kind, round = 'nearest', style = 'sheet' }: SayHow,
): string => {
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  if (kind === 'flag' || kind === 'number') return String(value);
  const words = sayMeasure({ value, kind }, house, { round, style });
  // A length of time is a rule that somebody wrote down in whole hours or minutes.
  return kind === 'duration' ? words.replace(/\.0+(?!\d)/, '') : words;
};

const sourceWords = (known: Extract<Known<unknown>, { known: true }>): string => {
  const { source, by, on } = known.provenance;
  return [source, by === undefined ? undefined : `by ${by}`, on]
    .filter((part) => part !== undefined)
    .join(', ');
};

/** To a sixteenth of an inch, and not in feet; a millimetre is as fine as a metric rule goes. */
export const smallLengthWords = (length: Known<number>, { units }: Pick<House, 'units'>): string =>
  length.known
    ? formatLength(metres(length.value), units, {
        style: units === 'customary' ? 'fine' : 'sheet',
        customaryLength: 'inches',
      })
    : UNKNOWN;

/** Unknown is said as a value of its own, with its reason where one is given. */
export const knownWords = (
  known: Known<number> | Known<boolean>,
  house: Pick<House, 'units' | 'words'>,
  how: SayHow,
): KnownWords => {
  if (!known.known) return { value: UNKNOWN, basis: '', source: known.why ?? '' };
  const { value, tolerance, provenance } = known;
  const spread =
    tolerance === undefined || tolerance === 0
      ? ''
      : ` ± ${sayValue(tolerance, house, { kind: how.kind, style: 'fine' })}`;
  return {
    value: `${sayValue(value, house, how)}${spread}`,
    basis: basisWords(provenance.basis),
    source: sourceWords(known) || 'no source given',
  };
};
