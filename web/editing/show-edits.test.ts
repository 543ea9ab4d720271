import { describe, expect, it } from 'vitest';
import { readHouseValue, readShowValue } from '#documents';
import clockmaker from '../../examples/kestlemere/clockmaker.show.json' with { type: 'json' };
import kestlemere from '../../examples/kestlemere/house.json' with { type: 'json' };
import type { JsonObject } from '../keeping/json.ts';
import * as edits from './show-edits.ts';

const SHOW = clockmaker as JsonObject;
const house = readHouseValue(kestlemere);
const RAIL = house.ok ? house.value.house.lineSets.map(({ id }) => id) : [];

const readHang = (show: JsonObject, set: string) => {
  if (!house.ok) throw new Error('the demo house was refused');
  const read = readShowValue(show, house.value.house);
  if (!read.ok) throw new Error(JSON.stringify(read.error));
  return read.value.show.hangs.find((hang) => hang.set === set);
};

const BAR_CABLE = ['items', 2, 'takeoff', 'mass'];

describe('edits of a show', () => {
  it('takes the old basis, source and tolerance off a mass that is typed anew', () => {
    const item = readHang(
      edits.withMass(SHOW, '11', ['items', 0, 'takeoff', 'mass'], '650 lb'),
      '11',
    )?.items[0];
    expect(item?.takeoff).toMatchObject({
      mass: { known: true, provenance: { basis: 'estimated', source: edits.TYPED } },
    });
    expect(item?.takeoff).not.toHaveProperty('mass.tolerance');
  });

  it('lets a person say how the new mass is known, and by how much it may be off', () => {
    const typed = edits.withMass(SHOW, '5', BAR_CABLE, '100 lb');
    const based = edits.withBasis(typed, '5', BAR_CABLE, 'weighed');
    const whole = edits.withTolerance(based, '5', BAR_CABLE, '2 lb');
    expect(readHang(whole, '5')?.items[2]?.takeoff).toMatchObject({
      mass: { provenance: { basis: 'weighed' }, tolerance: expect.closeTo(0.907, 3) },
    });
    const plain = edits.withTolerance(whole, '5', BAR_CABLE, ' ');
    expect(readHang(plain, '5')?.items[2]?.takeoff).not.toHaveProperty('mass.tolerance');
  });

  it('hangs something on an empty set in rail order, and no longer keeps it empty', () => {
    const hung = edits.withHang(SHOW, { set: '10', name: 'Net', family: 'soft', railOrder: RAIL });
    const sets = (hung['hangs'] as readonly JsonObject[]).map(({ set }) => set);
    expect(sets.slice(sets.indexOf('9'), sets.indexOf('9') + 3)).toEqual(['9', '10', '11']);
    expect(hung['keptEmpty']).not.toHaveProperty('10');
    expect(readHang(hung, '10')).toMatchObject({ name: 'Net', trims: [], items: [] });
    expect(readHang(edits.withoutHang(hung, '10'), '10')).toBeUndefined();
  });

  it('adds an item whose mass is unknown until somebody types it, with an id of its own', () => {
    const once = edits.withItem(SHOW, '5', { name: 'Bar cable', kind: 'clear' });
    const items = readHang(
      edits.withItem(once, '5', { name: 'Bar cable', kind: 'clear' }),
      '5',
    )?.items;
    expect(items?.slice(-2).map(({ id }) => id)).toEqual(['bar-cable', 'bar-cable-2']);
    expect(items?.at(-1)?.takeoff).toMatchObject({ by: 'mass', mass: { known: false } });
    expect(readHang(edits.withoutItem(once, '5', 4), '5')?.items).toHaveLength(4);
  });

  it('keeps a trim bare where the document says how bare values are known', () => {
    const moved = edits.withLength(SHOW, '11', ['trims', 0, 'height'], '24 ft');
    expect(edits.writtenHang(moved, '11')).toMatchObject({ trims: [{ height: '24 ft' }, {}] });
    const { given: _none, ...bare } = SHOW;
    const based = edits.withLength(bare, '11', ['trims', 0, 'height'], '24 ft');
    expect(edits.writtenHang(based, '11')).toMatchObject({
      trims: [{ height: { value: '24 ft', basis: 'estimated' } }, {}],
    });
  });

  it('fixes bricks with a reason, and leaves them to the program again', () => {
    const fixed = edits.withBricks(SHOW, '5', { counts: { F: 32 }, reason: 'as counted' });
    expect(readHang(fixed, '5')?.bricks).toEqual({ counts: { F: 32 }, reason: 'as counted' });
    expect(readHang(edits.withBricks(fixed, '5', null), '5')?.bricks).toBeNull();
  });

  it('leaves the show alone where the set is empty', () => {
    expect(edits.withField(SHOW, '4', ['name'], 'x')).toBe(SHOW);
  });
});
