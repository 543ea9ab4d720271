import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { metres, newtons } from '#quantities';
import { type HouseState, unknownSetState } from '#state';
import { readState, stateDocument, writeDocument } from './index.ts';

const stateOf = (text: string): HouseState => {
  const read = readState(text);
  if (!read.ok) throw new Error(JSON.stringify(read.error));
  return read.value.state;
};

const example = (house: string): HouseState => {
  const file = join(import.meta.dirname, '..', 'examples', house, 'state.json');
  return stateOf(readFileSync(file, 'utf8'));
};

describe('a record of how things stand', () => {
  it.each([
    ['kestlemere', 'customary'],
    ['kestlemere', 'metric'],
    ['skelderwick', 'metric'],
    ['skelderwick', 'customary'],
  ] as const)('reads back the same: %s, %s', (house, units) => {
    const state = example(house);
    expect(Object.keys(state.sets).length).toBeGreaterThan(5);
    expect(stateOf(writeDocument(stateDocument(state, units)))).toEqual(state);
  });

  it('keeps what is unknown unknown, heights between two, pulls and restraints', () => {
    const { sets: _sets, ...rest } = example('kestlemere');
    const [low, high] = [metres(1.2), metres(7.01)];
    const restraint = {
      ...({ kind: 'bullLine', resists: 'out', rating: newtons(900), from: low, to: high } as const),
      ...{ owner: null, tag: 'B1' },
    };
    const said = { at: '2026-11-25T10:00:00.000Z', by: 'A' };
    const state: HouseState = {
      ...rest,
      remarks: ['set 2 is in doubt'],
      sets: {
        '1': { ...unknownSetState, height: { low, high }, restraints: [restraint] },
        '2': unknownSetState,
        '3': {
          ...unknownSetState,
          pullTest: { out: newtons(210), in: newtons(-50), height: low, ...said },
          tag: { number: 'T4', reason: 'rope worn' },
          service: 'lockedOut',
        },
      },
    };
    expect(stateOf(writeDocument(stateDocument(state, 'customary')))).toEqual(state);
  });
});
