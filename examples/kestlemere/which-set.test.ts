/**
 * Places for a piece in the demo house, against its own plan: distances, depths, bricks and bays
 * are those of the tables of the demo, added up by hand beside each check. In inches, pounds and
 * pounds of force, as the tables are.
 */
import { describe, expect, it } from 'vitest';
import { unknownValue } from '#house';
import {
  type Against,
  type Candidate,
  type Piece,
  type PlacingAsked,
  pieceOf,
  placesFor,
  rank,
  workOn,
} from '#placing';
import { FOOT, INCH, kilograms, metres, POUND, POUND_FORCE } from '#quantities';
import type { Show } from '#show';
import { openExample } from '../open-example.ts';

const { house, show, state } = openExample('kestlemere');

const hungAt = (set: string, among: Show = show): Piece => {
  const piece = pieceOf(among, set);
  if (piece === null) throw new Error(`the demo hangs nothing on ${set}`);
  return piece;
};

type More = Partial<PlacingAsked> & { readonly withinInch?: number };

const asking = (piece: Piece, yInch: number | null, more: More = {}): PlacingAsked => {
  const { withinInch, ...rest } = more;
  const within = withinInch === undefined ? null : metres(withinInch * INCH);
  const wanted = yInch === null ? null : { y: metres(yInch * INCH), within };
  return { house, show, state, piece, wanted, keptEmptyToo: true, ...rest };
};

const written = <T>(value: T) => ({
  known: true as const,
  value,
  tolerance: 0,
  provenance: { basis: 'weighed' as const },
});

/** A pipe-borne rail of so many pounds, 40 ft wide and 4 in deep, trims 20 and 55 ft. */
const rail = (massLb: number): Piece => ({
  from: null,
  hang: {
    name: 'Rail',
    family: 'hard',
    halfDepth: written(metres(2 * INCH)),
    trims: [20, 55].map((ft) => ({
      name: `${ft}`,
      height: written(metres(ft * FOOT)),
      reference: 'batten' as const,
    })),
    deadHungAt: null,
    coupledWith: [],
    items: [
      {
        id: 'rail',
        name: 'Rail',
        kind: 'clear',
        takeoff: { by: 'mass', mass: written(kilograms(massLb * POUND)), hem: null },
        drop: written(metres(3 * FOOT)),
        pick: written(metres(FOOT)),
        centre: unknownValue(),
        placement: { at: 'spread', from: metres(-20 * FOOT), to: metres(20 * FOOT) },
        releases: [],
        carriesPerson: false,
      },
    ],
  },
});

const on = (candidates: readonly Candidate[], set: string): Candidate => {
  const found = candidates.find((each) => each.set === set);
  if (found === undefined) throw new Error(`set ${set} is no candidate`);
  return found;
};

const whyNot = ({ against }: Candidate): readonly string[] =>
  against.map((each: Against) => (each.is === 'stop' ? each.finding.code : each.is));

const looks = ({ lookAt }: Candidate): readonly string[] =>
  lookAt.map((each) => (each.is === 'caution' ? each.finding.code : each.is));

const without = (set: string): Show => ({
  ...show,
  hangs: show.hangs.filter((each) => each.set !== set),
});

const SIGN = placesFor(asking(hungAt('17'), 171, { withinInch: 30 }));

describe('which sets are free', () => {
  it('never offers a set with a lock-out tag, and says the tag', () => {
    // Set 20 is empty and kept so; its tag 7 goes before that, though kept ones are asked for.
    expect(SIGN.candidates.map(({ set }) => set)).not.toContain('20');
    expect(SIGN.withheld.find(({ set }) => set === '20')).toMatchObject({
      is: 'lockedOut',
      tag: '7, hand line chafed at the tension block',
    });
  });

  it('offers 16 of 45: 28 are used, one is locked out', () => {
    expect(SIGN.candidates).toHaveLength(16);
    expect(SIGN.withheld.filter(({ is }) => is === 'used')).toHaveLength(27);
    expect(SIGN.now?.set).toBe('17');
  });

  it('keeps empty what the show keeps empty, unless it is asked for too', () => {
    const { candidates, withheld } = placesFor(asking(hungAt('17'), 171, { keptEmptyToo: false }));
    expect(candidates).toEqual([]);
    expect(withheld.find(({ set }) => set === '25')).toMatchObject({ reason: 'depth of 23+27' });
  });

  it('does not take a set that nobody recorded for one in service', () => {
    const { candidates } = placesFor(asking(rail(200), 243, { state: null }));
    expect(on(candidates, '25').notKnown).toContainEqual({
      of: 'service',
      needs: ['whether set 25 is in service'],
    });
  });
});

