import { describe, expect, it } from 'vitest';
import { faultOfTitle, faultsOfCommits } from './commit-titles.ts';

describe('commit titles', () => {
  it.each([
    'balance: count spreader plates in the arbor load',
    'docs: say what a trim is',
    'sheets: bring the stack to the card',
    'state: pass unknown masses on',
  ])('takes "%s"', (title) => {
    expect(faultOfTitle(title)).toBeUndefined();
  });

  it.each([
    'count spreader plates',
    'Balance: count spreader plates',
    'balance: Count spreader plates',
    'balance: counted spreader plates',
    'balance: counts spreader plates',
    'balance: counting spreader plates',
    'balance: count spreader plates.',
    'attic: count spreader plates',
    `balance: count ${'plates '.repeat(15)}`,
  ])('refuses "%s"', (title) => {
    expect(faultOfTitle(title)).toBeDefined();
  });

  it('names the commit', () => {
    expect(faultsOfCommits([{ id: 'a1b2c3', title: 'wip' }])).toMatchObject([
      { file: 'commit a1b2c3', what: '"wip"' },
    ]);
  });
});
