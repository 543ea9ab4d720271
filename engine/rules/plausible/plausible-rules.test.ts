import { describe, expect, it } from 'vitest';
import { reckoned } from '#findings';
import {
  GRAVITY,
  kilograms,
  kilogramsPerMetre,
  kilogramsPerSquareMetre,
  metres,
  newtons,
  POUND,
  squareMetres,
} from '#quantities';
import type { Item, Takeoff } from '#show';
import { found, type Scene } from '../example-assessment.ts';
import {
  brickB,
  brickC,
  exampleArbor,
  exampleHang,
  exampleItem,
  exampleRecord,
  exampleSet,
  given,
  weighed,
} from '../example-house.ts';
import { BANDS } from './plausible-bands.ts';

const taken = (takeoff: Takeoff, changes: Partial<Item> = {}): Scene => ({
  hang: { ...exampleHang, items: [{ ...exampleItem, ...changes, takeoff }] },
});

const unitsOf = (...masses: readonly number[]): Takeoff => ({
  by: 'units',
  units: masses.map((massKg) => ({
    name: 'profile',
    count: 2,
    each: given(kilograms(massKg)),
    clampEach: null,
    xs: null,
  })),
});

const clothOf = (areaKg: number): Takeoff => ({
  by: 'cloth',
  width: given(metres(8)),
  areaMass: given(kilogramsPerSquareMetre(areaKg)),
  fullness: given(0),
  hemAllowance: given(0),
  paint: given(0),
  moisture: given(0),
  bottomMassPerLength: null,
  ties: null,
});

describe('bands of plausible masses', () => {
  it('[UNI-001] finds nothing to ask about the example', () => {
    expect(found('UNI-001')).toEqual([]);
  });

  it('[UNI-001] takes both ends of a band', () => {
    expect(found('UNI-001', taken(unitsOf(BANDS.unit.low)))).toEqual([]);
    expect(found('UNI-001', taken(unitsOf(BANDS.unit.high)))).toEqual([]);
  });

  it('[UNI-001] asks past either end, and converts nothing', () => {
    expect(found('UNI-001', taken(unitsOf(60.01)))).toMatchObject([
      {
        level: 'caution',
        at: { set: '7', item: 'frame' },
        measured: { value: 60.01, kind: 'mass' },
        limit: { value: 60 },
        facts: { what: 'one profile', low: { value: 0.9 } },
      },
    ]);
    expect(found('UNI-001', taken(unitsOf(0.89)))).toMatchObject([{ limit: { value: 0.9 } }]);
  });

  it('[UNI-001] asks about cloth whose ounces per yard became grams per square metre', () => {
    // 0.5 kg/m² is a velour; ten times that and a tenth of bobbinet are not cloths.
    expect(found('UNI-001', taken(clothOf(0.5)))).toEqual([]);
    expect(found('UNI-001', taken(clothOf(5)))).toHaveLength(1);
    expect(found('UNI-001', taken(clothOf(0.005)))).toHaveLength(1);
  });

  it('[UNI-001] asks about a whole cloth that is too heavy for the length of its batten', () => {
    // 10 m of batten and 5 m of drop are 50 m²; the band ends at 3 kg/m².
    const whole = (massKg: number) =>
      found(
        'UNI-001',
        taken(
          { by: 'mass', mass: given(kilograms(massKg)), hem: null },
          { kind: 'cloth', drop: given(metres(5)) },
        ),
      );
    expect(whole(150)).toEqual([]);
    expect(whole(150.1)).toHaveLength(1);
  });

  it('[UNI-001] asks about bricks, and once about a type of set', () => {
    const brickKinds = [{ ...brickB, mass: weighed(kilograms(30.1), 0.2) }];
    expect(found('UNI-001', { house: { brickKinds } })).toMatchObject([
      { at: { brickKind: 'B' }, facts: { what: 'brick B' } },
    ]);
    const arbor = { ...exampleArbor, carriageMass: weighed(kilograms(151), 1) };
    const lineSets = ['7', '8', '9'].map((id) => ({ ...exampleSet, id, arbor }));
    expect(found('UNI-001', { house: { lineSets } })).toMatchObject([
      { at: { set: '7' }, facts: { what: 'arbor without bricks' } },
    ]);
  });

  it('[UNI-001] looks at every kind of take-off', () => {
    const part = { name: 'part', count: 1, z: given(metres(1)) };
    const frame: Takeoff = {
      by: 'frame',
      members: [{ ...part, length: given(metres(2)), massPerLength: given(kilogramsPerMetre(13)) }],
      sheets: [
        { ...part, area: given(squareMetres(2)), massPerArea: given(kilogramsPerSquareMetre(26)) },
      ],
      hardware: [{ ...part, each: given(kilograms(61)) }],
      allowance: given(0),
    };
    expect(found('UNI-001', taken(frame)).map(({ facts }) => facts['what'])).toEqual([
      'part, per length',
      'part, per area',
      'one part',
    ]);
    const loom: Takeoff = {
      by: 'loom',
      massPerLength: given(kilogramsPerMetre(6.1)),
      length: given(metres(20)),
      fixedAt: given(metres(10)),
    };
    expect(found('UNI-001', taken(loom, { kind: 'loom' }))).toHaveLength(1);
    const pipe: Takeoff = {
      by: 'pipe',
      length: given(metres(10)),
      massPerLength: given(kilogramsPerMetre(0.3)),
      fittings: null,
    };
    expect(found('UNI-001', taken(pipe))).toHaveLength(1);
    const line = { name: 'shackle', count: 4, each: given(kilograms(0.005)) };
    expect(found('UNI-001', taken({ by: 'hardware', lines: [line] }))).toHaveLength(1);
    const mass: Takeoff = { by: 'mass', mass: given(kilograms(2001)), hem: null };
    expect(found('UNI-001', taken(mass))).toHaveLength(1);
  });
});

