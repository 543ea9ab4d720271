import { describe, expect, it } from 'vitest';
import type { House, Known } from '#house';
import { blankHouse } from './blank.ts';
import { house as specimen } from './provocations/specimens.ts';
import { readHouse, readHouseValue } from './read-house.ts';

/** The international foot and pound, exact by definition (1959). */
const FOOT = 0.3048;
const POUND = 0.45359237;

const read = (raw: unknown): House => {
  const answer = readHouseValue(raw);
  if (!answer.ok) throw new Error(JSON.stringify(answer.error.slice(0, 3)));
  return answer.value.house;
};

const specimenWith = (fields: object): House => read({ ...specimen, ...fields });

const setOf = (house: House, id: string) => {
  const set = house.lineSets.find((one) => one.id === id);
  if (!set) throw new Error(`no line set ${id}`);
  return set;
};

const value = (known: Known<unknown>): unknown => (known.known ? known.value : 'unknown');

describe('a sourced value', () => {
  const massOf = (mass: unknown, given?: object) =>
    specimenWith({
      brickKinds: [
        { id: 'F', name: 'full', serves: ['pipeWeight'], mass, ...(given ? { given } : {}) },
      ],
    }).brickKinds[0]?.mass;

  it('takes its basis from the nearest "given" above it', () => {
    expect(massOf('25 lb', { basis: 'published', source: 'maker' })).toEqual({
      known: true,
      value: 25 * POUND,
      provenance: { basis: 'published', source: 'maker' },
    });
    expect(massOf('25 lb')).toMatchObject({
      provenance: { basis: 'measured', source: 'survey', by: 'house crew', on: '2026-05-04' },
    });
  });

  it('takes nothing from above when it has a basis of its own', () => {
    expect(massOf({ value: '25 lb', basis: 'weighed', by: 'A. Crew' })).toEqual({
      known: true,
      value: 25 * POUND,
      provenance: { basis: 'weighed', by: 'A. Crew' },
    });
  });

  it('may have a tolerance and the basis from above', () => {
    expect(massOf({ value: '25 lb', tolerance: '0.5 lb' })).toMatchObject({
      tolerance: 0.5 * POUND,
      provenance: { basis: 'measured', source: 'survey' },
    });
  });

  it('has a share as a tolerance in its own unit', () => {
    const mass = massOf({ value: '25 lb', tolerance: '2 %' });
    expect(mass?.known && mass.tolerance).toBeCloseTo(0.02 * 25 * POUND, 12);
  });

  it('that is a share has its tolerance in points of per cent', () => {
    const rules = { frictionShare: { value: '5 %', tolerance: '1 %', basis: 'estimated' } };
    const { frictionShare } = specimenWith({ rules }).rules;
    expect(frictionShare).toMatchObject({ value: 0.05, tolerance: 0.01 });
  });

  it('is unknown where it is absent, and says why where that was written', () => {
    expect(specimenWith({}).stage.backWall).toEqual({ known: false });
    expect(massOf({ unknown: 'no scale at hand' })).toEqual({
      known: false,
      why: 'no scale at hand',
    });
  });

  it('may be negative where it has a side', () => {
    expect(value(specimenWith({}).stage.operatingX)).toBeCloseTo(-30 * FOOT, 12);
  });
});

