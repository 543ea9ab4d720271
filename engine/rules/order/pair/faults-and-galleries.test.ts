/** The galleries are one house (V6), and one of the two may stop (10.7, trap 22). */
import { describe, expect, it } from 'vitest';
import { metres } from '#quantities';
import type { PairStep, Standing } from '#state';
import { add, attach, fly, plantOf, RUN, release, remove, standingAt } from '../example-order.ts';
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

describe('bricks for both', () => {
  /** 7 on the low stop, by the upper gallery; 8 at 9 m, by the mid one. */
  const starts = [standingAt(1, 0, { closed: [] }), standingAt(9, 0, { closed: [] })] as const;
  const shut = [of7(close('upper')), of7(add(1)), of8(close('mid'))];

  it('[ORD-044] refuses bricks in hand at two galleries', () => {
    const breach = pairBreach('ORD-044', { starts, steps: [...shut, of8(add(1, 'B', 'mid'))] });
    expect(breach).toMatchObject({
      step: 3,
      finding: {
        at: { set: '8', gallery: 'mid' },
        facts: { gallery: 'Mid gallery', other: 'Upper gallery', partner: '7' },
      },
    });
  });

  it('[ORD-044] sees it the other way round too, which no rule of one set does', () => {
    const steps = [
      of8(close('mid')),
      of8(add(1, 'B', 'mid')),
      of7(close('upper')),
      of7(add(1)),
    ] as const;
    expect(pairRules({ starts, steps })).toEqual(['ORD-044']);
  });

  it('[ORD-044] takes one gallery after the other, and one for both', () => {
    const after = [...shut, of7(reopen('upper')), of8(add(1, 'B', 'mid'))];
    expect(pairRules({ starts, steps: after })).toEqual([]);
    expect(pairRules({ steps: RIGHT })).toEqual([]);
  });

  it('[ORD-044] is of two sets: one that goes from gallery to gallery has another rule', () => {
    const steps = [
      of8(close('upper')),
      of8(close('mid')),
      of8(add(1, 'B', 'mid')),
      of7(add(1)),
      of7(add(1)),
    ] as const;
    const own = [of8(close('mid')), of8(add(1, 'B', 'mid')), of8(close('upper')), of8(remove(1))];
    expect(pairRules({ starts, steps: own })).not.toContain('ORD-044');
    expect(pairRules({ starts, steps }).filter((rule) => rule === 'ORD-044')).toHaveLength(2);
  });

  it('[ORD-044] does not count bricks over an open zone, which is a breach of its own', () => {
    const steps = [of7(add(1)), of8(close('mid')), of8(add(1, 'B', 'mid'))];
    expect(pairRules({ starts, steps })).toEqual(['ORD-013']);
    const elsewhere = [of7(close('mid')), of7(add(1)), of8(add(1, 'B', 'mid'))];
    expect(pairRules({ starts, steps: elsewhere })).toEqual(['ORD-013']);
  });

  it('[ORD-044] is over when the run or another gallery is not what is reopened', () => {
    const steps = [of7(close('run')), ...shut, of7(reopen('run')), of8(add(1, 'B', 'mid'))];
    expect(pairRules({ starts, steps })).toContain('ORD-044');
    const wrong = [...shut, of7(reopen('mid')), of8(close('mid')), of8(add(1, 'B', 'mid'))];
    expect(pairRules({ starts, steps: wrong })).toContain('ORD-044');
  });

  it('[ORD-015] is said once where one set alone takes too many', () => {
    const galleries = plantOf().galleries.map((each) => ({ ...each, stock: { B: 4, C: 1 } }));
    const of = (set: string, id: string) => ({
      physics: setPhysics(set, id === 'much' ? 600 : 200, { galleries }),
      start: standingAt(1, 0),
    });
    const pair = { first: of('7', 'much'), second: of('8', 'little') };
    const on = [of7(attach('header')), of8(attach('header'))];
    const stocks = (steps: readonly PairStep[]) =>
      pairRules({ pair, steps: [...on, ...steps] }).filter((rule) => rule === 'ORD-015');
    expect(stocks([of7(add(5))])).toHaveLength(1);
    expect(stocks([of8(add(1)), of7(add(4))])).toHaveLength(1);
    expect(stocks([of8(add(1)), of7(add(3))])).toHaveLength(0);
    expect(stocks([of8(add(1, 'C')), of7(add(1, 'C'))])).toHaveLength(1);
    expect(stocks([of8(add(2)), of7(add(1, 'C'))])).toHaveLength(0);
    expect(stocks([of7(add(4)), of7(remove(4))])).toHaveLength(0);
    const breach = pairBreach('ORD-015', { pair, steps: [...on, of8(add(1)), of7(add(4))] });
    expect(breach.finding).toMatchObject({
      measured: { value: 4, kind: 'count' },
      limit: { value: 3, kind: 'count' },
      facts: { kind: 'B', gallery: 'Upper gallery' },
    });
  });

  it('[ORD-015] counts what the other set has taken', () => {
    const galleries = plantOf().galleries.map((each) => ({ ...each, stock: { B: 4, C: 0 } }));
    const pair = {
      first: { physics: setPhysics('7', 300, { galleries }), start: standingAt(1, 0) },
      second: { physics: setPhysics('8', 200, { galleries }), start: standingAt(1, 0) },
    };
    const on = [of7(attach('header')), of8(attach('header')), of7(add(3))];
    const breach = pairBreach('ORD-015', { pair, steps: [...on, of8(add(2))] });
    expect(breach).toMatchObject({ step: 3, finding: { at: { set: '8' }, limit: { value: 1 } } });
    expect(pairRules({ pair, steps: [...on, of8(add(1))] })).toEqual([]);
    expect(pairRules({ pair, steps: [...on, of7(remove(1)), of8(add(2))] })).toEqual([]);
  });
});

