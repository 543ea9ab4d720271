/** Moves and bricks: one step inside each rule and one past it. */
import { describe, expect, it } from 'vitest';
import { metres } from '#quantities';
import type { Restraint, Standing, Step } from '#state';
import {
  add,
  BARE,
  breachOf,
  bullLine,
  DROPS,
  fly,
  plantOf,
  RUN,
  remove,
  rulesOf,
  standingAt,
  tried,
} from './example-order.ts';

const hung = { frame: 'flying' } as const;

const galleryWith = (bricks: number) => ({
  id: 'upper',
  name: 'Upper gallery',
  floorM: 18,
  reachFromM: 18,
  reachToM: 21,
  stock: { B: bricks },
});

describe('a move', () => {
  const closed = [RUN, ...DROPS];
  const at = (heightM: number, bricks: number, changes = {}) =>
    standingAt(heightM, bricks, { items: hung, closed, ...changes });

  it('[ORD-007] unlocks what the lock may hold, and no more', () => {
    const start = at(1, 1, { items: { ...hung } });
    expect(rulesOf({ start: at(2, 3), steps: [fly(3)] })).toEqual([]);
    expect(breachOf('ORD-007', { start, steps: [fly(2)] }).byN).toBeCloseTo(40, 9);
  });

  it('[ORD-007] unlocks no arbor that only a stop holds', () => {
    const onHighStop = (bricks: number) => standingAt(19, bricks, { closed });
    const breach = breachOf('ORD-007', { start: onHighStop(1), steps: [fly(18)] });
    expect(breach.byN).toBeCloseTo(40, 9);
    expect(breach.finding).toMatchObject({ measured: { value: -240 }, limit: { value: 200 } });
    expect(rulesOf({ start: onHighStop(0), steps: [fly(18)] })).toEqual([]);
  });

  it('[ORD-007] unlocks past it on the arbor heavy side with a bull line, and there only', () => {
    const restraints = [bullLine()];
    expect(rulesOf({ start: at(3, 8, { restraints }), steps: [fly(2)] })).toEqual([]);
    expect(rulesOf({ start: at(1, 1, { restraints }), steps: [fly(1.5)] })).toContain('ORD-007');
  });

  it('[ORD-008] guards the whole way and names where it passes and where it is worst', () => {
    const start = at(2, 4);
    expect(rulesOf({ start, steps: [fly(14.9)] })).toEqual([]);
    const breach = breachOf('ORD-008', { start, steps: [fly(17)] });
    expect(breach.where).toBe(17);
    expect(breach.byN).toBeCloseTo(20, 9);
    expect((breach.finding.facts.passes as { value: number }).value).toBeCloseTo(15, 9);
  });

  it('[ORD-008] finds a gap between two restraints on the way', () => {
    const restraints = [bullLine({ to: metres(5) }), bullLine({ from: metres(6) })];
    const start = at(3, 6, { restraints });
    expect(rulesOf({ start, steps: [fly(4)] })).toEqual([]);
    const breach = breachOf('ORD-008', { start, steps: [fly(8)] });
    expect(breach.where).toBeCloseTo(6, 9);
    expect(rulesOf({ start: at(3, 6, { restraints: [bullLine()] }), steps: [fly(8)] })).toEqual([]);
  });

  it('[ORD-008] names the first of several gaps, the way that it goes', () => {
    const spans = [
      [1, 2],
      [3, 4],
      [5, 19],
    ] as const;
    const restraints = spans.map(([from, to]) => bullLine({ from: metres(from), to: metres(to) }));
    const passes = (fromM: number, toM: number) => {
      const start = at(fromM, 6, { restraints });
      const breach = breachOf('ORD-008', { start, steps: [fly(toM)] });
      return breach.finding.facts.passes;
    };
    expect(passes(6, 1.5)).toMatchObject({ value: 5 });
    expect(passes(1.5, 6)).toMatchObject({ value: 2 });
    expect(rulesOf({ start: at(6, 6, { restraints }), steps: [fly(5)] })).toEqual([]);
  });

  it('[ORD-009] takes what hands can pull with friction, and no more', () => {
    // 6 bricks at 8 m: 330 N arbor heavy, and 50 N of friction against hands that draw it in.
    const steps = [fly(2)];
    const strong = { more: { handsBriefN: 380 } };
    const start = at(8, 6);
    expect(rulesOf({ plant: strong, start, steps })).not.toContain('ORD-009');
    const weak = { more: { handsBriefN: 379 } };
    expect(rulesOf({ plant: weak, start, steps })).toContain('ORD-009');
    const { finding } = breachOf('ORD-009', { plant: weak, start, steps });
    expect(finding).toMatchObject({ limit: { value: 379 }, facts: { friction: { value: 50 } } });
    expect(finding.measured?.value).toBeCloseTo(-330, 9);
  });

  it('[ORD-009] counts on no friction where the set pulls the way it goes', () => {
    const out = (handsBriefN: number) =>
      rulesOf({ plant: { more: { handsBriefN } }, start: at(2, 4), steps: [fly(5)] });
    // 70 N and then 100 N arbor heavy: held back, with nothing on top.
    expect(out(100)).not.toContain('ORD-009');
    expect(out(99)).toContain('ORD-009');
    const { finding } = breachOf('ORD-009', {
      plant: { more: { handsBriefN: 99 } },
      start: at(2, 4),
      steps: [fly(5)],
    });
    expect(finding).toMatchObject({ facts: { friction: { value: 0 } } });
    const inward = (handsBriefN: number) =>
      rulesOf({ plant: { more: { handsBriefN } }, start: at(5, 1), steps: [fly(2)] });
    // 200 N and then 230 N batten heavy, coming in.
    expect(inward(230)).not.toContain('ORD-009');
    expect(inward(229)).toContain('ORD-009');
  });

  it('[ORD-009] lets a winch haul where hands cannot', () => {
    const plant = { more: { handsBriefN: 130 } };
    const restraints = [bullLine({ kind: 'winch' })];
    const start = at(2, 4, { restraints });
    expect(rulesOf({ plant, start, steps: [fly(8)] })).toEqual([]);
  });

  const tower = { tower: 'flying' } as const;

  it('[ORD-010] lands a piece on its height of contact, and not below', () => {
    const start = standingAt(10, 5, { items: tower, closed });
    expect(rulesOf({ start, steps: [fly(6)] })).toEqual([]);
    const breach = breachOf('ORD-010', { start, steps: [fly(5.9)] });
    expect(breach.byN).toBeCloseTo(310, 9);
    expect(breach.where).toBe(6);
  });

  it('[ORD-010] lifts a piece off that the bricks do not balance', () => {
    const start = standingAt(6, 2, { items: { tower: 'attachedResting' }, closed });
    expect(rulesOf({ start, steps: [fly(7)] })).toContain('ORD-010');
    const balanced = standingAt(6, 5, { items: { tower: 'attachedResting' }, closed });
    expect(rulesOf({ start: balanced, steps: [fly(7)] })).toEqual([]);
  });

  it('[ORD-011] moves nothing that is tied, and no batten in through its stands', () => {
    const with_ = (kind: Restraint['kind'], resists: 'in' | 'out', toM: number) => ({
      start: at(3, 3, {
        restraints: [bullLine({ kind, resists, from: metres(3), to: metres(3) })],
      }),
      steps: [fly(toM)],
    });
    for (const kind of ['arborSling', 'deadHangSteel', 'pinnedPiece'] as const) {
      expect(rulesOf(with_(kind, 'out', 4)), kind).toEqual(['ORD-011']);
    }
    expect(rulesOf(with_('choke', 'out', 4))).toContain('ORD-011');
    expect(rulesOf(with_('stands', 'in', 4))).toEqual([]);
    expect(rulesOf(with_('stands', 'in', 2))).toEqual(['ORD-011']);
    expect(breachOf('ORD-011', with_('arborSling', 'out', 4)).byN).toBeNull();
  });

  it('[ORD-012] moves only with the run zone closed', () => {
    expect(rulesOf({ start: at(3, 3), steps: [fly(4)] })).toEqual([]);
    expect(rulesOf({ start: at(3, 3, { closed: DROPS }), steps: [fly(4)] })).toEqual(['ORD-012']);
    expect(rulesOf({ start: at(3, 3, { closed: [] }), steps: [fly(3)] })).toEqual([]);
  });

  it('follows a doubt that grows on the way', () => {
    const { at: asListed } = plantOf();
    const growing = {
      at: (standing: Standing) => ({ ...asListed(standing), doubtN: 10 * standing.height }),
    };
    const trial = {
      plant: { more: growing },
      start: at(2, 3),
      options: { doubt: 'worst' } as const,
    };
    expect(rulesOf({ ...trial, steps: [fly(12.4)] })).toEqual([]);
    const breach = breachOf('ORD-008', { ...trial, steps: [fly(12.6)] });
    expect(breach.byN).toBeCloseTo(2, 9);
    expect((breach.finding.facts.passes as { value: number }).value).toBeCloseTo(12.5, 9);
  });

  it('[ORD-007] counts the planning limit under way with people where it runs', () => {
    const steps = [fly(5)];
    const open = at(6, 4, { closed: DROPS });
    const check = { faults: 'check' } as const;
    expect(breachOf('ORD-007', { start: open, steps, options: check }).byN).toBeCloseTo(10, 9);
    expect(rulesOf({ start: open, steps })).toEqual(['ORD-012']);
    expect(rulesOf({ start: at(6, 4), steps, options: check })).toEqual([]);
  });

  it('takes the worst of the doubt along the way', () => {
    const plant = { pieces: { frame: { weightN: 300, doubtN: 50 } } };
    const trial = { plant, start: at(2, 4), options: { doubt: 'worst' } as const };
    expect(rulesOf({ ...trial, steps: [fly(9.9)] })).toEqual([]);
    expect(rulesOf({ ...trial, steps: [fly(10.1)] })).toEqual(['ORD-008']);
  });
});

