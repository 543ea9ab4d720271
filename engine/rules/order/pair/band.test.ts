/** Coupled sets within their band, on a pair in round numbers: −1 to 3 m. */
import { describe, expect, it } from 'vitest';
import { attach, standingAt } from '../example-order.ts';
import { flownPair, of7, of8, pairBreach, pairRules, RIGHT, together } from './example-pair.ts';

const metre = (value: number) => ({ value, kind: 'length' }) as const;

describe('coupled sets at rest', () => {
  const at = (m8: number) =>
    ({
      starts: [standingAt(1, 0), standingAt(m8, 0)],
      steps: [of7(attach('header')), of8(attach('header'))],
    }) as const;

  it('[ORD-039] says where a piece goes on both out of their band', () => {
    const breach = pairBreach('ORD-039', at(6));
    expect(breach).toMatchObject({
      step: 1,
      where: 1,
      finding: {
        at: { set: '7' },
        measured: metre(5),
        limit: metre(3),
        facts: { partner: '8', partnerAt: metre(6), least: metre(-1), most: metre(3) },
      },
    });
  });

  it('[ORD-039] takes the band to its very end', () => {
    expect(pairRules(at(4))).not.toContain('ORD-039');
    expect(pairRules(at(4.01))).toContain('ORD-039');
  });

  it('[ORD-039] sees a pair that stands so before the first step, and says it once', () => {
    const trial = {
      starts: flownPair(8, 6),
      steps: [of7({ act: 'close', zone: { zone: 'run' } })],
    };
    expect(pairBreach('ORD-039', trial)).toMatchObject({
      step: -1,
      finding: { measured: { value: -2 }, limit: { value: -1 } },
    });
    expect(pairRules(trial).filter((rule) => rule === 'ORD-039')).toHaveLength(1);
  });
});

describe('coupled sets on the way', () => {
  it('[ORD-040] says where they leave the band, and by how much at worst', () => {
    const breach = pairBreach('ORD-040', { starts: flownPair(5, 7), steps: [together(3, 9)] });
    // From 2 m to 6 m apart: 3 m is a quarter of the way.
    expect(breach).toMatchObject({
      step: 0,
      where: 3,
      finding: {
        measured: metre(6),
        limit: metre(3),
        facts: {
          from: metre(5),
          to: metre(3),
          partnerFrom: metre(7),
          partnerTo: metre(9),
          passes: metre(4.5),
        },
      },
    });
  });

  it('[ORD-040] says nothing of a flight that stays within, though one goes much farther', () => {
    expect(pairRules({ starts: flownPair(5, 4), steps: [together(9, 12)] })).toEqual([]);
    expect(pairRules({ steps: RIGHT })).toEqual([]);
  });

  it('[ORD-040] lets a pair that is out of its band be brought back', () => {
    const starts = flownPair(8, 6);
    expect(pairRules({ starts, steps: [together(7, 6)] })).toEqual(['ORD-039']);
    expect(pairRules({ starts, steps: [together(9, 6)] })).toEqual(['ORD-039', 'ORD-040']);
    // As far out as before is no way back.
    expect(pairRules({ starts, steps: [together(7, 5)] })).toEqual(['ORD-039', 'ORD-040']);
    const high = flownPair(5, 10);
    expect(pairRules({ starts: high, steps: [together(5, 9)] })).toEqual(['ORD-039']);
  });

  it('[ORD-040] sees a pair that is brought through the band and out of its other end', () => {
    // From 2 m below to 4 m above, and both are a metre out: 3 m is five sixths of the way.
    const trial = { starts: flownPair(8, 6), steps: [together(2, 6)] };
    expect(pairBreach('ORD-040', trial)).toMatchObject({
      finding: { measured: metre(4), limit: metre(3), facts: { passes: metre(3) } },
    });
    expect(pairBreach('ORD-040', { ...trial, steps: [together(9, 6)] })).toMatchObject({
      finding: { measured: metre(-3), limit: metre(-1), facts: { passes: metre(8) } },
    });
  });

  it('[ORD-040] does not ask battens that share nothing', () => {
    const starts = [
      standingAt(5, 0, { closed: [{ zone: 'run' }] }),
      standingAt(5, 0, { closed: [{ zone: 'run' }] }),
    ] as const;
    expect(pairRules({ starts, steps: [together(1, 15)] })).toEqual([]);
  });
});
