import { describe, expect, it } from 'vitest';
import { blocked, type Reckoned, reckoned } from '#findings';
import { kilograms, metres, type Newtons, newtons, newtonsPerMetre } from '#quantities';
import { found, type Scene } from '../example-assessment.ts';
import { exampleSet, given, motorSet, nobodyKnows } from '../example-house.ts';
import {
  bareState,
  EXAMPLE_XS,
  fittings,
  hangingState,
  lineAt,
  squareTurn,
  structured,
} from '../example-structure.ts';

/** Of each 1000 N at the batten, 20 N of line and 50 N of tolerance come on top. */
const ON_TOP_N = 70;

const worstLineAt = (worstN: number, others = 1000): Scene =>
  structured([hangingState({ tensions: [others, 1000, worstN - ON_TOP_N, 1000, 1000] })]);

const whatIs = (scene: Scene) => found('UNK-001', scene)[0]?.facts['what'];

describe('tension of the lines', () => {
  it('[LFT-001] takes a line that is at its limit with its own weight and its tolerance', () => {
    expect(found('LFT-001', worstLineAt(4000))).toEqual([]);
  });

  it('[LFT-001] stops a newton more, and names line, place, state and limit', () => {
    const [finding, ...more] = found('LFT-001', worstLineAt(4001));
    expect(more).toEqual([]);
    expect(finding).toMatchObject({
      level: 'stop',
      at: { set: '7', heightM: 10 },
      limit: { value: 4000, kind: 'force' },
      limitSource: 'house rule, example',
      facts: {
        line: { value: 3 },
        distance: 'on',
        side: 'the centre line',
        state: 'playing',
        tolerance: { value: 50 },
        others: 'none',
      },
    });
    expect(finding?.measured?.value).toBeCloseTo(4001, 9);
    expect(finding?.working?.terms.map(({ value }) => value?.value)).toEqual([3931, 20, 50]);
  });

  it('[LFT-001] names the worst of several states and lines, and counts the others', () => {
    const states = [
      hangingState({ tensions: [4500, 1000, 1000, 1000, 1000], name: 'in' }),
      hangingState({ tensions: [4600, 1000, 1000, 4100, 1000], name: 'out' }),
    ];
    expect(found('LFT-001', structured(states))).toMatchObject([
      {
        facts: {
          line: { value: 1 },
          distance: { value: 4, kind: 'length' },
          side: 'stage right',
          state: 'out',
          others: { value: 1 },
        },
      },
    ]);
  });

  it('[LFT-001] judges the bare batten, and what is left after a release', () => {
    const tensions = [5000, 0, 0, 0, 0];
    const bare = hangingState({ kind: 'bare', name: 'bare', tensions });
    const released = hangingState({ kind: 'released', name: 'after the snow', tensions });
    expect(found('LFT-001', structured([bare]))).toHaveLength(1);
    expect(found('LFT-001', structured([released]))).toMatchObject([
      { facts: { state: 'after the snow' } },
    ]);
  });

  it('[LFT-002] cautions above nine tenths, and leaves what is too much to LFT-001', () => {
    expect(found('LFT-002', worstLineAt(3600))).toEqual([]);
    expect(found('LFT-002', worstLineAt(3601))).toMatchObject([
      { level: 'caution', limit: { value: 3600 }, facts: { full: { value: 4000 } } },
    ]);
    expect(found('LFT-002', worstLineAt(4000))).toHaveLength(1);
    expect(found('LFT-002', worstLineAt(4001))).toEqual([]);
  });

  it('[UNK-001] misses the limit of a line, its weight and a tolerance', () => {
    const lineSet = { ...exampleSet, lineLimit: nobodyKnows };
    expect(whatIs({ lineSet })).toBe('limit of a lift line (nobody looked)');
    const line = { ...lineAt(0, 1000), top: blocked(['mass of the line']) };
    expect(whatIs(structured([hangingState({ lines: [line] })]))).toBe('mass of the line');
    const hung = reckoned({
      withoutLoom: kilograms(100),
      loom: kilograms(0),
      uncertainty: null,
      uncertaintyRss: null,
    });
    const [finding] = found('UNK-001', { set: { hung } });
    expect(finding?.facts['what']).toBe('tolerance of a mass that hangs');
    expect(finding?.facts['blocks']).toContain('tension of the lines');
  });

  it('[LFT-001] says that a tolerance is not known, and counts none', () => {
    const lines = [lineAt(0, 3980, null), lineAt(2, 3981, null)];
    expect(found('LFT-001', structured([hangingState({ lines })]))).toMatchObject([
      { measured: { value: 4001 }, facts: { tolerance: 'not known', line: { value: 2 } } },
    ]);
  });
});

