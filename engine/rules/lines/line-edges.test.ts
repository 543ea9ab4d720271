import { describe, expect, it } from 'vitest';
import { blocked, reckoned } from '#findings';
import { kilograms, newtons, newtonsPerMetre } from '#quantities';
import { found, type Scene } from '../example-assessment.ts';
import { full, missed } from '../example-finding.ts';
import {
  exampleHang,
  exampleLift,
  exampleSet,
  given,
  motorSet,
  nobodyKnows,
} from '../example-house.ts';
import { fittings, hangingState, lineAt, structured } from '../example-structure.ts';
import { timesWords } from './times-words.ts';

const hanging = (...tensions: readonly number[]): Scene => structured([hangingState({ tensions })]);

const lifted = (changes: Partial<typeof exampleLift>) => ({
  ...exampleSet,
  lift: { ...exampleLift, ...changes },
});

const strong = { lineSet: { ...exampleSet, lineLimit: given(newtons(90_000)) } };

const pulled = (arborN: number, battenN = 1500): Scene =>
  structured(undefined, {
    restrained: reckoned({ arborSide: newtons(arborN), battenSide: newtons(battenN) }),
  });

/** The five lines, two of them slack where said, with one load beside the fittings. */
const loaded = (load: (typeof fittings)[number]['load'], ...slack: readonly number[]): Scene =>
  structured([
    hangingState({
      tensions: [1, 2, 3, 4, 5].map((number) => (slack.includes(number) ? 0 : 1000)),
      loads: [...fittings, { of: 'Sign', load, uncertaintyKg: 1 }],
    }),
  ]);

describe('the lines, in full', () => {
  it('[LFT-001] shows what hangs on the line, the line and the tolerance', () => {
    expect(full('LFT-001', hanging(1000, 4030, 1000, 1000, 1000))).toMatchInlineSnapshot(`
      "LFT-001 stop at set 7, heightM 10
      measured 4100 force, limit 4000 force (house rule, example)
      - line: 2 count
      - distance: 2 length
      - side: stage right
      - state: playing
      - height: 10 length
      - tolerance: 50 force
      - full: 4000 force
      - others: none
      tension of line 2: T + w + t
        T = 4030 force: at the batten, from the beam on its lines
        w = 20 force: the line itself, below its loft block
        t = 50 force: tolerances, all at their worst for this line
        T_L = 4100 force: tension at the loft block
        limit 4000 force (house rule, example)
        by trade formulas C30, C31, C86
        leaves out starts and stops, which add to it"
    `);
  });

  it('[LFT-002] shows nine tenths as the limit', () => {
    expect(full('LFT-002', hanging(1000, 3630, 3600, 1000, 1000))).toMatchInlineSnapshot(`
      "LFT-002 caution at set 7, heightM 10
      measured 3700 force, limit 3600 force (90 % of the limit of a line: common practice,
          no source)
      - line: 2 count
      - distance: 2 length
      - side: stage right
      - state: playing
      - height: 10 length
      - tolerance: 50 force
      - full: 4000 force
      - others: 1 count
      tension of line 2: T + w + t
        T = 3630 force: at the batten, from the beam on its lines
        w = 20 force: the line itself, below its loft block
        t = 50 force: tolerances, all at their worst for this line
        T_L = 3700 force: tension at the loft block
        limit 3600 force (90 % of the limit of a line: common practice, no source)
        by trade formulas C30, C31, C86
        leaves out starts and stops, which add to it"
    `);
  });

  it('[LFT-003] shows the slack lines', () => {
    expect(full('LFT-003', hanging(1000, 0, 3000, 0, 1000))).toMatchInlineSnapshot(`
      "LFT-003 caution at set 7, heightM 10
      measured 2 count, limit none (common practice, no source)
      - lines: 2, 4
      - of: 5 count
      - state: playing
      - height: 10 length
      - states: playing"
    `);
  });

  it('[LFT-004] shows the load beyond the last line', () => {
    expect(full('LFT-004', loaded({ x: 4.5, mass: 110 }, 4))).toMatchInlineSnapshot(`
      "LFT-004 caution at set 7, heightM 10
      measured 110 mass, limit none (common practice, no source)
      - end: stage left
      - last: 5 count
      - slack: 4 count
      - furthest: 0.5 length
      - height: 10 length
      - states: playing"
    `);
  });

  it('[LFT-005] shows strength, ends, sheaves and factor', () => {
    // 60 000 · 0.95 · 0.94 / 8 = 6697.5 N may be carried; 8000 + 20 + 50 are.
    expect(
      full('LFT-005', { ...strong, ...hanging(1000, 8000, 1000, 1000, 1000) }),
    ).toMatchInlineSnapshot(`
      "LFT-005 stop at set 7, heightM 10
      measured 8070 force, limit 6697.5 force (house rule, example)
      - line: 2 count
      - distance: 2 length
      - side: stage right
      - state: playing
      - height: 10 length
      - tolerance: 50 force
      - left: 53580 force
      - times: 6.6
      - catalogue: 7.4
      - asked: 8
      - others: none
      what line 2 may carry by its strength: F · e · b / n
        F = 60000 force: breaking strength in the catalogue
        e = 0.95 ratio: left by its ends (example)
        b = 0.94 ratio: left by its sheaves (example)
        n = 8 count: design factor of the house (house rule, example)
        T = 6697.5 force: may carry
        limit 8070 force (worst that it carries)
        by definition of a design factor; efficiencies multiplied, which errs low
        leaves out wear, rust and broken wires, which leave less"
    `);
  });

  it('[LFT-006] shows the pull of the arbor', () => {
    expect(full('LFT-006', pulled(18_500))).toMatchInlineSnapshot(`
      "LFT-006 caution at set 7
      measured 3700 force, limit 4000 force (house rule, example)
      - lines: 5 count
      - arbor: 18500 force
      - batten: 1500 force
      equal share of a line with the batten held down: P / n
        P = 18500 force: pull of the arbor on all lines together
        n = 5 count: lift lines
        T = 3700 force: equal share
        limit 4000 force (house rule, example)
        by trade formula C37
        leaves out how the batten shares it out: some line always carries more"
    `);
  });

  it('[LFT-010] [LFT-011] show the step and the line that answers most', () => {
    const lines = [lineAt(-4, 1000), { ...lineAt(2, 1000), perTrim: newtonsPerMetre(140_000) }];
    const scene = structured([hangingState({ lines })], { trimsMeasured: false });
    expect(full('LFT-010', scene)).toMatchInlineSnapshot(`
      "LFT-010 note at the house
      measured 420 force, limit none (common practice, no source)
      - sets: 7
      - step: 0.003 length
      - line: 2 count
      - most: 7"
    `);
    expect(full('LFT-011', scene)).toMatchInlineSnapshot(`
      "LFT-011 caution at set 7
      measured 420 force, limit 400 force (a tenth of the limit of a line: ours, no source)
      - step: 0.003 length
      - line: 2 count
      - distance: 2 length
      - side: stage left"
    `);
  });
});

