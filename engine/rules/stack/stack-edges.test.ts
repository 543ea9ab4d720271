import { describe, expect, it } from 'vitest';
import { blocked, reckoned } from '#findings';
import { metres } from '#quantities';
import { exampleStack, found, judgeScene, type Scene } from '../example-assessment.ts';
import { full, missed } from '../example-finding.ts';
import { exampleArbor, exampleHouse, exampleSet, motorSet, nobodyKnows } from '../example-house.ts';

const tall = (heightM: number) => ({
  plan: { stack: { ...exampleStack, spreaders: 2, height: metres(heightM) } },
});

type Span = readonly [fromM: number, toM: number] | null;

const galleries = ['upper', 'lower', 'third'];

const windows = (...spans: readonly Span[]) => ({
  windows: spans.map((span, index) => ({
    gallery: galleries[index] ?? '',
    window: reckoned(span && { from: metres(span[0]), to: metres(span[1]) }),
  })),
});

const codesOf = (scene: Scene, subject: string) =>
  judgeScene(scene)
    .map(({ code }) => code)
    .filter((code) => code.startsWith(subject));

describe('the stack, in full', () => {
  it('[STK-001] shows plates and rod', () => {
    expect(full('STK-001', tall(1.7))).toMatchInlineSnapshot(`
      "STK-001 stop at set 7
      measured 1.7 length, limit 1.6 length (house rule, example)
      - plates: 11 count
      height of the stack: bricks and spreader plates, one on the other
        n = 11 count: plates of brick
        s = 2 count: spreader plates
        stack = 1.7 length: height of the stack
        limit 1.6 length (house rule, example)
        by trade formula C6
        leaves out dirt and burrs between plates: the stack stands higher than this"
    `);
  });

  it('[STK-002] shows plates and 95 % of the rod', () => {
    expect(full('STK-002', tall(1.55))).toMatchInlineSnapshot(`
      "STK-002 caution at set 7
      measured 1.55 length, limit 1.52 length (95 % of the usable rod: common practice, no
          source)
      - rod: 1.6 length
      height of the stack: bricks and spreader plates, one on the other
        n = 11 count: plates of brick
        s = 2 count: spreader plates
        stack = 1.55 length: height of the stack
        limit 1.52 length (95 % of the usable rod: common practice, no source)
        by trade formula C6
        leaves out dirt and burrs between plates: the stack stands higher than this"
    `);
  });

  it('[STK-003] shows heights and the gallery that reaches first', () => {
    const set = windows([3, 4], [2, 2.5], null);
    expect(full('STK-003', { set })).toMatchInlineSnapshot(`
      "STK-003 caution at set 7
      measured none, limit none (reach of a loader at each gallery, from the house)
      - plates: 11 count
      - lowStop: 1 length
      - working: 1.2 length
      - first: 2 length
      - from: lower"
    `);
  });

  it('[STK-004] shows the usual spacing', () => {
    expect(full('STK-004', { ...tall(1), house: { spreader: null } })).toMatchInlineSnapshot(`
      "STK-004 caution at set 7
      measured 1 length, limit 0.6096 length (common practice: an operating guide (“Insert
          spreader plates every two feet”) and a school’s crew guide)"
    `);
  });
});

describe('height of the stack where something is not known', () => {
  it('[STK-001] [STK-002] judge no rod where no arbor is', () => {
    expect(codesOf({ ...tall(1.7), lineSet: motorSet }, 'STK-00')).toEqual([]);
    expect(codesOf({ ...tall(1.55), lineSet: motorSet }, 'STK-00')).toEqual([]);
  });

  it('[STK-002] says nothing near a rod that nobody has measured', () => {
    const lineSet = { ...exampleSet, arbor: { ...exampleArbor, usableRod: nobodyKnows } };
    expect(codesOf({ ...tall(1.55), lineSet }, 'STK-00')).toEqual([]);
  });
});

describe('reach of the stack where something is not known', () => {
  it('[STK-003] asks nothing of a stack whose kinds all have no brick', () => {
    const stack = { ...exampleStack, show: [{ kind: 'B', count: 0 }] };
    expect(found('STK-003', { set: windows(null), plan: { stack } })).toEqual([]);
    const some = { ...exampleStack, show: [{ kind: 'C', count: 0 }, ...exampleStack.show] };
    expect(found('STK-003', { set: windows(null), plan: { stack: some } })).toHaveLength(1);
  });

  it('[STK-003] judges nothing without a gallery, or without a height to stand at', () => {
    expect(found('STK-003', { set: windows() })).toEqual([]);
    const lineSet = {
      ...exampleSet,
      lowStop: { ...exampleSet.lowStop, height: nobodyKnows },
      workingHeight: nobodyKnows,
    };
    expect(found('STK-003', { set: windows([3, 4]), lineSet })).toEqual([]);
  });

  it('[STK-003] waits for the one gallery whose reach is not known', () => {
    const unknown = { gallery: 'lower', window: blocked(['floor of the lower gallery']) };
    const set = { windows: [...windows([3, 4]).windows, unknown] };
    expect(found('STK-003', { set })).toEqual([]);
  });

  it('[STK-003] goes by the one height that is known', () => {
    const low = { ...exampleSet, workingHeight: nobodyKnows };
    expect(found('STK-003', { set: windows([1.1, 4]), lineSet: low })).toMatchObject([
      { facts: { working: 'not known', lowStop: { value: 1 } } },
    ]);
    const lowStop = { ...exampleSet.lowStop, height: nobodyKnows };
    expect(
      found('STK-003', { set: windows([0.5, 1.1]), lineSet: { ...exampleSet, lowStop } }),
    ).toMatchObject([{ facts: { lowStop: 'not known', working: { value: 1.2 } } }]);
    expect(missed({ set: windows([0.5, 1.1]), lineSet: { ...exampleSet, lowStop } })).toContain(
      'height of the low stop',
    );
  });

  it('[STK-003] is met by any one gallery, and by a window that ends just at the height', () => {
    expect(found('STK-003', { set: windows(null, [0.9, 1.05]) })).toEqual([]);
    expect(found('STK-003', { set: windows([3, 4], [1, 1]) })).toEqual([]);
    // A hair of a window beside the height is the same height.
    expect(found('STK-003', { set: windows([1.2 + 5e-7, 4]) })).toEqual([]);
    expect(found('STK-003', { set: windows([0.2, 1 - 5e-7]) })).toEqual([]);
    expect(found('STK-003', { set: windows([0.2, 0.9999]) })).toHaveLength(1);
    expect(found('STK-003', { set: windows([1.001, 1.199]) })).toHaveLength(1);
  });

  it('[STK-003] names a gallery that the house does not list by its id', () => {
    const set = windows(null, [3, 4]);
    expect(exampleHouse.galleries.map(({ id }) => id)).toEqual(['upper']);
    expect(found('STK-003', { set })).toMatchObject([{ facts: { from: 'lower' } }]);
  });
});