describe('the shop sign, half depth 1.5 in, from set 17', () => {
  it('says how far each set is from the wanted place', () => {
    // 18 stands at 180 in, 24 at 234 in; 171 in is wanted, 30 in off at most.
    expect(on(SIGN.candidates, '18').offM).toEqual({
      known: true,
      value: expect.closeTo(9 * INCH),
    });
    expect(whyNot(on(SIGN.candidates, '24'))).toEqual(['place']);
  });

  it('finds the depth of a neighbour in the way', () => {
    // 18 to electric 2 on 19: 189 - 180 - 15 - 1.5 = -7.5 in. 14 to the great dial: 9 - 8 - 1.5.
    const { space } = on(SIGN.candidates, '18');
    expect(space.upstage).toEqual({ is: 'gap', set: '19', gapM: expect.closeTo(-7.5 * INCH) });
    expect(whyNot(on(SIGN.candidates, '18'))).toEqual(['overlap']);
    expect(on(SIGN.candidates, '14').against).toMatchObject([
      { is: 'overlap', side: 'downstage', set: 'M1', byM: expect.closeTo(0.5 * INCH) },
    ]);
    // The set that it leaves is no neighbour: 18 looks downstage to 16, 18 - 5 - 1.5 in.
    expect(space.downstage).toMatchObject({ set: '16', gapM: expect.closeTo(11.5 * INCH) });
  });

  it('takes the bricks of the demo where it hangs now, to the grain of a half', () => {
    // The plan of the demo says 3F+1H, 282.5 lb; the program's own mix is within 12.5 lb of it.
    const { bricks } = SIGN.now ?? on([], '17');
    if (!bricks?.known) throw new Error('bricks not known');
    expect(Math.abs(bricks.value.arborMassKg / POUND - 282.5)).toBeLessThanOrEqual(12.5 + 1e-6);
  });

  it('does not call an unknown depth room', () => {
    const hangs = show.hangs.map((hang) =>
      hang.set === '23' ? { ...hang, halfDepth: unknownValue() } : hang,
    );
    const asked = asking(rail(200), 234, { show: { ...show, hangs } });
    const { candidates } = placesFor(asked);
    expect(on(candidates, '24').space.downstage).toEqual({
      is: 'unknown',
      needs: ['half depth of set 23'],
    });
    const [first] = rank(candidates, new Map(), { within: false });
    expect(first?.standing).not.toBe('possible');
  });
});

