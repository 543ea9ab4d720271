/** What was typed into the form, with its units; what is not understood is refused in place. */
import { type House, type Known, known, unknownValue } from '#house';
import type { Piece, PlacingAsked } from '#placing';
import { pieceOf } from '#placing';
import {
  type DecimalMark,
  type Dimension,
  formatLength,
  kilograms,
  type Metres,
  metres,
  parseQuantity,
  type QuantityRefusal,
} from '#quantities';
import type { Item, Show } from '#show';
import { ENGLISH, message, phrase, type Voice } from '#texts';

export const MEASURES = ['mass', 'halfDepth', 'width', 'low', 'high', 'place', 'within'] as const;
export type MeasureField = (typeof MEASURES)[number];

export type Typed = Readonly<Record<MeasureField, string>> & {
  /** The set that hangs the piece now; empty for a new one. */
  readonly from: string;
  readonly name: string;
  readonly keptEmptyToo: boolean;
};

export type Question = Pick<PlacingAsked, 'piece' | 'wanted' | 'keptEmptyToo'>;
export type Faults = Readonly<Partial<Record<MeasureField, QuantityRefusal>>>;
export type ReadPiece =
  | {
      readonly is: 'read';
      readonly question: Question;
      /** As documents write it, with a point before decimals. */
      readonly written: Typed;
    }
  | { readonly is: 'refused'; readonly faults: Faults };

const BLANK: Typed = {
  from: '',
  name: '',
  mass: '',
  halfDepth: '',
  width: '',
  low: '',
  high: '',
  place: '',
  within: '',
  keptEmptyToo: false,
};

/** The form as it opens: a piece of the show is wanted near where it hangs. */
export const firstTyped = (
  { house, show }: { readonly house: House; readonly show: Show },
  from: string,
): Typed => {
  const y = house.lineSets.find(({ id }) => id === from)?.y;
  if (!show.hangs.some(({ set }) => set === from)) return BLANK;
  const place = y?.known ? formatLength(y.value, house).replaceAll('\u00a0', ' ') : '';
  return { ...BLANK, from, place };
};

/** Fields that a piece of the show has already. */
export const OF_NEW: readonly MeasureField[] = ['mass', 'halfDepth', 'width', 'low', 'high'];

const dimensionOf = (field: MeasureField): Dimension => (field === 'mass' ? 'mass' : 'length');

/** A blank field is a value that nobody knows, and no zero. */
export const readTyped = (typed: Typed, show: Show, voice: Voice = ENGLISH): ReadPiece => {
  const decimalMark = voice.tongue?.decimalMark ?? '.';
  const values: Partial<Record<MeasureField, number>> = {};
  const faults: Partial<Record<MeasureField, QuantityRefusal>> = {};
  for (const field of MEASURES) {
    const text = typed[field];
    if (text.trim() === '' || (typed.from !== '' && OF_NEW.includes(field))) continue;
    const read = parseQuantity(dimensionOf(field), text, {
      signed: field === 'place',
      decimalMark,
    });
    if (read.ok) values[field] = read.value;
    else faults[field] = read.error;
  }
  if (Object.keys(faults).length > 0) return { is: 'refused', faults };
  const { place, within } = values;
  const wanted =
    place === undefined
      ? null
      : { y: metres(place), within: within === undefined ? null : metres(within) };
  const name = typed.name.trim() === '' ? phrase(voice, 'New piece') : typed.name.trim();
  const piece = (typed.from === '' ? null : pieceOf(show, typed.from)) ?? newPiece(name, values);
  const written = { ...typed, ...asWritten(typed, decimalMark), name };
  return { is: 'read', question: { piece, wanted, keptEmptyToo: typed.keptEmptyToo }, written };
};

const SAID = { basis: 'estimated', source: 'typed to look for a set' } as const;

const asWritten = (typed: Typed, mark: DecimalMark): Partial<Typed> =>
  mark === '.'
    ? {}
    : Object.fromEntries(MEASURES.map((field) => [field, typed[field].replaceAll(mark, '.')]));

const NOT_TYPED = message('not typed');
const NOT_ASKED = message('not asked for');

const given = <T>(value: T | undefined): Known<T> =>
  value === undefined ? unknownValue(NOT_TYPED) : known(value, SAID);

const lengthOf = (value: number | undefined): Known<Metres> =>
  given(value === undefined ? undefined : metres(value));

const newPiece = (
  called: string,
  { mass, halfDepth, width, low, high }: Partial<Record<MeasureField, number>>,
): Piece => {
  const trims = [['low', low] as const, ['high', high] as const].flatMap(([trim, heightM]) =>
    heightM === undefined
      ? []
      : [{ name: trim, height: lengthOf(heightM), reference: 'batten' as const }],
  );
  const item: Item = {
    id: 'piece',
    name: called,
    kind: 'clear',
    takeoff: {
      by: 'mass',
      mass: given(mass === undefined ? undefined : kilograms(mass)),
      hem: null,
    },
    drop: unknownValue(NOT_ASKED),
    pick: unknownValue(NOT_ASKED),
    centre: unknownValue(NOT_ASKED),
    placement:
      width === undefined
        ? null
        : { at: 'spread', from: metres(-width / 2), to: metres(width / 2) },
    releases: [],
    carriesPerson: false,
  };
  return {
    from: null,
    hang: {
      name: called,
      family: 'other',
      halfDepth: lengthOf(halfDepth),
      trims,
      items: [item],
      deadHungAt: null,
      coupledWith: [],
    },
  };
};
