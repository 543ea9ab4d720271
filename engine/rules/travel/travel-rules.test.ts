import { describe, expect, it } from 'vitest';
import { reckoned } from '#findings';
import { metres } from '#quantities';
import { found, planOf, trimOf } from '../example-assessment.ts';
import {
  doubleSet,
  exampleArbor,
  exampleHang,
  exampleSet,
  given,
  motorSet,
  nobodyKnows,
  playingTrim,
} from '../example-house.ts';

const roomOf = (aboveM: number, belowM: number) => ({
  room: reckoned({ above: metres(aboveM), below: metres(belowM) }),
});

describe('room of the arbor', () => {
  it('[TRV-001] lets the clearance be met exactly', () => {
    expect(found('TRV-001', { set: roomOf(0.15, 0.3) })).toEqual([]);
  });

  it('[TRV-001] cautions where a millimetre of the clearance is missing', () => {
    const [finding] = found('TRV-001', { set: roomOf(0.149, 0.3) });
    expect(finding).toMatchObject({
      level: 'caution',
      at: { set: '7' },
      measured: { value: 0.149, kind: 'length' },
      limit: { value: 0.15 },
      limitSource: 'house rule, example',
    });
    expect(finding?.working?.terms.map(({ value }) => value?.value)).toEqual([20.5, 18.3, 2]);
  });

  it('[TRV-001] stops where the arbor meets its head block', () => {
    expect(found('TRV-001', { set: roomOf(0, 0.3) })).toMatchObject([{ level: 'caution' }]);
    expect(found('TRV-001', { set: roomOf(-0.001, 0.3) })).toMatchObject([{ level: 'stop' }]);
  });

  it('[TRV-002] lets the clearance be met exactly, and cautions below it', () => {
    expect(found('TRV-002', { set: roomOf(0.2, 0.15) })).toEqual([]);
    expect(found('TRV-002', { set: roomOf(0.2, 0.149) })).toMatchObject([
      { level: 'caution', facts: { purchase: 'single' } },
    ]);
  });

  it('[TRV-002] stops a double purchase set that is listed as single', () => {
    // 58 ft of travel on a pan at 57 ft: right on double purchase, through the deck on single.
    expect(found('TRV-002', { set: roomOf(0.2, -0.3) })).toMatchObject([{ level: 'stop' }]);
    const double = { lineSet: doubleSet, set: roomOf(0.2, 8) };
    expect(found('TRV-002', double)).toEqual([]);
  });

  it('[UNK-001] says that a clearance is not known', () => {
    const arbor = { ...exampleArbor, topClearance: nobodyKnows, bottomClearance: nobodyKnows };
    const [finding] = found('UNK-001', { lineSet: { ...exampleSet, arbor } });
    expect(finding?.facts['what']).toBe(
      'clearance above the arbor (nobody looked); clearance below the arbor (nobody looked)',
    );
  });
});

describe('trims and stops', () => {
  const trimAt = (heightM: number) => {
    const hang = { ...exampleHang, trims: [{ ...playingTrim, height: given(metres(heightM)) }] };
    return {
      hang,
      plan: { trims: planOf({}, hang).trims.map(({ trim }) => trimOf(trim, [heightM, 0])) },
    };
  };

  it('[TRV-003] lets a trim lie on either stop', () => {
    expect(found('TRV-003', trimAt(1))).toEqual([]);
    expect(found('TRV-003', trimAt(19))).toEqual([]);
  });

  it('[TRV-003] stops a trim past either stop', () => {
    expect(found('TRV-003', trimAt(19.001))).toMatchObject([
      {
        level: 'stop',
        measured: { value: 19.001 },
        limit: { value: 19 },
        facts: { trim: 'playing' },
      },
    ]);
    expect(found('TRV-003', trimAt(0.999))).toMatchObject([{ limit: { value: 1 } }]);
  });

  it('[TRV-003] judges a motor, and the height at which steel holds a set', () => {
    const hang = {
      ...exampleHang,
      bricks: null,
      trims: [{ ...playingTrim, height: given(metres(20)) }],
      deadHungAt: given(metres(30)),
    };
    const findings = found('TRV-003', { lineSet: motorSet, hang, plan: null });
    expect(findings.map(({ facts }) => facts['trim'])).toEqual(['playing', 'dead-hung']);
  });

  it('[UNK-001] misses the batten height of a trim that was measured to a lens', () => {
    const trims = [{ ...playingTrim, reference: 'lens' as const }];
    const hang = { ...exampleHang, bricks: null, trims };
    const [finding] = found('UNK-001', { lineSet: motorSet, hang, plan: null });
    expect(finding?.facts['what']).toContain('height of the batten at playing trim');
  });

  const stopsAt = (lowM: number, highM: number, workingM: number) => ({
    lineSet: {
      ...exampleSet,
      lowStop: { ...exampleSet.lowStop, height: given(metres(lowM)) },
      highStop: { ...exampleSet.highStop, height: given(metres(highM)) },
      workingHeight: given(metres(workingM)),
    },
    hang: null,
  });

  it('[TRV-004] stops a low stop that is not below the high stop', () => {
    expect(found('TRV-004', stopsAt(1, 1.001, 1))).toEqual([]);
    expect(found('TRV-004', stopsAt(1, 1, 1))).toMatchObject([
      { level: 'stop', facts: { upper: 'high stop', lower: 'low stop' } },
    ]);
  });

  it('[TRV-004] stops a working height that is not between the stops', () => {
    expect(found('TRV-004', stopsAt(1, 19, 19))).toEqual([]);
    expect(found('TRV-004', stopsAt(1, 19, 0.999))).toMatchObject([
      { facts: { upper: 'working height', lower: 'low stop' } },
    ]);
    expect(found('TRV-004', stopsAt(1, 19, 19.001))).toMatchObject([
      { facts: { upper: 'high stop', lower: 'working height' } },
    ]);
  });
});
