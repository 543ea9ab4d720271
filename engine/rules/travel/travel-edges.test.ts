import { describe, expect, it } from 'vitest';
import { blocked, reckoned } from '#findings';
import { metres } from '#quantities';
import { found, judgeScene, type Scene } from '../example-assessment.ts';
import { full, missed } from '../example-finding.ts';
import {
  doubleSet,
  exampleHang,
  exampleHouse,
  exampleSet,
  given,
  motorSet,
  nobodyKnows,
  playingTrim,
} from '../example-house.ts';

const room = (above: number, below: number) => ({
  set: { room: reckoned({ above: metres(above), below: metres(below) }) },
});

const travel = (
  changes: Partial<Record<'lowStop' | 'highStop' | 'workingHeight', number | null>>,
) => {
  const height = (name: keyof typeof changes, standard: number) => {
    const value = name in changes ? changes[name] : standard;
    return value === null || value === undefined ? nobodyKnows : given(metres(value));
  };
  return {
    ...exampleSet,
    lowStop: { ...exampleSet.lowStop, height: height('lowStop', 1) },
    highStop: { ...exampleSet.highStop, height: height('highStop', 19) },
    workingHeight: height('workingHeight', 1.2),
  };
};

describe('the travel, in full', () => {
  it('[TRV-001] shows head block, arbor and what lies between', () => {
    expect(full('TRV-001', room(0.1, 0.3))).toMatchInlineSnapshot(`
      "TRV-001 caution at set 7
      measured 0.1 length, limit 0.15 length (house rule, example)
      - lowStop: 1 length
      room above the arbor: z_H − z_p0 − L
        z_H = 20.5 length: head block (house rule, example)
        z_p0 = 18.3 length: bottom of the arbor, batten in (house rule, example)
        L = 2 length: length of the arbor (house rule, example)
        room = 0.1 length: room above the arbor
        limit 0.15 length (house rule, example)
        by trade formula C2"
    `);
  });

  it('[TRV-001] keeps a term whose value nobody knows', () => {
    const house = { stage: { ...exampleHouse.stage, headBlockHeight: nobodyKnows } };
    const [finding] = found('TRV-001', { ...room(0.1, 0.3), house });
    expect(finding?.working?.terms[0]).toEqual({
      symbol: 'z_H',
      meaning: 'head block',
      value: null,
    });
  });

  it('[TRV-002] shows arbor, stops and purchase', () => {
    expect(full('TRV-002', room(0.2, 0.1))).toMatchInlineSnapshot(`
      "TRV-002 caution at set 7
      measured 0.1 length, limit 0.15 length (house rule, example)
      - highStop: 19 length
      - purchase: single
      room below the arbor: z_p0 − ( h_hi − h_lo ) / r
        z_p0 = 18.3 length: bottom of the arbor, batten in (house rule, example)
        h_hi = 19 length: high stop (house rule, example)
        h_lo = 1 length: low stop (house rule, example)
        r = 1 count: batten travel over arbor travel
        room = 0.1 length: room below the arbor
        limit 0.15 length (house rule, example)
        by trade formula C1, C2"
    `);
  });

  it('[TRV-002] says double of a double purchase set', () => {
    const [finding] = found('TRV-002', { ...room(0.2, 0.1), lineSet: doubleSet });
    expect(finding?.facts['purchase']).toBe('double');
    expect(finding?.working?.terms[3]?.value?.value).toBe(2);
  });

  it('[TRV-003] shows trim and stops', () => {
    const trims = [{ ...playingTrim, height: given(metres(20)) }];
    const scene = { hang: { ...exampleHang, trims }, plan: null };
    expect(full('TRV-003', scene)).toMatchInlineSnapshot(`
      "TRV-003 stop at set 7, heightM 20
      measured 20 length, limit 19 length (travel of the batten, from the house)
      - trim: playing
      - lowStop: 1 length
      - highStop: 19 length"
    `);
  });

  it('[TRV-004] shows each pair that is out of order', () => {
    const lineSet = travel({ lowStop: 2, highStop: 1.5, workingHeight: 1.7 });
    expect(full('TRV-004', { lineSet, hang: null })).toMatchInlineSnapshot(`
      "TRV-004 stop at set 7
      measured 1.5 length, limit 2 length (the other height of the same set)
      - upper: high stop
      - lower: low stop

      TRV-004 stop at set 7
      measured 1.7 length, limit 2 length (the other height of the same set)
      - upper: working height
      - lower: low stop

      TRV-004 stop at set 7
      measured 1.5 length, limit 1.7 length (the other height of the same set)
      - upper: high stop
      - lower: working height"
    `);
  });
});

