import { describe, expect, it } from 'vitest';
import type { Item } from '#show';
import { carriedItem } from './carried-item.ts';
import { CLOTH, exact, FRAME, given, itemOf, LOOM, massOfKg } from './example-items.ts';
import { takeOff } from './take-off.ts';

const RULES = { toleranceByBasis: { weighed: 0.02 } };
const carried = (item: Item) => carriedItem(item, takeOff(item, RULES));
const UNKNOWN = { known: false } as const;

describe('a clear item', () => {
  it('is its whole mass with its lowest point', () => {
    expect(carried(itemOf(massOfKg(50, 10)))).toEqual({
      known: true,
      value: { kind: 'clear', mass: 60, drop: 2, pick: 0.5, uncertainty: expect.closeTo(1.2, 12) },
    });
  });

  it('is not taken for clear of the deck where its lowest point is unknown', () => {
    expect(carried(itemOf(massOfKg(50), { drop: UNKNOWN })).known).toBe(false);
    expect(carried(itemOf(massOfKg(50), { pick: UNKNOWN })).known).toBe(false);
    expect(carried(itemOf(massOfKg(50), { drop: exact(0), pick: exact(0) })).known).toBe(true);
  });

  it('carries no uncertainty where that is unknown', () => {
    const item = itemOf({ by: 'mass', mass: given(50, 'estimated'), hem: null });
    expect(carried(item)).toEqual({
      known: true,
      value: { kind: 'clear', mass: 50, drop: 2, pick: 0.5 },
    });
  });
});

describe('a cloth', () => {
  const kind = 'cloth';

  it('keeps cloth and hem apart', () => {
    expect(carried(itemOf(massOfKg(50, 10), { kind, drop: exact(9), pick: exact(0.25) }))).toEqual({
      known: true,
      value: {
        kind: 'cloth',
        mass: 50,
        drop: 9,
        tie: 0.25,
        hem: 10,
        uncertainty: 1,
        hemUncertainty: 0.2,
      },
    });
  });

  it('has nothing in its hem where the take-off says so', () => {
    expect(carried(itemOf(massOfKg(50), { kind }))).toMatchObject({
      value: { hem: 0, hemUncertainty: 0 },
    });
  });

  it('is blocked by an unknown hem, an unknown drop and a drop of nothing', () => {
    const unsure = itemOf({ ...massOfKg(50), hem: UNKNOWN }, { kind });
    expect(carried(unsure)).toEqual({
      known: false,
      needs: ['pipe or chain in the hem (takeoff.hem): not given; write 0 kg if there is none'],
    });
    expect(carried(itemOf(CLOTH, { kind, drop: UNKNOWN }))).toEqual({
      known: false,
      needs: ['drop, from its top to its lowest point (drop): not given'],
    });
    expect(carried(itemOf(CLOTH, { kind, drop: exact(0) }))).toEqual({
      known: false,
      needs: ['drop, from its top to its lowest point (drop): found 0 m'],
    });
  });

  it('leaves out the uncertainty of the part that has none', () => {
    const takeoff = { by: 'mass', mass: given<never>(50), hem: exact<never>(10) } as const;
    const { value } = carried(itemOf(takeoff, { kind })) as { value: object };
    expect(Object.keys(value)).not.toContain('uncertainty');
    expect(value).toMatchObject({ hemUncertainty: 0 });
  });
});

describe('a tipping piece', () => {
  const kind = 'tipping';

  it('takes its centre from its parts', () => {
    expect(carried(itemOf(FRAME, { kind }))).toMatchObject({
      value: { kind: 'tipping', centre: expect.closeTo(11 / 26, 12), drop: 2, pick: 0.5 },
    });
  });

  it('takes a centre that was measured before that of the parts', () => {
    expect(carried(itemOf(FRAME, { kind, centre: exact(0.5) }))).toMatchObject({
      value: { centre: 0.5 },
    });
  });

  it('does not fall back on its parts where the given centre is wrong', () => {
    expect(carried(itemOf(FRAME, { kind, centre: exact(1.2) })).known).toBe(false);
  });

  it('is blocked without a centre', () => {
    expect(carried(itemOf(massOfKg(290), { kind }))).toEqual({
      known: false,
      needs: ['centre of gravity above the foot, as a share of the drop (centre): not given'],
    });
  });
});

describe('a standing piece', () => {
  it('is its mass, its height and its picks', () => {
    expect(carried(itemOf(massOfKg(100), { kind: 'standing' }))).toEqual({
      known: true,
      value: { kind: 'standing', mass: 100, drop: 2, pick: 0.5, uncertainty: 2 },
    });
  });
});

describe('a loom', () => {
  it('is a length with its fixed end', () => {
    expect(carried(itemOf(LOOM, { kind: 'loom' }))).toEqual({
      known: true,
      value: { kind: 'loom', massPerLength: 0.59, length: 15, fixedAt: 11, uncertainty: 0 },
    });
  });

  it('needs its fixed end, and neither drop nor picks', () => {
    const item = itemOf({ ...LOOM, fixedAt: UNKNOWN }, { kind: 'loom', drop: UNKNOWN });
    expect(carried(item)).toEqual({
      known: false,
      needs: ['height of the fixed end of the loom above the deck (takeoff.fixedAt): not given'],
    });
  });

  it('to the deck needs no fixed end, and has none above the deck', () => {
    const item = itemOf({ ...LOOM, fixedAt: UNKNOWN }, { kind: 'deckLoom' });
    expect(carried(item)).toEqual({
      known: true,
      value: { kind: 'deckLoom', massPerLength: 0.59, length: 15, uncertainty: 0 },
    });
    expect(carried(itemOf(LOOM, { kind: 'deckLoom' })).known).toBe(false);
    expect(carried(itemOf({ ...LOOM, fixedAt: exact(0) }, { kind: 'deckLoom' })).known).toBe(true);
  });

  it('that is only a mass cannot be worked out', () => {
    expect(carried(itemOf(massOfKg(70), { kind: 'loom' })).known).toBe(false);
  });
});

describe('a piece that carries a person', () => {
  it('is never carried, whatever is known of it', () => {
    const answer = carried(itemOf(massOfKg(80), { carriesPerson: true }));
    expect(answer).toMatchObject({
      known: false,
      needs: [expect.stringContaining('out of scope')],
    });
  });
});
