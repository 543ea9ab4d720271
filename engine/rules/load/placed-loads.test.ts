import { describe, expect, it } from 'vitest';
import { found, type Scene } from '../example-assessment.ts';
import { exampleSet, nobodyKnows } from '../example-house.ts';
import { fittings, hangingState, structured } from '../example-structure.ts';

type Load = (typeof fittings)[number]['load'];

/** What hangs beside the fittings, each with a tolerance of 1 kg. */
const hung = (...loads: readonly Load[]): Scene =>
  structured([
    hangingState({
      loads: [
        ...fittings,
        ...loads.map((load, index) => ({ of: `piece ${index + 1}`, load, uncertaintyKg: 1 })),
      ],
    }),
  ]);

describe('loads at one place', () => {
  it('[LOD-005] takes the point limit with its tolerance, fittings apart', () => {
    expect(found('LOD-005', hung({ x: 2, mass: 149 }))).toEqual([]);
  });

  it('[LOD-005] stops ten grams more, and names what hangs there', () => {
    const [finding] = found('LOD-005', hung({ x: 2, mass: 149.01 }));
    expect(finding).toMatchObject({
      level: 'stop',
      limit: { value: 150, kind: 'mass' },
      facts: { distance: { value: 2 }, side: 'stage left', items: 'piece 1', state: 'playing' },
    });
    expect(finding?.measured?.value).toBeCloseTo(150.01, 9);
  });

  it('[LOD-005] adds up what hangs at one place, and nothing beside it', () => {
    const [finding] = found('LOD-005', hung({ x: 2, mass: 80 }, { x: 2.0005, mass: 80 }));
    expect(finding).toMatchObject({
      measured: { value: 162 },
      facts: { items: 'piece 1 and piece 2', tolerance: { value: 2 } },
    });
    expect(found('LOD-005', hung({ x: 2, mass: 80 }, { x: 2.01, mass: 80 }))).toEqual([]);
  });

  it('[LOD-005] judges no bare batten, and a load without a stated doubt as it is', () => {
    const loads = [{ of: 'piece', load: { x: 0, mass: 150 }, uncertaintyKg: null }];
    expect(found('LOD-005', structured([hangingState({ loads })]))).toEqual([]);
    const heavier = [{ of: 'piece', load: { x: 0, mass: 151 }, uncertaintyKg: null }];
    const bare = hangingState({ loads: heavier, kind: 'bare' });
    expect(found('LOD-005', structured([bare]))).toEqual([]);
    expect(found('LOD-005', structured([hangingState({ loads: heavier })]))).toHaveLength(1);
  });

  it('[LOD-005] [LOD-006] judge by no limit that is not known', () => {
    const lineSet = { ...exampleSet, pointLimit: nobodyKnows, perLengthLimit: nobodyKnows };
    const scene = { ...hung({ x: 2, mass: 900 }, { from: -2, to: 2, mass: 900 }), lineSet };
    expect(found('LOD-005', scene)).toEqual([]);
    expect(found('LOD-006', scene)).toEqual([]);
  });
});

describe('loads along the batten', () => {
  it('[LOD-006] takes a spread load at the limit with its tolerance, and stops a hair more', () => {
    // 159 kg and 1 kg of tolerance on 4 m are 40 kg/m.
    expect(found('LOD-006', hung({ from: -2, to: 2, mass: 159 }))).toEqual([]);
    expect(found('LOD-006', hung({ from: -2, to: 2, mass: 159.1 }))).toMatchObject([
      {
        level: 'stop',
        limit: { value: 40, kind: 'massPerLength' },
        facts: { distance: { value: 2 }, side: 'stage right', items: 'piece 1' },
      },
    ]);
  });

  it('[LOD-006] adds up where two stretches lie over each other', () => {
    const [finding] = found(
      'LOD-006',
      hung({ from: -2, to: 2, mass: 99 }, { from: 5, to: 1, mass: 99 }),
    );
    expect(finding).toMatchObject({
      measured: { value: 50 },
      facts: { distance: { value: 1 }, items: 'piece 1 and piece 2' },
    });
    expect(
      found('LOD-006', hung({ from: -2, to: 1, mass: 99 }, { from: 1, to: 4, mass: 99 })),
    ).toEqual([]);
  });
});
