/** Read back with dxf-parser, a reader of others; figures compared with those of the house. */
import dxfReader, { type IDxf } from 'dxf-parser';
import { describe, expect, it } from 'vitest';
import { trimMoment } from '#assessment';
import { assert } from '#outcome';
import { FOOT } from '#quantities';
import { openExample } from '../../examples/open-example.ts';
import { type DrawingKind, drawingFile } from '../files/drawing-file.ts';
import { circle, group, line, path, point, polygon, rect } from '../shape.ts';
import { type DxfUnit, dxfFile } from './dxf-file.ts';

type Place = { readonly x: number; readonly y: number };
type Entity = {
  readonly type: string;
  readonly layer: string;
  readonly lineType?: string;
  readonly center: Place;
  readonly radius: number;
  readonly vertices: readonly Place[];
  readonly shape?: boolean;
  readonly text: string;
  readonly textHeight: number;
  readonly startPoint: Place;
};

const { house, assessment } = openExample('kestlemere');
const { sets } = assessment;
const subject = { house, sets, moment: trimMoment(sets, 'playing') };

/** The package is a class, and its types say a namespace. */
const Reader = dxfReader as unknown as new () => { parseSync(text: string): IDxf | null };

const parsed = (text: string) => {
  const dxf = new Reader().parseSync(text);
  assert(dxf !== null, 'the reader takes the file');
  return { ...dxf, entities: dxf.entities as unknown as readonly Entity[] };
};

const fileOf = (kind: DrawingKind, unit: DxfUnit, scale = 50) =>
  parsed(dxfFile(drawingFile(kind, subject, { scale, lines: [], arbors: true }), unit));

const upstageOf = (id: string): number => {
  const y = sets.find((set) => set.lineSet.id === id)?.lineSet.y;
  return y?.known ? y.value : Number.NaN;
};

describe('a section as DXF', () => {
  it('has every batten upstage and at its height, in millimetres of the house', () => {
    const battens = fileOf('section', 'mm').entities.filter(
      ({ type, layer }) => type === 'CIRCLE' && layer === 'BATTENS',
    );
    const told = house.lineSets.flatMap(({ id, y }) => (y.known ? [{ id, y: y.value }] : []));
    expect(battens).toHaveLength(told.length);
    for (const { id, y } of told) {
      const heightM = subject.moment.sets.get(id)?.heightM ?? Number.NaN;
      const near = battens.filter(
        ({ center }) =>
          Math.abs(center.x - y * 1000) < 0.006 && Math.abs(center.y - heightM * 1000) < 0.006,
      );
      expect(near, `the batten of set ${id}`).toHaveLength(1);
    }
    // Legs 1, set 8: 6 ft 9 in upstage, playing with the batten at 30.25 ft (house and show).
    expect(upstageOf('8')).toBeCloseTo(6.75 * FOOT, 9);
    expect(battens.map(({ center }) => center)).toContainEqual(
      expect.objectContaining({ x: 2057.4, y: 9220.2 }),
    );
  });

  it('is the same house at any scale of its symbols, and in inches', () => {
    const heightOf = (dxf: ReturnType<typeof fileOf>): number =>
      dxf.entities.find(({ type, layer }) => type === 'CIRCLE' && layer === 'BATTENS')?.center.y ??
      Number.NaN;
    const inMm = heightOf(fileOf('section', 'mm'));
    expect(heightOf(fileOf('section', 'mm', 25))).toBeCloseTo(inMm, 1);
    expect(heightOf(fileOf('section', 'inch')) * 25.4).toBeCloseTo(inMm, 2);
  });

  it('keeps things apart on layers of its own, and says its unit', () => {
    const text = dxfFile(
      drawingFile('section', subject, { scale: 50, lines: [], arbors: true }),
      'inch',
    );
    expect(text).toContain('Units of the drawing: inches');
    expect(text).toContain('$ACADVER\r\n  1\r\nAC1009');
    const { entities, tables } = parsed(text);
    const used = new Set(entities.map(({ layer }) => layer));
    const known = Object.keys(tables.layer.layers);
    for (const layer of ['BATTENS', 'LIFT_LINES', 'ARBORS', 'SCENERY', 'ZONES', 'BUILDING'])
      expect(used).toContain(layer);
    expect(known).toEqual(expect.arrayContaining([...used]));
    expect(Object.keys(tables.lineType.lineTypes)).toEqual(
      expect.arrayContaining(['HIDDEN', 'PLANNED', 'CENTRE']),
    );
    expect(entities.some(({ lineType }) => lineType === 'HIDDEN')).toBe(true);
    const words = entities.filter(({ type }) => type === 'TEXT').map((each) => each.text);
    expect(words).toContain('DEMO: an invented house and show, PLANNED');
  });
});

