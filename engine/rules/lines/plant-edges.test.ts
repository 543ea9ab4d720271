import { describe, expect, it } from 'vitest';
import type { LineSet } from '#house';
import { metres, radians } from '#quantities';
import { found } from '../example-assessment.ts';
import { full, missed } from '../example-finding.ts';
import { exampleLift, exampleSet, given, nobodyKnows } from '../example-house.ts';

const { cable, loftBlock, headBlock } = exampleLift;

const lifted = (changes: Partial<LineSet['lift']>, id = '7'): LineSet => ({
  ...exampleSet,
  id,
  lift: { ...exampleLift, ...changes },
});

const loft = (sheaveM: number, lineM = 0.006, id = '7') =>
  lifted(
    {
      cable: { ...cable, diameter: given(metres(lineM)) },
      loftBlock: { ...loftBlock, sheaveDiameter: given(metres(sheaveM)) },
      headBlock: { ...headBlock, sheaveDiameter: given(metres(1)) },
    },
    id,
  );

describe('lines and sheaves of a house, in full', () => {
  it('[LFT-007] says whether the house forbids, allows or has not said', () => {
    const lineSet = lifted({ cable: { ...cable, termination: 'clips' } });
    expect(full('LFT-007', { lineSet })).toMatchInlineSnapshot(`
      "LFT-007 caution at the house
      measured 1 count, limit none (house rule, example)
      - sets: 7
      - what: The house forbids them"
    `);
    const allowed = { lineSet, rules: { clipsForbidden: given(false) } };
    expect(full('LFT-007', allowed)).toMatchInlineSnapshot(`
      "LFT-007 note at the house
      measured 1 count, limit none (house rule, example)
      - sets: 7
      - what: The house allows them"
    `);
    const unsaid = { lineSet, rules: { clipsForbidden: nobodyKnows } };
    expect(full('LFT-007', unsaid)).toMatchInlineSnapshot(`
      "LFT-007 caution at the house
      measured 1 count, limit none (DGUV Vorschrift 17 section 9 permits no load-carrying
          end made with clips)
      - sets: 7
      - what: Whether the house allows them is not said"
    `);
  });

  it('[LFT-008] shows sheave and line', () => {
    expect(full('LFT-008', { lineSet: loft(0.15) })).toMatchInlineSnapshot(`
      "LFT-008 caution at the house
      measured 0.15 length, limit 0.18 length (house rule, example)
      - sets: 7
      - what: loft blocks
      - sheave: 0.15 length
      - times: 25
      - asked: 30"
    `);
  });

  it('[LFT-009] shows the angle', () => {
    const lineSet = lifted({ loftBlock: { ...loftBlock, fleetAngle: given(radians(0.03)) } });
    expect(full('LFT-009', { lineSet })).toMatchInlineSnapshot(`
      "LFT-009 caution at the house
      measured 0.03 angle, limit 0.026 angle (house rule, example)
      - sets: 7
      - what: loft blocks"
    `);
  });

  it('[UNK-001] says what a missing rule of the house blocks', () => {
    expect(missed({ rules: { sheaveRatio: nobodyKnows } })).toBe(
      'least size of a sheave for its line (nobody looked) | size of the sheaves',
    );
    expect(missed({ rules: { fleetAngleLimit: nobodyKnows } })).toBe(
      'limit of the fleet angle (nobody looked) | fleet angles',
    );
  });
});

describe('sheaves and angles, set by set', () => {
  it('[LFT-008] says apart what differs in sheave or in line', () => {
    const sets = (...lineSets: readonly LineSet[]) =>
      found('LFT-008', { house: { lineSets } }).map(({ facts }) => facts['sets']);
    expect(sets(loft(0.15), loft(0.15, 0.006, '8'))).toEqual(['7, 8']);
    expect(sets(loft(0.15), loft(0.16, 0.006, '8'))).toEqual(['7', '8']);
    expect(sets(loft(0.15), loft(0.15, 0.0055, '8'))).toEqual(['7', '8']);
  });

  it('[LFT-008] judges no sheave that nobody has measured', () => {
    const lineSet = lifted({
      loftBlock: { ...loftBlock, sheaveDiameter: nobodyKnows },
      headBlock: { ...headBlock, sheaveDiameter: nobodyKnows },
    });
    expect(found('LFT-008', { lineSet })).toEqual([]);
  });

  it('[LFT-009] says apart what differs in angle, and judges none that is not known', () => {
    const turned = (angleRad: number, id: string) =>
      lifted({ loftBlock: { ...loftBlock, fleetAngle: given(radians(angleRad)) } }, id);
    const lineSets = [turned(0.03, '7'), turned(0.04, '8'), turned(0.03, '9')];
    expect(found('LFT-009', { house: { lineSets } }).map(({ facts }) => facts['sets'])).toEqual([
      '7, 9',
      '8',
    ]);
    const unknown = lifted({ loftBlock: { ...loftBlock, fleetAngle: nobodyKnows } });
    expect(found('LFT-009', { lineSet: unknown })).toEqual([]);
  });

  it('[LFT-007] counts only the sets whose ends are clipped', () => {
    const clipped = lifted({ cable: { ...cable, termination: 'clips' } }, '8');
    expect(found('LFT-007', { house: { lineSets: [exampleSet, clipped] } })).toMatchObject([
      { measured: { value: 1 }, facts: { sets: '8' } },
    ]);
  });
});
