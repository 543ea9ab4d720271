import { describe, expect, it } from 'vitest';
import { type Hold, type HoldInput, holdStep, IDLE } from './hold.ts';

const told = (inputs: readonly HoldInput[]): { hold: Hold; given: number } => {
  let hold = IDLE;
  let given = 0;
  for (const input of inputs) {
    const [next, isGiven] = holdStep(hold, input);
    hold = next;
    if (isGiven) given += 1;
  }
  return { hold, given };
};
const down = { kind: 'down', by: 'pointer' } as const;
const key = { kind: 'down', by: 'key' } as const;
const up = { kind: 'up' } as const;
const elapsed = { kind: 'elapsed' } as const;
const byHand = { kind: 'click', isByHand: true } as const;
const press = { kind: 'click', isByHand: false } as const;

describe('a word given by holding', () => {
  it('is given once by a hold of a second, with the click of the release behind it', () => {
    expect(told([down, elapsed, up, byHand])).toEqual({ hold: IDLE, given: 1 });
    // A browser may give the release of a held key as a click of its own.
    expect(told([key, key, key, elapsed, key, up, press]).given).toBe(1);
  });

  it('is not given by a short touch, which says that it was short', () => {
    const short = { is: 'idle', wasShort: true };
    expect(told([down, up, byHand])).toEqual({ hold: short, given: 0 });
    expect(told([down, up, byHand, down, up, byHand]).given).toBe(0);
  });

  it('is not given when the finger slides off, nor by what elapses then', () => {
    expect(told([down, { kind: 'left' }, elapsed, up])).toEqual({ hold: IDLE, given: 0 });
  });

  it('is given by two presses of who cannot hold, and not by one', () => {
    expect(told([press])).toEqual({ hold: { is: 'armed' }, given: 0 });
    expect(told([press, press])).toEqual({ hold: IDLE, given: 1 });
    expect(told([press, { kind: 'waited' }, press])).toEqual({ hold: { is: 'armed' }, given: 0 });
    expect(told([press, { kind: 'left' }, press]).given).toBe(0);
  });
});
