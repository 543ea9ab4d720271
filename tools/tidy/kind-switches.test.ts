import { describe, expect, it } from 'vitest';
import { kindSwitches } from './kind-switches.ts';

const faultsOf = (text: string) => kindSwitches([{ path: 'engine/a.ts', text }]);

describe('switches over kinds', () => {
  it('refuses one that ends without a default', () => {
    expect(faultsOf("\nswitch (item.kind) { case 'pipe': f(); }")).toMatchObject([{ line: 2 }]);
    expect(faultsOf("switch (kind) { case 'pipe': f(); }")).toHaveLength(1);
  });

  it('refuses a default that goes on', () => {
    expect(faultsOf("switch (kind) { case 'pipe': f(); default: g(kind); }")).toHaveLength(1);
  });

  it('takes one that ends in unreachable, and a switch over something else', () => {
    expect(
      faultsOf("switch (a.kind) { case 'pipe': f(); default: return unreachable(a); }"),
    ).toEqual([]);
    expect(faultsOf('switch (unit) { case 1: f(); }')).toEqual([]);
  });
});
