/** Breaches of restraints, unknown masses and single faults in full, their numbers by hand. */
import { describe, expect, it } from 'vitest';
import { metres, newtons } from '#quantities';
import type { Standing } from '#state';
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
  hungAt,
  PASSED,
  RUN,
  standingAt,
  type Trial,
} from './example-order.ts';
import { told } from './example-told.ts';

const hung = { frame: 'flying' } as const;
const closed = [RUN, ...DROPS];

const steel = bullLine({ kind: 'deadHangSteel', resists: 'in', from: metres(3), to: metres(3) });

const onSteel = (bricks: number) =>
  standingAt(3, bricks, {
    items: { frame: 'heldElsewhere' },
    restraints: [steel],
    service: 'deadHung',
  });

const header = { pieces: { header: { weightN: 1000, doubtN: 250 } } };
const headed = (heightM: number, bricks: number): Trial => ({
  plant: header,
  start: standingAt(heightM, bricks, { items: { header: 'flying' }, closed }),
  options: { doubt: 'worst' },
});

describe('restraints, in full', () => {
  const rig = (changes: Parameters<typeof bullLine>[0]): Trial => ({
    steps: [{ act: 'rig', restraint: bullLine(changes) }],
  });

  it('[ORD-018] [ORD-019] [ORD-037] that the register lacks', () => {
    expect(told('ORD-018', rig({ rating: null }))).toMatchInlineSnapshot(`
      "step 0 at 1 m, no limit in newtons
      ORD-018 stop at set 7, heightM 1
      measured none, limit none (common practice, no source)
      - height: 1 length
      - what: the bull line"
    `);
    expect(told('ORD-019', rig({ owner: null }))).toMatchInlineSnapshot(`
      "step 0 at 1 m, no limit in newtons
      ORD-019 caution at set 7, heightM 1
      measured none, limit none (common practice, no source)
      - height: 1 length
      - what: the bull line"
    `);
    expect(told('ORD-037', rig({ kind: 'choke' }))).toMatchInlineSnapshot(`
      "step 0 at 1 m, no limit in newtons
      ORD-037 caution at set 7, heightM 1
      measured none, limit none (common practice, no source)
      - height: 1 length"
    `);
  });

  it('[ORD-020] taken off too early', () => {
    const restraints = [bullLine()];
    const start = standingAt(3, 3, { restraints });
    const steps = [{ act: 'unrig', restraint: bullLine() }] as const;
    expect(told('ORD-020', { start, steps })).toMatchInlineSnapshot(`
      "step 0 at 3 m, 80 N past it
      ORD-020 stop at set 7, heightM 3
      measured -280 imbalance, limit 200 force (trade formula; ratings by house rule)
      - height: 3 length
      - what: the rope lock"
    `);
  });

  it('[ORD-021] [ORD-022] [ORD-023] of steel', () => {
    const off = [{ act: 'takeOffSteel' }] as const;
    expect(told('ORD-021', { start: onSteel(1), steps: off })).toMatchInlineSnapshot(`
      "step 0 at 3 m, 20 N past it
      ORD-021 stop at set 7, heightM 3
      measured 220 imbalance, limit 200 force (trade formula; ratings by house rule)
      - height: 3 length
      - what: the rope lock"
    `);
    expect(told('ORD-022', { start: onSteel(4), steps: off })).toMatchInlineSnapshot(`
      "step 0 at 3 m, 80 N past it
      ORD-022 stop at set 7, heightM 3
      measured -80 imbalance, limit none (common practice, no source)
      - height: 3 length"
    `);
    const restraints = [{ ...steel, rating: newtons(250) }];
    const start = standingAt(3, 3, { items: hung, restraints });
    const on = [{ act: 'hangOnSteel' }] as const;
    expect(told('ORD-023', { start, steps: on })).toMatchInlineSnapshot(`
      "step 0 at 3 m, 56 N past it
      ORD-023 stop at set 7, heightM 3
      measured 306 force, limit 250 force (house rule)
      - height: 3 length"
    `);
    const without = standingAt(3, 3, { items: hung });
    expect(told('ORD-023', { start: without, steps: on })).toContain('306 N past it');
  });

  it('[ORD-024] on a set that is out of use', () => {
    const what = (service: Standing['service']) =>
      breachOf('ORD-024', { start: { ...standingAt(1, 0), service }, steps: [fly(2)] }).finding
        .facts['what'];
    const paused = { ...standingAt(1, 0), service: 'paused' as const };
    expect(told('ORD-024', { start: paused, steps: [add(1)] })).toMatchInlineSnapshot(`
      "step 0 at 1 m, no limit in newtons
      ORD-024 stop at set 7, heightM 1
      measured none, limit none (house rule)
      - height: 1 length
      - what: paused"
    `);
    expect([what('paused'), what('lockedOut'), what('deadHung')]).toEqual([
      'paused',
      'locked out',
      'hung on steel',
    ]);
  });
});

