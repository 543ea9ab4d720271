/**
 * `compute plan` and `compute verify` on plain numbers of the demo house, typed in from its plan
 * (10.1, 10.2, S1, S9; its own computed figures in whole pounds, so no check from outside).
 */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { afterAll, describe, expect, it } from 'vitest';
import { heard as command } from './heard.ts';

const folder = mkdtempSync(join(tmpdir(), 'counterpoise-order-outputs-'));
afterAll(() => rmSync(folder, { recursive: true }));

let files = 0;

const ask = async (name: string, input: unknown, ...more: readonly string[]) => {
  files += 1;
  const file = join(folder, `${files}.json`);
  writeFileSync(file, JSON.stringify(input));
  return command('compute', name, '--input', file, ...more);
};

const [FOOT, POUND, POUND_FORCE] = [0.3048, 0.45359237, 4.4482216152605];
const ft = (n: number): number => n * FOOT;
const lb = (n: number): number => n * POUND;
const lbf = (n: number): number => n * POUND_FORCE;

const HOUSE = {
  purchase: 1,
  lineMassPerLength: lb(0.11) / FOOT,
  carriage: lb(95),
  lowStop: ft(3),
  highStop: ft(61),
  arborTopAtLow: ft(66.5),
  wireEndAbove: ft(2),
  lowStopRated: lbf(1400),
  highStopRated: lbf(1400),
  workingHeight: ft(4),
  lockLimit: lbf(50),
  hands: { brief: lbf(160), steady: lbf(100) },
  friction: { share: 0.05, constant: lbf(4) },
  panAtLow: ft(59.5),
  panThickness: ft(0.25),
  usableRod: ft(66 / 12),
  bricks: [
    { id: 'F', mass: lb(25), thickness: ft(0.1) },
    { id: 'H', mass: lb(12.5), thickness: ft(0.05) },
    { id: 'O', mass: lb(22), thickness: ft(1.25 / 12) },
  ],
};

const reach = { reachLow: ft(0.25), reachHigh: ft(5.5) };
const upper = { id: 'upper', floor: ft(58), ...reach, stock: { F: 280, H: 26 } };
const mid = { id: 'mid', floor: ft(38), ...reach, stock: { F: 52, H: 14 } };
/** With the batten out the arbor stands at the deck, where it is reached from. */
const deck = { id: 'deck', floor: 0, ...reach, stock: {} };

const SIX_LINES = { ...HOUSE, lines: 6, batten: lb(169), galleries: [upper, mid] };
const SEVEN_LINES = { ...HOUSE, lines: 7, batten: lb(196.26), galleries: [upper, mid, deck] };

const QUIET = { restraints: [], service: 'in', closed: [] };
const TEXTBOOK = { doubt: 'none', lock: 'nominal' };

/** Electric 1: six moving heads, twelve profiles, the bar cable, and the loom to the fly floor. */
const S1 = {
  set: {
    ...SIX_LINES,
    id: '5',
    items: {
      electric: { kind: 'clear', mass: lb(756) },
      loom: { kind: 'loom', massPerLength: lb(3.1) / FOOT, length: ft(50), fixedAt: ft(38) },
    },
  },
  start: { height: ft(3), stack: [{ kind: 'O', count: 3, tag: 'pipe' }], items: {}, ...QUIET },
  ...TEXTBOOK,
};

const S1_PLAN = {
  ...S1,
  goal: {
    items: { electric: 'on', loom: 'on' },
    bricks: { F: 33 },
    height: ft(36),
    service: 'in',
  },
  restraint: 'none',
  callHeights: ft(0.25),
};

/** The effects unit taken off at the high stop, the bricks from the deck after it. */
const S9 = {
  set: { ...SEVEN_LINES, id: '38', items: { unit: { kind: 'clear', mass: lb(110) } } },
  start: {
    height: ft(61),
    stack: [
      { kind: 'F', count: 4, tag: 'pipe' },
      { kind: 'H', count: 1, tag: 'show' },
      { kind: 'F', count: 4, tag: 'show' },
    ],
    items: { unit: 'flying' },
    ...QUIET,
  },
  ...TEXTBOOK,
};
const offUnit = { act: 'release', item: 'unit' };
const OFF_BRICKS = [
  { act: 'close', zone: { zone: 'drop', gallery: 'deck' } },
  { act: 'remove', kind: 'F', count: 4, gallery: 'deck' },
  { act: 'remove', kind: 'H', count: 1, gallery: 'deck' },
];
const RIGHT = { ...S9, steps: [offUnit, ...OFF_BRICKS] };
const WRONG = { ...S9, steps: [...OFF_BRICKS, offUnit] };

type State = { readonly imbalance: { readonly high: number; readonly doubt: number | null } };

const pounds = (state: State | undefined): number =>
  (state?.imbalance.high ?? Number.NaN) / POUND_FORCE;

/** Half a pound of the plan's rounding, and a tenth for figures that it rounded twice. */
const expectLb = (state: State | undefined, lbWanted: number): void => {
  expect(Math.abs(pounds(state) - lbWanted), `${pounds(state)} for ${lbWanted}`).toBeLessThan(0.6);
};

