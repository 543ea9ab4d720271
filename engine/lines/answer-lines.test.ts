import { describe, expect, it } from 'vitest';
import { GRAVITY, INCH } from '#quantities';
import { answerLines } from './answer-lines.ts';
import type { LinesAsked } from './asked.ts';
import { LINES_REFUSALS } from './refusal-codes.ts';

const ASKED: LinesAsked = {
  purchase: 1,
  lines: [
    { x: -4, tension: 1000 },
    { x: 4, tension: 0 },
  ],
  headX: -10,
  loftHeight: 20,
  headHeight: 20,
  wireEndHeight: 10,
  attachHeight: 8,
  lineMassPerLength: 1 / GRAVITY,
};
const CABLE: NonNullable<LinesAsked['cable']> = {
  diameter: INCH / 4,
  breakingStrength: 31_000,
  termination: 'compressionSleeve',
  smallestSheave: 10 * INCH,
  axialStiffness: 2_800_000,
};

const answer = (change: Partial<LinesAsked> = {}) => {
  const found = answerLines({ ...ASKED, ...change });
  if (!found.ok) throw new Error(JSON.stringify(found.error));
  return found.value;
};
const codes = (change: Partial<LinesAsked>): readonly string[] => {
  const found = answerLines({ ...ASKED, ...change });
  return found.ok ? [] : found.error.map(({ code, path }) => `${code} ${path}`);
};

describe('what compute lines answers', () => {
  it('says of each line its length, its tensions and its block, with angles in degrees', () => {
    const { lines, headBlock, ...rest } = answer();
    expect(lines.map(({ freeLength }) => freeLength)).toEqual([28, 36]);
    expect(lines.map(({ tension }) => tension.loft)).toEqual([1010, 10]);
    expect(lines[0]?.loftBlock.turn).toBeCloseTo(90, 9);
    expect(lines[0]?.loftBlock.vertical).toBeCloseTo(1010, 9);
    expect(headBlock.block.horizontal).toBeCloseTo(1020, 9);
    expect(headBlock.block.turn).toBeCloseTo(90, 9);
    expect(rest).toEqual({});
    expect(Object.keys(lines[0] ?? {})).not.toContain('factor');
  });

  it('adds stiffness, stretch and factor where the cable is given', () => {
    const { lines, strength } = answer({ cable: CABLE });
    expect(strength?.sheaveRatio).toBeCloseTo(40, 9);
    expect(lines[0]?.stiffness).toBe(100_000);
    expect(lines[0]?.stretch).toBeCloseTo(0.01, 12);
    expect(lines[0]?.factor).toBeCloseTo((31_000 * 0.95) / 1010, 9);
    // A line that the batten does not pull still carries its own wire: 10 N.
    expect(lines[1]?.factor).toBeCloseTo((31_000 * 0.95) / 10, 9);
    // The head block is the highest, and so is the tension there.
    const [high] = answer({ cable: CABLE, headHeight: 25 }).lines;
    expect(high?.factor).toBeCloseTo((31_000 * 0.95) / 1015, 9);
    expect(answer({ cable: CABLE, lineMassPerLength: 0 }).lines[1]?.factor).toBeNull();
  });

  it('takes the stiffness from the construction where EA is not given', () => {
    const { axialStiffness, ...bare } = CABLE;
    const [line] = answer({ cable: { ...bare, construction: '7x19 galvanized' } }).lines;
    expect((line?.stiffness ?? 0) * 28).toBeCloseTo(1_985_813, -1);
    expect(answer({ cable: bare }).lines[0]?.stiffness).toBeUndefined();
    const both = { ...CABLE, construction: '7x19 galvanized' as const };
    expect(answer({ cable: both }).lines[0]?.stiffness).toBe(100_000);
  });

  it('[LIN-001] refuses what the published tables do not reach, each by its path', () => {
    const small = { ...CABLE, smallestSheave: 0.9 * CABLE.diameter };
    expect(codes({ cable: small })).toEqual(['LIN-001 cable.smallestSheave']);
    const thick = { ...CABLE, diameter: 0.026, termination: 'mechanicalSplice' as const };
    expect(codes({ cable: thick })).toEqual(['LIN-001 cable.termination']);
    expect(codes({ cable: { ...thick, smallestSheave: 0.02 } })).toEqual([
      'LIN-001 cable.termination',
      'LIN-001 cable.smallestSheave',
    ]);
    expect(LINES_REFUSALS.map(({ code }) => code)).toEqual(['LIN-001']);
  });

  it('goes by the mule blocks and says what they carry', () => {
    const mules = [{ x: -4, tension: 1000, muleBlocks: [{ x: -7, z: 20 }] }];
    const [line] = answer({ lines: mules }).lines;
    expect(line?.muleBlocks).toHaveLength(1);
    expect(line?.muleBlocks[0]?.resultant).toBeCloseTo(0, 9);
    expect(line?.freeLength).toBe(28);
  });

  it('tells the fleet angle in degrees, by the distance to the next block', () => {
    const at = (fleetOffset: number) =>
      answer({ lines: [{ x: -4, tension: 1, fleetOffset }] }).lines[0]?.fleet;
    expect(at(0.15)?.angle).toBeCloseTo(1.432, 3);
    expect(at(0.15)?.keepsRule).toBe(true);
    expect(at(-0.151)?.keepsRule).toBe(false);
  });

  it('carries the larger side where one is held, with hand line and friction where asked', () => {
    const { held } = answer({ held: { battenSide: 100, arbor: 200 } });
    expect(held?.force).toBeCloseTo(200 * GRAVITY + 2 * 12, 9);
    const { headBlock } = answer({ handLineMass: 10 / GRAVITY, handLineTension: 50 });
    expect(headBlock.block.vertical).toBeCloseTo(1020 + 110, 9);
    const moving = answer({ friction: { bearing: 'rolling', batten: 'out' } });
    expect(moving.lines[0]?.tension.head).toBeCloseTo(1010 * 1.04, 9);
  });

  it('answers starts, stops, falls, bridles and anchors', () => {
    const found = answer({
      moves: [
        { kind: 'steady', mass: 100, acceleration: GRAVITY },
        { kind: 'suddenStop', mass: 100, stiffness: 100 * GRAVITY ** 2, speed: 1 },
        { kind: 'drop', mass: 100, stiffness: 1e5, drop: 0 },
      ],
      bridles: [{ load: 1000, left: 1, right: 1, height: 1 }],
      turningBlocks: [{ tension: 100, turn: 180 }],
    });
    expect(found.moves?.map(({ factor }) => factor)).toEqual([2, 2, 2]);
    expect(found.bridles?.[0]?.left.angle).toBeCloseTo(45, 9);
    expect(found.bridles?.[0]?.thrust).toBeCloseTo(500, 9);
    expect(found.turningBlocks?.[0]).toBeCloseTo(200, 9);
  });
});
