import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { afterAll, describe, expect, it } from 'vitest';
import { heard as command } from './heard.ts';

const folder = mkdtempSync(join(tmpdir(), 'counterpoise-motion-'));
afterAll(() => rmSync(folder, { recursive: true }));

let files = 0;

const ask = async (name: string, input: unknown) => {
  files += 1;
  const file = join(folder, `${files}.json`);
  writeFileSync(file, JSON.stringify(input));
  return command('compute', name, '--input', file);
};

/** 33 bricks on a bare electric on its low stop: 776 lb arbor heavy, growing to 853. */
const RELEASABLE = {
  curve: [
    { height: 0.9144, below: -3453.6, above: -3453.6 },
    { height: 18.5928, below: -3794.3, above: -3794.3 },
  ],
  lowStop: 0.9144,
  highStop: 18.5928,
  height: 0.9144,
  hold: 222.4,
};
const RUNAWAY = {
  ...RELEASABLE,
  hold: 0,
  moves: {
    purchase: 1,
    arbor: 447.2,
    hanging: 76.7,
    lineMass: 32.9,
    blockMass: 0,
    friction: { share: 0.05, of: 'batten', constant: 17.8 },
  },
};
const DROPPED = {
  mass: 11.34,
  from: 17.6784,
  speed: 1,
  air: { dragCoefficient: 1.2, area: 0.03, density: 1.2 },
  bounce: { least: 2, shareOfFall: 0.25 },
  levels: [
    { name: 'deck', height: 0 },
    { name: 'trap', height: -3 },
  ],
};
const TOLD = {
  ...RUNAWAY,
  liftLines: { stiffness: 180_000, largestShare: 0.2, breakingStrength: 31_137 },
  stop: { stiffness: 1e6 },
};

/** Names of all fields of an answer that its schema does not have. */
const undescribed = (schema: Schema, value: unknown, path = ''): readonly string[] => {
  if (Array.isArray(value)) {
    return value.flatMap((one) => undescribed(schema.items ?? {}, one, path));
  }
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([field, inner]) => {
    const named = branchesOf(schema).find(({ properties }) => properties && field in properties);
    const next = named?.properties?.[field];
    const here = `${path}.${field}`;
    return next === undefined ? [here] : undescribed(next, inner, here);
  });
};

type Schema = {
  readonly properties?: Readonly<Record<string, Schema>>;
  readonly items?: Schema;
  readonly oneOf?: readonly Schema[];
};

const branchesOf = (schema: Schema): readonly Schema[] => schema.oneOf ?? [schema];

describe('compute releasable, runaway and dropped', () => {
  it.each([
    ['releasable', RELEASABLE],
    ['runaway', RUNAWAY],
    ['runaway', TOLD],
    ['runaway', { ...RUNAWAY, hold: 1e4 }],
    ['runaway', { ...RUNAWAY, height: 10, already: { way: 'in', speed: 0.4 } }],
    ['dropped', DROPPED],
  ])('publish schemas that their own inputs and answers fit: %s %#', async (name, input) => {
    const ajv = new Ajv2020({ strict: false });
    const schemas = JSON.parse((await command('compute', name, '--schema')).out);
    expect(ajv.validate(schemas.input, input), JSON.stringify(ajv.errors)).toBe(true);
    const { code, out, err } = await ask(name, input);
    expect([code, err]).toEqual([0, '']);
    const answer = JSON.parse(out);
    expect(ajv.validate(schemas.output, answer), JSON.stringify(ajv.errors)).toBe(true);
    expect(undescribed(schemas.output, answer)).toEqual([]);
  });

  it('answer in joules, seconds and metres', async () => {
    const free = JSON.parse((await ask('releasable', RELEASABLE)).out);
    expect(free.energy / 1000).toBeCloseTo(64.07, 1);
    expect(free.starts[0].free.way).toBe('out');
    const ran = JSON.parse((await ask('runaway', TOLD)).out);
    expect([ran.time, ran.speed]).toEqual([expect.closeTo(2.39, 2), expect.closeTo(15.05, 1)]);
    expect(ran.energy.kinetic / 1000).toBeCloseTo(63.1, 1);
    // 447 kg at 15 m/s against 180 kN/m: 3.4 times what one line bears with a fifth of it.
    expect(ran.snatch.value.overBreaking.value).toBeGreaterThan(0.8);
    const [deck, trap] = JSON.parse((await ask('dropped', DROPPED)).out).levels;
    expect(deck.free.energy).toBeCloseTo(11.34 * (9.80665 * 17.6784 + 0.5), 6);
    expect(deck.inAir.energy).toBeLessThan(deck.free.energy);
    expect(trap.zone.allowance).toEqual({ distance: expect.closeTo(5.17, 2), basis: 'houseRule' });
  });

  it('say what they were not told', async () => {
    const { out } = await ask('runaway', RUNAWAY);
    const { snatch, impact } = JSON.parse(out);
    expect(snatch).toEqual({ known: false, needs: ['liftLines.stiffness'] });
    expect(impact).toEqual({ known: false, needs: ['stop'] });
  });

  it('[MOT-003] refuse what does not fit together, by its path in a list', async () => {
    const [low, high] = RUNAWAY.curve;
    const middle = { height: 9, below: -3600, above: -3300 };
    const jump = { ...RUNAWAY, curve: [low, middle, high] };
    const { code, out, err } = await ask('runaway', [RUNAWAY, jump]);
    expect([code, out]).toEqual([2, '']);
    expect(err).toContain('MOT-003');
    expect(err).toContain('[1].moves.hanging');
  });

  it('refuse bad input by path', async () => {
    const { code, out, err } = await ask('dropped', { ...DROPPED, mass: -1 });
    expect([code, out]).toEqual([2, '']);
    expect(err).toContain('mass');
  });
});
