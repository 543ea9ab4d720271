import { describe, expect, it } from 'vitest';
import { reckoned } from '#findings';
import { kilograms } from '#quantities';
import { exampleStack, found } from '../example-assessment.ts';
import { exampleArbor, exampleRecord, exampleSet, nobodyKnows } from '../example-house.ts';

/** The tolerances of the example are 1 kg of carriage and 2.2 kg of bricks. */
const TOLERANCE_KG = 3.2;

const heavy = (arborKg: number) => ({
  plan: { stack: { ...exampleStack, arborMass: kilograms(arborKg) } },
});

describe('mass of the arbor', () => {
  it('[ARB-001] takes an arbor that is at its limit with its tolerance', () => {
    expect(found('ARB-001', heavy(500 - TOLERANCE_KG))).toEqual([]);
  });

  it('[ARB-001] stops ten grams more', () => {
    const [finding] = found('ARB-001', heavy(500.01 - TOLERANCE_KG));
    expect(finding).toMatchObject({
      level: 'stop',
      limit: { value: 500, kind: 'mass' },
      facts: { stack: 'planned', tolerance: { value: TOLERANCE_KG } },
    });
    expect(finding?.measured?.value).toBeCloseTo(500.01, 9);
  });

  it('[ARB-001] judges the recorded arbor beside the planned one', () => {
    const recorded = { arborMass: reckoned(kilograms(498)) };
    const findings = found('ARB-001', { record: exampleRecord, recorded });
    expect(findings).toMatchObject([{ facts: { stack: 'recorded' }, measured: { value: 501.2 } }]);
  });

  it('[ARB-002] cautions above nine tenths, and leaves what is too much to ARB-001', () => {
    expect(found('ARB-002', heavy(450 - TOLERANCE_KG))).toEqual([]);
    expect(found('ARB-002', heavy(450.01 - TOLERANCE_KG))).toMatchObject([{ level: 'caution' }]);
    expect(found('ARB-002', heavy(500 - TOLERANCE_KG))).toHaveLength(1);
    expect(found('ARB-002', heavy(500.01 - TOLERANCE_KG))).toEqual([]);
  });

  it('[UNK-001] says that the limit is not known', () => {
    const arbor = { ...exampleArbor, massLimit: nobodyKnows };
    const [finding] = found('UNK-001', { lineSet: { ...exampleSet, arbor } });
    expect(finding?.facts['what']).toBe('mass limit of the arbor (nobody looked)');
  });
});