describe('how many times', () => {
  it('[LFT-005] is said in tenths, never rounded up, and whole without them', () => {
    expect([7.99, 8, 8.09, 8.1, 7.6, 0.99, 30].map(timesWords)).toEqual([
      '7.9',
      '8',
      '8',
      '8.1',
      '7.6',
      '0.9',
      '30',
    ]);
  });
});

describe('tension of the lines, line by line', () => {
  it('[LFT-001] counts a line that is over in two states once', () => {
    const states = ['in', 'out'].map((name) =>
      hangingState({ name, tensions: [5000, 1000, 1000, 4500, 1000] }),
    );
    expect(found('LFT-001', structured(states))).toMatchObject([
      { facts: { state: 'in', others: { value: 1, kind: 'count' } } },
    ]);
  });

  it('[LFT-001] goes by the tension at the batten where the line itself is not known', () => {
    const line = { ...lineAt(0, 3960), top: blocked(['mass of the line']) };
    const [finding] = found('LFT-001', structured([hangingState({ lines: [line] })]));
    expect(finding?.measured?.value).toBe(4010);
    expect(finding?.working?.terms[1]?.value?.value).toBe(0);
  });

  it('[UNK-001] says what is missing of the lines once, and what it blocks', () => {
    const line = { ...lineAt(0, 1000), top: blocked(['mass of the line']) };
    expect(missed(structured([hangingState({ lines: [line, line] })]))).toBe(
      'mass of the line | weight of the lines below their blocks',
    );
    const lineSet = { ...exampleSet, lineLimit: nobodyKnows };
    expect(missed({ lineSet })).toContain('tension of the lines against their limit');
    const hung = {
      withoutLoom: kilograms(100),
      loom: kilograms(0),
      uncertainty: null,
      uncertaintyRss: null,
    };
    expect(missed({ set: { hung: reckoned(hung) } })).toContain('; tension of the lines');
    expect(missed({ set: { hung: blocked(['mass of the lamp']) } })).toBe(
      'mass of the lamp | mass that hangs',
    );
  });
});

