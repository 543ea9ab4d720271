/** Edges of the replay: starts that make no sense, sets out of use, ties, and what is leaned on. */
import { describe, expect, it } from 'vitest';
import { type Metres, metres, newtons } from '#quantities';
import type { Restraint, Standing, Step } from '#state';
import {
  add,
  attach,
  BARE,
  breachOf,
  bullLine,
  DROPS,
  fly,
  RUN,
  release,
  remove,
  rulesOf,
  standingAt,
  type Trial,
  tried,
} from './example-order.ts';

const CHECK = { faults: 'check' } as const;
const hung = { frame: 'flying' } as const;
const drop = (gallery: string) => ({ zone: 'drop', gallery }) as const;
const PASSED: readonly Step[] = [{ act: 'reopen', zone: drop('mid') }];

const refusedOf = (start: Standing) => {
  const { refused, states } = tried({ start, steps: [fly(1)] });
  return refused === null ? null : { ...refused.refusal, states: states.length };
};

const stacked = (...stack: Standing['stack']): Standing => ({ ...BARE, stack });

describe('a start that cannot be replayed', () => {
  it('[ORD-105] has a count below none, or none that is a number', () => {
    const show = (count: number) => stacked({ kind: 'B', count, tag: 'show' });
    expect(refusedOf(show(-1))).toMatchObject({ found: '-1', accepted: 'a whole number' });
    expect(refusedOf(show(Number.NaN))).toMatchObject({ code: 'ORD-105', states: 0 });
    expect(refusedOf(show(0))).toBeNull();
  });

  it('[ORD-103] has a kind that the house does not have; spreader plates have none', () => {
    expect(refusedOf(stacked({ kind: 'Z', count: 1, tag: 'pipe' }))).toEqual({
      code: 'ORD-103',
      path: 'start',
      found: 'Z',
      accepted: 'B, C',
      states: 0,
    });
    expect(refusedOf(stacked({ kind: 'Z', count: 1, tag: 'spreader' }))).toBeNull();
    expect(refusedOf(stacked({ kind: 'Z', count: 0.5, tag: 'spreader' }))).toBeNull();
  });

  it('[ORD-107] is off the travel by more than a micrometre', () => {
    // A document may say anything: what is no number never becomes metres elsewhere.
    const at = (heightM: number) => refusedOf({ ...BARE, height: heightM as Metres });
    expect(at(1 - 5e-7)).toBeNull();
    expect(at(19 + 5e-7)?.code).toBeUndefined();
    expect(at(1 - 5e-6)).toMatchObject({ code: 'ORD-107' });
    expect(at(19 + 5e-6)).toMatchObject({ code: 'ORD-107' });
    expect(at(Number.NaN)).toMatchObject({ code: 'ORD-107' });
    expect(at(Number.POSITIVE_INFINITY)).toMatchObject({ code: 'ORD-107' });
  });

  it('[ORD-101] has an item that weighs nothing', () => {
    expect(refusedOf({ ...BARE, items: { lamp: 'away', moon: 'away' } })).toMatchObject({
      code: 'ORD-101',
      found: 'moon',
    });
  });
});

describe('a set that is out of use', () => {
  const out = (service: Standing['service'], changes: Partial<Standing> = {}): Standing =>
    standingAt(1, 2, { service, ...changes });

  it('[ORD-024] opens and closes zones, and does nothing else', () => {
    for (const service of ['paused', 'lockedOut'] as const) {
      const start = out(service, { items: { lamp: 'away' } });
      const rules = (step: Step) => rulesOf({ start, steps: [step] });
      expect(rules({ act: 'reopen', zone: RUN })).toEqual([]);
      expect(rules({ act: 'close', zone: RUN })).toEqual([]);
      const steps: readonly Step[] = [
        add(1),
        remove(1),
        attach('lamp'),
        fly(2),
        { act: 'rig', restraint: bullLine() },
      ];
      for (const step of steps) expect(rules(step), step.act).toContain('ORD-024');
    }
  });

  it('[ORD-024] on its steel takes bricks, restraints and the steel off', () => {
    const steel = bullLine({ kind: 'deadHangSteel', resists: 'in', from: metres(1) });
    const start = out('deadHung', { items: { frame: 'heldElsewhere' }, restraints: [steel] });
    const rules = (step: Step) => rulesOf({ start, steps: [step] });
    expect(rules(add(1))).not.toContain('ORD-024');
    expect(rules({ act: 'rig', restraint: bullLine() })).not.toContain('ORD-024');
    expect(rules({ act: 'takeOffSteel' })).not.toContain('ORD-024');
    expect(rules({ act: 'ease', pull: newtons(1), lifted: false })).toContain('ORD-024');
  });

  it('[ORD-024] is no rule of a set in use', () => {
    expect(rulesOf({ start: out('in'), steps: [add(1)] })).not.toContain('ORD-024');
  });
});

