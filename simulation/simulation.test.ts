/** A short run of the simulation: every delivery rule, in 20,000 commands of ten houses. */
import { describe, expect, it } from 'vitest';
import { inMemory, onDisk } from './storages.ts';
import { runWorld } from './world.ts';

const COMMANDS = 2000;
/** Another seed each day would make yesterday's red run green: a new one is tried by hand. */
const SEEDS = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10];
/** In a file as the house keeps it; the others in memory, where a commit costs no flush. */
const ON_DISK = [2, 7];

describe('the server in false weather', () => {
  it.each(SEEDS)('keeps every delivery rule, seed %i', (seed) => {
    const storage = ON_DISK.includes(seed) ? onDisk() : inMemory();
    try {
      const told = runWorld(seed, COMMANDS, storage);
      expect(told.commands).toBe(COMMANDS);
      expect(told.outcomes['accepted']).toBeGreaterThan(COMMANDS / 10);
    } finally {
      storage.remove();
    }
  });

  it('has weather of every kind in these', () => {
    const sum = SEEDS.slice(0, 4).map((seed) => runWorld(seed, 500, inMemory()));
    const total = (of: 'crashes' | 'faults'): number =>
      sum.reduce((all, told) => all + told[of], 0);
    expect(total('crashes')).toBeGreaterThan(0);
    expect(total('faults')).toBeGreaterThan(0);
    const outcomes = new Set(sum.flatMap((told) => Object.keys(told.outcomes)));
    expect([...outcomes]).toEqual(expect.arrayContaining(['accepted', 'EVT-003', 'notLive']));
  });

  it('comes to the same by the same seed', () => {
    expect(runWorld(77, 300, inMemory())).toEqual(runWorld(77, 300, inMemory()));
  });
});
