import { describe, expect, it } from 'vitest';
import {
  BRICKS_FIRST,
  CURTAIN_IN,
  curve,
  ELECTRIC_AT_CHEST,
  FLAT_ON_DECK,
  feet,
  HIGH_STOP,
  type InPounds,
  LOCK,
  LOW_STOP,
  poundsForce,
} from './example-runs.ts';
import { releasable } from './releasable.ts';
import type { Travel } from './types.ts';

const FOOT_POUND = feet(1) * poundsForce(1);

const between = (heightFt: number, ...nodes: readonly InPounds[]): Travel => ({
  curve: curve(...nodes),
  lowStop: LOW_STOP,
  highStop: HIGH_STOP,
  height: feet(heightFt),
});

describe('what the scenarios of the house set free', () => {
  it('63 kJ with all bricks on a bare electric, 64 kJ without its friction', () => {
    const { energy, starts } = releasable(BRICKS_FIRST);
    // The mean of 776.4 and 853 lb over 58 ft.
    expect(energy).toBeCloseTo(814.7 * 58 * FOOT_POUND, 6);
    expect(energy / 1000).toBeCloseTo(64.07, 2);
    expect(starts.map(({ free }) => free.way)).toEqual(['out']);
  });

  it('1 kJ as a laden batten slips a foot onto its stop through the lock', () => {
    const { energy, energyAgainstHold } = releasable(ELECTRIC_AT_CHEST, LOCK);
    expect(energy).toBeCloseTo(816 * FOOT_POUND, 0);
    expect(energyAgainstHold).toBeCloseTo(766 * FOOT_POUND, 0);
    expect((energyAgainstHold ?? 0) / 1000).toBeCloseTo(1.04, 2);
  });

  it('7.8 kJ on the way up to 30.5 ft where the chain is picked up, and more beyond', () => {
    const [start] = releasable(CURTAIN_IN).starts;
    expect(start?.free.contacts).toHaveLength(1);
    const [contact] = start?.free.contacts ?? [];
    expect(contact?.height).toBeCloseTo(feet(30.5), 9);
    expect((contact?.energy ?? 0) / 1000).toBeCloseTo(7.8, 1);
    // It slows while batten heavy, then gathers again to the stop.
    expect(start?.free.end.at).toBe('stop');
    expect(start?.free.most.energy).toBe(start?.free.end.energy);
  });

  it('6.7 kJ as a flat stands itself up, lock dragging', () => {
    const [start] = releasable(FLAT_ON_DECK, LOCK).starts;
    const [contact] = start?.againstHold?.contacts ?? [];
    expect((contact?.energy ?? 0) / 1000).toBeCloseTo(6.65, 2);
  });
});

describe('the energy set free', () => {
  it('is none where the heavy side is at its stop, and the way is named', () => {
    const low = releasable(between(3, [3, 40], [61, -40]));
    expect([low.energy, low.starts[0]?.free.way]).toEqual([0, 'in']);
    const high = releasable(between(61, [3, 40], [61, -40]));
    expect([high.energy, high.starts[0]?.free.way]).toEqual([0, 'out']);
  });

  it('is none in balance', () => {
    const { energy, starts } = releasable(between(32, [3, 40], [32, 0], [61, -40]));
    expect([energy, starts[0]?.free.way]).toEqual([0, null]);
  });

  it('is largest where U turns, and ends where it is used up', () => {
    // Going in from 53 ft: 10 lb falling by 1 lb a foot to nothing at 43 ft, then against it.
    const { starts } = releasable(between(53, [3, -40], [61, 18]));
    expect(starts[0]?.free.most.height).toBeCloseTo(feet(43), 9);
    expect(starts[0]?.free.most.energy).toBeCloseTo(50 * FOOT_POUND, 9);
    expect(starts[0]?.free.end.at).toBe('onTheWay');
    expect(starts[0]?.free.end.height).toBeCloseTo(feet(33), 9);
  });

  it('ends where a piece that lands uses it up', () => {
    // 20 lb over 10 ft to the deck, then 50 lb the other way: 4 ft.
    const { starts } = releasable(between(33, [3, -50], [23, -50, 20], [61, 20]));
    const [start] = starts;
    expect(start?.free.most).toEqual(start?.free.contacts[0]);
    expect(start?.free.most.energy).toBeCloseTo(200 * FOOT_POUND, 9);
    expect(start?.free.end.height).toBeCloseTo(feet(19), 9);
  });

  it('at a contact has both values, and rests where the piece shares its load', () => {
    const travel = between(23, [3, -294.5], [23, -320.8, 24.8], [61, -25.4]);
    const { imbalance, starts, energy } = releasable(travel);
    expect(imbalance.low).toBeCloseTo(poundsForce(-320.8), 9);
    expect(imbalance.high).toBeCloseTo(poundsForce(24.8), 9);
    expect(starts.map(({ side }) => side)).toEqual(['justBelow', 'justAbove']);
    expect(starts.map(({ free }) => free.way)).toEqual(['out', 'in']);
    // Either way it is at once in the contact again.
    expect(energy).toBe(0);
  });

  it('at a contact where both values pull out has the energy beyond it', () => {
    const { starts, energy } = releasable(between(23, [3, -60], [23, -60, -20], [61, -20]));
    expect(starts.map(({ free }) => free.most.energy > 0)).toEqual([true, true]);
    expect(energy).toBeCloseTo(20 * 38 * FOOT_POUND, 6);
  });

  it('does not get past a stretch that it has nothing for', () => {
    // Picked up into balance, then batten heavy: what pulls out beyond it is out of reach.
    const nodes: readonly InPounds[] = [
      [3, -60],
      [23, -60, 0],
      [40, 10, -50],
      [61, -50],
    ];
    expect(releasable(between(23, ...nodes)).starts[0]?.free).toMatchObject({
      way: 'out',
      most: { energy: 0 },
      end: { at: 'onTheWay', energy: 0 },
    });
  });

  it('says the interval that a contact is given with', () => {
    const [node, ...rest] = curve([23, -60, -20], [61, -20]);
    const travel = {
      ...between(23),
      curve: [
        { height: 0, below: 0, above: 0, ...node, contact: { low: -300, high: -95 } },
        ...rest,
      ],
    };
    expect(releasable(travel).imbalance).toEqual({ low: -300, high: poundsForce(-20) });
  });

  it('is none against a hold that is not overcome where it stands', () => {
    const travel = between(30, [3, 60], [30, 6], [61, -56]);
    const at = (holdLb: number) => releasable(travel, poundsForce(holdLb)).starts[0]?.againstHold;
    expect(at(6)).toMatchObject({ holds: true, most: { energy: 0 }, end: { at: 'onTheWay' } });
    expect(at(5.9)?.holds).toBe(false);
    expect(at(5.9)?.most.energy).toBeGreaterThan(0);
    const onStop = between(3, [3, 60], [61, -56]);
    expect(releasable(onStop, poundsForce(60)).starts[0]?.againstHold?.end.at).toBe('stop');
  });
});