describe('what a set can take', () => {
  it('finds a piece wider than the battens downstage', () => {
    // The star drop is 52 ft wide, its loom at -28 ft; battens 1 to 13 end at 25 ft.
    const { candidates } = placesFor(asking(hungAt('D2'), 405));
    expect(on(candidates, '12').against).toContainEqual({
      is: 'pastBatten',
      item: 'Star drop cloth',
      byM: expect.closeTo(FOOT),
    });
    const open = candidates.filter(({ against }) => against.length === 0).map(({ set }) => set);
    expect(open).toEqual(['24', '25', '26']);
  });

  it('finds the one double purchase set for a place far upstage, with twice the bricks', () => {
    // Electric 4 away, 396 in wanted to 6 in: D1 alone. To D2: 405 - 396 - 2 - 2 = 5 in.
    const asked = asking(rail(200), 396, { show: without('40'), withinInch: 6 });
    const { candidates } = placesFor(asked);
    const open = candidates.filter(({ against }) => against.length === 0);
    expect(open.map(({ set }) => set)).toEqual(['D1']);
    const [d1] = open;
    expect(d1?.space.upstage).toMatchObject({ set: 'D2', gapM: expect.closeTo(5 * INCH) });
    // 200 lb hung is 200 lb of bricks at 1:1 and 400 lb at 2:1; the grain is 12.5 lb.
    const showLb = (set: string): number => {
      const { bricks } = on(candidates, set);
      return bricks?.known ? bricks.value.showMassKg / POUND : Number.NaN;
    };
    expect(Math.abs(showLb('40') - 200)).toBeLessThanOrEqual(25);
    expect(Math.abs(showLb('D1') - 400)).toBeLessThanOrEqual(50);
  });

  it('finds a rod too short for the bricks', () => {
    // 790 lb is some 32 F: 32 x 1.2 in and 4 x 1.2 in of pipe weight, 43 in, on a rod of 30 in.
    const lineSets = house.lineSets.map((set) =>
      set.id === '25' && set.arbor !== null
        ? { ...set, arbor: { ...set.arbor, usableRod: written(metres(30 * INCH)) } }
        : set,
    );
    const { candidates } = placesFor(asking(rail(790), 243, { house: { ...house, lineSets } }));
    expect(on(candidates, '25').against).toContainEqual({ is: 'noMix', limit: 'rodTooShort' });
    // 26 has its whole rod, but 303 + 32 F are planned then, of 480 - 148 = 332 that are loose.
    expect(whyNot(on(candidates, '26'))).toEqual(['BRK-001']);
  });

  it('finds a batten past its live limit', () => {
    // 1,200 lb on a batten for 1,000 lb.
    const { candidates } = placesFor(asking(rail(1200), 243));
    expect(whyNot(on(candidates, '25'))).toContain('LOD-001');
  });

  it('finds a trim past the high stop, by its name', () => {
    const { hang } = rail(200);
    const trims = [{ ...hang.trims[0], name: 'away', height: written(metres(70 * FOOT)) }];
    const piece = { from: null, hang: { ...hang, trims } } as Piece;
    const [first] = placesFor(asking(piece, 243)).candidates;
    expect(first?.against).toContainEqual({
      is: 'trim',
      name: 'away',
      heightM: expect.closeTo(70 * FOOT),
    });
  });

  it('does not take a piece without a trim for one that fits every travel', () => {
    const { hang } = rail(200);
    const piece: Piece = { from: null, hang: { ...hang, trims: [] } };
    const { candidates } = placesFor(asking(piece, 243));
    expect(candidates.every(({ notKnown }) => notKnown.some(({ of }) => of === 'trims'))).toBe(
      true,
    );
  });
});

describe('the bay of the head-block beam', () => {
  it('finds bay C past its limit with electric 1 in it', () => {
    // Bay C carries 7,879 lb. A 33 F stack adds 825 lb: 8,704 lb, 38.7 kN of 38 kN.
    const { candidates } = placesFor(asking(hungAt('5'), 306));
    const { bay } = on(candidates, '31');
    expect(bay?.bay).toBe('C');
    if (!bay?.vertical.known) throw new Error('bay not known');
    expect(bay.vertical.value / POUND_FORCE).toBeCloseTo(7879 + 33 * 25, -1);
    expect(whyNot(on(candidates, '31'))).toContain('STL-001');
  });

  it('cautions where a near bay gets nearer', () => {
    // 3 F of the shop sign: 7,954 lb, 35.4 kN, above nine tenths of 38 kN, 34.2 kN.
    expect(looks(on(SIGN.candidates, '31'))).toContain('STL-002');
    expect(whyNot(on(SIGN.candidates, '31'))).not.toContain('STL-001');
    // Bay B is at 57 %.
    expect(looks(on(SIGN.candidates, '24'))).not.toContain('STL-002');
  });

  it('says that the sideways limit of a bay is not surveyed', () => {
    expect(on(SIGN.candidates, '24').notKnown).toContainEqual({
      of: 'bay',
      needs: ['horizontal limit of bay B'],
    });
  });
});

