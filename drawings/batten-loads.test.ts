import { describe, expect, it } from 'vitest';
import { reworked, type SetStructure, type StructureState } from '#assessment';
import { openExample } from '../examples/open-example.ts';
import { battenSubject, timesDrawn } from './batten-frame.ts';
import { type BattenLoadsDrawing, battenLoadsDrawing, placeOfLoad } from './index.ts';
import type { Group, Lettering, Shape } from './shape.ts';
import { widthOfShare } from './tension-width.ts';

const FOOT = 0.3048;
const INCH = 0.0254;
const POUND = 0.45359237;
const { house, assessment } = openExample('kestlemere');
const metric = openExample('skelderwick');

const setNamed = (id: string, example = assessment) => {
  const set = example.sets.find(({ lineSet }) => lineSet.id === id);
  if (set === undefined || !set.structure.known) throw new Error(`no structure of set ${id}`);
  const structure = set.structure.value;
  const hung = structure.states.find(({ kind }) => kind === 'hung');
  const [bare] = structure.states;
  if (hung === undefined || bare === undefined) throw new Error(`nothing hangs on set ${id}`);
  return { set, structure, hung, bare, items: set.hang?.items.map(({ name }) => name) ?? [] };
};

const electric = setNamed('5');
const LIMIT_N = electric.set.lineSet.lineLimit.known ? electric.set.lineSet.lineLimit.value : null;

type Choices = {
  readonly width?: number;
  readonly items?: readonly string[];
  readonly before?: StructureState;
  readonly inHand?: number;
  readonly lineLimitN?: number | null;
};

const drawn = (
  structure: SetStructure,
  state: StructureState,
  { width = 1372, items = electric.items, lineLimitN = LIMIT_N, ...others }: Choices = {},
): BattenLoadsDrawing =>
  battenLoadsDrawing(structure, state, house, { width, letter: 14, items, lineLimitN, ...others });

const flat = (shapes: readonly Shape[]): readonly Shape[] =>
  shapes.flatMap((shape) => (shape.kind === 'group' ? flat(shape.shapes) : [shape]));

const groupNamed = (shapes: readonly Shape[], part: string): Group => {
  const all = (within: readonly Shape[]): readonly Group[] =>
    within.flatMap((shape) => (shape.kind === 'group' ? [shape, ...all(shape.shapes)] : []));
  const found = all(shapes).find((each) => each.part === part);
  if (found === undefined) throw new Error(`no ${part}`);
  return found;
};

const lettersOf = ({ shapes }: Pick<BattenLoadsDrawing, 'shapes'>): readonly Lettering[] =>
  flat(shapes).filter((shape): shape is Lettering => shape.kind === 'text');

const wordsOf = (drawing: Pick<BattenLoadsDrawing, 'shapes'>): string =>
  lettersOf(drawing)
    .map(({ text }) => text)
    .join(' | ');

/** One more load on the bare batten of Electric 1. */
const withLoad = (feet: number, pounds: number): StructureState =>
  reworked(electric.structure, electric.bare, {
    loads: [
      ...electric.bare.loads,
      { of: 'test weight', load: { x: feet * FOOT, mass: pounds * POUND }, uncertaintyKg: null },
    ],
  });

const TRIED = { items: ['test weight'] };

