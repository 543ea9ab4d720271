/**
 * What batten, lines and blocks say to a line that holds the batten down. The lines of the
 * example carry 1000 N each at the batten, 20 N of their own and 50 N of tolerance, 1070 N; they
 * may carry 4000 N, their loft blocks 6000 N as the resultant of both sides. The beam that shares
 * a load out is tested where it is solved: here a line takes all that is put on its own place.
 */
import { describe, expect, it } from 'vitest';
import type { SetAssessment, SetStructure, StructureChange, StructureState } from '#assessment';
import { blocked, reckoned } from '#findings';
import { GRAVITY, kilograms, metres, newtons } from '#quantities';
import { assessmentOf, type Scene } from '../example-assessment.ts';
import { inFull } from '../example-finding.ts';
import { exampleHouse, exampleSet, given, nobodyKnows } from '../example-house.ts';
import {
  bareState,
  exampleSolution,
  hangingState,
  lineAt,
  squareTurn,
  structureOf,
} from '../example-structure.ts';
import { bearsLine, type LineBearing } from './bears-line.ts';

type Rework = SetStructure['rework'];

/** Adds to a line what the change puts on its place. */
const onItsLine: Rework = (state, { loads = [] }) => ({
  ...state,
  lines: state.lines.map(({ x, tension }) => {
    const added = loads
      .slice(state.loads.length)
      .reduce((sum, { load }) => sum + ('x' in load && load.x === x ? load.mass : 0), 0);
    return lineAt(x, tension + added * GRAVITY);
  }),
});

const setOf = (
  states: readonly StructureState[] = [hangingState()],
  changes: Partial<SetStructure> = {},
  scene: Scene = {},
): SetAssessment =>
  assessmentOf({
    ...scene,
    set: {
      ...scene.set,
      structure: reckoned(structureOf(states, { rework: onItsLine, ...changes })),
    },
  });

const bearing = (of: SetAssessment, heldN: number): LineBearing => {
  const answer = bearsLine(exampleHouse, of, heldN);
  if ('needs' in answer) throw new Error(answer.needs.join());
  return answer;
};

const loaded = (...tensions: readonly number[]): SetAssessment =>
  setOf([hangingState({ tensions })]);

const codesOf = ({ stops }: LineBearing): readonly string[] => stops.map(({ code }) => code);

