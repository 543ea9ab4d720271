import { describe, expect, it } from 'vitest';
import type { LineSet } from '#house';
import { metres, radians } from '#quantities';
import { found, type Scene } from '../example-assessment.ts';
import { exampleLift, exampleSet, given, nobodyKnows } from '../example-house.ts';

const liftOf = (changes: Partial<LineSet['lift']>): LineSet => ({
  ...exampleSet,
  lift: { ...exampleLift, ...changes },
});

/** The set and three more behind it that are built the same, all but one. */
const rowOf = (lineSet: LineSet): Scene => ({
  lineSet,
  otherSets: ['8', '9', 'D1'].map((id) => ({ ...(id === 'D1' ? exampleSet : lineSet), id })),
});

describe('ends of the lines', () => {
  const clipped = liftOf({ cable: { ...exampleLift.cable, termination: 'clips' } });

  it('[LFT-007] says nothing of ends made otherwise', () => {
    expect(found('LFT-007')).toEqual([]);
  });

  it('[LFT-007] cautions once for all sets where the house forbids clips', () => {
    expect(found('LFT-007', rowOf(clipped))).toMatchObject([
      {
        level: 'caution',
        at: {},
        measured: { value: 3 },
        limitSource: 'house rule, example',
        facts: { sets: '7 to 9', what: 'The house forbids them' },
      },
    ]);
  });

  it('[LFT-007] cautions where the house has not said, and notes where it allows them', () => {
    const unsaid = { lineSet: clipped, rules: { clipsForbidden: nobodyKnows } };
    expect(found('LFT-007', unsaid)).toMatchObject([{ level: 'caution' }]);
    const allowed = { lineSet: clipped, rules: { clipsForbidden: given(false) } };
    expect(found('LFT-007', allowed)).toMatchObject([{ level: 'note' }]);
  });
});

describe('sheaves', () => {
  // Lines of 6 mm; the house asks for thirty times that.
  const loftOf = (sheaveM: number) =>
    liftOf({
      loftBlock: { ...exampleLift.loftBlock, sheaveDiameter: given(metres(sheaveM)) },
    });

  it('[LFT-008] takes a sheave of as many line diameters as the house asks for', () => {
    expect(found('LFT-008', { lineSet: loftOf(0.18) })).toEqual([]);
  });

  it('[LFT-008] cautions a tenth of a millimetre less, once for all sets alike', () => {
    expect(found('LFT-008', rowOf(loftOf(0.1799)))).toMatchObject([
      {
        level: 'caution',
        at: {},
        facts: { sets: '7 to 9', what: 'loft blocks', times: '29.9', asked: '30' },
      },
    ]);
  });

  it('[LFT-008] judges the head block apart', () => {
    const headBlock = { ...exampleLift.headBlock, sheaveDiameter: given(metres(0.12)) };
    expect(found('LFT-008', { lineSet: liftOf({ headBlock }) })).toMatchObject([
      { facts: { what: 'head block', times: '20' } },
    ]);
  });

  it('[UNK-001] misses the rule of the house, and judges no diameter that is not known', () => {
    expect(found('UNK-001', { rules: { sheaveRatio: nobodyKnows } })).toMatchObject([
      { at: {}, facts: { what: 'least size of a sheave for its line (nobody looked)' } },
    ]);
    const cable = { ...exampleLift.cable, diameter: nobodyKnows };
    expect(found('LFT-008', { lineSet: { ...loftOf(0.1), lift: liftOf({ cable }).lift } })).toEqual(
      [],
    );
  });
});

describe('fleet angles', () => {
  const turned = (angleRad: number) =>
    liftOf({ headBlock: { ...exampleLift.headBlock, fleetAngle: given(radians(angleRad)) } });

  it('[LFT-009] takes an angle that is at the limit of the house', () => {
    expect(found('LFT-009', { lineSet: turned(0.026) })).toEqual([]);
  });

  it('[LFT-009] cautions a hair wider, once for all sets alike', () => {
    expect(found('LFT-009', rowOf(turned(0.0261)))).toMatchObject([
      {
        level: 'caution',
        measured: { value: 0.0261, kind: 'angle' },
        facts: { sets: '7 to 9', what: 'head block' },
      },
    ]);
  });

  it('[UNK-001] misses the limit once for the house', () => {
    expect(found('UNK-001', { rules: { fleetAngleLimit: nobodyKnows } })).toMatchObject([
      { at: {}, facts: { what: 'limit of the fleet angle (nobody looked)' } },
    ]);
  });
});