describe('lines over a loaded batten', () => {
  const plan = drawn(electric.structure, electric.hung);

  it('bear the pull of each in the house unit, line 1 at stage right', () => {
    // Golden table of the demo house: 171, 183, 183, 187, 189, 87 lb; printed pulls round up.
    for (const [index, pounds] of [171, 183, 183, 188, 189, 87].entries()) {
      const words = wordsOf(groupNamed(plan.shapes, `tension ${index + 1}`));
      expect(words).toContain(`line ${index + 1}`);
      expect(words).toContain(`${pounds}\u00A0lbf`);
    }
    const xs = electric.structure.lines.map(({ x }) => plan.xOf(x));
    expect(xs).toEqual(xs.toSorted((one, other) => one - other));
  });

  it('grow in width with the pull, in steps, and never shrink', () => {
    const widths = Array.from({ length: 200 }, (_, step) => widthOfShare(step / 100));
    expect(widths).toEqual(widths.toSorted((one, other) => one - other));
    expect(new Set(widths).size).toBe(6);
    const widthAt = (line: number) => {
      const [wire] = groupNamed(plan.shapes, `line ${line}`).shapes;
      return wire?.kind === 'line' && typeof wire.weight === 'number' ? wire.weight : 0;
    };
    expect(widthAt(5)).toBeGreaterThan(widthAt(1));
    expect(widthAt(1)).toBeGreaterThan(widthAt(6));
  });

  it('say SLACK in a box, and hang in a bow where the others are straight', () => {
    // 250 lb at the end, nothing else: line 5 goes slack in the golden table.
    const drawing = drawn(electric.structure, withLoad(25, 250), TRIED);
    const figures = groupNamed(drawing.shapes, 'tension 5');
    expect(wordsOf(figures)).toContain('SLACK');
    expect(wordsOf(figures)).not.toContain('lbf');
    expect(figures.shapes.some(({ kind }) => kind === 'rect')).toBe(true);
    const [wire] = groupNamed(drawing.shapes, 'line 5').shapes;
    expect(wire).toMatchObject({ kind: 'path', dash: 'hidden' });
    const [taut] = groupNamed(drawing.shapes, 'line 6').shapes;
    expect(taut).toMatchObject({ kind: 'line' });
    expect(drawing.title).toContain('line 5 slack');
  });

  it('past their limit bear a mark and the words, one pound further and not one pound less', () => {
    const state = withLoad(25, 250);
    const pullN = state.lines[5]?.tension ?? 0;
    const figures = (lineLimitN: number) =>
      groupNamed(drawn(electric.structure, state, { ...TRIED, lineLimitN }).shapes, 'tension 6');
    expect(wordsOf(figures(pullN - 1))).toContain('past its limit');
    expect(JSON.stringify(figures(pullN - 1))).toContain('"part":"caution"');
    expect(wordsOf(figures(pullN + 1))).not.toContain('past its limit');
    expect(JSON.stringify(figures(pullN + 1))).not.toContain('caution');
  });

  it('show beneath what they pulled before a change', () => {
    const trims = [0, 0, INCH, 0, 0, 0];
    const after = reworked(electric.structure, electric.hung, { trims });
    const drawing = drawn(electric.structure, after, { before: electric.hung });
    // Golden table: line 3 from 183 to 234 lb with line 3 one inch short.
    const words = wordsOf(groupNamed(drawing.shapes, 'tension 3'));
    expect(words).toMatch(/23[45]\u00A0lbf/);
    expect(words).toContain('was 183\u00A0lbf');
  });

  it('do not lie on one another, on a phone either', () => {
    for (const width of [362, 956, 1372]) {
      const letters = electric.structure.lines.flatMap((_, index) =>
        lettersOf(
          groupNamed(
            drawn(electric.structure, electric.hung, { width }).shapes,
            `tension ${index + 1}`,
          ),
        ),
      );
      for (const y of new Set(letters.map((each) => each.y))) {
        const xs = letters.filter((each) => each.y === y).map(({ x }) => x);
        const gaps = xs.toSorted((a, b) => a - b).map((x, i, all) => x - (all[i - 1] ?? -999));
        expect(Math.min(...gaps)).toBeGreaterThan(40);
      }
      expect(Math.min(...letters.map(({ size }) => size))).toBeGreaterThanOrEqual(14);
    }
  });
});

describe('what hangs below', () => {
  it('stands at its true place: points on hangers, a patch as a comb from end to end', () => {
    const drawing = drawn(electric.structure, electric.hung);
    const perFoot = drawing.xOf(FOOT) - drawing.xOf(0);
    expect(drawing.xOf(25 * FOOT) - drawing.xOf(-25 * FOOT)).toBeCloseTo(50 * perFoot, 9);
    expect(drawing.acrossOf(drawing.xOf(7))).toBeCloseTo(7, 12);
    for (const [index, { of, load }] of electric.hung.loads.entries()) {
      if (of.startsWith('fittings') || !('x' in load)) continue;
      const [tag] = groupNamed(drawing.shapes, `load ${index}`).shapes;
      expect(tag).toMatchObject({ kind: 'circle', x: drawing.xOf(placeOfLoad(load)) });
    }
    const [left, right] = [drawing.xOf(-25 * FOOT), drawing.xOf(25 * FOOT)];
    const comb = flat(drawing.shapes).some(
      (shape) => shape.kind === 'line' && shape.from.x === left && shape.to.x === right,
    );
    expect(comb).toBe(true);
    expect(wordsOf(drawing)).toContain('60\u00A0lb spread');
  });

  it('keeps the load in hand alone in the lowest row, so that the others stay', () => {
    const at = (x: number) => {
      const loads = electric.hung.loads.map((each, index) =>
        index === 8 ? { ...each, load: { x, mass: each.load.mass } } : each,
      );
      const state = reworked(electric.structure, electric.hung, { loads });
      return drawn(electric.structure, state, { inHand: 8 });
    };
    const [one, other] = [at(-4 * FOOT), at(-6.1 * FOOT)];
    expect(one.height).toBe(other.height);
    const yOf = (drawing: BattenLoadsDrawing, index: number) => {
      const [tag] = groupNamed(drawing.shapes, `load ${index}`).shapes;
      return tag?.kind === 'circle' ? tag.y : Number.NaN;
    };
    expect(yOf(one, 8)).toBeGreaterThan(yOf(one, 9));
    expect(yOf(other, 9)).toBe(yOf(one, 9));
  });
});

