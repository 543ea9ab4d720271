import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { afterAll, describe, expect, it } from 'vitest';
import { heard as command } from './heard.ts';

const folder = mkdtempSync(join(tmpdir(), 'counterpoise-lines-'));
afterAll(() => rmSync(folder, { recursive: true }));

const fileWith = (name: string, value: unknown): string => {
  const file = join(folder, name);
  writeFileSync(file, JSON.stringify(value));
  return file;
};

const LINES = {
  purchase: 2,
  lines: [
    { x: -4, tension: 800, fleetOffset: 0.05 },
    { x: 4, tension: 0, muleBlocks: [{ x: 0, z: 20.2 }] },
  ],
  headX: -10.97,
  loftHeight: 20.12,
  headHeight: 20.73,
  wireEndHeight: 11.6,
  attachHeight: 12.2,
  lineMassPerLength: 0,
  cable: {
    diameter: 0.00635,
    breakingStrength: 31_137,
    termination: 'clips',
    smallestSheave: 0.2032,
    construction: '7x19 galvanized',
  },
  held: { battenSide: 180, arbor: 190 },
  moves: [{ kind: 'suddenStop', mass: 200, stiffness: 90_000, speed: 1.2 }],
  bridles: [{ load: 1000, left: 1, right: 2, height: 1.5 }],
  turningBlocks: [{ tension: 2000, turn: 90 }],
};

const SET = {
  set: '1',
  bay: 'A',
  purchase: 1,
  arborMass: 100,
  handLineMass: 10,
  lines: [{ x: 0, tension: 500 }],
};
const TOTALS = {
  bays: ['A'],
  wells: [{ id: 'W', x: 2, width: 1 }],
  movingShare: 0.25,
  states: [{ name: 'moving', sets: [{ ...SET, moving: true }] }],
  floors: [
    {
      id: 'upper',
      length: 4,
      width: 1,
      peopleAndTools: 200,
      bricks: [{ count: 40, mass: 10, floorLength: 0.2 }],
    },
  ],
};

describe('compute lines and compute totals', () => {
  it.each([
    ['lines', LINES],
    ['totals', TOTALS],
  ])('publish schemas that their own inputs and answers fit: %s', async (name, input) => {
    const ajv = new Ajv2020({ strict: false });
    const schemas = JSON.parse((await command('compute', name, '--schema')).out);
    expect(ajv.validate(schemas.input, input), JSON.stringify(ajv.errors)).toBe(true);
    const { code, out } = await command('compute', name, '--input', fileWith(name, input));
    expect(code).toBe(0);
    const answer = JSON.parse(out);
    expect(ajv.validate(schemas.output, answer), JSON.stringify(ajv.errors)).toBe(true);
    for (const field of Object.keys(answer)) {
      expect(Object.keys(schemas.output.properties)).toContain(field);
    }
  });

  it('answer in newtons and degrees', async () => {
    const lines = await command('compute', 'lines', '--input', fileWith('one.json', LINES));
    const { turningBlocks, headBlock, strength } = JSON.parse(lines.out);
    expect(turningBlocks[0]).toBeCloseTo(2828.43, 2);
    // The run climbs 0.61 m on 6.97 m, so the line turns by 95 degrees on the head block.
    expect(headBlock.block.turn).toBeCloseTo(95.0, 1);
    expect(headBlock.steel.vertical - headBlock.block.vertical).toBeCloseTo(800, 6);
    expect(strength.termination.value).toBe(0.8);
    const totals = await command('compute', 'totals', '--input', fileWith('two.json', TOTALS));
    const { worst, floors, states } = JSON.parse(totals.out);
    expect(worst.vertical[0].total.value).toBeCloseTo(1.25 * 110 * 9.80665, 6);
    expect(floors[0].courses).toBe(2);
    expect(states[0].linesOnNoWell).toEqual([{ set: '1', x: 0 }]);
  });

  it('[LIN-001] refuse a sheave that the published table does not reach', async () => {
    const cable = { ...LINES.cable, smallestSheave: 0.005 };
    const file = fileWith('small.json', [LINES, { ...LINES, cable }]);
    const { code, out, err } = await command('compute', 'lines', '--input', file);
    expect([code, out]).toEqual([2, '']);
    expect(err).toContain('LIN-001');
    expect(err).toContain('[1].cable.smallestSheave');
  });

  it('refuse bad input by path', async () => {
    const bad = fileWith('bad.json', { ...TOTALS, movingShare: undefined });
    const { code, out, err } = await command('compute', 'totals', '--input', bad);
    expect([code, out]).toEqual([2, '']);
    expect(err).toContain('movingShare');
  });
});