type Step = { readonly act: string; readonly kind?: string; readonly count?: number };

describe('compute verify', () => {
  it('[S9] accepts the unit first and the bricks after it, to the pound', async () => {
    const { code, out } = await ask('verify', RIGHT);
    expect(code).toBe(0);
    const { states, verdict } = JSON.parse(out);
    expect([verdict.accepted, verdict.broken]).toEqual([true, null]);
    expectLb(states[0], -43);
    expectLb(states[1], -153);
    expectLb(states.at(-1), -41);
    // On its high stop the arbor rests, so nothing is free to go out.
    expect(states[1].free).toMatchObject({ energy: 0 });
    expect(states[1].holds.out).toBeCloseTo(lbf(1400), 6);
    expect(states[1].heldBy).toContain('high stop');
  });

  it('[S9] [ORD-004] refuses the arbor first: 69 lb batten heavy on a lock of 50', async () => {
    const { code, out } = await ask('verify', WRONG);
    expect(code).toBe(0);
    const { states, verdict } = JSON.parse(out);
    expect(verdict.accepted).toBe(false);
    expect(verdict.broken).toMatchObject({ rule: 'ORD-004', step: 1 });
    expectLb(states[3], 69);
    // In 58 ft, from 69 lb to 159 lb: its mean over the way.
    const { free } = states[3];
    expect(free.way).toBe('in');
    expect(free.energy / (lbf((69 + 159) / 2) * ft(58))).toBeCloseTo(1, 1);
  });

  it('says nothing of a doubt that it was not told', async () => {
    const { states } = JSON.parse((await ask('verify', RIGHT)).out);
    expect(states.map(({ imbalance }: State) => imbalance.doubt)).toEqual(states.map(() => null));
  });

  it('refuses a step that makes no sense by its place in a list of orders', async () => {
    const twice = { ...S9, steps: [offUnit, offUnit] };
    const { code, out, err } = await ask('verify', [RIGHT, twice]);
    expect([code, out]).toEqual([2, '']);
    expect(err).toMatch(/\[1\]\.steps\[1\]: found .*unit.*accepted: .*ORD-102/);
  });

  it('[DOC-130] [DOC-076] [DOC-109] refuses bad input by path', async () => {
    const steps = [
      { act: 'release', item: 'unyt' },
      { act: 'remove', kind: 'F', count: 1, gallery: 'lower' },
      { act: 'fly', to: 70 },
    ];
    const { code, out, err } = await ask('verify', { ...S9, steps });
    expect([code, out]).toEqual([2, '']);
    expect(err).toMatch(/steps\[0\]\.item: found "unyt"; accepted: perhaps unit .*DOC-130/);
    expect(err).toMatch(/steps\[1\]\.gallery: .*DOC-076/);
    expect(err).toMatch(/steps\[2\]\.to: .*DOC-109/);
  });

  it('[DOC-030] does not take a mass for exact where people are in the path', async () => {
    const { code, err } = await ask('verify', { ...RIGHT, lock: 'planning' });
    expect(code).toBe(2);
    expect(err).toMatch(/set\.items\.unit\.uncertainty: found nothing.*DOC-030/);
  });
});

describe('compute plan', () => {
  it('[S1] attaches all on the low stop, then loads 33, then flies; to the pound', async () => {
    const { code, out } = await ask('plan', S1_PLAN);
    expect(code).toBe(0);
    const { found } = JSON.parse(out);
    const deeds = (found.steps as Step[]).filter(({ act }) => act !== 'close' && act !== 'reopen');
    expect(deeds.map(({ act }) => act)).toEqual(['attach', 'attach', 'add', 'fly']);
    expect(deeds[2]).toMatchObject({ kind: 'F', count: 33, gallery: 'upper' });
    const stateAfter = (act: string) =>
      found.states[found.steps.findLastIndex((s: Step) => s.act === act) + 1];
    expectLb(found.states[0], 49);
    expectLb(stateAfter('attach'), 814);
    expectLb(stateAfter('add'), -11);
    expectLb(stateAfter('fly'), 10);
    expect(found.verdict).toMatchObject({ accepted: true, broken: null });
    expect([found.restraint, found.optimal]).toEqual([null, true]);
  });

  it('answers steps that verify takes as they are, with the same verdict', async () => {
    const { found } = JSON.parse((await ask('plan', S1_PLAN)).out);
    const again = JSON.parse((await ask('verify', { ...S1, steps: found.steps })).out);
    expect(again).toEqual({ states: found.states, verdict: found.verdict });
  });

  it('says that none exists, by which rule, and what would change it', async () => {
    const few = { ...S1_PLAN.set, galleries: [{ ...upper, stock: { F: 3 } }] };
    const { code, out } = await ask('plan', { ...S1_PLAN, set: few });
    expect(code).toBe(0);
    expect(JSON.parse(out).none).toMatchObject({
      exhaustive: true,
      rule: 'STOCK',
      smallestChange: { change: 'stock' },
    });
  });

  it('says what is free to go in joules at each state', async () => {
    const { found } = JSON.parse((await ask('plan', S1_PLAN)).out);
    for (const { free } of found.states) expect(free.energy).toBeGreaterThanOrEqual(0);
  });

  it('answers a list with a list, in order', async () => {
    const both = JSON.parse(
      (await ask('plan', [S1_PLAN, { ...S1_PLAN, set: { ...S1_PLAN.set, usableRod: 0.3 } }])).out,
    );
    expect(both.map((each: object) => Object.keys(each)[0])).toEqual(['found', 'none']);
  });
});

