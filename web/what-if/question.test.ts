import { describe, expect, it } from 'vitest';
import clockmaker from '../../examples/kestlemere/clockmaker.show.json' with { type: 'json' };
import { withBricks, withItem, withMass, withoutItem, writtenHang } from '../editing/show-edits.ts';
import type { JsonObject } from '../keeping/json.ts';
import { readQuestion, writeQuestion } from './question.ts';

const plan = clockmaker as JsonObject;
const MASS = ['items', 0, 'takeoff', 'mass'];

const there = (asked: JsonObject, set: string): JsonObject | null => {
  const text = writeQuestion(plan, asked, set);
  return typeof text === 'string' ? readQuestion(plan, set, text) : null;
};

describe('a question in the address', () => {
  it('is nothing while nothing is changed', () => {
    expect(writeQuestion(plan, plan, '11')).toBeNull();
    expect(readQuestion(plan, '11', null)).toBe(plan);
  });

  it.each([
    ['a mass', (show: JsonObject) => withMass(show, '11', MASS, '700 lb')],
    ['an item more', (show: JsonObject) => withItem(show, '11', { name: 'Clock', kind: 'clear' })],
    ['an item less', (show: JsonObject) => withoutItem(show, '5', 1)],
    [
      'bricks',
      (show: JsonObject) => withBricks(show, '11', { counts: { F: 20 }, reason: 'what if' }),
    ],
    ['bricks of the program', (show: JsonObject) => withBricks(show, '9', null)],
  ])('comes back from its text: %s', (_, change) => {
    const asked = change(plan);
    const set = ['11', '5', '9'].find((id) => writtenHang(asked, id) !== writtenHang(plan, id));
    expect(set).toBeDefined();
    expect(there(asked, set ?? '')).toEqual(asked);
  });

  it('leaves every other set as the plan has it', () => {
    const asked = there(withMass(plan, '11', MASS, '700 lb'), '11') ?? {};
    expect(writtenHang(asked, '9')).toBe(writtenHang(plan, '9'));
  });

  it.each([
    '{',
    '7',
    '[7]',
    '[[]]',
    '[[[],{}]]',
    '[[["set"],"12"]]',
    '[[["items"],0,-1]]',
    `[[["name"],"${'x'.repeat(7000)}"]]`,
  ])('is not read where it is none: %.20s', (text) => {
    expect(readQuestion(plan, '11', text)).toBeNull();
  });

  it('is not read for a set that hangs nothing', () => {
    expect(readQuestion(plan, '10', '[[["name"],"x"]]')).toBeNull();
  });

  it('says where more is changed than an address can hold', () => {
    const long = withBricks(plan, '11', { counts: { F: 1 }, reason: 'x'.repeat(7000) });
    expect(writeQuestion(plan, long, '11')).toBeUndefined();
  });
});
