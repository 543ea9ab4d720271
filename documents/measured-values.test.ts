import { describe, expect, it } from 'vitest';
import type { House } from '#house';
import { house as specimen } from './provocations/specimens.ts';
import { readHouseValue } from './read-house.ts';

/** The international pound, exact by definition (1959). */
const POUND = 0.45359237;
const POUND_FORCE = 4.4482216152605;

const specimenWith = (fields: object): House => {
  const answer = readHouseValue({ ...specimen, ...fields });
  if (!answer.ok) throw new Error(JSON.stringify(answer.error.slice(0, 3)));
  return answer.value.house;
};

describe('what a house has measured', () => {
  it('takes the mass of a kind from its sample, where there is one', () => {
    const [full, , old] = specimenWith({}).brickKinds;
    expect(full?.sample).toBeUndefined();
    expect(full?.mass).toMatchObject({ provenance: { source: 'sample of 24' } });
    // 21.8, 22.1 and 22.2 lb: 22.0333 lb, and t of 2 degrees is 4.303 (from memory).
    const meanLb = (21.8 + 22.1 + 22.2) / 3;
    const squares = [21.8, 22.1, 22.2].reduce((sum, lb) => sum + (lb - meanLb) ** 2, 0);
    expect(old?.mass).toMatchObject({
      known: true,
      value: expect.closeTo(meanLb * POUND, 9),
      tolerance: expect.closeTo(4.303 * Math.sqrt((squares / 2) * (4 / 3)) * POUND, 3),
      provenance: { basis: 'weighed', source: 'sample of 3', on: '2026-08-31' },
    });
  });

  it('takes a sample of which only the summary was kept', () => {
    const [full, ...others] = specimen.brickKinds;
    const sample = {
      ...{ told: 'summary', count: 24, mean: '25 lb', least: '24.6 lb', most: '25.4 lb' },
      ...{ on: '2026-08-31', by: 'house crew' },
    };
    const [read] = specimenWith({ brickKinds: [{ ...full, sample }, ...others] }).brickKinds;
    // s² ≤ 24/23 · 0.4 · 0.4 lb², and t of 23 degrees is 2.069 (from memory).
    const halfLb = 2.069 * Math.sqrt((24 / 23) * 0.16 * (25 / 24));
    expect(read?.mass).toMatchObject({
      value: expect.closeTo(25 * POUND, 9),
      tolerance: expect.closeTo(halfLb * POUND, 3),
      provenance: { by: 'house crew' },
    });
  });

  it('has the rope lock of each set by itself, and none said of the others', () => {
    const [first, second] = specimenWith({}).lineSets;
    expect(first?.lock).toMatchObject({
      grip: { value: expect.closeTo(62 * POUND_FORCE, 9), provenance: { on: '2026-09-14' } },
      failed: { known: true, value: false },
    });
    expect(second?.lock).toEqual({ grip: { known: false }, failed: { known: false } });
    expect(specimenWith({}).rules.lockTestEverySeconds).toMatchObject({ value: 365 * 86_400 });
  });
});
