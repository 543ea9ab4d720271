/** What a visiting production asks of a set, fact by fact; sets that are alike stand together. */

import { type ArborRoom, arborRoomOf, type GalleryWindow } from '#assessment';
import type { HeightSpan, House, Known, LineSet } from '#house';
import { INCH } from '#quantities';
import { phrase, told } from '#texts';
import { placesAcross } from '../words/say-across.ts';
import { steelForce } from '../words/say-force.ts';
import { notKnown } from '../words/say-known.ts';
import { sayMeasure } from '../words/say-measure.ts';
import { brickMass, height, kindOfSet, stackLength } from '../words/say-set.ts';

/** A fact in words, and what nobody knows of it. */
export type Said = { readonly words: string; readonly unknown: readonly string[] };

const said = (words: string): Said => ({ words, unknown: [] });
const unknownFact = (house: House, why?: string): Said => ({
  words: notKnown(house),
  unknown: [told(house, why ?? '')],
});
const NONE = said('–');

const from = <T>(known: Known<T>, house: House, say: (value: T) => string): Said =>
  known.known ? said(say(known.value)) : unknownFact(house, known.why);

const CENTIMETRE = 0.01;
/** A height this near to a whole step, in steps, is on it. */
const ON_STEP = 1e-6;

/** Side by side; where nothing of them is known, that is said once. */
const joined = (house: House, parts: readonly Said[], by = ', '): Said => ({
  words: parts.every(({ words }) => words === notKnown(house))
    ? notKnown(house)
    : parts.map(({ words }) => words).join(by),
  unknown: parts.flatMap(({ unknown }) => unknown),
});

const prefixed = (before: string, { words, unknown }: Said): Said => ({
  words: `${before} ${words}`,
  unknown,
});

export type Fact = {
  readonly head: string;
  readonly say: (set: LineSet, room: ArborRoom | null) => Said;
};

const linesFact = ({ lineXs }: LineSet, house: House): Said =>
  lineXs === null ? unknownFact(house) : said(`${lineXs.length}: ${placesAcross(lineXs, house)}`);

const lineFact = ({ lift: { cable }, lineLimit }: LineSet, house: House): Said => {
  const limit = prefixed(
    phrase(house, 'each at most'),
    from(lineLimit, house, (forceN) => steelForce(forceN, house, 'down')),
  );
  return cable.description === undefined ? limit : joined(house, [said(cable.description), limit]);
};

const battenFact = ({ batten }: LineSet, house: House): Said => {
  const length =
    batten.left.known && batten.right.known
      ? said(height(batten.right.value - batten.left.value, house))
      : prefixed('length', unknownFact(house));
  return batten.description === undefined
    ? length
    : joined(house, [length, said(batten.description)]);
};

const jointsFact = ({ batten: { splices } }: LineSet, house: House): Said => {
  if (splices === null) return unknownFact(house, phrase(house, 'nobody has looked'));
  if (splices.length === 0) return said(phrase(house, 'none'));
  return joined(house, [
    said(
      placesAcross(
        splices.map(({ x }) => x),
        house,
      ),
    ),
    ...splices.map(({ strength }) =>
      from(strength, house, (share) =>
        sayMeasure({ value: share, kind: 'ratio' }, house, { round: 'down' }),
      ),
    ),
  ]);
};

const heightsFact = ({ lowStop, workingHeight, highStop }: LineSet, house: House): Said =>
  joined(
    house,
    [lowStop.height, workingHeight, highStop.height].map((known) =>
      from(known, house, (heightM) => height(heightM, house)),
    ),
  );

const stopsFact = ({ lowStop, highStop }: LineSet, house: House): Said =>
  joined(
    house,
    [lowStop, highStop].map(({ rated }) =>
      from(rated, house, (forceN) => steelForce(forceN, house, 'down')),
    ),
  );

const massLimitFact = (limit: Known<number>, house: House): Said =>
  from(limit, house, (massKg) =>
    sayMeasure({ value: massKg, kind: 'mass' }, house, { round: 'down' }),
  );

const perLengthFact = ({ perLengthLimit }: LineSet, house: House): Said =>
  from(perLengthLimit, house, (value) =>
    sayMeasure({ value, kind: 'massPerLength' }, house, { round: 'down' }),
  );

const pipeWeightFact = ({ arbor }: LineSet, house: House): Said => {
  if (arbor === null) return NONE;
  if (arbor.pipeWeight === null) return unknownFact(house);
  return joined(
    house,
    arbor.pipeWeight.map(({ kind, count }) => {
      const brick = house.brickKinds.find(({ id }) => id === kind);
      return brick?.mass.known === true
        ? said(`${count} ${brick.name}, ${brickMass(count * brick.mass.value, house)}`)
        : joined(house, [
            said(`${count} ${brick?.name ?? kind}`),
            unknownFact(house, phrase(house, 'mass of the brick')),
          ]);
    }),
  );
};

const bricks = (count: number, { brick }: ArborRoom): string => `${count} ${brick.name}`;

const massFact = (room: ArborRoom, house: House): Said => {
  const { byMass } = room;
  if (!byMass.known) return unknownFact(house, byMass.needs.join('; '));
  const { mass, bricks: count } = byMass.value;
  const words = sayMeasure({ value: mass, kind: 'mass' }, house, { round: 'down' });
  return said(phrase(house, '{words} more: {bricks}', { words, bricks: bricks(count, room) }));
};

const rodFact = (room: ArborRoom, house: House): Said => {
  const { byRod } = room;
  if (!byRod.known) return unknownFact(house, byRod.needs.join('; '));
  const { length, bricks: count } = byRod.value;
  return said(
    phrase(house, '{stackLength} more: {bricks}', {
      stackLength: stackLength(length, house, 'down'),
      bricks: bricks(count, room),
    }),
  );
};

