/** A short run of the calls: every rule of a call, in 20,000 commands of twelve crews. */
import { describe, expect, it } from 'vitest';
import { type CallTold, runCallWorld } from './calls/call-world.ts';
import { demoOf } from './calls/demo-call.ts';
import { inMemory, onDisk } from './storages.ts';

/** A crew with nothing left to do goes home before it has said so many. */
const COMMANDS = 2000;
const SEEDS = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12];
/** In a file as the house keeps it; the others in memory, where a commit costs no flush. */
const ON_DISK = 4;

const told = new Map<number, CallTold>();
const countOf = (what: string): number =>
  [...told.values()].reduce((sum, { counts }) => sum + (counts[what] ?? 0), 0);

describe('a crew in false weather', () => {
  it.each(SEEDS)('keeps every rule of a call, seed %i', { timeout: 60_000 }, (seed) => {
    const storage = seed === ON_DISK ? onDisk() : inMemory();
    try {
      told.set(seed, runCallWorld(seed, COMMANDS, storage));
      expect(told.get(seed)?.events).toBeGreaterThan(COMMANDS / 8);
    } finally {
      storage.remove();
    }
  });

  it('says so much, and on every set of the house', () => {
    const commands = [...told.values()].reduce((sum, each) => sum + each.commands, 0);
    expect(commands).toBeGreaterThanOrEqual(20_000);
    const worked = [...told.values()].flatMap(({ which, sets }) =>
      which === 'regatta' ? [] : sets,
    );
    const all = [...demoOf('asItIs').sets.keys()];
    expect(all.filter((id) => !worked.includes(id))).toEqual([]);
  });

  it('does every kind of work, errs, and is stopped', () => {
    const acts = ['attach', 'release', 'add', 'remove', 'fly', 'close', 'reopen', 'rig'];
    for (const act of acts) expect(countOf(`leave given: ${act}`), act).toBeGreaterThan(0);
    expect(countOf('leave given on two words')).toBeGreaterThan(0);
    expect(countOf('leave given with an override')).toBeGreaterThan(0);
    expect(countOf('stop called')).toBeGreaterThan(0);
    expect(countOf('judged unheld')).toBeGreaterThan(0);
    // What a slip does that nobody has reported, no record can know: it is counted, and said.
    expect(countOf('leave into what is truly unheld')).toBeGreaterThan(0);
    for (const rule of ['CAL-001', 'CAL-004', 'CAL-009', 'CAL-010', 'CAL-015', 'CAL-024']) {
      expect(countOf(`refused ${rule}`), rule).toBeGreaterThan(0);
    }
  });

  it('comes to the same by the same seed', () => {
    expect(runCallWorld(77, 200, inMemory())).toEqual(runCallWorld(77, 200, inMemory()));
  });
});