describe('slack lines', () => {
  const tensions = [1000, 0, 3000, 0, 1000];

  it('[LFT-003] takes a line that still pulls a little', () => {
    expect(found('LFT-003', structured([hangingState({ tensions: [1, 1, 1, 1, 1] })]))).toEqual([]);
  });

  it('[LFT-003] names the slack lines of the worst state, and every state with one', () => {
    const states = [
      hangingState({ name: 'in', tensions: [1000, 1000, 1000, 0, 1000] }),
      hangingState({ name: 'out', tensions }),
    ];
    expect(found('LFT-003', structured(states))).toMatchObject([
      {
        level: 'caution',
        measured: { value: 2, kind: 'count' },
        facts: { lines: '2, 4', of: { value: 5 }, state: 'out', states: 'in, out' },
      },
    ]);
  });

  it('[LFT-003] finds the bare batten slack', () => {
    const bare = hangingState({ name: 'bare', kind: 'bare', tensions });
    expect(found('LFT-003', structured([bare]))).toMatchObject([{ facts: { states: 'bare' } }]);
  });

  const beyond = (load: (typeof fittings)[number]['load'], slackAt = 3) =>
    structured([
      hangingState({
        tensions: [1000, 1000, 1000, 1000, 3000].map((one, at) => (at === slackAt ? 0 : one)),
        loads: [...fittings, { of: 'Sign', load, uncertaintyKg: 1 }],
      }),
    ]);

  it('[LFT-004] names the line that a load beyond the last one makes slack', () => {
    const scene = beyond({ x: 4.8, mass: 110 });
    const [finding] = found('LFT-004', scene);
    expect(finding).toMatchObject({
      level: 'caution',
      measured: { value: 110, kind: 'mass' },
      facts: { end: 'stage left', last: { value: 5 }, slack: { value: 4 }, states: 'playing' },
    });
    expect(finding?.facts['furthest']).toMatchObject({ value: expect.closeTo(0.8, 9) });
    expect(found('LFT-003', scene)).toEqual([]);
  });

  it('[LFT-004] counts of a spread load what lies beyond, at either end', () => {
    const [finding] = found('LFT-004', beyond({ from: -5, to: -3, mass: 100 }, 1));
    expect(finding).toMatchObject({
      measured: { value: 50 },
      facts: { end: 'stage right', last: { value: 1 }, slack: { value: 2 } },
    });
    expect(found('LFT-004', beyond({ from: 4.5, to: 5, mass: 30 }))).toMatchObject([
      { measured: { value: 30 }, facts: { furthest: { value: 1 } } },
    ]);
  });

  it('[LFT-004] leaves a slack line further in, or without a load beyond, to LFT-003', () => {
    for (const scene of [beyond({ x: 4.8, mass: 110 }, 2), beyond({ x: 4, mass: 110 })]) {
      expect(found('LFT-004', scene)).toEqual([]);
      expect(found('LFT-003', scene)).toHaveLength(1);
    }
    expect(found('LFT-004', beyond({ x: 4.8, mass: 110 }, 9))).toEqual([]);
  });
});

