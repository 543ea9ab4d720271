import { describe, expect, it } from 'vitest';
import type { Item, Release } from '#show';
import { exact, given, itemOf, LOOM, massOfKg } from './example-items.ts';
import { withReleases } from './releases.ts';
import { takeOff } from './take-off.ts';

const RULES = { toleranceByBasis: { weighed: 0.02 } };
const leaves = (massKg: number, how: string): Release => ({ mass: given(massKg, 'weighed'), how });
const states = (item: Item) => withReleases(item, takeOff(item, RULES), RULES);

describe('an item with releases', () => {
  it('is one state where nothing leaves', () => {
    expect(states(itemOf(massOfKg(50)))).toMatchObject({ value: [{ released: [] }] });
  });

  it('loses each release in turn, and becomes less certain', () => {
    const item = itemOf(massOfKg(60), { releases: [leaves(28, 'snow'), leaves(12, 'more snow')] });
    const answer = states(item);
    expect(answer).toMatchObject({
      known: true,
      value: [
        { released: [], carried: { mass: 60 } },
        { released: ['snow'], carried: { mass: 32 } },
        { released: ['snow', 'more snow'], carried: { mass: 20 } },
      ],
    });
    const widths = answer.known ? answer.value.map(({ carried }) => carried.uncertainty) : [];
    expect(widths).toEqual(
      [1.2, 1.2 + 0.56, 1.2 + 0.56 + 0.24].map((it) => expect.closeTo(it, 12)),
    );
  });

  it('loses its cloth before what is in the hem', () => {
    const drop = (massKg: number) =>
      states(itemOf(massOfKg(17, 5), { kind: 'cloth', releases: [leaves(massKg, 'falls')] }));
    expect(drop(17)).toMatchObject({ value: [{}, { carried: { mass: 0, hem: 5 } }] });
    expect(drop(20)).toMatchObject({ value: [{}, { carried: { mass: 0, hem: 2 } }] });
    expect(drop(22)).toMatchObject({ value: [{}, { carried: { mass: 0, hem: 0 } }] });
  });

  it('cannot lose more than hangs, and says which release', () => {
    const item = itemOf(massOfKg(60), { releases: [leaves(28, 'snow'), leaves(33, 'bag')] });
    expect(states(item)).toEqual({
      known: false,
      needs: [
        'mass that leaves in view (releases[1].mass): found 33 kg, and no more than 32 kg hangs',
      ],
    });
  });

  it('has no uncertainty left where that of a release is unknown', () => {
    const releases: Release[] = [{ mass: given(28, 'estimated'), how: 'snow' }];
    const answer = states(itemOf(massOfKg(60), { releases }));
    const widths = answer.known ? answer.value.map(({ carried }) => carried.uncertainty) : [];
    expect(widths).toEqual([expect.closeTo(1.2, 12), undefined]);
  });

  it('is blocked where the item or a release is unknown', () => {
    const releases: Release[] = [{ mass: { known: false }, how: 'snow' }];
    expect(states(itemOf(massOfKg(60), { releases, drop: { known: false } }))).toEqual({
      known: false,
      needs: [
        'drop, from its top to its lowest point (drop): not given',
        'mass that leaves in view (releases[0].mass): not given',
      ],
    });
  });

  it('of a loom is no such thing', () => {
    const item = itemOf(LOOM, { kind: 'loom', releases: [{ mass: exact(1), how: 'unplugged' }] });
    expect(states(item).known).toBe(false);
  });
});
