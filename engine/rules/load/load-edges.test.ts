import { describe, expect, it } from 'vitest';
import { blocked, reckoned } from '#findings';
import { kilograms, metres, newtons } from '#quantities';
import { curveOf, exampleStack, found, type Node, type Scene } from '../example-assessment.ts';
import { full, missed } from '../example-finding.ts';
import {
  exampleHang,
  exampleItem,
  exampleLoom,
  exampleSet,
  given,
  nobodyKnows,
} from '../example-house.ts';
import { type fittings, hangingState, structured } from '../example-structure.ts';

const hung = (withoutLoomKg: number, uncertaintyKg: number | null = 2) => ({
  hung: reckoned({
    withoutLoom: kilograms(withoutLoomKg),
    loom: kilograms(40),
    uncertainty: uncertaintyKg === null ? null : kilograms(uncertaintyKg),
    uncertaintyRss: null,
  }),
});

const loomed = { ...exampleHang, items: [exampleItem, exampleLoom] };

const unlooked = {
  ...exampleSet,
  highStop: { ...exampleSet.highStop, height: nobodyKnows },
};

const structure = blocked(['stiffness of the lines']);

type Load = (typeof fittings)[number]['load'];

const pieces = (...loads: readonly Load[]): Scene =>
  structured([
    hangingState({
      loads: loads.map((load, index) => ({ of: `piece ${index + 1}`, load, uncertaintyKg: 1 })),
    }),
  ]);

const standing = (...nodes: readonly Node[]): Scene => ({ plan: { curve: curveOf(nodes) } });

const rated = (lowN: number | null, highN: number | null) => ({
  ...exampleSet,
  lowStop: {
    ...exampleSet.lowStop,
    rated: lowN === null ? nobodyKnows : given(newtons(lowN)),
  },
  highStop: {
    ...exampleSet.highStop,
    rated: highN === null ? nobodyKnows : given(newtons(highN)),
  },
});

describe('the load of a batten, in full', () => {
  it('[LOD-001] shows what hangs, the loom and the tolerance', () => {
    // ( 10 + 19 − 20 ) / 2 = 4.5 m; 2 kg/m · 14.5 m = 29 kg at the high stop of 19 m.
    expect(full('LOD-001', { set: hung(390), hang: loomed })).toMatchInlineSnapshot(`
      "LOD-001 stop at set 7, heightM 19
      measured 421 mass, limit 400 mass (house rule, example)
      - height: 19 length
      - hung: 390 mass
      - loom: 29 mass
      - tolerance: 2 mass
      - full: 400 mass
      load of the batten: m + l + t
        m = 390 mass: all that hangs, without loom
        l = 29 mass: loom that hangs at the top of the travel
        t = 2 mass: tolerances, all at their worst
        load = 421 mass: most that the batten carries
        limit 400 mass (house rule, example)
        by trade formula C14, C86"
    `);
    expect(full('LOD-001', { set: hung(400) })).toContain('- height: every height\n');
  });

  it('[LOD-002] shows nine tenths as the limit', () => {
    expect(full('LOD-002', { set: hung(360), hang: loomed })).toMatchInlineSnapshot(`
      "LOD-002 caution at set 7, heightM 19
      measured 391 mass, limit 360 mass (90 % of the live limit: common practice, no source)
      - height: 19 length
      - hung: 360 mass
      - loom: 29 mass
      - tolerance: 2 mass
      - full: 400 mass
      load of the batten: m + l + t
        m = 360 mass: all that hangs, without loom
        l = 29 mass: loom that hangs at the top of the travel
        t = 2 mass: tolerances, all at their worst
        load = 391 mass: most that the batten carries
        limit 360 mass (90 % of the live limit: common practice, no source)
        by trade formula C14, C86"
    `);
  });

  it('[LOD-003] shows what hangs and the number of lines', () => {
    // 9.80665 ( 50 + 2400 + 29 + 2 ) / 5 = 4866.06 N.
    const set = { ...hung(2400), structure };
    expect(full('LOD-003', { set, hang: loomed })).toMatchInlineSnapshot(`
      "LOD-003 stop at set 7, heightM 19
      measured 4866.05973 force, limit 4000 force (house rule, example)
      - lines: 5 count
      equal share of a lift line: g · ( B + m + l + t ) / n
        B = 50 mass: batten with its fittings
        m = 2400 mass: all that hangs, without loom
        l = 29 mass: loom that hangs at the top of the travel
        t = 2 mass: tolerances, all at their worst
        n = 5 count: lift lines
        T = 4866.05973 force: equal share
        limit 4000 force (house rule, example)
        by sum of the forces on the batten
        leaves out the stiffness of batten and lines: some line always carries more"
    `);
  });

  it('[LOD-004] shows what stands on either stop', () => {
    // 40 + 20 + 100 · 9.80665 = 1040.665 N before the first show brick.
    expect(full('LOD-004', { lineSet: rated(1000, 6000) })).toMatchInlineSnapshot(`
      "LOD-004 stop at set 7, heightM 1
      measured 1040.665 imbalance, limit 1000 force (house rule, example)
      - stop: low
      - when: with all on and no show brick yet"
    `);
    expect(
      full('LOD-004', { ...standing([1, 40], [19, -400]), lineSet: rated(6000, 400) }),
    ).toMatchInlineSnapshot(`
      "LOD-004 stop at set 7, heightM 19
      measured -420 imbalance, limit 400 force (house rule, example)
      - stop: high
      - when: with all bricks on"
    `);
  });

  it('[LOD-005] [LOD-006] show place, pieces and tolerance', () => {
    expect(full('LOD-005', pieces({ x: 2, mass: 160 }))).toMatchInlineSnapshot(`
      "LOD-005 stop at set 7, heightM 10
      measured 161 mass, limit 150 mass (house rule, example)
      - distance: 2 length
      - side: stage left
      - state: playing
      - height: 10 length
      - items: piece 1
      - tolerance: 1 mass"
    `);
    expect(full('LOD-006', pieces({ from: -2, to: 2, mass: 163 }))).toMatchInlineSnapshot(`
      "LOD-006 stop at set 7, heightM 10
      measured 41 massPerLength, limit 40 massPerLength (house rule, example)
      - distance: 2 length
      - side: stage right
      - state: playing
      - height: 10 length
      - items: piece 1
      - tolerance: 0.25 massPerLength"
    `);
  });
});

