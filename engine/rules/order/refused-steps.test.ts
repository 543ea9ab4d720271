/** Steps that make no sense are named as such, with what would be taken. Nothing throws. */
import { describe, expect, it } from 'vitest';
import { metres, newtons } from '#quantities';
import type { Step } from '#state';
import {
  add,
  attach,
  BARE,
  bullLine,
  ease,
  fly,
  release,
  remove,
  standingAt,
  type Trial,
  tried,
} from './example-order.ts';

const refusedOf = (trial: Trial) => {
  const { refused, states } = tried(trial);
  return refused === null
    ? null
    : { ...refused.refusal, step: refused.step, states: states.length };
};

const start = standingAt(1, 2, { items: { frame: 'flying' } });

const expectRefused = (code: string, step: Step, found: string, accepted: string): void => {
  expect(refusedOf({ start, steps: [fly(1), step, add(1)] }), JSON.stringify(step)).toEqual({
    code,
    path: 'steps[1]',
    found,
    accepted,
    step: 1,
    states: 2,
  });
};

describe('steps that cannot be replayed', () => {
  it('[ORD-101] refuses an item that is not of this set', () => {
    const accepted = 'an item of set 7; on it now: frame';
    expectRefused('ORD-101', attach('moon'), 'moon', accepted);
    expectRefused('ORD-101', release('moon'), 'moon', accepted);
    const unknown = { ...BARE, items: { moon: 'flying' } as const };
    expect(refusedOf({ start: unknown })).toEqual({
      code: 'ORD-101',
      path: 'start',
      found: 'moon',
      accepted: 'an item of set 7',
      step: -1,
      states: 0,
    });
  });

  it('[ORD-102] refuses an item that is elsewhere', () => {
    expectRefused('ORD-102', attach('frame'), 'frame is flying', 'away, beside');
    expectRefused('ORD-102', { act: 'takeUp', item: 'frame' }, 'frame is flying', 'attachedSlack');
    expectRefused('ORD-102', { act: 'rest', item: 'lamp' }, 'lamp is away', 'flying');
    expectRefused(
      'ORD-102',
      release('lamp'),
      'lamp is away',
      'attachedSlack, attachedResting, flying',
    );
  });

  it('[ORD-103] refuses a brick that the house does not have', () => {
    expectRefused('ORD-103', add(1, 'Z'), 'Z', 'B, C');
    const strange = { ...BARE, stack: [{ kind: 'Z', count: 1, tag: 'show' } as const] };
    expect(refusedOf({ start: strange })).toMatchObject({ code: 'ORD-103', path: 'start' });
  });

  it('[ORD-104] refuses a plate that is not on top, and one that is not there', () => {
    expectRefused('ORD-104', remove(1, 'C'), 'C, plate 1 of 1', 'B');
    expectRefused('ORD-104', remove(4), 'B, plate 4 of 4', 'no plate is left to take');
  });

  it('[ORD-105] refuses half a brick, none, and more than any arbor takes', () => {
    for (const count of [0, -1, 0.5, Number.NaN, 1001, Number.POSITIVE_INFINITY]) {
      expectRefused('ORD-105', add(count), String(count), 'a whole number from 1 to 1000');
    }
    const halves = { ...BARE, stack: [{ kind: 'B', count: 0.5, tag: 'show' } as const] };
    expect(refusedOf({ start: halves })).toMatchObject({ code: 'ORD-105', path: 'start' });
  });

  it('[ORD-106] refuses a gallery that the house does not have', () => {
    expectRefused('ORD-106', add(1, 'B', 'roof'), 'roof', 'upper, mid');
    const zone = { zone: 'drop', gallery: 'roof' } as const;
    expectRefused('ORD-106', { act: 'close', zone }, 'roof', 'upper, mid');
    expectRefused('ORD-106', { act: 'reopen', zone }, 'roof', 'upper, mid');
  });

  it('[ORD-107] refuses a height off the travel', () => {
    expect(refusedOf({ steps: [fly(1)] })).toBeNull();
    for (const heightM of [0.99, 19.01, -3]) {
      expectRefused('ORD-107', fly(heightM), `${heightM} m`, 'from 1 m to 19 m');
    }
    const high = { ...BARE, height: metres(20) };
    expect(refusedOf({ start: high })).toEqual({
      code: 'ORD-107',
      path: 'start',
      found: '20 m',
      accepted: 'from 1 m to 19 m',
      step: -1,
      states: 0,
    });
  });

  it('[ORD-108] refuses to take off a restraint that is not on', () => {
    expectRefused('ORD-108', { act: 'unrig', restraint: bullLine() }, 'the bull line', 'nothing');
    const other = { act: 'unrig', restraint: bullLine({ rating: newtons(9) }) } as const;
    const rig = { act: 'rig', restraint: bullLine() } as const;
    expect(refusedOf({ steps: [rig, other] })).toMatchObject({
      code: 'ORD-108',
      accepted: 'the bull line',
    });
    expect(refusedOf({ steps: [rig, { ...rig, act: 'unrig' }] })).toBeNull();
  });

  it('[ORD-109] refuses to take off steel what is not on it, and the other way', () => {
    expectRefused('ORD-109', { act: 'takeOffSteel' }, 'in', 'deadHung');
    const hung = { ...BARE, service: 'deadHung' } as const;
    expect(refusedOf({ start: hung, steps: [{ act: 'hangOnSteel' }] })).toMatchObject({
      code: 'ORD-109',
      found: 'deadHung',
      accepted: 'in',
    });
  });

  it('[ORD-110] refuses a pull that is none', () => {
    expectRefused('ORD-110', ease(-1, true), '-1', 'a force of zero or more, N');
    expect(refusedOf({ steps: [ease(0, false)] })).toBeNull();
  });
});
