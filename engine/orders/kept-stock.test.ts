/** Which loose bricks an order may take, on the demo house; its counts are invented. */
import { describe, expect, it } from 'vitest';
import type { HouseState } from '#state';
import { openExample } from '../../examples/open-example.ts';
import { openJob } from './index.ts';
import { freeFor, stockAssumptions, withBricksBack } from './kept-stock.ts';

const { house, show, state } = openExample('kestlemere');

const keptFor = (purpose: string, count = 19): HouseState => ({
  ...state,
  galleries: {
    mid: {
      stock: { F: 25, H: 3 },
      reserved: [{ kind: 'F', count, for: purpose }],
      countedAt: null,
      countedBy: null,
    },
  },
});

const freeAtMid = (set: string, record: HouseState): Readonly<Record<string, number>> =>
  new Map(Object.entries(freeFor(set, house, record).galleries)).get('mid')?.stock ?? {};

const fullFor = (set: string, record: HouseState): number | undefined =>
  freeAtMid(set, record)['F'];

describe('bricks that are kept', () => {
  it.each([
    ['releasing D3', 'D3', '9'],
    ['set 9', '9', 'D3'],
    ['D3, for the release', 'D3', '3'],
    ['(40)', '40', '4'],
  ])('for "%s" are for set %s and not for set %s', (purpose, own, other) => {
    expect(fullFor(own, keptFor(purpose))).toBe(25);
    expect(fullFor(other, keptFor(purpose))).toBe(6);
  });

  it.each(['the rehearsal', 'sets 9 and 11', '', 'releasing D33'])(
    'for "%s", which names no one set, are taken by nobody',
    (purpose) => {
      for (const set of ['9', '11', 'D3']) expect(fullFor(set, keptFor(purpose))).toBe(6);
    },
  );

  it('leave nothing where more are kept than were counted, and other kinds as they are', () => {
    expect(freeAtMid('9', keptFor('D3', 30))).toEqual({ F: 0, H: 3 });
  });

  it('are named, and so is a gallery where nobody counted', () => {
    expect(stockAssumptions('9', house, keptFor('D3'))).toEqual([
      { is: 'stockNotCounted', gallery: 'upper' },
      { is: 'stockKept', gallery: 'mid', kept: [{ kind: 'F', count: 19, for: 'D3' }] },
    ]);
    expect(stockAssumptions('D3', house, keptFor('D3'))).toEqual([
      { is: 'stockNotCounted', gallery: 'upper' },
    ]);
  });

  it('are out of the physics that search and judge share', () => {
    const mid = (set: string): number | undefined => {
      const job = openJob({ house, show, state }, set);
      if (!job.ok) throw new Error(`set ${set} can be asked for`);
      return job.value.physics.galleries.find(({ id }) => id === 'mid')?.stock['F'];
    };
    expect([mid('9'), mid('D3')]).toEqual([0, 19]);
  });
});

describe('bricks of a set that is said to be bare', () => {
  it('lie at whichever gallery takes them, beside what was counted there', () => {
    const job = openJob({ house, show, state }, '9');
    if (!job.ok) throw new Error('set 9 can be asked for');
    const { physics } = job.value;
    expect(withBricksBack(physics, [])).toBe(physics);
    const bricks = [{ kind: 'F', count: 6 }];
    const more = withBricksBack(physics, [{ is: 'bricksBack', set: '9', bricks }]);
    expect(more.galleries.map(({ stock }) => stock['F'])).toEqual([16, 6]);
  });
});
