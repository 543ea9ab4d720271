import { describe, expect, it } from 'vitest';
import { blocked } from '#findings';
import { metres } from '#quantities';
import { found, type Scene } from '../example-assessment.ts';
import { full, missed } from '../example-finding.ts';
import {
  exampleHang,
  exampleItem,
  exampleLift,
  examplePipe,
  exampleRecord,
  exampleSet,
  given,
  motorSet,
  nobodyKnows,
} from '../example-house.ts';
import { raiseUnknown } from './unknown-values.ts';

const missing = blocked(['mass of the lamp']);

const held = { ...exampleHang, deadHungAt: given(metres(5)) };

const { cable, loftBlock, headBlock } = exampleLift;

describe('what is not known, in full', () => {
  it('[UNK-001] counts what is missing of a set, and names all that it blocks', () => {
    const set = { hung: missing, room: blocked(['length of the arbor']) };
    expect(full('UNK-001', { set })).toMatchInlineSnapshot(`
      "UNK-001 caution at set 7
      measured 2 count, limit none (house rule)
      - what: mass of the lamp; length of the arbor
      - blocks: mass that hangs; room of the arbor"
    `);
  });

  it('[UNK-001] says of the whole house what it blocks', () => {
    const lineSet = {
      ...exampleSet,
      pointLimit: nobodyKnows,
      perLengthLimit: nobodyKnows,
      lift: {
        ...exampleLift,
        cable: {
          ...cable,
          breakingStrength: nobodyKnows,
          diameter: nobodyKnows,
          termination: null,
        },
        loftBlock: {
          ...loftBlock,
          sheaveDiameter: nobodyKnows,
          fleetAngle: nobodyKnows,
          rated: nobodyKnows,
        },
        headBlock: {
          ...headBlock,
          sheaveDiameter: nobodyKnows,
          fleetAngle: nobodyKnows,
          rated: nobodyKnows,
        },
      },
      batten: {
        ...exampleSet.batten,
        pipe: {
          ...examplePipe,
          yieldStrength: nobodyKnows,
          plasticModulus: nobodyKnows,
          sectionModulus: nobodyKnows,
        },
        splices: [{ x: metres(0), strength: nobodyKnows }],
      },
    };
    expect(full('UNK-001', { lineSet })).toMatchInlineSnapshot(`
      "UNK-001 caution at the house
      measured 14 count, limit none (house rule)
      - what: breaking strength of the lift lines (every set); how the ends of the lift
          lines are made (every set); diameter of the lift lines (every set); sheave of the
          loft blocks (every set); sheave of the head block (every set); fleet angle at the
          loft blocks (every set); fleet angle at the head block (every set); rating of the
          loft blocks (every set); rating of the head block (every set); yield strength of
          the battens (every set); section modulus of the battens (every set); strength of a
          joint of the battens (every set); point limit of the battens (every set that
          hangs); limit of the battens for their length (every set that hangs)
      - blocks: design factor of the lines; size of the sheaves; fleet angles; what the
          blocks carry; bending of the battens; bending at the joints; loads at one place;
          loads spread along a batten"
    `);
  });

  it('[UNK-001] raises nothing where nothing is missing', () => {
    expect(raiseUnknown([])).toEqual([]);
    expect(raiseUnknown([], '7')).toEqual([]);
  });
});

