import { describe, expect, it } from 'vitest';
import { switchedOff } from './switched-off.ts';

const faultsOf = (text: string) => switchedOff([{ path: 'engine/a.test.ts', text }]);

describe('tests switched off', () => {
  it.each([
    "it.skip('a', f);",
    "describe.only('a', f);",
    "test.todo('a');",
    "it.skipIf(x)('a', f);",
    "it.each(t).skip('a', f);",
    "xit('a', f);",
    'context.skip();',
  ])('refuses %s', (text) => {
    expect(faultsOf(text)).toHaveLength(1);
  });

  it('takes a list that skips, and words in a title', () => {
    expect(faultsOf("items.skip(1); it('does not it.skip a brick', f);")).toEqual([]);
  });
});