describe('one of a pair stops and the other goes on', () => {
  const checked = { faults: 'check' } as const;
  const open = flownPair(5, 7).map((each) => ({ ...each, closed: [] }));
  const [seven, eight] = open;
  const starts = [seven ?? standingAt(5, 0), eight ?? standingAt(7, 0)] as const;

  it('[ORD-045] is a breach with people in its path, with the number', () => {
    const breach = pairBreach('ORD-045', { starts, steps: [together(6, 8)], options: checked });
    // Three bricks against all 500 N of the header at 5 m, where the bare set is balanced.
    expect(breach).toMatchObject({
      step: 0,
      where: 6,
      byN: 110,
      finding: { at: { set: '7' }, facts: { partner: '8', share: 'none' } },
    });
    expect(pairRules({ starts, steps: [together(6, 8)], options: checked })).toContain('ORD-012');
  });

  it('[ORD-045] is an assumption with its number in a closed run', () => {
    const trial = { starts: flownPair(5, 7), steps: [together(6, 8)], options: checked };
    const { broken, assumed, oneStops } = triedPair(trial);
    expect(broken).toBeNull();
    expect(assumed.some((each) => each.includes('one of them has all of the piece'))).toBe(true);
    // Set 7: 40 − 10 (h − 1) − 300, and 500 N more or nothing; set 8 with 200 N of bricks.
    expect(oneStops).toEqual([
      {
        step: 0,
        set: '7',
        all: { imbalance: 200, at: 5 },
        nothing: { imbalance: -310, at: 6 },
        lag: 1,
      },
      {
        step: 0,
        set: '8',
        all: { imbalance: 280, at: 7 },
        nothing: { imbalance: -230, at: 8 },
        lag: 1,
      },
    ]);
  });

  it('[ORD-045] is none where the lock would hold it', () => {
    const pair = {
      first: {
        physics: setPhysics('7', 50),
        start: standingAt(5, 0, { items: HEADER, closed: [] }),
      },
      second: {
        physics: setPhysics('8', 50),
        start: standingAt(5, 0, { items: HEADER, closed: [] }),
      },
    };
    const rules = pairRules({ pair, steps: [together(6, 6)], options: checked });
    expect(rules).not.toContain('ORD-045');
  });

  it('[ORD-045] counts every mass at its worst where masses are in doubt', () => {
    const heavy = (set: string) =>
      plantOf({ pieces: { header: { weightN: 250, doubtN: 10 } }, more: { set } });
    const pair = {
      first: { physics: heavy('7'), start: flownPair(5, 7)[0] },
      second: { physics: heavy('8'), start: flownPair(5, 7)[1] },
    };
    const worst = triedPair({ pair, steps: [together(6, 8)], options: { doubt: 'worst' } });
    expect(worst.oneStops[0]?.all.imbalance).toBe(220);
    const listed = triedPair({ pair, steps: [together(6, 8)] });
    expect(listed.oneStops[0]?.all.imbalance).toBe(200);
  });

  it('[ORD-045] counts the doubt of the bricks with it, each way', () => {
    const doubtful = (set: string) =>
      plantOf({ pieces: { header: { weightN: 250 } }, brickDoubtN: 2, more: { set } });
    const pair = {
      first: { physics: doubtful('7'), start: flownPair(5, 7)[0] },
      second: { physics: doubtful('8'), start: flownPair(5, 7)[1] },
    };
    // Set 7 has four bricks with its pipe weight, set 8 three.
    const moved = triedPair({ pair, steps: [together(6, 8)], options: { doubt: 'worst' } });
    expect(moved.oneStops.map(({ all, nothing }) => [all.imbalance, nothing.imbalance])).toEqual([
      [208, -318],
      [286, -236],
    ]);
    const still = triedPair({ pair, steps: [together(5, 8)], options: { doubt: 'worst' } });
    expect(still.oneStops[0]).toMatchObject({
      all: { imbalance: 208, at: 5 },
      nothing: { imbalance: -308, at: 5 },
    });
    const listed = triedPair({ pair, steps: [together(5, 8)] });
    expect(listed.oneStops[0]).toMatchObject({
      all: { imbalance: 200, at: 5 },
      nothing: { imbalance: -300, at: 5 },
    });
  });

  it('[ORD-045] says whether all or nothing is the worse, of each of the two', () => {
    const few = [
      standingAt(5, 1, { items: { header: 'flying' } }),
      standingAt(7, 2, { items: { header: 'flying' } }),
    ] as const;
    const { broken, alsoBroken } = triedPair({
      starts: few,
      steps: [together(6, 8)],
      options: { faults: 'check' },
    });
    const found = [broken, ...alsoBroken].filter((each) => each?.rule === 'ORD-045');
    // Set 7 with one brick: 500 − 100 at 5 m; set 8 with two: −60 − 200 + 500 at 7 m.
    expect(found.map((each) => [each?.finding.at.set, each?.byN])).toEqual([
      ['7', 200],
      ['8', 80],
    ]);
    expect(found.map((each) => each?.finding.facts['share'])).toEqual(['all', 'all']);
    expect(found[0]?.finding.facts['height']).toEqual({ value: 5, kind: 'length' });
  });

  it('[ORD-045] is not asked of battens that share nothing, nor where no fault is tried', () => {
    const bare = [standingAt(5, 0), standingAt(5, 0)] as const;
    expect(triedPair({ starts: bare, steps: [together(6, 6)] }).oneStops).toEqual([]);
    const { broken, alsoBroken, assumed } = triedPair({
      starts,
      steps: [together(6, 8)],
      options: { faults: 'skip' },
    });
    expect([broken, ...alsoBroken].map((each) => each?.rule)).toEqual(['ORD-012', 'ORD-012']);
    expect(assumed.join()).not.toContain('has all of the piece');
  });

  it('[ORD-045] is no assumption where the lock would hold it', () => {
    const light = (set: string) => ({
      physics: setPhysics(set, 50),
      start: standingAt(5, 0, { items: HEADER, closed: [RUN] }),
    });
    const pair = { first: light('7'), second: light('8') };
    const { assumed } = triedPair({ pair, steps: [together(6, 6)], options: checked });
    expect(assumed.join()).not.toContain('has all of the piece');
  });

  it('says how far one may fall behind, at the tighter end', () => {
    const lag = (from: readonly [number, number], to: readonly [number, number]) =>
      triedPair({ starts: flownPair(...from), steps: [together(...to)] }).oneStops[0]?.lag;
    expect(lag([5, 7], [6, 8])).toBe(1);
    expect(lag([5, 5], [6, 6.5])).toBe(1);
    expect(lag([5, 5.5], [6, 8.5])).toBe(0.5);
    expect(lag([8, 6], [7, 7])).toBe(0);
    expect(lag([5, 7], [3, 9])).toBe(0);
  });
});

