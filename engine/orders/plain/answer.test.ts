/**
 * Orders of work on sets of plain numbers: what of the input matters, and where it is refused.
 * Figures of S6, S12 are those of the demo's plan (computed, whole pounds).
 */
import { describe, expect, it } from 'vitest';
import { assert } from '#outcome';
import { FOOT, POUND, POUND_FORCE } from '#quantities';
import { answerPlan, type PlanAnswer } from './answer-plan.ts';
import { answerVerify, type VerifyAnswer } from './answer-verify.ts';
import type { PlainSet, PlainStep, PlanAsked, VerifyAsked } from './asked.ts';
import { physicsOf, standingOf, stepOf } from './plain-set.ts';

const ft = (n: number): number => n * FOOT;
const lb = (n: number): number => n * POUND;
const lbf = (n: number): number => n * POUND_FORCE;

const reach = { reachLow: ft(0.25), reachHigh: ft(5.5) };

/** A seven line set of the demo house. */
const SET: PlainSet = {
  id: '38',
  purchase: 1,
  lines: 7,
  lineMassPerLength: lb(0.11) / FOOT,
  batten: lb(196.26),
  carriage: lb(95),
  lowStop: ft(3),
  highStop: ft(61),
  arborTopAtLow: ft(66.5),
  wireEndAbove: ft(2),
  battenUncertainty: lb(4),
  carriageUncertainty: lb(2),
  items: { unit: { kind: 'clear', mass: lb(110), uncertainty: lb(2) } },
  lowStopRated: lbf(1400),
  highStopRated: lbf(1400),
  workingHeight: ft(4),
  lockLimit: lbf(50),
  hands: { brief: lbf(160), steady: lbf(100) },
  friction: { share: 0.05, constant: lbf(4) },
  panAtLow: ft(59.5),
  panThickness: ft(0.25),
  usableRod: ft(5.5),
  bricks: [
    { id: 'F', mass: lb(25), thickness: ft(0.1), uncertainty: lb(0.5) },
    { id: 'H', mass: lb(12.5), thickness: ft(0.05), uncertainty: lb(0.3) },
  ],
  galleries: [
    { id: 'upper', floor: ft(58), ...reach, stock: { F: 100, H: 20 } },
    { id: 'mid', floor: ft(38), ...reach, stock: { F: 50, H: 10 } },
  ],
};

const BARE = {
  height: ft(3),
  stack: [{ kind: 'F', count: 4, tag: 'pipe' }],
  items: {},
  restraints: [],
  service: 'in',
  closed: [],
} as const satisfies VerifyAsked['start'];

const LOAD: PlanAsked = {
  set: SET,
  start: BARE,
  goal: { items: { unit: 'on' }, bricks: { F: 5 }, height: ft(30), service: 'in' },
  doubt: 'none',
  lock: 'nominal',
  restraint: 'none',
};

const planOf = (asked: PlanAsked): PlanAnswer => {
  const answer = answerPlan(asked);
  assert(answer.ok, JSON.stringify(answer));
  return answer.value;
};

const foundIn = (asked: PlanAsked) => {
  const answer = planOf(asked);
  assert('found' in answer, JSON.stringify(answer));
  return answer.found;
};

const verdictOf = (steps: readonly PlainStep[], more: Partial<VerifyAsked> = {}): VerifyAnswer => {
  const answer = answerVerify({ ...LOAD, steps, ...more });
  assert(answer.ok, JSON.stringify(answer));
  return answer.value;
};

const pounds = (forceN: number | undefined): number => (forceN ?? Number.NaN) / POUND_FORCE;

