/**
 * What is still unknown, and what waits for it, in plain words. Nothing here is a fault: a house is
 * learned by and by, and each line says what the next measurement is good for.
 */
import type { BrickKind, House, LineSet, LoftWell } from '#house';
import { purchaseOf } from '#house';
import { assert } from '#outcome';
import type { Hang, Item, Show } from '#show';
import { ENGLISH, message, type Names, phrase } from '#texts';
import { isObject, pathTo } from './json.ts';
import { runsOfSets } from './runs-of-sets.ts';
import type { FieldWords } from './unknown-field.ts';
import * as words from './unknown-words.ts';
import { LINE_SET } from './unknown-words-of-sets.ts';

export type Unknown = {
  /** Like the path of a refusal, with ids where a list would have indexes: `lineSets.11.y`. */
  readonly path: string;
  /** What is unknown, and of what; with the reason, where the document gives one. */
  readonly what: string;
  /** What cannot be worked out, checked or drawn without it. */
  readonly blocks: string;
  /** The parts of what is unknown, for another language to make its own sentence of them. */
  readonly parts: Parts;
};

/** Of what a value is asked: a text of ours, and the names that people gave. */
type Owner = { readonly says: string; readonly names: Names };

type Parts = {
  readonly field: string;
  readonly owner: Owner;
  /** With the colon before it; empty where the document gives no reason. */
  readonly why: string;
};

const owned = (says: string, names: Names = {}): Owner => ({ says, names });

const named = (name: string): Owner => owned('{name}', { name });

const ofKind = ({ id, name }: BrickKind): Owner =>
  owned(message('brick {id} ({name})'), { id, name });

const ofBay = ({ id }: { readonly id: string }): Owner =>
  owned(message('head-block bay {id}'), { id });

const ofWell = ({ id }: LoftWell): Owner => owned(message('loft well {id}'), { id });

const whatOf = ({ field, owner, why }: Parts): string =>
  `${field} of ${phrase(ENGLISH, owner.says, owner.names)}${why}`;

/** A value that a house or a show is asked for, and whether it is still unknown. */
export type Asked = Unknown & {
  readonly isUnknown: boolean;
  /** Line sets of which something cannot be said without it. */
  readonly sets: number;
};

const asUnknown = ({ path, what, blocks, parts }: Asked): Unknown => ({
  path,
  what,
  blocks,
  parts,
});

export const unknownsOf = (house: House, show?: Show): readonly Unknown[] =>
  askedOf(house, show)
    .filter(({ isUnknown }) => isUnknown)
    .map(asUnknown);

/**
 * Everything that is asked, known or not, in the order of the house; of a show only what is
 * unknown, since what its items are asked depends on how they are taken off.
 */
export const askedOf = (house: House, show?: Show): readonly Asked[] => {
  const all = house.lineSets.length;
  const withArbor = house.lineSets.filter((set) => purchaseOf(set.suspension) !== null).length;
  const waiting = (sets: number, asked: readonly FoundField[]): readonly Asked[] =>
    asked.map((each) => ({ ...each, sets }));
  return [
    ...waiting(all, among(house.stage, 'stage', words.STAGE, owned(message('the stage')))),
    ...waiting(all, among(house.rules, 'rules', words.RULES, owned(message('the house')))),
    ...waiting(
      withArbor,
      house.brickKinds.flatMap((kind) =>
        among(kind, pathTo('brickKinds', kind.id), words.BRICK, ofKind(kind)),
      ),
    ),
    ...waiting(
      withArbor,
      house.spreader
        ? among(house.spreader, 'spreader', words.SPREADER, owned(message('spreader plates')))
        : [],
    ),
    ...waiting(
      withArbor,
      house.galleries.flatMap((gallery) =>
        among(gallery, pathTo('galleries', gallery.id), words.GALLERY, named(gallery.name)),
      ),
    ),
    ...house.rails.flatMap((rail) =>
      waiting(
        house.lineSets.filter(({ railId }) => railId === rail.id).length,
        among(rail, pathTo('rails', rail.id), words.RAIL, named(rail.name)),
      ),
    ),
    ...house.bays.flatMap((bay) =>
      waiting(bay.sets.length, among(bay, pathTo('bays', bay.id), words.BAY, ofBay(bay))),
    ),
    ...waiting(
      all,
      house.loftWells.flatMap((well) =>
        among(well, pathTo('loftWells', well.id), words.LOFT_WELL, ofWell(well)),
      ),
    ),
    ...waiting(
      0,
      house.equipment.flatMap((aid) =>
        among(aid, pathTo('equipment', aid.id), words.EQUIPMENT, named(aid.name)),
      ),
    ),
    ...askedOfSets(house.lineSets),
    ...waiting(
      1,
      (show?.hangs ?? []).flatMap(unknownsOfHang).map((each) => ({ ...each, isUnknown: true })),
    ),
  ];
};

