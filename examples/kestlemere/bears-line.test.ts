/**
 * A batten that a line holds down: what its lift lines and blocks then carry, on the demo house.
 * By statics alone the lines take, in all, what hangs, the batten, their own wire below the blocks
 * and the whole pull of the line, and those at which it pulls take nearly all of that.
 */
import { describe, expect, it } from 'vitest';
import { bearsLine } from '#rules';
import { openExample } from '../open-example.ts';
import { asPounds, pounds } from './plan-sets.ts';

const { house, assessment } = openExample('kestlemere');

const bearing = (id: string, heldLb: number) => {
  const set = assessment.sets.find(({ lineSet }) => lineSet.id === id);
  if (set === undefined) throw new Error(`no set ${id}`);
  const answer = bearsLine(house, set, pounds(heldLb));
  if ('needs' in answer) throw new Error(answer.needs.join());
  return answer;
};

describe('a batten held down by a line', () => {
  it('is borne for what the demo asks: the house curtain, the bridge, the star drop', () => {
    for (const [id, heldLb] of [
      ['1', 250],
      ['36', 525],
      ['D2', 225],
    ] as const) {
      const { at, stops, lacks } = bearing(id, heldLb);
      expect(stops, id).toEqual([]);
      expect(lacks, id).toEqual([]);
      expect(at).toHaveLength(2);
      expect((at[0] ?? 0) + (at[1] ?? 0)).toBeCloseTo(0, 9);
    }
  });

  it('is not borne past what a lift line may carry, and says by which rule', () => {
    const { stops } = bearing('2', 3000);
    expect(stops.map(({ code }) => code)).toContain('LFT-001');
    const line = stops.find(({ code }) => code === 'LFT-001');
    // 1500 lb at each of two lines, less what their neighbours help, more than 875 lb.
    expect(asPounds(line?.measured?.value ?? 0)).toBeGreaterThan(875);
    expect(asPounds(line?.measured?.value ?? 0)).toBeLessThan(1600);
    expect(asPounds(line?.limit?.value ?? 0)).toBeCloseTo(875, 6);
  });

  it('is borne the longer the less it is held, to the pound', () => {
    const isBorne = (heldLb: number) => bearing('2', heldLb).stops.length === 0;
    let [good, bad] = [0, 3000];
    for (let turn = 0; turn < 14; turn += 1) {
      const middle = (good + bad) / 2;
      if (isBorne(middle)) good = middle;
      else bad = middle;
    }
    expect(isBorne(good - 1)).toBe(true);
    expect(isBorne(good + 1)).toBe(false);
  });
});