describe('a line set', () => {
  const house = specimenWith({});

  it('has what its type says', () => {
    const set = setOf(house, '1');
    expect(set.lineXs).toEqual([-20 * FOOT, 0, 20 * FOOT]);
    expect(value(set.lowStop.height)).toBeCloseTo(3 * FOOT, 12);
    expect(set.railId).toBe('deck');
    expect(set.typeId).toBe('single');
  });

  it('has what its type extends, field by field', () => {
    const { batten, arbor } = setOf(house, '3');
    expect(value(batten.left)).toBeCloseTo(-29 * FOOT, 12);
    expect(value(batten.mass)).toBeCloseTo(150 * POUND, 12);
    expect(arbor?.pipeWeight).toEqual([{ kind: 'F', count: 4 }]);
  });

  it('may say any field of its type anew', () => {
    const [first, ...others] = specimen.lineSets;
    const lowStop = { height: '5 ft' };
    const { lowStop: anew } = setOf(
      specimenWith({ lineSets: [{ ...first, lowStop, workingHeight: '6 ft' }, ...others] }),
      '1',
    );
    expect(value(anew.height)).toBeCloseTo(5 * FOOT, 12);
    expect(value(anew.rated)).toBeCloseTo(1400 * 4.4482216152605, 9);
  });

  it('has tube, lines and blocks, each measure in SI', () => {
    const { batten, lift, pointLimit, perLengthLimit } = setOf(house, '1');
    const [splice] = batten.splices ?? [];
    expect(value(batten.pipe.secondMoment)).toBeCloseTo(0.31 * 0.0254 ** 4, 15);
    // 29 000 ksi are 199.95 GPa.
    expect(Number(value(batten.pipe.elasticModulus)) / 1e9).toBeCloseTo(199.95, 2);
    expect([splice?.x, splice && value(splice.strength)]).toEqual([-1 * FOOT, 0.8]);
    expect(value(lift.cable.diameter)).toBeCloseTo(0.00635, 12);
    expect(lift.cable.termination).toBe('compressionSleeve');
    expect([lift.loftBlock.bearing, lift.headBlock.bearing]).toEqual(['rolling', 'plain']);
    expect(value(lift.loftBlock.fleetAngle)).toBeCloseTo(Math.PI / 180, 12);
    expect(lift.headBlock.fleetAngle).toEqual({ known: false });
    expect(lift.lineTrims?.map((trim) => trim / 0.0254)).toEqual([0, 0.5, -0.25]);
    expect(lift.muleBlocks).toMatchObject([{ line: 3, x: 10 * FOOT, z: 66 * FOOT }]);
    expect(value(lift.handLineMass)).toBeCloseTo(20 * POUND, 12);
    expect(value(pointLimit)).toBeCloseTo(250 * POUND, 12);
    expect(value(perLengthLimit)).toBeCloseTo((30 * POUND) / FOOT, 12);
  });

  it('has its own trims and fleet angle on the lines and blocks of its type', () => {
    const [first, ...others] = specimen.lineSets;
    const own = { lineTrims: ['0 mm', '3 mm', '0 mm'], headBlock: { fleetAngle: '0.5 deg' } };
    const { lift } = setOf(specimenWith({ lineSets: [{ ...first, lift: own }, ...others] }), '1');
    expect(lift.lineTrims).toEqual([0, 0.003, 0]);
    expect(value(lift.cable.breakingStrength)).toBeCloseTo(7000 * 4.4482216152605, 9);
    expect(value(lift.headBlock.sheaveDiameter)).toBeCloseTo(FOOT, 12);
    expect(value(lift.headBlock.fleetAngle)).toBeCloseTo(Math.PI / 360, 12);
    expect(lift.muleBlocks).toHaveLength(1);
  });

  it('has what its type says of a block on what that extends', () => {
    const long = { ...specimen.setTypes.long, lift: { headBlock: { rated: '8000 lbf' } } };
    const anew = specimenWith({ setTypes: { ...specimen.setTypes, long } });
    const { headBlock, cable } = setOf(anew, '3').lift;
    expect(value(headBlock.rated)).toBeCloseTo(8000 * 4.4482216152605, 9);
    expect(headBlock.bearing).toBe('plain');
    expect(value(cable.diameter)).toBeCloseTo(0.00635, 12);
    expect(value(setOf(anew, '1').lift.headBlock.rated)).toBeCloseTo(6000 * 4.4482216152605, 9);
  });

  it('keeps nothing of a tube or a cable that it replaces', () => {
    const [first, ...others] = specimen.lineSets;
    const own = {
      batten: { pipe: { secondMoment: '0.666 in⁴' } },
      lift: { cable: { diameter: '3/16 in' } },
    };
    const set = setOf(specimenWith({ lineSets: [{ ...first, ...own }, ...others] }), '1');
    expect(value(set.batten.mass)).toBeCloseTo(150 * POUND, 12);
    expect(set.batten.pipe.sectionModulus).toEqual({ known: false });
    expect(set.batten.pipe.wall).toBe(null);
    expect(set.lift.cable.breakingStrength).toEqual({ known: false });
    expect(set.lift.cable.termination).toBe(null);
  });

  it('without a word on its tube, lines and blocks has them unknown, and no mule block', () => {
    const { batten, lift, pointLimit, perLengthLimit } = setOf(house, 'M1');
    const blank = { known: false };
    const block = { sheaveDiameter: blank, rated: blank, bearing: null, fleetAngle: blank };
    expect(batten.splices).toBe(null);
    expect(batten.pipe).toEqual({
      ...{ secondMoment: blank, sectionModulus: blank, plasticModulus: blank },
      ...{ elasticModulus: blank, yieldStrength: blank, wall: null },
    });
    expect(lift).toEqual({
      cable: { diameter: blank, breakingStrength: blank, axialStiffness: blank, termination: null },
      loftBlock: block,
      headBlock: block,
      muleBlocks: [],
      lineTrims: null,
      handLineMass: blank,
    });
    expect([pointLimit, perLengthLimit]).toEqual([blank, blank]);
  });

  it('tells a tube without a joint from one that nobody looked at', () => {
    const [first, ...others] = specimen.lineSets;
    const splicesOf = (splices: unknown) =>
      setOf(specimenWith({ lineSets: [{ ...first, batten: { splices } }, ...others] }), '1').batten
        .splices;
    expect(splicesOf([])).toEqual([]);
    expect(splicesOf({ unknown: 'painted over' })).toBe(null);
    expect(splicesOf([{ x: '2 ft' }])).toEqual([{ x: 2 * FOOT, strength: { known: false } }]);
  });

  it('replaces a sourced value as a whole, with its own provenance', () => {
    const [first, ...others] = specimen.lineSets;
    const given = { basis: 'weighed', source: 'load cell' };
    const lineSets = [{ ...first, given, batten: { mass: '151 lb' } }, ...others];
    const { batten } = setOf(specimenWith({ lineSets }), '1');
    expect(batten.mass).toMatchObject({ provenance: given });
    expect(batten.massPerLength).toMatchObject({ provenance: { basis: 'measured' } });
  });

  it('has no arbor where none is written and none is expected', () => {
    expect(setOf(house, 'M1').arbor).toBeNull();
    expect(setOf(house, 'M1').railId).toBeNull();
  });

  it('has unknown pipe weight, and not none, where none is written', () => {
    const [first, ...others] = specimen.lineSets;
    const unknown = { pipeWeight: { unknown: 'painted over' } };
    const lineSets = [{ ...first, arbor: unknown }, ...others];
    expect(setOf(specimenWith({ lineSets }), '1').arbor?.pipeWeight).toBeNull();
  });

  it('stands in rail order, and without a distance stays after its neighbour in the file', () => {
    const lineSets = [
      { id: '3', type: 'single', y: '36 in' },
      { id: 'x', type: 'single' },
      { id: '1', type: 'single', y: '18 in' },
      { id: '2', type: 'single', y: '27 in' },
    ];
    const order = specimenWith({ lineSets, bays: [] }).lineSets.map(({ id }) => id);
    expect(order).toEqual(['1', '2', '3', 'x']);
  });
});

