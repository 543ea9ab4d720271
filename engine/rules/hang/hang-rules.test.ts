import { describe, expect, it } from 'vitest';
import { GRAVITY, metres } from '#quantities';
import { found, type Scene } from '../example-assessment.ts';
import {
  exampleHang,
  exampleItem,
  exampleLoom,
  given,
  motorSet,
  nobodyKnows,
} from '../example-house.ts';

describe('persons', () => {
  it('[PER-001] stops an item that is tagged as carrying a person', () => {
    const items = [{ ...exampleItem, carriesPerson: true }, exampleLoom];
    expect(found('PER-001', { hang: { ...exampleHang, items } })).toMatchObject([
      { level: 'stop', at: { set: '7', item: 'frame' }, facts: { piece: 'Frame' } },
    ]);
    expect(found('PER-001')).toEqual([]);
  });
});

describe('kinds of set', () => {
  it('[KIN-001] stops bricks on a motor set, and takes none there', () => {
    const motor = { lineSet: motorSet, plan: null };
    expect(found('KIN-001', motor)).toMatchObject([
      { level: 'stop', facts: { bricks: '10 B', suspension: 'motor' } },
    ]);
    const noBricks = { ...exampleHang, bricks: { counts: { B: 0 }, reason: 'none' } };
    expect(found('KIN-001', { ...motor, hang: noBricks })).toEqual([]);
    expect(found('KIN-001', { ...motor, hang: { ...exampleHang, bricks: null } })).toEqual([]);
    expect(found('KIN-001')).toEqual([]);
  });

  it('[KIN-001] knows hemp and dead-hung sets too', () => {
    const on = (suspension: 'hemp' | 'deadHung') =>
      found('KIN-001', { lineSet: { ...motorSet, suspension }, plan: null });
    expect(on('hemp')).toHaveLength(1);
    expect(on('deadHung')).toHaveLength(1);
  });

  // Bare, the example set is 10 N batten heavy at 6.4 m; 100 kg hang, and no show brick is on.
  const steel = (counts: Readonly<Record<string, number>>): Scene => ({
    hang: {
      ...exampleHang,
      bricks: { counts, reason: 'steel holds it' },
      deadHungAt: given(metres(6.4)),
    },
    plan: null,
  });

  it('[KIN-002] says by how much a set goes when its steel lets go', () => {
    const [finding] = found('KIN-002', steel({}));
    expect(finding).toMatchObject({ level: 'caution', at: { heightM: 6.4 } });
    expect(finding?.measured).toEqual({
      kind: 'imbalance',
      value: expect.closeTo(10 + 100 * GRAVITY, 9),
    });
    const [loaded] = found('KIN-002', steel({ B: 9 }));
    expect(loaded?.measured?.value).toBeCloseTo(10 + 10 * GRAVITY, 9);
    expect(found('KIN-002')).toEqual([]);
  });

  it('[KIN-002] counts the loom that hangs there', () => {
    const scene = steel({});
    const hang = { ...exampleHang, ...scene.hang, items: [exampleItem, exampleLoom] };
    // ( 10 + 6.4 − 20 ) / 2 lies under the deck: 6.4 m of 2 kg/m hang.
    const [finding] = found('KIN-002', { ...scene, hang });
    expect(finding?.measured?.value).toBeCloseTo(10 + (100 + 12.8) * GRAVITY, 9);
  });

  it('[UNK-001] misses the height at which steel holds it, and no plan', () => {
    const scene = steel({});
    const hang = { ...exampleHang, ...scene.hang, deadHungAt: nobodyKnows };
    const [finding] = found('UNK-001', { ...scene, hang });
    expect(finding?.facts).toMatchObject({
      what: expect.stringContaining('height at which it is dead-hung (nobody looked)'),
      blocks: expect.not.stringContaining('balance over the travel'),
    });
  });
});

describe('looms', () => {
  const loomed = (lengthM: number, fixedAtM: number, kind: 'loom' | 'deckLoom' = 'loom'): Scene => {
    const takeoff = {
      ...exampleLoom.takeoff,
      length: given(metres(lengthM)),
      fixedAt: given(metres(fixedAtM)),
    } as typeof exampleLoom.takeoff;
    return { hang: { ...exampleHang, items: [{ ...exampleLoom, kind, takeoff }] } };
  };

  it('[LOM-001] takes a loom that just reaches, up and down', () => {
    // The trim is at 10 m, the working height at 1.2 m.
    expect(found('LOM-001', loomed(5, 5))).toEqual([]);
    expect(found('LOM-001', loomed(8.8, 10))).toEqual([]);
    expect(found('LOM-001', loomed(10, 0, 'deckLoom'))).toEqual([]);
  });

  it('[LOM-001] stops a loom that is a centimetre short', () => {
    expect(found('LOM-001', loomed(4.99, 5))).toMatchObject([
      { level: 'stop', measured: { value: 5 }, facts: { where: 'trim playing' } },
    ]);
    expect(found('LOM-001', loomed(8.79, 10))).toMatchObject([
      { facts: { where: 'working height' } },
    ]);
    expect(found('LOM-001', loomed(9.99, 0, 'deckLoom'))).toMatchObject([
      { at: { item: 'loom', heightM: 10 } },
    ]);
  });

  it('[LOM-001] reaches to the end of a cue', () => {
    const cue = { number: '2', set: '7', from: metres(10), to: metres(12), releases: false };
    const cues = [{ ...cue, duration: null }];
    expect(found('LOM-001', { ...loomed(7, 5), cues })).toEqual([]);
    expect(found('LOM-001', { ...loomed(6.9, 5), cues })).toMatchObject([
      { facts: { where: 'after cue 2' } },
    ]);
  });

  it('[LOM-002] notes what lies on the deck with the batten at the working height', () => {
    // ( z + 1.2 − 20 ) / 2 is on the deck at z = 18.8 m.
    expect(found('LOM-002', loomed(20, 18.8))).toEqual([]);
    expect(found('LOM-002', loomed(20, 18.7))).toMatchObject([
      { level: 'note', measured: { value: expect.closeTo(0.1, 9), kind: 'length' } },
    ]);
    expect(found('LOM-002', loomed(30, 0, 'deckLoom'))).toEqual([]);
  });
});

describe('coupled sets', () => {
  const hang = { ...exampleHang, coupledWith: ['8'] };
  const partner = { ...exampleHang, set: '8', coupledWith: ['7'] };

  it('[COU-001] takes two sets that name each other', () => {
    expect(found('COU-001', { hang, otherHangs: [partner] })).toEqual([]);
    expect(found('COU-001')).toEqual([]);
  });

  it('[COU-001] stops a coupled hang whose partner does not hang', () => {
    expect(found('COU-001', { hang })).toMatchObject([
      { level: 'stop', facts: { hang: 'Frame', partner: '8', trouble: 'nothing hangs there' } },
    ]);
  });

  it('[COU-001] cautions where the partner does not name this set back', () => {
    const otherHangs = [{ ...partner, coupledWith: [] }];
    expect(found('COU-001', { hang, otherHangs })).toMatchObject([{ level: 'caution' }]);
  });
});
