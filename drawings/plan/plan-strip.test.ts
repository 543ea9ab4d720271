import { describe, expect, it } from 'vitest';
import { trimMoment } from '#assessment';
import { openExample } from '../../examples/open-example.ts';
import { fitted } from '../field-view.ts';
import { upstageOf } from '../section/hangings.ts';
import type { Lettering } from '../shape.ts';
import { planParts, planStrips, wholePlan } from './plan-drawing.ts';

const { house, assessment } = openExample('kestlemere');
const { sets } = assessment;
const subject = { house, sets, moment: trimMoment(sets, 'playing') };
const letter = 14;

const numbersAt = (width: number, height: number, chosen: string | null = null) => {
  const view = fitted(wholePlan(house), { width, height });
  const strips = planStrips(letter);
  const parts = planParts(subject, { width, height, letter, view, strips, chosen });
  const texts = parts.sets.shapes.filter((shape): shape is Lettering => shape.kind === 'text');
  return texts.map(({ text, x, y }) => {
    const set = sets.find(({ lineSet }) => lineSet.id === text);
    const upstageM = set === undefined ? null : upstageOf(set);
    return {
      text,
      x,
      off: Math.abs(y - letter * 0.34 - parts.scale.yOf(upstageM ?? Number.NaN)),
      y,
    };
  });
};

describe('the numbers beside the plan', () => {
  it.each([
    [980, 670],
    [620, 430],
    [290, 200],
  ])('stand at their own pipe and over no other, %i wide', (width, height) => {
    const numbers = numbersAt(width, height);
    // Further off than half a letter, a number would stand beside its neighbour's pipe.
    for (const { text, off } of numbers) expect(off, text).toBeLessThanOrEqual(letter / 2 + 1e-9);
    for (const x of new Set(numbers.map((number) => number.x))) {
      const ys = numbers.filter((number) => number.x === x).map(({ y }) => y);
      const gaps = ys
        .toSorted((one, other) => one - other)
        .map((y, i, all) => y - (all[i - 1] ?? -99));
      expect(Math.min(...gaps)).toBeGreaterThan(letter);
    }
  });

  it('are all of them where there is room, and on a phone the set in hand is one of them', () => {
    expect(numbersAt(980, 670)).toHaveLength(sets.length);
    const onPhone = numbersAt(290, 200, '22').map(({ text }) => text);
    expect(onPhone.length).toBeLessThan(sets.length / 2);
    expect(onPhone).toContain('22');
  });
});