describe('a house', () => {
  it('keeps what was typed beside what it means', () => {
    const answer = readHouse(JSON.stringify(specimen));
    expect(answer.ok && answer.value.raw).toEqual(specimen);
  });

  it('has rules in the units of the engine', () => {
    const { rules } = specimenWith({});
    expect(value(rules.staleAfterSeconds)).toBe(4 * 3600);
    expect(value(rules.lockLimit)).toBeCloseTo(50 * 4.4482216152605, 9);
    expect(value(rules.clipsForbidden)).toBe(true);
    expect(value(rules.peoplePerHandLine)).toBe(2);
    expect(rules.toleranceByBasis).toEqual({ weighed: 0.02, estimated: 0.25 });
  });

  it('has keep-outs that go on where a bound is absent or null', () => {
    const [curtain, vent] = specimenWith({}).keepOuts;
    expect(curtain?.x).toBeUndefined();
    expect(vent?.z).toEqual([67 * FOOT, null]);
  });

  it('says what a kind of brick serves as', () => {
    const serves = specimenWith({}).brickKinds.map((kind) => kind.serves);
    expect(serves).toEqual([
      { pipeWeight: true, show: true },
      { pipeWeight: false, show: true },
      { pipeWeight: true, show: false },
    ]);
  });

  it('may name its schema for an editor', () => {
    const answer = readHouseValue({ $schema: './house.schema.json', ...specimen });
    expect(answer.ok).toBe(true);
    expect(answer.ok && answer.value.house).not.toHaveProperty('$schema');
  });

  it('that is blank reads, and knows nothing', () => {
    const blank = blankHouse({
      id: 'new',
      name: 'New house',
      units: 'metric',
      words: 'UK',
      operatingSide: 'stageLeft',
    });
    const house = read(blank);
    expect(house.lineSets).toEqual([]);
    const { toleranceByBasis, ...rules } = house.rules;
    expect(toleranceByBasis).toEqual({});
    expect(Object.values(rules).filter(({ known }) => known)).toEqual([]);
    expect(house.spreader).toBeNull();
    expect(house.loftWells).toEqual([]);
  });

  it('gets the same reading from a text with a byte order mark', () => {
    expect(readHouse(`\uFEFF${JSON.stringify(specimen)}`)).toEqual(
      readHouse(JSON.stringify(specimen)),
    );
  });
});

