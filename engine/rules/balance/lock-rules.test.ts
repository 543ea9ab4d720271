import { describe, expect, it } from 'vitest';
import { GRAVITY, metres, newtons, seconds } from '#quantities';
import {
  balanceSet,
  curveOf,
  found,
  type Node,
  type Scene,
  trimOf,
} from '../example-assessment.ts';
import { exampleHang, given, nobodyKnows, playingTrim } from '../example-house.ts';

const trimAt = (imbalanceN: number, belowN = imbalanceN): Scene => ({
  plan: { trims: [trimOf(playingTrim, [10, imbalanceN, belowN])] },
});

const along = (...nodes: readonly Node[]): Scene => ({ plan: { curve: curveOf(nodes) } });

describe('held by the lock at a trim', () => {
  it('[BAL-001] takes 200 N either way, the limit of this lock', () => {
    expect(found('BAL-001', trimAt(200))).toEqual([]);
    expect(found('BAL-001', trimAt(-200))).toEqual([]);
  });

  it('[BAL-001] stops 200.001 N either way', () => {
    expect(found('BAL-001', trimAt(200.001))).toMatchObject([
      {
        level: 'stop',
        at: { set: '7', heightM: 10 },
        measured: { value: 200.001, kind: 'imbalance' },
        limit: { value: 200, kind: 'force' },
        limitSource: 'house rule, example',
        facts: { trim: 'playing', height: { value: 10, kind: 'length' } },
      },
    ]);
    expect(found('BAL-001', trimAt(-200.001))).toHaveLength(1);
  });

  it('[BAL-001] judges a trim at lift-off with the piece in the air', () => {
    expect(found('BAL-001', trimAt(25, -1400))).toEqual([]);
  });

  it('[BAL-001] shows a working that adds up', () => {
    const [finding] = found('BAL-001', trimAt(300));
    const values = finding?.working?.terms.map(({ value }) => value?.value ?? Number.NaN) ?? [];
    const [battenKg = 0, carriedKg = 0, linesKg = 0, arborKg = 0] = values;
    expect(GRAVITY * (battenKg + carriedKg + linesKg - arborKg)).toBeCloseTo(300, 9);
    // Five lines of 0.16 kg/m; the arbor's end at 20.3 − 9 m, the wire's at 10.6 m.
    expect(linesKg).toBeCloseTo(5 * 0.16 * (11.3 - 10.6), 9);
  });

  it('[BAL-001] leaves a set that steel holds to KIN-002', () => {
    const hang = { ...exampleHang, deadHungAt: given(metres(10)) };
    expect(found('BAL-001', { ...trimAt(300), hang })).toEqual([]);
  });

  it('[UNK-001] misses the limit of the lock once for the house', () => {
    const findings = found('UNK-001', { ...trimAt(300), rules: { lockLimit: nobodyKnows } });
    expect(findings).toMatchObject([
      { at: {}, facts: { what: 'limit of the rope lock (nobody looked)' } },
    ]);
  });
});

