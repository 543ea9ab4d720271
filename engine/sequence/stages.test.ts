/** Paths written by hand, as steps at heights. */
import { describe, expect, it } from 'vitest';
import { metres } from '#quantities';
import { examplePhysics } from '../../validation/sequence/set-physics.ts';
import type { Deed } from './actions.ts';
import { bare, clearItem, ft, setWith } from './example-jobs.contract.ts';
import { type Load, loadsOf } from './load.ts';
import { USUAL } from './plan-order.ts';
import { siteOf } from './site.ts';
import { pointSpan } from './span.ts';
import { stackAs, stagesOf } from './stages.ts';
import { firstTrail, followed, type Trail } from './trail.ts';

const pipe = { kind: 'F', count: 1, tag: 'pipe' } as const;
const site = siteOf(
  examplePhysics(setWith({ lamp: clearItem(200), flat: clearItem(60) })),
  { ...bare, stack: [pipe], height: metres(ft(10)) },
  {
    items: { lamp: 'on', flat: 'on' },
    bricks: { F: 3, H: 2 },
    height: null,
    service: 'in',
  },
  USUAL,
);
const { first: load } = loadsOf(site);

/** The load is beside the point here: only what is done, and where. */
const path = (start: Load, ...deeds: readonly Deed[]): readonly Trail[] => {
  const place = { load: start, order: '', taken: [], span: pointSpan(ft(10)) };
  const trails = [firstTrail(place)];
  for (const deed of deeds) {
    const before = trails.at(-1);
    if (before !== undefined) trails.push(followed(site, before, place, deed));
  }
  return trails;
};

const fly: Deed = { deed: 'fly', from: pointSpan(0), isWhole: true };
const brick = (act: 'add' | 'remove', kind = 0, gallery = 0): Deed => ({
  deed: 'brick',
  act,
  kind,
  gallery,
});

const stepsOf = (...deeds: readonly Deed[]) =>
  stagesOf(site, [{ heightM: ft(10), trails: path(load, ...deeds) }]).map(({ step }) => step);

describe('a path as steps', () => {
  it('begins with how the set is found, which is no step', () => {
    expect(stagesOf(site, [{ heightM: ft(10), trails: path(load) }])).toEqual([
      {
        step: null,
        load,
        order: '',
        heightM: ft(10),
        way: null,
        gallery: null,
        isAtBatten: false,
      },
    ]);
  });

  it('says every deed by the names of the house', () => {
    expect(
      stepsOf(
        { deed: 'attach', item: 0, as: 3 },
        { deed: 'attach', item: 1, as: 1 },
        { deed: 'takeUp', item: 1 },
        { deed: 'rest', item: 1 },
        { deed: 'release', item: 0 },
        { deed: 'attach', item: 1, as: 2 },
        { deed: 'hangOnSteel' },
        { deed: 'takeOffSteel' },
        { deed: 'untie' },
      ),
    ).toEqual([
      null,
      { act: 'attach', item: 'lamp', as: 'flying' },
      { act: 'attach', item: 'flat', as: 'attachedSlack' },
      { act: 'takeUp', item: 'flat' },
      { act: 'rest', item: 'flat' },
      { act: 'release', item: 'lamp' },
      { act: 'attach', item: 'flat', as: 'attachedResting' },
      { act: 'hangOnSteel' },
      { act: 'takeOffSteel' },
      null,
    ]);
  });

  it('counts plates of one kind at one gallery in one step, and no others', () => {
    expect(
      stepsOf(
        brick('add'),
        brick('add'),
        brick('add', 1),
        brick('add', 1, 1),
        brick('remove', 1, 1),
        brick('remove', 1, 1),
      ),
    ).toEqual([
      null,
      { act: 'add', kind: 'F', count: 2, gallery: 'upper' },
      { act: 'add', kind: 'H', count: 1, gallery: 'upper' },
      { act: 'add', kind: 'H', count: 1, gallery: 'mid' },
      { act: 'remove', kind: 'H', count: 2, gallery: 'mid' },
    ]);
  });

  it('begins a new step after a flight', () => {
    const trails = path(load, brick('add'), fly, brick('add'), brick('add'));
    const stages = stagesOf(site, [
      { heightM: ft(10), trails: trails.slice(0, 2) },
      { heightM: ft(30), trails: trails.slice(2) },
    ]);
    expect(stages.map(({ step }) => step)).toEqual([
      null,
      { act: 'add', kind: 'F', count: 1, gallery: 'upper' },
      { act: 'fly', to: ft(30) },
      { act: 'add', kind: 'F', count: 2, gallery: 'upper' },
    ]);
  });

  it('leaves the set as the last plate of a step does', () => {
    const laden = loadsOf(site).changed(load, { counts: [2, 0] });
    const [start, one] = path(load, brick('add'));
    if (start === undefined || one === undefined) throw new Error('a path of two');
    const place = { load: laden, order: '00', taken: [], span: pointSpan(ft(10)) };
    const two = followed(site, one, place, brick('add'));
    const stages = stagesOf(site, [{ heightM: ft(10), trails: [start, one, two] }]);
    expect(stages[1]).toEqual({
      step: { act: 'add', kind: 'F', count: 2, gallery: 'upper' },
      load: laden,
      order: '00',
      heightM: ft(10),
      way: null,
      gallery: 'upper',
      isAtBatten: false,
    });
  });

  it('has a way for a flight, up or down, from where the last one ended', () => {
    const trails = path(load, fly, fly);
    const stages = stagesOf(site, [
      { heightM: ft(10), trails: trails.slice(0, 1) },
      { heightM: ft(30), trails: trails.slice(1, 2) },
      { heightM: ft(20), trails: trails.slice(2) },
    ]);
    expect(stages.map(({ way }) => way)).toEqual([
      null,
      { lo: ft(10), hi: ft(30) },
      { lo: ft(20), hi: ft(30) },
    ]);
  });

  it('has riggers at the batten for what is tied on and let go, and for nothing else', () => {
    const stages = stagesOf(site, [
      {
        heightM: ft(10),
        trails: path(
          load,
          { deed: 'attach', item: 1, as: 1 },
          { deed: 'takeUp', item: 1 },
          { deed: 'rest', item: 1 },
          { deed: 'release', item: 1 },
          brick('add'),
          { deed: 'hangOnSteel' },
        ),
      },
    ]);
    expect(stages.map(({ isAtBatten }) => isAtBatten)).toEqual([
      false,
      true,
      false,
      false,
      true,
      false,
      false,
    ]);
    expect(stages.map(({ gallery }) => gallery)).toEqual([
      null,
      null,
      null,
      null,
      null,
      'upper',
      null,
    ]);
  });
});

describe('a stack as it lies', () => {
  const show = (kind: string, count: number) => ({ kind, count, tag: 'show' }) as const;

  it('is runs of one kind over what stays, which a show brick does not join', () => {
    expect(stackAs(site, '')).toEqual([pipe]);
    expect(stackAs(site, '0')).toEqual([pipe, show('F', 1)]);
    expect(stackAs(site, '001100')).toEqual([pipe, show('F', 2), show('H', 2), show('F', 2)]);
  });
});