describe('the ratio of pound and kilogram', () => {
  it('[UNI-002] finds nothing to ask about the example', () => {
    expect(found('UNI-002')).toEqual([]);
  });

  it('[UNI-002] asks where one number was typed once in pounds and once in kilograms', () => {
    expect(found('UNI-002', taken(unitsOf(18.5 * POUND, 18.5)))).toMatchObject([
      {
        level: 'caution',
        measured: { value: 18.5, kind: 'mass' },
        facts: { what: 'one profile on set 7', against: { value: 18.5 * POUND, kind: 'mass' } },
      },
    ]);
  });

  it('[UNI-002] allows half a per cent for rounding, and no more', () => {
    const ratio = 1 / POUND;
    expect(found('UNI-002', taken(unitsOf(10, 10 * ratio * 1.0049)))).toHaveLength(1);
    expect(found('UNI-002', taken(unitsOf(10, 10 * ratio * 1.0051)))).toEqual([]);
    expect(found('UNI-002', taken(unitsOf(10, 10 * ratio * 0.9949)))).toEqual([]);
  });

  it('[UNI-002] compares like with like only', () => {
    const [first, second] = [unitsOf(10), unitsOf(10 / POUND)];
    const other = { name: 'wash', count: 1 } as const;
    const units = [first, second].flatMap((takeoff, index) =>
      takeoff.by === 'units'
        ? takeoff.units.map((unit) => (index === 0 ? unit : { ...unit, ...other }))
        : [],
    );
    expect(found('UNI-002', taken({ by: 'units', units }))).toEqual([]);
  });

  it('[UNI-002] compares kinds of brick by their mass per thickness', () => {
    // 10 kg on 30 mm beside 5 lb on 15 mm: the second was meant to be 5 kg.
    const brickKinds = [brickB, { ...brickC, mass: weighed(kilograms(5 * POUND), 0.1) }];
    expect(found('UNI-002', { house: { brickKinds } })).toMatchObject([
      { at: { brickKind: 'C' }, facts: { what: 'brick C, mass per thickness' } },
    ]);
  });

  it('[UNI-002] compares a batten with the pipe that it is made of', () => {
    // 4 kg/m of pipe and 88.2 kg over 10 m: somebody typed 88 lb more than once.
    const batten = { ...exampleSet.batten, mass: weighed(kilograms(40 / POUND), 1) };
    expect(found('UNI-002', { lineSet: { ...exampleSet, batten } })).toHaveLength(1);
  });

  it('[UNI-002] compares the arbors of one type, and asks about one value once', () => {
    const arbor = { ...exampleArbor, carriageMass: weighed(kilograms(40 * POUND), 1) };
    const otherSets = ['8', '9'].map((id) => ({ ...exampleSet, id, arbor }));
    expect(found('UNI-002', { otherSets })).toMatchObject([
      {
        at: { set: '8' },
        measured: { value: 40 * POUND },
        facts: { what: 'arbor without bricks, type A', against: { value: 40 } },
      },
    ]);
    const otherType = otherSets.map((lineSet) => ({ ...lineSet, typeId: 'Z' }));
    expect(found('UNI-002', { otherSets: otherType })).toEqual([]);
  });

  it('[UNI-002] compares a release with its item, and a pull test with the list', () => {
    const item: Item = {
      ...exampleItem,
      releases: [{ mass: given(kilograms(100 / POUND)), how: 'it falls' }],
    };
    const total = reckoned({ massKg: 100, uncertaintyKg: 2, uncertaintyRssKg: 2 });
    const takeoffs = [{ item, total, faults: [], toleranceNeeds: [] }] as never;
    expect(found('UNI-002', { set: { takeoffs } })).toMatchObject([
      { facts: { what: 'release of Frame: it falls', other: 'Frame' } },
    ]);
    const pullTest = {
      out: newtons(1),
      in: newtons(1),
      height: metres(10),
      at: '2026-11-25T12:00:00Z',
      by: 'rail operator',
    };
    // 100 kg are listed and 220.46 kg hang: 120.46 kg more at the batten than the list says.
    const pulledN = -10 + (100 / POUND - 100) * GRAVITY;
    const pulled = (share: number): Scene => ({
      record: { ...exampleRecord, pullTest },
      recorded: {
        pull: reckoned({ imbalance: newtons(pulledN * share), friction: newtons(30) }),
      },
    });
    expect(found('UNI-002', pulled(1))).toMatchObject([
      { facts: { what: 'what hangs, by pull test' } },
    ]);
    expect(found('UNI-002', pulled(1.1))).toEqual([]);
  });
});
