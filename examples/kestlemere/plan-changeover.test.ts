/**
 * One hang for another on the same set, from The Clockmaker of Vell to Winterferry (10.6 of the
 * demo's plan; its own computed figures, so no outside check). Nominal limit of the lock, zone
 * clear, masses as written, heights in quarter feet and steps of 5 lb, as the plan has them.
 */
import { describe, expect, it } from 'vitest';
import { ask, count, expectHeld, must, NOMINAL } from './plan-asked.ts';
import { asPounds, changedSet, feet, hungOn, pounds, showRuns } from './plan-sets.ts';

const ROWS = [
  // Set, what goes, what comes, trims, bricks from and to, held out.
  ['9', 'cloth', 'next.cloth', [60.5, 60.5], [6, 1], [7, 0], null],
  ['11', 'flat', 'next.bow', [60, 58], [25, 1], [29, 0], 385],
  // The bridge that goes asks for more than the mast that comes, which alone asks for 175.
  ['36', 'bridge', 'next.mast', [58, 58], [20, 1], [15, 0], 485],
] as const;

describe('changeover to Winterferry', () => {
  for (const [id, off, on, trims, from, to, heldLb] of ROWS) {
    const set = changedSet(id);
    const start = {
      ...hungOn(set, trims[0], showRuns(from[0], from[1])),
      items: { [off]: 'flying' as const },
    };
    const plan = ask(
      set,
      start,
      {
        items: { [off]: 'away', [on]: 'on' },
        bricks: { F: to[0], H: to[1] },
        height: feet(trims[1]),
      },
      { ...NOMINAL, restraint: 'out', restraintStepN: pounds(5), heightStepM: feet(0.25) },
    );

    it(`set ${id}: ${heldLb ?? 'the lock'} (${must(plan).searched} states searched)`, () => {
      const found = must(plan);
      expectHeld(found);
      const { restraint, steps, states } = found;
      if (heldLb === null) expect(restraint).toBeNull();
      else expect(asPounds(restraint?.rated ?? 0)).toBeCloseTo(heldLb, 6);
      // Room on the batten: what goes is off before what comes is on.
      const at = (act: string): number => steps.findIndex((step) => step.act === act);
      expect(at('release')).toBeLessThan(at('attach'));
      expect(count(found, ['attach', 'release'])).toBe(2);
      expect(states.at(-1)?.standing.items).toEqual({ [off]: 'away', [on]: 'flying' });
      expect(states.at(-1)?.standing.restraints).toEqual([]);
    });
  }
});
