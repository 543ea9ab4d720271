import { describe, expect, it } from 'vitest';
import { amountFaults, knownReader, takeoffOf } from './numbers-to-known.ts';

const read = knownReader('estimated');

describe('an amount', () => {
  it('that is a number has the basis of the question and no tolerance', () => {
    expect(read(7)).toEqual({ known: true, value: 7, provenance: { basis: 'estimated' } });
  });

  it('may say what it rests on and what it may be off by', () => {
    expect(read({ value: 8, relative: 0.25, basis: 'published', source: 'sheet' })).toEqual({
      known: true,
      value: 8,
      tolerance: 2,
      provenance: { basis: 'published', source: 'sheet' },
    });
    expect(read({ value: 8, tolerance: 3 })).toMatchObject({ tolerance: 3 });
  });

  it('is found wherever it gives its tolerance twice', () => {
    const twice = { value: 1, tolerance: 1, relative: 1 };
    expect(amountFaults({ mass: twice, lines: [{ each: 1 }, { each: twice }] })).toMatchObject([
      { path: 'mass' },
      { path: 'lines[1].each' },
    ]);
  });
});

describe('numbers of a take-off', () => {
  it('leave a height of a part unknown, and fittings and a hem out, where not given', () => {
    const frame = takeoffOf(
      { kind: 'frame', hardware: [{ name: 'iron', count: 1, each: 1 }], allowance: 0 },
      read,
    );
    expect(frame).toMatchObject({ members: [], sheets: [], hardware: [{ z: { known: false } }] });
    expect(takeoffOf({ kind: 'mass', mass: 1 }, read)).toMatchObject({ hem: null });
    expect(takeoffOf({ kind: 'pipe', length: 1, massPerLength: 1 }, read)).toMatchObject({
      fittings: null,
    });
    expect(takeoffOf({ kind: 'loom', length: 1, massPerLength: 1 }, read)).toMatchObject({
      fixedAt: { known: false },
    });
  });
});
