/** When the drill for unknown masses can be done and when not, on the small set of the tests. */
import { describe, expect, it } from 'vitest';
import type { BalanceItem } from '#balance';
import { assert } from '#outcome';
import { metres, newtons, POUND_FORCE } from '#quantities';
import type { OrderPhysics, Restraint, Standing } from '#state';
import { examplePhysics } from '../../../validation/sequence/set-physics.ts';
import { asLb, bare, clearItem, ft, lb, setWith } from '../example-jobs.contract.ts';
import { planDrill } from './plan-drill.ts';
import type { Drill, DrillAsked, DrillPlan, NoDrill } from './types.ts';

const HEADER = { header: clearItem(250, 62) };

type Trial = {
  readonly items?: Readonly<Record<string, BalanceItem>>;
  readonly start?: Partial<Standing>;
  readonly asked?: Partial<DrillAsked>;
  readonly more?: Partial<OrderPhysics>;
};

const planned = ({ items = HEADER, start = {}, asked = {}, more = {} }: Trial): DrillPlan =>
  planDrill(
    { ...examplePhysics(setWith(items)), ...more },
    { ...bare, ...start },
    {
      items: Object.keys(items),
      kinds: ['F', 'H'],
      handLinePerBatten: 1,
      callN: 5 * POUND_FORCE,
      anyway: false,
      ...asked,
    },
  );

const drillOf = (trial: Trial): Drill => {
  const plan = planned(trial);
  assert('drill' in plan, JSON.stringify(plan));
  return plan.drill;
};

const noneOf = (trial: Trial): readonly NoDrill[] => {
  const plan = planned(trial);
  return 'none' in plan ? plan.none : [];
};

const whyOf = (trial: Trial): readonly string[] => noneOf(trial).map(({ why }) => why);

const gallery = (stock: Readonly<Record<string, number>>, reachToM = ft(63.5)) => [
  {
    id: 'upper',
    name: 'Upper',
    floorM: ft(58),
    reachFromM: ft(58.25),
    reachToM,
    stock,
  },
];

const bullLine: Restraint = {
  kind: 'bullLine',
  resists: 'out',
  rating: newtons(2000),
  from: metres(ft(3)),
  to: metres(ft(61)),
  owner: null,
  tag: null,
};

describe('the base load', () => {
  it('leaves the lightest that it may be batten heavy, and one brick more does not', () => {
    const { baseBricks, eases, doubtN } = drillOf({});
    // 48.6 + 188 − 25.5 n, bricks at their heaviest: 7.2 lb with 9, arbor heavy with 10.
    expect(baseBricks).toBe(9);
    expect(asLb((eases[0]?.listedN ?? 0) - doubtN)).toBeCloseTo(48.59 + 188 - 9 * 25.5, 6);
    expect(asLb(doubtN)).toBeCloseTo(62 + 4.5, 6);
  });

  it('may be none, and then no brick goes on before a pull', () => {
    const { baseBricks, steps } = drillOf({ items: { crate: clearItem(60, 59) }, start: {} });
    expect(baseBricks).toBe(1);
    const tiny = drillOf({
      items: { crate: clearItem(60, 59) },
      start: { stack: [{ kind: 'F', count: 1, tag: 'show' }] },
    });
    expect(tiny.baseBricks).toBe(0);
    expect(tiny.steps.findIndex(({ act }) => act === 'add')).toBeGreaterThan(
      tiny.steps.findIndex(({ act }) => act === 'ease'),
    );
    expect(steps.findIndex(({ act }) => act === 'add')).toBeLessThan(
      steps.findIndex(({ act }) => act === 'ease'),
    );
  });
});