describe('a plan as DXF', () => {
  it('has the pipes from end to end, in the coordinates of the stage', () => {
    const pipes = fileOf('plan', 'mm').entities.filter(
      ({ type, layer }) => type === 'LINE' && layer === 'BATTENS',
    );
    for (const { lineSet } of sets) {
      const { left, right } = lineSet.batten;
      if (!lineSet.y.known || !left.known || !right.known) continue;
      const y = lineSet.y.value * 1000;
      const pipe = pipes.find(({ vertices }) => Math.abs((vertices[0]?.y ?? 0) - y) < 0.006);
      expect(pipe?.vertices[0]?.x).toBeCloseTo(left.value * 1000, 1);
      expect(pipe?.vertices[1]?.x).toBeCloseTo(right.value * 1000, 1);
    }
    expect(pipes).toHaveLength(sets.length);
  });
});

describe('shapes and words as entities', () => {
  const written = (shapes: Parameters<typeof group>[0], title = 'a test'): string =>
    dxfFile(
      {
        // A point of the paper is a millimetre of the model: 1 : (360 / 127) of it.
        drawing: { width: 100, height: 100, title, shapes },
        scale: 72 / 25.4,
        zero: point(0, 100),
      },
      'mm',
    );
  const stroke = { stroke: 'ink' } as const;

  it('turns y over, moves and scales groups, and closes what is closed', () => {
    const inside = [line(0, 0, 5, 0, stroke), circle(5, 5, 2, { fill: 'ink' })];
    const box = rect(10, 20, 30, 40, stroke);
    const { entities } = parsed(written([group(inside, { at: point(10, 10), scale: 2 }), box]));
    expect(entities[0]?.vertices).toMatchObject([
      { x: 10, y: 90 },
      { x: 20, y: 90 },
    ]);
    expect(entities[1]).toMatchObject({ center: { x: 20, y: 80 }, radius: 4 });
    expect(entities[2]).toMatchObject({ type: 'POLYLINE', shape: true });
    expect(entities[2]?.vertices.map(({ x, y }) => [x, y])).toEqual([
      [10, 80],
      [40, 80],
      [40, 40],
      [10, 40],
    ]);
  });

  it('draws the curve of a sign as lines, and leaves out what only covers', () => {
    const { entities } = parsed(
      written([
        path('M0 0C0 10 10 10 10 0V-5H0Z', stroke),
        polygon([point(0, 0), point(1, 0), point(0, 1)], { fill: 'paper' }),
      ]),
    );
    expect(entities).toHaveLength(1);
    const { vertices, shape } = entities[0] ?? { vertices: [] };
    expect(shape).toBe(true);
    // The middle of the curve: (0 + 3·10 + 3·10 + 0) / 8 = 7.5 below its ends.
    expect(vertices).toContainEqual(expect.objectContaining({ x: 5, y: 92.5 }));
    expect(vertices.slice(-2).map(({ x, y }) => [x, y])).toEqual([
      [10, 105],
      [0, 105],
    ]);
  });

  it('lets no name end its line or become a sign of the form', () => {
    const name = 'A\r\n  0\r\nLINE\u2028 %%u ^J \\U+0041 Café \u{1F3AD}\u202E';
    const text = written([lettered(name)], name);
    const { entities } = parsed(text);
    expect(entities).toHaveLength(1);
    expect(entities[0]?.type).toBe('TEXT');
    expect(text).toContain(
      'A    0  LINE  \\U+0025\\U+0025u \\U+005EJ \\U+005CU+0041 Caf\\U+00E9 \\U+D83C\\U+DFAD',
    );
    expect(/^[\r\n -~]*$/.test(text)).toBe(true);
  });

  it('cuts a text that is longer than a line of the form takes', () => {
    const text = written([lettered('é'.repeat(500))]);
    const longest = Math.max(...text.split('\r\n').map((each) => each.length));
    expect(longest).toBeLessThanOrEqual(250);
  });
});

const lettered = (text: string) =>
  ({
    kind: 'text',
    x: 10,
    y: 10,
    text,
    size: 10,
    anchor: 'middle',
    weight: 'plain',
    width: 'text',
    pen: 'ink',
    turned: true,
    backed: false,
  }) as const;
