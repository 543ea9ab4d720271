import { describe, expect, it } from 'vitest';
import { blocked } from '#findings';
import type { LineSet } from '#house';
import { metres } from '#quantities';
import { found, type Scene } from '../example-assessment.ts';
import {
  exampleHang,
  exampleHouse,
  exampleLift,
  examplePipe,
  exampleSet,
  given,
  motorSet,
  nobodyKnows,
} from '../example-house.ts';
import { noTotals, structured } from '../example-structure.ts';
import { plantUnknown } from './plant-unknown.ts';

const { cable, loftBlock, headBlock } = exampleLift;

const lifted = (lift: Partial<LineSet['lift']>): LineSet => ({
  ...exampleSet,
  lift: { ...exampleLift, ...lift },
});

const piped = (batten: Partial<LineSet['batten']>): LineSet => ({
  ...exampleSet,
  batten: { ...exampleSet.batten, ...batten },
});

describe('what nobody knows of lines, blocks and pipes', () => {
  it.each([
    [
      'breaking strength of the lift lines',
      lifted({ cable: { ...cable, breakingStrength: nobodyKnows } }),
    ],
    ['how the ends of the lift lines are made', lifted({ cable: { ...cable, termination: null } })],
    ['diameter of the lift lines', lifted({ cable: { ...cable, diameter: nobodyKnows } })],
    [
      'sheave of the loft blocks',
      lifted({ loftBlock: { ...loftBlock, sheaveDiameter: nobodyKnows } }),
    ],
    [
      'sheave of the head block',
      lifted({ headBlock: { ...headBlock, sheaveDiameter: nobodyKnows } }),
    ],
    [
      'fleet angle at the loft blocks',
      lifted({ loftBlock: { ...loftBlock, fleetAngle: nobodyKnows } }),
    ],
    [
      'fleet angle at the head block',
      lifted({ headBlock: { ...headBlock, fleetAngle: nobodyKnows } }),
    ],
    ['rating of the loft blocks', lifted({ loftBlock: { ...loftBlock, rated: nobodyKnows } })],
    ['rating of the head block', lifted({ headBlock: { ...headBlock, rated: nobodyKnows } })],
    [
      'yield strength of the battens',
      piped({ pipe: { ...examplePipe, yieldStrength: nobodyKnows } }),
    ],
    [
      'section modulus of the battens',
      piped({ pipe: { ...examplePipe, plasticModulus: nobodyKnows, sectionModulus: nobodyKnows } }),
    ],
    [
      'strength of a joint of the battens',
      piped({ splices: [{ x: metres(0), strength: nobodyKnows }] }),
    ],
  ] as const)('[UNK-001] misses the %s once for the house', (name, lineSet) => {
    const row = { lineSet, otherSets: [{ ...lineSet, id: '8' }] };
    expect(found('UNK-001', row)).toMatchObject([
      { level: 'caution', at: {}, facts: { what: `${name} (every set)` } },
    ]);
    const one = { lineSet, otherSets: [{ ...exampleSet, id: '8' }] };
    expect(found('UNK-001', one)).toMatchObject([{ facts: { what: `${name} (set 7)` } }]);
    const onMotor = { ...lineSet, suspension: motorSet.suspension, arbor: null };
    expect(found('UNK-001', { lineSet: onMotor, hang: null })).toEqual([]);
  });

  it('[UNK-001] misses one section modulus only where the other is not known either', () => {
    const pipe = { ...examplePipe, plasticModulus: nobodyKnows };
    expect(found('UNK-001', { lineSet: piped({ pipe }) })).toEqual([]);
  });

  it.each([
    ['point limit of the battens', { ...exampleSet, pointLimit: nobodyKnows }],
    ['limit of the battens for their length', { ...exampleSet, perLengthLimit: nobodyKnows }],
  ] as const)('[UNK-001] misses the %s only where something hangs', (name, lineSet) => {
    const otherSets = [{ ...lineSet, id: '8' }];
    expect(found('UNK-001', { lineSet, otherSets })).toMatchObject([
      { at: {}, facts: { what: `${name} (every set that hangs)` } },
    ]);
    expect(found('UNK-001', { lineSet, otherSets, hang: null })).toEqual([]);
  });

  const structure = blocked(['stretch of the lift lines (EA)']);

  it('[UNK-001] misses once what the batten on its lines cannot be worked out without', () => {
    const scene: Scene = { set: { structure }, otherSets: [{ ...exampleSet, id: '8' }] };
    expect(found('UNK-001', scene)).toMatchObject([
      {
        at: {},
        facts: {
          what: 'stretch of the lift lines (EA) (set 7)',
          blocks: 'what lines, blocks and pipe carry',
        },
      },
    ]);
  });

  it('[UNK-001] misses nothing of a load on lines that steel or no arbor holds', () => {
    const loaded = structured(undefined, { hungNeeds: ['how the steel holds it'] });
    const hang = { ...exampleHang, deadHungAt: given(metres(5)) };
    expect(found('UNK-001', { ...loaded, hang })).toEqual([]);
    expect(found('UNK-001', { ...loaded, lineSet: motorSet, hang: null })).toEqual([]);
    expect(found('UNK-001', loaded)).toHaveLength(1);
  });

  it('[UNK-001] misses no limit of a batten where no show says that something hangs', () => {
    const breakingStrength = nobodyKnows;
    const lineSet = {
      ...lifted({ cable: { ...cable, breakingStrength } }),
      pointLimit: nobodyKnows,
    };
    const house = { ...exampleHouse, lineSets: [lineSet] };
    const assessment = { sets: [], bricks: [], totals: noTotals };
    expect(plantUnknown({ house, show: null, state: null, assessment, nowMs: null })).toEqual([
      {
        lacks: 'breaking strength of the lift lines (every set)',
        blocks: 'design factor of the lines',
        of: 'house',
      },
    ]);
  });

  it('[UNK-001] misses nothing of the lines of a set that steel holds', () => {
    const hang = { ...exampleHang, deadHungAt: given(metres(5)) };
    expect(found('UNK-001', { hang, set: { structure } })).toEqual([]);
  });
});
