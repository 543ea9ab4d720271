/** What an order of work needs to know of a set, and that nothing of it is taken for granted. */
import { describe, expect, it } from 'vitest';
import { type House, type Known, unknownValue } from '#house';
import { assert } from '#outcome';
import { openExample } from '../../examples/open-example.ts';
import { assessSet } from './assess.ts';
import { orderPhysicsOf } from './order-physics.ts';

const kestlemere = openExample('kestlemere');

const physicsIn = (
  { house, show, state }: typeof kestlemere,
  set: string,
  plant: House = house,
) => {
  const lineSet = plant.lineSets.find(({ id }) => id === set);
  assert(lineSet !== undefined, `set ${set} is in the house`);
  return orderPhysicsOf(assessSet(plant, show, state, lineSet), plant, state);
};

const needs = (...asked: Parameters<typeof physicsIn>): readonly string[] => {
  const physics = physicsIn(...asked);
  return physics.known ? [] : physics.needs;
};

/** The same value with nothing to say how far it may be off. */
const madeUp = <T extends number>(value: Known<T>): Known<T> => {
  if (!value.known) return value;
  const { tolerance: _, ...rest } = value;
  return { ...rest, provenance: { ...rest.provenance, basis: 'invented' } };
};

describe('the physics of an order', () => {
  it('is known of each counterweight set of a house of which all is known', () => {
    const { house } = kestlemere;
    const blocked = house.lineSets.filter(({ id }) => !physicsIn(kestlemere, id).known);
    expect(blocked.map(({ id }) => id)).toEqual(['M1']);
  });

  it('does not take a batten or an arbor for exact of which nobody has said so', () => {
    const { house } = kestlemere;
    const untold: House = {
      ...house,
      lineSets: house.lineSets.map((set) => ({
        ...set,
        batten: { ...set.batten, mass: madeUp(set.batten.mass) },
        arbor:
          set.arbor === null
            ? null
            : { ...set.arbor, carriageMass: madeUp(set.arbor.carriageMass) },
      })),
    };
    expect(needs(kestlemere, '9', untold)).toEqual([
      'tolerance of the batten',
      'tolerance of the arbor without bricks',
    ]);
  });

  it('does not take an item for exact either, nor what is in its hem', () => {
    const { show } = kestlemere;
    const hangs = show.hangs.map((hang) => ({
      ...hang,
      items: hang.items.map((item) => {
        const { takeoff } = item;
        if (takeoff.by !== 'mass') return item;
        const hem = takeoff.hem === null ? null : madeUp(takeoff.hem);
        return { ...item, takeoff: { ...takeoff, mass: madeUp(takeoff.mass), hem } };
      }),
    }));
    const untold = { ...kestlemere, show: { ...show, hangs } };
    expect(needs(untold, '1')).toEqual([
      'House curtain cloth: tolerance',
      'House curtain cloth: tolerance of what is in its hem',
    ]);
    expect(needs(untold, '27')).toEqual(['Canted header rear share: tolerance']);
  });

  it('does not leave spreader plates out because one of their measures is not known', () => {
    const { house } = kestlemere;
    const { spreader } = house;
    assert(spreader !== null, 'the house has spreader plates');
    const without = { ...house, spreader: { ...spreader, every: unknownValue('not measured') } };
    expect(needs(kestlemere, '9', without)).toEqual(['spacing of spreader plates (not measured)']);
    const massless = { ...spreader, mass: unknownValue('not weighed') };
    expect(needs(kestlemere, '9', { ...house, spreader: massless })).toEqual([]);
    const apart = { ...house, spreader: { ...massless, inCarriage: false } };
    expect(needs(kestlemere, '9', apart)).toEqual(['mass of a spreader plate (not weighed)']);
  });
});
