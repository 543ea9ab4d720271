/**
 * The drill in round numbers that no calculator is opened for: bare, the set is 100 N batten heavy;
 * a crate of 1000 N, give or take 300; bricks of 100 N, give or take 10; friction 50 N; the rest of
 * the set is in doubt by 20 N. A lock of 200 N, and so 100 N where people are near.
 */
import { describe, expect, it } from 'vitest';
import { assert } from '#outcome';
import { GRAVITY, metres, newtons } from '#quantities';
import type { OrderPhysics, Standing } from '#state';
import { planDrill } from './plan-drill.ts';
import type { Drill, DrillAsked, DrillEase, NoDrill } from './types.ts';

const BRICKS: Readonly<Record<string, { readonly weightN: number; readonly doubtN: number }>> = {
  B: { weightN: 100, doubtN: 10 },
  C: { weightN: 50, doubtN: 1 },
  E: { weightN: 100, doubtN: 0 },
};

type Plant = { readonly halfN?: number; readonly restN?: number };

const countsOf = (stack: Standing['stack']) =>
  stack.flatMap(({ kind, count }) => Array.from({ length: count }, () => BRICKS[kind]));

const sum = (all: readonly (number | undefined)[]): number =>
  all.reduce<number>((total, each) => total + (each ?? 0), 0);

const GALLERY: OrderPhysics['galleries'][number] = {
  id: 'upper',
  name: 'Upper',
  floorM: 15,
  reachFromM: 15,
  reachToM: 17,
  stock: { B: 40, C: 40, E: 40 },
};

const plantOf = (
  { halfN = 300, restN = 20 }: Plant = {},
  more: Partial<OrderPhysics> = {},
): OrderPhysics => {
  const isOn = ({ items }: Pick<Standing, 'items'>): boolean => items['crate'] === 'flying';
  return {
    set: '7',
    purchase: 1,
    lowStop: { heightM: 1, ratedN: 6000 },
    highStop: { heightM: 19, ratedN: 6000 },
    workingM: 1.2,
    lockLimitN: 200,
    handsBriefN: 700,
    handsSteadyN: 400,
    galleries: [GALLERY],
    bricks: Object.entries(BRICKS).map(([id, { weightN }]) => ({
      id,
      massKg: weightN / GRAVITY,
      thicknessM: 0.03,
      looksLike: [],
      atBattenN: weightN,
    })),
    rodM: 2,
    arborMassLimitKg: null,
    arborKg: (stack) => ({ massKg: 10 * countsOf(stack).length, doubtKg: countsOf(stack).length }),
    at: (standing) => {
      const bricks = countsOf(standing.stack);
      const atN = 100 + (isOn(standing) ? 1000 : 0) - sum(bricks.map((each) => each?.weightN));
      const doubtN = restN + (isOn(standing) ? halfN : 0) + sum(bricks.map((each) => each?.doubtN));
      return { lowN: atN, highN: atN, doubtN };
    },
    curve: () => [],
    topOfStackM: ({ stack }) => 15.5 + 0.03 * countsOf(stack).length,
    frictionN: () => 50,
    itemMostN: (id) => (id === 'crate' ? 1000 + halfN : 0),
    itemLeastN: (id) => (id === 'crate' ? 1000 - halfN : 0),
    contactM: () => null,
    ...more,
  };
};

const BARE: Standing = {
  height: metres(1),
  stack: [],
  items: {},
  restraints: [],
  service: 'in',
  closed: [],
};

const ASKED: DrillAsked = {
  items: ['crate'],
  kinds: ['B'],
  handLinePerBatten: 1,
  callN: 50,
  anyway: false,
};

const drillOf = (
  physics: OrderPhysics = plantOf(),
  start: Partial<Standing> = {},
  asked: Partial<DrillAsked> = {},
): Drill => {
  const plan = planDrill(physics, { ...BARE, ...start }, { ...ASKED, ...asked });
  assert('drill' in plan, JSON.stringify(plan));
  return plan.drill;
};

