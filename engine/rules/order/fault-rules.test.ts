/** Masses in doubt and single faults: one step inside each rule and one past it. */

import { describe, expect, it } from 'vitest';
import type { ItemPhase, Step } from '#state';
import {
  add,
  attach,
  BARE,
  breachOf,
  bullLine,
  CHECK,
  DROPS,
  ease,
  fly,
  HANDS,
  PASSED,
  RUN,
  release,
  rulesOf,
  standingAt,
  type Trial,
  tried,
} from './example-order.ts';

const hung = { frame: 'flying' } as const;

describe('a mass that nobody knows', () => {
  const plant = { pieces: { header: { weightN: 1000, doubtN: 250 } } };
  const start = standingAt(1, 0, { items: { header: 'flying' }, closed: [RUN, ...DROPS] });
  const trial = { plant, start, options: { doubt: 'worst' } as const };

  it('[ORD-025] loads what leaves it batten heavy at its lightest, and not a brick more', () => {
    expect(rulesOf({ ...trial, steps: [add(7)] })).toEqual([]);
    const breach = breachOf('ORD-025', { ...trial, steps: [add(8)] });
    expect(breach.byN).toBeCloseTo(10, 9);
  });

  it('[ORD-025] goes on by single bricks as far as a pull has shown', () => {
    const shown = [add(7), ease(120, false)];
    expect(rulesOf({ ...trial, steps: [...shown, add(1, 'C')] })).toEqual([]);
    expect(rulesOf({ ...trial, steps: [...shown, add(1)] })).toContain('ORD-025');
    const more = [add(7), ease(150, false), add(1), ease(90, true)];
    expect(rulesOf({ ...trial, steps: more })).toEqual([]);
  });

  it('[ORD-026] eases on a stop only, held by it and by hand', () => {
    expect(rulesOf({ ...trial, steps: [ease(700, false)] })).toEqual([]);
    expect(rulesOf({ ...trial, steps: [ease(701, false)] })).toEqual(['ORD-026']);
    const above = standingAt(3, 10, { items: start.items, closed: start.closed });
    expect(rulesOf({ plant, start: above, steps: [ease(10, false)] })).toEqual(['ORD-026']);
    const where = (of: Trial) => breachOf('ORD-026', of).finding.facts.where;
    expect(where({ plant, start: above, steps: [ease(10, false)] })).toBe('which is no stop');
    expect(where({ ...trial, steps: [ease(701, false)] })).toBe('with more than hands may pull');
    const light = standingAt(1, 8, { items: start.items, closed: start.closed });
    expect(rulesOf({ ...trial, start: light, steps: [ease(10, true)] })).toContain('ORD-026');
    const weak = { ...plant, more: { lowStop: { heightM: 1, ratedN: 1289 } } };
    expect(rulesOf({ ...trial, plant: weak, steps: [ease(10, false)] })).toEqual([
      'ORD-001',
      'ORD-026',
    ]);
  });

  it('[ORD-012] eases only with the run zone closed', () => {
    const open = { ...start, closed: DROPS };
    expect(rulesOf({ ...trial, start: open, steps: [ease(10, false)] })).toEqual(['ORD-012']);
  });

  it('[ORD-027] stops where a pull contradicts the list', () => {
    expect(rulesOf({ ...trial, steps: [add(7), ease(90, true)] })).toEqual([]);
    expect(rulesOf({ ...trial, steps: [add(7), ease(89, true)] })).toEqual(['ORD-027']);
    expect(rulesOf({ ...trial, steps: [add(7), ease(640, false)] })).toEqual([]);
    expect(rulesOf({ ...trial, steps: [add(7), ease(641, false)] })).toEqual(['ORD-027']);
  });

  it('eases at the high stop with all signs turned over', () => {
    const high = (bricks: number) =>
      standingAt(19, bricks, { items: { header: 'flying' }, closed: [RUN, ...DROPS] });
    const at = (bricks: number, pullN: number, lifted: boolean) =>
      rulesOf({ ...trial, start: high(bricks), steps: [ease(pullN, lifted)] });
    expect(at(12, 10, false)).toEqual([]);
    expect(at(10, 10, false)).toContain('ORD-026');
    const weak = { ...plant, more: { highStop: { heightM: 19, ratedN: 589 } } };
    const tried_ = { ...trial, plant: weak, start: high(12), steps: [ease(10, false)] };
    expect(rulesOf(tried_)).toEqual(['ORD-001', 'ORD-026']);
    const rated = { ...plant, more: { highStop: { heightM: 19, ratedN: 590 } } };
    expect(rulesOf({ ...tried_, plant: rated })).toEqual([]);
    expect(at(12, 89, true)).toEqual(['ORD-027']);
    expect(at(12, 90, true)).toEqual([]);
    expect(at(12, 640, false)).toEqual([]);
    expect(at(12, 641, false)).toEqual(['ORD-027']);
  });

  it('widens what a pull has shown by what each brick after it may be off', () => {
    const doubtful = { pieces: { header: { weightN: 1000, doubtN: 250 } }, brickDoubtN: 4 };
    const shown = { ...trial, plant: doubtful };
    const oneByOne = (pullN: number) =>
      rulesOf({ ...shown, steps: [add(6), ease(pullN, false), add(1), add(1)] });
    expect(oneByOne(258)).toEqual([]);
    expect(oneByOne(257)).toEqual(['ORD-025']);
  });

  it('says what it takes on trust of a pull', () => {
    const trust = 'friction is no more than the house reckons, where a pull moved nothing';
    expect(tried({ ...trial, steps: [ease(10, false)] }).assumed).toContain(trust);
    expect(tried(trial).assumed).not.toContain(trust);
  });

  it('forgets what was pulled when the set has moved', () => {
    const listed = { plant, start, options: { doubt: 'none' } as const };
    expect(rulesOf({ ...listed, steps: [ease(1, true), fly(1)] })).toEqual([]);
  });
});

