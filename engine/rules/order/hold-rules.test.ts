/** What holds a set at rest: one step inside each rule and one past it. */
import { describe, expect, it } from 'vitest';
import { metres, newtons } from '#quantities';
import type { ItemPhase, Restraint, Step } from '#state';
import {
  add,
  attach,
  BARE,
  breachOf,
  bullLine,
  DROPS,
  fly,
  plantOf,
  RUN,
  release,
  remove,
  rulesOf,
  standingAt,
  tried,
} from './example-order.ts';

const hung = { frame: 'flying' } as const;

describe('what stands is held', () => {
  it('[ORD-001] takes a start that the lock just holds', () => {
    expect(rulesOf({ start: standingAt(1, 2, { height: metres(5) }) })).toEqual([]);
  });

  it('[ORD-001] stops one newton more, and says where and by how much', () => {
    const breach = breachOf('ORD-001', { start: standingAt(5.1, 2) });
    expect(breach).toMatchObject({ step: -1, where: 5.1 });
    expect(breach.byN).toBeCloseTo(1, 9);
    expect(breach.finding.facts.what).toBe('the rope lock');
  });

  it('[ORD-002] takes an item on the low stop, and above it what the lock holds', () => {
    expect(rulesOf({ steps: [attach('motor')] })).toEqual([]);
    const start = standingAt(3, 1);
    expect(rulesOf({ start, steps: [attach('frame')] })).toContain('ORD-002');
    expect(rulesOf({ start: standingAt(3, 2), steps: [attach('frame')] })).toEqual([]);
    expect(breachOf('ORD-002', { start, steps: [attach('frame')] }).byN).toBeCloseTo(20, 9);
  });

  it('[ORD-003] takes bricks to the limit of the lock and not one more', () => {
    const start = { ...BARE, closed: DROPS };
    expect(rulesOf({ start, steps: [add(2)] })).toEqual([]);
    expect(rulesOf({ start, steps: [add(2), add(1, 'C')] })).toEqual(['ORD-003']);
    expect(breachOf('ORD-003', { start, steps: [add(5)] }).byN).toBeCloseTo(60, 9);
    expect(rulesOf({ start, steps: [add(5)] })).toEqual(['ORD-003']);
  });

  it('[ORD-004] takes bricks off to the limit of the lock and not one more', () => {
    const start = standingAt(3, 4, { items: hung });
    expect(rulesOf({ start, steps: [remove(2)] })).toEqual([]);
    const breach = breachOf('ORD-004', { start, steps: [remove(3)] });
    expect(breach.byN).toBeCloseTo(20, 9);
    expect(breach.finding.facts.plate).toMatchObject({ value: 3 });
  });

  it('[ORD-005] holds an item coming off to what holds the arbor then', () => {
    const at = (bricks: number) => standingAt(1, bricks, { items: hung });
    expect(rulesOf({ start: at(2), steps: [release('frame')] })).toEqual([]);
    expect(breachOf('ORD-005', { start: at(3), steps: [release('frame')] }).byN).toBeCloseTo(60, 9);
  });

  it('[ORD-005] releases first on the high stop, where the arbor stands', () => {
    const start = standingAt(19, 2, { items: hung });
    expect(rulesOf({ start, steps: [release('frame')] })).toEqual([]);
  });

  it('[ORD-006] takes a piece up whose rest can carry what the bricks do not', () => {
    const slack = (bricks: number) => standingAt(1, bricks, { items: { tower: 'attachedSlack' } });
    const steps = [{ act: 'takeUp', item: 'tower' }] as const;
    expect(rulesOf({ start: slack(2), steps })).toEqual([]);
    const start = standingAt(6, 6, { items: { tower: 'flying', frame: 'flying' } });
    expect(rulesOf({ start, steps: [{ act: 'rest', item: 'tower' }] })).toEqual([]);
    const bare = standingAt(1, 9, { items: { tower: 'attachedSlack' } });
    expect(rulesOf({ start: bare, steps })).toEqual(['ORD-001', 'ORD-006']);
  });

  it('[ORD-038] sets a piece down where deck or horses are, and nowhere else', () => {
    const rest = [{ act: 'rest', item: 'tower' }] as const;
    const at = (heightM: number) => standingAt(heightM, 4, { items: { tower: 'flying' } });
    expect(rulesOf({ start: at(6), steps: rest })).toEqual([]);
    expect(rulesOf({ start: at(6.01), steps: rest })).toEqual(['ORD-038']);
    breachOf('ORD-038', { start: at(7), steps: rest });
    const lamp = [{ act: 'attach', item: 'lamp', as: 'attachedResting' }] as const;
    expect(rulesOf({ start: standingAt(1.2, 0), steps: lamp })).toEqual([]);
    expect(rulesOf({ start: standingAt(1.21, 0), steps: lamp })).toEqual(['ORD-038']);
  });

  it('says what it leans on, and never adds two restraints up', () => {
    const restraints = [bullLine(), bullLine({ rating: newtons(600) })];
    const { states } = tried({ start: standingAt(3, 5, { restraints }) });
    expect(states[0]).toMatchObject({
      holdInN: 200,
      holdOutN: 1000,
      heldBy: 'against going out: the bull line',
      limit: null,
    });
    expect(rulesOf({ start: standingAt(3, 11, { restraints }) })).toEqual(['ORD-001']);
  });

  it('leaves out what something else holds while the set is in use', () => {
    const items = { frame: 'heldElsewhere' } as const;
    expect(tried({ start: { ...BARE, items } }).states[0]?.imbalance).toEqual({
      lowN: 40,
      highN: 40,
      doubtN: 0,
    });
  });

  it('tells which limit of the lock it leans on', () => {
    const limit = (bricks: number) => tried({ start: standingAt(5, bricks) }).states[0]?.limit;
    expect([limit(0), limit(1), limit(2)]).toEqual([null, 'planning', 'nominal']);
  });

  it('does not count a winch as a hold, nor a restraint the other way', () => {
    const winch = bullLine({ kind: 'winch' });
    expect(rulesOf({ start: standingAt(3, 5, { restraints: [winch] }) })).toEqual(['ORD-001']);
    const inward = bullLine({ resists: 'in' });
    expect(rulesOf({ start: standingAt(3, 5, { restraints: [inward] }) })).toEqual(['ORD-001']);
  });

  it('lets no rope push and no stands pull, whatever is written of them', () => {
    const heavy = standingAt(3, 0, { items: { frame: 'flying' } });
    const with_ = (kind: Restraint['kind']) => ({
      ...heavy,
      restraints: [bullLine({ kind, resists: 'both' })],
    });
    expect(rulesOf({ start: with_('bullLine') })).toEqual(['ORD-001']);
    expect(rulesOf({ start: with_('stands') })).toEqual([]);
    const light = standingAt(3, 5, { restraints: [bullLine({ kind: 'stands', resists: 'both' })] });
    expect(rulesOf({ start: light })).toEqual(['ORD-001']);
  });
});