describe('the load of a batten, where something is not known', () => {
  it('[LOD-001] [LOD-002] judge nothing where nothing hangs, or nothing can be weighed', () => {
    for (const code of ['LOD-001', 'LOD-002', 'LOD-003'] as const) {
      expect(found(code, { hang: null, set: { ...hung(9000), structure } })).toEqual([]);
      const unknown = { hung: blocked(['mass of the lamp']), structure };
      expect(found(code, { set: unknown })).toEqual([]);
    }
  });

  it('[UNK-001] misses no limit of a batten on which nothing hangs', () => {
    const lineSet = { ...exampleSet, liveLimit: nobodyKnows, lineLimit: nobodyKnows };
    const text = missed({ hang: null, lineSet, set: { structure } });
    expect(text).not.toContain('live limit');
    expect(text).not.toContain('equal share');
  });

  it('[LOD-001] judges no batten with a loom of which something is not known', () => {
    const takeoff = { ...exampleLoom.takeoff, length: nobodyKnows };
    const items = [exampleItem, { ...exampleLoom, takeoff } as typeof exampleLoom];
    const hang = { ...exampleHang, items };
    expect(found('LOD-001', { set: hung(401), hang })).toEqual([]);
  });

  it('[LOD-001] needs the high stop for a loom, and only for a loom', () => {
    expect(found('LOD-001', { set: hung(401), lineSet: unlooked })).toHaveLength(1);
    expect(found('LOD-001', { set: hung(401), lineSet: unlooked, hang: loomed })).toEqual([]);
    expect(missed({ set: hung(100), lineSet: unlooked, hang: loomed })).toContain(
      'height of the high stop | ',
    );
    expect(missed({ set: hung(100), lineSet: unlooked, hang: loomed })).toContain(
      'load of the batten at its worst',
    );
  });

  it('[LOD-001] [LOD-002] [LOD-003] name no height where it is the same everywhere', () => {
    expect(found('LOD-001', { set: hung(401) })[0]?.at).toEqual({ set: '7' });
    expect(found('LOD-002', { set: hung(380) })[0]?.at).toEqual({ set: '7' });
    expect(found('LOD-003', { set: { ...hung(2400), structure } })[0]?.at).toEqual({ set: '7' });
  });

  it('[LOD-001] judges what hangs also where its tolerance is not known', () => {
    expect(found('LOD-001', { set: hung(400, null) })).toEqual([]);
    expect(found('LOD-001', { set: hung(400.01, null) })).toMatchObject([
      { facts: { tolerance: { value: 0 } } },
    ]);
    expect(missed({ set: hung(100, null) })).toContain('load of the batten at its worst');
  });

  it('[LOD-002] is quiet near a limit that nobody knows; UNK-001 says what that blocks', () => {
    const lineSet = { ...exampleSet, liveLimit: nobodyKnows };
    expect(found('LOD-002', { set: hung(380), lineSet })).toEqual([]);
    expect(missed({ lineSet })).toBe(
      'live limit of the batten (nobody looked) | load of the batten against its limit',
    );
  });

  it('[LOD-003] judges no batten without lines, and misses each value that it needs', () => {
    const set = { ...hung(9000), structure };
    expect(found('LOD-003', { set, lineSet: { ...exampleSet, lineXs: [] } })).toEqual([]);
    const lineSet = {
      ...exampleSet,
      lineXs: null,
      lineLimit: nobodyKnows,
      batten: { ...exampleSet.batten, mass: nobodyKnows },
    };
    const text = missed({ set: { structure }, lineSet });
    expect(text).toContain(
      'lift lines; limit of a lift line (nobody looked); ' +
        'mass of the batten with its fittings (nobody looked) | equal share of the lift lines',
    );
  });
});

