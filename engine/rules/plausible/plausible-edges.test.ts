import { describe, expect, it } from 'vitest';
import { blocked, reckoned } from '#findings';
import type { LineSet } from '#house';
import { GRAVITY, kilograms, kilogramsPerMetre, metres, newtons, POUND } from '#quantities';
import type { Item, Takeoff } from '#show';
import { found, type Scene } from '../example-assessment.ts';
import { full } from '../example-finding.ts';
import {
  brickB,
  brickC,
  exampleArbor,
  exampleHang,
  exampleItem,
  exampleRecord,
  exampleSet,
  given,
  nobodyKnows,
  weighed,
} from '../example-house.ts';
import { BANDS } from './plausible-bands.ts';

const itemOf = (takeoff: Takeoff, changes: Partial<Item> = {}): Item => ({
  ...exampleItem,
  ...changes,
  takeoff,
});

const taken = (takeoff: Takeoff, changes: Partial<Item> = {}): Scene => ({
  hang: { ...exampleHang, items: [itemOf(takeoff, changes)] },
});

const lamp = (name: string, massKg: number, clampKg: number | null = null): Takeoff => ({
  by: 'units',
  units: [
    {
      name,
      count: 2,
      each: given(kilograms(massKg)),
      clampEach: clampKg === null ? null : given(kilograms(clampKg)),
      xs: null,
    },
  ],
});

describe('plausible masses, in full', () => {
  it('[UNI-001] shows the band and its reason', () => {
    expect(full('UNI-001', taken(lamp('profile', 70)))).toMatchInlineSnapshot(`
      "UNI-001 caution at set 7, item frame
      measured 70 mass, limit 60 mass (trade tables, from memory)
      - what: one profile
      - low: 0.9 mass
      - high: 60 mass
      - why: from a small can of 2 lb to a large moving head of 45 kg"
    `);
    const brickKinds = [{ ...brickB, mass: weighed(kilograms(2), 0.2) }];
    expect(full('UNI-001', { house: { brickKinds } })).toMatchInlineSnapshot(`
      "UNI-001 caution at brickKind B
      measured 2 mass, limit 3 mass (common practice, no source)
      - what: brick B
      - low: 3 mass
      - high: 30 mass
      - why: a brick that one person lifts"
    `);
  });

  it('[UNI-002] shows both masses', () => {
    const brickKinds = [brickB, { ...brickC, mass: weighed(kilograms(5 * POUND), 0.1) }];
    expect(full('UNI-002', { house: { brickKinds } })).toMatchInlineSnapshot(`
      "UNI-002 caution at brickKind C
      measured 151.197457 massPerLength, limit none (exact ratio of pound and kilogram)
      - what: brick C, mass per thickness
      - other: brick B, mass per thickness
      - against: 333.333333 massPerLength"
    `);
  });

  it('[UNI-001] has a reason, a source and two ends for every band', () => {
    // The ends are ours; what they must do is to hold what the reason names.
    const text = Object.entries(BANDS).map(
      ([name, { low, high, kind, why, source }]) =>
        `${name}: ${low} to ${high} ${kind}\n  ${why}\n  (${source})`,
    );
    expect(text.join('\n')).toMatchInlineSnapshot(`
      "brick: 3 to 30 mass
        a brick that one person lifts
        (common practice, no source)
      carriage: 15 to 150 mass
        an arbor without bricks
        (common practice, no source)
      battenPerLength: 1.4 to 12 massPerLength
        from aluminium tube 48.3 x 4.0 mm, 1.50 kg/m, to two steel pipes one over the other
        (tube of 2700 kg/m³, worked out; 1 1/2 in schedule 80 pipe, 5.4 kg/m, pipe tables)
      liftLine: 0.04 to 0.7 massPerLength
        wire rope from 1/8 in, 0.043 kg/m, to 1/2 in, 0.63 kg/m
        (trade tables, from memory)
      cloth: 0.05 to 1.5 massPerArea
        from bobbinet, 51 g/m², to 32 oz velour, 723 g/m², painted or damp up to twice that
        (trade tables, from memory)
      hungCloth: 0 to 3 massPerArea
        the heaviest cloth at double fullness, over the whole length of the batten
        (common practice, no source)
      hemPerLength: 0.1 to 6 massPerLength
        from jack chain, 0.37 kg/m, to 2 in schedule 40 pipe, 5.4 kg/m
        (trade tables, from memory)
      unit: 0.9 to 60 mass
        from a small can of 2 lb to a large moving head of 45 kg
        (trade tables, from memory)
      clamp: 0.2 to 3 mass
        a half coupler has 0.5 kg, a hook clamp 1 kg
        (trade tables, from memory)
      loom: 0.1 to 6 massPerLength
        from one cable 3 x 1.5 mm², 0.19 kg/m, to several multicores of 1 kg/m
        (table of control cables; multicores from memory)
      pipe: 0.4 to 12 massPerLength
        from 1/2 in conduit, 0.45 kg/m, to 2 in schedule 80 pipe, 7.5 kg/m
        (trade tables, from memory)
      member: 0.15 to 12 massPerLength
        from light softwood, 19 x 64 mm has 0.51 kg/m, to steel pipe
        (softwood of 420 kg/m³, mean of class C24 of EN 338, worked out)
      sheet: 0.1 to 25 massPerArea
        from light muslin, 0.12 kg/m², to 24 mm birch plywood, 16.3 kg/m²
        (plywood by a maker’s data sheet; muslin from memory)
      hardware: 0.01 to 60 mass
        one piece of rigging hardware
        (common practice, no source)
      item: 0.05 to 2000 mass
        one item on a batten
        (common practice, no source)"
    `);
  });
});

