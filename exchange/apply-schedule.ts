/** One row of a schedule, applied to the hang of its set. A blank cell changes nothing. */
import type { Json, JsonObject } from '#documents';
import { bricksHeading, trimHeading } from './fields.ts';
import { fieldNamed } from './mapping.ts';
import { type Given, givenIn, isObject, isSame, listOf, splitAt } from './notation.ts';
import { type RowIn, type Said, saidOf } from './rows-in.ts';
import { quoted, refuse } from './sheet.ts';
import { hangText, lookUp, trimText } from './tables-out.ts';
import {
  type Anew,
  anew,
  notRead,
  refusedAs,
  SAME,
  valueAnew,
  withoutKey,
  withValue,
} from './value-anew.ts';
import { type Before, begin, refused, taken, told, type Work } from './work.ts';

type About = { readonly set: string; readonly above: Given; readonly row: Given };

/** Text and choices; the same words with other spaces around them are no change. */
export const wordsAnew = (
  said: Said,
  before: Json | undefined,
  choices?: readonly string[],
): Anew => {
  if (typeof before === 'string' && before.trim() === said.text) return SAME;
  if (choices !== undefined && !choices.includes(said.text)) {
    const accepted = `one of ${choices.join(', ')}`;
    return refusedAs(refuse('badChoice', said.where, { found: quoted(said.text), accepted }));
  }
  return anew(said.text);
};

const withTrim = (work: Work, said: Said, about: About): Work => {
  if (said.to.is !== 'trim') return work;
  const { name, reference } = said.to;
  const hang = work.changed;
  const trims = listOf(hang['trims']);
  const at = trims.findIndex((one) => isObject(one) && one['name'] === name);
  const trim = at < 0 ? undefined : trims[at];
  const isSameReference = isObject(trim) && trim['reference'] === reference;
  const { value, given } = lookUp(
    isObject(trim) ? trim : {},
    ['height'],
    givenIn(hang, about.above),
  );
  const answer = valueAnew(said, {
    before: isSameReference ? value : undefined,
    above: given,
    row: about.row,
    reads: { is: 'measure', dimension: 'length' },
  });
  const text = isObject(trim) ? trimText(hang, { name, reference }, about.above) : '';
  const heading = `Set ${about.set}, ${trimHeading(name, reference)}`;
  const isUnsaid = isSameReference && text === said.text;
  return taken(
    work,
    { said, answer: isUnsaid ? SAME : answer, before: { about: heading, text } },
    (height) => {
      const next: JsonObject = { ...(isObject(trim) ? trim : { name }), height, reference };
      return { ...hang, trims: at < 0 ? [...trims, next] : trims.with(at, next) };
    },
  );
};

/** A nought on a set whose bricks nobody has fixed fixes nothing, unless a reason stands by it. */
const withCount = (work: Work, said: Said, row: RowIn, { set }: About): Work => {
  if (said.to.is !== 'bricks') return work;
  const { kind } = said.to;
  const bricks = isObject(work.changed['bricks']) ? work.changed['bricks'] : {};
  const counts = isObject(bricks['counts']) ? bricks['counts'] : {};
  const before: Before = {
    about: `Set ${set}, ${bricksHeading(kind)}`,
    text: String(counts[kind] ?? ''),
  };
  const isCount = /^\d{1,6}$/.test(said.text);
  const answer = isCount ? anew(Number(said.text)) : notRead(said, 'a whole number of bricks');
  const isFixed = work.changed['bricks'] !== undefined || saidOf(row, 'bricksWhy') !== undefined;
  const old = isFixed ? counts[kind] : 0;
  const isSaid = isCount && Number(said.text) === old;
  return taken(work, { said, answer: isSaid ? SAME : answer, before }, (count) => ({
    ...work.changed,
    bricks: { ...bricks, counts: { ...counts, [kind]: count } },
  }));
};

/** Whoever fixes bricks says why; the document has no room for bricks without it. */
const withReason = (work: Work, row: RowIn, { set }: About): Work => {
  const fixed = work.changed['bricks'];
  const said = saidOf(row, 'bricksWhy');
  const bricks = isObject(fixed) ? fixed : {};
  if (said?.isOwn || (said !== undefined && isObject(fixed))) {
    const text = String(bricks['reason'] ?? '');
    const before = { about: `Set ${set}, Bricks: why`, text };
    const answer = wordsAnew(said, bricks['reason']);
    const counts = bricks['counts'] ?? {};
    return taken(work, { said, answer, before }, (reason) => ({
      ...work.changed,
      bricks: { ...bricks, counts, reason },
    }));
  }
  if (!isObject(fixed) || bricks['reason'] !== undefined) return work;
  const accepted = 'the reason in Bricks: why';
  return refused(
    work,
    refuse('missing', row.where, {
      found: `bricks fixed on set ${set} without a reason`,
      accepted,
    }),
  );
};