describe('bending', () => {
  it('is drawn at a round scale that is stated, with the pipe at its true sag times that', () => {
    const drawing = drawn(electric.structure, electric.hung);
    const options = { width: 1372, letter: 14, items: electric.items, lineLimitN: LIMIT_N };
    const subject = battenSubject(electric.structure, electric.hung, house, options);
    const times = timesDrawn(subject);
    expect([1, 2, 5, 10, 20, 50, 100]).toContain(times);
    expect(wordsOf(drawing)).toContain(`Bending drawn ${times} times as large`);
    const [pipe] = groupNamed(drawing.shapes, 'bent pipe').shapes;
    if (pipe?.kind !== 'polyline' || 'unstable' in electric.hung.beam) throw new Error('no pipe');
    const top = pipe.points.slice(0, pipe.points.length / 2).map(({ y }) => y);
    const { max, min } = electric.hung.beam.deflection;
    const drawnM = (Math.max(...top) - Math.min(...top)) / times / subject.perMetre;
    // A polyline of 96 steps may miss the very lowest point by far less than a thousandth.
    expect(drawnM).toBeCloseTo(max.value - min.value, 4);
  });

  it('keeps one scale for a change and what was before it', () => {
    const trims = [0, 0, 3 * INCH, 0, 0, 0];
    const after = reworked(electric.structure, electric.hung, { trims });
    const options = { width: 1372, letter: 14, items: electric.items, lineLimitN: LIMIT_N };
    const of = (state: StructureState, before?: StructureState) =>
      timesDrawn(
        battenSubject(electric.structure, state, house, {
          ...options,
          ...(before === undefined ? {} : { before }),
        }),
      );
    expect(of(after, electric.hung)).toBe(Math.min(of(after), of(electric.hung)));
  });

  it('lies below its axis where the pipe sags and above it where it hogs', () => {
    const drawing = drawn(electric.structure, electric.hung);
    const [curve] = groupNamed(drawing.shapes, 'moment').shapes;
    if (curve?.kind !== 'polyline' || 'unstable' in electric.hung.beam) throw new Error('no curve');
    const { moment } = electric.hung.beam;
    const ys = curve.points.map(({ y }) => y);
    const axisY = curve.points[0]?.y ?? 0;
    const yAt = (x: number) =>
      curve.points.reduce((best, each) =>
        Math.abs(each.x - drawing.xOf(x)) < Math.abs(best.x - drawing.xOf(x)) ? each : best,
      ).y;
    expect(yAt(moment.max.x)).toBeCloseTo(Math.max(...ys), 1);
    expect(yAt(moment.min.x)).toBeCloseTo(Math.min(...ys), 1);
    expect(Math.max(...ys)).toBeGreaterThan(axisY);
    expect(Math.min(...ys)).toBeLessThan(axisY);
  });

  it('says how much of what is allowed is used, and when it is past', () => {
    expect(wordsOf(drawn(electric.structure, electric.hung))).toMatch(/Bending uses \d+\u00A0%/);
    const heavy = drawn(electric.structure, withLoad(0, 500), TRIED);
    expect(wordsOf(heavy)).toContain('Bending is past what is allowed');
    expect(JSON.stringify(heavy.shapes)).toContain('"part":"caution"');
    const bare = electric.bare.beam;
    if ('unstable' in bare) throw new Error('a bare batten is stable');
    const lacks = ['allowable', 'utilisation'];
    const beam = new Proxy(bare, {
      get: (solved, name) =>
        lacks.some((each) => each === name) ? null : Reflect.get(solved, name),
    });
    const unsaid = { ...electric.bare, beam };
    expect(wordsOf(drawn(electric.structure, unsaid))).toContain('is not known');
  });

  it('draws what is allowed where it lies within the strip, and says so where it does not', () => {
    expect(wordsOf(drawn(electric.structure, electric.hung))).toContain('outside this strip');
    const near = wordsOf(drawn(electric.structure, withLoad(25, 250), TRIED));
    expect(near).toContain('dashed lines:');
  });
});

describe('a batten that nothing holds', () => {
  const tips = withLoad(25, 2500);

  it('is drawn with its load, the words and the reason, and no figure of an answer', () => {
    for (const width of [362, 1372]) {
      const drawing = drawn(electric.structure, tips, { ...TRIED, width });
      const words = wordsOf(drawing);
      expect(words).toContain('TIPS OVER');
      expect(words.replaceAll(' | ', ' ')).toContain('no line can push');
      expect(words).not.toMatch(/lbf|%|times as large|line \d/);
      expect(groupNamed(drawing.shapes, `load ${tips.loads.length - 1}`).shapes).not.toHaveLength(
        0,
      );
      expect(drawing.title).not.toMatch(/\d/);
    }
  });
});

describe('in a metric house whose operating side is stage left', () => {
  const { structure, hung, items } = setNamed('3', metric.assessment);
  const drawing = battenLoadsDrawing(structure, hung, metric.house, {
    width: 1372,
    letter: 14,
    lineLimitN: 2100,
    items,
  });

  it('speaks in newtons, metres and millimetres, and of a bar', () => {
    const words = wordsOf(drawing);
    expect(words).toMatch(/\d+\u00A0N( |$)/);
    expect(words).toMatch(/\d+\u00A0mm below level/);
    expect(words).not.toMatch(/lbf|lb | in /);
    expect(drawing.title).toMatch(/^bar on its lines/);
  });

  it('leads its lines to the head block at stage left', () => {
    expect(wordsOf(drawing)).toContain('stage left, to the head block');
    expect(wordsOf(drawn(electric.structure, electric.hung))).toContain(
      'stage right, to the head block',
    );
  });
});
