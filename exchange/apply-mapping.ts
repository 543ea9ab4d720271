/**
 * A mapped sheet applied to a show document: the next document and what would change, in words; or
 * every refusal with its cell. The document given in is not touched, and the one that comes out is
 * still to be read and judged by `#documents`. Sets and items without a row stay as they are.
 */
import type { Json, JsonObject } from '#documents';
import type { House } from '#house';
import { fail, ok, type Refusal, type Result } from '#outcome';
import { hangAnew, isHanging, keptAnew } from './apply-schedule.ts';
import { idFor, itemAnew, itemPlace } from './apply-takeoff.ts';
import { REFUSALS_MAX } from './limits.ts';
import { type Mapping, openQuestions } from './mapping.ts';
import { type Given, givenIn, isObject, listOf } from './notation.ts';
import { type RowIn, rowsIn } from './rows-in.ts';
import { refuse, type Sheet } from './sheet.ts';
import { begin, type Change, refused, rowGiven, setOf, type Work } from './work.ts';

export type Applied = { readonly document: JsonObject; readonly changes: readonly Change[] };

export type ToApply = {
  readonly mapping: Mapping;
  readonly sheet: Sheet;
  readonly show: JsonObject;
  readonly house: House;
};

type Spot = {
  readonly row: RowIn;
  readonly set: string;
  /** What the row says of how its figures are known. */
  readonly given: Given;
  readonly house: House;
};

/** The work on an inner object is taken into that on the document. */
const joined = (work: Work, inner: Work, changed: JsonObject): Work => ({
  changed: inner.changes.length > 0 ? changed : work.changed,
  changes: [...work.changes, ...inner.changes],
  refusals: [...work.refusals, ...inner.refusals],
});

const hangIndex = (hangs: readonly Json[], set: string): number =>
  hangs.findIndex((one) => isObject(one) && one['set'] === set);

/** Where a new hang stands, so that the document stays in rail order. */
const railPlace = (hangs: readonly Json[], set: string, house: House): number => {
  const order = new Map(house.lineSets.map(({ id }, at) => [id, at]));
  const own = order.get(set) ?? 0;
  const place = (one: Json): number =>
    order.get(isObject(one) ? String(one['set']) : '') ?? Number.POSITIVE_INFINITY;
  const later = hangs.findIndex((one) => place(one) > own);
  return later < 0 ? hangs.length : later;
};

const scheduleRow = (work: Work, { row, set, given, house }: Spot): Work => {
  const hangs = listOf(work.changed['hangs']);
  const at = hangIndex(hangs, set);
  const hung = hangs[at];
  const isHung = at >= 0 || isHanging(row);
  const kept = keptAnew(work, row, set, isHung);
  if (!isHung) return kept;
  const blank: JsonObject = { set, trims: [], items: [] };
  const hang = isObject(hung) ? hung : blank;
  const inner = hangAnew(hang, row, { set, above: givenIn(work.changed, null), row: given });
  const next =
    at < 0
      ? hangs.toSpliced(railPlace(hangs, set, house), 0, ordered(inner.changed))
      : hangs.with(at, inner.changed);
  return joined(kept, inner, { ...kept.changed, hangs: next });
};

/** As documents are written by hand: what it is before where it goes. */
const ordered = ({ set, name, family, ...rest }: JsonObject): JsonObject => ({
  set: set ?? null,
  name: name ?? null,
  family: family ?? null,
  ...rest,
});

const takeoffRow = (work: Work, { row, set, given }: Spot): Work => {
  const hangs = listOf(work.changed['hangs']);
  const at = hangIndex(hangs, set);
  const hang = hangs[at];
  if (!isObject(hang)) {
    const accepted = 'the schedule first, so that something hangs there';
    const found = `an item on set ${set}, on which nothing hangs`;
    return refused(work, refuse('missing', row.where, { found, accepted }));
  }
  const items = listOf(hang['items']);
  const place = itemPlace(row, items);
  const old = items[place];
  const item = isObject(old) ? old : { id: idFor(row, items) };
  const above = givenIn(hang, givenIn(work.changed, null));
  const inner = itemAnew(item, row, { set, above, row: given });
  const next = place < 0 ? [...items, inner.changed] : items.with(place, inner.changed);
  return joined(work, inner, {
    ...work.changed,
    hangs: hangs.with(at, { ...hang, items: next }),
  });
};

/** A set has one row of a schedule, and an item of a set one of a take-off. */
const rowKey = (mapping: Mapping, set: string, { row }: Spot): string => {
  const words = row.said.filter(
    ({ to }) => to.is === 'field' && (to.field === 'item' || to.field === 'name'),
  );
  const item = words.find(({ to }) => to.is === 'field' && to.field === 'item') ?? words[0];
  return mapping.table === 'schedule' ? set : JSON.stringify([set, item?.text ?? '']);
};

const withRow = (
  work: Work,
  row: RowIn,
  { mapping, house, seen }: Pick<ToApply, 'mapping' | 'house'> & { seen: Map<string, string> },
): Work => {
  const set = setOf(row, house);
  if (typeof set !== 'string') return refused(work, set);
  const given = rowGiven(row);
  if (!given.ok) return refused(work, given.refusal);
  const spot: Spot = { row, set, given: given.given, house };
  const key = rowKey(mapping, set, spot);
  const before = seen.get(key);
  seen.set(key, row.where);
  if (before !== undefined) {
    const accepted = 'one row for each set, and for each item of a set';
    const found = `set ${set} again, after ${before}`;
    return refused(work, refuse('rowTwice', row.where, { found, accepted }));
  }
  return mapping.table === 'schedule' ? scheduleRow(work, spot) : takeoffRow(work, spot);
};

/** What every row would become, and every cell that is refused; the document only where none is. */
export type Preview = Applied & { readonly refusals: readonly Refusal[] };

export const previewMapping = ({ mapping, sheet, show, house }: ToApply): Preview => {
  const questions = openQuestions(mapping, sheet);
  if (questions.length > 0) return { document: show, changes: [], refusals: questions };
  const { rows, refusals } = rowsIn(mapping, sheet);
  const seen = new Map<string, string>();
  let work = refused(begin(show), ...refusals);
  for (const row of rows) {
    work = withRow(work, row, { mapping, house, seen });
    if (work.refusals.length >= REFUSALS_MAX) break;
  }
  return {
    document: work.refusals.length > 0 ? show : work.changed,
    changes: work.changes,
    refusals: work.refusals.slice(0, REFUSALS_MAX),
  };
};

export const applyMapping = (asked: ToApply): Result<Applied, readonly Refusal[]> => {
  const { refusals, ...applied } = previewMapping(asked);
  return refusals.length > 0 ? fail(refusals) : ok(applied);
};
