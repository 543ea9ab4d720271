import { describe, expect, it } from 'vitest';
import { assess, type SetStructure, type StructureState } from '#assessment';
import { readHouseValue, readShowValue } from '#documents';
import { INCH } from '#quantities';
import clockmaker from '../../examples/kestlemere/clockmaker.show.json' with { type: 'json' };
import kestlemere from '../../examples/kestlemere/house.json' with { type: 'json' };
import {
  caseAfter,
  isChanged,
  loadsAfter,
  NOTHING_CHANGED,
  onStep,
  reachOf,
  stateAfter,
  stepsIn,
  trimsAfter,
  withPlace,
  withTurn,
  withTurns,
} from './what-if.ts';

const FOOT = 0.3048;
const house = readHouseValue(kestlemere);
if (!house.ok) throw new Error('the demo house does not read');
const show = readShowValue(clockmaker, house.value.house);
if (!show.ok) throw new Error('the demo show does not read');
const assessment = assess(house.value.house, show.value.show, null);
const set = assessment.sets.find(({ lineSet }) => lineSet.id === '5');
if (set === undefined || !set.structure.known) throw new Error('no structure of set 5');
const structure: SetStructure = set.structure.value;
const hung = structure.states.find(({ kind }) => kind === 'hung') as StructureState;
const { turnM } = stepsIn('customary');

describe('a question about a batten', () => {
  it('is none while nothing is changed, and none again after turns there and back', () => {
    expect(isChanged(NOTHING_CHANGED)).toBe(false);
    expect(stateAfter(structure, hung, NOTHING_CHANGED)).toBe(hung);
    const there = Array.from({ length: 7 }).reduce<typeof NOTHING_CHANGED>(
      (now) => withTurn(now, 2, turnM, 6),
      NOTHING_CHANGED,
    );
    expect(isChanged(there)).toBe(true);
    const back = Array.from({ length: 7 }).reduce<typeof there>(
      (now) => withTurn(now, 2, -turnM, 6),
      there,
    );
    expect(isChanged(back)).toBe(false);
  });

  it('makes the line shorter that was turned, and no other', () => {
    const turned = withTurn(NOTHING_CHANGED, 2, INCH, 6);
    expect(trimsAfter(structure, turned)).toEqual([0, 0, INCH, 0, 0, 0]);
    const after = stateAfter(structure, hung, turned);
    expect(after.lines[2]?.tension).toBeGreaterThan(hung.lines[2]?.tension ?? Infinity);
    expect(after.lines[1]?.tension).toBeLessThan(hung.lines[1]?.tension ?? 0);
  });

  it('moves one load and keeps the others, the mass and the document', () => {
    const written = JSON.stringify(hung.loads);
    const index = hung.loads.findIndex(({ of }) => of === '6 moving heads');
    const moved = withPlace(NOTHING_CHANGED, index, 3 * FOOT, hung.loads.length);
    const loads = loadsAfter(structure, hung, moved);
    expect(loads[index]?.load).toMatchObject({ x: 3 * FOOT });
    expect(loads.filter((each, at) => each !== hung.loads[at])).toHaveLength(1);
    expect(stateAfter(structure, hung, moved).mass).toBeCloseTo(hung.mass, 9);
    expect(JSON.stringify(hung.loads)).toBe(written);
  });

  it('lets no end of a load leave the batten, a patch no more than a point', () => {
    const patch = hung.loads.findIndex(({ load }) => !('x' in load));
    const placed = hung.loads[patch];
    if (placed === undefined) throw new Error('no patch');
    const reach = reachOf(structure, placed);
    // The bar cable lies over the whole batten, so that it cannot move at all.
    expect(reach.from).toBeCloseTo(reach.to, 9);
    const pushed = withPlace(NOTHING_CHANGED, patch, 99, hung.loads.length);
    expect(loadsAfter(structure, hung, pushed)[patch]?.load).toMatchObject({
      from: structure.left,
      to: structure.right,
    });
    const point = withPlace(NOTHING_CHANGED, 0, -99, hung.loads.length);
    expect(loadsAfter(structure, hung, point)[0]?.load).toMatchObject({ x: structure.left });
  });

  it('hangs a load to try as the last, which can be moved like any other', () => {
    const tried = { ...NOTHING_CHANGED, tried: { x: 0, massKg: 50 } };
    expect(isChanged(tried)).toBe(true);
    const moved = withPlace(tried, hung.loads.length, 2, hung.loads.length);
    expect(loadsAfter(structure, hung, moved).at(-1)?.load).toEqual({ x: 2, mass: 50 });
    expect(stateAfter(structure, hung, moved).mass).toBeCloseTo(hung.mass + 50, 9);
    expect(caseAfter(structure, hung, moved).loads).toHaveLength(hung.loads.length + 1);
  });

  it('takes turns of a search on top of those made, each to a whole press', () => {
    const turned = withTurn(NOTHING_CHANGED, 0, turnM, 2);
    const { turns } = withTurns(turned, [0.4 * turnM, -1.6 * turnM], turnM);
    expect(turns[0]).toBeCloseTo(turnM, 12);
    expect(turns[1]).toBeCloseTo(-2 * turnM, 12);
  });
});

describe('steps', () => {
  it('are eighths of an inch or millimetres at a turnbuckle', () => {
    expect(stepsIn('customary').turnM).toBeCloseTo(0.003175, 12);
    expect(stepsIn('metric').turnM).toBe(0.001);
    expect(onStep(0.0149, 0.01)).toBeCloseTo(0.01, 12);
  });
});
