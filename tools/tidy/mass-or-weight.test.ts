import { describe, expect, it } from 'vitest';
import { massOrWeight } from './mass-or-weight.ts';

const faultsOf = (text: string) => massOrWeight([{ path: 'engine/a.ts', text }]);

describe('mass or weight', () => {
  it.each([
    'const itemMassN = 1;',
    'const totalMassLbf = 1;',
    'type T = { readonly pipeWeightKg: number };',
    'const f = (clothWeightLb: number) => 0;',
    'const mass: Newtons = x;',
    'type T = { readonly weight: Kilograms };',
  ])('refuses %s', (text) => {
    expect(faultsOf(text)).toHaveLength(1);
  });

  it.each([
    'const itemMassKg = 1;',
    'const itemWeightN = 1;',
    'const counterweightKg = 1;',
    'const massPerLength = 1;',
    'const amassed = 1; const min = 2;',
    'type T = { readonly mass: Kilograms; readonly weight: Newtons };',
  ])('takes %s', (text) => {
    expect(faultsOf(text)).toEqual([]);
  });

  it('names each name once', () => {
    expect(faultsOf('const massN = 1;\nconst y = massN + massN;')).toMatchObject([{ line: 1 }]);
  });
});
