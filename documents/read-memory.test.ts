import { describe, expect, it } from 'vitest';
import { show as specimen } from './provocations/specimens.ts';
import { readShowValue } from './read-show.ts';
import type { ReadMemory } from './shape/shape.ts';

type Raw = { readonly [key: string]: unknown };
const SHOW: Raw = specimen;
const hangs = SHOW['hangs'] as readonly Raw[];

/** Both readings of each document in turn, one with the memory of those before it. */
const together = (documents: readonly unknown[]): void => {
  const memory: ReadMemory = new WeakMap();
  for (const document of documents) {
    expect(readShowValue(document, undefined, memory)).toEqual(readShowValue(document));
  }
};

describe('reading with a memory', () => {
  it('takes over the hangs that are the same objects', () => {
    const memory: ReadMemory = new WeakMap();
    const [one, other] = [
      SHOW,
      { ...SHOW, hangs: [{ ...hangs[0], name: 'New' }, ...hangs.slice(1)] },
    ].map((document) => readShowValue(document, undefined, memory));
    const [before, after] = [one, other].map((read) => (read?.ok ? read.value.show.hangs : []));
    expect(after?.[0]).not.toBe(before?.[0]);
    expect(after?.slice(1).map((hang, index) => hang === before?.[index + 1])).toEqual([
      true,
      true,
    ]);
  });

  it('says the same as without it, whatever is moved, added or taken away', () => {
    together([
      SHOW,
      { ...SHOW, hangs: hangs.toReversed() },
      { ...SHOW, hangs: hangs.slice(1), cues: [] },
      { ...SHOW, hangs: [hangs[0], hangs[0]] },
      SHOW,
    ]);
  });

  it('reads a hang again when another hand stands behind the whole show', () => {
    const given = { basis: 'weighed', source: 'scale', by: 'deck', on: '2026-11-25' };
    together([
      SHOW,
      { ...SHOW, given },
      { ...SHOW, given: { ...given, basis: 'estimated' } },
      SHOW,
    ]);
  });

  it('tells a fault each time, at the place where it stands then', () => {
    const wrong = { ...hangs[0], halfDepth: '4' };
    const memory: ReadMemory = new WeakMap();
    const told = [
      [wrong, ...hangs.slice(1)],
      [...hangs.slice(1), wrong],
    ].map((each) => {
      const read = readShowValue({ ...SHOW, hangs: each, cues: [] }, undefined, memory);
      return read.ok ? [] : read.error.flatMap(({ path }) => (/halfDepth/.test(path) ? path : []));
    });
    expect(told).toEqual([['hangs[0].halfDepth'], [`hangs[${hangs.length - 1}].halfDepth`]]);
  });
});
