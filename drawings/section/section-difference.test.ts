import { describe, expect, it } from 'vitest';
import { trimMoment } from '#assessment';
import { openExample } from '../../examples/open-example.ts';
import type { Group, Shape } from '../shape.ts';
import { markLetter, sectionDifference } from './section-difference.ts';

const { house, assessment } = openExample('kestlemere');
const { sets } = assessment;
const before = { house, sets, moment: trimMoment(sets, 'in') };
const after = { house, sets, moment: trimMoment(sets, 'out') };
const size = { width: 900, letter: 14, tallest: 900 };
const names = { before: 'revision 1', after: 'revision 2' };
const marks = [
  { set: '1', letter: 'A' },
  { set: '11', letter: 'B' },
];

const all = (shapes: readonly Shape[]): readonly Shape[] =>
  shapes.flatMap((shape) => (shape.kind === 'group' ? [shape, ...all(shape.shapes)] : [shape]));

const named = (shapes: readonly Shape[], part: string): readonly Group[] =>
  all(shapes).filter((shape): shape is Group => shape.kind === 'group' && shape.part === part);

describe('the section with two revisions', () => {
  const { drawing, unplaced } = sectionDifference({ before, after, marks, names }, size);
  const words = all(drawing.shapes).flatMap((shape) => (shape.kind === 'text' ? [shape.text] : []));

  it('has the older of each set that differs in broken lines, and of no other', () => {
    const older = named(drawing.shapes, 'before');
    expect(older).toHaveLength(2);
    const lines = all(older).filter((shape) => shape.kind !== 'group' && shape.kind !== 'text');
    expect(lines.length).toBeGreaterThan(4);
    for (const shape of lines) {
      expect(shape).not.toMatchObject({ fill: 'ink' });
      if (shape.kind !== 'circle') expect(shape).toMatchObject({ dash: 'hidden' });
    }
  });

  it('draws the newer in full, at its own height', () => {
    // Set 1, the house curtain: in at 30.5 ft, out at 60.5 ft.
    const batten = (group: Group | undefined) =>
      all(group === undefined ? [] : [group]).findLast((shape) => shape.kind === 'circle');
    const [old] = named(drawing.shapes, 'before');
    const fresh = named(drawing.shapes, 'set 1').find((group) =>
      all([group]).some((shape) => shape.kind === 'circle' && shape.fill === 'ink'),
    );
    const [low, high] = [batten(old), batten(fresh)];
    if (low?.kind !== 'circle' || high?.kind !== 'circle') throw new Error('no batten is drawn');
    expect(low.x).toBe(high.x);
    expect(high.y).toBeLessThan(low.y);
  });

  it('marks each by a letter within the paper, and says which line is which', () => {
    for (const { letter } of marks) {
      const [mark] = named(drawing.shapes, `mark ${letter}`);
      const circle = mark?.shapes.find((shape) => shape.kind === 'circle');
      if (circle?.kind !== 'circle') throw new Error(`no mark ${letter}`);
      expect(circle.x).toBeGreaterThan(0);
      expect(circle.x).toBeLessThan(size.width);
    }
    expect(words).toContain('full ink: revision 2');
    expect(words).toContain('broken and hollow: revision 1, where it differs');
    expect(drawing.title).toContain('revision 2 in full, revision 1 in broken lines');
    expect(unplaced).toEqual([]);
  });

  it('keeps every letter apart from the next, however many there are', () => {
    const many = sets.map(({ lineSet }, index) => ({
      set: lineSet.id,
      letter: markLetter(index),
    }));
    const phone = sectionDifference(
      { before, after, marks: many, names },
      { width: 366, letter: 12.5, tallest: 900 },
    );
    const circles = many.flatMap(({ letter }) => {
      const [mark] = named(phone.drawing.shapes, `mark ${letter}`);
      return mark?.shapes.filter((shape) => shape.kind === 'circle') ?? [];
    });
    expect(circles).toHaveLength(many.length);
    for (const { x } of circles) expect(x).toBeLessThanOrEqual(366);
  });

  it('is no wider than its field asks for, where that is as tall as it may be', () => {
    const low = sectionDifference({ before, after, marks, names }, { ...size, tallest: 300 });
    expect(low.drawing.width).toBeLessThan(size.width * 0.6);
    expect(drawing.width).toBeLessThanOrEqual(size.width);
  });

  it('says which sets have no place upstage', () => {
    const elsewhere = { ...before, sets: [] };
    const none = { ...after, sets: [] };
    const paper = sectionDifference({ before: elsewhere, after: none, marks, names }, size);
    expect(paper.unplaced).toEqual(['A', 'B']);
  });

  it('has a letter for every set of a large house', () => {
    expect([0, 25, 26, 27, 51, 52, 119].map(markLetter)).toEqual([
      'A',
      'Z',
      'AA',
      'AB',
      'AZ',
      'BA',
      'DP',
    ]);
  });
});
