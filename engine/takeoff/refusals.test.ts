import { describe, expect, it } from 'vitest';
import { TAKEOFF_REFUSALS } from './refusal-codes.ts';
import type { TakeoffQuestion } from './take-off-numbers.ts';
import { takeOffNumbers } from './take-off-numbers.ts';

const MASS: TakeoffQuestion = { kind: 'mass', basis: 'weighed', mass: 10 };
const UNIT = { name: 'lamp', count: 2, each: 5 };
const units = (...rows: object[]): TakeoffQuestion => ({
  kind: 'units',
  basis: 'published',
  units: rows.map((row) => ({ ...UNIT, ...row })),
});
const cloth = (changes: object): TakeoffQuestion => ({
  kind: 'cloth',
  basis: 'measured',
  width: 5,
  drop: 5,
  areaMass: 0.3,
  fullness: 0,
  hemAllowance: 0,
  paint: 0,
  moisture: 0,
  ...changes,
});

/** Three questions for each code: whichever check goes, one of them is answered. */
const PROVOKED: readonly (readonly [string, readonly TakeoffQuestion[]])[] = [
  [
    'TKO-001',
    [
      { ...MASS, mass: -1 },
      { ...MASS, pick: Number.NaN },
      cloth({ width: Number.POSITIVE_INFINITY }),
    ],
  ],
  [
    'TKO-002',
    [units({ count: 1.5 }), units({}, { count: 0.5 }), cloth({ ties: { count: 2.5, each: 1 } })],
  ],
  [
    'TKO-003',
    [
      { ...MASS, mass: { value: 10, tolerance: -1 } },
      { ...MASS, toleranceByBasis: { weighed: -0.1 } },
      cloth({ areaMass: { value: 0.3, relative: Number.NaN } }),
    ],
  ],
  ['TKO-004', [cloth({ fullness: 50 }), cloth({ paint: 3 }), cloth({ moisture: 5 })]],
  [
    'TKO-005',
    [
      { ...MASS, centre: 1.5 },
      { ...MASS, centre: 1.0001 },
      {
        kind: 'frame',
        basis: 'measured',
        drop: 1,
        allowance: 0,
        hardware: [{ name: 'head', count: 1, z: 2, each: 1 }],
      },
    ],
  ],
  [
    'TKO-006',
    [units({ xs: [1] }), units({ xs: [1, Number.NaN] }), { ...MASS, placement: { points: [] } }],
  ],
  [
    'TKO-007',
    [
      units(),
      { kind: 'hardware', basis: 'weighed', lines: [] },
      { kind: 'frame', basis: 'weighed', members: [], sheets: [], allowance: 0 },
    ],
  ],
  [
    'TKO-008',
    [
      { ...MASS, mass: { value: 10, tolerance: 1, relative: 0.1 } },
      { ...MASS, drop: { value: 1, tolerance: 0, relative: 0 } },
      units({ each: { value: 5, tolerance: 1, relative: 0.2 } }),
    ],
  ],
];

describe('refusals of the take-off', () => {
  it.each(PROVOKED)('[%s] is raised, and it alone', (code, questions) => {
    for (const question of questions) {
      const answer = takeOffNumbers(question);
      expect(answer.ok ? [] : [...new Set(answer.error.map((fault) => fault.code))]).toEqual([
        code,
      ]);
    }
  });

  it('are all provoked above', () => {
    expect(PROVOKED.map(([code]) => code)).toEqual(TAKEOFF_REFUSALS.map(({ code }) => code));
  });
});
