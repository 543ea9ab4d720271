import { describe, expect, it } from 'vitest';
import type { Source } from './fault.ts';
import { rooms } from './rooms.ts';

const manifest = (imports: Readonly<Record<string, string>>): Source => ({
  path: 'package.json',
  text: JSON.stringify({ imports }),
});

const BALANCE: readonly Source[] = [
  { path: 'engine/balance/index.ts', text: '' },
  { path: 'engine/balance/README.md', text: 'What it answers.\n' },
  manifest({ '#balance': './engine/balance/index.ts' }),
];

const whatOf = (sources: readonly Source[]) => rooms(sources).map(({ what }) => what);
const without = (path: string) => [
  { path: 'engine/balance/curve.ts', text: '' },
  ...BALANCE.filter((source) => source.path !== path),
];

describe('rooms', () => {
  it('takes a room with a door, a README and a line in the imports map', () => {
    expect(whatOf(BALANCE)).toEqual([]);
  });

  it('misses the door', () => {
    expect(whatOf(without('engine/balance/index.ts'))).toEqual(['the room has no door']);
  });

  it('misses the README', () => {
    expect(whatOf(without('engine/balance/README.md'))).toEqual(['the room has no README']);
  });

  it('refuses a README of 41 lines', () => {
    const readme = (lines: number) => ({
      path: 'engine/balance/README.md',
      text: 'line\n'.repeat(lines),
    });
    expect(whatOf([...without('engine/balance/README.md'), readme(40)])).toEqual([]);
    expect(whatOf([...without('engine/balance/README.md'), readme(41)])).toEqual(['41 lines']);
  });

  it('misses the line in the imports map, and one that opens another file', () => {
    const shut = 'the imports map does not open #balance';
    expect(whatOf([...without('package.json'), manifest({})])).toEqual([shut]);
    const window = manifest({ '#balance': './engine/balance/curve.ts' });
    expect(whatOf([...without('package.json'), window])).toEqual([shut]);
  });

  it('refuses a map that leaves the room out', () => {
    const map = (text: string) => ({ path: 'HOUSE.md', text });
    expect(whatOf([...BALANCE, map('| 6 | `balance` | bricks |')])).toEqual([]);
    expect(whatOf([...BALANCE, map('')])).toEqual(['the room balance is not on the map']);
  });

  it('refuses code in a folder that is no room', () => {
    expect(whatOf([{ path: 'engine/odds/ends.ts', text: '' }])).toEqual(['in no room']);
  });
});
