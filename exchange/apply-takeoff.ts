/** One row of a take-off, applied to its item. A blank cell changes nothing. */
import type { Json, JsonObject } from '#documents';
import { wordsAnew } from './apply-schedule.ts';
import type { Field } from './fields.ts';
import { fieldNamed } from './mapping.ts';
import { type Given, givenIn, isObject } from './notation.ts';
import {
  type PartsFault,
  partsText,
  placementText,
  readParts,
  readPlacement,
  readReleases,
  releasesText,
} from './parts.ts';
import { type RowIn, type Said, saidOf } from './rows-in.ts';
import { quoted, refuse } from './sheet.ts';
import { itemText, lookUp } from './tables-out.ts';
import { type Anew, anew, refusedAs, SAME, valueAnew, withValue } from './value-anew.ts';
import { begin, refused, taken, type Work } from './work.ts';

type About = { readonly set: string; readonly above: Given; readonly row: Given };

const isUnread = (read: unknown): read is PartsFault =>
  isObject(read) && 'found' in read && 'accepted' in read;

const unread = (said: Said, { found, accepted }: PartsFault): Anew =>
  refusedAs(refuse('notRead', said.where, { found: quoted(found), accepted }));

/** A list in a cell: the same where it would be written the same, else put in whole. */
const listAnew = (
  said: Said,
  { before, now }: { readonly before: string; readonly now: Json | PartsFault },
): Anew => {
  if (before === said.text.replace(/\r\n?/g, '\n')) return SAME;
  return isUnread(now) ? unread(said, now) : anew(now as Json);
};

const lists = (said: Said, takeoff: JsonObject, row: Given): Json | PartsFault => {
  const read = readParts(said.text, String(takeoff['by']), row);
  return read.ok ? { ...takeoff, ...read.lists } : read.fault;
};

/** As it is written out for a row that says how its figures are known. */
const writtenFor = (item: JsonObject, row: Given, above: Given, field: string): string => {
  const given = givenIn(item, above);
  const takeoff = isObject(item['takeoff']) ? item['takeoff'] : {};
  return field === 'parts'
    ? partsText(takeoff, givenIn(takeoff, given), row ?? given)
    : releasesText(item['releases'], given, row ?? given);
};

const ownAnew = (item: JsonObject, said: Said, about: About, field: string): Anew => {
  const takeoff = isObject(item['takeoff']) ? item['takeoff'] : {};
  switch (field) {
    case 'parts': {
      const before = writtenFor(item, about.row, about.above, field);
      return listAnew(said, { before, now: lists(said, takeoff, about.row) });
    }
    case 'releases': {
      const before = writtenFor(item, about.row, about.above, field);
      return listAnew(said, { before, now: readReleases(said.text, about.row) });
    }
    case 'placement': {
      const before = placementText(item['placement']);
      return listAnew(said, { before, now: readPlacement(said.text) });
    }
    default: {
      const is = item['carriesPerson'] === true ? 'yes' : 'no';
      const answer = wordsAnew(said, is, ['yes', 'no']);
      return answer.is === 'new' ? anew(said.text === 'yes') : answer;
    }
  }
};

const PLACE: Readonly<Record<string, readonly string[]>> = { parts: ['takeoff'] };

const otherTakeoff = (said: Said, one: Field, by: string): Anew => {
  const found = `${quoted(said.text)} for an item weighed by ${by}`;
  const accepted = `a blank, or ${one.by?.join(' or ') ?? ''} under Weighed by`;
  return refusedAs(refuse('otherTakeoff', said.where, { found, accepted }));
};

const fieldAnew = (item: JsonObject, said: Said, about: About, one: Field): Anew => {
  const by = String(lookUp(item, ['takeoff', 'by'], null).value);
  if (one.by !== undefined && !one.by.includes(by)) return otherTakeoff(said, one, by);
  if (one.at === undefined) return ownAnew(item, said, about, one.field);
  const { value, given } = lookUp(item, one.at, about.above);
  if (one.reads.is === 'measure' || one.reads.is === 'number') {
    return valueAnew(said, { before: value, above: given, row: about.row, reads: one.reads });
  }
  return wordsAnew(said, value, one.reads.is === 'choice' ? one.reads.choices : undefined);
};