describe('masses that nobody knows, in full', () => {
  it('[ORD-025] a brick too many', () => {
    // 40 + 1000 − 250 − 800 = −10 N.
    expect(told('ORD-025', { ...headed(1, 0), steps: [add(8)] })).toMatchInlineSnapshot(`
      "step 0 at 1 m, 10 N past it
      ORD-025 stop at set 7, heightM 1
      measured -10 imbalance, limit none (common practice, no source)
      - height: 1 length
      - plate: 8 count
      - doubt: 250 force"
    `);
  });

  it('[ORD-026] eased where it may not be', () => {
    expect(told('ORD-026', { ...headed(3, 10), steps: [ease(10, false)] })).toMatchInlineSnapshot(`
      "step 0 at 3 m, no limit in newtons
      ORD-026 stop at set 7, heightM 3
      measured none, limit none (trade formula; ratings by house rule)
      - height: 3 length
      - where: which is no stop"
    `);
    const light = breachOf('ORD-026', { ...headed(1, 8), steps: [ease(10, true)] });
    expect(light.finding.facts['where']).toBe('where it may leave the stop by itself');
    const weak = { ...header, more: { lowStop: { heightM: 1, ratedN: 1289 } } };
    const stop = breachOf('ORD-026', {
      ...headed(1, 0),
      plant: weak,
      steps: [ease(10, false)],
    });
    expect(stop.finding.facts['where']).toBe('with more on the stop than it is rated for');
  });

  it('[ORD-027] a pull that contradicts the list', () => {
    const left = { ...headed(1, 0), steps: [add(7), ease(89, true)] };
    expect(told('ORD-027', left)).toMatchInlineSnapshot(`
      "step 1 at 1 m, no limit in newtons
      ORD-027 stop at set 7, heightM 1
      measured 340 imbalance, limit 89 force (trade formula)
      - height: 1 length
      - where: it left the stop under"
    `);
    const stayed = breachOf('ORD-027', { ...headed(1, 0), steps: [add(7), ease(641, false)] });
    expect(stayed.finding.facts['where']).toBe('it stayed under');
  });
});

