import { describe, expect, it } from 'vitest';
import { blocked } from '#findings';
import { metres } from '#quantities';
import { found, judgeScene, type Scene } from '../example-assessment.ts';
import { exampleHang, given, motorSet } from '../example-house.ts';
import { structured } from '../example-structure.ts';

describe('unknown values', () => {
  it('[UNK-001] is quiet where everything is known', () => {
    expect(found('UNK-001')).toEqual([]);
  });

  const missing = blocked(['mass of the lamp']);

  it.each([
    ['hung', 'mass that hangs', { set: { hung: missing } }],
    ['bare', 'balance of the bare set', { set: { bare: missing } }],
    [
      'hung states',
      'with all that hangs',
      structured(undefined, { hungNeeds: ['mass of the lamp'] }),
    ],
    ['room', 'room of the arbor', { set: { room: missing } }],
    ['choice', 'choice of bricks', { set: { choice: missing } }],
    ['plan', 'balance over the travel', { set: { plan: missing } }],
    ['friction', 'friction', { plan: { friction: missing } }],
    ['pulls', 'pulls on the hand line', { plan: { pulls: missing } }],
  ] satisfies readonly (readonly [string, string, Scene])[])(
    '[UNK-001] misses %s',
    (_name, blocks, scene) => {
      const findings = found('UNK-001', scene);
      expect(findings).toMatchObject([
        { level: 'caution', at: { set: '7' }, facts: { what: 'mass of the lamp' } },
      ]);
      expect(findings[0]?.facts['blocks']).toContain(blocks);
    },
  );

  it('[UNK-001] names all that is missing once, in one finding a set', () => {
    const findings = found('UNK-001', {
      set: { hung: blocked(['a', 'b']), room: blocked(['b', 'c']), plan: missing },
    });
    expect(findings).toMatchObject([
      { measured: { value: 4, kind: 'count' }, facts: { what: 'a; b; c; mass of the lamp' } },
    ]);
  });

  it('[UNK-001] takes over what a take-off refused, and tolerances that nobody gave', () => {
    const refused = { code: 'TKO-001', path: 'drop', found: '-1', accepted: '0 or more' };
    const takeoffs = [
      {
        item: exampleHang.items[0],
        total: missing,
        faults: [refused],
        toleranceNeeds: ['tolerance'],
      },
    ] as never;
    const [finding] = found('UNK-001', { set: { takeoffs } });
    expect(finding?.facts['what']).toBe(
      'Frame: drop: found -1, wanted 0 or more; Frame: tolerance',
    );
  });

  const bareOnly = structured([]).set.structure;

  it('[UNK-001] misses no plan where nothing hangs, steel holds, or no arbor is', () => {
    const blocks = (scene: Scene) => found('UNK-001', scene).map(({ facts }) => facts['blocks']);
    const set = { choice: missing, plan: missing, structure: missing };
    expect(blocks({ hang: null, set: { ...set, structure: bareOnly } })).toEqual([]);
    expect(blocks({ hang: { ...exampleHang, deadHungAt: given(metres(5)) }, set })).toEqual([]);
    const onMotor = { ...set, bare: missing, room: missing };
    const hang = { ...exampleHang, bricks: null };
    expect(blocks({ lineSet: motorSet, hang, set: onMotor })).toEqual([]);
  });

  it('[UNK-001] says the unknown beside what can still be judged', () => {
    const codes = judgeScene({ set: { room: missing } }).map(({ code }) => code);
    expect(codes).toEqual(expect.arrayContaining(['BAL-008', 'UNK-001']));
  });
});
