import { beforeEach, describe, expect, it } from 'vitest';
import type { Mapping } from '#exchange';
import { asRemembered, forget, headsOf, remember, rememberedFor } from './remembered.ts';

const MAPPING: Mapping = {
  table: 'schedule',
  headRow: 1,
  columns: [
    { column: 0, heading: 'Bar', to: { is: 'field', field: 'set' }, unit: null },
    {
      column: 1,
      heading: 'High',
      to: { is: 'trim', name: 'out', reference: 'batten' },
      unit: 'ft',
    },
    { column: 2, heading: 'Colour', to: null, unit: null },
  ],
  same: [],
};
const heads = headsOf(MAPPING);

/** A memory in place of the browser's own. */
const memory = () => {
  const kept = new Map<string, string>();
  return {
    getItem: (key: string) => kept.get(key) ?? null,
    setItem: (key: string, text: string) => void kept.set(key, text),
  };
};
let storage = memory();
beforeEach(() => {
  storage = memory();
});

const guess: Mapping = {
  ...MAPPING,
  table: 'takeoff',
  columns: MAPPING.columns.map((one) => ({ ...one, to: null, unit: null })),
};

describe('a mapping on the device', () => {
  it('is offered again for the same headings, whole, and for no others', () => {
    expect(remember(storage, ' the tour ', MAPPING)).toBe(true);
    const [one] = rememberedFor(storage, heads);
    expect(one?.name).toBe('the tour');
    expect(rememberedFor(storage, ['Bar', 'High'])).toEqual([]);
    expect(one && asRemembered(guess, one)).toEqual(MAPPING);
  });

  it('is written over under its name, and forgotten when it is asked to be', () => {
    remember(storage, 'a', MAPPING);
    remember(storage, 'b', MAPPING);
    remember(storage, 'a', { ...MAPPING, table: 'takeoff' });
    expect(rememberedFor(storage, heads).map(({ name, table }) => [name, table])).toEqual([
      ['a', 'takeoff'],
      ['b', 'schedule'],
    ]);
    const [first] = rememberedFor(storage, heads);
    if (first !== undefined) forget(storage, first);
    expect(rememberedFor(storage, heads).map(({ name }) => name)).toEqual(['b']);
  });

  it('keeps twenty, the newest', () => {
    for (let count = 0; count < 25; count += 1) remember(storage, `n${count}`, MAPPING);
    const names = rememberedFor(storage, heads).map(({ name }) => name);
    expect(names).toHaveLength(20);
    expect([names[0], names.at(-1)]).toEqual(['n24', 'n5']);
  });

  it('that was altered or damaged there is not taken', () => {
    for (const text of [
      'no JSON',
      '{}',
      '[{"name": "x"}]',
      JSON.stringify([
        { name: 'x', table: 'schedule', heads, columns: [{ to: { is: 'trim' }, unit: null }] },
      ]),
    ]) {
      storage.setItem('counterpoise.mappings', text);
      expect(rememberedFor(storage, heads)).toEqual([]);
    }
  });

  it('asks anew for a unit that its field does not take', () => {
    remember(storage, 'a', {
      ...MAPPING,
      columns: MAPPING.columns.map((one) => (one.column === 1 ? { ...one, unit: 'lb' } : one)),
    });
    const [one] = rememberedFor(storage, heads);
    expect(one && asRemembered(guess, one).columns[1]?.unit).toBe(null);
  });

  it('says so where the device takes nothing', () => {
    const full = {
      getItem: () => null,
      setItem: () => {
        throw new Error('full');
      },
    };
    expect(remember(full, 'a', MAPPING)).toBe(false);
    const closed = {
      ...full,
      getItem: () => {
        throw new Error('closed');
      },
    };
    expect(rememberedFor(closed, heads)).toEqual([]);
  });
});
