import { describe, expect, it } from 'vitest';
import { GRAVITY } from '#quantities';
import {
  BRICKS_FIRST,
  CURTAIN_IN,
  curve,
  DEMO_FRICTION,
  DOUBLE_HALVED,
  ELECTRIC_AT_CHEST,
  FLAT_ON_DECK,
  feet,
  HIGH_STOP,
  hanging,
  type InPounds,
  LOCK,
  LOW_STOP,
  moves,
  NO_FRICTION,
  pounds,
  poundsForce,
  STEEL_AWAY,
  UNIT_AT_GRID,
} from './example-runs.ts';
import { type Run, type RunawayCase, runaway } from './runaway.ts';

const run = (the: RunawayCase): Run => {
  const found = runaway(the);
  if (!found.moves) throw new Error(`it stays: ${found.why}`);
  return found;
};

/** With all lines and with none: the scenarios do not say how much of them they count. */
const bothWays = (the: RunawayCase): { readonly slow: Run; readonly fast: Run } => ({
  slow: run(the),
  fast: run({ ...the, moves: { ...the.moves, lineMass: 0 } }),
});

describe('the runaways of the scenarios, as the house computed them', () => {
  it('S1: bricks first, 58 ft: 2.3 s, 15 m/s, 63 kJ', () => {
    const { slow, fast } = bothWays(BRICKS_FIRST);
    expect([slow.way, slow.end, slow.height]).toEqual(['out', 'stop', HIGH_STOP]);
    expect(slow.energy.kinetic / 1000).toBeCloseTo(63.09, 2);
    expect(slow.speed).toBeCloseTo(15.05, 2);
    // A third of the way between all lines and none.
    expect(slow.time).toBeCloseTo(2.39, 2);
    expect(fast.time).toBeCloseTo(2.32, 2);
  });

  it('S2: laden at 4 ft with the lock: 0.3 s, 2 m/s, 1 kJ', () => {
    const { slow, fast } = bothWays(ELECTRIC_AT_CHEST);
    expect([slow.way, slow.height]).toEqual(['in', LOW_STOP]);
    for (const one of [slow, fast]) {
      expect(one.time).toBeCloseTo(0.31, 1);
      expect(one.speed).toBeCloseTo(1.95, 1);
      expect(one.energy.kinetic / 1000).toBeCloseTo(0.97, 2);
    }
  });

  it('S5: the curtain rises to 30.5 ft, where its chain is picked up, and goes on', () => {
    const found = run(CURTAIN_IN);
    const [contact] = found.contacts;
    expect(contact?.is).toBe('pickingUp');
    expect(contact?.mass).toBeCloseTo(pounds(22), 9);
    expect(contact?.height).toBeCloseTo(feet(30.5), 9);
    expect(found.energy.landed).toBeGreaterThan(0);
    expect(found.speed).toBeLessThan(found.speedAtMost);
  });

  it('S6, wrong A: the flat is at 4.5 m/s when its foot leaves the deck, lock dragging', () => {
    const { slow, fast } = bothWays(FLAT_ON_DECK);
    expect(slow.contacts[0]?.height).toBeCloseTo(feet(23), 9);
    expect(slow.contacts[0]?.speedBefore).toBeCloseTo(4.44, 2);
    expect(fast.contacts[0]?.speedBefore).toBeCloseTo(4.56, 2);
    // The whole piece is then batten heavy and the lock drags: it comes to rest before the stop.
    expect([slow.end, slow.goesBack]).toEqual(['rest', false]);
  });

  it('S9: 5.5 m/s at the bottom with the lock dragging, 8 m/s without', () => {
    // With the whole 50 lb it just holds, by a hundredth of a pound; the text calls that creeping.
    expect(runaway({ ...UNIT_AT_GRID, hold: LOCK })).toEqual({
      moves: false,
      why: 'held',
      way: 'in',
    });
    const dragging = bothWays({ ...UNIT_AT_GRID, hold: poundsForce(49.9) });
    expect(dragging.slow.speed).toBeLessThan(5.5);
    expect(dragging.fast.speed).toBeGreaterThan(5.5);
    const free = bothWays(UNIT_AT_GRID);
    expect(free.slow.speed).toBeLessThan(8);
    expect(free.fast.speed).toBeGreaterThan(8);
  });

  it('S11: 8.6 m/s at the top of a double purchase, lock dragging', () => {
    const { slow, fast } = bothWays(DOUBLE_HALVED);
    expect(slow.speed).toBeLessThan(8.6);
    expect(fast.speed).toBeGreaterThan(8.6);
    expect(slow.arborSpeed).toBeCloseTo(slow.speed / 2, 12);
  });

  it('S12: 8 m/s at the bottom with the steel away, lock dragging', () => {
    const { slow, fast } = bothWays(STEEL_AWAY);
    expect([slow.way, slow.end]).toEqual(['in', 'stop']);
    expect(slow.speed).toBeLessThan(8);
    expect(fast.speed).toBeGreaterThan(8);
  });
});