const noneOf = (
  physics: OrderPhysics,
  start: Partial<Standing> = {},
  asked: Partial<DrillAsked> = {},
): readonly NoDrill[] => {
  const plan = planDrill(physics, { ...BARE, ...start }, { ...ASKED, ...asked });
  assert('none' in plan, JSON.stringify(plan));
  return plan.none;
};

const bricksOn = (count: number): Standing['stack'] => [{ kind: 'B', count, tag: 'show' }];
const RUN = { zone: 'run' } as const;
const DROP = { zone: 'drop', gallery: 'upper' } as const;
const add = (count: number) => ({ act: 'add', kind: 'B', count, gallery: 'upper' }) as const;
const ease = (lifted: boolean) => ({ act: 'ease', pull: newtons(200), lifted }) as const;

/** Weights in N, which are round. */
const inNewtons = ({ ifItStays, ifItLifts }: DrillEase) =>
  [ifItStays, ifItLifts].map((range) =>
    range === null
      ? null
      : [range.leastKg, range.mostKg].map((kg) => Math.round(kg * GRAVITY * 1e6) / 1e6),
  );

describe('the drill', () => {
  it('is these steps: 7 on, a pull of 200 N, and one more each time up to 15', () => {
    const { steps, ...rest } = drillOf();
    expect(steps).toEqual([
      { act: 'attach', item: 'crate', as: 'flying' },
      { act: 'close', zone: RUN },
      { act: 'close', zone: DROP },
      add(7),
      ...[8, 9, 10, 11, 12, 13, 14, 15].flatMap(() => [ease(false), add(1)]),
      ease(true),
      { act: 'reopen', zone: DROP },
      { act: 'reopen', zone: RUN },
    ]);
    expect(rest).toMatchObject({
      kind: 'B',
      gallery: 'upper',
      baseBricks: 7,
      mostBricks: 15,
      pull: 200,
      frictionN: 50,
      doubtN: 20 + 300 + 70,
      weighs: ['crate'],
    });
    expect(rest.eases.map(({ step }) => step)).toEqual([4, 6, 8, 10, 12, 14, 16, 18, 20]);
  });

  it('says of each pull what stays and what lifts, the rest of the set against it', () => {
    const { eases } = drillOf();
    const [first, second] = eases;
    assert(first !== undefined && second !== undefined, 'two pulls');
    // With 7 on 400 N as listed, give or take 390, of which 90 are not of the crate.
    expect([first.listedN, first.knownN]).toEqual([400, { least: 10, most: 790 }]);
    expect(inNewtons(first)).toEqual([
      [700, 1300],
      [700, 890],
    ]);
    // It stayed: 150 N batten heavy or more. With 8 on that is 40 N or more.
    expect([second.listedN, second.knownN]).toEqual([300, { least: 40, most: 700 }]);
    expect(inNewtons(second)).toEqual([
      [750, 1300],
      [700, 1000],
    ]);
    // The last: 1300 N and all the rest at its heaviest is 70 N, and that lifts.
    const last = eases.at(-1);
    assert(last !== undefined, 'a last pull');
    expect([last.listedN, last.knownN]).toEqual([-400, { least: 40, most: 70 }]);
    // 440 N above the list, 170 of them not of the crate; at most 300 by its tolerance.
    expect(inNewtons(last)).toEqual([null, [1270, 1300]]);
  });

  it('takes a load that is just batten heavy, and a heaviest that just lifts', () => {
    // 1100 − 330 − 7 · 110 is nought.
    expect(drillOf(plantOf({ restN: 30 })).baseBricks).toBe(7);
    expect(drillOf(plantOf({ restN: 31 })).baseBricks).toBe(6);
    // 1100 + 400 − 15 · 90 is 150, which is 200 less 50.
    expect(drillOf(plantOf({ restN: 100 })).mostBricks).toBe(15);
    expect(drillOf(plantOf({ restN: 101 })).mostBricks).toBe(16);
  });

  it('leaves out what hangs already, and opens zones for riggers', () => {
    const closed = [RUN, DROP];
    const { steps } = drillOf(plantOf(), { items: { crate: 'flying' }, closed });
    expect(steps.slice(0, 5)).toEqual([
      { act: 'reopen', zone: RUN },
      { act: 'reopen', zone: DROP },
      { act: 'close', zone: RUN },
      { act: 'close', zone: DROP },
      add(7),
    ]);
    expect(drillOf(plantOf(), { closed }).steps[2]).toMatchObject({ act: 'attach' });
  });

  it('keeps its run closed where the lock does not hold one brick more', () => {
    const last = (lockLimitN: number) => drillOf(plantOf({}, { lockLimitN })).steps.at(-1);
    expect(last(100)).toEqual({ act: 'reopen', zone: RUN });
    expect(last(99)).toEqual({ act: 'reopen', zone: DROP });
  });

  it('is one pull where all is known: the base load lifts, and fewer bricks are no drill', () => {
    // 1100 − 1100 is nought with 11 on; with 10 on it would lift as well, and is not the base.
    const exact = plantOf({ halfN: 0, restN: 0 });
    const { baseBricks, mostBricks, eases } = drillOf(exact, {}, { kinds: ['E'], anyway: true });
    expect([baseBricks, mostBricks, eases.length]).toEqual([11, 11, 1]);
  });

  it('takes a piece that lies beside the batten as one that goes on', () => {
    expect(drillOf(plantOf(), { items: { crate: 'beside' } }).steps[0]?.act).toBe('attach');
  });

  it('does not mind what is held elsewhere and is not to hang', () => {
    expect(drillOf(plantOf(), { items: { frame: 'heldElsewhere' } }).baseBricks).toBe(7);
  });

  it('pulls as hard as hands do steadily, and no harder', () => {
    expect(drillOf(plantOf({}, { handsSteadyN: 200 })).pull).toBe(200);
    expect(noneOf(plantOf({}, { handsSteadyN: 199 }))).toEqual([
      { why: 'pulledTooHard', pull: 200, hands: 199, kind: 'B', gallery: 'upper' },
    ]);
  });

  it('pulls for the brick that asks most, where a spreader plate comes with one', () => {
    const plain = plantOf();
    /** A plate of 60 N goes on with the tenth brick. */
    const plated: OrderPhysics = {
      ...plain,
      at: (standing) => {
        const { lowN, doubtN } = plain.at(standing);
        const atN = lowN - (countsOf(standing.stack).length >= 10 ? 60 : 0);
        return { lowN: atN, highN: atN, doubtN };
      },
    };
    // 160 N of brick and plate, 10 in doubt and 50 of friction: 220, called as 250.
    expect(drillOf(plated).pull).toBe(250);
    const late: OrderPhysics = {
      ...plain,
      at: (standing) => {
        const { lowN, doubtN } = plain.at(standing);
        const atN = lowN - (countsOf(standing.stack).length >= 30 ? 60 : 0);
        return { lowN: atN, highN: atN, doubtN };
      },
    };
    expect(drillOf(late).pull).toBe(200);
  });
});