describe('in words', () => {
  it('says the plan as the plan of documents does, in feet and pounds or in metres', async () => {
    const { code, out } = await ask('plan', S1_PLAN, '--words', 'customary');
    expect(code).toBe(0);
    expect(out).toMatch(/^Set 5/);
    expect(out).toMatch(/Put on 33 F/);
    expect(out).toMatch(/81[45].lb batten heavy/);
    expect(out).toMatch(/If nothing held it: \d+.J/);
    expect(out).toContain('No rule of the order of work is broken');
    expect(out).not.toMatch(/[-−]\d+.lb/);
    const metric = await ask('plan', S1_PLAN, '--words', 'metric');
    expect(metric.out).toMatch(/bar at 0\.9\d* ?.?m/);
  });

  it('[ORD-004] says what an order breaks, and not how to work by it', async () => {
    const { out } = await ask('verify', WRONG, '--words', 'customary');
    expect(out).toMatch(/BROKEN at step 2, batten at 61'-0", past by \d+.lbf: .*\[ORD-004/);
    expect(out).not.toContain('To give it up');
  });

  it('[CLI-011] has words for plan and verify only', async () => {
    const { code, out, err } = await ask('balance', {}, '--words', 'metric');
    expect([code, out]).toEqual([2, '']);
    expect(err).toMatch(/--words: found balance; accepted: words for plan and verify.*CLI-011/);
  });

  it('refuses what JSON refuses', async () => {
    const { code, out, err } = await ask('plan', { ...S1_PLAN, goal: null }, '--words', 'metric');
    expect([code, out]).toEqual([2, '']);
    expect(err).toMatch(/goal: .*DOC-036/);
  });
});

/** Names of all fields of an answer that its schema does not have. */
type Schema = {
  readonly properties?: Readonly<Record<string, Schema>>;
  readonly items?: Schema;
  readonly oneOf?: readonly Schema[];
  readonly anyOf?: readonly Schema[];
  readonly additionalProperties?: unknown;
  readonly $ref?: string;
  readonly $defs?: Readonly<Record<string, Schema>>;
};

type Known = NonNullable<Schema['$defs']>;

const branchesOf = (schema: Schema, known: Known): readonly Schema[] => {
  const meant = schema.$ref === undefined ? schema : known[schema.$ref.replace('#/$defs/', '')];
  if (meant === undefined) return [];
  const branches = [...(meant.oneOf ?? []), ...(meant.anyOf ?? [])];
  return [meant, ...branches.flatMap((branch) => branchesOf(branch, known))];
};

const undescribed = (
  schemas: readonly Schema[],
  value: unknown,
  path = '',
  known: Known = schemas[0]?.$defs ?? {},
): readonly string[] => {
  const all = schemas.flatMap((schema) => branchesOf(schema, known));
  if (Array.isArray(value)) {
    const inner = all.flatMap(({ items }) => items ?? []);
    return value.flatMap((one) => undescribed(inner, one, path, known));
  }
  if (typeof value !== 'object' || value === null) return [];
  if (all.some(({ additionalProperties }) => typeof additionalProperties === 'object')) return [];
  if (all.some(({ additionalProperties }) => additionalProperties === true)) return [];
  return Object.entries(value).flatMap(([field, one]) => {
    const inner = all.flatMap(({ properties }) => properties?.[field] ?? []);
    const here = `${path}.${field}`;
    return inner.length === 0 ? [here] : undescribed(inner, one, here, known);
  });
};

describe('the schemas of plan and verify', () => {
  it.each([
    ['plan', S1_PLAN],
    ['plan', { ...S1_PLAN, set: { ...S1_PLAN.set, usableRod: 0.3 } }],
    ['plan', { ...S1_PLAN, set: { ...S1_PLAN.set, lockLimit: 1 } }],
    ['verify', RIGHT],
    ['verify', WRONG],
  ])('fit their own inputs and answers: %s %#', async (name, input) => {
    const ajv = new Ajv2020({ strict: false });
    const schemas = JSON.parse((await command('compute', name, '--schema')).out);
    expect(ajv.validate(schemas.input, input), JSON.stringify(ajv.errors)).toBe(true);
    const { code, out, err } = await ask(name, input);
    expect([code, err]).toEqual([0, '']);
    const answer = JSON.parse(out);
    expect(ajv.validate(schemas.output, answer), JSON.stringify(ajv.errors)).toBe(true);
    expect(undescribed([schemas.output], answer)).toEqual([]);
  });
});
