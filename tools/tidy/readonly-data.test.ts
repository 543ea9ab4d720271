import { describe, expect, it } from 'vitest';
import { readonlyData } from './readonly-data.ts';

const faultsOf = (text: string, path = 'engine/a.ts') => readonlyData([{ path, text }]);

describe('readonly data', () => {
  it.each([
    ['massKg can be changed', 'type Item = { massKg: number };'],
    ['massKg can be changed', 'interface Item { massKg: number }'],
    ['an index can be changed', 'type Items = { [id: string]: number };'],
    ['items is a list that can be changed', 'type Show = { readonly items: Item[] };'],
    ['span is a list that can be changed', 'type Show = { readonly span: [number, number] };'],
  ])('finds that %s', (what, text) => {
    expect(faultsOf(`\n${text}`)).toMatchObject([{ line: 2, what }]);
  });

  it.each([
    'type Item = { readonly massKg: number; readonly items: readonly Item[] };',
    'const found: Fault[] = [];',
    'let best: { massKg: number } | null = null;',
    'type Verb = { hang(item: Item): void };',
    "declare module 'x' { interface Request { user: string } }",
  ])('takes %s', (text) => {
    expect(faultsOf(text)).toEqual([]);
  });

  it('leaves tests and oracles alone', () => {
    const text = 'type Item = { massKg: number };';
    expect(faultsOf(text, 'engine/a.test.ts')).toEqual([]);
    expect(faultsOf(text, 'validation/bricks/solver.ts')).toEqual([]);
  });
});