describe('held by the lock elsewhere', () => {
  // Free from 1.2 m to the trim at 10 m.
  it('[BAL-002] takes 200 N on the way, and cautions past it', () => {
    expect(found('BAL-002', along([1, 0], [5, 200], [19, -100]))).toEqual([]);
    expect(found('BAL-002', along([1, 0], [5, 200.001], [19, -100]))).toMatchObject([
      { level: 'caution', at: { heightM: 5 }, facts: { where: 'on the way' } },
    ]);
  });

  it('[BAL-002] looks at both sides of a jump that lies between two trims', () => {
    expect(found('BAL-002', along([1, 0], [5, -201, 100], [19, -100]))).toMatchObject([
      { measured: { value: -201 } },
    ]);
  });

  it('[BAL-002] does not look above the highest trim', () => {
    expect(found('BAL-002', along([1, 0], [12, 0], [19, -500]))).toEqual([]);
  });

  it('[BAL-002] stops past the lock at the working height, where it rests', () => {
    const atWorking = (imbalanceN: number) => along([1, imbalanceN], [1.2, imbalanceN], [19, 0]);
    expect(found('BAL-002', atWorking(200))).toEqual([]);
    expect(found('BAL-002', atWorking(201))).toMatchObject([
      { level: 'stop', facts: { where: 'working height' } },
    ]);
  });

  it('[BAL-002] stops past the lock where a cue leaves the set', () => {
    const cue = {
      number: '4',
      set: '7',
      from: metres(10),
      to: metres(5),
      duration: seconds(6),
      releases: false,
    };
    const scene = (imbalanceN: number) => ({
      ...along([1, 0], [5, imbalanceN], [10, 0], [19, -100]),
      cues: [cue],
    });
    expect(found('BAL-002', scene(200))).toEqual([]);
    expect(found('BAL-002', scene(201))).toMatchObject([
      { level: 'stop', facts: { where: 'after cue 4' } },
    ]);
  });

  it('[BAL-002] leaves what is past the lock at the trim itself to BAL-001', () => {
    const scene = along([1, 0], [10, -300], [19, -300]);
    expect(found('BAL-002', scene)).toEqual([]);
  });

  it('[BAL-002] cautions for an empty set that its pipe weight does not balance', () => {
    const bareOf = (mostN: number): Scene => ({
      hang: null,
      set: {
        bare: {
          known: true,
          value: {
            set: { ...balanceSet, items: [] },
            curve: curveOf([
              [1, mostN],
              [19, 0],
            ]),
          },
        },
      },
    });
    expect(found('BAL-002', bareOf(200))).toEqual([]);
    expect(found('BAL-002', bareOf(201))).toMatchObject([
      { level: 'caution', facts: { where: 'empty' } },
    ]);
  });
});

describe('held by the lock below lift-off', () => {
  const landing = (lowN: number, underN: number): Scene => ({
    plan: {
      curve: curveOf([
        [1, lowN],
        [5, underN, 25],
        [19, -60],
      ]),
      liftOff: metres(5),
      freeRange: { from: metres(5), to: metres(10) },
    },
  });

  it('[BAL-003] takes 200 N all the way in', () => {
    expect(found('BAL-003', landing(-200, -50))).toEqual([]);
  });

  it('[BAL-003] cautions past it, where it is worst and from where it is past', () => {
    expect(found('BAL-003', landing(-300, -100))).toMatchObject([
      {
        level: 'caution',
        at: { heightM: 1 },
        measured: { value: -300, kind: 'imbalance' },
        // Half way from −100 N at 5 m to −300 N at 1 m.
        facts: { passes: { value: 3 }, liftOff: { value: 5 } },
      },
    ]);
  });

  it('[BAL-003] sees a jump that is past the lock only a hair below lift-off', () => {
    expect(found('BAL-003', landing(0, -1400))).toMatchObject([
      { at: { heightM: 5 }, facts: { passes: { value: 5 } } },
    ]);
  });

  it('[BAL-003] has nothing to say of what would be under the low stop', () => {
    const plan = { liftOff: metres(5), freeRange: { from: metres(5), to: metres(10) } };
    const curve = curveOf([
      [1, -900, 0],
      [5, -50, 25],
      [19, -60],
    ]);
    expect(found('BAL-003', { plan: { ...plan, curve } })).toEqual([]);
  });

  it('[BAL-003] has nothing to say of a set that never lands', () => {
    expect(found('BAL-003', along([1, -900], [1.1, 0], [19, 0]))).toEqual([]);
  });
});

describe('held by the lock at its worst', () => {
  const within = (imbalanceN: number, toleranceN: number): Scene =>
    along([1, 0, 0, 0], [5, imbalanceN, imbalanceN, toleranceN], [19, 0, 0, 0]);

  it('[BAL-004] takes imbalance and tolerance together up to the limit', () => {
    expect(found('BAL-004', within(150, 50))).toEqual([]);
    expect(found('BAL-004', within(-150, 50))).toEqual([]);
  });

  it('[BAL-004] cautions past it, on the side on which the set lies', () => {
    expect(found('BAL-004', within(-150, 51))).toMatchObject([
      {
        level: 'caution',
        measured: { value: -201, kind: 'imbalance' },
        facts: { nominal: { value: -150 }, tolerance: { value: 51 } },
      },
    ]);
    expect(found('BAL-004', within(150, 51))).toMatchObject([{ measured: { value: 201 } }]);
  });

  it('[BAL-004] leaves a set that is past the lock as listed to BAL-002', () => {
    expect(found('BAL-004', within(201, 51))).toEqual([]);
  });

  it('[UNK-001] misses a tolerance that nobody has stated', () => {
    const [finding] = found('UNK-001', { plan: { doubtsUnsaid: ['tolerance of the batten'] } });
    expect(finding?.facts).toMatchObject({
      what: 'tolerance of the batten',
      blocks: 'imbalance at its worst',
    });
  });
});