describe('doubt is for all, contact is there exists', () => {
  const worst = { doubt: 'worst' } as const;
  const start = (bricks: number) => standingAt(3, bricks, { items: hung });

  it('[ORD-001] takes a doubt that the lock holds at its worst, and no more', () => {
    const plant = { pieces: { frame: { weightN: 300, doubtN: 80 } } };
    expect(rulesOf({ plant, start: start(2), options: worst })).toEqual([]);
    const more = { pieces: { frame: { weightN: 300, doubtN: 80.1 } } };
    expect(rulesOf({ plant: more, start: start(2), options: worst })).toEqual(['ORD-001']);
  });

  it('[ORD-001] names the worse side where a doubt is past both', () => {
    const plant = { pieces: { frame: { weightN: 300, doubtN: 300 } } };
    const at = (bricks: number) =>
      breachOf('ORD-001', { plant, start: start(bricks), options: worst });
    expect(at(3).finding.measured?.value).toBeCloseTo(320, 9);
    expect(at(4).finding.measured?.value).toBeCloseTo(-380, 9);
    expect(at(4).byN).toBeCloseTo(180, 9);
  });

  it('lets a rest choose, where a doubt of the same size may not', () => {
    const items = { tower: 'attachedResting' } as const;
    expect(rulesOf({ start: standingAt(1, 5, { items }), options: worst })).toEqual([]);
  });
});

describe('restraints', () => {
  const rig = (restraint: Restraint) => [{ act: 'rig', restraint }] as const;

  it('[ORD-018] counts for nothing what has no rating or no heights', () => {
    expect(rulesOf({ steps: rig(bullLine()) })).toEqual([]);
    for (const lack of [{ rating: null }, { from: null }, { to: null }]) {
      expect(rulesOf({ steps: rig(bullLine(lack)) })).toEqual(['ORD-018']);
    }
    const restraints = [bullLine({ rating: null })];
    expect(rulesOf({ start: standingAt(3, 5, { restraints }) })).toEqual(['ORD-018', 'ORD-001']);
  });

  it('[ORD-019] warns of one without owner or tag', () => {
    for (const lack of [{ owner: null }, { tag: null }]) {
      expect(rulesOf({ steps: rig(bullLine(lack)) })).toEqual(['ORD-019']);
      expect(rulesOf({ start: { ...BARE, restraints: [bullLine(lack)] } })).toEqual(['ORD-019']);
    }
  });

  it('[ORD-020] takes a restraint off that nothing needs, and no other', () => {
    const restraint = bullLine();
    const steps = [{ act: 'unrig', restraint }] as const;
    const at = (bricks: number) => standingAt(3, bricks, { restraints: [restraint] });
    expect(rulesOf({ start: at(2), steps })).toEqual([]);
    expect(breachOf('ORD-020', { start: at(3), steps }).byN).toBeCloseTo(80, 9);
    const other = bullLine({ rating: newtons(500) });
    const both = standingAt(3, 3, { restraints: [restraint, other] });
    expect(tried({ start: both, steps }).states[1]?.standing.restraints).toEqual([other]);
  });

  it('[ORD-037] warns that a choke is for a short time', () => {
    expect(rulesOf({ steps: rig(bullLine({ kind: 'choke' })) })).toEqual(['ORD-037']);
    expect(rulesOf({ steps: rig(bullLine()) })).toEqual([]);
  });
});

