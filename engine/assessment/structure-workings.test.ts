/**
 * A working is right where its formula, read by a reader that knows nothing of the program, gives
 * its result from its own values. So every formula of both example houses is read and reckoned.
 */
import { describe, expect, it } from 'vitest';
import type { Working } from '#findings';
import { GRAVITY } from '#quantities';
import { openExample } from '../../examples/open-example.ts';
import { assess } from './assess.ts';
import { structureWorkingsOf } from './structure-workings.ts';

const HOUSES = ['kestlemere', 'skelderwick'] as const;

/** Sums, products, quotients, brackets, sqrt and sin, as an engineer reads them. */
const reckon = (formula: string, symbols: ReadonlyMap<string, number>): number => {
  const tokens = formula
    .replace(/sqrt\(/g, 'sqrt (')
    .replace(/sin\(/g, 'sin (')
    .split(/\s+/)
    .filter((token) => token !== '');
  let at = 0;
  const take = (): string => tokens[at++] ?? '';
  const factor = (): number => {
    const token = take();
    if (token === '(') {
      const value = sum();
      if (take() !== ')') throw new Error(`no end of the bracket in ${formula}`);
      return value;
    }
    if (token === 'sqrt') return Math.sqrt(factor());
    if (token === 'sin') return Math.sin(factor());
    if (token === 'g') return GRAVITY;
    const value = symbols.get(token) ?? Number(token);
    if (Number.isNaN(value)) throw new Error(`${token} of ${formula} has no value`);
    return value;
  };
  const product = (): number => {
    let value = factor();
    while (tokens[at] === '·' || tokens[at] === '/') {
      value = take() === '·' ? value * factor() : value / factor();
    }
    return value;
  };
  const sum = (): number => {
    let value = product();
    while (tokens[at] === '+' || tokens[at] === '−') {
      value = take() === '+' ? value + product() : value - product();
    }
    return value;
  };
  const value = sum();
  if (at !== tokens.length) throw new Error(`${formula} is not read to its end`);
  return value;
};

const allWorkings = (name: (typeof HOUSES)[number]): readonly (Working & { set: string })[] => {
  const { house, assessment } = openExample(name);
  return assessment.sets.flatMap((set) => {
    const { plant, states, whole } = structureWorkingsOf(set, house);
    const all = [...plant, ...states.flatMap(({ workings }) => workings), ...whole];
    return all.map((working) => ({ ...working, set: set.lineSet.id }));
  });
};

describe.each(HOUSES)('the workings of %s', (name) => {
  const workings = allWorkings(name);

  it('give their results from their own values', () => {
    expect(workings.length).toBeGreaterThan(100);
    for (const { set, title, formula, terms, result } of workings) {
      const symbols = new Map(
        terms.map(({ symbol, value }) => [symbol, value?.value ?? Number.NaN] as const),
      );
      const said = result.value?.value ?? Number.NaN;
      // Only rounding may differ: the same numbers through the same formula.
      const offBy = Math.abs(reckon(formula, symbols) - said) / Math.max(1e-9, Math.abs(said));
      expect(offBy, `set ${set}: ${title}`).toBeLessThan(1e-9);
    }
  });

  it('say where each formula is from, and use letters that the sheets can print', () => {
    for (const { title, formula, terms, result, source, omits } of workings) {
      expect(source, title).not.toBe('');
      const words = [title, formula, result.symbol, result.meaning, source, omits ?? ''];
      const all = [...words, ...terms.flatMap(({ symbol, meaning }) => [symbol, meaning])];
      expect(all.join(' '), title).not.toMatch(/[\u0370-\u03ff\u221a\u2211]/);
    }
  });

  it('leave no title twice in one state', () => {
    const { house, assessment } = openExample(name);
    for (const set of assessment.sets) {
      for (const { workings: own } of structureWorkingsOf(set, house).states) {
        expect(new Set(own.map(({ title }) => title)).size).toBe(own.length);
      }
    }
  });
});

describe('what is held against a limit', () => {
  const tower = allWorkings('kestlemere').filter(({ set }) => set === '11');
  const of = (title: RegExp): Working => {
    const found = tower.filter((working) => title.test(working.title)).at(-1);
    if (found === undefined) throw new Error(`no working ${title}`);
    return found;
  };

  it('is the line, the loft block, the head block and the pipe', () => {
    for (const title of [/^Tension of line/, /loft block of line/, /head block, batten/, /^Use/]) {
      expect(of(title).limit).not.toBeNull();
    }
  });

  it('has the reason of the limit with it, and says what the doubt adds', () => {
    const tension = of(/^Tension of line/);
    expect(tension.limit?.source).toBe('demo plan: 7,000 lbf over 8');
    expect(tension.terms.map(({ symbol }) => symbol)).toEqual(['T', 'w', 't']);
  });

  it('says so where a tolerance is missing', () => {
    const { house, show, state } = openExample('skelderwick');
    // Nobody says what a value of any basis may be off by.
    const silent = { ...house, rules: { ...house.rules, toleranceByBasis: {} } };
    const unsaid = assess(silent, show, state)
      .sets.flatMap((set) => structureWorkingsOf(set, silent).states)
      .flatMap(({ workings }) => workings)
      .filter(({ title, formula }) => title.startsWith('Tension of line') && formula === 'T + w');
    expect(unsaid.length).toBeGreaterThan(0);
    for (const { omits } of unsaid) expect(omits).toMatch(/tolerance of a mass that nobody/);
  });

  it('says so where the limit itself is not known', () => {
    const head = allWorkings('skelderwick').filter(({ title }) => /^Force on the head/.test(title));
    expect(head.length).toBeGreaterThan(0);
    for (const { limit, omits } of head) {
      expect(limit).toBeNull();
      expect(omits).toMatch(/rating of the head block is not known, so that it is held against/);
    }
  });

  it('is nothing where the structure is not known', () => {
    const { house, assessment } = openExample('kestlemere');
    const motor = assessment.sets.find(({ lineSet }) => lineSet.id === 'M1');
    if (motor === undefined) throw new Error('no M1');
    expect(structureWorkingsOf(motor, house)).toEqual({ plant: [], states: [], whole: [] });
  });
});
