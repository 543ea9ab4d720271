/** What a pull on the stop proves where friction grows with what hangs, and that is in doubt. */
import { describe, expect, it } from 'vitest';
import { add, DROPS, ease, RUN, rulesOf, standingAt } from './example-order.ts';

/**
 * A crate of 1000 N, give or take 300. It rubs with a tenth of its weight, over 50 N of the set: as
 * it is listed 150 N, and 180 N where it is as heavy as it may be.
 */
const plant = {
  pieces: { crate: { weightN: 1000, doubtN: 300 } },
  more: { frictionN: (items: object) => ('crate' in items ? 150 : 50) },
};
/** 1040 N as listed, 740 to 1340; and with seven bricks of 100 N 40 to 640. */
const start = standingAt(1, 7, { items: { crate: 'flying' }, closed: [RUN, ...DROPS] });
const drilled = (pullN: number) =>
  rulesOf({
    plant,
    start,
    steps: [ease(pullN, false), add(1)],
    options: { doubt: 'worst', faults: 'check' },
  });

describe('a set that stays under a pull', () => {
  it('[ORD-025] proves room for a brick by what the heaviest may rub, not by the list', () => {
    // A brick of 100 N and 180 N of friction; the list alone would ask for 250 N.
    expect(drilled(280)).toEqual([]);
    expect(drilled(279)).toEqual(['ORD-025']);
    expect(drilled(250)).toEqual(['ORD-025']);
  });

  it('[ORD-027] is not called a contradiction where the heaviest rubs more', () => {
    // 640 N of the heaviest and 180 N of friction stay under 820 N, though 640 and 150 do not.
    const heavy = (pullN: number) =>
      rulesOf({
        plant: { ...plant, more: { ...plant.more, handsBriefN: 2000 } },
        start,
        steps: [ease(pullN, false)],
        options: { doubt: 'worst', faults: 'check' },
      });
    expect(heavy(820)).toEqual([]);
    expect(heavy(821)).toEqual(['ORD-027']);
  });

  it('rubs as the set alone does where nothing hangs', () => {
    const bare = standingAt(1, 0, { closed: [RUN, ...DROPS] });
    const steps = [ease(90, false)];
    expect(rulesOf({ plant, start: bare, steps, options: { doubt: 'worst' } })).toEqual([]);
    expect(
      rulesOf({ plant, start: bare, steps: [ease(91, false)], options: { doubt: 'worst' } }),
    ).toEqual(['ORD-027']);
  });
});