type FoundField = Unknown & { readonly isUnknown: boolean };

/** Whether a value is plainly unknown; the engine keeps an unknown list as null. */
const whyUnknown = (value: unknown): { readonly why: string } | undefined => {
  if (value === null || value === undefined) return { why: '' };
  if (!isObject(value) || value['known'] !== false) return undefined;
  return { why: typeof value['why'] === 'string' ? `: ${value['why']}` : '' };
};

const at = (holder: unknown, keys: readonly string[]): unknown =>
  keys.reduce<unknown>((value, key) => (isObject(value) ? value[key] : undefined), holder);

const among = (
  holder: object,
  path: string,
  fields: readonly FieldWords[],
  owner: Owner,
): readonly FoundField[] =>
  fields.map(({ keys, documentKeys, what, blocks }) => {
    const unknown = whyUnknown(at(holder, keys));
    const here = (documentKeys ?? keys).reduce(pathTo, path);
    const parts = { field: what, owner, why: unknown?.why ?? '' };
    return {
      path: here,
      what: whatOf(parts),
      blocks,
      parts,
      isUnknown: unknown !== undefined,
    };
  });

/** Only what is unknown of it. */
const unknownAmong = (...asked: Parameters<typeof among>): readonly Unknown[] =>
  among(...asked)
    .filter(({ isUnknown }) => isUnknown)
    .map(({ path, what, blocks, parts }) => ({ path, what, blocks, parts }));

const matters = ({ only }: FieldWords, { suspension }: LineSet): boolean => {
  if (only === 'purchase') return purchaseOf(suspension) !== null;
  return only === undefined || suspension !== 'deadHung';
};

/** One line for each field of a set type, since what a type does not know none of its sets does. */
const askedOfSets = (sets: readonly LineSet[]): readonly Asked[] => {
  const types = [...new Set(sets.map(({ typeId }) => typeId))];
  return types.flatMap((typeId) => {
    const ofType = sets.filter((set) => set.typeId === typeId);
    return LINE_SET.flatMap((field) => askedOfType(field, ofType));
  });
};

const askedOfType = (field: FieldWords, ofType: readonly LineSet[]): readonly Asked[] => {
  const asked = ofType.filter((set) => matters(field, set));
  if (asked.length === 0) return [];
  const missing = asked.filter((set) => whyUnknownOf(field, set));
  const sets = missing.length;
  const told = unknownOfSets(field, sets > 0 ? missing : asked, ofType.length);
  return [{ ...told, isUnknown: sets > 0, sets }];
};

/** Of a list that is known, the first entry that is not known in full. */
const whyUnknownOf = ({ keys, each }: FieldWords, set: LineSet) => {
  const value = at(set, keys);
  if (each === undefined) return whyUnknown(value);
  const entries: readonly unknown[] = Array.isArray(value) ? value : [];
  return entries.map((entry) => whyUnknown(at(entry, each))).find((why) => why !== undefined);
};

/** What no set type can say for its sets: where one hangs, and what a test of it found. */
const OF_ONE_SET: ReadonlySet<string> = new Set(['y', 'lock']);