describe('steel and what hangs on it', () => {
  const steel = bullLine({
    kind: 'deadHangSteel',
    resists: 'in',
    rating: newtons(306),
    from: metres(3),
    to: metres(3),
  });
  const onSteel = (bricks: number, changes: Partial<Standing> = {}): Standing =>
    standingAt(3, bricks, {
      items: { frame: 'heldElsewhere', lamp: 'beside' },
      restraints: [steel],
      service: 'deadHung',
      ...changes,
    });

  it('takes over what flies, and gives back what it held', () => {
    const items = { frame: 'flying', lamp: 'beside', tower: 'attachedSlack' } as const;
    const on = tried({
      start: standingAt(3, 3, { items, restraints: [steel] }),
      steps: [{ act: 'hangOnSteel' }],
    }).states.at(-1)?.standing;
    expect(on?.items).toEqual({ ...items, frame: 'heldElsewhere' });
    const off = tried({ start: onSteel(3), steps: [{ act: 'takeOffSteel' }] }).states.at(-1);
    expect(off?.standing.items).toEqual({ frame: 'flying', lamp: 'beside' });
  });

  it('[ORD-032] is no rest that slips', () => {
    // With its steel gone it has 40 − 20 + 300 = 320 N, more than the steel is rated for.
    expect(rulesOf({ start: onSteel(0), steps: PASSED, options: CHECK })).not.toContain('ORD-032');
  });

  it('[ORD-023] counts the heaviest that each item may be, and those that hang there only', () => {
    const items = { frame: 'heldElsewhere', lamp: 'heldElsewhere' } as const;
    // 306 N and 102 N.
    expect(breachOf('ORD-023', { start: onSteel(3, { items }) }).byN).toBeCloseTo(102, 9);
    expect(rulesOf({ start: onSteel(3) })).not.toContain('ORD-023');
  });
});

describe('restraints, one by one', () => {
  const words: readonly (readonly [Restraint['kind'], string])[] = [
    ['bullLine', 'the bull line'],
    ['arborSling', 'the sling on the arbor'],
    ['stands', 'the stands under the batten'],
    ['winch', 'the winch on the hand line'],
    ['choke', 'the choke on the hand line'],
    ['deadHangSteel', 'the dead-hang steel'],
    ['pinnedPiece', 'the pinned piece'],
  ];

  it.each(words)('names %s as %s', (kind, name) => {
    const { proofsDue } = tried({ steps: [{ act: 'rig', restraint: bullLine({ kind }) }] });
    expect(proofsDue.map(({ proof }) => proof)).toEqual([
      `see ${name} taut and tagged at the rail`,
    ]);
  });

  it.each([
    ['kind', { kind: 'winch' }],
    ['way', { resists: 'both' }],
    ['rating', { rating: newtons(999) }],
    ['lower end', { from: metres(2) }],
    ['upper end', { to: metres(18) }],
  ] as const)('tells two apart by their %s', (_name, change) => {
    const [one, other] = [bullLine(change), bullLine()];
    const rest = (restraint: Restraint) =>
      tried({
        start: { ...BARE, restraints: [one, other] },
        steps: [{ act: 'unrig', restraint }],
      }).states.at(-1)?.standing.restraints;
    expect(rest(other)).toEqual([one]);
    expect(rest(one)).toEqual([other]);
  });

  it('[ORD-108] says what is on, where what is taken off is not', () => {
    const steps: readonly Step[] = [{ act: 'unrig', restraint: bullLine({ kind: 'winch' }) }];
    const { refused } = tried({ start: { ...BARE, restraints: [bullLine()] }, steps });
    expect(refused?.refusal).toMatchObject({
      found: 'the winch on the hand line',
      accepted: 'the bull line',
    });
  });

  it('[ORD-018] wants a rating and both its heights, [ORD-019] an owner and a tag', () => {
    const rig = (changes: Partial<Restraint>) =>
      rulesOf({ steps: [{ act: 'rig', restraint: bullLine(changes) }] });
    expect(rig({ rating: null })).toEqual(['ORD-018']);
    expect(rig({ from: null })).toEqual(['ORD-018']);
    expect(rig({ to: null })).toEqual(['ORD-018']);
    expect(rig({ owner: null })).toEqual(['ORD-019']);
    expect(rig({ tag: null })).toEqual(['ORD-019']);
    expect(rig({ owner: null, tag: null, rating: null })).toEqual(['ORD-018', 'ORD-019']);
  });

  it('hold at the very ends of their heights, and a micrometre past them', () => {
    const at = (from: number, to: number) =>
      rulesOf({
        start: standingAt(5, 3, {
          restraints: [bullLine({ from: metres(from), to: metres(to) })],
        }),
      });
    expect(at(5, 5)).toEqual([]);
    expect(at(5 + 5e-7, 19)).toEqual([]);
    expect(at(1, 5 - 5e-7)).toEqual([]);
    expect(at(5.001, 19)).toEqual(['ORD-001']);
    expect(at(1, 4.999)).toEqual(['ORD-001']);
  });
});

