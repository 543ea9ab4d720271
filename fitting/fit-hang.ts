/** One hang written for a set of another house: what that set does not reach or hold is changed. */
import type { Json, JsonObject } from '#documents';
import type { House, LineSet } from '#house';
import { pastBatten } from '#placing';
import { formatLength, metres } from '#quantities';
import type { Hang } from '#show';
import { isList, isObject } from './json.ts';
import type { FitChange } from './types.ts';

export type FittedHang = { readonly written: JsonObject; readonly changes: readonly FitChange[] };

type Spot = { readonly lineSet: LineSet; readonly from: House };

/** Room for the rounding of feet to metres, as the documents have it. */
const ROUNDING_M = 1e-9;

/** The nearest height that the batten reaches; an unknown stop bounds nothing. */
export const reached = (heightM: number, { lowStop, highStop }: LineSet): number => {
  const { height: low } = lowStop;
  const { height: high } = highStop;
  if (low.known && heightM < low.value - ROUNDING_M) return low.value;
  return high.known && heightM > high.value + ROUNDING_M ? high.value : heightM;
};

const plain = (text: string): string => text.replaceAll('\u00a0', ' ');

/** A height in words that are read as no higher: metres, down to the micrometre. */
export const heightText = (heightM: number): string => `${Math.floor(heightM * 1e6) / 1e6} m`;

const nearest = (wasM: number, nowM: number, { lineSet, from }: Spot): JsonObject => ({
  value: heightText(nowM),
  basis: 'assumption',
  source: plain(
    `nearest that set ${lineSet.id} reaches; ${formatLength(metres(wasM), from)} at ${from.name}`,
  ).slice(0, 200),
});

const fitTrims = (raw: Json | undefined, hang: Hang, spot: Spot) => {
  const changes: FitChange[] = [];
  const written = (isList(raw) ? raw : []).map((each, index): Json => {
    const trim = hang.trims[index];
    if (!isObject(each) || trim === undefined || !trim.height.known) return each;
    if (trim.reference !== 'batten') return each;
    const wasM = trim.height.value;
    const nowM = reached(wasM, spot.lineSet);
    if (nowM === wasM) return each;
    changes.push({ is: 'trim', name: trim.name, wasM, nowM });
    return { ...each, height: nearest(wasM, nowM, spot) };
  });
  return { written, changes };
};

const without = (object: JsonObject, ...keys: readonly string[]): JsonObject =>
  Object.fromEntries(Object.entries(object).filter(([key]) => !keys.includes(key)));

/** An item that would pull past the end of the pipe has no place until somebody gives it one. */
const withoutPlace = (item: JsonObject): JsonObject => {
  const { takeoff } = item;
  if (!isObject(takeoff) || !isList(takeoff['units'])) return without(item, 'placement');
  const units = takeoff['units'].map((unit) => (isObject(unit) ? without(unit, 'xs') : unit));
  return { ...without(item, 'placement'), takeoff: { ...takeoff, units } };
};

const fitItems = (raw: Json | undefined, hang: Hang, { lineSet }: Spot) => {
  const changes: FitChange[] = [];
  const written = (isList(raw) ? raw : []).map((each, index): Json => {
    const item = hang.items[index];
    const [past] = item === undefined ? [] : pastBatten([item], lineSet.batten);
    if (past === undefined || !isObject(each)) return each;
    changes.push({ is: 'place', ...past });
    return withoutPlace(each);
  });
  return { written, changes };
};

const fitSteel = (hang: Hang, spot: Spot) => {
  const { deadHungAt } = hang;
  if (deadHungAt === null || !deadHungAt.known) return null;
  if (reached(deadHungAt.value, spot.lineSet) === deadHungAt.value) return null;
  const was = plain(formatLength(deadHungAt.value, spot.from));
  return {
    written: { deadHungAt: { unknown: `${was} at ${spot.from.name} is out of reach here` } },
    change: { is: 'deadHung', wasM: deadHungAt.value } as const,
  };
};

/** `raw` and `hang` are one hang, as written and as read. Bricks belong to the arbor it leaves. */
export const fitHang = (raw: JsonObject, hang: Hang, spot: Spot): FittedHang => {
  const trims = fitTrims(raw['trims'], hang, spot);
  const items = fitItems(raw['items'], hang, spot);
  const steel = fitSteel(hang, spot);
  const written: JsonObject = {
    ...without(raw, 'bricks'),
    set: spot.lineSet.id,
    ...(raw['trims'] === undefined ? {} : { trims: trims.written }),
    ...(raw['items'] === undefined ? {} : { items: items.written }),
    ...steel?.written,
  };
  return {
    written,
    changes: [
      ...trims.changes,
      ...items.changes,
      ...(steel === null ? [] : [steel.change]),
      ...(hang.bricks === null ? [] : [{ is: 'bricks' } as const]),
    ],
  };
};