describe('the worst single fault', () => {
  it('[ORD-028] counts the lock for its planning limit with people in its path', () => {
    expect(rulesOf({ start: standingAt(5, 1), steps: PASSED, options: CHECK })).toEqual([]);
    const breach = breachOf('ORD-028', {
      start: standingAt(5.1, 1),
      steps: PASSED,
      options: CHECK,
    });
    expect(breach.byN).toBeCloseTo(1, 9);
    const closed = { ...standingAt(5.1, 1), closed: [RUN] };
    expect(rulesOf({ start: closed, steps: PASSED, options: CHECK })).toEqual([]);
    expect(
      rulesOf({ start: closed, steps: [{ act: 'reopen', zone: RUN }], options: CHECK }),
    ).toContain('ORD-028');
  });

  it('[ORD-029] holds one brick more or fewer than was counted', () => {
    expect(rulesOf({ start: standingAt(5, 1), steps: PASSED, options: CHECK })).not.toContain(
      'ORD-029',
    );
    const breach = breachOf('ORD-029', {
      start: standingAt(5.1, 1),
      steps: PASSED,
      options: CHECK,
    });
    expect(breach.finding.facts.where).toBe('one brick more than was counted');
    const few = standingAt(2, 2, { items: { frame: 'flying' } });
    expect(
      breachOf('ORD-029', { start: few, steps: PASSED, options: CHECK }).finding.facts.where,
    ).toBe('one brick fewer than was counted');
  });

  it('[ORD-030] holds an item at either end of its tolerance, where it was taken as listed', () => {
    const start = standingAt(2, 2, { items: hung });
    const plant = (doubtN: number) => ({ pieces: { frame: { weightN: 300, doubtN } } });
    expect(rulesOf({ plant: plant(70), start, steps: PASSED, options: CHECK })).not.toContain(
      'ORD-030',
    );
    expect(
      breachOf('ORD-030', { plant: plant(71), start, steps: PASSED, options: CHECK }).byN,
    ).toBeCloseTo(1, 9);
  });

  it('[ORD-031] holds the set after one item dropped', () => {
    const at = (bricks: number) => standingAt(1, bricks, { items: { lamp: 'flying' } });
    expect(rulesOf({ start: at(1), steps: HANDS, options: CHECK })).toEqual([]);
    const heavy = standingAt(1, 3, { items: hung });
    expect(breachOf('ORD-031', { start: heavy, steps: HANDS, options: CHECK }).byN).toBeCloseTo(
      60,
      9,
    );
    expect(rulesOf({ start: { ...heavy, closed: [RUN] }, steps: HANDS, options: CHECK })).toEqual(
      [],
    );
    // With hands off, what hangs is taken to stay where it is clamped.
    expect(rulesOf({ start: heavy, steps: PASSED, options: CHECK })).not.toContain('ORD-031');
  });

  it('[ORD-032] holds the whole piece when its rest slips', () => {
    const at = (bricks: number) =>
      standingAt(3, bricks, { items: { tower: 'attachedResting' }, closed: [] });
    expect(rulesOf({ start: at(5), steps: PASSED, options: CHECK })).not.toContain('ORD-032');
    expect(breachOf('ORD-032', { start: at(3), steps: PASSED, options: CHECK }).byN).toBeCloseTo(
      20,
      9,
    );
  });

  it('[ORD-033] holds without any one of its restraints', () => {
    const at = (bricks: number, count: number) =>
      standingAt(3, bricks, { restraints: Array.from({ length: count }, () => bullLine()) });
    expect(rulesOf({ start: at(2, 1), steps: PASSED, options: CHECK })).toEqual([]);
    expect(rulesOf({ start: at(3, 1), steps: PASSED, options: CHECK })).toEqual(['ORD-033']);
    expect(rulesOf({ start: at(3, 2), steps: PASSED, options: CHECK })).toEqual([]);
  });

  it('[ORD-033] takes what is made fast for a stop, and a line for what a person may lose', () => {
    const rules = (kind: 'arborSling' | 'pinnedPiece' | 'choke' | 'bullLine') =>
      rulesOf({
        start: standingAt(3, 3, { restraints: [bullLine({ kind })] }),
        steps: PASSED,
        options: CHECK,
      });
    expect(rules('arborSling')).toEqual([]);
    expect(rules('pinnedPiece')).toEqual([]);
    expect(rules('bullLine')).toEqual(['ORD-033']);
    expect(rules('choke')).toContain('ORD-033');
    const steel = bullLine({ kind: 'deadHangSteel', resists: 'in' });
    const hungOnSteel = standingAt(3, 1, {
      items: { frame: 'heldElsewhere' },
      restraints: [steel],
      service: 'deadHung',
    });
    expect(rulesOf({ start: hungOnSteel, steps: PASSED, options: CHECK })).toEqual([]);
  });

  it('tries no fault on how the set stood before the first step', () => {
    const past = standingAt(5.1, 1);
    expect(rulesOf({ start: past, options: CHECK })).toEqual([]);
    expect(rulesOf({ start: past, steps: PASSED, options: CHECK })).toContain('ORD-028');
    expect(
      rulesOf({ start: past, steps: [{ act: 'close', zone: RUN }, ...PASSED], options: CHECK }),
    ).toEqual([]);
  });

  it('[ORD-034] stands on the next stop if the lock slips', () => {
    const start = { ...standingAt(5, 2), closed: [RUN] };
    const plant = (ratedN: number) => ({ more: { highStop: { heightM: 19, ratedN } } });
    expect(rulesOf({ plant: plant(340), start, steps: PASSED, options: CHECK })).toEqual([]);
    const breach = breachOf('ORD-034', { plant: plant(339), start, steps: PASSED, options: CHECK });
    expect(breach.byN).toBeCloseTo(1, 9);
    expect(breach.finding.measured?.value).toBeCloseTo(-340, 9);
    const rising = { slopeN: -10, more: { highStop: { heightM: 19, ratedN: 1 } } };
    expect(
      rulesOf({
        plant: rising,
        start: { ...standingAt(2, 2), closed: [RUN] },
        steps: PASSED,
        options: CHECK,
      }),
    ).toEqual([]);
    const heavy = standingAt(9, 1, { items: hung, closed: [RUN] });
    const low = (ratedN: number) => ({ more: { lowStop: { heightM: 1, ratedN } } });
    expect(rulesOf({ plant: low(240), start: heavy, steps: PASSED, options: CHECK })).toEqual([]);
    expect(
      breachOf('ORD-034', { plant: low(239), start: heavy, steps: PASSED, options: CHECK }).finding,
    ).toMatchObject({
      measured: { value: 240 },
      facts: { to: { value: 1 } },
    });
  });

  it('[ORD-035] warns of riggers in a zone that counts as empty', () => {
    const steps = [attach('lamp')];
    expect(rulesOf({ steps })).toEqual([]);
    const closed = { ...BARE, closed: [RUN] };
    expect(rulesOf({ start: closed, steps })).toEqual(['ORD-035']);
    const hands: readonly (readonly [ItemPhase, Step])[] = [
      ['flying', release('lamp')],
      ['flying', { act: 'rest', item: 'lamp' }],
      ['attachedSlack', { act: 'takeUp', item: 'lamp' }],
    ];
    for (const [lamp, step] of hands) {
      expect(rulesOf({ start: { ...closed, items: { lamp } }, steps: [step] })).toEqual([
        'ORD-035',
      ]);
    }
  });

  it('says that it leans on the empty zone, and gives the energy that a fault sets free', () => {
    const closed = { ...standingAt(1, 3, { items: hung }), closed: [RUN] };
    expect(tried({ start: closed, steps: HANDS, options: CHECK }).assumed).toContain(
      'the closed zone is empty: a single fault would run through it',
    );
    const releasableJ = ({ items }: { readonly items: object }) =>
      JSON.stringify(items) === '{"frame":"away"}' ? 7 : 3;
    const trial = {
      start: standingAt(1, 3, { items: hung }),
      steps: HANDS,
      options: { ...CHECK, releasableJ },
    };
    expect(breachOf('ORD-031', trial).releasableJ).toBe(7);
    expect(tried(trial).states[0]?.releasableJ).toBe(3);
    expect(tried({ start: closed }).states[0]?.releasableJ).toBeNull();
  });
});
