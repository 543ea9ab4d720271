import { describe, expect, it } from 'vitest';
import { unknownValue } from '#house';
import { openExample } from '../examples/open-example.ts';
import { battenFrontDrawing, hangingItems, placesOf } from './index.ts';
import type { Circle, Lettering, Rect, Shape } from './shape.ts';

const FOOT = 0.3048;
const { house, assessment } = openExample('kestlemere');
const metric = openExample('skelderwick');

const setNamed = (id: string, example = assessment) => {
  const set = example.sets.find(({ lineSet }) => lineSet.id === id);
  if (set === undefined) throw new Error(`no set ${id}`);
  return set;
};

const options = { width: 900, letter: 14 };

const flat = (shapes: readonly Shape[]): readonly Shape[] =>
  shapes.flatMap((shape) => (shape.kind === 'group' ? flat(shape.shapes) : [shape]));

describe('the batten from the house', () => {
  const drawing = battenFrontDrawing(setNamed('5'), house, options);
  const shapes = flat(drawing.shapes);
  const batten = shapes.find((shape): shape is Rect => shape.kind === 'rect' && shape.height === 6);
  const perFoot = (batten?.width ?? 0) / 50;
  const feetOf = (x: number): number => (x - 450) / perFoot;

  it('puts every unit at its true place across the stage', () => {
    const places = shapes
      .filter((shape): shape is Circle => shape.kind === 'circle' && shape.radius > 5)
      .map(({ x }) => Math.round(feetOf(x)));
    const expected = [4, 12, 20, 2, 6, 8, 10, 14, 16].flatMap((feet) => [-feet, feet]);
    expect(new Set(places)).toEqual(new Set([...expected, -24]));
  });

  it('letters each place with its distance from the centre line', () => {
    const letters = shapes.filter((shape): shape is Lettering => shape.kind === 'text');
    for (const { text, x } of letters.filter(({ text: words }) => /^\d+'-\d+"$/.test(words))) {
      const [feet, inches] = text.split('-').map((each) => Number.parseInt(each, 10));
      expect(Math.abs(feetOf(x))).toBeCloseTo((feet ?? 0) + (inches ?? 0) / 12, 1);
    }
  });

  it('letters no two distances on one another', () => {
    const letters = shapes.filter(
      (shape): shape is Lettering => shape.kind === 'text' && /^\d+'-\d+"$/.test(shape.text),
    );
    for (const y of new Set(letters.map((letter) => letter.y))) {
      const row = letters.filter((letter) => letter.y === y);
      const xs = row.map(({ x }) => x).toSorted((one, other) => one - other);
      const gaps = xs.slice(1).map((x, index) => x - (xs[index] ?? 0));
      expect(Math.min(...gaps, 99)).toBeGreaterThan(30);
    }
  });

  it('says that heights are not to scale, and draws a bar of true length', () => {
    const words = JSON.stringify(drawing.shapes);
    expect(words).toContain('across to scale, heights not to scale');
    const bar = drawing.shapes.find(
      (shape) => shape.kind === 'group' && shape.part === 'scale bar',
    );
    if (bar?.kind !== 'group') throw new Error('no scale bar');
    const width = bar.shapes.reduce(
      (sum, shape) => sum + (shape.kind === 'rect' ? shape.width : 0),
      0,
    );
    expect(width / perFoot).toBeCloseTo(10, 6);
    expect(JSON.stringify(bar)).toContain('10\u00A0ft');
  });

  it('tells a place that was not given by a dashed outline and a word', () => {
    const set = setNamed('1');
    const takeoffs = set.takeoffs.map((each) => ({
      ...each,
      item: { ...each.item, placement: null },
    }));
    const words = JSON.stringify(battenFrontDrawing({ ...set, takeoffs }, house, options));
    expect(words).toContain('"dash":"hidden"');
  });

  it('does not draw a batten whose ends are not known', () => {
    const set = setNamed('5');
    const lineSet = { ...set.lineSet, batten: { ...set.lineSet.batten, left: unknownValue() } };
    const none = battenFrontDrawing({ ...set, lineSet }, house, options);
    expect(none.title).toContain('not given');
  });
});

describe('where things hang', () => {
  it('letters items a, b, c and lists each place once from stage right', () => {
    const items = hangingItems(setNamed('5'));
    expect(items.map(({ tag }) => tag)).toEqual(['a', 'b', 'c', 'd']);
    const heads = items[0];
    if (heads === undefined) throw new Error('no items');
    const feet = placesOf(heads).map((acrossM) => Math.round(acrossM / FOOT));
    expect(feet).toEqual([-20, -12, -4, 4, 12, 20]);
  });

  it('tells a unit and its clamp as one place', () => {
    const items = hangingItems(setNamed('3', metric.assessment));
    expect(items[0]?.parts).toHaveLength(1);
  });
});
