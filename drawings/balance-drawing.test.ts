import { describe, expect, it } from 'vitest';
import { newtons, POUND_FORCE } from '#quantities';
import { openExample } from '../examples/open-example.ts';
import { balanceDrawing } from './index.ts';
import type { Drawing, Group, Lettering, Polyline, Rect, Shape } from './shape.ts';

const FOOT = 0.3048;
const { house, assessment } = openExample('kestlemere');
const metric = openExample('skelderwick');

const setNamed = (id: string, example = assessment) => {
  const set = example.sets.find(({ lineSet }) => lineSet.id === id);
  if (set === undefined) throw new Error(`no set ${id}`);
  return set;
};

const size = { width: 460, height: 470, letter: 14 };

const groupsOf = (shapes: readonly Shape[]): readonly Group[] =>
  shapes.flatMap((shape) => (shape.kind === 'group' ? [shape, ...groupsOf(shape.shapes)] : []));

const part = ({ shapes }: Drawing, name: string): Group | undefined =>
  groupsOf(shapes).find((group) => group.part === name);

const lettersOf = (shapes: readonly Shape[]): readonly Lettering[] =>
  shapes.flatMap((shape) => {
    if (shape.kind === 'group') return lettersOf(shape.shapes);
    return shape.kind === 'text' ? [shape] : [];
  });

const wordsOf = ({ shapes }: Drawing): string =>
  lettersOf(shapes)
    .map(({ text }) => text)
    .join('\n')
    .replaceAll('\u00A0', ' ');

/** Reads the drawing as a person with a ruler would: off the lock's band and the heights ruled. */
const rulerOf = (drawing: Drawing, lockLb: number) => {
  const band = part(drawing, 'bands')?.shapes.find(
    (shape): shape is Rect => shape.kind === 'rect' && shape.hatch === 'lock',
  );
  if (band === undefined) throw new Error('no band of the lock');
  const zero = band.x + band.width / 2;
  const perPound = band.width / 2 / lockLb;
  const tick = (feet: number): number => {
    const label = lettersOf(drawing.shapes).find(({ text }) => text === `${feet}'`);
    if (label === undefined) throw new Error(`no label for ${feet} ft`);
    return label.y - label.size * 0.34;
  };
  const perFoot = (tick(20) - tick(50)) / 30;
  return {
    poundsAt: (x: number) => (x - zero) / perPound,
    feetAt: (y: number) => 20 + (tick(20) - y) / perFoot,
  };
};

const curveOf = (drawing: Drawing): readonly Polyline[] =>
  (part(drawing, 'curve')?.shapes ?? []).filter(
    (shape): shape is Polyline => shape.kind === 'polyline',
  );

