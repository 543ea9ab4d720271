import { describe, expect, it } from 'vitest';
import { FOOT, metres, POUND_FORCE } from '#quantities';
import type { OrderState } from '#rules';
import { openExample } from '../examples/open-example.ts';
import { dropOf, momentAfter } from './example-moments.ts';
import { orderHoldsDrawing } from './order-holds.ts';
import type { Drawing, Group, Line, Polyline, Shape } from './shape.ts';

const example = openExample('kestlemere');
const { house } = example;
const drop = dropOf(example);
const { physics: dropPhysics } = drop;

const SIZE = { width: 164, letter: 14, isHeld: true, isDoubtTried: false };
const all = (shapes: readonly Shape[]): readonly Shape[] =>
  shapes.flatMap((shape) => (shape.kind === 'group' ? [shape, ...all(shape.shapes)] : [shape]));
const part = ({ shapes }: Drawing, name: string): Group | undefined =>
  all(shapes).find((shape): shape is Group => shape.kind === 'group' && shape.part === name);

/** Tip of the wedge. */
const stands = (drawing: Drawing): number => {
  const [shape] = part(drawing, 'stands')?.shapes ?? [];
  return (shape as Polyline).points[2]?.x ?? Number.NaN;
};
const brackets = ({ shapes }: Drawing): readonly number[] =>
  shapes
    .filter((shape): shape is Polyline => shape.kind === 'polyline' && shape.weight === 'mid')
    .map(({ points }) => points[1]?.x ?? Number.NaN);

const start = momentAfter(drop, []).state;
const pounds = (lb: number) => lb * POUND_FORCE;

/** As it would stand with other figures, in pounds at the batten. */
const state = (uLb: number, holds: { in?: number; out?: number } = {}): OrderState => ({
  ...start,
  imbalance: { lowN: pounds(uLb), highN: pounds(uLb), doubtN: pounds(10) },
  holdInN: pounds(holds.in ?? 50),
  holdOutN: pounds(holds.out ?? 50),
});
const draw = (each: OrderState, more: Partial<typeof SIZE> = {}): Drawing =>
  orderHoldsDrawing(each, dropPhysics, house, { ...SIZE, ...more });

describe('what holds a set each way', () => {
  it('has the wedge inside its brackets where less pulls than holds, and past them else', () => {
    const [out = 0, inward = 0] = brackets(draw(state(0)));
    expect(out).toBeLessThan(inward);
    for (const uLb of [-49, -1, 0, 1, 49]) {
      const x = stands(draw(state(uLb)));
      expect(x).toBeGreaterThan(out);
      expect(x).toBeLessThan(inward);
    }
    expect(stands(draw(state(-51)))).toBeLessThan(out);
    expect(stands(draw(state(51)))).toBeGreaterThan(inward);
  });

  it('lays arbor heavy on the side of the arbors', () => {
    const other = { ...house, stage: { ...house.stage, operatingSide: 'stageLeft' } as const };
    const x = stands(draw(state(-20)));
    expect(x).toBeLessThan(SIZE.width / 2);
    const mirrored = orderHoldsDrawing(state(-20), dropPhysics, other, SIZE);
    expect(stands(mirrored)).toBeCloseTo(SIZE.width - x, 9);
  });

  it('keeps the order on the line past its break: zero, wedge, bracket', () => {
    const drawing = draw(state(400, { in: 1400 }));
    const [, inward = 0] = brackets(drawing);
    expect(stands(drawing)).toBeLessThan(inward);
    expect(stands(drawing)).toBeGreaterThan(stands(draw(state(99, { in: 1400 }))));
    expect(inward).toBeLessThanOrEqual(SIZE.width);
    const unheld = draw(state(-800));
    expect(stands(unheld)).toBeLessThan(brackets(unheld)[0] ?? 0);
    expect(stands(unheld)).toBeGreaterThanOrEqual(0);
  });

  it('draws the doubt as a bar where it was tried, and the wedge alone else', () => {
    const wide = (isDoubtTried: boolean): number => {
      const [bar] = part(draw(state(20), { isDoubtTried }), 'doubt')?.shapes ?? [];
      const { from, to } = bar as Line;
      return Math.abs(to.x - from.x);
    };
    expect(wide(true)).toBeGreaterThan(0);
    expect(wide(false)).toBe(0);
  });

  it('stands a set that may choose nearest to balance', () => {
    const free = { ...start, imbalance: { lowN: pounds(-300), highN: pounds(40), doubtN: 0 } };
    expect(stands(draw(free))).toBeCloseTo(SIZE.width / 2, 9);
  });

  it('is blue where it is held and red where it is not, and says both holds in its title', () => {
    const fill = (isHeld: boolean) => {
      const [shape] = part(draw(state(20), { isHeld }), 'stands')?.shapes ?? [];
      return (shape as Polyline).fill;
    };
    expect([fill(true), fill(false)]).toEqual(['blue', 'red']);
    const onStop = momentAfter(drop, [{ act: 'fly', to: metres(3 * FOOT) }]).state;
    expect(draw(onStop).title.replaceAll('\u00A0', ' ')).toMatch(/out 50 lbf.*in 1400 lbf/);
  });
});
