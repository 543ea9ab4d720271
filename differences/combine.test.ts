import { describe, expect, it } from 'vitest';
import type { Json, JsonObject } from '#documents';
import { combine, type Side } from './combine.ts';
import { inEntry, inField, overlap } from './spot.ts';

const item = (id: string, mass: Json): JsonObject => ({ id, takeoff: { by: 'mass', mass } });
const hang = (set: string, ...items: readonly JsonObject[]): JsonObject => ({ set, items });
const show = (...hangs: readonly JsonObject[]): JsonObject => ({ hangs });

const BEGAN = show(hang('9', item('cloth', '60 lb')), hang('11', item('flat', '300 lb')));

const both = (mine: JsonObject, theirs: JsonObject, side: Side = 'mine', began = BEGAN) => {
  const { contested } = combine({ began, mine, theirs });
  return combine({ began, mine, theirs }, new Map(contested.map(({ key }) => [key, side])));
};

describe('two versions put together', () => {
  const mine = show(hang('9', item('cloth', '60 lb')), hang('11', item('flat', '310 lb')));
  const theirs = show(hang('9', item('cloth', '65 lb')), hang('11', item('flat', '320 lb')));

  it('asks about what both changed, and takes from one what one changed', () => {
    const { contested, document } = both(mine, theirs);
    expect(contested.map(({ mine: ours, theirs: others }) => [ours, others])).toEqual([
      ['310 lb', '320 lb'],
    ]);
    expect(document).toEqual(
      show(hang('9', item('cloth', '65 lb')), hang('11', item('flat', '310 lb'))),
    );
    expect(both(mine, theirs, 'theirs').document).toEqual(theirs);
  });

  it('never takes a figure from one and its grounds from the other', () => {
    const of = (value: string, basis: string) => show(hang('11', item('flat', { value, basis })));
    const began = of('300 lb', 'estimated');
    const { contested, document } = both(
      of('300 lb', 'weighed'),
      of('320 lb', 'estimated'),
      'theirs',
      began,
    );
    expect(contested).toHaveLength(1);
    expect(document).toEqual(of('320 lb', 'estimated'));
  });

  it('asks where one changed what the other took away', () => {
    const gone = show(hang('9', item('cloth', '60 lb')));
    const { contested, document } = both(mine, gone, 'theirs');
    expect(contested).toHaveLength(1);
    expect(document).toEqual(gone);
    expect(both(mine, gone, 'mine').document).toEqual(mine);
  });

  it('takes a set away that one took away and the other left alone', () => {
    const gone = show(hang('9', item('cloth', '60 lb')));
    expect(both(BEGAN, gone)).toEqual({ document: gone, contested: [] });
  });

  it('puts in what each added, beside its neighbour', () => {
    const [nine, eleven] = BEGAN['hangs'] as readonly JsonObject[];
    if (nine === undefined || eleven === undefined) throw new Error('the show lost its hangs');
    const ours = show(nine, hang('10'), eleven);
    const others = show(nine, eleven, hang('12'));
    expect(both(ours, others)).toEqual({
      document: show(nine, hang('10'), eleven, hang('12')),
      contested: [],
    });
  });

  it('puts in first what one put first', () => {
    const of = (...sets: readonly string[]) => show(...sets.map((set) => hang(set)));
    const began = of('2', '3');
    expect(both(of('2', '3', '4'), of('1', '2', '3'), 'mine', began)).toEqual({
      document: of('1', '2', '3', '4'),
      contested: [],
    });
  });

  it('takes a list as one where two entries share a name', () => {
    const of = (first: string, second: string) => ({
      brickKinds: [
        { id: 'F', mass: first },
        { id: 'F', mass: second },
      ],
    });
    const began = of('1 kg', '2 kg');
    const asked = both(of('3 kg', '2 kg'), of('1 kg', '4 kg'), 'theirs', began);
    expect(asked.contested).toHaveLength(1);
    expect(asked.document).toEqual(of('1 kg', '4 kg'));
  });

  it('asks about a set that both hung anew, as one thing', () => {
    const of = (name: string) =>
      show(...(BEGAN['hangs'] as readonly JsonObject[]), { set: '12', name });
    const { contested, document } = both(of('ours'), of('other'), 'theirs');
    expect(contested).toHaveLength(1);
    expect(document).toEqual(of('other'));
  });

  it('takes the new order of the one who made it, and asks where both did', () => {
    const of = (...sets: readonly string[]) => show(...sets.map((set) => hang(set)));
    const began = of('1', '2', '3');
    expect(both(of('3', '1', '2'), began, 'mine', began).document).toEqual(of('3', '1', '2'));
    expect(both(began, of('3', '1', '2'), 'mine', began).document).toEqual(of('3', '1', '2'));
    const asked = both(of('3', '1', '2'), of('2', '1', '3'), 'mine', began);
    expect(asked.contested).toHaveLength(1);
    expect(asked.document).toEqual(of('3', '1', '2'));
    expect(both(of('3', '1', '2'), of('2', '1', '3'), 'theirs', began).document).toEqual(
      of('2', '1', '3'),
    );
  });

  it('never mixes two looks at one set, two trims, or two ways of a take-off', () => {
    const record = (height: string, lock: string): JsonObject => ({
      sets: { '1': { height, lock } },
    });
    const looks = both(
      record('1 m', 'open'),
      record('2 m', 'closed'),
      'theirs',
      record('1 m', 'closed'),
    );
    expect(looks.contested).toHaveLength(1);
    expect(looks.document).toEqual(record('2 m', 'closed'));

    const trim = (height: string, reference: string) =>
      show({ set: '1', trims: [{ name: 'in', height, reference }] });
    const trims = both(trim('1 m', 'lens'), trim('2 m', 'batten'), 'mine', trim('1 m', 'batten'));
    expect(trims.document).toEqual(trim('1 m', 'lens'));

    const way = (takeoff: JsonObject) => show(hang('1', { id: 'a', takeoff }));
    const ours = way({ by: 'pipe', length: '2 m' });
    const ways = both(
      ours,
      way({ by: 'mass', mass: '2 kg' }),
      'mine',
      way({ by: 'mass', mass: '1 kg' }),
    );
    expect(ways.contested).toHaveLength(1);
    expect(ways.document).toEqual(ours);
    const weighed = way({ by: 'mass', mass: '2 kg' });
    const other = both(ours, weighed, 'theirs', way({ by: 'mass', mass: '1 kg' }));
    expect(other.document).toEqual(weighed);

    const place = (from: string, to: string) => way({ by: 'mass', placement: { from, to } });
    const began = place('-2 m', '2 m');
    const places = both(place('-3 m', '2 m'), place('-2 m', '1 m'), 'theirs', began);
    expect(places.contested).toHaveLength(1);
    expect(places.document).toEqual(place('-2 m', '1 m'));
  });

  it('asks as one about a list whose entries have no names', () => {
    const of = (...remarks: readonly string[]): JsonObject => ({ remarks });
    const asked = both(of('a', 'b'), of('a', 'c'), 'theirs', of('a'));
    expect(asked.contested).toHaveLength(1);
    expect(asked.document).toEqual(of('a', 'c'));
  });
});

describe('where two changes meet', () => {
  const set = inEntry(inField([], 'hangs'), '11');
  const mass = inField(set, 'mass');

  it('is within one another, either way round, or in the same place', () => {
    expect(overlap(set, mass)).toBe(true);
    expect(overlap(mass, set)).toBe(true);
    expect(overlap(mass, mass)).toBe(true);
    expect(overlap(mass, inField(set, 'drop'))).toBe(false);
    expect(overlap(inEntry([], 'a'), inField([], 'a'))).toBe(false);
  });
});
