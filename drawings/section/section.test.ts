import { describe, expect, it } from 'vitest';
import { recordedMoment, trimMoment } from '#assessment';
import { FOOT } from '#quantities';
import { openExample } from '../../examples/open-example.ts';
import { fitted, panned, zoomed } from '../field-view.ts';
import { planDrawing } from '../plan/plan-drawing.ts';
import type { Drawing, Group, Shape } from '../shape.ts';
import { sectionDrawing, sectionParts, sectionStrips, wholeSection } from './section-drawing.ts';

const { house, assessment } = openExample('kestlemere');
const { sets } = assessment;
const subject = { house, sets, moment: trimMoment(sets, 'playing') };
const size = { width: 700, height: 800, letter: 14 };
const strips = sectionStrips(size.letter, size.width);
const view = fitted(wholeSection(house), size);

const partOf = (drawing: Drawing, part: string): Group => {
  const found = drawing.shapes.find(
    (shape): shape is Group => shape.kind === 'group' && shape.part === part,
  );
  if (found === undefined) throw new Error(`no ${part} on the drawing`);
  return found;
};

const wordsOf = (shapes: readonly Shape[]): readonly string[] =>
  shapes.flatMap((shape): readonly string[] =>
    shape.kind === 'text' ? [shape.text] : shape.kind === 'group' ? wordsOf(shape.shapes) : [],
  );

describe('the section', () => {
  it('has every set at its place upstage and its batten at its height, to one scale', () => {
    const { field, scale } = sectionParts(subject, { ...size, strips, view });
    // Legs 1, set 8: playing with the batten at 30.25 ft.
    const { lineSet } = sets.find((set) => set.lineSet.id === '8') ?? {};
    const upstageM = lineSet?.y.known ? lineSet.y.value : Number.NaN;
    const batten = partOf(field, 'set 8').shapes.find(
      (shape) => shape.kind === 'circle' && shape.fill === 'ink',
    );
    expect(batten).toMatchObject({
      x: scale.xOf(upstageM),
      y: scale.yOf(30.25 * FOOT),
    });
    expect(scale.xOf(2) - scale.xOf(1)).toBeCloseTo(scale.yOf(1) - scale.yOf(2), 9);
  });

  it('hangs the legs of set 8 from a quarter of a foot below the batten to the deck', () => {
    const { field, scale } = sectionParts(subject, { ...size, strips, view });
    const cloth = partOf(field, 'set 8').shapes.find(
      (shape) => shape.kind === 'line' && shape.weight === 'pencil',
    );
    expect(cloth).toMatchObject({
      from: { y: scale.yOf(30 * FOOT) },
      to: { y: scale.yOf(0) },
    });
  });

  it('draws a set of which nobody knows the height with its sign, and no batten', () => {
    const moment = recordedMoment(sets);
    const lost = new Map(moment.sets).set('8', { heightM: null, items: null });
    const { field } = sectionParts(
      { ...subject, moment: { is: 'recorded', sets: lost } },
      { ...size, strips, view },
    );
    const { shapes } = partOf(field, 'set 8');
    expect(shapes.some((shape) => shape.kind === 'circle' && shape.fill === 'ink')).toBe(false);
    expect(shapes.some(({ kind }) => kind === 'group')).toBe(true);
  });

  it('says beside it what is at which height, and above it what hangs', () => {
    const { names, heights, unnamed } = sectionParts(subject, { ...size, strips, view });
    expect(wordsOf(heights.shapes).join(' ').replaceAll('\u00A0', ' ')).toMatch(
      /Upper loading gallery 58'/,
    );
    expect(wordsOf(names.shapes).map((words) => words.replaceAll('\u00A0', ' '))).toContain(
      '11  Clock tower flat',
    );
    expect(unnamed).toBe(0);
  });

  it('counts the names for which a phone has no room, and never drops the set in hand', () => {
    const narrow = { ...size, width: 200, strips: sectionStrips(14, 200), chosen: 'D4' };
    const { names, unnamed } = sectionParts(subject, {
      ...narrow,
      view: fitted(wholeSection(house), narrow),
    });
    expect(unnamed).toBeGreaterThan(0);
    expect(wordsOf(names.shapes).some((words) => words.startsWith('D4'))).toBe(true);
  });

  it('keeps its scale both ways however it is moved', () => {
    const moved = panned(zoomed(view, 3, { along: 5, up: 10 }), { along: 1, up: -2 });
    const { scale } = sectionParts(subject, { ...size, strips, view: moved });
    const whole = sectionParts(subject, { ...size, strips, view }).scale;
    expect(scale.perMetre / whole.perMetre).toBeCloseTo(3, 9);
    // The place under the hand stays, but for the way that it was moved.
    expect(scale.xOf(6) - whole.xOf(5)).toBeCloseTo(0, 6);
  });

  it('is one paper for print, with its word in the title', () => {
    const { title, shapes } = sectionDrawing(subject, { ...size, height: 1000 });
    expect(title).toBe('Section of Kestlemere Playhouse, planned, looking to stage right');
    expect(shapes).toHaveLength(4);
  });
});

describe('the plan', () => {
  it('has a pipe at its place, from end to end', () => {
    const drawing = planDrawing(subject, { width: 900, height: 620, letter: 14 });
    const words = wordsOf(drawing.shapes);
    expect(words).toContain('Trap T1');
    expect(words).toContain('bay A');
    expect(drawing.title).toMatch(/^Plan of the stage of Kestlemere Playhouse, planned/);
  });
});