const unknownOfSets = (field: FieldWords, missing: readonly LineSet[], ofType: number): Unknown => {
  const { keys, documentKeys, what, blocks } = field;
  const [first] = missing;
  assert(first !== undefined, 'a value was asked of no set');
  const isWholeType = missing.length === ofType && ofType > 1 && !OF_ONE_SET.has(keys[0] ?? '');
  const holder = isWholeType ? pathTo('setTypes', first.typeId) : pathTo('lineSets', first.id);
  const sets = runsOfSets(missing.map(({ id }) => id));
  const owner =
    missing.length > 1
      ? owned(message('line sets {sets}'), { sets })
      : owned(message('line set {sets}'), { sets });
  const parts = { field: what, owner, why: whyUnknownOf(field, first)?.why ?? '' };
  return {
    path: (documentKeys ?? keys).reduce(pathTo, holder),
    what: whatOf(parts),
    blocks,
    parts,
  };
};

const onSet = (name: string, { set }: Hang): Owner =>
  owned(message('{name} (line set {set})'), { name, set });

const unknownsOfHang = (hang: Hang): readonly Unknown[] => {
  const path = pathTo('hangs', hang.set);
  const { name, set } = hang;
  const owner = onSet(hang.name, hang);
  return [
    ...unknownAmong(hang, path, words.HANG, owner),
    ...hang.trims.flatMap((trim) =>
      unknownAmong(
        trim,
        pathTo(pathTo(path, 'trims'), trim.name),
        words.TRIM,
        owned(message('{trim} of {name} (line set {set})'), { trim: trim.name, name, set }),
      ),
    ),
    ...(hang.deadHungAt && !hang.deadHungAt.known
      ? unknownAmong(hang, path, words.DEAD_HUNG, owner)
      : []),
    ...hang.items.flatMap((item) => unknownsOfItem(item, hang, path)),
  ];
};

const unknownsOfItem = (item: Item, hang: Hang, path: string): readonly Unknown[] => {
  const here = pathTo(pathTo(path, 'items'), item.id);
  const owner = onSet(item.name, hang);
  const isLoom = item.takeoff.by === 'loom';
  return [
    ...(isLoom ? [] : unknownAmong(item, here, words.ITEM, owner)),
    ...(isLoom || hasPlaces(item) ? [] : unknownAmong(item, here, words.PLACEMENT, owner)),
    ...(item.kind === 'tipping' && !hasOwnCentre(item)
      ? unknownAmong(item, here, words.CENTRE, owner)
      : []),
    ...unknownsInside(item.takeoff, pathTo(here, 'takeoff'), { owner, item }),
    ...item.releases.flatMap((release, index) =>
      unknownAmong(release, pathTo(pathTo(here, 'releases'), index), words.RELEASE, owner),
    ),
  ];
};

/** Units that stand in a row say themselves where they are. */
const hasPlaces = ({ takeoff }: Item): boolean =>
  takeoff.by === 'units' && takeoff.units.every(({ xs }) => xs !== null);

/** Built scenery gets its centre from its parts. */
const hasOwnCentre = (item: Item): boolean => item.takeoff.by === 'frame';

type Inside = { readonly owner: Owner; readonly item: Item };

/** Every unknown in a take-off, whatever its kind; an absent choice such as no hem is none. */
const unknownsInside = (value: unknown, path: string, inside: Inside): readonly Unknown[] => {
  if (Array.isArray(value)) {
    return value.flatMap((entry, index) => unknownsInside(entry, pathTo(path, index), inside));
  }
  if (!isObject(value) || value['known'] === true) return [];
  const unknown = value['known'] === false ? whyUnknown(value) : undefined;
  if (!unknown) {
    return Object.entries(value).flatMap(([key, entry]) =>
      unknownsInside(entry, pathTo(path, key), inside),
    );
  }
  const field = path.split('.').at(-1) ?? '';
  if (field === 'z' && inside.item.kind !== 'tipping') return [];
  if (field === 'fixedAt' && inside.item.kind === 'deckLoom') return [];
  const parts = { field: words.takeoffWords(field), owner: inside.owner, why: unknown.why };
  return [
    {
      path,
      what: whatOf(parts),
      parts,
      blocks:
        field === 'z'
          ? message('the centre of gravity worked out from the parts')
          : message('the mass of the item, and so the balance and the bricks of its set'),
    },
  ];
};