describe('a plan on plain numbers', () => {
  it('is accepted by the judge, and says so of the steps that it gives', () => {
    const { steps, states, verdict } = foundIn(LOAD);
    expect(states).toHaveLength(steps.length + 1);
    expect(verdict).toMatchObject({ accepted: true, broken: null, alsoBroken: [] });
  });

  it('counts tolerances where it is asked to, and says how far the balance may be off', () => {
    const [first] = foundIn({ ...LOAD, doubt: 'worst' }).states;
    // Batten, carriage, and four bricks.
    expect(pounds(first?.imbalance.doubt ?? undefined)).toBeCloseTo(4 + 2 + 4 * 0.5, 6);
    expect(foundIn(LOAD).states[0]?.imbalance.doubt).toBeNull();
    const unknown = { unit: { kind: 'clear', mass: lb(110), uncertainty: lb(60) } } as const;
    const wide = { ...LOAD, set: { ...SET, items: unknown } };
    expect(planOf({ ...wide, doubt: 'worst' })).toHaveProperty('none');
    expect(planOf(wide)).toHaveProperty('found');
  });

  it('says what is free to go at riggers with the planning limit, and nobody near else', () => {
    expect(foundIn(LOAD).exposed).toBeNull();
    expect(foundIn({ ...LOAD, lock: 'planning' }).exposed).not.toBeNull();
  });

  it('rounds heights as it is asked', () => {
    const free = { ...LOAD, goal: { ...LOAD.goal, height: null } };
    const flown = foundIn({ ...free, goal: { ...LOAD.goal, height: ft(30) }, callHeights: ft(1) });
    expect(flown.steps.some(({ act }) => act === 'fly')).toBe(true);
    expect(foundIn(free).steps.some(({ act }) => act === 'fly')).toBe(false);
  });

  it('names the rule where none exists, and how far it fails', () => {
    const heavy = { unit: { kind: 'clear', mass: lb(400) } } as const;
    const answer = planOf({ ...LOAD, set: { ...SET, items: heavy } });
    expect(answer).toMatchObject({ none: { exhaustive: true, rule: 'HOLD' } });
  });

  it('asks for a restraint only where it may', () => {
    const cloth = { kind: 'cloth', mass: lb(300), drop: ft(26), tie: 0, hem: lb(10) } as const;
    const hung = {
      ...LOAD,
      set: { ...SET, items: { cloth } },
      start: {
        ...BARE,
        height: ft(40),
        stack: [...BARE.stack, { kind: 'F', count: 13, tag: 'show' }],
        items: { cloth: 'flying' },
      },
      goal: { items: { cloth: 'away' }, bricks: {}, height: null, service: 'in' },
    } as const satisfies PlanAsked;
    const none = planOf(hung);
    expect(none).toMatchObject({ none: { smallestChange: { change: 'restraint' } } });
    const { restraint } = foundIn({ ...hung, restraint: 'out' });
    expect(restraint?.resists).toBe('out');
    expect(planOf({ ...hung, restraint: 'in' })).toHaveProperty('none');
  });
});

describe('what lies on rests, and what hangs on steel', () => {
  /** S6: the clock tower, head on horses at the working height. */
  const tower = {
    kind: 'tipping',
    mass: lb(640),
    drop: ft(22),
    pick: ft(1),
    centre: 0.46,
  } as const;
  const six = { ...SET, lines: 6, batten: lb(169), items: { tower } };
  const start = {
    ...BARE,
    height: ft(4),
    stack: [{ kind: 'F', count: 3, tag: 'pipe' }],
  } as const satisfies PlanAsked['start'];
  const hang: PlanAsked = {
    ...LOAD,
    set: six,
    start,
    goal: { items: { tower: 'on' }, bricks: { F: 25, H: 1 }, height: ft(26), service: 'in' },
  };

  it('[S6] takes a tipping piece to rest on horses, unless it is told what rests', () => {
    const { steps } = foundIn(hang);
    expect(steps[0]).toEqual({ act: 'attach', item: 'tower', as: 'attachedResting' });
    expect(foundIn({ ...hang, rests: ['tower'] }).steps).toEqual(steps);
    const attached = foundIn({ ...hang, rests: [] }).steps.flatMap((step) =>
      step.act === 'attach' ? [step.as] : [],
    );
    expect(attached).not.toContain('attachedResting');
  });

  it('[S12] loads the arbor before the steel comes off, with bricks that are allowed on', () => {
    const frame = { kind: 'clear', mass: lb(240) } as const;
    const asked: PlanAsked = {
      ...LOAD,
      set: {
        ...SET,
        id: 'D3',
        purchase: 2,
        carriage: lb(165),
        panAtLow: ft(57),
        arborTopAtLow: ft(66.5),
        usableRod: ft(9),
        items: { frame },
      },
      start: {
        ...BARE,
        height: ft(38),
        stack: [{ kind: 'F', count: 10, tag: 'pipe' }],
        items: { frame: 'heldElsewhere' },
        restraints: [
          {
            kind: 'deadHangSteel',
            resists: 'in',
            rating: lbf(1000),
            from: ft(38),
            to: ft(38),
            owner: null,
            tag: null,
          },
        ],
        service: 'deadHung',
      },
      goal: { items: {}, bricks: { F: 19 }, height: ft(38), service: 'in' },
      steel: lbf(1000),
    };
    const { steps, states } = foundIn(asked);
    const off = steps.findIndex(({ act }) => act === 'takeOffSteel');
    expect(steps.slice(0, off).some(({ act }) => act === 'add')).toBe(true);
    expect(pounds(states.at(-1)?.imbalance.high)).toBeCloseTo(-2, 0);
    const bare = {
      ...asked,
      goal: { ...asked.goal, items: { frame: 'away' }, bricks: {} },
    } as const;
    expect(planOf(bare)).toHaveProperty('none');
    expect(planOf({ ...bare, spare: { F: 20 } })).toHaveProperty('found');
  });
});

