import { describe, expect, it } from 'vitest';
import { blocked, reckoned } from '#findings';
import { FOOT, INCH, metres } from '#quantities';
import { exampleStack, found } from '../example-assessment.ts';
import { exampleArbor, exampleSet, given, nobodyKnows } from '../example-house.ts';

const tall = (heightM: number) => ({
  plan: { stack: { ...exampleStack, height: metres(heightM) } },
});

describe('height of the stack', () => {
  it('[STK-001] takes a stack that ends at the rod, in inches that do not add up in binary', () => {
    const rod = { ...exampleArbor, usableRod: given(metres(66 * INCH)) };
    const plates = Array.from({ length: 55 }).reduce<number>((sum) => sum + 1.2 * INCH, 0);
    expect(plates).not.toBe(66 * INCH);
    const scene = { ...tall(plates), lineSet: { ...exampleSet, arbor: rod } };
    expect(found('STK-001', scene)).toEqual([]);
    expect(found('STK-002', scene)).toHaveLength(1);
  });

  it('[STK-001] stops a stack that is a millimetre too high', () => {
    expect(found('STK-001', tall(1.601))).toMatchObject([
      {
        level: 'stop',
        measured: { value: 1.601, kind: 'length' },
        limit: { value: 1.6 },
        facts: { plates: { value: 11, kind: 'count' } },
      },
    ]);
  });

  it('[STK-002] cautions above 95 % of the rod, and leaves what is too high to STK-001', () => {
    expect(found('STK-002', tall(1.52))).toEqual([]);
    expect(found('STK-002', tall(1.521))).toMatchObject([
      { level: 'caution', limitSource: '95 % of the usable rod: common practice, no source' },
    ]);
    expect(found('STK-002', tall(1.6))).toHaveLength(1);
    expect(found('STK-002', tall(1.601))).toEqual([]);
  });

  it('[UNK-001] says that the rod is not known', () => {
    const arbor = { ...exampleArbor, usableRod: nobodyKnows };
    const [finding] = found('UNK-001', { lineSet: { ...exampleSet, arbor } });
    expect(finding?.facts).toMatchObject({
      what: 'usable rod (nobody looked)',
      blocks: 'height of the stack',
    });
  });
});

describe('reach of the stack', () => {
  const windowOf = (span: readonly [number, number] | null) => ({
    set: {
      windows: [
        {
          gallery: 'upper',
          window: reckoned(span && { from: metres(span[0]), to: metres(span[1]) }),
        },
      ],
    },
  });

  it('[STK-003] is met where a window ends at the low stop or begins at the working height', () => {
    expect(found('STK-003', windowOf([0.5, 1]))).toEqual([]);
    expect(found('STK-003', windowOf([1.2, 3]))).toEqual([]);
  });

  it('[STK-003] cautions where a window begins just above the working height', () => {
    expect(found('STK-003', windowOf([1.21, 3]))).toMatchObject([
      { level: 'caution', facts: { first: { value: 1.21 }, from: 'upper gallery' } },
    ]);
  });

  it('[STK-003] cautions where no height brings the top of the stack within reach', () => {
    expect(found('STK-003', windowOf(null))).toMatchObject([
      { facts: { first: 'no height of the batten', from: 'no gallery' } },
    ]);
  });

  it('[STK-003] asks nothing of a set that has no show bricks', () => {
    const plan = { stack: { ...exampleStack, show: [] } };
    expect(found('STK-003', { ...windowOf(null), plan })).toEqual([]);
  });

  it('[UNK-001] misses the reach of a gallery instead of judging without it', () => {
    const windows = [{ gallery: 'upper', window: blocked(['floor of the upper gallery']) }];
    expect(found('STK-003', { set: { windows } })).toEqual([]);
    expect(found('UNK-001', { set: { windows } })[0]?.facts).toMatchObject({
      blocks: 'reach from the galleries',
    });
  });
});

describe('spreader plates', () => {
  it('[STK-004] cautions where a house without plates stacks more than 2 ft', () => {
    // One plate every 2 ft (610 mm): an operating guide and a school's crew guide.
    const bare = { house: { spreader: null } };
    expect(found('STK-004', { ...bare, ...tall(2 * FOOT) })).toEqual([]);
    expect(found('STK-004', { ...bare, ...tall(2 * FOOT + 0.001) })).toMatchObject([
      { level: 'caution', limit: { value: 0.6096 } },
    ]);
    expect(found('STK-004', tall(1.5))).toEqual([]);
  });
});