describe('strength of the lines', () => {
  // 60 kN, of which ends and sheaves leave 0.95 · 0.94: eight times 6697.5 N.
  const leftN = 60_000 * 0.95 * 0.94;
  const strong = { lineSet: { ...exampleSet, lineLimit: given(newtons(9000)) } };

  it('[LFT-005] takes a line that holds as many times as the house asks', () => {
    expect(found('LFT-005', { ...strong, ...worstLineAt(leftN / 8) })).toEqual([]);
  });

  it('[LFT-005] stops a newton more, and says both factors, never rounded up', () => {
    const [finding] = found('LFT-005', { ...strong, ...worstLineAt(leftN / 8 + 1) });
    expect(finding).toMatchObject({
      level: 'stop',
      facts: { times: '7.9', catalogue: '8.9', asked: '8', line: { value: 3 }, others: 'none' },
    });
    expect(finding?.limit?.value).toBeCloseTo(leftN / 8, 9);
  });

  it('[UNK-001] misses the factor of the house once, and the strength of a line', () => {
    const findings = found('UNK-001', { rules: { lineDesignFactor: nobodyKnows } });
    expect(findings).toMatchObject([
      { at: {}, facts: { what: 'design factor of the lift lines (nobody looked)' } },
    ]);
    const line = { ...lineAt(0, 1000), strength: blocked(['breaking strength']) };
    expect(whatIs(structured([hangingState({ lines: [line] })]))).toBe('breaking strength');
  });
});

describe('the batten held down', () => {
  const held = (restrained: Reckoned<{ arborSide: Newtons; battenSide: Newtons }>): Scene =>
    structured(undefined, { restrained });
  const arborPulls = (arborN: number) =>
    held(reckoned({ arborSide: newtons(arborN), battenSide: newtons(1500) }));

  it('[LFT-006] takes an arbor whose equal share is nine tenths of the limit', () => {
    expect(found('LFT-006', arborPulls(5 * 3600))).toEqual([]);
  });

  it('[LFT-006] leaves a batten that carries more flying than held down to LFT-001', () => {
    const sides = { arborSide: newtons(5 * 5000), battenSide: newtons(5 * 5000) };
    expect(found('LFT-006', held(reckoned(sides)))).toEqual([]);
    const more = { ...sides, battenSide: newtons(5 * 5000 - 1) };
    expect(found('LFT-006', held(reckoned(more)))).toHaveLength(1);
  });

  it('[LFT-006] cautions above, and stops past the limit of a line', () => {
    expect(found('LFT-006', arborPulls(5 * 3601))).toMatchObject([
      {
        level: 'caution',
        measured: { value: 3601 },
        limit: { value: 4000 },
        facts: { lines: { value: 5 }, arbor: { value: 18_005 }, batten: { value: 1500 } },
      },
    ]);
    expect(found('LFT-006', arborPulls(5 * 4000))).toMatchObject([{ level: 'caution' }]);
    expect(found('LFT-006', arborPulls(5 * 4001))).toMatchObject([{ level: 'stop' }]);
  });

  it('[UNK-001] misses what the arbor pulls with, where there is one', () => {
    const unknown = held(blocked(['carriage of the arbor']));
    expect(whatIs(unknown)).toBe('carriage of the arbor');
    const onMotor = found('UNK-001', { ...unknown, lineSet: motorSet, hang: null });
    expect(onMotor).toEqual([]);
  });
});