const level = (heightFt: number, ...nodes: readonly InPounds[]): RunawayCase => ({
  curve: curve(...nodes),
  lowStop: LOW_STOP,
  highStop: HIGH_STOP,
  height: feet(heightFt),
  hold: 0,
  moves: { ...moves({ arbor: 400, hanging: 400 }), friction: NO_FRICTION },
});

describe('a set that is let go', () => {
  it.each([
    ['on the stop that it leans on', level(3, [3, 40], [61, 40]), 'atStop', 'in'],
    ['on its high stop, arbor heavy', level(61, [3, -40], [61, -40]), 'atStop', 'out'],
    ['in balance', level(30, [3, 0], [61, 0]), 'inBalance', null],
    ['in balance on a stop', level(3, [3, 0], [61, 0]), 'inBalance', null],
    [
      'with a piece that shares its load',
      level(20, [3, -9], [20, -9, 9], [61, 9]),
      'inBalance',
      null,
    ],
    [
      'against a hold as large',
      { ...level(30, [3, 40], [61, 40]), hold: poundsForce(40) },
      'held',
      'in',
    ],
  ])('stays %s', (_where, the, why, way) => {
    expect(runaway(the)).toEqual({ moves: false, why, way });
  });

  it('stays where friction holds it, by what hangs or by both sides', () => {
    const the = level(30, [3, 30], [61, 30]);
    const withShare = (share: number, of: 'batten' | 'both') =>
      runaway({ ...the, moves: { ...the.moves, friction: { share, of, constant: 0 } } });
    expect(withShare(0.076, 'batten')).toMatchObject({ why: 'held' });
    expect(withShare(0.074, 'batten')).toMatchObject({ moves: true });
    expect(withShare(0.038, 'both')).toMatchObject({ why: 'held' });
    expect(withShare(0.037, 'both')).toMatchObject({ moves: true });
  });

  it('takes the arbor of a double purchase by half, and blocks by their mass', () => {
    const the = level(30, [3, 30], [61, 30]);
    const double = (share: number, blockMass: number) => ({
      ...the,
      moves: {
        ...moves({ arbor: 800, hanging: 400 }),
        purchase: 2 as const,
        blockMass,
        friction: { share, of: 'both' as const, constant: 0 },
      },
    });
    expect(runaway(double(0.038, 0))).toMatchObject({ why: 'held' });
    expect(runaway(double(0.037, 0))).toMatchObject({ moves: true });
    const [light, heavy] = [run(double(0, 0)), run(double(0, 50))];
    expect(heavy.mass.moving - light.mass.moving).toBeCloseTo(50, 9);
    expect(heavy.acceleration.start * heavy.mass.moving).toBeCloseTo(poundsForce(30), 9);
  });

  it('lands a piece, keeps its speed, and loses the energy of what landed', () => {
    const the = level(30, [3, -5], [20, -5, 45], [61, 45]);
    const landing = run({
      ...the,
      moves: { ...the.moves, hanging: hanging([3, 350], [20, 350, 400], [61, 400]) },
    });
    const [contact] = landing.contacts;
    expect(contact).toMatchObject({ is: 'landing' });
    expect(contact?.mass).toBeCloseTo(pounds(50), 9);
    expect(contact?.speedAfter).toBe(contact?.speedBefore);
    const lostJ = (pounds(50) * (contact?.speedBefore ?? 0) ** 2) / 2;
    expect(landing.energy.landed).toBeCloseTo(lostJ, 9);
  });

  it('picks a piece up from rest and keeps the momentum', () => {
    const the = level(10, [3, -45], [20, -45, 5], [61, 5]);
    const found = run({
      ...the,
      moves: { ...the.moves, hanging: hanging([3, 350], [20, 350, 400], [61, 400]) },
    });
    const [contact] = found.contacts;
    const restLb = 400 + 6 * 110 * 0.11;
    expect(contact?.is).toBe('pickingUp');
    expect((contact?.speedAfter ?? 0) / (contact?.speedBefore ?? 1)).toBeCloseTo(
      (350 + restLb) / (400 + restLb),
      12,
    );
  });

  it('comes to rest on the way and says whether it goes back', () => {
    const back = run(level(53, [3, -40], [61, 18]));
    expect(back).toMatchObject({ end: 'rest', goesBack: true, speed: 0 });
    expect(back.height).toBeCloseTo(feet(33), 6);
    const { moves: moving, ...the } = level(53, [3, -40], [61, 18]);
    const friction = { ...NO_FRICTION, constant: poundsForce(7) };
    const stays = run({ ...the, moves: { ...moving, friction } });
    // From +10 lb by 7 lb of friction: 3 lb at first, so 6 ft, where -4 lb do not overcome it.
    expect(stays).toMatchObject({ end: 'rest', goesBack: false });
    expect(stays.height).toBeCloseTo(feet(47), 6);
  });

  it('runs on against the imbalance when it is already moving, and stops by itself', () => {
    const the = { ...level(10, [3, 40], [61, 40]), already: { way: 'out', speed: 1.5 } as const };
    const found = run(the);
    expect(found).toMatchObject({ way: 'out', end: 'rest', goesBack: true });
    const movingKg = pounds(800 + 6 * 110 * 0.11);
    const wayM = (movingKg * 1.5 ** 2) / (2 * poundsForce(40));
    expect(found.height - feet(10)).toBeCloseTo(wayM, 9);
    expect(found.time).toBeCloseTo((2 * wayM) / 1.5, 9);
    const atStop = { ...the, height: HIGH_STOP };
    expect(runaway(atStop)).toEqual({ moves: false, why: 'atStop', way: 'out' });
  });

  it('has no time where it creeps up to a balance that does not hold', () => {
    // 1 kg against 64 N falling by 16 N/m: at 16 m/s it has just what 4 m take, 128 J.
    const the = level(30, [3, 0]);
    const exact = {
      ...the,
      height: 0,
      lowStop: 0,
      curve: [
        { height: 0, below: 64, above: 64 },
        { height: 4, below: 0, above: 0 },
        { height: 8, below: -64, above: -64 },
      ],
      highStop: 8,
      moves: { ...the.moves, arbor: 0, lineMass: 0, hanging: 1 },
      already: { way: 'out', speed: 16 } as const,
    };
    const found = run(exact);
    expect([found.height, found.speed, found.time]).toEqual([4, 0, null]);
  });

  it('counts what each side pulls while it runs', () => {
    const found = run(level(30, [3, -100], [61, -100]));
    const { acceleration, pull } = found;
    expect(acceleration.end).toBeCloseTo(poundsForce(100) / pounds(800 + 72.6), 12);
    expect(pull.batten).toBeCloseTo(pounds(400) * (GRAVITY + acceleration.end), 9);
    expect(pull.arbor).toBeCloseTo(pounds(400) * (GRAVITY - acceleration.end), 9);
  });

  it('passes every node of curve and mass, and where the force turns, in order', () => {
    const { passings } = run(CURTAIN_IN);
    const heights = passings.map(({ height }) => height);
    // Friction of 38 lb outdoes what is left of 440 lb from 28.5 ft on: there it is fastest.
    expect(heights).toEqual([feet(4), heights[1], feet(30.5), HIGH_STOP]);
    expect(heights[1]).toBeCloseTo(feet(28.54), 2);
    expect(Math.max(...passings.map(({ speed }) => speed))).toBe(passings[1]?.speed);
    expect(passings[0]).toMatchObject({ time: 0, speed: 0 });
    expect(passings.at(-1)?.time).toBe(run(CURTAIN_IN).time);
  });

  it('takes the friction of the house by what hangs at the moment', () => {
    const { energy } = run(BRICKS_FIRST);
    const frictionLb = DEMO_FRICTION.share * 169 + 4;
    expect(energy.friction).toBeCloseTo(poundsForce(frictionLb) * feet(58), 6);
  });
});
