import { describe, expect, it } from 'vitest';
import { kilograms } from '#quantities';
import type { GalleryState } from '#state';
import { found, type Scene } from '../example-assessment.ts';
import {
  brickB,
  brickC,
  exampleArbor,
  exampleSet,
  given,
  nobodyKnows,
  weighed,
} from '../example-house.ts';

const kinds = (...brickKinds: readonly (typeof brickB)[]): Scene => ({ house: { brickKinds } });

describe('bricks that the house owns', () => {
  // One of pipe weight and ten of show bricks.
  it('[BRK-001] takes a plan for the last brick', () => {
    expect(found('BRK-001', kinds({ ...brickB, owned: given(11) }))).toEqual([]);
  });

  it('[BRK-001] stops a plan for one more than there is', () => {
    expect(found('BRK-001', kinds({ ...brickB, owned: given(10) }))).toMatchObject([
      {
        level: 'stop',
        at: { brickKind: 'B' },
        measured: { value: 11, kind: 'count' },
        limit: { value: 10 },
      },
    ]);
  });

  it('[BRK-001] counts what a person fixed on a set whose plan is blocked', () => {
    const scene = { ...kinds({ ...brickB, owned: given(10) }), plan: null };
    expect(found('BRK-001', scene)).toHaveLength(1);
  });

  it('[UNK-001] misses the stock of a kind in use, and a pipe weight that nobody counted', () => {
    const arbor = { ...exampleArbor, pipeWeight: null };
    const lineSet = { ...exampleSet, arbor };
    const [finding] = found('UNK-001', {
      lineSet,
      ...kinds({ ...brickB, owned: nobodyKnows }, { ...brickC, owned: nobodyKnows }),
    });
    expect(finding?.at).toEqual({});
    expect(finding?.facts['what']).toBe('pipe weight of set 7; number of bricks B (nobody looked)');
  });
});

describe('bricks that look alike', () => {
  const alike = (massKg: number) =>
    kinds(brickB, { ...brickC, mass: weighed(kilograms(massKg), 0.1), looksLike: ['B'] });

  const stockOf = (stock: Readonly<Record<string, number>>): GalleryState => ({
    stock,
    reserved: [],
    countedAt: null,
    countedBy: null,
  });

  it('[BRK-002] cautions on the gallery where both lie loose', () => {
    const galleries = { upper: stockOf({ B: 1, C: 1 }) };
    expect(found('BRK-002', { ...alike(9), galleries })).toMatchObject([
      {
        level: 'caution',
        at: { gallery: 'upper', brickKind: 'B' },
        measured: { value: 1, kind: 'mass' },
        facts: { kind: 'B', other: 'C', where: 'both loose on the upper gallery' },
      },
    ]);
  });

  it('[BRK-002] cautions for the house where both are in use, though not on one gallery', () => {
    const galleries = { upper: stockOf({ C: 1 }) };
    const [finding] = found('BRK-002', { ...alike(9), galleries });
    expect(finding?.at.gallery).toBeUndefined();
    expect(finding?.facts['where']).toBe('both in use in this house');
  });

  it('[BRK-002] is quiet where one kind is not about, or both weigh the same', () => {
    expect(found('BRK-002', alike(9))).toEqual([]);
    const galleries = { upper: stockOf({ B: 1, C: 1 }) };
    expect(found('BRK-002', { ...alike(10), galleries })).toEqual([]);
    expect(found('BRK-002', { ...kinds(brickB, brickC), galleries })).toEqual([]);
  });
});

describe('weighed samples', () => {
  it('[BRK-003] takes a kind that was weighed and has its tolerance', () => {
    expect(found('BRK-003')).toEqual([]);
  });

  it('[BRK-003] cautions where the mass is only published, and where it has no tolerance', () => {
    const published = { ...brickB, mass: given(kilograms(10), 0.2, 'published') };
    expect(found('BRK-003', kinds(published))).toMatchObject([
      { level: 'caution', facts: { basis: 'published, example', missing: '' } },
    ]);
    const untold = { ...brickB, mass: given(kilograms(10), undefined, 'weighed') };
    expect(found('BRK-003', kinds(untold))).toMatchObject([
      { facts: { missing: ', and has no tolerance' } },
    ]);
  });

  it('[UNK-001] misses the mass of a kind', () => {
    const [finding] = found('UNK-001', kinds(brickB, { ...brickC, mass: nobodyKnows }));
    expect(finding?.facts['what']).toBe('mass of brick C');
  });
});