describe('a piece let go on one of a pair', () => {
  const checked = { faults: 'check' } as const;
  const small = (closed: Standing['closed']) => ({
    first: { physics: setPhysics('7', 80), start: standingAt(5, 0, { items: HEADER, closed }) },
    second: { physics: setPhysics('8', 150), start: standingAt(5, 0, { items: HEADER, closed }) },
  });
  const steps = [of7(attach('lamp'))];

  it('[ORD-046] leaves all of it to the other one, which nothing holds', () => {
    const breach = pairBreach('ORD-046', { pair: small([]), steps, options: checked });
    // 230 N of header on set 8, which is balanced bare at 5 m; its lock holds 200 N.
    expect(breach).toMatchObject({
      step: 0,
      where: 5,
      byN: 30,
      finding: { at: { set: '8', item: 'header' }, facts: { partner: '7' } },
    });
  });

  it('[ORD-046] counts what else hangs on the other one', () => {
    const { second, ...pair } = small([]);
    const lit = { ...HEADER, lamp: 'flying' } as const;
    const start = standingAt(5, 0, { items: lit, closed: [] });
    const found = pairBreach('ORD-046', {
      pair: { ...pair, second: { ...second, start } },
      steps,
      options: checked,
    });
    expect(found.byN).toBe(80);
  });

  it('[ORD-046] is an assumption in a closed run', () => {
    const { alsoBroken, broken, assumed } = triedPair({
      pair: small([RUN]),
      steps,
      options: checked,
    });
    expect([broken, ...alsoBroken].map((each) => each?.rule)).not.toContain('ORD-046');
    expect(assumed.some((each) => each.includes('let go on one set'))).toBe(true);
  });

  it('[ORD-046] is held on the stop, and asked only with hands on', () => {
    const on = [of7(attach('header')), of8(attach('header'))];
    expect(pairRules({ steps: on, options: checked })).toEqual([]);
    const zone = [of7(close('mid')), of7(reopen('mid')), of7(fly(4))];
    expect(pairRules({ pair: small([]), steps: zone, options: checked })).not.toContain('ORD-046');
    const closed = [of7(close('run')), ...on];
    const { assumed } = triedPair({ steps: closed, options: checked });
    expect(assumed.join()).not.toContain('let go on one set');
    expect(pairRules({ pair: small([]), steps })).not.toContain('ORD-046');
  });
});