describe('dead-hung', () => {
  const steel = bullLine({
    kind: 'deadHangSteel',
    resists: 'in',
    from: metres(3),
    to: metres(3),
  });
  const onSteel = (bricks: number) =>
    standingAt(3, bricks, {
      items: { frame: 'heldElsewhere' },
      restraints: [steel],
      service: 'deadHung',
    });
  const off = { act: 'takeOffSteel' } as const;

  it('[ORD-021] lets off the steel only what the lock then holds', () => {
    expect(rulesOf({ start: onSteel(2), steps: [off] })).toEqual([]);
    expect(breachOf('ORD-021', { start: onSteel(1), steps: [off] }).byN).toBeCloseTo(20, 9);
  });

  it('[ORD-022] keeps the steel tight until it is eased', () => {
    expect(rulesOf({ start: onSteel(2), steps: [add(1)] })).toEqual([]);
    expect(rulesOf({ start: onSteel(3), steps: [add(1)] })).toEqual(['ORD-022']);
    expect(rulesOf({ start: onSteel(4), steps: [off] })).toEqual(['ORD-022']);
  });

  it('[ORD-023] hangs on steel that is there and rated for it', () => {
    const at = (rating: number, from = 3) =>
      standingAt(3, 3, {
        items: hung,
        restraints: [{ ...steel, rating: newtons(rating), from: metres(from), to: metres(from) }],
      });
    const steps = [{ act: 'hangOnSteel' }] as const;
    expect(rulesOf({ start: at(306), steps })).toEqual([]);
    expect(breachOf('ORD-023', { start: at(305), steps }).byN).toBeCloseTo(1, 9);
    expect(rulesOf({ start: at(1000, 4), steps })).toEqual(['ORD-023']);
    expect(tried({ start: at(306), steps }).states[1]?.standing).toMatchObject({
      service: 'deadHung',
      items: { frame: 'heldElsewhere' },
    });
  });

  it('[ORD-023] starts on steel that is there and rated for it', () => {
    const start = (restraints: readonly Restraint[]) => ({ ...onSteel(2), restraints });
    const rated = (rating: number) => start([{ ...steel, rating: newtons(rating) }]);
    expect(rulesOf({ start: rated(306) })).toEqual([]);
    expect(breachOf('ORD-023', { start: rated(305) })).toMatchObject({ step: -1, byN: 1 });
    expect(rulesOf({ start: start([]) })).toEqual(['ORD-023']);
  });

  it('[ORD-020] takes no steel away by unrigging it', () => {
    const steps = [{ act: 'unrig', restraint: steel }] as const;
    expect(rulesOf({ start: onSteel(1), steps })).toEqual(['ORD-020']);
    expect(tried({ start: onSteel(2), steps }).states[1]?.imbalance).toEqual({
      lowN: 120,
      highN: 120,
      doubtN: 6,
    });
  });

  it('[ORD-024] changes nothing on a set that is out of use', () => {
    for (const service of ['paused', 'lockedOut'] as const) {
      const start = { ...standingAt(1, 0), service };
      expect(rulesOf({ start, steps: [add(1)] })).toEqual(['ORD-024']);
      expect(rulesOf({ start, steps: [{ act: 'close', zone: RUN }] })).toEqual([]);
    }
    expect(rulesOf({ start: onSteel(1), steps: [add(1)] })).toEqual([]);
    expect(rulesOf({ start: onSteel(3), steps: [attach('lamp')] })).toEqual(['ORD-024']);
    const with_ = (phase: ItemPhase) => {
      const start = onSteel(3);
      return { ...start, items: { ...start.items, lamp: phase } };
    };
    const hands: readonly (readonly [ItemPhase, Step])[] = [
      ['flying', release('lamp')],
      ['flying', { act: 'rest', item: 'lamp' }],
      ['attachedSlack', { act: 'takeUp', item: 'lamp' }],
      ['flying', fly(3)],
    ];
    for (const [phase, step] of hands) {
      expect(rulesOf({ start: with_(phase), steps: [step] }), step.act).toContain('ORD-024');
    }
  });

  it('counts the doubt of what the steel carries', () => {
    const { states } = tried({ start: onSteel(3) });
    expect(states[0]?.imbalance).toEqual({ lowN: -280, highN: 20, doubtN: 6 });
  });

  it('leaves the register when it is taken off', () => {
    const start = { ...onSteel(3), restraints: [bullLine(), steel] };
    const { states } = tried({ start, steps: [off] });
    expect(states[1]?.standing).toMatchObject({
      service: 'in',
      restraints: [bullLine()],
      items: { frame: 'flying' },
    });
  });
});

describe('the example set', () => {
  it('has the numbers that the tests count with', () => {
    const { at } = plantOf();
    expect(at(BARE)).toEqual({ lowN: 40, highN: 40, doubtN: 0 });
    expect(at(standingAt(5, 2)).highN).toBe(-200);
  });
});