describe('single faults, in full', () => {
  it('[ORD-028] past the planning limit', () => {
    const trial = { start: standingAt(5.1, 1), steps: PASSED, options: CHECK };
    expect(told('ORD-028', trial)).toMatchInlineSnapshot(`
      "step 0 at 5.1 m, 1 N past it
      ORD-028 stop at set 7, heightM 5.1
      measured -101 imbalance, limit 100 force (house rule: the limit of the lock less one
          largest brick)
      - height: 5.1 length
      - what: the rope lock"
    `);
  });

  it('[ORD-029] a brick more or fewer', () => {
    const trial = { start: standingAt(5.1, 1), steps: PASSED, options: CHECK };
    expect(told('ORD-029', trial)).toMatchInlineSnapshot(`
      "step 0 at 5.1 m, 1 N past it
      ORD-029 stop at set 7, heightM 5.1
      measured -201 imbalance, limit 200 force (trade formula; ratings by house rule)
      - height: 5.1 length
      - what: the rope lock
      - where: one brick more than was counted"
    `);
  });

  it('[ORD-030] an item off by its tolerance', () => {
    const plant = (doubtN: number) => ({ pieces: { frame: { weightN: 300, doubtN } } });
    const heavy = { start: standingAt(2, 2, { items: hung }), steps: PASSED, options: CHECK };
    expect(told('ORD-030', { ...heavy, plant: plant(80) })).toMatchInlineSnapshot(`
      "step 0 at 2 m, 10 N past it
      ORD-030 stop at set 7, heightM 2, item frame
      measured 210 imbalance, limit 200 force (trade formula; ratings by house rule)
      - height: 2 length
      - what: the rope lock
      - where: heavier by its tolerance"
    `);
    // 40 − 10 + 300 − 500 = −170 N, and 80 N less.
    const light = { ...heavy, start: standingAt(2, 5, { items: hung }), plant: plant(80) };
    expect(told('ORD-030', light)).toMatchInlineSnapshot(`
      "step 0 at 2 m, 50 N past it
      ORD-030 stop at set 7, heightM 2, item frame
      measured -250 imbalance, limit 200 force (trade formula; ratings by house rule)
      - height: 2 length
      - what: the rope lock
      - where: lighter by its tolerance"
    `);
  });

  it('[ORD-031] an item dropped', () => {
    const start = standingAt(1, 3, { items: hung });
    expect(told('ORD-031', { start, steps: HANDS, options: CHECK })).toMatchInlineSnapshot(`
      "step 0 at 1 m, 60 N past it
      ORD-031 stop at set 7, heightM 1, item frame
      measured -260 imbalance, limit 200 force (trade formula; ratings by house rule)
      - height: 1 length
      - what: the rope lock"
    `);
  });

  it('[ORD-032] a rest that slips', () => {
    const start = standingAt(3, 3, { items: { tower: 'attachedResting' }, closed: [] });
    expect(told('ORD-032', { start, steps: PASSED, options: CHECK })).toMatchInlineSnapshot(`
      "step 0 at 3 m, 20 N past it
      ORD-032 stop at set 7, heightM 3
      measured 220 imbalance, limit 200 force (trade formula; ratings by house rule)
      - height: 3 length
      - what: the rope lock"
    `);
  });

  it('[ORD-033] a line that is let go', () => {
    const start = standingAt(3, 3, { restraints: [bullLine()] });
    expect(told('ORD-033', { start, steps: PASSED, options: CHECK })).toMatchInlineSnapshot(`
      "step 0 at 3 m, 80 N past it
      ORD-033 stop at set 7, heightM 3
      measured -280 imbalance, limit 200 force (trade formula; ratings by house rule)
      - height: 3 length
      - what: the rope lock
      - where: the bull line"
    `);
  });

  it('[ORD-034] a lock that slips', () => {
    const plant = { more: { highStop: { heightM: 19, ratedN: 300 } } };
    const start = { ...standingAt(5, 2), closed: [RUN] };
    expect(told('ORD-034', { plant, start, steps: PASSED, options: CHECK })).toMatchInlineSnapshot(`
        "step 0 at 5 m, 40 N past it
        ORD-034 stop at set 7, heightM 5
        measured -340 imbalance, limit 300 force (trade formula; ratings by house rule)
        - height: 5 length
        - to: 19 length"
      `);
  });

  it('[ORD-035] hands in an empty zone, and [ORD-038] a rest that is not there', () => {
    const start = { ...BARE, closed: [RUN] };
    expect(told('ORD-035', { start, steps: [attach('lamp')] })).toMatchInlineSnapshot(`
      "step 0 at 1 m, no limit in newtons
      ORD-035 caution at set 7, heightM 1
      measured none, limit none (common practice, no source)
      - height: 1 length"
    `);
    const high = standingAt(7, 4, { items: { tower: 'flying' } });
    const rest = [{ act: 'rest', item: 'tower' }] as const;
    expect(told('ORD-038', { start: high, steps: rest })).toMatchInlineSnapshot(`
      "step 0 at 7 m, no limit in newtons
      ORD-038 stop at set 7, heightM 7, item tower
      measured none, limit none (common practice, no source)
      - height: 7 length
      - lower: 6 length
      - upper: 1.2 length"
    `);
  });
});

describe('what a breach says', () => {
  it('[ORD-001] is the title of its rule, and the energy that it would set free', () => {
    const trial = { start: standingAt(5.1, 2) };
    expect(breachOf('ORD-001', trial)).toMatchObject({
      says: 'Nothing rated holds the set as it stands',
      releasableJ: null,
    });
    const releasableJ = ({ height }: Standing) => 10 * height;
    expect(breachOf('ORD-001', { ...trial, options: { releasableJ } }).releasableJ).toBe(51);
  });

  it('[ORD-008] gives the energy at the height where it is worst', () => {
    const releasableJ = ({ height }: Standing) => 10 * height;
    const trial = { start: hungAt(2, 4), steps: [fly(17)], options: { releasableJ } };
    expect(breachOf('ORD-008', trial).releasableJ).toBe(170);
  });
});
