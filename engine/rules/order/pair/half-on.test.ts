/** Both or neither (R10), on a pair in round numbers. */
import { describe, expect, it } from 'vitest';
import type { PairStep, Step } from '#state';
import { add, attach, BARE, bullLine, fly, RUN, release, standingAt } from '../example-order.ts';
import {
  close,
  flownPair,
  HEADER,
  of7,
  of8,
  pairBreach,
  pairRules,
  RIGHT,
  reopen,
  setPhysics,
  together,
  triedPair,
} from './example-pair.ts';

describe('a pair moves together', () => {
  it('[ORD-041] refuses one that is moved alone', () => {
    const breach = pairBreach('ORD-041', { starts: flownPair(5, 7), steps: [of8(fly(6))] });
    expect(breach).toMatchObject({ step: 0, where: 7, finding: { facts: { partner: '7' } } });
  });

  it('[ORD-041] takes a flight of both, and one that goes nowhere', () => {
    expect(pairRules({ starts: flownPair(5, 7), steps: [together(6, 8)] })).toEqual([]);
    expect(pairRules({ starts: flownPair(5, 7), steps: [of8(fly(7))] })).toEqual([]);
  });

  it('[ORD-041] lets each go by itself while they share nothing', () => {
    const starts = [standingAt(5, 0, { closed: [RUN] }), BARE] as const;
    expect(pairRules({ starts, steps: [of7(fly(1)), ...RIGHT] })).not.toContain('ORD-041');
  });
});

describe('a piece that is half on', () => {
  const upper = { ...BARE, closed: [{ zone: 'drop', gallery: 'upper' } as const] };

  it('[ORD-042] refuses bricks before it is on both', () => {
    const trial = {
      starts: [upper, BARE],
      steps: [of7(attach('header')), of7(add(3)), of8(attach('header'))],
    } as const;
    expect(pairBreach('ORD-042', trial)).toMatchObject({
      step: 1,
      finding: { at: { set: '7', item: 'header' }, facts: { has: '7' } },
    });
  });

  it('[ORD-042] refuses to fly either, or both', () => {
    const starts = [{ ...BARE, items: HEADER, closed: [RUN] }, BARE] as const;
    const bare = { starts, pair: {} } as const;
    expect(pairRules({ ...bare, steps: [of8(fly(2))] })).toContain('ORD-042');
    expect(pairRules({ ...bare, steps: [together(2, 2)] })).toContain('ORD-042');
    expect(pairRules({ ...bare, steps: [of7(fly(2))] })).toEqual(
      expect.arrayContaining(['ORD-041', 'ORD-042']),
    );
  });

  it('[ORD-042] takes the other end, zones, and the same end off again', () => {
    expect(pairRules({ steps: [of7(attach('header')), of8(close('upper'))] })).toEqual([]);
    expect(pairRules({ steps: [of7(attach('header')), of8(attach('header'))] })).toEqual([]);
    expect(pairRules({ steps: [of7(attach('header')), of7(release('header'))] })).toEqual([]);
    const line = { act: 'rig', restraint: bullLine() } as const;
    expect(pairRules({ steps: [of7(attach('header')), of8(line)] })).toEqual([]);
  });

  it('[ORD-042] takes its own end drawn tight or set down', () => {
    const slack: Step = { act: 'attach', item: 'header', as: 'attachedSlack' };
    const tight: Step = { act: 'takeUp', item: 'header' };
    expect(pairRules({ steps: [of7(slack), of7(tight), of8(reopen('mid'))] })).toEqual([]);
    const rest: Step = { act: 'rest', item: 'header' };
    expect(pairRules({ steps: [of7(attach('header')), of7(rest)] })).toEqual([]);
  });

  it('[ORD-042] names the set that works, and the first of both', () => {
    const half = [of7(attach('header'))];
    const at = (step: PairStep) => pairBreach('ORD-042', { steps: [...half, step] }).finding.at.set;
    expect(at(of8(attach('lamp')))).toBe('8');
    expect(at(of7(attach('lamp')))).toBe('7');
    expect(at(together(2, 2))).toBe('7');
  });

  it('[ORD-041] is not said of the one that has nothing of it', () => {
    const starts = [{ ...BARE, items: HEADER, closed: [RUN] }, BARE] as const;
    expect(pairRules({ starts, steps: [of8(fly(2))] })).toEqual(['ORD-042']);
  });

  it('[ORD-042] is over when one of two pieces is on both and the other on neither', () => {
    const shared = [
      { first: 'header', second: 'header' },
      { first: 'lamp', second: 'lamp' },
    ];
    const on = [of7(attach('header')), of7(attach('lamp'))];
    // The lamp is begun before the header is done.
    expect(pairRules({ pair: { shared }, steps: on })).toEqual(['ORD-042']);
    const both = {
      starts: [{ ...BARE, items: { header: 'flying', lamp: 'flying' } }, BARE],
    } as const;
    const ends = [of8(attach('lamp')), of8(attach('header'))];
    expect(pairRules({ ...both, pair: { shared }, steps: ends })).toEqual([]);
    const one = [...on.slice(0, 1), of8(attach('header')), of7(close('upper')), of7(add(1))];
    expect(pairRules({ pair: { shared }, steps: one })).toEqual([]);
  });

  it('[ORD-042] refuses another item meanwhile', () => {
    const steps = [of7(attach('header')), of8(attach('lamp'))];
    expect(pairRules({ steps })).toEqual(['ORD-042']);
  });
});