describe('bands, set by set', () => {
  it('[UNI-001] says nothing of a brick whose mass nobody knows', () => {
    expect(found('UNI-001', { house: { brickKinds: [{ ...brickB, mass: nobodyKnows }] } })).toEqual(
      [],
    );
  });

  it('[UNI-001] asks again on a set of another type, or with another value', () => {
    const heavy = (massKg: number) => ({
      ...exampleArbor,
      carriageMass: weighed(kilograms(massKg), 1),
    });
    const set = (id: string, typeId: string, massKg: number): LineSet => ({
      ...exampleSet,
      id,
      typeId,
      arbor: heavy(massKg),
    });
    const lineSets = [set('7', 'A', 151), set('8', 'A', 151), set('9', 'B', 151)];
    expect(found('UNI-001', { house: { lineSets } }).map(({ at }) => at.set)).toEqual(['7', '9']);
    const values = [set('7', 'A', 151), set('8', 'A', 152), set('9', 'A', 151)];
    expect(found('UNI-001', { house: { lineSets: values } }).map(({ at }) => at.set)).toEqual([
      '7',
      '8',
    ]);
  });

  it('[UNI-001] [UNI-002] ask nothing of a set where nothing hangs', () => {
    expect(found('UNI-001', { hang: null })).toEqual([]);
    expect(found('UNI-002', { hang: null })).toEqual([]);
  });
});

