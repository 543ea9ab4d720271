import { describe, expect, it } from 'vitest';
import { metres } from '#quantities';
import type { Hang, Item, Trim } from '#show';
import { assessmentOf, found, type Scene } from '../example-assessment.ts';
import { full } from '../example-finding.ts';
import { exampleHang, exampleHouse, exampleSet, given, nobodyKnows } from '../example-house.ts';
import type { AmongCase } from '../rule.ts';
import { carriesPerson } from './carries-person.ts';
import { deckToLay } from './deck-to-lay.ts';
import { flat, unit } from './example-pieces.ts';
import { loomTooShort } from './loom-too-short.ts';

const trimAt = (heightM: number | null, reference: Trim['reference'] = 'batten'): Trim => ({
  name: 'in',
  height: heightM === null ? nobodyKnows : given(metres(heightM)),
  reference,
});

/** The flat on set 7, and what is said of set 9 at 5 m, on which the unit stands. */
const scene = (other: Partial<Hang> = {}, changes: Scene = {}): Scene => ({
  hang: { ...exampleHang, items: [flat] },
  otherSets: [{ ...exampleSet, id: '9', y: given(metres(5)) }],
  otherHangs: [{ ...exampleHang, set: '9', items: [unit], trims: [trimAt(4.5)], ...other }],
  ...changes,
});

const isFree = (other: Partial<Hang> = {}, changes: Scene = {}): boolean =>
  found('DCK-001', scene(other, changes)).length === 0;

describe('deck to lay a piece on, at its edges', () => {
  it('[DCK-001] is said in full: from where to where, and what stands there', () => {
    expect(full('DCK-001', scene())).toMatchInlineSnapshot(`
      "DCK-001 caution at set 7, item flat
      measured none, limit none (common practice, no source)
      - piece: Flat
      - from: 2 length
      - to: 7 length
      - other: Unit
      - otherSet: 9"
    `);
  });

  it('[DCK-001] is taken by what stands there at one of its trims', () => {
    expect(isFree({ trims: [trimAt(9), trimAt(4.5)] })).toBe(false);
    expect(isFree({ trims: [trimAt(4.5), trimAt(9)] })).toBe(false);
    expect(isFree({ trims: [trimAt(9), trimAt(8)] })).toBe(true);
    expect(isFree({ trims: [trimAt(null)] })).toBe(true);
    expect(isFree({ trims: [] })).toBe(true);
  });

  it('[DCK-001] is not taken by a trim that is measured to a lens or to the lowest point', () => {
    expect(isFree({ trims: [trimAt(4.5, 'lens')] })).toBe(true);
    expect(isFree({ trims: [trimAt(4.5, 'lowestPoint')] })).toBe(true);
  });

  it('[DCK-001] is not taken by what nobody has measured, however low its batten is', () => {
    const trims = [trimAt(0)];
    expect(isFree({ trims, items: [{ ...unit, drop: nobodyKnows }] })).toBe(true);
    expect(isFree({ trims, items: [{ ...unit, pick: nobodyKnows }] })).toBe(true);
    expect(isFree({ trims })).toBe(false);
  });

  it('[DCK-001] is taken by one built piece beside a cloth, and by another tipping one', () => {
    const cloth: Item = { ...unit, id: 'cloth', name: 'Cloth', kind: 'cloth' };
    const [finding] = found('DCK-001', scene({ items: [cloth, unit] }));
    expect(finding?.facts).toMatchObject({ other: 'Unit' });
    expect(isFree({ items: [{ ...unit, kind: 'tipping' }] })).toBe(false);
    expect(isFree({ items: [cloth] })).toBe(true);
  });

  it('[DCK-001] is not taken by the piece itself, nor by what else hangs on its set', () => {
    const hang = { ...exampleHang, items: [flat, unit], trims: [trimAt(4.5)] };
    expect(found('DCK-001', { hang })).toEqual([]);
  });

  it('[DCK-001] asks nothing of a set that the house does not have', () => {
    expect(isFree({ set: 'spare' })).toBe(true);
  });

  it('[DCK-001] is said of no empty set, and where neither place nor height is known', () => {
    expect(isFree({}, { hang: null })).toBe(true);
    expect(isFree({}, { lineSet: { ...exampleSet, y: nobodyKnows } })).toBe(true);
    const items = [{ ...flat, drop: nobodyKnows }];
    expect(isFree({}, { hang: { ...exampleHang, items } })).toBe(true);
  });
});

describe('a set that is judged without a show', () => {
  const caseOf = (hang: Hang | null): AmongCase => ({
    house: exampleHouse,
    show: null,
    state: null,
    set: assessmentOf({ hang }),
    nowMs: null,
  });

  it('[DCK-001] [PER-001] [LOM-001] finds nothing in its way, and nobody on an empty one', () => {
    expect(deckToLay(caseOf({ ...exampleHang, items: [flat] }))).toEqual([]);
    expect(carriesPerson(caseOf(null))).toEqual([]);
    expect(loomTooShort(caseOf(null))).toEqual([]);
  });
});