describe('verify on plain numbers', () => {
  const attach = { act: 'attach', item: 'unit', as: 'flying' } as const;
  const drop = { zone: 'drop', gallery: 'upper' } as const;

  it('[ORD-003] says which rule, where, by how much, and what would be set free', () => {
    const { verdict, states } = verdictOf([
      { act: 'close', zone: drop },
      { act: 'add', kind: 'F', count: 5, gallery: 'upper' },
    ]);
    const { broken } = verdict;
    expect(broken).toMatchObject({ rule: 'ORD-003', step: 1, cites: expect.any(String) });
    // Bare 48.6 lb batten heavy; the fourth brick leaves 51.4 lb on a lock of 50.
    expect(pounds(broken?.by ?? undefined)).toBeCloseTo(1.4, 1);
    expect(broken?.height).toBeCloseTo(ft(3), 9);
    expect(broken?.energy).toBeGreaterThan(0);
    expect(states.at(-1)?.free.way).toBe('out');
    expect(verdict.accepted).toBe(false);
  });

  it('takes pulls, restraints and heights as they are written', () => {
    const bull = {
      kind: 'bullLine',
      resists: 'out',
      rating: lbf(450),
      from: ft(3),
      to: ft(20),
      owner: 'deck lead',
      tag: '7',
    } as const;
    const steps: readonly PlainStep[] = [
      { act: 'rig', restraint: bull },
      { act: 'unrig', restraint: bull },
      attach,
      { act: 'close', zone: { zone: 'run' } },
      { act: 'ease', pull: lbf(50), lifted: false },
      { act: 'close', zone: drop },
      { act: 'add', kind: 'F', count: 5, gallery: 'upper' },
      { act: 'fly', to: ft(10) },
      { act: 'reopen', zone: drop },
    ];
    const { verdict, states } = verdictOf(steps, { doubt: 'worst' });
    expect(verdict.broken).toBeNull();
    expect(states[1]?.standing.restraints).toEqual([bull]);
    expect(states[1]?.holds.out).toBeCloseTo(lbf(450), 9);
    expect(states.at(-1)?.standing.height).toBeCloseTo(ft(10), 9);
    const unrated = { ...bull, rating: null, from: null, to: null } as const;
    const rig = verdictOf([{ act: 'rig', restraint: unrated }]);
    expect(rig.states[1]?.holds.out).toBeCloseTo(lbf(50), 9);
  });

  it('refuses a step that cannot be replayed, and a start of what is not there', () => {
    const twice = answerVerify({ ...LOAD, steps: [attach, attach] });
    expect(twice.ok ? [] : twice.error.map(({ path }) => path)).toEqual(['steps[1]']);
    const ghost = { ...BARE, stack: [{ kind: 'X', count: 1, tag: 'show' }] } as const;
    const strange = answerVerify({ ...LOAD, start: ghost, steps: [] });
    expect(strange.ok ? [] : strange.error.map(({ path }) => path)).toEqual(['start']);
    const planned = answerPlan({ ...LOAD, start: ghost, goal: { ...LOAD.goal, bricks: {} } });
    expect(planned.ok ? [] : planned.error.map(({ path }) => path)).toEqual(['start']);
  });

  it('[ORD-051] warns of kinds that look alike only where it is told that they do', () => {
    const steps: readonly PlainStep[] = [
      attach,
      { act: 'close', zone: drop },
      { act: 'add', kind: 'F', count: 1, gallery: 'upper' },
    ];
    const cautions = (set: PlainSet) => verdictOf(steps, { set }).verdict.cautions;
    const [full, half] = SET.bricks;
    assert(full !== undefined && half !== undefined, 'two kinds');
    const alike = { ...SET, bricks: [{ ...full, looksLike: ['H'] }, half] };
    expect(cautions(SET)).toEqual([]);
    expect(cautions(alike).map(({ rule }) => rule)).toEqual(['ORD-051']);
  });

  it('keeps every act as it is', () => {
    const acts: readonly PlainStep[] = [
      attach,
      { act: 'takeUp', item: 'unit' },
      { act: 'rest', item: 'unit' },
      { act: 'release', item: 'unit' },
      { act: 'remove', kind: 'H', count: 2, gallery: 'mid' },
      { act: 'hangOnSteel' },
      { act: 'takeOffSteel' },
      { act: 'ease', pull: 12, lifted: true },
      { act: 'fly', to: 7 },
    ];
    expect(acts.map(stepOf)).toEqual(acts);
  });
});