describe('what bears a line that holds the batten down', () => {
  it('is all of it up to the last newton: 4000 − 1070 = 2930 N at each of two lines', () => {
    // Past 3600 N a person looks, LFT-002. That is no reason against the line.
    expect(bearing(setOf(), 5860)).toEqual({ at: [-2, 2], stops: [], lacks: [] });
  });

  it('[LFT-001] is a lift line no more, 1 N past that at each of the two', () => {
    const { at, stops } = bearing(setOf(), 5862);
    expect(at).toEqual([-2, 2]);
    // 1000 + 2931 + 20 + 50 = 4001 N at lines 2 and 4.
    expect(stops.map(inFull).join('\n')).toMatchInlineSnapshot(`
      "LFT-001 stop at set 7, heightM 10
      measured 4001 force, limit 4000 force (house rule, example)
      - line: 2 count
      - distance: 2 length
      - side: stage right
      - state: held down
      - height: 10 length
      - tolerance: 50 force
      - full: 4000 force
      - others: 1 count
      tension of line 2: T + w + t
        T = 3931 force: at the batten, from the beam on its lines
        w = 20 force: the line itself, below its loft block
        t = 50 force: tolerances, all at their worst for this line
        T_L = 4001 force: tension at the loft block
        limit 4000 force (house rule, example)
        by trade formulas C30, C31, C86
        leaves out starts and stops, which add to it"
    `);
  });

  it('[BLK-001] [LFT-005] is neither loft block nor design factor far past that', () => {
    // √2 · ( 1070 + 3172 ) = 5999.1 N and √2 · ( 1070 + 3173 ) = 6000.5 N.
    expect(codesOf(bearing(setOf(), 6344))).toEqual(['LFT-001']);
    expect(codesOf(bearing(setOf(), 6346))).toEqual(['LFT-001', 'BLK-001']);
    // 60 000 · 0.95 · 0.94 / 8 = 6697.5 N, and so 5627.5 N at each of two.
    expect(codesOf(bearing(setOf(), 11_255))).toEqual(['LFT-001', 'BLK-001']);
    expect(codesOf(bearing(setOf(), 11_257))).toEqual(['LFT-001', 'LFT-005', 'BLK-001']);
  });

  it('[BLK-001] is not the head block that all lines go over, and their pull with them', () => {
    const headBlockIn: SetStructure['headBlockIn'] = ({ lines }) =>
      reckoned(squareTurn(lines.reduce((sum, { tension }) => sum + tension, 0)));
    const { lift } = exampleSet;
    const headBlock = { ...lift.headBlock, rated: given(newtons(10_000)) };
    const lineSet = { ...exampleSet, lift: { ...lift, headBlock } };
    const of = setOf(undefined, { headBlockIn }, { lineSet });
    // √2 · ( 5 · 1000 + 2071 ) = 9999.9 N; past nine tenths a person looks, and that is all.
    expect(codesOf(bearing(of, 2071))).toEqual([]);
    // √2 · ( 5 · 1000 + 2072 ) = 10 001.3 N.
    expect(bearing(of, 2072).stops).toMatchObject([
      { code: 'BLK-001', facts: { block: 'head block' }, limit: { value: 10_000 } },
    ]);
  });

  it('[PIP-002] is not the pipe where it bends past what it may take', () => {
    const utilisation = { value: 1.1, x: 2, allowed: 1000, atSplice: false };
    const rework: Rework = (state) => ({ ...state, beam: { ...exampleSolution, utilisation } });
    expect(bearing(setOf(undefined, { rework }), 100).stops).toMatchObject([
      { code: 'PIP-002', level: 'stop', measured: { value: 1100 }, facts: { state: 'held down' } },
    ]);
  });

  it('[PIP-001] is not a batten that tips', () => {
    const unstable = { code: 'tipsOver', message: 'tips', reactions: null } as never;
    const rework: Rework = (state) => ({ ...state, beam: { unstable }, lines: [] });
    expect(bearing(setOf(undefined, { rework }), 100).stops).toMatchObject([
      { code: 'PIP-001', level: 'stop', facts: { states: 'held down' } },
    ]);
  });
});

describe('where a line is made fast to the batten', () => {
  it('is where all passes, at the middle pair before the others', () => {
    expect(bearing(setOf(), 100).at).toEqual([-2, 2]);
    // 3500 + 1000 + 70 N is too much for lines 2 and 4; 1000 + 1000 + 70 N is not for 1 and 5.
    expect(bearing(loaded(1000, 3500, 1000, 3500, 1000), 2000)).toEqual({
      at: [-4, 4],
      stops: [],
      lacks: [],
    });
    expect(bearing(loaded(3500, 3500, 1000, 3500, 3500), 1000)).toMatchObject({
      at: [0],
      stops: [],
    });
  });

  it('is where the fewest things speak against it, if none passes', () => {
    // Held by 1200 N: 4570 N at 2 and 4, 4170 N at 1 and 5, 4270 N at 3 alone. A loft block bears
    // 6000 / √2 = 4242.6 N, so that it speaks as well at the first and the last.
    const answer = bearing(loaded(3500, 3900, 3000, 3900, 3500), 1200);
    expect(answer.at).toEqual([-4, 4]);
    expect(codesOf(answer)).toEqual(['LFT-001']);
  });

  /** What is asked of the beam: for each place tried, what is put on the batten besides. */
  const askedOf = (xs: readonly number[], heldN: number) => {
    const changes: StructureChange[] = [];
    const rework: Rework = (state, change) => {
      changes.push(change);
      return state;
    };
    const lines = xs.map((x) => ({ x, stiffness: 60_000, trim: 0 }));
    const answer = bearsLine(exampleHouse, setOf([hangingState()], { lines, rework }), heldN);
    const own = hangingState().loads;
    for (const { loads } of changes) expect(loads?.slice(0, own.length)).toEqual(own);
    const added = changes.map(({ loads }) => loads?.slice(own.length));
    return { added, needs: 'needs' in answer ? answer.needs : null };
  };

  const placesOf = (...xs: readonly number[]) => {
    const { added, needs } = askedOf(xs, 100);
    return needs ?? added.map((loads) => loads?.map(({ load }) => ('x' in load ? load.x : load)));
  };

  it('takes its pull beside all that hangs, in equal parts and without a doubt', () => {
    // 1961.33 N are 200 kg.
    const line = (x: number, mass: number) => ({
      of: 'line that holds it down',
      load: { x, mass: expect.closeTo(mass, 9) },
      uncertaintyKg: 0,
    });
    expect(askedOf([-2, 0, 2], 1961.33).added).toEqual([
      [line(-2, 100), line(2, 100)],
      [line(0, 200)],
    ]);
  });

  it('is at two lines the same on both sides, then at the one on the centre', () => {
    expect(placesOf(-4, -2, 0, 2, 4)).toEqual([[-2, 2], [-4, 4], [0]]);
    expect(placesOf(-3, -1, 1, 3)).toEqual([
      [-1, 1],
      [-3, 3],
    ]);
  });

  it('takes lines less than 5 cm off for the same, and no others', () => {
    const none = ['lift lines, the same on both sides'];
    expect(placesOf(-3, 3.04)).toEqual([[-3, 3.04]]);
    expect(placesOf(-3.04, 3)).toEqual([[-3.04, 3]]);
    expect(placesOf(-3, 3.06)).toEqual(none);
    expect(placesOf(-3.06, 3)).toEqual(none);
    expect(placesOf(-0.05, 0.1)).toEqual(none);
    expect(placesOf(0.04)).toEqual([[0.04]]);
    expect(placesOf(-0.04)).toEqual([[-0.04]]);
    expect(placesOf(0.05)).toEqual(none);
    expect(placesOf(-0.06)).toEqual(none);
    expect(placesOf(2, 4)).toEqual(none);
    expect(placesOf()).toEqual(none);
  });
});

