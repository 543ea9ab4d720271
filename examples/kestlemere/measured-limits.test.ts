/**
 * What the tests of this house say of its locks, bricks and arbors, from the file to the physics
 * of an order. Masses are those of the demo's own plan (10.4), its own computed figures.
 */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { assess, orderPhysicsOf } from '#assessment';
import { readHouse, readShow } from '#documents';
import { POUND, POUND_FORCE } from '#quantities';
import { verifyOrder } from '#rules';
import type { OrderPhysics, StackRun } from '#state';
import { expectLb } from './plan-asked.ts';
import { hungOn, hungSet, showRuns } from './plan-sets.ts';

const textOf = (file: string): string =>
  readFileSync(new URL(`./${file}`, import.meta.url), 'utf8');

type RawHouse = { readonly lineSets: readonly { readonly id: string }[] };

/** The physics of a set, with another test of its lock written into the house. */
const physicsOf = (set: string, lock?: object): OrderPhysics => {
  const raw = JSON.parse(textOf('house.json')) as RawHouse;
  const lineSets = raw.lineSets.map((each) =>
    each.id === set && lock !== undefined ? { ...each, lock } : each,
  );
  const read = readHouse(JSON.stringify({ ...raw, lineSets }));
  if (!read.ok) throw new Error(JSON.stringify(read.error));
  const { house } = read.value;
  const show = readShow(textOf('clockmaker.show.json'), house);
  if (!show.ok) throw new Error(JSON.stringify(show.error));
  const assessment = assess(house, show.value.show, null);
  const assessed = assessment.sets.find(({ lineSet }) => lineSet.id === set);
  if (assessed === undefined) throw new Error(`no set ${set}`);
  const physics = orderPhysicsOf(assessed, house, null);
  if (!physics.known) throw new Error(physics.needs.join(', '));
  return physics.value;
};

const lockLb = (physics: OrderPhysics): number => physics.lockLimitN / POUND_FORCE;
const onDay = (value: string | boolean) => ({ value, basis: 'measured', on: '2026-10-01' });

describe('the lock of one set', () => {
  it('counts for the limit of the house, or for less by its own grip test', () => {
    // 66 lbf on set 5, 49 lbf on set 35, none on set 20.
    expect(lockLb(physicsOf('5'))).toBeCloseTo(50, 9);
    expect(lockLb(physicsOf('35'))).toBeCloseTo(49, 9);
    expect(lockLb(physicsOf('20'))).toBeCloseTo(50, 9);
  });

  it('that failed counts for nothing, and its set hangs by nothing', () => {
    const failed = { failed: onDay(true), grip: onDay('66 lbf') };
    const physics = physicsOf('9', failed);
    expect(physics.lockLimitN).toBe(0);
    // The harbour drop at 60.5 ft, 15 lb arbor heavy, off both stops.
    const start = hungOn(hungSet('9'), 60.5, showRuns(6, 1));
    const options = { doubt: 'none', faults: 'skip' } as const;
    const { broken } = verifyOrder(physics, start, [], options);
    expect(broken).toMatchObject({ rule: 'ORD-001', step: -1, finding: { limit: { value: 0 } } });
    expectLb((broken?.byN ?? 0) / POUND_FORCE, 15);
    expect(verifyOrder(physicsOf('9'), start, [], options).broken).toBeNull();
  });

  it('that grips 14 lbf does not hold those 15 lb, and one that grips 16 does', () => {
    const start = hungOn(hungSet('9'), 60.5, showRuns(6, 1));
    const broken = (grip: string) => {
      const physics = physicsOf('9', { grip: onDay(grip) });
      return verifyOrder(physics, start, [], { doubt: 'none', faults: 'skip' }).broken?.rule;
    };
    expect([broken('14 lbf'), broken('16 lbf')]).toEqual(['ORD-001', undefined]);
  });
});

describe('a brick by its weighed sample', () => {
  it('weighs its mean, and may be off by what the house had written or the sample says', () => {
    const { house } = ((read) => {
      if (!read.ok) throw new Error(JSON.stringify(read.error));
      return read.value;
    })(readHouse(textOf('house.json')));
    const masses = house.brickKinds.map(({ id, mass }) => {
      if (!mass.known) throw new Error(`brick ${id} is not known`);
      const { value, tolerance = Number.NaN, provenance } = mass;
      return [id, value / POUND, tolerance / POUND, provenance.source];
    });
    expect(masses).toEqual([
      ['F', expect.closeTo(25, 9), expect.closeTo(0.5, 9), 'sample of 24'],
      ['H', expect.closeTo(12.5, 9), expect.closeTo(0.3, 9), 'sample of 12'],
      ['O', expect.closeTo(22, 9), expect.closeTo(0.8, 9), 'sample of 12'],
    ]);
  });
});

describe('the whole arbor', () => {
  const pipe = (kind: string, count: number): StackRun => ({ kind, count, tag: 'pipe' });

  it('weighs what the plan of the demo has: 986 lb on 5, 798.5 lb on 11, 1215 lb on D2', () => {
    const weighs = (set: string, stack: readonly StackRun[]): number =>
      physicsOf(set).arborKg(stack).massKg / POUND;
    expect(weighs('5', [pipe('O', 3), ...showRuns(33, 0)])).toBeCloseTo(986, 9);
    expect(weighs('11', [pipe('O', 3), ...showRuns(25, 1)])).toBeCloseTo(798.5, 9);
    expect(weighs('D2', [pipe('F', 10), ...showRuns(32, 0)])).toBeCloseTo(1215, 9);
  });

  it('[ORD-050] takes no more than its limit: 1200 lb on set 5', () => {
    const physics = physicsOf('5');
    const stocked: OrderPhysics = {
      ...physics,
      rodM: 100,
      galleries: physics.galleries.map((each) => ({
        ...each,
        reachFromM: -100,
        reachToM: 200,
        stock: { F: 100 },
      })),
    };
    // 95 + 66 + 41 · 25 is 1186 lb, and one more is 1211.
    const steps = [{ act: 'add', kind: 'F', count: 1, gallery: 'upper' }] as const;
    const rules = (full: number) => {
      const start = hungOn(hungSet('5'), 3, showRuns(full, 0));
      const { broken, alsoBroken } = verifyOrder(stocked, start, steps, {
        doubt: 'none',
        faults: 'skip',
      });
      return [broken, ...alsoBroken].map((each) => each?.rule);
    };
    expect(rules(41)).toContain('ORD-050');
    expect(rules(40)).not.toContain('ORD-050');
  });
});
