import { describe, expect, it } from 'vitest';
import { pureRooms } from './pure-rooms.ts';

const faultsOf = (text: string, path = 'engine/balance/a.ts') => pureRooms([{ path, text }]);

describe('pure rooms', () => {
  it.each([
    ['the clock', 'const at = Date.now();'],
    ['the clock', 'const at = new Date();'],
    ['the clock', 'const at = Date();'],
    ['getHours', 'const hour = at.getHours();'],
    ['Math.random', 'const x = Math.random();'],
    ['performance', 'const t = performance.now();'],
    ['fetch', "await fetch('x');"],
    ['process', 'const e = process.env;'],
    ['console', 'console.log(1);'],
    ['crypto', 'const o = { crypto };'],
    ['toLocaleString', 'const s = x.toLocaleString();'],
  ])('finds %s in %s', (name, text) => {
    expect(faultsOf(text)).toMatchObject([{ what: `${name} in a pure room` }]);
  });

  it('takes a moment that was given', () => {
    expect(faultsOf('const at = new Date(written); const y = at.toISOString();')).toEqual([]);
  });

  it('takes a field of that name', () => {
    expect(faultsOf('const a = item.process; const b = { fetch: 1 };')).toEqual([]);
    expect(faultsOf('type T = { readonly performance: number };')).toEqual([]);
  });

  it('looks in every pure room and in no other, and not in tests', () => {
    const text = 'Date.now();';
    expect(faultsOf(text, 'documents/a.ts')).toHaveLength(1);
    expect(faultsOf(text, 'drawings/a.ts')).toHaveLength(1);
    expect(faultsOf(text, 'sheets/a.ts')).toHaveLength(1);
    expect(faultsOf(text, 'selfcheck/a.ts')).toHaveLength(1);
    expect(faultsOf(text, 'server/a.ts')).toEqual([]);
    expect(faultsOf(text, 'engine/balance/a.test.ts')).toEqual([]);
  });

  it('looks in the cases that the self-check reruns', () => {
    expect(faultsOf('Date.now();', 'validation/house/a/case.ts')).toHaveLength(1);
    expect(faultsOf('process.env;', 'validation/record.ts')).toEqual([]);
  });
});