describe('single faults, where they do nothing', () => {
  const zoned = (changes: Trial) =>
    tried({ steps: PASSED, options: CHECK, ...changes }).assumed.filter((text) =>
      text.includes('closed zone'),
    );

  it('leans on an empty zone only where a fault would run through it', () => {
    expect(zoned({ start: { ...BARE, closed: [RUN] } })).toEqual([]);
    expect(zoned({ start: standingAt(5, 2, { closed: [RUN] }) })).toHaveLength(1);
    expect(zoned({ start: standingAt(5, 1, { closed: [] }) })).toEqual([]);
  });

  it('[ORD-030] takes no tolerance off twice', () => {
    // 130 N and 60 N of doubt are held once; twice they would be 250 N.
    const plant = { pieces: { frame: { weightN: 300, doubtN: 60 } } };
    const trial = { plant, start: standingAt(2, 2, { items: hung, closed: [] }), steps: PASSED };
    expect(rulesOf({ ...trial, options: { ...CHECK, doubt: 'worst' } })).not.toContain('ORD-030');
    const more = { pieces: { frame: { weightN: 300, doubtN: 71 } } };
    expect(rulesOf({ ...trial, plant: more, options: CHECK })).toContain('ORD-030');
  });

  it('[ORD-034] lets a lock slip only past its planning limit', () => {
    const plant = { more: { highStop: { heightM: 19, ratedN: 1 } } };
    const at = (bricks: number) =>
      rulesOf({
        plant,
        start: standingAt(5, bricks, { closed: [RUN] }),
        steps: PASSED,
        options: CHECK,
      });
    expect(at(1)).toEqual([]);
    expect(at(2)).toEqual(['ORD-034']);
  });

  it('[ORD-034] slips the way in which the doubt may lie', () => {
    // Balanced as listed; with 170 N of doubt it may be batten heavy, and 210 N on the low stop.
    const plant = {
      pieces: { frame: { weightN: 300, doubtN: 170 } },
      more: { lowStop: { heightM: 1, ratedN: 200 } },
    };
    const breach = breachOf('ORD-034', {
      plant,
      start: standingAt(5, 3, { items: hung, closed: [RUN] }),
      steps: PASSED,
      options: { ...CHECK, doubt: 'worst' },
    });
    expect(breach.byN).toBeCloseTo(10, 9);
    expect(breach.finding.facts['to']).toMatchObject({ value: 1 });
  });

  it('[ORD-031] drops what flies and what rests, and nothing that is away', () => {
    const HANDS: readonly Step[] = [{ act: 'rig', restraint: bullLine({ from: metres(18.9) }) }];
    const items = { frame: 'flying', tower: 'away', lamp: 'beside' } as const;
    const start = standingAt(1, 3, { items });
    const of = (trial: Trial) =>
      rulesOf({ ...trial, steps: HANDS, options: CHECK }).filter((rule) => rule === 'ORD-031');
    expect(of({ start })).toEqual(['ORD-031']);
    expect(of({ start: standingAt(1, 2, { items: { tower: 'away', lamp: 'beside' } }) })).toEqual(
      [],
    );
  });
});