const OWN_CODE = ['set', 'item', 'by', 'knownBy'];

const nameOf = (item: JsonObject): string => String(item['name'] ?? item['id'] ?? 'item');

const withField = (work: Work, said: Said, about: About): Work => {
  if (said.to.is !== 'field' || OWN_CODE.includes(said.to.field)) return work;
  const one = fieldNamed('takeoff', said.to.field);
  if (one === undefined) return work;
  const item = work.changed;
  const path = one.at ?? PLACE[one.field] ?? [one.field];
  // What holds for all rows fills what is not there, and overrules nothing.
  if (!said.isOwn && lookUp(item, path, null).value !== undefined) return work;
  const before = {
    about: `Set ${about.set}, ${nameOf(item)}, ${one.heading}`,
    text: itemText(item, one, about.above),
  };
  const answer = fieldAnew(item, said, about, one);
  return taken(work, { said, answer, before }, (json) => withValue(item, path, json));
};

/** How the item is weighed; another way begins with none of the figures of the old one. */
const withBy = (work: Work, row: RowIn, set: string): Work => {
  const said = saidOf(row, 'by');
  const item = work.changed;
  const by = lookUp(item, ['takeoff', 'by'], null).value;
  const choices = fieldNamed('takeoff', 'by')?.reads;
  if (said === undefined || (!said.isOwn && by !== undefined)) return work;
  const answer = wordsAnew(said, by, choices?.is === 'choice' ? choices.choices : []);
  const about = `Set ${set}, ${nameOf(item)}, Weighed by`;
  const text = typeof by === 'string' ? by : '';
  return taken(work, { said, answer, before: { about, text } }, (json) => ({
    ...item,
    takeoff: { by: json },
  }));
};

/** Whose mass nobody has said is unknown; a total that is a guess would be worse. */
const UNSAID: JsonObject = { by: 'mass', mass: { unknown: 'not in the table' } };

const completed = (work: Work, row: RowIn, set: string): Work => {
  let now = work;
  for (const key of ['name', 'kind']) {
    if (now.changed[key] !== undefined || saidOf(row, key) !== undefined) continue;
    const found = `an item on set ${set} without its ${key}`;
    const accepted = `${fieldNamed('takeoff', key)?.heading ?? key} for an item that is new`;
    now = refused(now, refuse('missing', row.where, { found, accepted }));
  }
  return now;
};

/** An item from its row; `item` is empty but for its id where it is new. */
export const itemAnew = (item: JsonObject, row: RowIn, about: About): Work => {
  let work = withBy(begin(item), row, about.set);
  const isUnsaid = work.changed['takeoff'] === undefined;
  if (isUnsaid) work = { ...work, changed: { ...work.changed, takeoff: UNSAID } };
  for (const said of row.said) work = withField(work, said, about);
  return completed(work, row, about.set);
};

/** Which item of a set a row is about: by its id, or by its name where the table has no ids. */
export const itemPlace = (row: RowIn, items: readonly Json[]): number => {
  const id = saidOf(row, 'item')?.text;
  const name = saidOf(row, 'name')?.text;
  const isIt = (one: Json): boolean =>
    isObject(one) && (id === undefined ? one['name'] === name : one['id'] === id);
  return id === undefined && name === undefined ? -1 : items.findIndex(isIt);
};

/** An id in the letters that a document takes, from the name, that no other item has. */
export const idFor = (row: RowIn, items: readonly Json[]): string => {
  const given = saidOf(row, 'item')?.text;
  if (given !== undefined) return given;
  const taken = new Set(items.map((one) => (isObject(one) ? one['id'] : undefined)));
  const letters = (saidOf(row, 'name')?.text ?? '').normalize('NFD').toLowerCase();
  const stem =
    letters
      .replace(/[^a-z0-9]+/g, '-')
      .slice(0, 24)
      .replace(/^-+|-+$/g, '') || 'item';
  let id = stem;
  for (let count = 2; taken.has(id); count += 1) id = `${stem}-${count}`;
  return id;
};
