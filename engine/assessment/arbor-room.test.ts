/**
 * Room on the arbors of Kestlemere. Reach is held against the table of the plan of the demo (its
 * own computed figures, the-job.md 10.1), mass and rod against sums by hand.
 */
import { describe, expect, it } from 'vitest';
import { FOOT, INCH, POUND } from '#quantities';
import { openExample } from '../../examples/open-example.ts';
import { arborRoomOf } from './arbor-room.ts';

const { house } = openExample('kestlemere');

const roomOf = (id: string) => {
  const set = house.lineSets.find((each) => each.id === id);
  if (set === undefined) throw new Error(`no set ${id}`);
  return arborRoomOf(set, house);
};

const known = (id: string) => {
  const room = roomOf(id);
  if (room?.known !== true) throw new Error(`set ${id} has no room`);
  return room.value;
};

const given = <T>(reckoned: { readonly known: boolean; readonly value?: T }): T => {
  if (!reckoned.known || reckoned.value === undefined) throw new Error('not known');
  return reckoned.value;
};

describe('room on an arbor', () => {
  it('by mass is what the limit leaves beside carriage and pipe weight', () => {
    // 1,200 − 95 − 4 · 25 lb, and 25 lb a brick; spreaders are in the carriage of this house.
    const { mass, bricks } = given(known('14').byMass);
    expect(mass / POUND).toBeCloseTo(1005, 6);
    expect(bricks).toBe(40);
    expect(given(known('1').byMass).bricks).toBe(41);
  });

  it('by rod counts spreaders, one for each two feet of bricks', () => {
    // 4 · 1.2 in of pipe weight: no spreader yet. 54 plates are 64.8 in with two spreaders of a
    // quarter inch, 65.3 in; 55 would be 66.5 in on 66.
    const { length, bricks } = given(known('14').byRod);
    expect(length / INCH).toBeCloseTo(66 - 4.8, 6);
    expect(bricks).toBe(50);
  });

  it('by reach holds with the batten in, and says whether it is all that the rod takes', () => {
    // The plan: 40 plates are reached up from 3.25 ft, 50 from 4.25 ft; working height is 4 ft.
    const { bricks, isAll } = given(known('14').byReach);
    expect(isAll).toBe(false);
    expect(bricks + 4).toBeGreaterThan(40);
    expect(bricks + 4).toBeLessThan(50);
  });

  it('reaches the first brick of a double-purchase set where the plan says', () => {
    // Ten plates on: upper gallery 3.0 ft only, mid gallery 32.5 to 43.0 ft.
    const [upper, mid] = known('D1').first.map(({ window }) => given(window));
    expect((upper?.from ?? 0) / FOOT).toBeCloseTo(3, 6);
    expect((upper?.to ?? 0) / FOOT).toBeCloseTo(3, 6);
    expect((mid?.from ?? 0) / FOOT).toBeCloseTo(32.5, 6);
    expect((mid?.to ?? 0) / FOOT).toBeCloseTo(43, 6);
  });

  it('is none without an arbor, and unknown without what it needs', () => {
    expect(roomOf('M1')).toBeNull();
    const [set] = house.lineSets;
    if (set?.arbor === null || set === undefined) throw new Error('set 1 has an arbor');
    const unknown = { known: false, why: 'no plate on it' } as const;
    const room = arborRoomOf({ ...set, arbor: { ...set.arbor, massLimit: unknown } }, house);
    if (room?.known !== true) throw new Error('the rest is known');
    expect(room.value.byMass).toEqual({
      known: false,
      needs: ['mass limit of the arbor (no plate on it)'],
    });
    expect(room.value.byRod.known).toBe(true);
    expect(arborRoomOf(set, { ...house, brickKinds: [] })).toEqual({
      known: false,
      needs: ['mass of a show brick'],
    });
  });
});
