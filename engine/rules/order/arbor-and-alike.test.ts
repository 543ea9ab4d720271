import { describe, expect, it } from 'vitest';
import type { OrderBrick, OrderPhysics } from '#state';
import {
  add,
  breachOf,
  plantOf,
  remove,
  rulesOf,
  standingAt,
  type Trial,
} from './example-order.ts';

/**
 * A carriage of 40 kg and a brick of 10 kg of pipe weight; each plate may be off by 0.2 kg. On
 * the low stop 300 N hang, so that five bricks may go on.
 */
const start = standingAt(1, 0, { items: { frame: 'flying' } });
const limited = (arborMassLimitKg: number | null, more: Partial<Trial> = {}): Trial => ({
  plant: { more: { arborMassLimitKg } },
  start,
  steps: [add(2)],
  ...more,
});

describe('what the arbor may weigh', () => {
  it('[ORD-050] takes bricks up to the limit, the carriage counted in', () => {
    expect(rulesOf(limited(70))).toEqual([]);
  });

  it('[ORD-050] stops the plate that goes past it, by a gram', () => {
    const breach = breachOf('ORD-050', limited(69.999));
    expect(breach.finding).toMatchObject({
      level: 'stop',
      measured: { value: 70, kind: 'mass' },
      limit: { value: 69.999 },
      facts: { plate: { value: 2 } },
    });
    expect(breach).toMatchObject({ step: 0, byN: null });
  });

  it('[ORD-050] counts every mass at its worst where masses are so judged', () => {
    const worst = { options: { doubt: 'worst' } } as const;
    expect(rulesOf(limited(70.6, worst))).toEqual([]);
    expect(breachOf('ORD-050', limited(70.5, worst)).finding.measured?.value).toBeCloseTo(70.6, 9);
  });

  it('[ORD-050] lets bricks come off an arbor that is too heavy', () => {
    const heavy = { start: standingAt(1, 3, { items: { frame: 'flying' } }), steps: [remove(1)] };
    expect(rulesOf(limited(60, heavy))).toEqual([]);
  });

  it('[ORD-050] has nothing to hold it against where nobody gives a limit', () => {
    expect(rulesOf(limited(null, { steps: [add(5)] }))).toEqual([]);
  });
});

describe('bricks that look alike', () => {
  const [full, half] = plantOf().bricks;
  const kinds = (
    ofFull: Partial<OrderBrick>,
    ofHalf: Partial<OrderBrick>,
  ): readonly OrderBrick[] =>
    full === undefined || half === undefined
      ? []
      : [
          { ...full, ...ofFull },
          { ...half, ...ofHalf },
        ];
  const alike = kinds({ looksLike: ['C'] }, {});
  const handled = (bricks: readonly OrderBrick[], more: Partial<Trial> = {}): Trial => ({
    plant: { more: { bricks } },
    start,
    steps: [add(2)],
    ...more,
  });

  it('[ORD-051] cautions where both lie loose at the gallery, and says how they differ', () => {
    const breach = breachOf('ORD-051', handled(alike));
    expect(breach).toMatchObject({ step: 0, byN: null });
    expect(breach.finding).toMatchObject({
      level: 'caution',
      at: { gallery: 'upper' },
      measured: { value: 5, kind: 'mass' },
      facts: { kind: 'B', others: 'C', gallery: 'Upper gallery' },
    });
  });

  it('[ORD-051] cautions whichever of the two says so, and also where they come off', () => {
    expect(rulesOf(handled(kinds({}, { looksLike: ['B'] })))).toEqual(['ORD-051']);
    const on = standingAt(1, 2, { items: { frame: 'flying' } });
    expect(rulesOf(handled(alike, { start: on, steps: [remove(1)] }))).toEqual(['ORD-051']);
  });

  it('[ORD-051] is quiet where the other kind is not at that gallery', () => {
    const galleries: OrderPhysics['galleries'] = plantOf().galleries.map((each) => ({
      ...each,
      stock: { B: 20, C: 0 },
    }));
    const trial = handled(alike, { plant: { more: { bricks: alike, galleries } } });
    expect(rulesOf(trial)).toEqual([]);
  });

  it('[ORD-051] is quiet where the two weigh the same, or do not look alike', () => {
    expect(rulesOf(handled(kinds({ looksLike: ['C'] }, { massKg: 10 })))).toEqual([]);
    expect(rulesOf(handled(kinds({}, {})))).toEqual([]);
    expect(rulesOf(handled(kinds({ looksLike: ['B'] }, {})))).toEqual([]);
  });

  it('[ORD-051] says it once for a kind and a gallery, not at every visit', () => {
    const twice = handled(alike, { steps: [add(1), add(1)] });
    expect(rulesOf(twice)).toEqual(['ORD-051']);
    const both = handled(alike, { steps: [add(1), add(1, 'C'), add(1)] });
    expect(rulesOf(both)).toEqual(['ORD-051', 'ORD-051']);
  });
});