describe('faults', () => {
  it('come all at once, each with its path', () => {
    const answer = readHouseValue({
      ...specimen,
      unit: 'kg',
      words: 'FR',
      rules: { ...specimen.rules, lockLimit: '50 lb', pullBrief: '80' },
      lineSets: [{ id: '1', type: 'single', y: '18' }, { id: '2', type: 'signle' }, 7],
      bays: [{ id: 'A', sets: ['1', '9'] }],
    });
    expect(answer.ok ? [] : answer.error.map(({ code, path }) => `${code} ${path}`)).toEqual([
      'DOC-031 unit',
      'DOC-033 words',
      'QTY-008 rules.lockLimit',
      'QTY-005 rules.pullBrief',
      'QTY-005 lineSets[0].y',
      'DOC-032 lineSets[2]',
      'DOC-070 lineSets[1].type',
    ]);
  });

  it('say where the person wrote it, in the type or in the set', () => {
    const [first, ...others] = specimen.lineSets;
    const lineSets = [{ ...first, highStop: { height: '2 ft' } }, ...others];
    const answer = readHouseValue({ ...specimen, lineSets });
    expect(answer.ok ? [] : answer.error).toMatchObject([
      { code: 'DOC-078', path: 'setTypes.single.lowStop.height' },
    ]);
  });

  it('name the field that was probably meant', () => {
    const stage = { ...specimen.stage, openingWdith: '40 ft' };
    const answer = readHouseValue({ ...specimen, stage });
    expect(answer.ok ? '' : answer.error[0]?.accepted).toContain('openingWidth');
  });

  it('name the document that a wrong one looks like', () => {
    const { format, ...rest } = specimen;
    const shown = (raw: unknown): string | undefined => {
      const answer = readHouseValue(raw);
      return answer.ok ? undefined : answer.error[0]?.found;
    };
    expect(shown({ ...rest, format: 'counterpoise-shwo' })).toContain('it looks like a show');
    expect(shown(rest)).toContain('it looks like a house');
    expect(shown({ cues: [], version: 1 })).toContain('it looks like a show');
    expect(shown({ version: 1 })).toContain('none of our documents');
  });

  it('tell line and column of a slip in the grammar', () => {
    const answer = readHouse('{\n  "format": "counterpoise-house",\n  "version" 1\n}');
    expect(answer.ok ? '' : answer.error[0]?.found).toBe('colon expected at line 3, column 13');
  });

  it('say to update the program for a newer version', () => {
    const answer = readHouseValue({ ...specimen, version: 2 });
    expect(answer.ok ? '' : answer.error[0]?.accepted).toContain('update the program');
  });

  it('never grow with what was typed', () => {
    const answer = readHouseValue({ ...specimen, units: 'x'.repeat(1e5) });
    expect(answer.ok ? '' : answer.error[0]?.found.length).toBeLessThan(80);
  });

  it('tell twenty unknown fields and count the rest', () => {
    const odd = Object.fromEntries(Array.from({ length: 500 }, (_, at) => [`odd${at}`, at]));
    const answer = readHouseValue({ ...specimen, ...odd });
    const told = answer.ok ? [] : answer.error;
    expect(told).toHaveLength(20);
    expect(told[0]?.found).toContain('480 more');
  });
});
