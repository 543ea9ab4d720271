import { describe, expect, it } from 'vitest';
import { blocked, reckoned } from '#findings';
import { GRAVITY, kilograms, newtons } from '#quantities';
import { balanceSet, curveOf, exampleStack, found } from '../example-assessment.ts';
import {
  exampleHang,
  exampleItem,
  exampleLoom,
  exampleSet,
  given,
  nobodyKnows,
} from '../example-house.ts';
import { structured } from '../example-structure.ts';

const hung = (withoutLoomKg: number, uncertaintyKg: number | null = 2) => ({
  set: {
    hung: reckoned({
      withoutLoom: kilograms(withoutLoomKg),
      loom: kilograms(40),
      uncertainty: uncertaintyKg === null ? null : kilograms(uncertaintyKg),
      uncertaintyRss: null,
    }),
  },
});

describe('load of the batten', () => {
  it('[LOD-001] takes what is at the live limit with its tolerance', () => {
    expect(found('LOD-001', hung(398))).toEqual([]);
  });

  it('[LOD-001] stops ten grams more', () => {
    const [finding] = found('LOD-001', hung(398.01));
    expect(finding).toMatchObject({
      level: 'stop',
      limit: { value: 400, kind: 'mass' },
      facts: { height: 'every height', tolerance: { value: 2 } },
    });
    expect(finding?.measured?.value).toBeCloseTo(400.01, 9);
  });

  it('[LOD-001] counts a loom as it hangs at the top of the travel', () => {
    const hang = { ...exampleHang, items: [exampleItem, exampleLoom] };
    // ( 10 + 19 − 20 ) / 2 = 4.5 m; 2 kg/m · 14.5 m = 29 kg at the high stop of 19 m.
    expect(found('LOD-001', { ...hung(369), hang })).toEqual([]);
    expect(found('LOD-001', { ...hung(369.01), hang })).toMatchObject([
      { at: { heightM: 19 }, facts: { loom: { value: 29 }, height: { value: 19 } } },
    ]);
  });

  it('[LOD-002] cautions above nine tenths, and leaves what is too much to LOD-001', () => {
    expect(found('LOD-002', hung(358))).toEqual([]);
    expect(found('LOD-002', hung(358.01))).toMatchObject([
      { level: 'caution', limitSource: '90 % of the live limit: common practice, no source' },
    ]);
    expect(found('LOD-002', hung(398))).toHaveLength(1);
    expect(found('LOD-002', hung(398.01))).toEqual([]);
  });

  it('[UNK-001] misses the live limit, the tolerance and the loom by name', () => {
    const whatIs = (scene: Parameters<typeof found>[1]) =>
      found('UNK-001', scene)[0]?.facts['what'];
    const lineSet = { ...exampleSet, liveLimit: nobodyKnows };
    expect(whatIs({ lineSet })).toBe('live limit of the batten (nobody looked)');
    expect(whatIs(hung(100, null))).toBe('tolerance of a mass that hangs');
    const takeoff = { ...exampleLoom.takeoff, length: nobodyKnows };
    const items = [{ ...exampleLoom, takeoff } as typeof exampleLoom];
    expect(whatIs({ hang: { ...exampleHang, items } })).toBe('length of Loom');
  });
});

describe('equal share of the lift lines', () => {
  // Five lines of 4000 N carry 2039.4 kg together; the batten takes 50 kg of that.
  const shareLimitKg = (5 * 4000) / GRAVITY - 50;
  const wide = { lineSet: { ...exampleSet, liveLimit: given(kilograms(9000)) } };
  const structure = blocked(['stiffness of the lines']);
  const shared = (hungKg: number) => ({ ...wide, set: { ...hung(hungKg).set, structure } });

  it('[LOD-003] takes an equal share at the limit of a line', () => {
    expect(found('LOD-003', shared(shareLimitKg - 2))).toEqual([]);
  });

  it('[LOD-003] leaves a set whose lines are worked out to LFT-001', () => {
    const heavy = hung(shareLimitKg + 100).set;
    expect(found('LOD-003', { ...wide, set: heavy })).toEqual([]);
    const bareOnly = structured([], { hungNeeds: ['place of the lamp'] }).set;
    expect(found('LOD-003', { ...wide, set: { ...heavy, ...bareOnly } })).toHaveLength(1);
  });

  it('[LOD-003] stops an equal share past it, beside what is missing', () => {
    const [finding] = found('LOD-003', shared(shareLimitKg - 1.99));
    expect(found('UNK-001', shared(0))[0]?.facts['what']).toBe(
      'stiffness of the lines (every set)',
    );
    expect(finding).toMatchObject({
      level: 'stop',
      limit: { value: 4000, kind: 'force' },
      facts: { lines: { value: 5 } },
    });
    expect(finding?.measured?.value).toBeCloseTo(4000 + (0.01 * GRAVITY) / 5, 6);
  });

  it('[UNK-001] misses the number of lines and their limit', () => {
    const lineSet = { ...exampleSet, lineXs: null, lineLimit: nobodyKnows };
    const [, finding] = found('UNK-001', { lineSet, set: { structure } });
    expect(finding?.facts['what']).toBe('lift lines; limit of a lift line (nobody looked)');
  });
});

