import { describe, expect, it } from 'vitest';
import type { Known } from '#house';
import { type Metres, metres } from '#quantities';
import type { Item } from '#show';
import { found, type Scene } from '../example-assessment.ts';
import { exampleHang, exampleSet, given, nobodyKnows } from '../example-house.ts';
import { flat, unit } from './example-pieces.ts';

type Change = {
  readonly yM?: number | null;
  readonly trimM?: number;
  readonly kind?: Item['kind'];
  readonly drop?: Known<Metres>;
};

const scene = ({ yM = 5, trimM = 4.5, kind = 'standing', drop = unit.drop }: Change): Scene => ({
  hang: { ...exampleHang, items: [flat] },
  otherSets: [{ ...exampleSet, id: '9', y: yM === null ? nobodyKnows : given(metres(yM)) }],
  otherHangs: [
    {
      ...exampleHang,
      set: '9',
      items: [{ ...unit, kind, drop }],
      trims: [{ name: 'in', height: given(metres(trimM)), reference: 'batten' }],
    },
  ],
});

const codes = (change: Change) => found('DCK-001', scene(change));

describe('deck to lay a piece on', () => {
  it('[DCK-001] is taken by a built piece of another set that stands on it', () => {
    expect(codes({})).toMatchObject([
      {
        level: 'caution',
        at: { set: '7', item: 'flat' },
        facts: { from: { value: 2 }, to: { value: 7 }, other: 'Unit', otherSet: '9' },
      },
    ]);
  });

  it('[DCK-001] reaches as far upstage as the piece is tall', () => {
    expect(codes({ yM: 7 })).toHaveLength(1);
    expect(codes({ yM: 7.01 })).toEqual([]);
    expect(codes({ yM: 2 })).toHaveLength(1);
    expect(codes({ yM: 1.99 })).toEqual([]);
  });

  it('[DCK-001] is free under a piece that stays in the air, and under a cloth', () => {
    expect(codes({ trimM: 4.6 })).toHaveLength(1);
    expect(codes({ trimM: 4.61 })).toEqual([]);
    expect(codes({ kind: 'cloth' })).toEqual([]);
  });

  it('[DCK-001] says nothing of what nobody knows, and of a set by itself', () => {
    expect(codes({ yM: null })).toEqual([]);
    expect(codes({ drop: nobodyKnows })).toEqual([]);
    expect(found('DCK-001', { hang: { ...exampleHang, items: [flat] } })).toEqual([]);
    const clear: Item = { ...flat, kind: 'clear' };
    expect(found('DCK-001', { ...scene({}), hang: { ...exampleHang, items: [clear] } })).toEqual(
      [],
    );
  });
});