describe('held by the lock after a release', () => {
  const released = (atTrimN: number): Scene => ({
    plan: {
      after: [
        {
          how: 'snow falls',
          set: balanceSet,
          curve: curveOf([
            [1, 0],
            [10, atTrimN],
            [19, 0],
          ]),
        },
      ],
    },
  });

  it('[BAL-007] takes 200 N at the trim', () => {
    expect(found('BAL-007', released(-200))).toEqual([]);
  });

  it('[BAL-007] stops past it, and says what has left', () => {
    expect(found('BAL-007', released(-201))).toMatchObject([
      { level: 'stop', measured: { value: -201 }, facts: { how: 'snow falls' } },
    ]);
  });

  it('[BAL-007] looks where a cue leaves the set, and not between', () => {
    const scene = {
      plan: {
        after: [
          {
            how: 'it falls',
            set: balanceSet,
            curve: curveOf([
              [1, 0],
              [5, -300],
              [6, 0],
              [19, 0],
            ]),
          },
        ],
      },
    };
    expect(found('BAL-007', scene)).toEqual([]);
    const cue = { number: '9', set: '7', from: metres(5), to: metres(10), releases: true };
    const cues = [{ ...cue, duration: null }];
    expect(found('BAL-007', { ...scene, cues })).toMatchObject([{ at: { heightM: 5 } }]);
  });
});

describe('what lies behind the numbers', () => {
  it('[BAL-008] notes a free travel on which the set grows arbor heavy all the way out', () => {
    const [finding] = found('BAL-008', along([1, 40], [19, -60]));
    expect(finding).toMatchObject({ level: 'note', facts: { from: { value: 1.2 } } });
    // 100 N over 18 m, of which the free travel is 8.8 m.
    expect(finding?.measured?.value).toBeCloseTo((100 * 8.8) / 18, 9);
  });

  it('[BAL-008] is quiet where the set is level, settles, or jumps up on the way', () => {
    expect(found('BAL-008', along([1, 40], [19, 40]))).toEqual([]);
    expect(found('BAL-008', along([1, 40], [5, 30], [19, 31]))).toEqual([]);
    expect(found('BAL-008', along([1, 40], [5, 30, 50], [19, -60]))).toEqual([]);
    expect(found('BAL-008', along([1, 40], [5, 30], [19, -60]))).toHaveLength(1);
  });

  const rubbing = (imbalanceN: number, frictionN: number): Scene => ({
    plan: {
      trims: [trimOf(playingTrim, [10, imbalanceN])],
      friction: { known: true, value: { force: newtons(frictionN), measured: false } },
    },
  });

  it('[BAL-009] notes an imbalance that friction holds still, also exactly', () => {
    expect(found('BAL-009', rubbing(-50, 50))).toMatchObject([
      {
        level: 'note',
        measured: { value: 50, kind: 'force' },
        facts: { basis: 'assumed by the house', imbalance: { value: -50, kind: 'imbalance' } },
      },
    ]);
  });

  it('[BAL-009] is quiet where friction is less, and where nothing is hidden', () => {
    expect(found('BAL-009', rubbing(-50.001, 50))).toEqual([]);
    expect(found('BAL-009', rubbing(0, 50))).toEqual([]);
  });

  it('[UNK-001] misses a friction that nobody knows', () => {
    const friction = { known: false, needs: ['share of friction'] } as const;
    expect(found('UNK-001', { plan: { friction } })).toMatchObject([
      { facts: { what: 'share of friction', blocks: 'friction' } },
    ]);
  });
});