describe('the pull', () => {
  it('is a brick with what it may be off by, and friction of the heaviest, rounded up', () => {
    const { pull, frictionN, steps } = drillOf({});
    // 5 % of 80 kg and the heaviest header, and 4 lbf; then 25.5 lb of brick; up to 5 lbf.
    const friction = 0.05 * (80 / lb(1) + 312) + 4;
    expect(asLb(frictionN)).toBeCloseTo(friction, 6);
    expect(pull / POUND_FORCE).toBeCloseTo(5 * Math.ceil((friction + 25.5) / 5), 9);
    const pulls = steps.flatMap((step) => (step.act === 'ease' ? [step.pull] : []));
    expect(new Set(pulls)).toEqual(new Set([pull]));
  });

  it('is twice as hard on a hand line that travels half as far', () => {
    const half = drillOf({ asked: { handLinePerBatten: 0.5, kinds: ['H'] } });
    const [ease] = half.steps.flatMap((step) => (step.act === 'ease' ? [step.pull] : []));
    expect(ease).toBeCloseTo(half.pull / 2, 9);
    // 12.8 lb of half brick and 28.4 of friction at the batten, twice on the line.
    expect(half.pull / POUND_FORCE).toBeCloseTo(85, 9);
  });

  it('is no drill where it is more than hands pull steadily', () => {
    const none = noneOf({ asked: { handLinePerBatten: 0.5, kinds: ['F'] } });
    expect(none[0]).toMatchObject({ why: 'pulledTooHard', kind: 'F', gallery: 'upper' });
    expect(whyOf({ asked: { handLinePerBatten: 0.5, kinds: ['F'] } })).toEqual([
      'pulledTooHard',
      'tooFewBricks',
    ]);
    // With half bricks the same hand line will do.
    expect(drillOf({ asked: { handLinePerBatten: 0.5 } }).kind).toBe('H');
  });
});

describe('what each pull says', () => {
  const { eases } = drillOf({});

  it('narrows the mass from below while it stays, and from above where it lifts', () => {
    const least = eases.map(({ ifItLifts }) => ifItLifts.leastKg);
    const most = eases.map(({ ifItLifts }) => ifItLifts.mostKg);
    expect(least).toEqual(least.toSorted((one, other) => one - other));
    expect(most).toEqual(most.toSorted((one, other) => one - other));
    expect(least[0]).toBeCloseTo(lb(188), 9);
    expect(most.at(-1)).toBeCloseTo(lb(312), 9);
  });

  it('knows it batten heavy before each, whatever it weighs', () => {
    const least = eases.map(({ knownN }) => asLb(knownN.least));
    // With 9 on by the tolerances: 48.6 + 188 − 229.5. Then by the pull before, less one brick:
    // 55 lbf pulled, 28.4 of friction, 25.5 of brick.
    expect(least[0]).toBeCloseTo(7.09, 2);
    expect(least[1]).toBeCloseTo(55 - (0.05 * (80 / lb(1) + 312) + 4) - 25.5, 6);
    expect(Math.min(...least)).toBeGreaterThanOrEqual(0);
    const most = eases.map(({ knownN }) => asLb(knownN.most));
    expect(most[0]).toBeCloseTo(48.59 + 312 - 9 * 24.5, 6);
  });

  it('leaves no mass to stay under the last pull', () => {
    expect(eases.at(-1)?.ifItStays).toBeNull();
    expect(eases.slice(0, -1).every(({ ifItStays }) => ifItStays !== null)).toBe(true);
  });

  it('names the step of each', () => {
    const { steps } = drillOf({});
    expect(eases.map(({ step }) => steps[step]?.act)).toEqual(eases.map(() => 'ease'));
    expect(eases.map(({ bricks }) => bricks)).toEqual(eases.map((_, index) => 9 + index));
  });
});