describe('a step for a pair', () => {
  it('[ORD-111] is for one of the two', () => {
    const { refused, sets } = triedPair({
      steps: [of7(attach('header')), { set: '9', step: release('header') }, of8(attach('header'))],
    });
    expect(refused).toMatchObject({ step: 1, refusal: { code: 'ORD-111', path: 'steps[1]' } });
    expect(sets.first.states).toHaveLength(2);
    expect(sets.second.states).toHaveLength(1);
  });

  it('[ORD-111] is a flight of each of them once', () => {
    const move = { set: '7', to: metres(2) };
    const twice: PairStep = { together: [move, move] };
    expect(triedPair({ steps: [twice] }).refused?.refusal.code).toBe('ORD-111');
  });

  it('says once what is to be seen once, though it is of both', () => {
    const { proofsDue } = triedPair({ steps: RIGHT });
    expect(proofsDue.filter(({ proof }) => proof === 'the marshal says: clear')).toHaveLength(2);
    expect(proofsDue.map(({ step }) => step)).toEqual(
      proofsDue.map(({ step }) => step).toSorted((one, other) => one - other),
    );
  });

  it('[ORD-111] is taken where it names both', () => {
    expect(triedPair({ steps: RIGHT }).refused).toBeNull();
  });

  it('says what one set refuses by the step of the pair', () => {
    const steps = [of7(attach('header')), of8(attach('header')), of8(attach('header'))];
    expect(triedPair({ steps }).refused).toMatchObject({ step: 2, refusal: { code: 'ORD-102' } });
  });
});