describe('no drill', () => {
  it('is needed up to what the lock holds, the base load in it', () => {
    const doubtful = (lockLimitN: number) => plantOf({}, { lockLimitN });
    expect(noneOf(doubtful(390))).toEqual([{ why: 'notNeeded', doubtN: 390, lockN: 390 }]);
    expect(drillOf(doubtful(389)).baseBricks).toBe(7);
    expect(drillOf(doubtful(390), {}, { anyway: true }).baseBricks).toBe(7);
  });

  it('is needed where one kind of brick leaves no more doubt than the lock holds', () => {
    const stock = { B: 8, C: 60 };
    const physics = plantOf({}, { lockLimitN: 350, galleries: [{ ...GALLERY, stock }] });
    // B runs out, and with C, which are known better, the doubt is 320 and 15 of bricks.
    expect(noneOf(physics, {}, { kinds: ['B', 'C'] })).toEqual([
      { why: 'notNeeded', doubtN: 335, lockN: 350 },
    ]);
  });

  it('begins arbor heavy, by so much', () => {
    // With one on: nothing listed, 100 N in doubt, and 100 N that the lock is trusted with.
    const start = { stack: bricksOn(1) };
    expect(drillOf(plantOf({ restN: 90 }), start).baseBricks).toBe(5);
    expect(noneOf(plantOf({ restN: 91 }), start)).toEqual([{ why: 'arborHeavy', byN: 1 }]);
    const hung = { ...start, items: { crate: 'flying' } } as const;
    expect(drillOf(plantOf({ restN: 91 }), hung).baseBricks).toBe(5);
    expect(drillOf(plantOf({ restN: 30 }), { ...hung, stack: bricksOn(7) }).baseBricks).toBe(0);
    expect(noneOf(plantOf({ restN: 31 }), { ...hung, stack: bricksOn(7) })).toEqual([
      { why: 'arborHeavy', byN: 1 },
    ]);
    // Nobody goes to the batten then, so all of what is too much counts.
    expect(noneOf(plantOf({ restN: 31 }), { ...hung, stack: bricksOn(9) })).toEqual([
      { why: 'arborHeavy', byN: 221 },
    ]);
  });

  it('stands on a stop that is not rated for the heaviest', () => {
    const rated = (ratedN: number) => plantOf({}, { lowStop: { heightM: 1, ratedN } });
    expect(drillOf(rated(1420)).baseBricks).toBe(7);
    expect(noneOf(rated(1419))).toEqual([{ why: 'stopNotRated', mostN: 1420, ratedN: 1419 }]);
  });

  it('has too few plates: in stock, in reach, on the rods, or for the arbor', () => {
    const limits = (more: Partial<OrderPhysics>) => noneOf(plantOf({}, more))[0];
    const at = (change: Partial<typeof GALLERY>) => ({ galleries: [{ ...GALLERY, ...change }] });
    const few = { why: 'tooFewBricks', kind: 'B', gallery: 'upper' };
    expect(limits(at({ stock: { B: 14 } }))).toEqual({ ...few, fit: 14, limit: 'stock' });
    expect(limits(at({ stock: {} }))).toEqual({ ...few, fit: 0, limit: 'stock' });
    expect(limits(at({ reachFromM: 15.6 }))).toEqual({ ...few, fit: 0, limit: 'reach' });
    expect(limits(at({ reachToM: 15.9 }))).toEqual({ ...few, fit: 14, limit: 'reach' });
    expect(limits({ rodM: 0.42 })).toEqual({ ...few, fit: 14, limit: 'rod' });
    // 15 bricks of 10 kg, give or take 1 each.
    expect(limits({ arborMassLimitKg: 164 })).toEqual({ ...few, fit: 14, limit: 'mass' });
    expect(drillOf(plantOf({}, { arborMassLimitKg: 165 })).mostBricks).toBe(15);
    expect(drillOf(plantOf({}, { rodM: 0.45 })).mostBricks).toBe(15);
    expect(drillOf(plantOf({}, at({ stock: { B: 15 } }))).mostBricks).toBe(15);
    expect(drillOf(plantOf({}, at({ reachFromM: 15.5, reachToM: 15.92 }))).mostBricks).toBe(15);
  });

  it('begins a hair off its stop no more than on it', () => {
    expect(drillOf(plantOf(), { height: metres(1 + 1e-7) }).baseBricks).toBe(7);
    expect(noneOf(plantOf(), { height: metres(1 + 1e-5) })).toEqual([{ why: 'notOnLowStop' }]);
  });
});
