import { describe, expect, it } from 'vitest';
import { blocked, reckoned } from '#findings';
import { kilograms } from '#quantities';
import { balanceSet, exampleStack, found, judgeScene } from '../example-assessment.ts';
import { full, missed } from '../example-finding.ts';
import {
  exampleArbor,
  exampleRecord,
  exampleSet,
  motorSet,
  nobodyKnows,
} from '../example-house.ts';

const plannedKg = (arborKg: number, set = balanceSet) => ({
  plan: { set, stack: { ...exampleStack, arborMass: kilograms(arborKg) } },
});

const recordedKg = (arborKg: number) => ({
  record: exampleRecord,
  recorded: { arborMass: reckoned(kilograms(arborKg)) },
});

describe('mass of the arbor, in full', () => {
  it('[ARB-001] adds up the planned arbor and sets the sum against the limit', () => {
    expect(full('ARB-001', plannedKg(498))).toMatchInlineSnapshot(`
      "ARB-001 stop at set 7
      measured 501.2 mass, limit 500 mass (house rule, example)
      - stack: planned
      - tolerance: 3.2 mass
      - full: 500 mass
      mass of the arbor: A + p + b + s + t
        A = 40 mass: arbor without bricks
        p = 10 mass: pipe weight
        b = 100 mass: show bricks
        s = 348 mass: spreader plates not counted in A
        t = 3.2 mass: tolerance, all at its worst
        arbor = 501.2 mass: mass of the arbor at its worst
        limit 500 mass (house rule, example)
        by sum of its parts"
    `);
  });

  it('[ARB-001] takes the recorded arbor as one mass', () => {
    expect(full('ARB-001', recordedKg(498))).toMatchInlineSnapshot(`
      "ARB-001 stop at set 7
      measured 501.2 mass, limit 500 mass (house rule, example)
      - stack: recorded
      - tolerance: 3.2 mass
      - full: 500 mass
      mass of the arbor: A + t
        A = 498 mass: arbor with all on it
        t = 3.2 mass: tolerance, all at its worst
        arbor = 501.2 mass: mass of the arbor at its worst
        limit 500 mass (house rule, example)
        by sum of its parts"
    `);
  });

  it('[ARB-002] names nine tenths as the limit, and the whole limit beside it', () => {
    expect(full('ARB-002', plannedKg(470))).toMatchInlineSnapshot(`
      "ARB-002 caution at set 7
      measured 473.2 mass, limit 450 mass (90 % of the limit of the arbor: common practice,
          no source)
      - stack: planned
      - tolerance: 3.2 mass
      - full: 500 mass
      mass of the arbor: A + p + b + s + t
        A = 40 mass: arbor without bricks
        p = 10 mass: pipe weight
        b = 100 mass: show bricks
        s = 320 mass: spreader plates not counted in A
        t = 3.2 mass: tolerance, all at its worst
        arbor = 473.2 mass: mass of the arbor at its worst
        limit 450 mass (90 % of the limit of the arbor: common practice, no source)
        by sum of its parts"
    `);
  });
});

describe('mass of the arbor where something is not known', () => {
  it('[ARB-001] counts no plate where the parts come to more than the whole', () => {
    const light = plannedKg(498, { ...balanceSet, carriage: 450 });
    const [finding] = found('ARB-001', light);
    expect(finding?.working?.terms[3]).toMatchObject({ symbol: 's', value: { value: 0 } });
  });

  it('[ARB-001] adds nothing for a tolerance that nobody has given', () => {
    const { carriageUncertainty: _carriage, brickUncertainty: _brick, ...bare } = balanceSet;
    expect(found('ARB-001', plannedKg(500, bare))).toEqual([]);
    expect(found('ARB-001', plannedKg(500.01, bare))).toMatchObject([
      { measured: { value: 500.01 }, facts: { tolerance: { value: 0 } } },
    ]);
  });

  it('[ARB-001] judges a record without a plan, and says nothing without either', () => {
    expect(found('ARB-001', { ...recordedKg(500), plan: null })).toEqual([]);
    expect(found('ARB-001', { ...recordedKg(501), plan: null })).toMatchObject([
      { facts: { stack: 'recorded', tolerance: { value: 0 } } },
    ]);
    expect(found('ARB-001', { plan: null })).toEqual([]);
  });

  it('[UNK-001] misses the limit only where an arbor has a mass to judge', () => {
    const lineSet = { ...exampleSet, arbor: { ...exampleArbor, massLimit: nobodyKnows } };
    expect(missed({ lineSet })).toContain('mass of the arbor against its limit');
    const none = { lineSet, plan: null, recorded: { arborMass: blocked(['stack']) } };
    expect(missed(none)).not.toContain('mass of the arbor against its limit');
  });

  it('[ARB-001] [ARB-002] judges no arbor on a motor', () => {
    const codes = judgeScene({ lineSet: motorSet, ...plannedKg(498) }).map(({ code }) => code);
    expect(codes.filter((code) => code.startsWith('ARB'))).toEqual([]);
  });

  it('[ARB-002] says nothing near a limit that nobody knows', () => {
    const lineSet = { ...exampleSet, arbor: { ...exampleArbor, massLimit: nobodyKnows } };
    expect(found('ARB-002', { lineSet, ...plannedKg(470) })).toEqual([]);
  });
});