describe('blocks', () => {
  const rated = (loftN: number, headN: number) => ({
    ...exampleSet,
    lift: {
      ...exampleSet.lift,
      loftBlock: { ...exampleSet.lift.loftBlock, rated: given(newtons(loftN)) },
      headBlock: { ...exampleSet.lift.headBlock, rated: given(newtons(headN)) },
    },
  });
  const loftN = 1070 * Math.SQRT2;

  it('[BLK-001] takes a loft block at its rating, tolerance in it, and stops a newton more', () => {
    expect(found('BLK-001', { lineSet: rated(loftN, 30_000) })).toEqual([]);
    const [finding] = found('BLK-001', { lineSet: rated(loftN - 1, 30_000) });
    expect(finding).toMatchObject({
      level: 'stop',
      at: { heightM: 10 },
      facts: { block: 'loft block of line 1', state: 'playing', others: { value: 4 } },
    });
    expect(finding?.measured?.value).toBeCloseTo(loftN, 9);
  });

  it('[BLK-001] judges the head block by what all lines pull on it', () => {
    const headN = 5000 * Math.SQRT2;
    expect(found('BLK-001', { lineSet: rated(6000, headN) })).toEqual([]);
    expect(found('BLK-001', { lineSet: rated(6000, headN - 1) })).toMatchObject([
      { facts: { block: 'head block', others: 'none' } },
    ]);
  });

  it('[BLK-002] cautions above nine tenths of a rating', () => {
    expect(found('BLK-002', { lineSet: rated(loftN / 0.9, 30_000) })).toEqual([]);
    expect(found('BLK-002', { lineSet: rated(loftN / 0.9 - 1, 30_000) })).toMatchObject([
      { level: 'caution', facts: { block: 'loft block of line 1' } },
    ]);
    expect(found('BLK-002', { lineSet: rated(loftN - 1, 30_000) })).toEqual([]);
  });

  it('[BLK-001] takes a slack line without a pull on its block', () => {
    const line = { ...lineAt(0, 0, 0), top: reckoned(newtons(0)) };
    const slack = { ...line, loftBlock: reckoned(squareTurn(0)) };
    const states = [hangingState({ lines: [slack] })];
    expect(found('BLK-001', structured(states))).toEqual([]);
  });

  it('[UNK-001] misses what the blocks carry', () => {
    const lines = EXAMPLE_XS.map((x) => ({
      ...lineAt(x, 1000),
      loftBlock: blocked(['place of the head blocks']),
    }));
    const headBlock = blocked(['place of the head blocks', 'mass of the hand line']);
    const states = [hangingState({ lines })];
    expect(whatIs(structured(states, { headBlock }))).toBe(
      'place of the head blocks; mass of the hand line',
    );
  });
});

describe('lines that nobody has measured', () => {
  const unmeasured = { trimsMeasured: false };
  const soft = structured(undefined, unmeasured);
  // 3 mm move a tenth of 4000 N at 133 333 N/m.
  const stiff = (perTrimNm: number) => {
    const line = { ...lineAt(2, 1000), perTrim: newtonsPerMetre(perTrimNm) };
    return structured([hangingState({ lines: [lineAt(-4, 1000), line] })], unmeasured);
  };

  it('[LFT-010] is said once for the house, with what a step of a turnbuckle moves at most', () => {
    expect(found('LFT-010')).toEqual([]);
    const findings = found('LFT-010', soft);
    expect(findings).toMatchObject([
      { level: 'note', at: {}, facts: { sets: '7', most: '7', line: { value: 1 } } },
    ]);
    expect(findings[0]?.measured?.value).toBeCloseTo(1500 * 0.003, 9);
    const customary = found('LFT-010', { ...soft, house: { units: 'customary' } });
    expect(customary[0]?.measured?.value).toBeCloseTo(1500 * 0.003175, 9);
  });

  it('[LFT-011] cautions where a step of a turnbuckle moves a tenth of the limit', () => {
    expect(found('LFT-011', stiff(133_333))).toEqual([]);
    expect(found('LFT-011', stiff(133_334))).toMatchObject([
      { level: 'caution', facts: { line: { value: 2 }, distance: { value: 2 } } },
    ]);
  });

  it('[LFT-011] says nothing of lines that are measured, or of no known limit', () => {
    const { set } = stiff(200_000);
    expect(found('LFT-011', { set, lineSet: { ...exampleSet, lineLimit: nobodyKnows } })).toEqual(
      [],
    );
    const line = { ...lineAt(2, 1000), perTrim: newtonsPerMetre(200_000) };
    expect(found('LFT-011', structured([hangingState({ lines: [line] })]))).toEqual([]);
  });
});

describe('a batten without a beam', () => {
  it('[LFT-001] has no lines to judge', () => {
    const beam = { unstable: { code: 'tipsOver', reason: 'a load at the end' } } as const;
    const states = [{ ...bareState, height: metres(2), lines: [], beam }];
    for (const code of ['LFT-001', 'LFT-002', 'LFT-003', 'LFT-004', 'LFT-005'] as const) {
      expect(found(code, structured(states)), code).toEqual([]);
    }
  });
});
