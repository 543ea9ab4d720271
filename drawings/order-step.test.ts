import { describe, expect, it } from 'vitest';
import { panHeight } from '#house';
import { FOOT, metres, newtons } from '#quantities';
import type { Restraint, Step } from '#state';
import { openExample } from '../examples/open-example.ts';
import { momentAfter as after, dropOf } from './example-moments.ts';
import { letFall } from './let-fall.ts';
import { orderFrame, plateExaggeration } from './order-frame.ts';
import { orderStepDrawing, orderZoneDrawing } from './order-step.ts';
import type { Drawing, Group, Lettering, Line, Rect, Shape } from './shape.ts';

const example = openExample('kestlemere');
const { house } = example;
const drop = dropOf(example);
const { set: dropSet, physics: dropPhysics, out: dropOut } = drop;
const momentAfter = (steps: readonly Step[], start = dropOut) => after(drop, steps, start);

const SIZE = { width: 164, height: 232, letter: 14 };
const feet = (heightFt: number) => metres(heightFt * FOOT);
const RUN = { zone: 'run' } as const;
const MID = { zone: 'drop', gallery: 'mid' } as const;

const all = (shapes: readonly Shape[]): readonly Shape[] =>
  shapes.flatMap((shape) => (shape.kind === 'group' ? [shape, ...all(shape.shapes)] : [shape]));
const part = ({ shapes }: Drawing, name: string): Group | undefined =>
  all(shapes).find((shape): shape is Group => shape.kind === 'group' && shape.part === name);
const parts = ({ shapes }: Drawing, name: string): readonly Group[] =>
  all(shapes).filter((shape): shape is Group => shape.kind === 'group' && shape.part === name);
const lines = (group: Group | undefined): readonly Line[] =>
  all(group?.shapes ?? []).filter((shape): shape is Line => shape.kind === 'line');
const rects = (group: Group | undefined): readonly Rect[] =>
  all(group?.shapes ?? []).filter((shape): shape is Rect => shape.kind === 'rect');
const words = ({ shapes }: Drawing): readonly string[] =>
  all(shapes)
    .filter((shape): shape is Lettering => shape.kind === 'text')
    .map(({ text }) => text);

const frame = orderFrame(dropSet, house, SIZE);
const draw = (steps: readonly Step[], start = dropOut): Drawing =>
  orderStepDrawing(momentAfter(steps, start), house, SIZE);

const panAt = (battenFt: number): number => {
  const { arbor, lowStop } = dropSet.lineSet;
  if (arbor === null || !arbor.panAtLow.known || !lowStop.height.known) throw new Error('no arbor');
  return panHeight({
    panAtLowM: arbor.panAtLow.value,
    battenM: battenFt * FOOT,
    lowStopM: lowStop.height.value,
    purchase: 1,
  });
};

describe('a moment of an order', () => {
  it('has batten and arbor at their heights, on one scale, in drawings of any step', () => {
    for (const battenFt of [60.5, 24, 3]) {
      const drawing = draw(battenFt === 60.5 ? [] : [{ act: 'fly', to: feet(battenFt) }]);
      expect(lines(part(drawing, 'batten'))[0]?.from.y).toBeCloseTo(frame.y(battenFt * FOOT), 6);
      const [outline] = rects(part(drawing, 'arbor'));
      const bottom = (outline?.y ?? 0) + (outline?.height ?? 0);
      expect(bottom).toBeCloseTo(frame.y(panAt(battenFt)), 6);
    }
  });

  it('shows where a flight began, and nothing of the kind where nothing flew', () => {
    expect(part(draw([{ act: 'fly', to: feet(24) }]), 'before')).toBeDefined();
    expect(part(draw([{ act: 'close', zone: MID }]), 'before')).toBeUndefined();
  });

  it('lays on the deck what of a cloth is lower than the deck', () => {
    expect(part(draw([]), 'heap')).toBeUndefined();
    expect(part(draw([{ act: 'fly', to: feet(24) }]), 'heap')).toBeDefined();
    const untied = draw([
      { act: 'fly', to: feet(3) },
      { act: 'release', item: 'cloth' },
    ]);
    expect(part(untied, 'item cloth')).toBeUndefined();
  });

  it('stands a loader on the floor of the gallery of the step, with the brick in hand', () => {
    const drawing = draw([
      { act: 'fly', to: feet(24) },
      { act: 'remove', kind: 'H', count: 1, gallery: 'mid' },
    ]);
    const [loader] = parts(drawing, 'person');
    const legs = all(loader?.shapes ?? []).find((shape) => shape.kind === 'polyline');
    const feetY = legs?.kind === 'polyline' ? (legs.points[0]?.y ?? Number.NaN) : Number.NaN;
    // A line's width above the floor of 38 ft, so that both are seen.
    expect(frame.y(38 * FOOT) - feetY).toBeCloseTo(1, 6);
    expect(part(drawing, 'brick in hand')).toBeDefined();
    expect(parts(draw([]), 'person')).toHaveLength(0);
  });

  it('hatches a closed zone with the word, and points at the one that a step closes', () => {
    const closed = draw([{ act: 'close', zone: RUN }]);
    expect(rects(part(closed, 'closed')).every(({ hatch }) => hatch === 'closed')).toBe(true);
    expect(words(closed)).toContain('closed');
    expect(rects(part(closed, 'pointed zone')).map(({ stroke }) => stroke)).toContain('blue');
    const open = draw([
      { act: 'close', zone: RUN },
      { act: 'reopen', zone: RUN },
    ]);
    expect(part(open, 'closed')).toBeUndefined();
    expect(words(open)).toEqual(['open']);
  });

  it('draws a stop only where the set stands on it', () => {
    expect(part(draw([]), 'low stop')).toBeUndefined();
    expect(part(draw([{ act: 'fly', to: feet(3) }]), 'low stop')).toBeDefined();
  });

  it.each(['bullLine', 'arborSling', 'stands', 'choke', 'pinnedPiece', 'winch'] as const)(
    'draws what is rigged: %s',
    (kind) => {
      const restraint: Restraint = {
        kind,
        resists: 'out',
        rating: newtons(400),
        from: feet(3),
        to: feet(60.5),
        owner: 'lead',
        tag: '1',
      };
      expect(part(draw([{ act: 'rig', restraint }]), kind)).toBeDefined();
      expect(part(draw([]), kind)).toBeUndefined();
    },
  );

  it('hangs what steel carries on rods from above', () => {
    const start = { ...dropOut, service: 'deadHung', items: { cloth: 'heldElsewhere' } } as const;
    expect(lines(part(draw([], start), 'steel'))).toHaveLength(2);
  });
});

