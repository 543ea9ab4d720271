import { describe, expect, it } from 'vitest';
import { FOOT } from '#quantities';
import { freeLength } from './run.ts';
import type { LineRun } from './types.ts';

const feet = (ft: number): number => ft * FOOT;

/** The demo's single purchase, batten on its low stop; all in feet. */
const runAt = (x: number, change: Partial<LineRun> = {}): LineRun => ({
  purchase: 1,
  lineX: feet(x),
  headX: feet(-36),
  loftZ: feet(66),
  headZ: feet(66),
  wireEndZ: feet(3),
  attachZ: feet(66.5 - 32),
  ...change,
});

describe('free length', () => {
  it('adds the drop, the run and the leg to the arbor', () => {
    // 63 ft down, 13.5 ft across, 31.5 ft down to the arbor.
    expect(freeLength(runAt(-22.5)) / FOOT).toBeCloseTo(108, 9);
    expect(freeLength(runAt(22.5)) / FOOT).toBeCloseTo(153, 9);
  });

  it('takes the leg to the arbor twice with double purchase', () => {
    expect(freeLength(runAt(-22.5, { purchase: 2 })) / FOOT).toBeCloseTo(139.5, 9);
  });

  it('takes the true length of a run that climbs: 3 across and 4 up are 5', () => {
    const run = runAt(0, { headX: feet(-3), headZ: feet(70), attachZ: feet(60) });
    expect(freeLength(run) / FOOT).toBeCloseTo(63 + 5 + 10, 9);
  });

  it('goes by way of the mule blocks', () => {
    const mules = [
      { x: feet(-33), z: feet(70) },
      { x: feet(-33), z: feet(66) },
    ];
    expect(freeLength(runAt(-30, { mules })) / FOOT).toBeCloseTo(63 + 5 + 4 + 3 + 31.5, 9);
  });

  it('does not care on which side the head block is', () => {
    expect(freeLength(runAt(-22.5, { headX: feet(-9) }))).toBeCloseTo(freeLength(runAt(-22.5)), 12);
  });
});