describe('no drill', () => {
  it('is needed where the lock holds all of the doubt', () => {
    const weighed = { header: clearItem(250, 5) };
    expect(noneOf({ items: weighed })).toMatchObject([{ why: 'notNeeded' }]);
    expect(drillOf({ items: weighed, asked: { anyway: true } }).baseBricks).toBeGreaterThan(9);
  });

  it('is done off the low stop, out of use, or with a restraint on', () => {
    expect(whyOf({ start: { height: metres(ft(4)) } })).toEqual(['notOnLowStop']);
    expect(whyOf({ start: { service: 'lockedOut' } })).toEqual(['outOfUse']);
    expect(whyOf({ start: { restraints: [bullLine] } })).toEqual(['restrained']);
  });

  it('weighs what the set does not have, or what does not hang', () => {
    expect(whyOf({ asked: { items: ['ghost'] } })).toEqual(['notOfSet']);
    expect(whyOf({ start: { items: { header: 'attachedResting' } } })).toEqual(['notHanging']);
    expect(whyOf({ start: { items: { header: 'heldElsewhere' } } })).toEqual(['notHanging']);
    expect(whyOf({ asked: { items: [] } })).toEqual(['nothingToWeigh']);
  });

  it('weighs a piece that rests on the deck, or a cloth that lies in a heap', () => {
    const rests: BalanceItem = { kind: 'standing', mass: lb(250), drop: ft(10), pick: 0 };
    expect(whyOf({ items: { flat: { ...rests, uncertainty: lb(62) } } })).toEqual(['hangsInPart']);
    const touching: BalanceItem = { ...rests, drop: ft(3), uncertainty: lb(62) };
    expect(whyOf({ items: { flat: touching } })).toEqual(['inContact']);
    const cloth: BalanceItem = {
      kind: 'cloth',
      mass: lb(250),
      drop: ft(28),
      tie: ft(0.25),
      hem: 0,
      uncertainty: lb(62),
    };
    expect(noneOf({ items: { cloth } })).toMatchObject([{ why: 'hangsInPart', items: ['cloth'] }]);
  });

  it('leaves a heap of little doubt aside, and adds what it comes to later', () => {
    const cloth: BalanceItem = {
      kind: 'cloth',
      mass: lb(250),
      drop: ft(28),
      tie: ft(0.25),
      hem: 0,
      uncertainty: lb(5),
    };
    const drill = drillOf({ items: { ...HEADER, cloth } });
    expect(drill.weighs).toEqual(['header']);
    expect(asLb(drill.doubtN)).toBeCloseTo(62 + 5 + 0.5 * drill.baseBricks, 6);
  });

  it('starts with too much on the arbor for the lightest, or for one that drops', () => {
    const stack = [{ kind: 'F', count: 10, tag: 'show' }] as const;
    expect(whyOf({ start: { stack } })).toEqual(['arborHeavy']);
    const hanging = { stack, items: { header: 'flying' } } as const;
    expect(whyOf({ start: hanging })).toEqual(['arborHeavy']);
    const nine = [{ kind: 'F', count: 9, tag: 'show' }] as const;
    expect(drillOf({ start: { ...hanging, stack: nine } }).baseBricks).toBe(0);
  });

  it('presses harder on the stop than that is rated for', () => {
    const more = { lowStop: { heightM: ft(3), ratedN: 360 * POUND_FORCE } };
    expect(noneOf({ more })).toMatchObject([{ why: 'stopNotRated' }]);
    // 48.6 lb and 312 lb.
    const enough = { lowStop: { heightM: ft(3), ratedN: 361 * POUND_FORCE } };
    expect(drillOf({ more: enough }).baseBricks).toBe(9);
  });

  it('runs out of bricks, of reach or of rod before the heaviest would lift', () => {
    const of = (more: Partial<OrderPhysics>) => noneOf({ more, asked: { kinds: ['F'] } });
    const { mostBricks } = drillOf({});
    const short = { galleries: gallery({ F: mostBricks - 1 }) };
    expect(of(short)).toMatchObject([
      { why: 'tooFewBricks', fit: mostBricks - 1, limit: 'stock', gallery: 'upper' },
    ]);
    expect(planned({ more: { galleries: gallery({ F: mostBricks }) } })).toHaveProperty('drill');
    expect(of({ rodM: (mostBricks - 0.5) * ft(0.1) })[0]).toMatchObject({ limit: 'rod' });
    // A carriage of 95 lb, and each brick half a pound heavier than it is written.
    const weighs = lb(95 + (mostBricks - 1) * 25.5);
    expect(of({ arborMassLimitKg: weighs })[0]).toMatchObject({
      fit: mostBricks - 1,
      limit: 'mass',
    });
    // A plate is handled at 60.06 ft and one brick higher each time.
    const low = gallery({ F: 40 }, ft(60.0625 + 0.1 * (mostBricks - 2) + 0.05));
    expect(of({ galleries: low })).toMatchObject([{ fit: mostBricks - 1, limit: 'reach' }]);
    expect(whyOf({ asked: { kinds: [] } })).toEqual(['noBricks']);
  });

  it('takes the other kind where the first runs out', () => {
    const more = { galleries: gallery({ F: 3, H: 40 }) };
    expect(drillOf({ more }).kind).toBe('H');
  });
});

describe('zones', () => {
  it('are open while riggers are at the batten, and closed from before the first brick', () => {
    const { steps } = drillOf({ start: { closed: [{ zone: 'run' }] } });
    expect(steps.slice(0, 5).map(({ act }) => act)).toEqual([
      'reopen',
      'attach',
      'close',
      'close',
      'add',
    ]);
  });

  it('stay closed at the end where one brick miscounted is more than the lock holds', () => {
    const acts = (more: Partial<OrderPhysics>) =>
      drillOf({ more })
        .steps.slice(-2)
        .map(({ act }) => act);
    expect(acts({})).toEqual(['reopen', 'reopen']);
    expect(acts({ lockLimitN: 20 * POUND_FORCE })).toEqual(['ease', 'reopen']);
  });
});