describe('what would be set free', () => {
  it('is a brick at the height of its fall, to the scale of the drawing, red if unheld', () => {
    const moment = momentAfter([{ act: 'fly', to: feet(4) }]);
    expect(moment.isHeld).toBe(false);
    const fall = letFall(moment.state.releasableJ ?? 0, dropPhysics.bricks);
    const energy = part(orderStepDrawing(moment, house, SIZE), 'energy');
    const [brick] = rects(energy);
    expect(rects(energy)).toHaveLength(fall?.count ?? 0);
    expect((brick?.y ?? 0) + (brick?.height ?? 0)).toBeCloseTo(frame.y(fall?.fallM ?? 0) - 1, 0);
    expect(brick?.fill).toBe('red');
  });

  it('is not drawn where nothing is free or nobody reckoned it', () => {
    const moment = momentAfter([]);
    const free = (releasableJ: number | null) =>
      part(
        orderStepDrawing({ ...moment, state: { ...moment.state, releasableJ } }, house, SIZE),
        'energy',
      );
    expect(free(10)).toBeDefined();
    expect(free(0)).toBeUndefined();
    expect(free(null)).toBeUndefined();
  });
});

describe('the same house with its arbors at the other side', () => {
  it('is the mirror image', () => {
    const other = { ...house, stage: { ...house.stage, operatingSide: 'stageLeft' } as const };
    const moment = momentAfter([{ act: 'fly', to: feet(24) }]);
    const at = (drawing: Drawing) => {
      const [outline] = rects(part(drawing, 'arbor'));
      return (outline?.x ?? 0) + (outline?.width ?? 0) / 2;
    };
    const [here, there] = [house, other].map((each) => orderStepDrawing(moment, each, SIZE));
    if (here === undefined || there === undefined) throw new Error('not drawn');
    expect(at(here) + at(there)).toBeCloseTo(SIZE.width, 6);
  });
});

describe('plates thinner than a line', () => {
  it('are drawn thicker, and the highest stack still lies inside its arbor', () => {
    const { arbor } = dropSet.lineSet;
    if (arbor === null || !arbor.length.known) throw new Error('no arbor');
    const low = [{ kind: 'F', count: 2, tag: 'show' }] as const;
    const high = [{ kind: 'F', count: 50, tag: 'show' }] as const;
    const factor = plateExaggeration(dropSet, house, [low, high]);
    expect(factor).toBeGreaterThan(1);
    // 50 bricks of 1.2 in, and a spreader plate now and then.
    expect(factor * 50 * 1.2 * (FOOT / 12)).toBeLessThan(arbor.length.value);
    expect(plateExaggeration(dropSet, house, [low])).toBe(5);
    expect(plateExaggeration(dropSet, house, [[]])).toBe(1);
  });
});

describe('a zone closed or opened', () => {
  it('is drawn without what hangs: nothing of the set moves', () => {
    const drawing = orderZoneDrawing(momentAfter([{ act: 'close', zone: MID }]), house, SIZE);
    expect(part(drawing, 'item cloth')).toBeUndefined();
    expect(part(drawing, 'energy')).toBeUndefined();
    expect(part(drawing, 'pointed zone')).toBeDefined();
  });
});

describe('a large drawing', () => {
  it('names galleries and the height of the batten, and has a bar of true height', () => {
    const drawing = orderStepDrawing(momentAfter([]), house, { ...SIZE, isLettered: true });
    const said = words(drawing).map((text) => text.replaceAll('\u00A0', ' '));
    expect(said).toContain(`Mid loading gallery 38'-0"`);
    expect(said).toContain(`batten 60'-6"`);
    expect(said).toContain('10 ft');
    const tall = rects(part(drawing, 'scale bar')).reduce((sum, { height }) => sum + height, 0);
    const own = orderFrame(dropSet, house, { ...SIZE, isLettered: true });
    expect(tall).toBeCloseTo(10 * FOOT * own.scale.perMetre, 6);
  });
});
