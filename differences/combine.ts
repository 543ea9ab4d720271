/**
 * Two documents that began from one, put together place by place: what only one of the two changed
 * is taken from that one, and where both did, a person chooses. Nothing here decides for a person.
 */
import type { Json, JsonObject } from '#documents';
import { isMeasured } from './changed-places.ts';
import { field, isList, isObject, isSame, namesOf } from './json.ts';
import { inEntry, inField, keysOf, type Spot, spotKey } from './spot.ts';

export type Side = 'mine' | 'theirs';

/** A place that both changed, each in another way. */
export type ContestedPlace = {
  readonly key: string;
  readonly spot: Spot;
  readonly began: Json | undefined;
  readonly mine: Json | undefined;
  readonly theirs: Json | undefined;
};

export type Combination = {
  readonly document: JsonObject;
  readonly contested: readonly ContestedPlace[];
};

export type Three = {
  readonly began: JsonObject;
  readonly mine: JsonObject;
  readonly theirs: JsonObject;
};

/** Where nothing is chosen yet, mine stands; the screen asks for a choice before it saves. */
export const combine = (
  { began, mine, theirs }: Three,
  choices: ReadonlyMap<string, Side> = new Map(),
): Combination => {
  const contested: ContestedPlace[] = [];
  const choose = (place: ContestedPlace): Json | undefined => {
    contested.push(place);
    return choices.get(place.key) === 'theirs' ? place.theirs : place.mine;
  };
  const document = woven({ began, mine, theirs }, [], choose);
  return { document: isObject(document) ? document : mine, contested };
};

type Trio = {
  readonly began: Json | undefined;
  readonly mine: Json | undefined;
  readonly theirs: Json | undefined;
};
type Choose = (place: ContestedPlace) => Json | undefined;

const woven = (trio: Trio, spot: Spot, choose: Choose): Json | undefined => {
  const { began, mine, theirs } = trio;
  if (isSame(mine, theirs) || isSame(began, theirs)) return mine;
  if (isSame(began, mine)) return theirs;
  const inParts = isWhole(trio, spot) ? null : (ofObjects(trio, spot, choose) ?? null);
  const inList = isWhole(trio, spot) ? null : (ofLists(trio, spot, choose) ?? null);
  return inParts ?? inList ?? choose({ key: spotKey(spot), spot, ...trio });
};

/** Fields whose parts speak of one another, so that half of each would be what nobody wrote. */
const WHOLE_FIELDS: readonly string[] = ['placement', 'bricks', 'cable', 'pipe', 'sample'];

/** Lists of which an entry is one statement: a trim and how it was measured, a cue, a row. */
const WHOLE_ENTRIES: readonly string[] = [
  'trims',
  'cues',
  'units',
  'members',
  'sheets',
  'hardware',
  'lines',
];

const isWhole = ({ began, mine, theirs }: Trio, spot: Spot): boolean => {
  const all = [began, mine, theirs];
  if (all.some(isMeasured)) return true;
  const [last, list] = [spot.at(-1), spot.at(-2)];
  if (last?.of === 'field' && WHOLE_FIELDS.includes(last.name)) return true;
  // What is recorded of one set was seen at one time; two looks are never mixed.
  const isRecordOfSet = list?.of === 'field' && list.name === 'sets' && last?.of === 'field';
  if (isRecordOfSet) return true;
  if (last?.of === 'entry' && list?.of === 'field' && WHOLE_ENTRIES.includes(list.name)) {
    return true;
  }
  // A take-off that is worked out in another way keeps nothing of the one before it.
  const ways = all.flatMap((value) => (isObject(value) ? [field(value, 'by')] : []));
  return ways.some((way) => !isSame(way, ways[0]));
};

const ofObjects = ({ began, mine, theirs }: Trio, spot: Spot, choose: Choose): Json | undefined => {
  if (!isObject(began) || !isObject(mine) || !isObject(theirs)) return undefined;
  return Object.fromEntries(
    namesOf(theirs, mine).flatMap((name) => {
      const trio = {
        began: field(began, name),
        mine: field(mine, name),
        theirs: field(theirs, name),
      };
      const value = woven(trio, inField(spot, name), choose);
      return value === undefined ? [] : [[name, value] as const];
    }),
  );
};

const ofLists = ({ began, mine, theirs }: Trio, spot: Spot, choose: Choose): Json | undefined => {
  if (!isList(began) || !isList(mine) || !isList(theirs)) return undefined;
  const [old, ours, others] = [keysOf(began), keysOf(mine), keysOf(theirs)];
  if (old === undefined || ours === undefined || others === undefined) return undefined;
  const order = orderOf({ old, ours, others }, spot, choose);
  return order.flatMap((key) => {
    const trio = {
      began: began[old.indexOf(key)],
      mine: mine[ours.indexOf(key)],
      theirs: theirs[others.indexOf(key)],
    };
    return woven(trio, inEntry(spot, key), choose) ?? [];
  });
};

type Orders = Readonly<Record<'old' | 'ours' | 'others', readonly string[]>>;

/** Every name of the three lists once; what only one has follows its neighbour there. */
const orderOf = ({ old, ours, others }: Orders, spot: Spot, choose: Choose): readonly string[] => {
  const kept = old.filter((key) => ours.includes(key) && others.includes(key));
  const among = (keys: readonly string[]) => keys.filter((key) => kept.includes(key));
  const orderSpot: Spot = [...spot, { of: 'order' }];
  const trio = { began: kept, mine: among(ours), theirs: among(others) };
  const chosen = woven(trio, orderSpot, choose);
  const [first, second] = isSame(chosen, trio.mine) ? [ours, others] : [others, ours];
  return second.reduce<readonly string[]>((order, key, index) => {
    if (order.includes(key)) return order;
    // What stands first there has no neighbour before it, and stands first here.
    const after = order.indexOf(second[index - 1] ?? '');
    return [...order.slice(0, after + 1), key, ...order.slice(after + 1)];
  }, first);
};
