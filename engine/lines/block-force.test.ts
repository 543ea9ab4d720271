import { describe, expect, it } from 'vitest';
import { GRAVITY } from '#quantities';
import {
  headBlockForce,
  loftBlockForce,
  muleBlockForces,
  turningBlockForce,
} from './block-force.ts';
import type { LineRun } from './types.ts';

const LEVEL: LineRun = {
  purchase: 1,
  lineX: 0,
  headX: -10,
  loftZ: 20,
  headZ: 20,
  wireEndZ: 5,
  attachZ: 8,
};
const degrees = (rad: number): number => (rad * 180) / Math.PI;

describe('the force on a loft block', () => {
  it('is √2 times the tension on a level run, as much down as across', () => {
    const force = loftBlockForce(LEVEL, 1000);
    expect(force.resultant).toBeCloseTo(1000 * Math.SQRT2, 9);
    expect(force.horizontal).toBeCloseTo(1000, 9);
    expect(force.vertical).toBeCloseTo(1000, 9);
    expect(degrees(force.turn)).toBeCloseTo(90, 9);
  });

  it('is smaller where the run climbs: at 30° the line turns by 60°', () => {
    const force = loftBlockForce({ ...LEVEL, headZ: 20 + 10 * Math.tan(Math.PI / 6) }, 1000);
    expect(degrees(force.turn)).toBeCloseTo(60, 9);
    expect(force.resultant).toBeCloseTo(1000, 9);
    expect(force.vertical).toBeCloseTo(500, 9);
  });

  it('pulls towards the head block whichever side that is on', () => {
    expect(loftBlockForce({ ...LEVEL, headX: 10 }, 1000)).toEqual(loftBlockForce(LEVEL, 1000));
  });

  it('is twice the tension where the head block is no further, and the line comes down', () => {
    const force = loftBlockForce({ ...LEVEL, headX: 0 }, 1000);
    expect(force.resultant).toBeCloseTo(2000, 9);
    expect(degrees(force.turn)).toBeCloseTo(180, 9);
  });

  it('follows the line to its first mule block, and skips one that is at the same place', () => {
    const mules = [
      { x: 0, z: 20 },
      { x: -5, z: 15 },
    ];
    const force = loftBlockForce({ ...LEVEL, mules }, 1000);
    expect(degrees(force.turn)).toBeCloseTo(135, 9);
    expect(force.vertical).toBeCloseTo(1000 * (1 + Math.SQRT1_2), 9);
  });
});

describe('the force on mule blocks', () => {
  it('goes by the turn of each, upward where the line passes below', () => {
    const run = { ...LEVEL, mules: [{ x: -5, z: 15 }] };
    const [force] = muleBlockForces(run, [1000]);
    expect(degrees(force?.turn ?? 0)).toBeCloseTo(90, 9);
    expect(force?.horizontal).toBeCloseTo(0, 9);
    expect(force?.vertical).toBeCloseTo(-1000 * Math.SQRT2, 9);
  });

  it('is none at a block that the line passes straight', () => {
    const [force] = muleBlockForces({ ...LEVEL, mules: [{ x: -5, z: 20 }] }, [1000]);
    expect(force?.resultant).toBeCloseTo(0, 9);
    expect(force?.turn).toBeCloseTo(0, 9);
  });
});

describe('the force on a head block', () => {
  const lines = [0, 5, 10].map((lineX) => ({ run: { ...LEVEL, lineX }, tension: 500 }));

  it('adds up the lines: level in and straight down, both parts are the sum of tensions', () => {
    const { block, steel } = headBlockForce({ lines, handLineMass: 0 });
    expect(block.horizontal).toBeCloseTo(1500, 9);
    expect(block.vertical).toBeCloseTo(1500, 9);
    expect(block.resultant).toBeCloseTo(1500 * Math.SQRT2, 9);
    expect(degrees(block.turn)).toBeCloseTo(90, 9);
    expect(steel).toEqual(block);
  });

  it('carries both legs of the hand line, its own mass and what is pulled', () => {
    const { block } = headBlockForce({ lines, handLineMass: 100 / GRAVITY, handLineTension: 30 });
    expect(block.vertical).toBeCloseTo(1500 + 100 + 60, 9);
    expect(block.horizontal).toBeCloseTo(1500, 9);
  });

  it('puts the dead ends of a double purchase on the steel and not on the block', () => {
    const double = lines.map(({ run, tension }) => ({
      run: { ...run, purchase: 2 as const },
      tension,
    }));
    const { block, steel } = headBlockForce({ lines: double, handLineMass: 0 });
    expect(block.vertical).toBeCloseTo(1500, 9);
    expect(steel.vertical).toBeCloseTo(3000, 9);
    expect(steel.horizontal).toBeCloseTo(1500, 9);
  });

  it('is pulled downward too by lines that come from below', () => {
    const climbing = lines.map(({ run, tension }) => ({
      run: { ...run, lineX: -5, headZ: 25 },
      tension,
    }));
    const { block } = headBlockForce({ lines: climbing, handLineMass: 0 });
    expect(block.vertical).toBeCloseTo(1500 * (1 + Math.SQRT1_2), 9);
    expect(degrees(block.turn)).toBeCloseTo(135, 9);
  });

  it('is nothing without lines and hand line', () => {
    const { block } = headBlockForce({ lines: [], handLineMass: 0 });
    expect(block).toEqual({ resultant: 0, horizontal: 0, vertical: 0, turn: 0 });
  });
});

describe('the force on an anchor', () => {
  it('is twice the tension with parallel legs and √2 of it at a right angle', () => {
    expect(turningBlockForce({ tensionN: 700, turnRad: Math.PI })).toBeCloseTo(1400, 9);
    expect(turningBlockForce({ tensionN: 700, turnRad: Math.PI / 2 })).toBeCloseTo(989.949, 3);
    expect(turningBlockForce({ tensionN: 700, turnRad: 0 })).toBe(0);
  });
});
