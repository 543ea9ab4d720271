import { describe, expect, it } from 'vitest';
import { blocked, reckoned } from '#findings';
import { metres, newtons } from '#quantities';
import { found } from '../example-assessment.ts';
import { full, missed } from '../example-finding.ts';
import {
  exampleHang,
  exampleLift,
  exampleSet,
  given,
  motorSet,
  nobodyKnows,
} from '../example-house.ts';
import { hangingState, lineAt, squareTurn, structured } from '../example-structure.ts';

const lifted = (changes: Partial<typeof exampleLift>) => ({
  ...exampleSet,
  lift: { ...exampleLift, ...changes },
});

describe('blocks, one by one', () => {
  const blocks = (loftN: number, headN: number) =>
    lifted({
      loftBlock: { ...exampleLift.loftBlock, rated: given(newtons(loftN)) },
      headBlock: { ...exampleLift.headBlock, rated: given(newtons(headN)) },
    });

  it('[BLK-001] [BLK-002] show block, state and rating', () => {
    const lines = [1000, 1100].map((tensionN, index) => lineAt(index, tensionN));
    const scene = structured([hangingState({ lines })]);
    expect(full('BLK-001', { ...scene, lineSet: blocks(1500, 90_000) })).toMatchInlineSnapshot(`
      "BLK-001 stop at set 7, heightM 10
      measured 1654.62987 force, limit 1500 force (house rule, example)
      - block: loft block of line 2
      - state: playing
      - full: 1500 force
      - others: 1 count"
    `);
    expect(full('BLK-002', { ...scene, lineSet: blocks(1700, 90_000) })).toMatchInlineSnapshot(`
      "BLK-002 caution at set 7, heightM 10
      measured 1654.62987 force, limit 1530 force (90 % of the rating of a block: common
          practice, no source)
      - block: loft block of line 2
      - state: playing
      - full: 1700 force
      - others: none"
    `);
    expect(full('BLK-001', { ...scene, lineSet: blocks(90_000, 7000) })).toMatchInlineSnapshot(`
      "BLK-001 stop at set 7
      measured 7071.06781 force, limit 7000 force (house rule, example)
      - block: head block
      - state: at its worst
      - full: 7000 force
      - others: none"
    `);
  });

  it('[BLK-001] counts the other blocks that are past their rating, each once', () => {
    const states = ['in', 'out'].map((name) =>
      hangingState({ name, lines: [1000, 1100, 500].map((one, index) => lineAt(index, one)) }),
    );
    const scene = { ...structured(states), lineSet: blocks(1500, 90_000) };
    expect(found('BLK-001', scene)).toMatchObject([
      { facts: { block: 'loft block of line 2', others: { value: 1, kind: 'count' } } },
    ]);
  });

  it('[BLK-001] raises a resultant by its tolerance, and takes one without a pull as it is', () => {
    // 1020 N at the block with 50 N of tolerance: 1070 / 1020 of the resultant.
    const line = { ...lineAt(0, 1000), loftBlock: reckoned(squareTurn(3000)) };
    const [finding] = found('BLK-001', {
      ...structured([hangingState({ lines: [line] })]),
      lineSet: blocks(1000, 90_000),
    });
    expect(finding?.measured?.value).toBeCloseTo((3000 * Math.SQRT2 * 1070) / 1020, 6);
    const slack = {
      ...lineAt(0, 0),
      top: reckoned(newtons(0)),
      loftBlock: reckoned(squareTurn(3000)),
    };
    const [still] = found('BLK-001', {
      ...structured([hangingState({ lines: [slack] })]),
      lineSet: blocks(1000, 90_000),
    });
    expect(still?.measured?.value).toBeCloseTo(3000 * Math.SQRT2, 6);
  });

  it('[BLK-001] judges a loft block that is known beside one that is not', () => {
    const unknown = { ...lineAt(0, 9000), loftBlock: blocked(['place of the head blocks']) };
    const scene = structured([hangingState({ lines: [unknown, lineAt(2, 1000)] })]);
    expect(found('BLK-001', { ...scene, lineSet: blocks(1000, 90_000) })).toMatchObject([
      { facts: { block: 'loft block of line 2' } },
    ]);
    expect(missed(scene)).toBe('place of the head blocks | what the blocks carry');
    const states = [hangingState({ lines: [unknown, lineAt(2, 1000)] })];
    const alone = { ...scene.set.structure.value, states };
    expect(
      found('BLK-001', {
        set: { structure: reckoned(alone) },
        lineSet: blocks(1000, 90_000),
      }),
    ).toHaveLength(1);
  });

  it('[BLK-001] judges by no rating that nobody has given, and no head block of a motor', () => {
    const unrated = { rated: nobodyKnows };
    const lineSet = lifted({
      loftBlock: { ...exampleLift.loftBlock, ...unrated },
      headBlock: { ...exampleLift.headBlock, ...unrated },
    });
    expect(
      found('BLK-001', {
        ...structured([hangingState({ tensions: [9000, 1, 1, 1, 1] })]),
        lineSet,
      }),
    ).toEqual([]);
    const motor = { ...blocks(90_000, 1000), suspension: motorSet.suspension, arbor: null };
    const hang = { ...exampleHang, bricks: null };
    expect(found('BLK-001', { lineSet: motor, hang })).toEqual([]);
    expect(found('BLK-001', { lineSet: blocks(90_000, 1000), hang })).toHaveLength(1);
  });

  it('[UNK-001] says what a missing head block blocks', () => {
    expect(missed(structured(undefined, { headBlock: blocked(['mass of the hand line']) }))).toBe(
      'mass of the hand line | what the blocks carry',
    );
  });

  it('[BLK-001] has nothing to say where nothing hangs on a line', () => {
    const state = hangingState({ lines: [], height: metres(3) });
    expect(found('BLK-001', structured([state]))).toEqual([]);
  });
});