describe('bricks', () => {
  const start = standingAt(1, 0);

  it('[ORD-013] handles bricks only over a closed drop zone', () => {
    expect(rulesOf({ start, steps: [add(1)] })).toEqual([]);
    expect(rulesOf({ start: { ...start, closed: [RUN] }, steps: [add(1)] })).toEqual(['ORD-013']);
  });

  it('[ORD-014] counts the reach plate by plate, with the stack as it is then', () => {
    const lowM = 19.5 - 0.03 * 20;
    const reach = { id: 'upper', name: 'Upper gallery', floorM: 18, stock: { B: 20 } };
    const plant = (fromM: number, toM: number) => ({
      more: { galleries: [{ ...reach, reachFromM: fromM, reachToM: toM }] },
    });
    expect(lowM).toBeLessThan(19.5);
    expect(rulesOf({ plant: plant(19, 19.56), start, steps: [add(2)] })).toEqual([]);
    const onlyOne = plant(19, 19.53);
    const breach = breachOf('ORD-014', { plant: onlyOne, start, steps: [add(2)] });
    expect(breach.finding.facts.plate).toMatchObject({ value: 2 });
    const loaded = standingAt(1, 2, { items: { frame: 'flying' } });
    expect(rulesOf({ plant: plant(19.56, 20), start: loaded, steps: [remove(2)] })).toEqual([]);
    expect(rulesOf({ plant: plant(19.57, 20), start: loaded, steps: [remove(2)] })).toEqual([
      'ORD-014',
    ]);
  });

  it('[ORD-015] takes no more from a gallery than it has, and counts what comes back', () => {
    const items = { motor: 'flying' } as const;
    const plant = { more: { galleries: [galleryWith(2)] } };
    const trial = { plant, start: standingAt(1, 0, { items }) };
    expect(rulesOf({ ...trial, steps: [add(2), remove(1), add(1)] })).toEqual([]);
    expect(rulesOf({ ...trial, steps: [add(2), add(1)] })).toEqual(['ORD-015']);
    expect(rulesOf({ ...trial, steps: [add(2), remove(1), add(2)] })).toEqual(['ORD-015']);
    const breach = breachOf('ORD-015', { ...trial, steps: [add(3)] });
    expect(breach.finding).toMatchObject({ measured: { value: 3 }, limit: { value: 2 } });
    const mid = { start: standingAt(9, 0, { items }), steps: [add(1, 'C', 'mid')] };
    expect(breachOf('ORD-015', mid).finding).toMatchObject({
      at: { gallery: 'mid' },
      limit: { value: 0 },
      facts: { gallery: 'Mid gallery', kind: 'C' },
    });
  });

  it('[ORD-016] stacks to the top of the rods and no higher', () => {
    const items = { motor: 'flying' } as const;
    const trial = { plant: { more: { rodM: 0.09 } }, start: standingAt(1, 0, { items }) };
    expect(rulesOf({ ...trial, steps: [add(2)] })).toEqual([]);
    expect(rulesOf({ ...trial, steps: [add(3)] })).toEqual(['ORD-016']);
  });

  it('[ORD-017] leaves the pipe weight on', () => {
    const trial = { start: standingAt(1, 1) };
    expect(rulesOf({ ...trial, steps: [remove(1)] })).toEqual([]);
    expect(rulesOf({ ...trial, steps: [remove(2)] })).toEqual(['ORD-017']);
  });

  it('[ORD-036] warns loaders inside the drop zone of a gallery above', () => {
    const mid = { zone: 'drop', gallery: 'mid' } as const;
    const steps = [add(1, 'B', 'mid')];
    const at = (closed: readonly (typeof mid | (typeof DROPS)[number])[]) =>
      standingAt(9, 0, { closed, items: { lamp: 'flying' } });
    expect(rulesOf({ start: at([mid]), steps })).toEqual([]);
    expect(rulesOf({ start: at([mid, ...DROPS]), steps })).toEqual(['ORD-036']);
  });

  it('lifts a spreader plate off with the brick below it, and counts it for none', () => {
    const spreader = { kind: 'S', count: 1, tag: 'spreader' } as const;
    const plain = standingAt(1, 1);
    const spread = { ...plain, stack: [...plain.stack, spreader] };
    expect(rulesOf({ start: spread, steps: [remove(1)] })).toEqual([]);
    const stackAfter = (steps: readonly Step[]) =>
      tried({ start: spread, steps }).states.at(-1)?.standing.stack;
    expect(stackAfter([remove(1)])).toEqual(BARE.stack);
    const two = { kind: 'B', count: 1, tag: 'show' } as const;
    expect(stackAfter([add(1)])).toEqual([...plain.stack, spreader, two]);
    expect(stackAfter([add(1), add(1)])).toEqual([...plain.stack, spreader, { ...two, count: 2 }]);
    expect(stackAfter([add(1, 'C')])?.at(-1)).toEqual({ ...two, kind: 'C' });
    expect(tried({ start: spread, steps: [remove(2)] }).broken?.rule).toBe('ORD-017');
  });

  it('asks for the plates to be counted aloud', () => {
    expect(tried({ start, steps: [add(1)] }).proofsDue).toEqual([
      { step: 0, proof: 'count the plates aloud' },
    ]);
  });
});
