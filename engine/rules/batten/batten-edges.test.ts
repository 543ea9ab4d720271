import { describe, expect, it } from 'vitest';
import type { StructureState } from '#assessment';
import { metres } from '#quantities';
import { found } from '../example-assessment.ts';
import { full, missed } from '../example-finding.ts';
import { examplePipe, exampleSet, nobodyKnows } from '../example-house.ts';
import { exampleSolution, hangingState, structured } from '../example-structure.ts';
import type { Solution } from './solved-states.ts';

const bent = (...uses: readonly Partial<Solution>[]) =>
  structured(
    uses.map((solution, index) =>
      hangingState({ name: `state ${index}`, height: metres(index), solution }),
    ),
  );

const use = (value: number, allowed = 1000, atSplice = false) => ({
  utilisation: { value, x: -3, allowed, atSplice },
});

const sag = (value: number, span: number) => ({ sag: { x: 1, value, span } });

const unstable = (code: string): StructureState['beam'] =>
  ({ unstable: { code, reason: 'x' } }) as StructureState['beam'];

describe('the batten, in full', () => {
  it('[PIP-001] shows where the lines do not hold it', () => {
    const states = [hangingState({ lines: [], beam: unstable('tipsOver') })];
    expect(full('PIP-001', structured(states))).toMatchInlineSnapshot(`
      "PIP-001 stop at set 7, heightM 10
      measured 1 count, limit none (equilibrium of the batten on its lines)
      - what: the load as a whole pulls beyond the outermost line, and no line can push
      - height: 10 length
      - states: playing"
    `);
  });

  it('[PIP-002] shows moment, joint and pipe', () => {
    expect(full('PIP-002', bent(use(1.2, 500, true)))).toMatchInlineSnapshot(`
      "PIP-002 stop at set 7, heightM 0
      measured 600 moment, limit 500 moment (plastic moment over 1.67, nominal wall; house
          rule, example)
      - where: at a joint of the pipe
      - distance: 3 length
      - side: stage right
      - state: state 0
      - height: 0 length
      - full: 500 moment
      - method: plastic moment over 1.67, nominal wall
      bending of the batten against what it may take: M / ( s · M_a )
        M = 600 moment: bending moment, from the beam on its lines
        s = 0.5 ratio: share that the joint takes
        M_a = 1000 moment: plastic moment over 1.67, nominal wall (plastic moment over 1.67,
          nominal wall; house rule, example)
        u = 1.2 ratio: use of the pipe
        limit 1 ratio (plastic moment over 1.67, nominal wall; house rule, example)
        by trade formula C32
        leaves out tolerances of the masses, starts and stops, clamps and holes: each leaves
          less to spare"
    `);
  });

  it('[PIP-003] shows nine tenths as the limit', () => {
    expect(full('PIP-003', bent(use(0.95)))).toMatchInlineSnapshot(`
      "PIP-003 caution at set 7, heightM 0
      measured 950 moment, limit 900 moment (90 % of it: common practice, no source)
      - where: in the pipe
      - distance: 3 length
      - side: stage right
      - state: state 0
      - height: 0 length
      - full: 1000 moment
      - method: plastic moment over 1.67, nominal wall
      bending of the batten against what it may take: M / ( s · M_a )
        M = 950 moment: bending moment, from the beam on its lines
        s = 1 ratio: share that the joint takes
        M_a = 1000 moment: plastic moment over 1.67, nominal wall (plastic moment over 1.67,
          nominal wall; house rule, example)
        u = 0.95 ratio: use of the pipe
        limit 0.9 ratio (90 % of it: common practice, no source)
        by trade formula C32
        leaves out tolerances of the masses, starts and stops, clamps and holes: each leaves
          less to spare"
    `);
  });

  it('[PIP-004] shows sag and span', () => {
    expect(full('PIP-004', bent(sag(0.02, 2)))).toMatchInlineSnapshot(`
      "PIP-004 caution at set 7, heightM 0
      measured 0.02 length, limit 0.01 length (house rule, example)
      - distance: 1 length
      - side: stage left
      - state: state 0
      - height: 0 length
      - span: 2 length"
    `);
  });

  it('[PIP-005] [PIP-006] list the sets', () => {
    const batten = { ...exampleSet.batten, pipe: { ...examplePipe, wall: null }, splices: null };
    const lineSet = { ...exampleSet, batten };
    expect(full('PIP-005', { lineSet })).toMatchInlineSnapshot(`
      "PIP-005 note at the house
      measured 1 count, limit none (common practice, no source)
      - sets: 7"
    `);
    expect(full('PIP-006', { lineSet })).toMatchInlineSnapshot(`
      "PIP-006 caution at the house
      measured 1 count, limit none (published pipe tables: the two differ by about 6 %)
      - sets: 7"
    `);
  });
});

