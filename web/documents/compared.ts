/** Two revisions of one document worked out side by side, for the drawing of what differs. */
import {
  assess,
  type HouseMoment,
  recordedMoment,
  type SetAssessment,
  trimMoment,
  trimNames,
} from '#assessment';
import type { DifferenceGroup } from '#differences';
import { blankShow, readHouseValue, readShowValue, readStateValue } from '#documents';
import { markLetter } from '#drawings';
import type { House } from '#house';
import { fail, ok, type Refusal, type Result } from '#outcome';
import type { JsonObject } from '../keeping/json.ts';
import type { Kept, Open } from '../keeping/kept.ts';

export type Worked = { readonly house: House; readonly sets: readonly SetAssessment[] };
export type Compared = { readonly before: Worked; readonly after: Worked };

type Raw = {
  readonly house: JsonObject;
  readonly show: JsonObject;
  readonly state: JsonObject | null;
};

const ofHouse = ({ documents }: Open, kind: Kept['kind'], house: unknown): Kept | undefined =>
  Object.values(documents).find((each) => each.kind === kind && each.document['house'] === house);

/** A house is drawn with a show in it: the one in view where it is of this house, or the first. */
const showFor = (open: Open, house: JsonObject, inView: string | null): JsonObject => {
  const id = String(house['id']);
  const asked = open.documents[`show:${inView}`];
  const show = asked?.document['house'] === id ? asked : ofHouse(open, 'show', id);
  return show?.document ?? blankShow({ id: 'none', name: 'No show', house: id });
};

/** The documents with one revision put in place of what is there now. */
const rawOf = (
  open: Open,
  kind: Kept['kind'],
  document: JsonObject,
  inView: string | null,
): Raw | null => {
  if (kind === 'house') {
    return { house: document, show: showFor(open, document, inView), state: null };
  }
  const house = Object.values(open.documents).find(
    (each) => each.kind === 'house' && each.document['id'] === document['house'],
  );
  if (house === undefined) return null;
  return kind === 'show'
    ? { house: house.document, show: document, state: null }
    : { house: house.document, show: showFor(open, house.document, inView), state: document };
};

const worked = (raw: Raw): Result<Worked, readonly Refusal[]> => {
  const house = readHouseValue(raw.house);
  if (!house.ok) return house;
  const plant = house.value.house;
  const show = readShowValue(raw.show, plant);
  if (!show.ok) return show;
  const state = raw.state === null ? null : readStateValue(raw.state, plant);
  if (state !== null && !state.ok) return state;
  const { sets } = assess(plant, show.value.show, state?.value.state ?? null);
  return ok({ house: plant, sets });
};

export type NotDrawn = { readonly which: 'older' | 'newer'; readonly refusals: readonly Refusal[] };

export type Pair = { readonly before: JsonObject; readonly after: JsonObject };

/** Both worked out, or which of the two no longer fits what is there now. */
export const compared = (
  open: Open,
  kind: Kept['kind'],
  pair: Pair,
  inView: string | null,
): Result<Compared, NotDrawn> => {
  const both = [pair.before, pair.after].map((document) => {
    const raw = rawOf(open, kind, document, inView);
    return raw === null ? fail([]) : worked(raw);
  });
  const [before, after] = both;
  if (before?.ok !== true) return fail({ which: 'older', refusals: before?.error ?? [] });
  if (after?.ok !== true) return fail({ which: 'newer', refusals: after?.error ?? [] });
  return ok({ before: before.value, after: after.value });
};

/** Moments that can be drawn: of a record the record, else every trim of either. */
export const momentsOf = (kind: Kept['kind'], { before, after }: Compared): readonly string[] =>
  kind === 'state' ? [] : [...new Set([...trimNames(after.sets), ...trimNames(before.sets)])];

export const momentAt = (
  kind: Kept['kind'],
  { sets }: Worked,
  trim: string | undefined,
): HouseMoment => (kind === 'state' ? recordedMoment(sets) : trimMoment(sets, trim ?? ''));

/** The trim at which most sets stand at another height than before: there is most to see. */
export const mostApart = (
  trims: readonly string[],
  { before, after }: Compared,
): string | undefined => {
  const apart = trims.map((trim) => {
    const [then, now] = [trimMoment(before.sets, trim), trimMoment(after.sets, trim)];
    const differs = [...now.sets].filter(
      ([set, { heightM }]) => heightM !== (then.sets.get(set)?.heightM ?? null),
    );
    return { trim, count: differs.length };
  });
  return apart.toSorted((one, other) => other.count - one.count)[0]?.trim;
};

export type Mark = {
  readonly letter: string;
  readonly set: string;
  readonly heading: string;
  readonly words: readonly string[];
};

/** A letter for each set that differs, in the order of the words. */
export const marksOf = (groups: readonly DifferenceGroup[]): readonly Mark[] =>
  groups
    .flatMap(({ set, heading, lines }) =>
      set === null ? [] : [{ set, heading, words: lines.map(({ words }) => words) }],
    )
    .map((mark, index) => ({ ...mark, letter: markLetter(index) }));