describe('the order of the list', () => {
  const asked = asking(rail(200), 250);
  const { candidates } = placesFor(asked);

  it('puts what is ruled out last, and the nearest of the rest first', () => {
    // 25 at 243 in and 26 at 252 in: 7 in and 2 in off.
    const ranked = rank(candidates, new Map(), { within: false });
    expect(ranked.slice(0, 2).map(({ candidate }) => candidate.set)).toEqual(['26', '25']);
    const standings = ranked.map(({ standing }) => standing);
    const firstOut = standings.indexOf('cannot');
    expect(standings.slice(firstOut).every((each) => each === 'cannot')).toBe(true);
  });

  it('counts one restraint for more than a hand of distance, where both are near enough', () => {
    const restraint = { resists: 'out' as const, ratedN: 200, fromM: 1, toM: 2 };
    const order = { is: 'order' as const, restraint: null, asWritten: false };
    const works = new Map([
      ['26', { load: { ...order, restraint }, strike: order }],
      ['25', { load: order, strike: order }],
    ]);
    const first = (within: boolean): string | undefined =>
      rank(candidates, works, { within })[0]?.candidate.set;
    expect(first(true)).toBe('25');
    expect(first(false)).toBe('26');
  });

  it('rules a set out once no order of work exists on it', () => {
    const none = { is: 'noOrder' as const, rule: 'HOLD' as const, change: null };
    const works = new Map([['26', { load: none, strike: none }]]);
    const ranked = rank(candidates, works, { within: false });
    expect(ranked.find(({ candidate }) => candidate.set === '26')?.standing).toBe('cannot');
  });

  it('asks the search for the work on one set, and leaves show and record as they are', () => {
    const before = JSON.stringify([show, state]);
    const { load, strike } = workOn(asked, '25');
    // A clear piece of 200 lb goes on brick by brick from the upper gallery, within the lock.
    expect(load).toMatchObject({ is: 'order', restraint: null });
    expect(strike).toMatchObject({ is: 'order', restraint: null });
    expect(JSON.stringify([show, state])).toBe(before);
  });

  it('asks for a restraint where the lock alone does not hold the set on the way', () => {
    // The plan of the demo asks for 195 lbf to hang the star drop on D2, by a search of its own.
    const { load } = workOn(asking(hungAt('D2'), 405), 'D2');
    expect(load).toMatchObject({ is: 'order', restraint: { resists: 'out' } });
    const ratedN = load.is === 'order' ? (load.restraint?.ratedN ?? 0) : 0;
    // A step of the search is 22.241 N, 5 lbf to five figures.
    expect(ratedN / POUND_FORCE).toBeCloseTo(195, 3);
  });

  it('takes the bricks of the set that the piece leaves for loose, and no others', () => {
    // 10 F are free; on 26 the star drop needs 16 F, and D2 gives 32 F back. A new piece of the
    // same weight finds 10 F and no more.
    const moved = workOn(asking(hungAt('D2'), 405), '26');
    expect(moved.load.is).toBe('order');
    const fresh: Piece = { ...hungAt('D2'), from: null };
    const added = (record: PlacingAsked['state']) =>
      workOn(asking(fresh, 405, { show: without('D2'), state: record }), '26').load.is;
    expect(added(state)).toBe('noOrder');
    const sixMore = (count: number, kind: string): number => (kind === 'F' ? count + 6 : count);
    const galleries = Object.entries(state.galleries).map(([id, gallery]) => {
      const stock = Object.entries(gallery.stock).map(([kind, count]) => [
        kind,
        sixMore(count, kind),
      ]);
      return [id, { ...gallery, stock: Object.fromEntries(stock) }];
    });
    const more = { ...state, galleries: Object.fromEntries(galleries) };
    expect(added(more)).toBe('order');
  });

  it('refuses the work on a set where nobody recorded how things stand', () => {
    expect(workOn({ ...asked, state: null }, '25').load).toMatchObject({ is: 'refused' });
  });
});