describe('what stands on a stop, end by end', () => {
  it('[LOD-004] takes the most of contact and imbalance on the low stop', () => {
    const curve = {
      ...curveOf([
        [1, -900, 40, 20],
        [19, 0],
      ]),
    };
    const [first, ...rest] = curve.nodes;
    const contact = { low: newtons(-900), high: newtons(60) };
    const nodes = first === undefined ? [] : [{ ...first, contact }, ...rest];
    const plan = { curve: { ...curve, nodes } };
    const atMost = 60 + 20 + 980.665;
    expect(found('LOD-004', { plan, lineSet: rated(atMost, 6000) })).toEqual([]);
    expect(found('LOD-004', { plan, lineSet: rated(atMost - 1, 6000) })).toHaveLength(1);
  });

  it('[LOD-004] takes the least of contact and imbalance on the high stop', () => {
    const curve = curveOf([
      [1, 40],
      [19, -300, 500, 20],
    ]);
    const lineSet = (highN: number) => rated(6000, highN);
    expect(found('LOD-004', { plan: { curve }, lineSet: lineSet(320) })).toEqual([]);
    expect(found('LOD-004', { plan: { curve }, lineSet: lineSet(319) })).toHaveLength(1);
    const [first, last] = curve.nodes;
    const contact = { low: newtons(-350), high: newtons(0) };
    const nodes = first === undefined || last === undefined ? [] : [first, { ...last, contact }];
    const plan = { curve: { ...curve, nodes } };
    expect(found('LOD-004', { plan, lineSet: lineSet(369) })).toMatchObject([
      { measured: { value: -370 } },
    ]);
    expect(found('LOD-004', { plan, lineSet: lineSet(370) })).toEqual([]);
  });

  it('[LOD-004] takes the last of several nodes for the high stop', () => {
    const scene = standing([1, 0], [10, 0], [19, -400]);
    expect(found('LOD-004', { ...scene, lineSet: rated(6000, 419) })).toHaveLength(1);
    expect(found('LOD-004', { ...scene, lineSet: rated(6000, 420) })).toEqual([]);
  });

  it('[LOD-004] has nothing to say of a curve without nodes', () => {
    expect(found('LOD-004', { ...standing(), lineSet: rated(0, 0) })).toEqual([]);
    expect(missed({ ...standing(), lineSet: rated(null, null) })).toBe('');
  });

  it('[LOD-004] lets the lock hold where it holds as much as stands there', () => {
    const scene = standing([1, 0], [19, -180]);
    const rules = { lockLimit: nobodyKnows };
    expect(found('LOD-004', { ...scene, lineSet: rated(6000, 199) })).toEqual([]);
    expect(found('LOD-004', { ...scene, rules, lineSet: rated(6000, 199) })).toMatchObject([
      { limit: { value: 199 }, limitSource: 'house rule, example' },
    ]);
    expect(found('LOD-004', { ...scene, rules, lineSet: rated(6000, 200) })).toEqual([]);
  });

  it('[LOD-004] names the stop where stop and lock hold as much', () => {
    const scene = standing([1, 0], [19, -190]);
    expect(found('LOD-004', { ...scene, lineSet: rated(6000, 200) })).toMatchObject([
      { limitSource: 'house rule, example' },
    ]);
  });

  it('[UNK-001] misses the rating of the stop on which something stands', () => {
    const rules = { lockLimit: nobodyKnows };
    const light = { stack: { ...exampleStack, arborMass: kilograms(50) } };
    const heavy = standing([1, -900], [19, -181]);
    const scene = { ...heavy, plan: { ...light, ...heavy.plan } };
    expect(missed({ ...scene, lineSet: rated(null, null) })).toBe(
      'rating of the high stop | what stands on the high stop',
    );
    const out = standing([1, 40], [19, 900]);
    expect(missed({ ...out, lineSet: rated(null, null) })).toBe(
      'rating of the low stop | what stands on the low stop',
    );
    // What just balances with its tolerance presses on nothing.
    const none = standing([1, -20], [19, 20]);
    const balanced = { ...none, plan: { ...light, ...none.plan } };
    expect(missed({ ...balanced, rules, lineSet: rated(null, null) })).not.toContain('rating');
  });
});