describe('a piece that is half on, whatever share it takes', () => {
  /** 150 N on each: its own share is within the lock of 200 N, and all of it is not. */
  const light = {
    first: { physics: setPhysics('7', 150), start: standingAt(5, 0) },
    second: { physics: setPhysics('8', 150), start: standingAt(5, 0) },
  };

  it('[ORD-043] refuses it on the lock', () => {
    const breach = pairBreach('ORD-043', { pair: light, steps: [of7(attach('header'))] });
    // At 5 m the bare set is balanced: 300 N against 200 N.
    expect(breach).toMatchObject({ step: 0, where: 5, byN: 100, finding: { at: { set: '7' } } });
    expect(breach.finding.measured?.value).toBe(300);
    expect(breach.finding.at.item).toBe('header');
  });

  it('[ORD-043] is said once, when it comes to be so', () => {
    const steps = [of7(attach('header')), of7(close('mid')), of7(reopen('mid'))];
    expect(pairRules({ pair: light, steps })).toEqual(['ORD-043']);
    const starts = { ...light.first, start: standingAt(5, 0, { items: HEADER }) };
    const begun = { ...light, first: starts };
    expect(pairBreach('ORD-043', { pair: begun }).step).toBe(-1);
    expect(pairRules({ pair: begun, steps: steps.slice(1) })).toEqual(['ORD-043']);
  });

  it('[ORD-043] counts what else hangs there, and no piece of the other set', () => {
    const lamp = { ...light.first, start: standingAt(5, 0, { items: { lamp: 'flying' } }) };
    const breach = pairBreach('ORD-043', {
      pair: { ...light, first: lamp },
      steps: [of7(attach('header'))],
    });
    expect(breach.byN).toBe(150);
    // Two pieces, one half on each: the lamp of 50 N and 50 N, and the header of 300 N.
    const shared = [
      { first: 'header', second: 'header' },
      { first: 'lamp', second: 'lamp' },
    ];
    const halves = {
      first: { ...light.first, start: standingAt(5, 0, { items: HEADER }) },
      second: { ...light.second, start: standingAt(5, 0, { items: { lamp: 'flying' } }) },
      shared,
    };
    const found = triedPair({ pair: halves });
    expect(found.broken).toMatchObject({
      rule: 'ORD-043',
      byN: 100,
      finding: { at: { set: '7' } },
    });
    expect(found.alsoBroken).toEqual([]);
  });

  it('[ORD-043] refuses bricks that were to balance a share it may not have', () => {
    const starts = [
      standingAt(1, 0, { items: HEADER }),
      standingAt(1, 3, { items: HEADER }),
    ] as const;
    const breach = pairBreach('ORD-043', { starts, steps: [of7(release('header'))] });
    // Set 8 is left with its three bricks, and perhaps nothing of the header.
    expect(breach).toMatchObject({ byN: 60, finding: { at: { set: '8' } } });
    expect(breach.finding.measured?.value).toBe(-260);
    expect(pairRules({ starts })).toEqual([]);
  });

  it('[ORD-043] takes it on the stop', () => {
    expect(pairRules({ steps: [of7(attach('header'))] })).toEqual([]);
    const starts = [{ ...BARE, items: HEADER }, BARE] as const;
    expect(pairRules({ starts })).toEqual([]);
  });
});
