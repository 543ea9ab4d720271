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

/** Where nothing is wrong, nobody asks for a path, and to make them all takes long. */
const isClean = (value: unknown, depth: number): boolean => {
  if (typeof value === 'number') return Number.isFinite(value);
  if (typeof value !== 'object' || value === null) return true;
  if (depth > DEPTH_MAX) return false;
  if (Array.isArray(value)) return value.every((entry) => isClean(entry, depth + 1));
  if (!isObject(value)) return true;
  for (const key of Object.keys(value)) {
    if (isHostile(key) || !isClean(value[key], depth + 1)) return false;
  }
  return true;
};

export const checkJsonValue = (value: unknown, faults: Faults): boolean => {
  if (isClean(value, 1)) return true;
  const before = faults.count();
  walk(value, { path: '', depth: 1 }, faults);
  return faults.count() === before;
};

type Spot = { readonly path: string; readonly depth: number };

const walk = (value: unknown, { path, depth }: Spot, faults: Faults): void => {
  if (typeof value === 'number' && !Number.isFinite(value)) {
    faults.refuse('notFinite', path, {
      found: describe(value),
      accepted: 'a number below 1.8 × 10³⁰⁸',
    });
  }
  if (typeof value !== 'object' || value === null) return;
  if (depth > DEPTH_MAX) {
    faults.refuse('tooDeep', path, tooDeepWords);
    return;
  }
  if (Array.isArray(value)) {
    for (const [index, entry] of value.entries()) {
      walk(entry, { path: pathTo(path, index), depth: depth + 1 }, faults);
    }
  } else if (isObject(value)) {
    for (const key of Object.keys(value)) {
      walkKey(value, key, { path: pathTo(path, key), depth: depth + 1 }, faults);
    }
  }
};

const walkKey = (
  holder: Readonly<Record<string, unknown>>,
  key: string,
  spot: Spot,
  faults: Faults,
): void => {
  if (isHostile(key)) {
    faults.refuse('hostileKey', spot.path, {
      found: `the key ${describe(key)}`,
      accepted: 'a key that no program uses inside',
    });
  } else walk(holder[key], spot, faults);
};

export const tooDeepWords = {
  found: `more than ${DEPTH_MAX} lists or objects in one another`,
  accepted: `at most ${DEPTH_MAX}`,
};