describe('a batten that its lines do not hold, reason by reason', () => {
  it.each([
    ['tooFewLines', 'one line alone lets the batten turn about it'],
    ['noLoad', 'nothing weighs on the lines, so nothing keeps them tight'],
    ['notDetermined', 'lines that do not stretch may share the load in more ways than one'],
    ['pieceTips', 'a piece pulls down beyond its outermost pick'],
  ])('[PIP-001] says what %s means', (code, what) => {
    const states = [hangingState({ lines: [], beam: unstable(code) })];
    expect(found('PIP-001', structured(states))).toMatchObject([{ facts: { what } }]);
  });
});

describe('bending, state by state', () => {
  it('[PIP-002] takes the worst of several states', () => {
    expect(found('PIP-002', bent(use(1.1), use(1.3), use(1.2)))).toMatchObject([
      { at: { heightM: 1 }, facts: { state: 'state 1' } },
    ]);
  });

  it('[PIP-002] judges no state whose strength or use is not known', () => {
    expect(found('PIP-002', bent({ ...use(1.3), allowable: null }))).toEqual([]);
    expect(found('PIP-002', bent({ utilisation: null }))).toEqual([]);
    expect(found('PIP-002', bent({ utilisation: null }, use(1.3)))).toHaveLength(1);
  });

  it('[PIP-002] keeps to the method where nobody knows the strength of the steel', () => {
    const pipe = { ...examplePipe, yieldStrength: nobodyKnows };
    const lineSet = { ...exampleSet, batten: { ...exampleSet.batten, pipe } };
    expect(found('PIP-002', { ...bent(use(1.3)), lineSet })).toMatchObject([
      { limitSource: 'plastic moment over 1.67, nominal wall' },
    ]);
  });
});

describe('sag and doubts, state by state', () => {
  it('[PIP-004] takes the largest share of a span, and not the largest sag', () => {
    // 20 mm on 2 m is 1 %; 30 mm on 4 m is 0.75 %.
    expect(found('PIP-004', bent(sag(0.03, 4), sag(0.02, 2)))).toMatchObject([
      { measured: { value: 0.02 }, facts: { state: 'state 1' } },
    ]);
  });

  it('[UNK-001] asks for no limit where no state has a sag', () => {
    expect(missed({ ...structured([]), rules: { sagLimit: nobodyKnows } })).toBe(
      'limit of the sag between lines (nobody looked) | sag of the battens',
    );
    const { set } = structured([]);
    const value = { ...set.structure.value, states: [] };
    const none = { set: { structure: { known: true, value } as const } };
    expect(missed({ ...none, rules: { sagLimit: nobodyKnows } })).toBe('');
  });

  it('[PIP-006] doubts a set of which one state is judged', () => {
    const batten = { ...exampleSet.batten, pipe: { ...examplePipe, wall: null } };
    const lineSet = { ...exampleSet, batten };
    const scene = bent({ allowable: null }, { allowable: exampleSolution.allowable });
    expect(found('PIP-006', { ...scene, lineSet })).toHaveLength(1);
  });
});