describe('the state in which it is held', () => {
  const heightIn = (...states: readonly StructureState[]) =>
    bearing(setOf([], { states }), 5862).stops.map(({ at, facts }) => [at.heightM, facts['state']]);

  const at = (heightM: number, kind: StructureState['kind'] = 'hung'): StructureState =>
    hangingState({ height: metres(heightM), kind });

  it('is the lowest in which all hangs, though a bare one is lower', () => {
    const lowest = [[2, 'held down']];
    expect(heightIn(at(0.5, 'bare'), at(10), at(2), at(19))).toEqual(lowest);
    expect(heightIn(at(2), at(10), at(0.5, 'released'))).toEqual(lowest);
  });

  it('is the bare one where nothing hangs', () => {
    expect(heightIn(at(0.5, 'bare'))).toEqual([[0.5, 'held down']]);
  });

  it('is not known where the batten is not', () => {
    const structure = blocked(['pipe of the batten', 'stiffness of the lines']);
    expect(bearsLine(exampleHouse, assessmentOf({ set: { structure } }), 100)).toEqual({
      needs: ['pipe of the batten', 'stiffness of the lines'],
    });
    expect(bearsLine(exampleHouse, setOf([], { states: [] }), 100)).toEqual({
      needs: ['a state of the batten'],
    });
  });
});

describe('what nobody knows of that', () => {
  it('is named once, whoever misses it, and stops nothing', () => {
    const length = blocked(['length of the lines']);
    const lines = [-2, 2].map((x) => ({ ...lineAt(x, 1000), top: length, loftBlock: length }));
    const rework: Rework = (state) => ({ ...state, lines });
    const lineSet = { ...exampleSet, lineLimit: nobodyKnows };
    const headBlock = blocked(['mass of the hand line']);
    const changes = { rework, headBlockIn: () => headBlock };
    expect(bearing(setOf([bareState], changes, { lineSet }), 100)).toEqual({
      at: [-2, 2],
      stops: [],
      lacks: [
        'length of the lines',
        'limit of a lift line (nobody looked)',
        'mass of the hand line',
      ],
    });
  });

  it('does not hide what is past its limit', () => {
    const hung = reckoned({
      withoutLoom: kilograms(100),
      loom: kilograms(0),
      uncertainty: null,
      uncertaintyRss: null,
    });
    const answer = bearing(setOf(undefined, {}, { set: { hung } }), 5862);
    expect(codesOf(answer)).toEqual(['LFT-001']);
    expect(answer.lacks).toEqual(['tolerance of a mass that hangs']);
  });
});