const reachFact = (room: ArborRoom, house: House): Said => {
  const { byReach } = room;
  if (!byReach.known) return unknownFact(house, byReach.needs.join('; '));
  const { bricks: count, isAll } = byReach.value;
  if (count === 0) return said(phrase(house, 'none can be reached'));
  return said(isAll ? phrase(house, 'all that the rod takes') : bricks(count, room));
};

/** To the whole inch or centimetre inside the window: nobody loads by less. */
const insideWindow = (span: HeightSpan, { units }: House): readonly [number, number] => {
  const stepM = units === 'customary' ? INCH : CENTIMETRE;
  const low = Math.ceil(span.from / stepM - ON_STEP) * stepM;
  const high = Math.floor(span.to / stepM + ON_STEP) * stepM;
  return low <= high ? [low, high] : [span.from, span.to];
};

const windowFact = (windows: readonly GalleryWindow[], gallery: string, house: House): Said => {
  const window = windows.find((each) => each.gallery === gallery)?.window;
  if (window === undefined) return NONE;
  if (!window.known) return unknownFact(house, window.needs.join('; '));
  if (window.value === null) return said(phrase(house, 'not reached'));
  const ends = insideWindow(window.value, house).map((heightM) => height(heightM, house));
  const [low = '', high = ''] = ends;
  return said(
    low === high
      ? phrase(house, 'only at {low}', { low })
      : phrase(house, '{low} to {high}', { low, high }),
  );
};

const ofRoom =
  (house: House, say: (room: ArborRoom) => Said) =>
  (set: LineSet, room: ArborRoom | null): Said => {
    if (set.arbor === null) return NONE;
    return room === null ? unknownFact(house, 'mass of a show brick') : say(room);
  };

const galleryFacts = (house: House): readonly Fact[] =>
  house.galleries.map(
    ({ id, name }): Fact => ({
      head: name,
      say: ofRoom(house, (room) =>
        joined(
          house,
          [
            prefixed(phrase(house, 'first'), windowFact(room.first, id, house)),
            prefixed(phrase(house, 'last'), windowFact(room.last, id, house)),
          ],
          '; ',
        ),
      ),
    }),
  );

const railFact = ({ railId, handLinePerBatten, arbor }: LineSet, house: House): Said => {
  const rail = house.rails.find(({ id }) => id === railId);
  const name =
    rail === undefined ? prefixed(phrase(house, 'rail'), unknownFact(house)) : said(rail.name);
  if (arbor === null) return name;
  return joined(house, [
    name,
    prefixed(
      phrase(house, 'hand line ×'),
      from(handLinePerBatten, house, (times) => String(Math.round(times * 100) / 100)),
    ),
  ]);
};

/** In the order in which they stand on the sheet, top down. */
export const factsOf = (house: House): readonly Fact[] => {
  return [
    { head: phrase(house, 'Kind'), say: (set) => said(kindOfSet(set, house)) },
    { head: phrase(house, 'Lift lines'), say: (set) => linesFact(set, house) },
    { head: phrase(house, 'Lift line'), say: (set) => lineFact(set, house) },
    { head: phrase(house, 'Batten'), say: (set) => battenFact(set, house) },
    { head: phrase(house, 'Joints of the batten'), say: (set) => jointsFact(set, house) },
    { head: phrase(house, 'Low, working, high'), say: (set) => heightsFact(set, house) },
    { head: phrase(house, 'Stops rated'), say: (set) => stopsFact(set, house) },
    { head: phrase(house, 'Live limit'), say: ({ liveLimit }) => massLimitFact(liveLimit, house) },
    {
      head: phrase(house, 'At one place'),
      say: ({ pointLimit }) => massLimitFact(pointLimit, house),
    },
    { head: phrase(house, 'On each length'), say: (set) => perLengthFact(set, house) },
    { head: phrase(house, 'Pipe weight'), say: (set) => pipeWeightFact(set, house) },
    { head: phrase(house, 'Arbor by mass'), say: ofRoom(house, (room) => massFact(room, house)) },
    { head: phrase(house, 'Arbor by rod'), say: ofRoom(house, (room) => rodFact(room, house)) },
    { head: phrase(house, 'Arbor by reach'), say: ofRoom(house, (room) => reachFact(room, house)) },
    ...galleryFacts(house),
    { head: phrase(house, 'Rail'), say: (set) => railFact(set, house) },
  ];
};

/** Sets of one type that are alike in every fact. */
export type Alike = {
  /** The type, with a letter where the type has more than one form. */
  readonly name: string;
  readonly sets: readonly LineSet[];
  /** One for each fact, in its order. */
  readonly said: readonly Said[];
};

export const alikeOf = (house: House, facts: readonly Fact[]): readonly Alike[] => {
  const groups = new Map<string, { readonly sets: LineSet[]; readonly said: readonly Said[] }>();
  for (const set of house.lineSets) {
    const room = arborRoomOf(set, house);
    const words = facts.map(({ say }) => say(set, room?.known === true ? room.value : null));
    const key = JSON.stringify([set.typeId, words]);
    const group = groups.get(key);
    if (group === undefined) groups.set(key, { sets: [set], said: words });
    else group.sets.push(set);
  }
  const forms = [...groups.values()];
  return forms.map(({ sets, said: words }): Alike => {
    const type = sets[0]?.typeId ?? '';
    const same = forms.filter((each) => each.sets[0]?.typeId === type);
    const letter = String.fromCharCode(
      'a'.charCodeAt(0) + same.findIndex((one) => one.sets === sets),
    );
    return { name: same.length > 1 ? `${type} ${letter}` : type, sets, said: words };
  });
};