describe('room of the arbor where something is not known', () => {
  it('[TRV-001] [TRV-002] judge no arbor on a motor, and no room that nobody knows', () => {
    const codes = (scene: Scene) =>
      judgeScene(scene)
        .map(({ code }) => code)
        .filter((code) => code === 'TRV-001' || code === 'TRV-002');
    expect(codes({ ...room(0.1, 0.1), lineSet: motorSet })).toEqual([]);
    expect(codes({ set: { room: blocked(['length of the arbor']) } })).toEqual([]);
    expect(codes({ ...room(0.1, 0.1), lineSet: { ...exampleSet, arbor: null } })).toEqual([]);
    const { suspension } = motorSet;
    expect(codes({ ...room(0.2, 0.1), lineSet: { ...exampleSet, suspension } })).toEqual([]);
  });

  it('[TRV-001] [TRV-002] never ask less than no room at all', () => {
    // A clearance of less than nothing would let the arbor into the head block.
    const arbor = exampleSet.arbor && {
      ...exampleSet.arbor,
      topClearance: given(metres(-0.5)),
      bottomClearance: given(metres(-0.5)),
    };
    const lineSet = { ...exampleSet, arbor };
    expect(found('TRV-001', { ...room(-0.1, 0), lineSet })).toMatchObject([{ level: 'stop' }]);
    expect(found('TRV-002', { ...room(0, -0.1), lineSet })).toMatchObject([{ level: 'stop' }]);
    expect(found('TRV-001', { ...room(0, 0), lineSet })).toEqual([]);
    expect(found('TRV-002', { ...room(0, 0), lineSet })).toEqual([]);
  });

  it('[TRV-002] cautions, and does not stop, where the arbor just comes down to its floor', () => {
    expect(found('TRV-002', room(0.2, 0))).toMatchObject([{ level: 'caution' }]);
  });

  it('[UNK-001] says what a missing clearance blocks', () => {
    const arbor = exampleSet.arbor && {
      ...exampleSet.arbor,
      topClearance: nobodyKnows,
      bottomClearance: nobodyKnows,
    };
    expect(missed({ lineSet: { ...exampleSet, arbor } })).toContain(
      'room above the arbor; room below the arbor',
    );
  });
});

describe('stops and trims of which something is not known', () => {
  it('[UNK-001] names the stop that is missing, and what that blocks', () => {
    const lineSet = travel({ lowStop: null });
    expect(missed({ lineSet })).toBe(
      'height of the low stop (nobody looked) | order of the stops; trims against the travel',
    );
    expect(missed({ lineSet: travel({ highStop: null }), hang: null })).toBe(
      'height of the high stop (nobody looked) | order of the stops',
    );
  });

  it('[TRV-004] judges a working height by the stop that is known', () => {
    const high = { lineSet: travel({ lowStop: null, workingHeight: 20 }), hang: null };
    expect(found('TRV-004', high)).toMatchObject([{ facts: { upper: 'high stop' } }]);
    const low = { lineSet: travel({ highStop: null, workingHeight: 0.5 }), hang: null };
    expect(found('TRV-004', low)).toMatchObject([{ facts: { lower: 'low stop' } }]);
  });

  it('[TRV-004] judges no working height that nobody knows', () => {
    const lineSet = travel({ workingHeight: null });
    expect(found('TRV-004', { lineSet, hang: null })).toEqual([]);
  });

  it('[TRV-003] judges nothing where nothing hangs', () => {
    expect(found('TRV-003', { hang: null })).toEqual([]);
    expect(missed({ lineSet: travel({ lowStop: null }), hang: null })).not.toContain('trims');
  });

  it('[UNK-001] misses a trim whose height nobody knows, and judges the others', () => {
    const trims = [
      { ...playingTrim, name: 'first', height: nobodyKnows },
      { ...playingTrim, name: 'second', height: given(metres(20)) },
    ];
    const scene = { hang: { ...exampleHang, bricks: null, trims }, plan: null };
    expect(missed(scene)).toContain('height of the batten at first trim');
    expect(missed(scene)).toContain('trims of the set');
    expect(found('TRV-003', scene)).toMatchObject([{ facts: { trim: 'second' } }]);
  });

  it('[TRV-003] judges no dead-hung height that nobody knows', () => {
    const hang = { ...exampleHang, deadHungAt: nobodyKnows };
    expect(found('TRV-003', { hang, plan: null })).toEqual([]);
  });
});