describe('the set of plain numbers', () => {
  const at = (set: PlainSet, count: number) => {
    const standing = standingOf({ ...BARE, stack: [{ kind: 'F', count, tag: 'show' }] });
    return { physics: physicsOf(set), standing };
  };

  it('counts spreader plates as height, and as mass where the carriage has it not', () => {
    const spreader = { mass: lb(1.5), thickness: ft(0.02), every: ft(2), rule: 'floor' } as const;
    const [with0, with19, with20, with40] = [0, 19, 20, 40].map((count) => {
      const { physics, standing } = at({ ...SET, spreader }, count);
      return { top: physics.topOfStackM(standing), highN: physics.at(standing).highN };
    });
    assert(
      with0 !== undefined && with19 !== undefined && with20 !== undefined && with40 !== undefined,
      'four stacks',
    );
    expect(with19.top - with0.top).toBeCloseTo(ft(1.9), 9);
    expect(with20.top - with0.top).toBeCloseTo(ft(2.02), 9);
    expect(with40.top - with0.top).toBeCloseTo(ft(4.04), 9);
    expect(pounds(with0.highN - with40.highN)).toBeCloseTo(40 * 25 + 3, 6);
    const { physics, standing } = at({ ...SET, spreader: { ...spreader, rule: 'ceil' } }, 1);
    expect(physics.topOfStackM(standing) - with0.top).toBeCloseTo(ft(0.12), 9);
  });

  it('halves a brick on a double purchase arbor', () => {
    const { physics } = at({ ...SET, purchase: 2 }, 0);
    expect(pounds(physics.bricks[0]?.atBattenN)).toBeCloseTo(12.5, 9);
    expect(pounds(physicsOf(SET).bricks[0]?.atBattenN)).toBeCloseTo(25, 9);
  });

  it('rubs with a share of what hangs and a constant', () => {
    const physics = physicsOf(SET);
    expect(pounds(physics.frictionN({}))).toBeCloseTo(0.05 * 196.26 + 4, 6);
    expect(pounds(physics.frictionN({ unit: 'flying' }))).toBeCloseTo(0.05 * 306.26 + 4, 6);
    expect(pounds(physics.frictionN({ unit: 'away' }))).toBeCloseTo(0.05 * 196.26 + 4, 6);
  });

  it('has a limit of the arbor only where one is given', () => {
    expect(physicsOf(SET).arborMassLimitKg).toBeNull();
    expect(physicsOf({ ...SET, arborMassLimit: 500 }).arborMassLimitKg).toBe(500);
  });
});
