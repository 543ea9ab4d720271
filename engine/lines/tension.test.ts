import { describe, expect, it } from 'vitest';
import { GRAVITY } from '#quantities';
import { tensionAlongRun, tensionsAtRest } from './tension.ts';
import type { LineRun } from './types.ts';

const RUN: LineRun = {
  purchase: 1,
  lineX: 0,
  headX: -10,
  loftZ: 20,
  headZ: 21,
  wireEndZ: 5,
  attachZ: 8,
};
/** One newton for each metre of height, so that the sums can be done in the head. */
const massPerLengthKg = 1 / GRAVITY;

describe('tension along a line at rest', () => {
  it('grows by the weight of the wire up to the highest block, and falls to the arbor', () => {
    const found = tensionAlongRun({ run: RUN, tensionN: 100, massPerLengthKg });
    expect(found).toMatchObject({ batten: 100, loft: 115, head: 116, arbor: 103, most: 116 });
    expect(found.blocks.map(({ block }) => block)).toEqual(['loft', 'head']);
  });

  it('is largest at the loft block where that is the highest', () => {
    const low = { ...RUN, headZ: 19 };
    expect(tensionAlongRun({ run: low, tensionN: 100, massPerLengthKg }).most).toBe(115);
  });

  it('is largest at a mule block that stands above both', () => {
    const mules = [{ x: -5, z: 25 }];
    const found = tensionAlongRun({ run: { ...RUN, mules }, tensionN: 100, massPerLengthKg });
    expect(found.most).toBe(120);
    expect(found.head).toBe(116);
    expect(found.blocks.map(({ block }) => block)).toEqual(['loft', 'mule', 'head']);
  });

  it('hangs the arbor on two legs with double purchase', () => {
    const run = { ...RUN, purchase: 2 as const };
    const found = tensionAlongRun({ run, tensionN: 100, massPerLengthKg });
    expect(found.blocks.at(-1)).toEqual({ block: 'arbor', before: 103, after: 103 });
    expect(found.arbor).toBe(103);
  });

  it('carries its own wire on a line that the batten does not pull', () => {
    expect(tensionAlongRun({ run: RUN, tensionN: 0, massPerLengthKg }).loft).toBe(15);
  });
});

describe('tensions at rest', () => {
  it.each([
    ['as it is', RUN],
    ['with a low head block', { ...RUN, headZ: 19 }],
    ['over a high mule block', { ...RUN, mules: [{ x: -5, z: 25 }] }],
    ['with double purchase', { ...RUN, purchase: 2 as const }],
  ])('are those along the run, %s', (_, run) => {
    const { loft, head, most } = tensionAlongRun({ run, tensionN: 100, massPerLengthKg });
    expect(tensionsAtRest(run, 100, massPerLengthKg)).toEqual({ loft, head, most });
  });
});

describe('tension along a line that moves', () => {
  it('is multiplied by each block when the batten goes out', () => {
    const found = tensionAlongRun({
      run: RUN,
      tensionN: 100,
      massPerLengthKg: 0,
      friction: { bearing: 'plain', batten: 'out' },
    });
    expect(found.loft).toBe(100);
    expect(found.head).toBeCloseTo(109, 10);
    expect(found.arbor).toBeCloseTo(118.81, 10);
    expect(found.most).toBeCloseTo(118.81, 10);
  });

  it('is divided by each block when the batten comes in', () => {
    const found = tensionAlongRun({
      run: { ...RUN, purchase: 2 },
      tensionN: 104,
      massPerLengthKg: 0,
      friction: { bearing: 'rolling', batten: 'in' },
    });
    expect(found.head).toBeCloseTo(100, 10);
    expect(found.most).toBe(104);
    expect(found.blocks.at(-1)?.after).toBeCloseTo(104 / 1.04 ** 3, 10);
  });
});