describe('what is not known of the plant, one value at a time', () => {
  const set = (changes: Partial<typeof exampleSet>) => ({ ...exampleSet, ...changes });

  it.each([
    [
      'strength',
      set({ lift: { ...exampleLift, cable: { ...cable, breakingStrength: nobodyKnows } } }),
      'design factor of the lines',
    ],
    [
      'ends',
      set({ lift: { ...exampleLift, cable: { ...cable, termination: null } } }),
      'design factor of the lines',
    ],
    [
      'diameter',
      set({ lift: { ...exampleLift, cable: { ...cable, diameter: nobodyKnows } } }),
      'design factor of the lines; size of the sheaves',
    ],
    [
      'loft sheave',
      set({
        lift: { ...exampleLift, loftBlock: { ...loftBlock, sheaveDiameter: nobodyKnows } },
      }),
      'design factor of the lines; size of the sheaves',
    ],
    [
      'head sheave',
      set({
        lift: { ...exampleLift, headBlock: { ...headBlock, sheaveDiameter: nobodyKnows } },
      }),
      'design factor of the lines; size of the sheaves',
    ],
    [
      'loft angle',
      set({ lift: { ...exampleLift, loftBlock: { ...loftBlock, fleetAngle: nobodyKnows } } }),
      'fleet angles',
    ],
    [
      'head angle',
      set({ lift: { ...exampleLift, headBlock: { ...headBlock, fleetAngle: nobodyKnows } } }),
      'fleet angles',
    ],
    [
      'loft rating',
      set({ lift: { ...exampleLift, loftBlock: { ...loftBlock, rated: nobodyKnows } } }),
      'what the blocks carry',
    ],
    [
      'head rating',
      set({ lift: { ...exampleLift, headBlock: { ...headBlock, rated: nobodyKnows } } }),
      'what the blocks carry',
    ],
    [
      'steel',
      set({
        batten: { ...exampleSet.batten, pipe: { ...examplePipe, yieldStrength: nobodyKnows } },
      }),
      'bending of the battens',
    ],
    [
      'joint',
      set({
        batten: { ...exampleSet.batten, splices: [{ x: metres(0), strength: nobodyKnows }] },
      }),
      'bending at the joints',
    ],
    ['point limit', set({ pointLimit: nobodyKnows }), 'loads at one place'],
    ['length limit', set({ perLengthLimit: nobodyKnows }), 'loads spread along a batten'],
  ])('[UNK-001] says what a missing %s blocks', (_name, lineSet, blocks) => {
    expect(missed({ lineSet }).endsWith(` | ${blocks}`)).toBe(true);
  });

  it('[UNK-001] misses a joint where one of several is not known, and none where none is', () => {
    const joints = (splices: (typeof exampleSet.batten)['splices']) =>
      missed({ lineSet: set({ batten: { ...exampleSet.batten, splices } }) });
    const known = { x: metres(-2), strength: given(0.8) };
    expect(joints([known, { x: metres(2), strength: nobodyKnows }])).toContain('joint');
    expect(joints([known])).toBe('');
    expect(joints(null)).toBe('');
  });

  it('[UNK-001] misses both moduli of a section only together', () => {
    const pipe = { ...examplePipe, sectionModulus: nobodyKnows };
    expect(missed({ lineSet: set({ batten: { ...exampleSet.batten, pipe } }) })).toBe('');
  });

  it('[UNK-001] names the sets where some of them lack it', () => {
    const lineSet = set({ lift: { ...exampleLift, cable: { ...cable, termination: null } } });
    const otherSets = ['8', '9', 'D1'].map((id) => ({
      ...(id === 'D1' ? exampleSet : lineSet),
      id,
    }));
    expect(missed({ lineSet, otherSets })).toContain('(set 7 to 9) | ');
  });

  it('[UNK-001] misses what a set on its lines lacks, and nothing of a motor', () => {
    const structure = blocked(['stretch of the lift lines', 'place of the lamp']);
    const flown: Scene = { set: { structure } };
    expect(missed(flown)).toBe(
      'stretch of the lift lines (every set); place of the lamp (every set) | ' +
        'what lines, blocks and pipe carry',
    );
    expect(missed({ ...flown, hang: null })).toContain('stretch of the lift lines (every set)');
    const hang = { ...exampleHang, bricks: null };
    expect(missed({ set: { structure, bare: missing }, lineSet: motorSet, hang })).toBe('');
  });
});

describe('what is not known of a set', () => {
  const refused = { code: 'TKO-001', path: 'drop', found: '-1', accepted: '0 or more' };
  const takeoffs = [
    { item: exampleItem, total: missing, faults: [refused], toleranceNeeds: ['tolerance'] },
  ] as never;

  it('[UNK-001] says what a refused take-off and an unsaid tolerance block', () => {
    expect(missed({ set: { takeoffs } })).toBe(
      'Frame: drop: found -1, wanted 0 or more; Frame: tolerance | ' +
        'take-off; worst case of the masses',
    );
  });

  it('[UNK-001] says what each missing value of the arbor blocks', () => {
    expect(missed({ set: { bare: missing } })).toContain('| balance of the bare set');
    expect(missed({ set: { room: missing } })).toBe('mass of the lamp | room of the arbor');
    const recorded = { arborMass: missing };
    expect(missed({ record: exampleRecord, recorded })).toContain('mass of the recorded arbor');
    expect(missed({ record: exampleRecord, recorded: { imbalance: missing } })).toBe(
      'mass of the lamp | recorded imbalance',
    );
    expect(missed({ record: exampleRecord, recorded: { pull: missing } })).toBe(
      'mass of the lamp | pull test',
    );
  });

  it('[UNK-001] misses a recorded imbalance only where all of it was recorded', () => {
    const of = (changes: Partial<typeof exampleRecord>) =>
      missed({
        record: { ...exampleRecord, ...changes },
        recorded: { imbalance: missing, arborMass: missing },
      });
    expect(of({})).toContain('recorded imbalance');
    expect(of({ height: null })).toBe('mass of the lamp | mass of the recorded arbor');
    expect(of({ items: null })).toBe('mass of the lamp | mass of the recorded arbor');
    expect(of({ stack: null })).toBe('');
  });

  it('[UNK-001] says what each missing value of the plan blocks', () => {
    expect(missed({ set: { choice: missing } })).toBe('mass of the lamp | choice of bricks');
    expect(missed({ set: { plan: missing } })).toBe('mass of the lamp | balance over the travel');
    const windows = [{ gallery: 'upper', window: missing }];
    expect(missed({ set: { windows } })).toBe('mass of the lamp | reach from the galleries');
    expect(missed({ plan: { doubtsUnsaid: ['tolerance of C'] } })).toBe(
      'tolerance of C | imbalance at its worst',
    );
    expect(missed({ plan: { pulls: missing } })).toBe('mass of the lamp | pulls on the hand line');
  });

  it('[UNK-001] misses an arbor and no plan of a set that is empty, or that steel holds', () => {
    const set = { bare: missing, choice: missing };
    expect(missed({ hang: null, set })).toBe('mass of the lamp | balance of the bare set');
    expect(missed({ hang: held, set })).toBe('mass of the lamp | balance of the bare set');
  });

  it('[UNK-001] misses a mass that hangs on any kind of set', () => {
    const hang = { ...exampleHang, bricks: null };
    const scene = { lineSet: motorSet, hang, plan: null, set: { hung: missing } };
    expect(found('UNK-001', scene)[0]?.facts['blocks']).toContain('mass that hangs');
  });
});
