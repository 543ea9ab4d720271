/**
 * Lines, bays and floors of Kestlemere against the plan of the demo (its own computed figures, so
 * no outside check: VALIDATION.md has those). The plan prints whole pounds, and takes the runs to
 * the head blocks for level; here they climb 2 ft, which moves no line by a tenth of a pound.
 */
import { describe, expect, it } from 'vitest';
import { reworked, type SetStructure, type StructureState } from '#assessment';
import { FOOT, INCH, POUND_FORCE } from '#quantities';
import { openExample } from '../open-example.ts';

const { assessment } = openExample('kestlemere');

const structureOf = (id: string): SetStructure => {
  const set = assessment.sets.find(({ lineSet }) => lineSet.id === id);
  if (set?.structure.known !== true) throw new Error(`set ${id} has no structure`);
  return set.structure.value;
};

const stateOf = ({ states }: SetStructure, name: string): StructureState => {
  const state = states.find((each) => each.name.split(', ').includes(name));
  if (state === undefined) throw new Error(`no state ${name}`);
  return state;
};

/** Half a pound of the plan's rounding, and a tenth for its level runs. */
const NEAR_LB = 0.6;

const expectPounds = ({ lines }: StructureState, plan: readonly number[]): void => {
  expect(lines).toHaveLength(plan.length);
  for (const [index, { tension }] of lines.entries()) {
    const offLb = Math.abs(tension / POUND_FORCE - (plan[index] ?? Number.NaN));
    expect(offLb, `line ${index + 1}`).toBeLessThanOrEqual(NEAR_LB);
  }
};

const peakLbFt = ({ beam }: StructureState): number => {
  if ('unstable' in beam) throw new Error('unstable');
  const { max, min } = beam.moment;
  return Math.max(max.value, -min.value) / (POUND_FORCE * FOOT);
};

const trimsOf = (inches: readonly number[]): readonly number[] => inches.map((each) => each * INCH);

describe('lines of Kestlemere', () => {
  it('carries the bare batten with less at the ends', () => {
    const bare = stateOf(structureOf('4'), 'bare');
    expectPounds(bare, [24, 31, 30, 30, 31, 24]);
    expect(Math.round(peakLbFt(bare))).toBe(19);
  });

  it('carries Electric 1 at its trim unequally, and shows what a turnbuckle does', () => {
    const structure = structureOf('5');
    const playing = stateOf(structure, 'playing');
    expectPounds(playing, [171, 183, 183, 187, 189, 87]);
    // The plan has 154, read at the ends of half-foot elements; the peak lies between two.
    expect(Math.abs(peakLbFt(playing) - 154)).toBeLessThan(1);
    const oneInch = reworked(structure, playing, { trims: trimsOf([0, 0, 1, 0, 0, 0]) });
    expectPounds(oneInch, [179, 148, 234, 154, 196, 87]);
    const threeInches = reworked(structure, playing, { trims: trimsOf([0, 0, 3, 0, 0, 0]) });
    expectPounds(threeInches, [197, 78, 337, 88, 210, 89]);
    expect(Math.abs(peakLbFt(threeInches) - 569)).toBeLessThan(2);
  });

  it('hangs the tower flat from its two inner lines', () => {
    const out = stateOf(structureOf('11'), 'out');
    expectPounds(out, [10, 70, 327, 319, 72, 10]);
    expect(Math.abs(peakLbFt(out) - 141)).toBeLessThan(1);
  });

  it('bends two and a half times as much with the picks between the lines', () => {
    const structure = structureOf('11');
    const out = stateOf(structure, 'out');
    const flat = out.loads.filter(({ of }) => !of.startsWith('fittings'));
    const massKg = flat.reduce((sum, { load }) => sum + load.mass, 0);
    const loads = [
      ...out.loads.filter(({ of }) => of.startsWith('fittings')),
      ...[-6, 0, 6].map((x) => ({
        of: 'flat',
        load: { x: x * FOOT, mass: massKg / 3 },
        uncertaintyKg: 0,
      })),
    ];
    const early = reworked(structure, out, { loads });
    expectPounds(early, [9, 79, 318, 311, 81, 10]);
    expect(Math.abs(peakLbFt(early) - 361)).toBeLessThan(2);
  });
});

describe('bays, wells and floors of Kestlemere', () => {
  const kilonewtons = (bay: string, of: 'vertical' | 'horizontal'): number => {
    const total = assessment.totals.bays.find(
      (each) => each.bay === bay && each.when === 'planned',
    );
    if (total?.[of].known !== true) throw new Error(`bay ${bay} has no total`);
    return total[of].value.value / 1000;
  };

  it.each([
    ['A', 22.9, 21.8],
    ['B', 20.7, 19.4],
    ['C', 35.0, 27.2],
  ] as const)('totals bay %s as the plan does', (bay, vertical, horizontal) => {
    // The plan prints a tenth of a kilonewton.
    expect(Math.abs(kilonewtons(bay, 'vertical') - vertical)).toBeLessThanOrEqual(0.0501);
    expect(Math.abs(kilonewtons(bay, 'horizontal') - horizontal)).toBeLessThanOrEqual(0.0501);
  });

  it('knows what the wire adds when every batten is out', () => {
    const bay = assessment.totals.bays.find((each) => each.bay === 'C' && each.when === 'planned');
    // 13 single sets with 7 lines and 66.5 ft below the head block, 4 double with 2 · 7 and 39.5.
    const pounds7 = 0.11 * 7;
    const single = 13 * pounds7 * (68 - (59.5 + 7 - 58));
    const double = 4 * pounds7 * 2 * (68 - (57 + 9.5 - 58 / 2));
    expect(bay?.wire).toMatchObject({ known: true });
    if (bay?.wire.known !== true) return;
    expect(bay.wire.value / POUND_FORCE).toBeCloseTo(single + double, 6);
  });

  it('stands every line on a well, and every well is known', () => {
    expect(assessment.totals.linesOnNoWell).toEqual([]);
    expect(assessment.totals.wells.every(({ force }) => force.known)).toBe(true);
  });

  it('loads the galleries as counted', () => {
    const upper = assessment.totals.floors.find(
      ({ gallery, when }) => gallery === 'upper' && when === 'recorded',
    );
    expect(upper?.bricks.known).toBe(true);
  });
});
