import { describe, expect, it } from 'vitest';
import { metres } from '#quantities';
import { found } from '../example-assessment.ts';
import { examplePipe, exampleSet, given, nobodyKnows } from '../example-house.ts';
import { exampleSolution, hangingState, structured } from '../example-structure.ts';

describe('a batten that its lines do not hold', () => {
  const beam = { unstable: { code: 'tipsOver', reason: 'x' } } as const;

  it('[PIP-001] says nothing of one that hangs', () => {
    expect(found('PIP-001')).toEqual([]);
  });

  it('[PIP-001] stops it, with the reason and every state that it happens in', () => {
    const states = [
      hangingState(),
      hangingState({ name: 'after the flag', height: metres(4), lines: [], beam }),
      hangingState({ name: 'high stop', height: metres(19), lines: [], beam }),
    ];
    expect(found('PIP-001', structured(states))).toMatchObject([
      {
        level: 'stop',
        at: { set: '7', heightM: 4 },
        measured: { value: 2 },
        facts: {
          what: 'the load as a whole pulls beyond the outermost line, and no line can push',
          states: 'after the flag, high stop',
        },
      },
    ]);
  });
});

describe('bending', () => {
  const bent = (use: number, allowed = 1000, atSplice = false) =>
    structured([
      hangingState({ solution: { utilisation: { value: use, x: -3, allowed, atSplice } } }),
    ]);

  it('[PIP-002] takes a moment that is all that the pipe may take', () => {
    expect(found('PIP-002', bent(1))).toEqual([]);
  });

  it('[PIP-002] stops a thousandth more, and says place, method and wall', () => {
    const [finding] = found('PIP-002', bent(1.001));
    expect(finding).toMatchObject({
      level: 'stop',
      limit: { value: 1000, kind: 'moment' },
      limitSource: 'plastic moment over 1.67, nominal wall; house rule, example',
      facts: {
        where: 'in the pipe',
        distance: { value: 3 },
        side: 'stage right',
        method: 'plastic moment over 1.67, nominal wall',
      },
    });
    expect(finding?.measured?.value).toBeCloseTo(1001, 9);
  });

  it('[PIP-002] names a joint, which may take less', () => {
    const [finding] = found('PIP-002', bent(1.1, 500, true));
    expect(finding).toMatchObject({
      limit: { value: 500 },
      facts: { where: 'at a joint of the pipe' },
    });
    expect(finding?.working?.terms[1]).toMatchObject({ symbol: 's', value: { value: 0.5 } });
  });

  it('[PIP-002] names first yield, the design wall, and a wall that nobody said', () => {
    const solution = {
      ...exampleSolution,
      allowable: { method: 'firstYield', moment: 800, factor: 1.67 },
      utilisation: { value: 2, x: 0, allowed: 800, atSplice: false },
    } as const;
    const methodOf = (wall: 'design' | null) =>
      found('PIP-002', structured([hangingState({ solution })], { wall }))[0]?.facts['method'];
    expect(methodOf('design')).toBe('moment at first yield over 1.67, design wall');
    expect(methodOf(null)).toBe('moment at first yield over 1.67, wall not said');
  });

  it('[PIP-003] cautions above nine tenths, and leaves what is too much to PIP-002', () => {
    expect(found('PIP-003', bent(0.9))).toEqual([]);
    expect(found('PIP-003', bent(0.901))).toMatchObject([
      { level: 'caution', limit: { value: 900 }, facts: { full: { value: 1000 } } },
    ]);
    expect(found('PIP-003', bent(1))).toHaveLength(1);
    expect(found('PIP-003', bent(1.001))).toEqual([]);
  });
});

describe('doubts of the pipe', () => {
  const unlooked = {
    ...exampleSet,
    batten: { ...exampleSet.batten, pipe: { ...examplePipe, wall: null }, splices: null },
  };

  it('[PIP-005] notes joints that nobody has looked for, once for the house', () => {
    expect(found('PIP-005')).toEqual([]);
    expect(found('PIP-005', { lineSet: unlooked })).toMatchObject([
      { level: 'note', at: {}, measured: { value: 1 }, facts: { sets: '7' } },
    ]);
  });

  it('[PIP-006] cautions where nobody says which wall, once for the house', () => {
    expect(found('PIP-006')).toEqual([]);
    expect(found('PIP-006', { lineSet: unlooked })).toMatchObject([
      { level: 'caution', at: {}, measured: { value: 1 }, facts: { sets: '7' } },
    ]);
  });

  it('[PIP-006] says nothing of a set whose bending is not judged', () => {
    const { set } = structured();
    const states = [hangingState({ solution: { allowable: null, utilisation: null } })];
    const structure = { known: true, value: { ...set.structure.value, states } } as const;
    expect(found('PIP-006', { lineSet: unlooked, set: { structure } })).toEqual([]);
    expect(found('PIP-005', { lineSet: unlooked, set: { structure } })).toEqual([]);
  });
});

describe('sag', () => {
  const sagging = (valueM: number, span = 2) =>
    structured([hangingState({ solution: { sag: { x: 1, value: valueM, span } } })]);

  it('[PIP-004] takes a sag at the limit, and cautions a hair more', () => {
    // 0.5 % of 2 m.
    expect(found('PIP-004', sagging(0.01))).toEqual([]);
    expect(found('PIP-004', sagging(0.0101))).toMatchObject([
      {
        level: 'caution',
        limit: { value: 0.01, kind: 'length' },
        facts: { span: { value: 2 }, side: 'stage left' },
      },
    ]);
  });

  it('[PIP-004] says nothing of a batten with no two lines apart', () => {
    expect(found('PIP-004', sagging(0.01, 0))).toEqual([]);
    const none = structured([hangingState({ solution: { sag: null } })]);
    expect(found('PIP-004', none)).toEqual([]);
  });

  it('[UNK-001] misses the limit once for the house', () => {
    const otherSets = [{ ...exampleSet, id: '8' }];
    expect(found('UNK-001', { rules: { sagLimit: nobodyKnows }, otherSets })).toMatchObject([
      { at: {}, facts: { what: 'limit of the sag between lines (nobody looked)' } },
    ]);
  });

  it('[PIP-004] goes by the rule of the house', () => {
    expect(found('PIP-004', { ...sagging(0.03), rules: { sagLimit: given(0.02) } })).toEqual([]);
  });
});