describe('the balance drawing', () => {
  const drawing = balanceDrawing(setNamed('11'), house, size);
  const { poundsAt, feetAt } = rulerOf(drawing, 50);
  const points = curveOf(drawing).flatMap((piece) => piece.points);

  const pounds = (feet: number, side: 'lowest' | 'highest'): number => {
    const near = points.filter(({ y }) => Math.abs(feetAt(y) - feet) < 0.02);
    const values = near.map(({ x }) => poundsAt(x));
    return side === 'lowest' ? Math.min(...values) : Math.max(...values);
  };

  it('puts the curve of set 11 where the table of the demo has it', () => {
    // Values of the-job.md 10.4: just below and just above contact, and on the low stop.
    expect(pounds(23, 'lowest')).toBeCloseTo(-320.9, 0);
    expect(pounds(23, 'highest')).toBeCloseTo(24.6, 0);
    expect(pounds(3, 'lowest')).toBeCloseTo(-294.5, 0);
  });

  it('lays arbor heavy on the side of the arbor, left or right', () => {
    const arbor = lettersOf(drawing.shapes).find(({ text }) => text === 'arbor heavy');
    const batten = lettersOf(drawing.shapes).find(({ text }) => text === 'batten heavy');
    expect(arbor?.x).toBeLessThan(batten?.x ?? 0);
    const other = balanceDrawing(setNamed('1', metric.assessment), metric.house, size);
    const cradle = lettersOf(other.shapes).find(({ text }) => text === 'cradle heavy');
    const bar = lettersOf(other.shapes).find(({ text }) => text === 'bar heavy');
    expect(cradle?.x).toBeGreaterThan(bar?.x ?? Number.POSITIVE_INFINITY);
  });

  it('hatches what the lock does not hold, from its edge to the curve, and names it', () => {
    const corners = (part(drawing, 'not held')?.shapes ?? []).flatMap((shape) =>
      shape.kind === 'polyline' ? shape.points : [],
    );
    const values = corners.map(({ x }) => poundsAt(x)).toSorted((one, other) => one - other);
    expect(values).toHaveLength(4);
    [-320.9, -294.5, -50, -50].forEach((pounds, index) => {
      expect(values[index]).toBeCloseTo(pounds, 0);
    });
    expect(wordsOf(drawing)).toContain('Not held');
    expect(wordsOf(drawing)).toMatch(/321 to 295 lb arbor heavy|321 to 295 lb\narbor heavy/);
  });

  it('says what arrives at the jump, and why', () => {
    expect(wordsOf(drawing)).toContain('346 lb within an inch');
    expect(wordsOf(drawing)).toContain('foot meets or leaves the deck');
  });

  it('leaves a set that the lock holds without a hatch', () => {
    const held = balanceDrawing(setNamed('34'), house, size);
    expect(part(held, 'not held')).toBeUndefined();
    expect(wordsOf(held)).not.toContain('Not held');
  });

  it('shows the present only when it is told of it', () => {
    expect(part(drawing, 'now')).toBeUndefined();
    const forceN = newtons(-24 * POUND_FORCE);
    const now = { heightM: 60 * FOOT, lowN: forceN, highN: forceN };
    const live = balanceDrawing(setNamed('11'), house, { ...size, now });
    expect(part(live, 'now')).toBeDefined();
    expect(wordsOf(live)).toContain('Now 24 lb arbor heavy');
  });

  it('carries no sign on any figure and stays inside its paper', () => {
    for (const set of assessment.sets) {
      const each = balanceDrawing(set, house, size);
      expect(wordsOf(each)).not.toMatch(/(^|[\s(])[-\u2212+]\s?\d/m);
      for (const { x } of curveOf(each).flatMap((piece) => piece.points)) {
        expect(x).toBeGreaterThanOrEqual(0);
        expect(x).toBeLessThanOrEqual(size.width);
      }
    }
  });

  it('says what is missing where a set has no balance to draw', () => {
    const motor = balanceDrawing(setNamed('M1'), house, size);
    expect(motor.title).toContain('motor');
    expect(curveOf(motor)).toEqual([]);
  });

  it('draws the curve after a release when it is asked for', () => {
    const before = curveOf(balanceDrawing(setNamed('34'), house, size));
    const after = curveOf(balanceDrawing(setNamed('34'), house, { ...size, after: 0 }));
    expect(after).not.toEqual(before);
  });
});

describe('another curve on the same axes', () => {
  const [tower, bridge] = [setNamed('11'), setNamed('36')];
  const alone = balanceDrawing(tower, house, size);
  const both = balanceDrawing(tower, house, { ...size, beside: { set: bridge, house } });

  it('lies behind, thin and dashed, as long as its own travel', () => {
    expect(part(alone, 'beside')).toBeUndefined();
    const lines = part(both, 'beside')?.shapes ?? [];
    expect(lines.length).toBeGreaterThan(1);
    for (const shape of lines) expect(shape).toMatchObject({ weight: 'thin', dash: 'hidden' });
    const order = groupsOf(both.shapes).map(({ part: name }) => name);
    expect(order.indexOf('beside')).toBeLessThan(order.indexOf('curve'));
  });

  it('widens the axis, so that both are read off one scale', () => {
    // Bare of its load the bridge is 482 lb arbor heavy, the tower 321: a pound must be shorter.
    const perPound = (drawing: Drawing): number => {
      const ruler = rulerOf(drawing, 50);
      return 1 / (ruler.poundsAt(1) - ruler.poundsAt(0));
    };
    expect(Math.abs(perPound(both))).toBeLessThan(Math.abs(perPound(alone)));
    const ruler = rulerOf(both, 50);
    const points = (part(both, 'beside')?.shapes ?? []).flatMap((shape) =>
      shape.kind === 'polyline' ? shape.points : [],
    );
    const pounds = points.map(({ x }) => ruler.poundsAt(x));
    // The table is in whole pounds.
    expect(Math.abs(Math.min(...pounds) + 482)).toBeLessThan(1);
  });

  it('is left out where it is not known', () => {
    const motor = setNamed('M1');
    const drawn = balanceDrawing(tower, house, { ...size, beside: { set: motor, house } });
    expect(part(drawn, 'beside')).toBeUndefined();
  });
});
