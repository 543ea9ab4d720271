/** What a row is applied to, and what comes of it. */
import type { JsonObject } from '#documents';
import type { House } from '#house';
import type { Refusal } from '#outcome';
import { type Given, readGiven } from './notation.ts';
import { type RowIn, type Said, saidOf } from './rows-in.ts';
import { quoted, refuse } from './sheet.ts';
import type { Anew } from './value-anew.ts';

export type Change = {
  /** The cell that says so: `Schedule!C7`. */
  readonly where: string;
  /** `Set 5, Trim: in (batten)`. */
  readonly about: string;
  /** Blank where there was nothing, or will be nothing. */
  readonly before: string;
  readonly after: string;
  /** `Set 5, Trim: in (batten): 30.5 ft, now 31 ft`. */
  readonly words: string;
};

/** An object being changed by one row, with what was changed and refused so far. */
export type Work = {
  readonly changed: JsonObject;
  readonly changes: readonly Change[];
  readonly refusals: readonly Refusal[];
};

export const begin = (changed: JsonObject): Work => ({ changed, changes: [], refusals: [] });

export const refused = (work: Work, ...refusals: readonly Refusal[]): Work => ({
  ...work,
  refusals: [...work.refusals, ...refusals],
});

export const told = (work: Work, changed: JsonObject, change: Change): Work => ({
  ...work,
  changed,
  changes: [...work.changes, change],
});

/** What a field is called in a list of changes, and what it said before. */
export type Before = { readonly about: string; readonly text: string };

/** Takes an answer for one cell into the work; `write` puts it where it belongs. */
export const taken = (
  work: Work,
  { said, answer, before }: { readonly said: Said; readonly answer: Anew; readonly before: Before },
  write: (json: Extract<Anew, { is: 'new' }>['json']) => JsonObject,
): Work => {
  if (answer.is === 'same') return work;
  if (answer.is === 'refused') return refused(work, answer.refusal);
  const was = before.text === '' ? '' : `${before.text}, now `;
  return told(work, write(answer.json), {
    where: said.where,
    about: before.about,
    before: before.text,
    after: said.text,
    words: `${before.about}: ${was}${said.text}`,
  });
};

export type RowGiven =
  | { readonly ok: true; readonly given: Given }
  | { readonly ok: false; readonly refusal: Refusal };

/** What the row says of how its figures are known; null where it says nothing. */
export const rowGiven = (row: RowIn): RowGiven => {
  const said = saidOf(row, 'knownBy');
  if (said === undefined) return { ok: true, given: null };
  const given = readGiven(said.text);
  if (given !== undefined) return { ok: true, given };
  const accepted = 'weighed; source: …; by: …; on: 2026-05-04';
  const words = { found: quoted(said.text), accepted };
  return { ok: false, refusal: refuse('notRead', said.where, words) };
};

/** The id of the set that a row names, in any case. */
export const setOf = (row: RowIn, house: House): string | Refusal => {
  const said = saidOf(row, 'set');
  if (said === undefined) {
    const accepted = 'the set in every row, or an empty row';
    return refuse('missing', row.where, { found: 'a row without its set', accepted });
  }
  const exact = house.lineSets.find(({ id }) => id === said.text);
  const word = said.text.toLowerCase();
  const found = exact ?? house.lineSets.find(({ id }) => id.toLowerCase() === word);
  if (found !== undefined) return found.id;
  const sets = house.lineSets.map(({ id }) => id);
  const accepted = `one of ${sets.slice(0, 5).join(', ')} … ${sets.at(-1) ?? ''}`;
  return refuse('setUnknown', said.where, { found: quoted(said.text), accepted });
};