describe('strength of the lines, where something is not known', () => {
  const unknown = (strength: ReturnType<typeof lineAt>['strength']) =>
    structured([hangingState({ lines: [{ ...lineAt(0, 60_000), strength }, lineAt(2, 100)] })]);

  it('[LFT-005] judges no line whose strength is not known, or that carries nothing', () => {
    expect(found('LFT-005', { ...strong, ...unknown(blocked(['breaking strength'])) })).toEqual([]);
    const { strength } = lineAt(0, 60_000);
    const none = strength.known ? reckoned({ ...strength.value, factor: null }) : strength;
    expect(found('LFT-005', { ...strong, ...unknown(none) })).toEqual([]);
  });

  it('[LFT-005] counts the other lines that are too weak as well', () => {
    const scene = { ...strong, ...hanging(9000, 1000, 1000, 1000, 8000) };
    expect(found('LFT-005', scene)).toMatchObject([
      { facts: { line: { value: 1 }, others: { value: 1 } } },
    ]);
  });

  it('[LFT-005] takes the line that has least to spare, and not the one that carries most', () => {
    const weak = lineAt(2, 7000);
    const strength = weak.strength.known
      ? reckoned({ ...weak.strength.value, breaking: newtons(30_000), factor: 26_790 / 7020 })
      : weak.strength;
    const lines = [lineAt(-2, 9000), { ...weak, strength }];
    expect(found('LFT-005', { ...strong, ...structured([hangingState({ lines })]) })).toMatchObject(
      [{ facts: { line: { value: 2 }, others: { value: 1 } } }],
    );
  });

  it('[UNK-001] says once what a missing strength blocks', () => {
    const line = { ...lineAt(0, 1000), strength: blocked(['efficiency of the ends']) };
    const states = [hangingState({ lines: [line, line] })];
    expect(missed(structured(states))).toBe('efficiency of the ends | design factor of the lines');
    expect(missed({ rules: { lineDesignFactor: nobodyKnows } })).toContain(
      'design factor of the lines',
    );
  });

  it.each([
    ['cable', { cable: { ...exampleLift.cable, breakingStrength: nobodyKnows } }],
    ['diameter', { cable: { ...exampleLift.cable, diameter: nobodyKnows } }],
    ['ends', { cable: { ...exampleLift.cable, termination: null } }],
    ['loft block', { loftBlock: { ...exampleLift.loftBlock, sheaveDiameter: nobodyKnows } }],
    ['head block', { headBlock: { ...exampleLift.headBlock, sheaveDiameter: nobodyKnows } }],
  ] as const)('[UNK-001] leaves what the house does not know of the %s to the house', (_, lift) => {
    const line = { ...lineAt(0, 1000), strength: blocked(['what a line is made of']) };
    const scene = { ...structured([hangingState({ lines: [line] })]), lineSet: lifted(lift) };
    expect(missed(scene)).not.toContain('what a line is made of');
  });
});

describe('the batten held down, where something is not known', () => {
  it('[LFT-006] judges no set without an arbor, and none without lines', () => {
    const motor = { ...pulled(90_000), lineSet: motorSet };
    expect(found('LFT-006', { ...motor, hang: { ...exampleHang, bricks: null } })).toEqual([]);
    const { set } = structured(undefined, {
      lines: [],
      restrained: reckoned({ arborSide: newtons(90_000), battenSide: newtons(1) }),
    });
    expect(found('LFT-006', { set })).toEqual([]);
    const unknown = { lines: [], restrained: blocked(['carriage of the arbor']) };
    expect(missed(structured(undefined, unknown))).toBe('');
  });

  it('[UNK-001] says what a missing limit or pull blocks', () => {
    const lineSet = { ...exampleSet, lineLimit: nobodyKnows };
    expect(missed({ ...pulled(1600), lineSet })).toContain(
      'tension of the lines with the batten held down',
    );
    expect(missed({ ...pulled(1500), lineSet })).not.toContain('held down');
    const unknown = structured(undefined, { restrained: blocked(['carriage of the arbor']) });
    expect(missed(unknown)).toBe(
      'carriage of the arbor | tension of the lines with the batten held down',
    );
  });
});

describe('lines that nobody has measured, set by set', () => {
  const unmeasured = (perTrimNm: number) =>
    structured(
      [hangingState({ lines: [{ ...lineAt(2, 1000), perTrim: newtonsPerMetre(perTrimNm) }] })],
      { trimsMeasured: false },
    );

  it('[LFT-010] judges no set whose lines cannot be worked out', () => {
    const set = { structure: blocked(['stretch of the lift lines']) };
    expect(found('LFT-010', { set })).toEqual([]);
  });

  it('[LFT-010] lists no set that was measured', () => {
    const otherSets = [{ ...exampleSet, id: '8' }];
    expect(found('LFT-010', { ...unmeasured(1500), otherSets })).toMatchObject([
      { facts: { sets: '7' } },
    ]);
  });

  it('[LFT-011] takes the line that answers most', () => {
    const lines = [150_000, 200_000, 180_000].map((perTrimNm, index) => ({
      ...lineAt(index, 1000),
      perTrim: newtonsPerMetre(perTrimNm),
    }));
    const scene = structured([hangingState({ lines })], { trimsMeasured: false });
    expect(found('LFT-011', scene)).toMatchObject([{ facts: { line: { value: 2 } } }]);
  });
});
