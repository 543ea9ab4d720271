import { describe, expect, it } from 'vitest';
import { GRAVITY } from '#quantities';
import { answerRunaway, type RunawayAsked } from './answer-runaway.ts';
import { BRICKS_FIRST, DOUBLE_HALVED, STEEL_AWAY } from './example-runs.ts';
import { type Run, type RunawayCase, runaway } from './runaway.ts';
import { impact, snatch } from './stopped.ts';

const run = (the: RunawayCase): Run => {
  const found = runaway(the);
  if (!found.moves) throw new Error(`it stays: ${found.why}`);
  return found;
};
const value = <T>(
  found: { readonly known: true; readonly value: T } | { readonly known: false },
): T => {
  if (!found.known) throw new Error('it is not known');
  return found.value;
};

const LINES = { stiffness: 180_000, largestShare: 1 / 6, breakingStrength: 31_137 };

/** The heavy side on its spring, stepped through time from the moment the light side stops. */
const steppedPeak = (the: {
  readonly massKg: number;
  readonly weightN: number;
  readonly pullN: number;
  readonly speedMs: number;
}): number => {
  const { massKg, weightN, pullN, speedMs } = the;
  const stepS = Math.sqrt(massKg / LINES.stiffness) / 2e4;
  let [pull, speed, peak] = [pullN, speedMs, pullN];
  while (speed > 0) {
    const middle = speed + ((weightN - pull) / massKg) * (stepS / 2);
    pull += LINES.stiffness * middle * stepS;
    speed = middle + ((weightN - pull) / massKg) * (stepS / 2);
    peak = Math.max(peak, pull);
  }
  return peak;
};

describe('the peak in the lines when the light side is stopped', () => {
  it.each([
    ['the arbor runs on', BRICKS_FIRST, 'arbor'],
    ['the batten runs on', STEEL_AWAY, 'batten'],
    ['the arbor of a double purchase runs on', DOUBLE_HALVED, 'arbor'],
  ])('is that of the swing stepped through time: %s', (_what, the, runsOn) => {
    const found = run(the);
    const peak = value(snatch(the.moves, found, LINES));
    expect(peak.runsOn).toBe(runsOn);
    const { purchase, arbor } = the.moves;
    const [massKg, restKg, pullN] =
      runsOn === 'arbor'
        ? [arbor / purchase ** 2, arbor / purchase, found.pull.arbor]
        : [found.mass.hanging, found.mass.hanging, found.pull.batten];
    const stepped = steppedPeak({
      massKg,
      weightN: restKg * GRAVITY,
      pullN,
      speedMs: found.speed,
    });
    // The steps are second order, 2e4 to a radian.
    expect(Math.abs(peak.allLines / stepped - 1)).toBeLessThanOrEqual(1e-8);
    expect(value(peak.oneLine)).toBeCloseTo(peak.allLines / 6, 6);
    expect(value(peak.overBreaking)).toBeCloseTo(peak.allLines / 6 / 31_137, 12);
  });

  it('is a sudden stop of the lift lines where the pull is the weight', () => {
    const found = { ...run(BRICKS_FIRST), speed: 2 } as Run;
    const { arbor } = BRICKS_FIRST.moves;
    const steady = { ...found, pull: { ...found.pull, arbor: arbor * GRAVITY } } as Run;
    const peak = value(snatch(BRICKS_FIRST.moves, steady, LINES)).allLines;
    const factor = 1 + (2 * Math.sqrt(LINES.stiffness / arbor)) / GRAVITY;
    expect(peak).toBeCloseTo(factor * arbor * GRAVITY, 6);
  });

  it('names what it was not told', () => {
    const found = run(BRICKS_FIRST);
    const { stiffness, largestShare, breakingStrength } = LINES;
    expect(snatch(BRICKS_FIRST.moves, found, {})).toEqual({
      known: false,
      needs: ['liftLines.stiffness'],
    });
    expect(value(snatch(BRICKS_FIRST.moves, found, { stiffness }))).toMatchObject({
      oneLine: { known: false, needs: ['liftLines.largestShare'] },
      overBreaking: {
        known: false,
        needs: ['liftLines.largestShare', 'liftLines.breakingStrength'],
      },
    });
    expect(value(snatch(BRICKS_FIRST.moves, found, { stiffness, largestShare }))).toMatchObject({
      oneLine: { known: true },
      overBreaking: { known: false, needs: ['liftLines.breakingStrength'] },
    });
    expect(value(snatch(BRICKS_FIRST.moves, found, { stiffness, breakingStrength }))).toMatchObject(
      {
        overBreaking: { needs: ['liftLines.largestShare'] },
      },
    );
  });
});

