/** Corners of a move and of what holds: names, both ways at once, and a micrometre of way. */
import { describe, expect, it } from 'vitest';
import { metres } from '#quantities';
import type { Restraint, Standing, Step } from '#state';
import {
  BARE,
  breachOf,
  bullLine,
  DROPS,
  fly,
  hungAt,
  PASSED,
  plantOf,
  RUN,
  rulesOf,
  standingAt,
  type Trial,
  tried,
} from './example-order.ts';

const closed = [RUN, ...DROPS];

describe('what holds, by its name', () => {
  it('is called as people call it at the rail', () => {
    const kinds: readonly Restraint['kind'][] = [
      'bullLine',
      'arborSling',
      'stands',
      'winch',
      'choke',
      'deadHangSteel',
      'pinnedPiece',
    ];
    const steps = kinds.map((kind): Step => ({ act: 'rig', restraint: bullLine({ kind }) }));
    expect(tried({ steps }).proofsDue.map(({ proof }) => proof)).toEqual([
      'see the bull line taut and tagged at the rail',
      'see the sling on the arbor taut and tagged at the rail',
      'see the stands under the batten taut and tagged at the rail',
      'see the winch on the hand line taut and tagged at the rail',
      'see the choke on the hand line taut and tagged at the rail',
      'see the dead-hang steel taut and tagged at the rail',
      'see the pinned piece taut and tagged at the rail',
    ]);
  });

  it('is named each way in which the doubt may lie', () => {
    // 20 N at 3 m, give or take 80: 100 N coming in, 60 N going out.
    const plant = { pieces: { frame: { weightN: 300, doubtN: 80 } } };
    const trial = { plant, start: hungAt(3, 3), options: { doubt: 'worst' } } as const;
    expect(tried(trial).states[0]).toMatchObject({
      heldBy: 'against going in: the rope lock; against going out: the rope lock',
      limit: 'planning',
    });
    const restraints = [bullLine()];
    expect(tried({ ...trial, start: hungAt(3, 3, { restraints }) }).states[0]).toMatchObject({
      heldBy: 'against going in: the rope lock; against going out: the bull line',
      limit: 'planning',
    });
  });

  it('leans on the nominal limit where one of both ways does', () => {
    // Balanced at 5 m but for 50 N, give or take 100: 150 N coming in, 50 N going out.
    const plant = { pieces: { frame: { weightN: 350, doubtN: 100 } } };
    const trial = { plant, start: hungAt(5, 3), options: { doubt: 'worst' } } as const;
    expect(tried(trial).states[0]?.limit).toBe('nominal');
  });

  it('[ORD-001] is said of coming in where both ways are short by as much', () => {
    // Balanced at 5 m, give or take 300.
    const plant = { pieces: { frame: { weightN: 300, doubtN: 300 } } };
    const breach = breachOf('ORD-001', { plant, start: hungAt(5, 3), options: { doubt: 'worst' } });
    expect(breach).toMatchObject({ byN: 100, finding: { measured: { value: 300 } } });
  });

  it('is the high stop for an arbor that stands on it, which is no lock', () => {
    expect(tried({ start: standingAt(19, 3) }).states[0]).toMatchObject({
      heldBy: 'against going out: the high stop',
      limit: null,
      holdInN: 200,
      holdOutN: 6000,
    });
  });
});

describe('a lock that is opened', () => {
  it('[ORD-007] says the worse of both ways in which the doubt may lie', () => {
    const plant = { pieces: { frame: { weightN: 300, doubtN: 300 } } };
    const opened = (bricks: number) =>
      breachOf('ORD-007', {
        plant,
        start: hungAt(3, bricks),
        steps: [fly(4)],
        options: { doubt: 'worst' },
      });
    // 20 N, and 320 or −280; with one brick more −80 N, and 220 or −380.
    expect(opened(3)).toMatchObject({ byN: 120, finding: { measured: { value: 320 } } });
    expect(opened(4)).toMatchObject({ byN: 180, finding: { measured: { value: -380 } } });
  });

  it('[ORD-034] slips nowhere on the stop itself, though that is rated for less', () => {
    // 40 − 180 N on the high stop: the lock holds more than the stop is rated for.
    const plant = { more: { highStop: { heightM: 19, ratedN: 100 } } };
    const start = standingAt(19, 0, { closed });
    expect(rulesOf({ plant, start, steps: PASSED, options: { faults: 'check' } })).toEqual([]);
  });
});