describe('bricks on a stack that was read from a document', () => {
  it('takes off the brick below a run of none', () => {
    const none = { kind: 'C', count: 0, tag: 'show' } as const;
    const start = standingAt(1, 2, { items: hung });
    const { states, refused } = tried({
      start: { ...start, stack: [...start.stack, none] },
      steps: [remove(1)],
    });
    expect(refused).toBeNull();
    expect(states.at(-1)?.standing.stack).toEqual([
      { kind: 'B', count: 1, tag: 'pipe' },
      { kind: 'B', count: 1, tag: 'show' },
    ]);
  });

  it('[ORD-003] is broken at the first plate that breaks it', () => {
    const start = { ...BARE, closed: DROPS };
    const breach = breachOf('ORD-003', { start, steps: [add(6)] });
    expect(breach.finding.facts['plate']).toMatchObject({ value: 3 });
    expect(rulesOf({ start, steps: [add(6)] }).filter((rule) => rule === 'ORD-003')).toHaveLength(
      1,
    );
  });

  it('puts a plate on a run of its own where the top is pipe weight', () => {
    const { states } = tried({ start: { ...BARE, closed: DROPS }, steps: [add(1)] });
    expect(states.at(-1)?.standing.stack).toEqual([
      { kind: 'B', count: 1, tag: 'pipe' },
      { kind: 'B', count: 1, tag: 'show' },
    ]);
  });
});

describe('a move past ties', () => {
  const tied = (kind: Restraint['kind'], from: number, to: number, toM: number, atM = 3) =>
    rulesOf({
      start: standingAt(atM, 3, {
        items: hung,
        closed: [RUN],
        restraints: [bullLine({ kind, from: metres(from), to: metres(to) })],
      }),
      steps: [fly(toM)],
    });

  it('[ORD-011] is broken only by what is tied on the way', () => {
    expect(tied('arborSling', 10, 12, 4)).not.toContain('ORD-011');
    expect(tied('arborSling', 1, 2, 4)).not.toContain('ORD-011');
    expect(tied('arborSling', 4, 12, 4)).toContain('ORD-011');
    expect(tied('arborSling', 1, 3, 4)).toContain('ORD-011');
    expect(tied('arborSling', 1, 2, 2)).toContain('ORD-011');
    expect(tied('arborSling', 3, 9, 2)).toContain('ORD-011');
  });

  it('[ORD-011] is not broken by a line that runs', () => {
    expect(tied('bullLine', 1, 19, 4)).not.toContain('ORD-011');
    expect(tied('winch', 1, 19, 4)).not.toContain('ORD-011');
  });

  it('does nothing where it ends where it began', () => {
    const start = standingAt(3, 3, { items: hung, closed: [] });
    const verdict = tried({ start, steps: [fly(3 + 5e-7)] });
    expect(verdict.proofsDue).toEqual([]);
    expect(verdict.states.at(-1)?.standing.height).toBe(3);
  });

  it('[ORD-107] goes to either end of the travel, and no further', () => {
    const start = standingAt(3, 3, { items: hung, closed: [RUN] });
    const refused = (toM: number) =>
      tried({ start, steps: [{ act: 'fly', to: toM as Metres }] }).refused?.refusal.found;
    expect([refused(1), refused(19), refused(1 - 5e-7)]).toEqual([undefined, undefined, undefined]);
    expect(refused(0.9)).toBe('0.9 m');
    expect(refused(Number.NaN)).toBe('NaN m');
  });
});

describe('items of a set', () => {
  it('[ORD-102] is put on from beside as well, and taken down from its rest', () => {
    const start = standingAt(1, 0, { items: { lamp: 'beside', frame: 'attachedResting' } });
    expect(tried({ start, steps: [attach('lamp')] }).refused).toBeNull();
    expect(tried({ start, steps: [release('frame')] }).refused).toBeNull();
    expect(tried({ start, steps: [attach('tower')] }).refused).toBeNull();
  });

  it('keeps what was attached as it was attached', () => {
    for (const as of ['attachedSlack', 'attachedResting', 'flying'] as const) {
      const { states } = tried({ steps: [{ act: 'attach', item: 'lamp', as }] });
      expect(states.at(-1)?.standing.items).toEqual({ lamp: as });
    }
  });
});