describe('pounds and kilograms among like things', () => {
  const items = (...takeoffs: readonly Takeoff[]): Scene => ({
    hang: {
      ...exampleHang,
      items: takeoffs.map((takeoff, index) => ({ ...itemOf(takeoff), id: `item${index}` })),
    },
  });

  it('[UNI-002] finds the slip whichever was listed first, and names its set and item', () => {
    expect(found('UNI-002', items(lamp('spot', 10), lamp('Spot ', 10 * POUND)))).toMatchObject([
      {
        at: { set: '7', item: 'item1' },
        measured: { value: 10 * POUND, kind: 'mass' },
        facts: { what: 'one Spot  on set 7', other: 'one spot on set 7' },
      },
    ]);
    expect(found('UNI-002', items(lamp('spot', 10), lamp('spot', 10 / POUND)))).toHaveLength(1);
  });

  it('[UNI-002] asks about each value once, against the first that it clashes with', () => {
    const same = items(lamp('spot', 10), lamp('spot', 5), lamp('spot', 10 * POUND));
    expect(found('UNI-002', same)).toMatchObject([{ facts: { against: { value: 10 } } }]);
    const twice = items(lamp('spot', 10), lamp('SPOT', 10 * POUND), lamp('spot', 10 * POUND));
    expect(found('UNI-002', twice)).toHaveLength(1);
    const again = items(lamp('spot', 10), lamp('SPOT', 10), lamp('spot', 10 * POUND));
    expect(found('UNI-002', again)).toHaveLength(1);
  });

  it('[UNI-002] asks nothing about nothing, and nothing of two looms', () => {
    expect(found('UNI-002', items(lamp('spot', 0), lamp('SPOT', 0)))).toEqual([]);
    const loom = (perLength: number): Takeoff => ({
      by: 'loom',
      massPerLength: given(kilogramsPerMetre(perLength)),
      length: given(metres(20)),
      fixedAt: given(metres(10)),
    });
    expect(found('UNI-002', items(loom(2), loom(2 * POUND)))).toEqual([]);
  });

  it('[UNI-002] asks at the very end of half a per cent, and not past it', () => {
    const spots = (share: number) => items(lamp('spot', 10), lamp('SPOT', (10 / POUND) * share));
    expect(found('UNI-002', spots(0.9951))).toHaveLength(1);
    expect(found('UNI-002', spots(1.0051))).toEqual([]);
  });

  it('[UNI-002] goes by thickness only where a brick has one', () => {
    const bricks = (one: object, other: object): Scene => ({
      house: {
        brickKinds: [
          { ...brickB, ...one },
          { ...brickC, mass: weighed(kilograms(5 * POUND), 0.1), ...other },
        ],
      },
    });
    expect(found('UNI-002', bricks({}, {}))).toHaveLength(1);
    expect(found('UNI-002', bricks({ thickness: nobodyKnows }, {}))).toEqual([]);
    expect(found('UNI-002', bricks({}, { mass: nobodyKnows }))).toEqual([]);
    expect(found('UNI-002', bricks({ thickness: given(metres(0)) }, {}))).toEqual([]);
  });

  const released = (massKg: number, ofKg: number | null): Scene => {
    const releases = [{ mass: given(kilograms(massKg)), how: 'it falls' }];
    const total =
      ofKg === null
        ? blocked(['mass of the lamp'])
        : reckoned({ massKg: ofKg, uncertaintyKg: 2, uncertaintyRssKg: 2 });
    const takeoffs = [
      { item: { ...exampleItem, releases }, total, faults: [], toleranceNeeds: [] },
    ] as never;
    return { set: { takeoffs } };
  };

  it('[UNI-002] asks about a release of more than there is, and of less not', () => {
    expect(full('UNI-002', released(100 / POUND, 100))).toMatchInlineSnapshot(`
      "UNI-002 caution at set 7, item frame
      measured 220.462262 mass, limit none (exact ratio of pound and kilogram)
      - what: release of Frame: it falls
      - other: Frame
      - against: 100 mass"
    `);
    expect(found('UNI-002', released(100 * POUND, 100))).toEqual([]);
    expect(found('UNI-002', released(200, 100))).toEqual([]);
    expect(found('UNI-002', released(100 / POUND, null))).toEqual([]);
  });

  it('[UNI-002] says nothing of a release that nobody weighed', () => {
    const releases = [{ mass: nobodyKnows, how: 'it falls' }];
    const total = reckoned({ massKg: 100, uncertaintyKg: 2, uncertaintyRssKg: 2 });
    const takeoffs = [
      { item: { ...exampleItem, releases }, total, faults: [], toleranceNeeds: [] },
    ] as never;
    expect(found('UNI-002', { set: { takeoffs } })).toEqual([]);
  });

  const pulled = (addedKg: number, changes: Scene = {}): Scene => ({
    record: {
      ...exampleRecord,
      pullTest: {
        out: newtons(1),
        in: newtons(1),
        height: metres(10),
        at: '2026-11-25T12:00:00Z',
        by: 'rail operator',
      },
    },
    recorded: {
      pull: reckoned({ imbalance: newtons(-10 + addedKg * GRAVITY), friction: newtons(30) }),
    },
    ...changes,
  });

  it('[UNI-002] allows three per cent to a pull test', () => {
    // 100 kg are listed: 220.46 kg less 3 % are 113.8 kg more, and plus 3 % 127.1 kg more.
    expect(full('UNI-002', pulled(100 / POUND - 100))).toMatchInlineSnapshot(`
      "UNI-002 caution at set 7
      measured 220.462262 mass, limit none (exact ratio of pound and kilogram)
      - what: what hangs, by pull test
      - other: what hangs, by the list
      - against: 100 mass"
    `);
    expect(found('UNI-002', pulled(113.9))).toHaveLength(1);
    expect(found('UNI-002', pulled(113.8))).toEqual([]);
    expect(found('UNI-002', pulled(127))).toHaveLength(1);
    expect(found('UNI-002', pulled(127.1))).toEqual([]);
  });

  it('[UNI-002] judges no pull of what lay on the deck, nor without the list', () => {
    const slip = 100 / POUND - 100;
    expect(found('UNI-002', pulled(slip, { plan: { liftOff: metres(10.1) } }))).toEqual([]);
    const set = { hung: blocked(['mass of the lamp']) };
    expect(found('UNI-002', pulled(slip, { set }))).toEqual([]);
  });

  it('[UNI-002] finds a set in pounds by its other sets', () => {
    const otherSets = [
      { ...exampleSet, id: '8', lineMassPerLength: given(kilogramsPerMetre(0.16 * POUND)) },
    ];
    expect(found('UNI-002', { otherSets })).toMatchObject([
      {
        at: { set: '8' },
        measured: { kind: 'massPerLength' },
        facts: { what: 'lift line per length, type A', other: 'lift line per length, type A' },
      },
    ]);
  });
});