const fieldAnew = (work: Work, said: Said, about: About, name: string): Anew => {
  const one = fieldNamed('schedule', name);
  const hang = work.changed;
  if (name === 'coupledWith') {
    const sets = splitAt(said.text.replaceAll(',', ';'), ';');
    return isSame(sets, listOf(hang['coupledWith'])) ? SAME : anew(sets);
  }
  const { value, given } = lookUp(hang, one?.at ?? [name], about.above);
  if (one?.reads.is === 'measure') {
    return valueAnew(said, { before: value, above: given, row: about.row, reads: one.reads });
  }
  return wordsAnew(said, value, one?.reads.is === 'choice' ? one.reads.choices : undefined);
};

const OWN_CODE = ['set', 'knownBy', 'bricksWhy', 'keptEmpty'];

const withField = (work: Work, said: Said, about: About): Work => {
  if (said.to.is !== 'field' || OWN_CODE.includes(said.to.field)) return work;
  const { field } = said.to;
  const one = fieldNamed('schedule', field);
  if (one === undefined) return work;
  // What holds for all rows fills what is not there, and overrules nothing.
  if (!said.isOwn && work.changed[field] !== undefined) return work;
  const before = {
    about: `Set ${about.set}, ${one.heading}`,
    text: hangText(work.changed, one, about.above),
  };
  const answer = fieldAnew(work, said, about, field);
  return taken(work, { said, answer, before }, (json) =>
    withValue(work.changed, one.at ?? [field], json),
  );
};

/** A hang from its row; what is missing of a new one is refused. */
export const hangAnew = (hang: JsonObject, row: RowIn, about: About): Work => {
  let work = begin(hang);
  for (const said of row.said) {
    work = withField(withCount(withTrim(work, said, about), said, row, about), said, about);
  }
  work = withReason(work, row, about);
  for (const key of ['name', 'family']) {
    if (work.changed[key] !== undefined || saidOf(row, key) !== undefined) continue;
    const found = `set ${about.set} without its ${key}`;
    const accepted = `${fieldNamed('schedule', key)?.heading ?? key} for whatever is hung anew`;
    work = refused(work, refuse('missing', row.where, { found, accepted }));
  }
  return work;
};

/** Whether a row hangs anything, and is not only the name of an empty set. */
export const isHanging = (row: RowIn): boolean =>
  row.said.some(
    ({ to, isOwn, text }) =>
      isOwn &&
      (to.is === 'trim' ||
        (to.is === 'bricks' && Number(text) !== 0) ||
        (to.is === 'field' && !['set', 'knownBy', 'keptEmpty'].includes(to.field))),
  );

/** The document with a set kept empty, or no longer. */
export const keptAnew = (work: Work, row: RowIn, set: string, isHung: boolean): Work => {
  const said = saidOf(row, 'keptEmpty');
  const kept = isObject(work.changed['keptEmpty']) ? work.changed['keptEmpty'] : {};
  if (said?.isOwn && isHung) {
    const accepted = 'a set kept empty, or something on it';
    const found = `set ${set} hung, and ${quoted(said.text)}`;
    return refused(work, refuse('hungAndEmpty', said.where, { found, accepted }));
  }
  if (isHung) {
    if (kept[set] === undefined) return work;
    const reason = String(kept[set]);
    const without = { ...work.changed, keptEmpty: withoutKey(kept, set) };
    return told(work, without, {
      where: row.where,
      about: `Set ${set}, Kept empty`,
      before: reason,
      after: '',
      words: `Set ${set}: no longer kept empty (${reason})`,
    });
  }
  if (said === undefined) return work;
  const before = { about: `Set ${set}, Kept empty`, text: String(kept[set] ?? '') };
  return taken(work, { said, answer: wordsAnew(said, kept[set]), before }, (reason) => ({
    ...work.changed,
    keptEmpty: { ...kept, [set]: reason },
  }));
};
