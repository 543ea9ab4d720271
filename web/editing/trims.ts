/** Which of a hang's named heights stand in the two columns of the hang list, and typing them. */
import type { Hang, Trim } from '#show';
import { at, isList, isObject, type Json, type JsonObject } from '../keeping/json.ts';
import { hangPath, hasGiven, lengthAnew, withField } from './show-edits.ts';

export type PlacedTrim = { readonly trim: Trim; readonly index: number };

export type TwoTrims = {
  /** The lowest; alone where there is one height only. */
  readonly low: PlacedTrim | null;
  readonly high: PlacedTrim | null;
  /** Heights between the two, which the Set page shows. */
  readonly between: number;
};

const heightOf = ({ trim }: PlacedTrim): number =>
  trim.height.known ? trim.height.value : Number.POSITIVE_INFINITY;

export const twoTrims = ({ trims }: Pick<Hang, 'trims'>): TwoTrims => {
  const placed = trims.map((trim, index) => ({ trim, index }));
  const byHeight = placed.toSorted((one, other) => heightOf(one) - heightOf(other) || 0);
  return {
    low: byHeight[0] ?? null,
    high: byHeight.length > 1 ? (byHeight.at(-1) ?? null) : null,
    between: Math.max(0, byHeight.length - 2),
  };
};

/** Texts for the two columns; one that is absent leaves its height alone, a blank one takes it. */
export type TrimTexts = { readonly in?: string; readonly out?: string };

/** A new height is called by its column, unless another height is called so already. */
const freeName = (which: 'in' | 'out', trims: readonly Json[]): string => {
  const taken = trims.map((trim) => (isObject(trim) ? trim['name'] : undefined));
  const names = [which, which === 'in' ? 'low' : 'high', `${which} ${trims.length + 1}`];
  return names.find((name) => !taken.includes(name)) ?? which;
};

/** Where the two stand among the heights of the hang. */
type TrimPlaces = {
  readonly low: { readonly index: number } | null;
  readonly high: { readonly index: number } | null;
};

/**
 * A set with its two heights typed anew. `places` says where they stood before, so that both can be
 * typed in one edit although the one taken away moves the other.
 */
export const withTrims = (
  show: JsonObject,
  set: string,
  texts: TrimTexts,
  places: TrimPlaces,
): JsonObject => {
  const path = hangPath(show, set);
  if (path === null) return show;
  const written = at(show, [...path, 'trims']);
  const trims: (Json | undefined)[] = isList(written) ? [...written] : [];
  const fresh: Json[] = [];
  for (const [which, place] of [
    ['in', places.low],
    ['out', places.high],
  ] as const) {
    const text = texts[which];
    if (text === undefined) continue;
    const isBlank = text.trim() === '';
    const old = place === null ? undefined : trims[place.index];
    const isBare = hasGiven(show, [...path, 'trims', place?.index ?? trims.length, 'height']);
    if (place !== null) {
      trims[place.index] =
        isBlank || !isObject(old)
          ? undefined
          : { ...old, height: lengthAnew(old['height'], text, isBare) };
    } else if (!isBlank) {
      const others = [...trims.filter((each) => each !== undefined), ...fresh];
      const height = lengthAnew(undefined, text, isBare);
      fresh.push({ name: freeName(which, others), height, reference: 'batten' });
    }
  }
  const all = [...trims.filter((each) => each !== undefined), ...fresh];
  return withField(show, set, ['trims'], all);
};
