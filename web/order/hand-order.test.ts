import { describe, expect, it } from 'vitest';
import { metres } from '#quantities';
import type { Step } from '#state';
import {
  asFound,
  backTo,
  differsFrom,
  undone,
  withoutStep,
  withStep,
  withStepMoved,
} from './hand-order.ts';

const CLOSE: Step = { act: 'close', zone: { zone: 'run' } };
const FLY: Step = { act: 'fly', to: metres(3) };
const UNTIE: Step = { act: 'release', item: 'cloth' };
const FOUND = [CLOSE, FLY, UNTIE];
const found = asFound(FOUND);

describe('an order changed by hand', () => {
  it('loses a step, moves one, takes one in, and never touches the found one', () => {
    expect(withoutStep(found, 1).steps).toEqual([CLOSE, UNTIE]);
    expect(withStepMoved(found, 2, -1).steps).toEqual([CLOSE, UNTIE, FLY]);
    expect(withStepMoved(found, 0, 1).steps).toEqual([FLY, CLOSE, UNTIE]);
    expect(withStep(found, 0, UNTIE).steps).toEqual([UNTIE, CLOSE, FLY, UNTIE]);
    expect(withStep(found, 3, FLY).steps).toEqual([CLOSE, FLY, UNTIE, FLY]);
    expect(FOUND).toEqual([CLOSE, FLY, UNTIE]);
  });

  it('does not change at places that are not there', () => {
    expect(withoutStep(found, -1)).toBe(found);
    expect(withoutStep(found, 3)).toBe(found);
    expect(withStepMoved(found, 0, -1)).toBe(found);
    expect(withStepMoved(found, 2, 1)).toBe(found);
    expect(withStepMoved(found, 7, 1)).toBe(found);
    expect(withStep(found, 99, FLY).steps.at(-1)).toBe(FLY);
  });

  it('takes changes back one by one, to the first and no further', () => {
    const twice = withStepMoved(withoutStep(found, 0), 1, -1);
    expect(undone(twice).steps).toEqual([FLY, UNTIE]);
    expect(undone(undone(twice)).steps).toEqual(FOUND);
    expect(undone(found)).toBe(found);
  });

  it('goes back to the found order, and that can be taken back too', () => {
    const changed = withoutStep(found, 0);
    expect(differsFrom(changed, FOUND)).toBe(true);
    const back = backTo(changed, FOUND);
    expect(differsFrom(back, FOUND)).toBe(false);
    expect(undone(back).steps).toEqual(changed.steps);
    expect(backTo(found, FOUND)).toBe(found);
  });
});
