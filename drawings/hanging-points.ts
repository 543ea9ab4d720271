/** Where each item takes hold of its batten, across the stage; for the drawing and its table. */
import type { SetAssessment } from '#assessment';
import type { Item } from '#show';

export type HangingPart = {
  /** What hangs at these places: the item itself, or one of its units. */
  readonly name: string;
  readonly xs: readonly number[];
};

export type HangingItem = {
  /** a, b, c: the letter on the drawing and in the table. */
  readonly tag: string;
  readonly item: Item;
  readonly parts: readonly HangingPart[];
  /** Even between two places; null where it hangs at points or its place is not given. */
  readonly span: { readonly from: number; readonly to: number } | null;
};

const LETTERS = 'abcdefghijklmnopqrstuvwxyz';

/** a to z, then aa, ab and so on: a batten with more than 26 items is a list, not a drawing. */
export const tagOf = (index: number): string => {
  const letter = LETTERS[index % LETTERS.length] ?? '';
  return index < LETTERS.length
    ? letter
    : `${tagOf(Math.floor(index / LETTERS.length) - 1)}${letter}`;
};

export const hangingItems = (set: SetAssessment): readonly HangingItem[] =>
  set.takeoffs.map(({ item, lines }, index) => {
    const { placement, takeoff } = item;
    const tag = tagOf(index);
    const span = placement?.at === 'spread' ? { from: placement.from, to: placement.to } : null;
    const points = placement?.at === 'points' ? [{ name: item.name, xs: placement.xs }] : [];
    const units =
      takeoff.by === 'units'
        ? lines.flatMap(({ name, xs }) => (xs === null ? [] : [{ name, xs }]))
        : [];
    return { tag, item, span, parts: distinctPlaces([...points, ...units]) };
  });

/** A clamp hangs where its unit hangs: parts with the same places are told once. */
const distinctPlaces = (parts: readonly HangingPart[]): readonly HangingPart[] => {
  const keyOf = ({ xs }: HangingPart): string => xs.join(' ');
  return parts.filter(
    (part, index) => parts.findIndex((other) => keyOf(other) === keyOf(part)) === index,
  );
};

/** Every place once, from stage right to stage left. */
export const placesOf = ({ parts }: HangingItem): readonly number[] =>
  [...new Set(parts.flatMap(({ xs }) => xs))].toSorted((one, other) => one - other);
