import { describe, expect, it } from 'vitest';
import type { StackRun } from '#state';
import { openExample } from '../examples/open-example.ts';
import { workStackDrawing } from './index.ts';
import type { Group, Lettering, Rect } from './shape.ts';
import type { WorkStack } from './work-stack.ts';

const { house } = openExample('kestlemere');

const before: readonly StackRun[] = [
  { kind: 'O', count: 3, tag: 'pipe' },
  { kind: 'F', count: 12, tag: 'show' },
];
const after: readonly StackRun[] = [
  { kind: 'O', count: 3, tag: 'pipe' },
  { kind: 'F', count: 25, tag: 'show' },
];
const adding: WorkStack = {
  ...{ set: '11', before, after, act: 'add', count: 13, done: 5 },
  ...{ nextAt: '3\'-9" up', lastAt: '4\'-7" up' },
};
const options = { width: 312, height: 400, letter: 24, isLabelled: true };

const drawn = (work: WorkStack) => {
  const drawing = workStackDrawing(work, house, options);
  const plates = drawing.shapes.find(
    (shape): shape is Group => shape.kind === 'group' && shape.part === 'plates',
  );
  const rects = (plates?.shapes ?? []).filter((shape): shape is Rect => shape.kind === 'rect');
  const words = drawing.shapes
    .filter((shape): shape is Lettering => shape.kind === 'text')
    .map(({ text }) => text);
  const next = rects.filter(({ stroke }) => stroke === 'blue');
  const toCome = rects.filter(({ hatch }) => hatch === 'planned');
  const gone = rects.filter(({ dash, hatch }) => dash === 'plan' && hatch === undefined);
  return { title: drawing.title, rects, words, next, toCome, gone };
};

describe('the stack while bricks are handled', () => {
  it('has one brick next, those counted below it and those to come above it', () => {
    const { title, words, next, toCome, gone } = drawn(adding);
    expect(title).toBe('Stack on the arbor of set 11: 5 of 13 plates on');
    expect(next).toHaveLength(1);
    // 13 less 5 counted less the next; a spreader plate between them is to come as well.
    expect(toCome.length).toBeGreaterThanOrEqual(7);
    expect(toCome.every(({ y }) => y < (next[0]?.y ?? 0))).toBe(true);
    expect(gone).toEqual([]);
    expect(words).toEqual(['5 on', '8 to come', 'next', '3\'-9" up', 'last', '4\'-7" up']);
  });

  it('draws what is taken off where it lay, and takes the uppermost next', () => {
    const { title, next, gone } = drawn({
      ...{ set: '11', before: after, after: before, act: 'remove', count: 13, done: 2 },
      ...{ nextAt: null, lastAt: null },
    });
    expect(title).toBe('Stack on the arbor of set 11: 2 of 13 plates off');
    expect(next).toHaveLength(1);
    expect(gone).toHaveLength(2);
    expect(gone.every(({ y }) => y < (next[0]?.y ?? 0))).toBe(true);
  });

  it('points at nothing when all are counted', () => {
    const { words, next } = drawn({ ...adding, done: 13 });
    expect(next).toEqual([]);
    expect(words).toEqual(['13 on']);
  });

  /** Narrow letters of the drawing are 0.48 of their height wide, as measured on the screen. */
  it.each([
    ['upright and short', '3\'-9" up', '4\'-7" up'],
    ['as long as heights get', '12\'-10" hoch', '13\'-11" hoch'],
    ['metric', '1.46 m hoch', '2.03 m hoch'],
  ])('cuts no height and no count at the edge: %s', (_, nextAt, lastAt) => {
    const onScreen = { width: 312, height: 250, letter: 24, isLabelled: true };
    const work = { ...adding, nextAt, lastAt };
    for (const { x, text, size, anchor } of workStackDrawing(work, house, onScreen).shapes.filter(
      (shape): shape is Lettering => shape.kind === 'text',
    )) {
      const wide = text.length * size * 0.48;
      const [from, to] = anchor === 'end' ? [x - wide, x] : [x, x + wide];
      expect([from >= 0, to <= 312], text).toEqual([true, true]);
    }
  });
});
