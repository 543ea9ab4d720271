/**
 * What holds for any JSON value before it means something: not too deep, no key that programs use
 * inside, no number that is not one. A value with a loop in it is too deep as well.
 */
import type { Faults } from './faults.ts';
import { describe, isObject, pathTo } from './json.ts';

export const DEPTH_MAX = 40;

/** Names that every object has by birth, so that `record[name]` would find what nobody wrote. */
const BORN = {};
const isHostile = (key: string): boolean => key in BORN || key === 'prototype';

export const checkJsonValue = (value: unknown, faults: Faults): boolean => {
  const before = faults.count();
  walk(value, [], faults);
  return faults.count() === before;
};

/** The keys on the way to a value. A path is made of them only where something is wrong there. */
type Trail = (string | number)[];

const pathOf = (trail: Trail): string => trail.reduce<string>(pathTo, '');

const walk = (value: unknown, trail: Trail, faults: Faults): void => {
  if (typeof value === 'number' && !Number.isFinite(value)) {
    faults.refuse('notFinite', pathOf(trail), {
      found: describe(value),
      accepted: 'a number below 1.8 × 10³⁰⁸',
    });
  }
  if (typeof value !== 'object' || value === null) return;
  if (trail.length >= DEPTH_MAX) {
    faults.refuse('tooDeep', pathOf(trail), tooDeepWords);
    return;
  }
  if (Array.isArray(value)) {
    for (const [index, entry] of value.entries()) {
      trail.push(index);
      walk(entry, trail, faults);
      trail.pop();
    }
  } else if (isObject(value)) {
    for (const key of Object.keys(value)) {
      trail.push(key);
      walkKey(value, key, trail, faults);
      trail.pop();
    }
  }
};

const walkKey = (
  holder: Readonly<Record<string, unknown>>,
  key: string,
  trail: Trail,
  faults: Faults,
): void => {
  if (isHostile(key)) {
    faults.refuse('hostileKey', pathOf(trail), {
      found: `the key ${describe(key)}`,
      accepted: 'a key that no program uses inside',
    });
  } else walk(holder[key], trail, faults);
};

export const tooDeepWords = {
  found: `more than ${DEPTH_MAX} lists or objects in one another`,
  accepted: `at most ${DEPTH_MAX}`,
};
