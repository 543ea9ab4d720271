import { describe, expect, it } from 'vitest';
import { known, unknownValue } from '#house';
import { metres } from '#quantities';
import type { StackRun } from '#state';
import { openExample } from '../examples/open-example.ts';
import { stackDrawing } from './index.ts';
import { textWidth } from './lettering.ts';
import { platesOf } from './plates.ts';
import type { Lettering, Rect, Shape } from './shape.ts';

const INCH = 0.0254;
const { house, assessment } = openExample('kestlemere');

const runs: readonly StackRun[] = [
  { kind: 'O', count: 3, tag: 'pipe' },
  { kind: 'F', count: 25, tag: 'show' },
  { kind: 'H', count: 1, tag: 'show' },
];

describe('the plates of a stack', () => {
  it('lie one on the other at their thickness, with spreader plates at their spacing', () => {
    const stack = platesOf(runs, house);
    // 3 × 1.25 + 25 × 1.20 + 0.60 in of bricks, and one plate of 0.25 in after 24 in.
    expect(stack?.heightM).toBeCloseTo((3.75 + 30 + 0.6 + 0.25) * INCH, 9);
    expect(stack?.plates.filter(({ look }) => look === 'spreader')).toHaveLength(1);
    expect(stack?.plates).toHaveLength(30);
    const tops = stack?.plates.map(({ bottomM, thicknessM }) => bottomM + thicknessM) ?? [];
    expect(stack?.plates.slice(1).map(({ bottomM }) => bottomM)).toEqual(tops.slice(0, -1));
  });

  it('make one band of each tag', () => {
    expect(platesOf(runs, house)?.bands.map(({ tag, counts }) => [tag, counts.length])).toEqual([
      ['pipe', 1],
      ['show', 2],
    ]);
  });

  it('draw old cast wider and solid, full outlined, half narrower', () => {
    const plates = platesOf(runs, house)?.plates ?? [];
    const [old, full, half] = [plates[0], plates[3], plates.at(-1)];
    expect(old).toMatchObject({ look: 'solid' });
    expect(full).toMatchObject({ look: 'outlined', width: 1 });
    expect(old?.width).toBeGreaterThan(1);
    expect(half?.width).toBeLessThan(1);
  });

  it('are not drawn where a thickness is not known', () => {
    const unmeasured = {
      ...house,
      brickKinds: house.brickKinds.map((kind) => ({ ...kind, thickness: unknownValue() })),
    };
    expect(platesOf(runs, unmeasured)).toBeNull();
  });

  it('take no spreader plate where the house has none', () => {
    const plain = { ...house, spreader: null };
    expect(platesOf(runs, plain)?.plates.every(({ look }) => look !== 'spreader')).toBe(true);
  });
});

const platesIn = (shapes: readonly Shape[]): readonly Rect[] =>
  shapes.flatMap((shape) =>
    shape.kind === 'group' && shape.part === 'plates'
      ? shape.shapes.filter((each): each is Rect => each.kind === 'rect')
      : [],
  );

const lettersIn = (shapes: readonly Shape[]): readonly Lettering[] =>
  shapes.filter((shape): shape is Lettering => shape.kind === 'text');

describe('the stack drawing', () => {
  const set = assessment.sets.find(({ lineSet }) => lineSet.id === '11');
  if (set === undefined) throw new Error('no set 11');
  const drawing = stackDrawing(set, house, { width: 282, height: 600, letter: 14, of: 'plan' });

  it('keeps the proportions of the plates', () => {
    const heights = platesIn(drawing.shapes).map(({ height, y }) => ({ height, y }));
    const full = heights[5]?.height ?? 0;
    const half = heights.at(-1)?.height ?? 0;
    expect(full / half).toBeCloseTo(2, 0);
  });

  it('says kinds, masses and what stays', () => {
    const words = JSON.stringify(drawing.shapes).replaceAll('\u00A0', ' ');
    expect(words).toContain('25 full, 1 half');
    expect(words).toContain('637 1/2 lb, show bricks');
    expect(words).toContain('66 lb, pipe weight, stays');
  });

  it('breaks words that are too long for a narrow drawing, and loses none', () => {
    const width = 220;
    const narrow = stackDrawing(set, house, { width, height: 600, letter: 14, of: 'plan' });
    const texts = lettersIn(narrow.shapes);
    for (const { x, text, size, weight } of texts) {
      expect(x + textWidth(text, size, { weight }), text).toBeLessThanOrEqual(width);
    }
    const words = texts.map(({ text }) => text.replaceAll('\u00A0', ' ')).join(' ');
    expect(words).toContain('66 lb, pipe weight, stays');
    expect(texts.length).toBeGreaterThan(lettersIn(drawing.shapes).length);
  });

  it('says plainly that a set without an arbor takes no bricks', () => {
    const motor = assessment.sets.find(({ lineSet }) => lineSet.id === 'M1');
    if (motor === undefined) throw new Error('no set M1');
    const none = stackDrawing(motor, house, { width: 200, height: 200, letter: 14, of: 'plan' });
    expect(none.title).toContain('takes no bricks');
  });

  it('is empty where the record does not know the stack', () => {
    const recorded = { ...set.recorded, state: { ...set.recorded.state, stack: null } };
    const options = { width: 200, height: 200, letter: 14, of: 'record' } as const;
    expect(stackDrawing({ ...set, recorded }, house, options).title).toContain('not known');
  });

  it('does without a rod length', () => {
    const { arbor } = set.lineSet;
    if (arbor === null) throw new Error('set 11 has an arbor');
    const lineSet = { ...set.lineSet, arbor: { ...arbor, usableRod: unknownValue() } };
    const rodless = stackDrawing({ ...set, lineSet }, house, {
      width: 260,
      height: 300,
      letter: 14,
      of: 'plan',
    });
    expect(JSON.stringify(rodless)).not.toContain('of rod free');
    const long = { ...arbor, usableRod: known(metres(3), { basis: 'measured' }) };
    const free = stackDrawing({ ...set, lineSet: { ...set.lineSet, arbor: long } }, house, {
      width: 260,
      height: 300,
      letter: 14,
      of: 'plan',
    });
    expect(JSON.stringify(free)).toContain('of rod free');
  });
});
