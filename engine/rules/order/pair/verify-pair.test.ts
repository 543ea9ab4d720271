/** What the judge of a pair makes of two replays: one order of steps, one verdict. */

import { describe, expect, it } from 'vitest';
import { metres } from '#quantities';
import type { PairStep } from '#state';
import { add, attach, BARE, fly, RUN, release, standingAt } from '../example-order.ts';
import {
  close,
  flownPair,
  HEADER,
  of7,
  of8,
  pairRules,
  RIGHT,
  reopen,
  triedPair,
} from './example-pair.ts';

const UPPER = { zone: 'drop', gallery: 'upper' } as const;
const MID = { zone: 'drop', gallery: 'mid' } as const;

describe('two replays', () => {
  it('have each their own steps, zones and flights of both', () => {
    const { sets } = triedPair({ steps: RIGHT });
    // On both: attach, close, add, reopen, close, fly.
    expect(sets.first.states).toHaveLength(7);
    expect(sets.second.states).toHaveLength(7);
    expect(sets.first.states.at(-1)?.standing.height).toBe(5);
    expect(sets.second.states.at(-1)?.standing.height).toBe(7);
    expect(sets.second.states.at(-1)?.standing.closed).toEqual([RUN]);
  });

  it('begin with the zones of both closed, each once', () => {
    const starts = [
      { ...BARE, closed: [UPPER, RUN] },
      { ...BARE, closed: [RUN, MID] },
    ] as const;
    const { sets } = triedPair({ starts });
    expect(sets.first.states[0]?.standing.closed).toEqual([UPPER, RUN, MID]);
    expect(sets.second.states[0]?.standing.closed).toEqual([UPPER, RUN, MID]);
  });

  it('end for both where one of them ends', () => {
    const lost = [of7(attach('header')), of8(attach('header')), of8(attach('header'))];
    const { refused, sets } = triedPair({ steps: [...lost, of7(close('upper')), of7(add(3))] });
    expect(refused).toMatchObject({ step: 2, refusal: { code: 'ORD-102' } });
    expect(sets.first.states).toHaveLength(2);
    expect(sets.second.states).toHaveLength(2);
    const other = triedPair({
      steps: [of8(attach('header')), of7(release('header')), of8(release('header'))],
    });
    expect(other.refused?.step).toBe(1);
    expect(other.sets.second.states).toHaveLength(2);
    expect(other.sets.first.states).toHaveLength(1);
  });

  it('end with the one that ends first, where both do', () => {
    const twice = [of8(release('header')), of7(release('header'))];
    expect(triedPair({ steps: twice }).refused?.step).toBe(0);
    expect(triedPair({ steps: twice }).sets.first.refused).toBeNull();
    expect(triedPair({ steps: twice.toReversed() }).refused?.step).toBe(0);
    const strange = { set: '9', step: attach('header') };
    expect(triedPair({ steps: [strange, ...twice] }).refused?.refusal.code).toBe('ORD-111');
    expect(triedPair({ steps: [...twice, strange] }).refused?.refusal.code).toBe('ORD-102');
  });

  it('do not begin where one of them cannot be read', () => {
    const off = triedPair({ starts: [BARE, standingAt(30, 0)], steps: RIGHT });
    expect(off.refused).toMatchObject({ step: -1, refusal: { code: 'ORD-107' } });
    expect(off.sets.second.states).toEqual([]);
    expect(off.sets.first.states).toHaveLength(1);
  });

  it('[ORD-111] is refused where only one of two is known', () => {
    const to = metres(5);
    const odd: PairStep = {
      together: [
        { set: '7', to },
        { set: '9', to },
      ],
    };
    expect(triedPair({ steps: [odd] }).refused?.refusal.code).toBe('ORD-111');
  });

  it('needs a band', () => {
    for (const band of [
      { leastM: 2, mostM: 1 },
      { leastM: Number.NaN, mostM: 1 },
    ]) {
      expect(() => triedPair({ pair: { band } })).toThrow(/a least and a most, not/);
    }
    expect(triedPair({ pair: { band: { leastM: 1, mostM: 1 } } }).broken).toBeNull();
  });
});

describe('one verdict', () => {
  it('breaks by the steps of the pair, whichever set it is', () => {
    const steps = [of8(add(1)), of7(add(1)), of8(fly(2))];
    const { broken, alsoBroken } = triedPair({ steps });
    const all = [broken, ...alsoBroken].map((each) => [each?.step, each?.rule]);
    expect(all).toEqual([
      [0, 'ORD-013'],
      [1, 'ORD-013'],
      [2, 'ORD-012'],
    ]);
  });

  it('has what a set stands like before the first step as its step −1', () => {
    const starts = [BARE, standingAt(1, 5)] as const;
    expect(triedPair({ starts }).broken).toMatchObject({ rule: 'ORD-001', step: -1 });
  });

  it('keeps cautions apart', () => {
    const steps = [of7(close('run')), of7(attach('header')), of8(attach('header'))];
    const { broken, alsoBroken, cautions } = triedPair({ steps });
    expect([broken, ...alsoBroken]).toEqual([null]);
    expect(cautions.map(({ rule, step }) => [rule, step])).toEqual([
      ['ORD-035', 1],
      ['ORD-035', 2],
    ]);
  });

  it('says each proof once for each step', () => {
    const { proofsDue } = triedPair({ steps: RIGHT });
    expect(proofsDue.map(({ step, proof }) => [step, proof.slice(0, 12)])).toEqual([
      [2, 'the marshal '],
      [3, 'count the pl'],
      [4, 'count the pl'],
      [6, 'the marshal '],
      [7, 'inch test be'],
    ]);
  });

  it('assumes the listed shares wherever a piece is on both, and nowhere else', () => {
    const shares = (trial: Parameters<typeof triedPair>[0]): number =>
      triedPair(trial).assumed.filter((each) => each.startsWith('anywhere in the band')).length;
    expect(shares({ steps: RIGHT })).toBe(1);
    expect(shares({ steps: [of7(attach('header'))] })).toBe(0);
    expect(shares({ starts: flownPair(5, 7) })).toBe(1);
  });

  it('takes a piece that lies beside a batten for one that is not on it', () => {
    const starts = [
      { ...BARE, items: { header: 'beside' } },
      { ...BARE, items: { header: 'beside' } },
    ] as const;
    const alone = [of7(close('run')), of7(fly(2)), of7(reopen('run'))];
    expect(pairRules({ starts, steps: alone })).toEqual([]);
    expect(pairRules({ starts: [{ ...BARE, items: HEADER }, BARE], steps: alone })).toContain(
      'ORD-041',
    );
  });
});