describe('what stands on a stop', () => {
  const rated = (lowN: number, highN: number) => ({
    ...exampleSet,
    lowStop: { ...exampleSet.lowStop, rated: given(newtons(lowN)) },
    highStop: { ...exampleSet.highStop, rated: given(newtons(highN)) },
  });
  // Before the first show brick the 100 kg of them are not on: 40 N and 20 N of tolerance more.
  const standingN = 40 + 20 + 100 * GRAVITY;

  it('[LOD-004] takes what stands at the rating of the low stop', () => {
    expect(found('LOD-004', { lineSet: rated(standingN, 6000) })).toEqual([]);
  });

  it('[LOD-004] stops a newton more on the low stop', () => {
    expect(found('LOD-004', { lineSet: rated(standingN - 1, 6000) })).toMatchObject([
      {
        level: 'stop',
        at: { heightM: 1 },
        facts: { stop: 'low', when: 'with all on and no show brick yet' },
      },
    ]);
  });

  it('[LOD-004] halves the bricks of a double purchase set', () => {
    const plan = { set: { ...balanceSet, purchase: 2 as const } };
    const halfN = 40 + 20 + 50 * GRAVITY;
    expect(found('LOD-004', { lineSet: rated(halfN, 6000), plan })).toEqual([]);
    expect(found('LOD-004', { lineSet: rated(halfN - 1, 6000), plan })).toHaveLength(1);
  });

  it('[LOD-004] judges what is arbor heavy on the high stop, planned and after a release', () => {
    const curve = curveOf([
      [1, 40],
      [19, -400],
    ]);
    expect(found('LOD-004', { lineSet: rated(6000, 420), plan: { curve } })).toEqual([]);
    const findings = found('LOD-004', { lineSet: rated(6000, 419), plan: { curve } });
    expect(findings).toMatchObject([
      { measured: { value: -420, kind: 'imbalance' }, facts: { when: 'with all bricks on' } },
    ]);
    const after = [{ how: 'the sign is gone', set: balanceSet, curve }];
    expect(found('LOD-004', { lineSet: rated(6000, 419), plan: { after } })).toMatchObject([
      { facts: { when: 'after the sign is gone' } },
    ]);
  });

  it('[LOD-004] lets the lock hold what an unrated stop does not, and adds nothing up', () => {
    const curve = curveOf([
      [1, 0],
      [19, -180],
    ]);
    expect(found('LOD-004', { lineSet: rated(6000, 0), plan: { curve } })).toEqual([]);
    const further = curveOf([
      [1, 0],
      [19, -181],
    ]);
    expect(found('LOD-004', { lineSet: rated(6000, 0), plan: { curve: further } })).toMatchObject([
      { limit: { value: 200 }, limitSource: 'lock: house rule, example' },
    ]);
    const weaker = { lineSet: rated(6000, 150), plan: { curve: further } };
    expect(found('LOD-004', weaker)).toHaveLength(1);
  });

  it('[UNK-001] misses a rating only where more stands there than the lock holds', () => {
    const lineSet = {
      ...exampleSet,
      lowStop: { ...exampleSet.lowStop, rated: nobodyKnows },
      highStop: { ...exampleSet.highStop, rated: nobodyKnows },
    };
    const [finding] = found('UNK-001', { lineSet });
    expect(finding?.facts['what']).toBe('rating of the low stop');
    const light = { stack: { ...exampleStack, arborMass: kilograms(60) } };
    expect(found('UNK-001', { lineSet, plan: light })).toEqual([]);
  });
});