describe('the impact on the stop', () => {
  const at76 = { ...run(BRICKS_FIRST), arborSpeed: 7.6, speed: 7.6 } as Run;
  const moves = { ...BRICKS_FIRST.moves, arbor: 250 };

  it('stops 250 kg from 7.6 m/s in 50 mm with 144.4 kN', () => {
    const found = value(impact(moves, at76, { distance: 0.05 }));
    expect(found).toMatchObject({ meets: 'arbor', distance: 0.05 });
    expect(found.stopping).toBeCloseTo(144_400, 6);
    expect(found.force - found.stopping).toBeCloseTo(250 * GRAVITY, 9);
    expect(found.lightSideRises).toBeCloseTo(7.6 ** 2 / (2 * GRAVITY), 12);
  });

  it('squeezes a spring by all the energy of the motion and of the fall onto it', () => {
    const { force, distance } = value(impact(moves, at76, { stiffness: 2e6 }));
    expect(force).toBeCloseTo(2e6 * distance, 6);
    const energyJ = (250 * 7.6 ** 2) / 2 + 250 * GRAVITY * distance;
    expect((2e6 * distance ** 2) / 2).toBeCloseTo(energyJ, 6);
  });

  it('counts either side at its own speed', () => {
    const double = run(DOUBLE_HALVED);
    const out = value(impact(DOUBLE_HALVED.moves, double, { distance: 0.1 }));
    const { arbor } = DOUBLE_HALVED.moves;
    expect(out.stopping).toBeCloseTo((arbor * (double.speed / 2) ** 2) / 0.2, 6);
    expect(out.lightSideRises).toBeCloseTo(double.speed ** 2 / (2 * GRAVITY), 9);
    const steel = run(STEEL_AWAY);
    const inward = value(impact(STEEL_AWAY.moves, steel, { distance: 0.1 }));
    expect(inward.meets).toBe('batten');
    expect(inward.stopping).toBeCloseTo((steel.mass.hanging * steel.speed ** 2) / 0.2, 6);
    expect(inward.lightSideRises).toBeCloseTo((steel.speed / 2) ** 2 / (2 * GRAVITY), 9);
  });

  it('says that it does not know how the stop gives', () => {
    expect(impact(moves, at76, undefined)).toEqual({ known: false, needs: ['stop'] });
  });
});

const answer = (asked: RunawayAsked) => {
  const found = answerRunaway(asked);
  if (!found.ok) throw new Error(JSON.stringify(found.error));
  return found.value;
};

describe('the answer', () => {
  it('has snatch and impact where the set meets its stop, and nowhere else', () => {
    const asked = { ...BRICKS_FIRST, liftLines: LINES, stop: { distance: 0.05 } };
    const met = answer(asked);
    expect(met).toMatchObject({ snatch: { known: true }, impact: { known: true } });
    const untold = answer(BRICKS_FIRST);
    expect(untold).toMatchObject({ impact: { known: false, needs: ['stop'] } });
    const held = answer({ ...asked, hold: 1e5 });
    expect(held).toEqual({ moves: false, why: 'held', way: 'out' });
    const stalled = answer({ ...asked, already: { way: 'in', speed: 0.1 }, height: 10 });
    expect(stalled).toMatchObject({ end: 'rest' });
    expect('snatch' in stalled).toBe(false);
  });
});