describe('loads along a batten, place by place', () => {
  it('[LOD-005] keeps apart what hangs more than a millimetre apart', () => {
    expect(found('LOD-005', pieces({ x: 2, mass: 80 }, { x: 2.001, mass: 80 }))).toHaveLength(1);
    expect(found('LOD-005', pieces({ x: 2, mass: 80 }, { x: 2.0011, mass: 80 }))).toEqual([]);
    expect(found('LOD-005', pieces({ x: 2, mass: 80 }, { x: -2, mass: 80 }))).toEqual([]);
    expect(found('LOD-005', pieces({ x: 0, mass: 80 }, { x: 0.001, mass: 80 }))).toHaveLength(1);
  });

  it('[LOD-005] takes the worst place, and adds no spread load to it', () => {
    const scene = pieces({ x: -3, mass: 155 }, { x: 2, mass: 170 }, { from: 1, to: 3, mass: 50 });
    expect(found('LOD-005', scene)).toMatchObject([
      { measured: { value: 171 }, facts: { items: 'piece 2' } },
    ]);
    expect(found('LOD-005', pieces({ from: 1, to: 3, mass: 900 }))).toEqual([]);
    expect(found('LOD-006', pieces({ x: 2, mass: 900 }))).toEqual([]);
  });

  it('[LOD-005] names a piece once that hangs there by two picks', () => {
    const loads = [
      { of: 'Sign', load: { x: 2, mass: 90 }, uncertaintyKg: null },
      { of: 'Sign', load: { x: 2, mass: 90 }, uncertaintyKg: null },
    ];
    expect(found('LOD-005', structured([hangingState({ loads })]))).toMatchObject([
      { measured: { value: 180 }, facts: { items: 'Sign' } },
    ]);
  });

  it('[LOD-005] knows fittings by their whole name', () => {
    const of = (name: string) =>
      found(
        'LOD-005',
        structured([
          hangingState({ loads: [{ of: name, load: { x: 2, mass: 200 }, uncertaintyKg: 0 }] }),
        ]),
      ).length;
    expect(of('fittings at line 3')).toBe(0);
    expect(of('fittings at line 12')).toBe(0);
    expect(of('fittings at line 3 b')).toBe(1);
    expect(of('new fittings at line 3')).toBe(1);
    expect(of('fittings at line X')).toBe(1);
  });

  it('[LOD-006] takes the fuller of two stretches, and the end of one for its end', () => {
    const scene = pieces({ from: -4, to: -2, mass: 90 }, { from: -2, to: 0, mass: 99 });
    expect(found('LOD-006', scene)).toMatchObject([
      { measured: { value: 50 }, facts: { items: 'piece 2' } },
    ]);
    const other = pieces({ from: -4, to: -2, mass: 99 }, { from: 2, to: 4, mass: 85 });
    expect(found('LOD-006', other)).toMatchObject([{ facts: { items: 'piece 1' } }]);
  });

  it('[LOD-006] takes a spread load without a stated doubt as it is, and none on no length', () => {
    const spread = (load: Load) =>
      structured([hangingState({ loads: [{ of: 'Sign', load, uncertaintyKg: null }] })]);
    expect(found('LOD-006', spread({ from: -2, to: 2, mass: 160 }))).toEqual([]);
    expect(found('LOD-006', spread({ from: -2, to: 2, mass: 161 }))).toHaveLength(1);
    expect(found('LOD-006', spread({ from: 2, to: 2, mass: 161 }))).toEqual([]);
  });

  it('[LOD-005] [LOD-006] judge no bare batten', () => {
    const loads = [
      { of: 'Sign', load: { from: -2, to: 2, mass: 900 }, uncertaintyKg: null },
      { of: 'Sign', load: { x: 0, mass: 900 }, uncertaintyKg: null },
    ];
    const { set } = structured([]);
    const bare = hangingState({ kind: 'bare', height: metres(1), loads });
    const value = { ...set.structure.value, states: [bare] };
    const scene = { set: { structure: reckoned(value) } };
    expect(found('LOD-005', scene)).toEqual([]);
    expect(found('LOD-006', scene)).toEqual([]);
  });
});
