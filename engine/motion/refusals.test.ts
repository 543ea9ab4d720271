import { describe, expect, it } from 'vitest';
import { answerReleasable } from './answer-releasable.ts';
import { answerRunaway, type RunawayAsked } from './answer-runaway.ts';
import * as examples from './example-runs.ts';
import { MOTION_REFUSALS } from './refusal-codes.ts';

type InPounds = examples.InPounds;

const { BRICKS_FIRST, CURTAIN_IN, curve, hanging, pounds } = examples;

const faults = (asked: RunawayAsked): readonly string[] => {
  const found = answerRunaway(asked);
  return found.ok ? [] : found.error.map(({ code, path }) => `${code} ${path}`);
};

describe('what is asked of a runaway', () => {
  it.each([
    BRICKS_FIRST,
    CURTAIN_IN,
    examples.ELECTRIC_AT_CHEST,
    examples.FLAT_ON_DECK,
    examples.UNIT_AT_GRID,
    examples.DOUBLE_HALVED,
    examples.STEEL_AWAY,
  ])('is taken where it fits together: scenario %#', (the) => {
    expect(faults(the)).toEqual([]);
    expect(answerReleasable(the).ok).toBe(true);
  });

  it.each<[string, readonly InPounds[]]>([
    [
      'twice at one',
      [
        [3, -1],
        [3, -1],
        [61, -1],
      ],
    ],
    [
      'downward',
      [
        [61, -1],
        [3, -1],
      ],
    ],
    [
      'within a millimetre',
      [
        [3, -1],
        [3.003, -1],
        [61, -1],
      ],
    ],
  ])('[MOT-001] refuses heights out of order: %s', (_how, nodes) => {
    const [fault] = faults({ ...BRICKS_FIRST, curve: curve(...nodes) });
    expect(fault).toMatch(/^MOT-001 curve\[1\]\.height$/);
  });

  it.each<[string, readonly InPounds[]]>([
    [
      'at the top',
      [
        [3, -1],
        [60.9, -1],
      ],
    ],
    [
      'at the bottom',
      [
        [3.1, -1],
        [61, -1],
      ],
    ],
    ['all of it', []],
  ])('[MOT-002] refuses a curve that leaves out part of the travel: %s', (_which, nodes) => {
    const short = curve(...nodes);
    expect(faults({ ...BRICKS_FIRST, curve: short })).toEqual(['MOT-002 curve']);
    const { height, lowStop, highStop } = BRICKS_FIRST;
    const found = answerReleasable({ height, lowStop, highStop, curve: short });
    expect(found.ok ? [] : found.error.map(({ code }) => code)).toEqual(['MOT-002']);
  });

  it('[MOT-002] asks the same of the mass that hangs', () => {
    const moves = { ...CURTAIN_IN.moves, hanging: hanging([3, 169], [60, 700]) };
    expect(faults({ ...CURTAIN_IN, moves })).toEqual(['MOT-002 moves.hanging']);
  });

  it('[MOT-003] refuses a jump of the imbalance without that of the mass, and the reverse', () => {
    const { moves } = CURTAIN_IN;
    expect(faults({ ...CURTAIN_IN, moves: { ...moves, hanging: pounds(711) } })).toEqual([
      'MOT-003 moves.hanging',
    ]);
    const extra = hanging([3, 212.3], [20, 300, 320], [30.5, 689, 711], [61, 711]);
    expect(faults({ ...CURTAIN_IN, moves: { ...moves, hanging: extra } })).toEqual([
      'MOT-003 moves.hanging',
    ]);
    // 22 lb and 20 kg are a slip; a tenth of a pound is a rounding.
    const near = hanging([3, 212.3], [30.5, 689, 711.1], [61, 711]);
    expect(faults({ ...CURTAIN_IN, moves: { ...moves, hanging: near } })).toEqual([]);
  });

  it('[MOT-004] refuses an imbalance that is more than the heavy side weighs', () => {
    const arbor = pounds(986) / 2.2;
    expect(faults({ ...BRICKS_FIRST, moves: { ...BRICKS_FIRST.moves, arbor } })).toEqual([
      'MOT-004 curve[0]',
      'MOT-004 curve[1]',
    ]);
    const light = { ...BRICKS_FIRST, curve: curve([3, 250], [61, 200]) };
    expect(faults(light)).toEqual(['MOT-004 curve[0]']);
    // Double purchase: half the arbor's weight is all that it pulls with.
    const { moves } = examples.DOUBLE_HALVED;
    const double = { ...examples.DOUBLE_HALVED, curve: curve([3, -460], [61, -400]) };
    expect(faults(double)).toEqual(['MOT-004 curve[0]']);
    expect(faults({ ...double, moves: { ...moves, purchase: 1 } })).toEqual([]);
  });

  it('[MOT-005] refuses a contact whose lower value is the higher', () => {
    const [first, second] = BRICKS_FIRST.curve;
    if (first === undefined || second === undefined) throw new Error('two nodes');
    const reversed = {
      ...BRICKS_FIRST,
      curve: [{ ...first, contact: { low: 2, high: 1 } }, second],
    };
    expect(faults(reversed)).toEqual(['MOT-005 curve[0].contact.low']);
    expect(answerReleasable(reversed).ok).toBe(false);
  });

  it('names every refusal once, in order', () => {
    const codes = MOTION_REFUSALS.map(({ code }) => code);
    expect(codes).toEqual(['MOT-001', 'MOT-002', 'MOT-003', 'MOT-004', 'MOT-005']);
  });
});