describe('a doubt that grows coming in', () => {
  it('[ORD-008] is followed to the lower end of the way', () => {
    const { at: asListed } = plantOf();
    const growing = (standing: Standing) => ({
      ...asListed(standing),
      doubtN: 10 * (20 - standing.height),
    });
    // 50 − 10 h as listed, and 200 − 10 h of doubt: 250 − 20 h, which is 200 N at 2.5 m.
    const trial = {
      plant: { more: { at: growing } },
      start: hungAt(5, 3),
      options: { doubt: 'worst' } as const,
    };
    expect(rulesOf({ ...trial, steps: [fly(2.6)] })).toEqual([]);
    const breach = breachOf('ORD-008', { ...trial, steps: [fly(2.4)] });
    expect(breach.byN).toBeCloseTo(2, 9);
    expect(breach.where).toBe(2.4);
    expect((breach.finding.facts.passes as { value: number }).value).toBeCloseTo(2.5, 9);
  });
});

describe('picks that are slack', () => {
  const slack = (contactM: number, toM: number, fromM = 1) =>
    tried({
      plant: { pieces: { flat: { weightN: 100, contactM } } },
      start: standingAt(fromM, 0, { items: { flat: 'attachedSlack' }, closed: [RUN] }),
      steps: [fly(toM)],
    }).states.at(-1)?.standing.items;

  it('stay slack up to the working height, and a micrometre over it', () => {
    expect(slack(6, 1.2)).toEqual({ flat: 'attachedSlack' });
    expect(slack(6, 1.2 + 5e-7)).toEqual({ flat: 'attachedSlack' });
    expect(slack(6, 1.21)).toEqual({ flat: 'flying' });
  });

  it('are drawn tight by a piece that does not lie below its height of contact', () => {
    expect(slack(1.2, 1.1)).toEqual({ flat: 'flying' });
    expect(slack(1.21, 1.1)).toEqual({ flat: 'attachedSlack' });
    expect(slack(6, 1, 1.2)).toEqual({ flat: 'attachedSlack' });
  });
});

describe('a micrometre of way', () => {
  const tower = { tower: 'flying' } as const;

  it('[ORD-008] is no way at all before a contact that is met at once', () => {
    // Half a micrometre under 6 m the deck has the tower: −510 N. From there on it flies.
    const start = standingAt(6 - 5e-7, 5, { items: tower, closed });
    expect(rulesOf({ start, steps: [fly(7)] })).toEqual(['ORD-001', 'ORD-007']);
  });

  it('[ORD-010] is no way at all after a contact, and is judged as a landing', () => {
    // −110 N at 6 m with the tower on the deck, and 390 N with it in the air.
    const start = standingAt(5, 1, { items: tower, closed });
    expect(rulesOf({ start, steps: [fly(6 + 5e-7)] })).toEqual(['ORD-008']);
    expect(rulesOf({ start, steps: [fly(6.1)] })).toEqual(['ORD-010']);
  });
});

describe('a line that ends on the way', () => {
  // 6 bricks and a frame: −280 N at 3 m, and 10 N more for each metre out.
  const moved = (restraints: Standing['restraints']): Trial => ({
    start: hungAt(3, 6, { restraints }),
    steps: [fly(5)],
  });

  it('[ORD-008] counts as far as it reaches, also where two of them meet', () => {
    const one = bullLine({ to: metres(4) });
    const other = bullLine({ from: metres(4) });
    expect(rulesOf(moved([one, other]))).toEqual([]);
    const breach = breachOf('ORD-008', moved([one]));
    expect(breach.finding.facts.passes).toMatchObject({ value: 4 });
    expect(breach.where).toBe(5);
    expect(rulesOf(moved([one, bullLine({ from: metres(4.5) })]))).toEqual(['ORD-008']);
  });
});

describe('the start of an order', () => {
  it('[ORD-018] tells every line that lacks something, once each', () => {
    const restraints = [bullLine({ rating: null }), bullLine({ to: null, tag: null })];
    expect(rulesOf({ start: { ...BARE, restraints } })).toEqual(['ORD-018', 'ORD-018', 'ORD-019']);
  });
});
