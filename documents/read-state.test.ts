import { describe, expect, it } from 'vitest';
import type { HouseState, SetState } from '#state';
import { unknownSetState } from '#state';
import { house, show, state as specimen } from './provocations/specimens.ts';
import { readHouseValue } from './read-house.ts';
import { readShowValue } from './read-show.ts';
import { readState, readStateValue } from './read-state.ts';

const read = (raw: unknown): HouseState => {
  const answer = readStateValue(raw);
  if (!answer.ok) throw new Error(JSON.stringify(answer.error.slice(0, 3)));
  return answer.value.state;
};

const setOf = (raw: unknown, id: string): SetState => {
  const set = read(raw).sets[id];
  if (set === undefined) throw new Error(`nothing of line set ${id}`);
  return set;
};

const FOOT = 0.3048;

describe('a record of how things stand', () => {
  it('says nothing of a set where nothing is written', () => {
    const { sets } = read({ ...specimen, sets: { '2': {} } });
    expect(sets).toEqual({ '2': unknownSetState });
  });

  it('has a height measured, or two between which it is', () => {
    expect(setOf(specimen, '1').height).toEqual({ low: 24 * FOOT, high: 24 * FOOT });
    expect(setOf(specimen, '2').height).toEqual({ low: 29 * FOOT, high: 31 * FOOT });
    expect(setOf(specimen, '3').height).toBeNull();
  });

  it('has a stack that is empty, which is not one that is unknown', () => {
    const spoken = { ...specimen, sets: { '1': { stack: [] }, '2': {} } };
    expect(setOf(spoken, '1').stack).toEqual([]);
    expect(setOf(spoken, '2').stack).toBeNull();
  });

  it('has plates from the bottom up, items with their phases, pulls with their sign', () => {
    const { stack, items, pullTest } = setOf(specimen, '1');
    expect(stack?.map(({ kind }) => kind)).toEqual(['F', 'plate', 'H']);
    expect(items).toEqual([{ item: 'cloth', phase: 'flying' }]);
    // 47 lbf and −11 lbf at 4.4482216152605 N each.
    expect(pullTest?.out).toBeCloseTo(209.066, 3);
    expect(pullTest?.in).toBeCloseTo(-48.93, 3);
  });

  it('has a restraint whose rating and owner may be unknown', () => {
    const restraint = { kind: 'choke', resists: 'both' };
    const spoken = { ...specimen, sets: { '1': { restraints: [restraint] } } };
    const unsaid = { rating: null, from: null, to: null, owner: null, tag: null };
    expect(setOf(spoken, '1').restraints).toEqual([{ ...restraint, ...unsaid }]);
  });

  it('has stock of the kinds that were counted, and of no other', () => {
    expect(read(specimen).galleries).toMatchObject({ upper: { stock: { F: 28, H: 6 } } });
  });

  it('takes heights a hand off the stops, as measured on the day', () => {
    const plant = readHouseValue(house);
    const within = plant.ok ? plant.value.house : undefined;
    const at = (height: string) =>
      readStateValue({ ...specimen, sets: { '1': { height } } }, within).ok;
    expect(at('2.6 ft')).toBe(true);
    expect(at('2.4 ft')).toBe(false);
    expect(at('60.4 ft')).toBe(true);
    expect(at('60.6 ft')).toBe(false);
  });

  it('is read against house and show from its text', () => {
    const plant = readHouseValue(house);
    const within = plant.ok ? plant.value.house : undefined;
    const hung = readShowValue(show, within);
    const shown = hung.ok ? hung.value.show : undefined;
    const answer = readState(JSON.stringify(specimen), within, shown);
    expect(answer.ok && answer.value.raw).toEqual(specimen);
  });
});
