/** Which pieces are on both of a pair, half on, or on neither. */
import { describe, expect, it } from 'vitest';
import { FOOT, metres } from '#quantities';
import type { ItemPhase, Step } from '#state';
import { bare } from '../example-jobs.contract.ts';
import { apartOf, couplingOf, endsHalf, isInBand, otherOf, SIDES } from './coupling.ts';

const HEADER = { first: 'header', second: 'headerEnd' } as const;
const BORDER = { first: 'border', second: 'borderEnd' } as const;
const SHARED = [HEADER, BORDER] as const;

type Phases = Readonly<Record<string, ItemPhase>>;

const coupled = (first: Phases, second: Phases) =>
  couplingOf(SHARED, { first: { ...bare, items: first }, second: { ...bare, items: second } });

describe('the two sets of a pair', () => {
  it('are the other one of each other', () => {
    expect(SIDES).toEqual(['first', 'second']);
    expect(SIDES.map(otherOf)).toEqual(['second', 'first']);
  });

  it('are apart by how much the second is over the first', () => {
    const at = (height: number) => ({ ...bare, height: metres(height) });
    expect(apartOf({ first: at(3), second: at(5) })).toBe(2);
    expect(apartOf({ first: at(5), second: at(3) })).toBe(-2);
  });

  it('are in the band at both of its ends, and not a thousandth of a foot beyond', () => {
    const band = { leastM: -0.5 * FOOT, mostM: 6 * FOOT };
    const feet = [-0.501, -0.5, 0, 6, 6.001];
    expect(feet.map((apart) => isInBand(band, apart * FOOT))).toEqual([
      false,
      true,
      true,
      true,
      false,
    ]);
  });
});

describe('a piece of both', () => {
  it('is on a set in every way that it can be tied to it', () => {
    for (const phase of ['attachedSlack', 'attachedResting', 'flying', 'heldElsewhere'] as const) {
      expect(coupled({ header: phase }, { headerEnd: 'flying' })).toEqual({
        on: [HEADER],
        half: [],
      });
    }
  });

  it('is on neither where nobody has heard of it, it is away, or lies beside', () => {
    for (const phase of ['away', 'beside'] as const) {
      expect(coupled({ header: phase }, {})).toEqual({ on: [], half: [] });
    }
    expect(coupled({}, {})).toEqual({ on: [], half: [] });
  });

  it('is half on with the set that has it', () => {
    expect(coupled({ header: 'flying' }, { borderEnd: 'flying' })).toEqual({
      on: [],
      half: [
        { piece: HEADER, has: 'first' },
        { piece: BORDER, has: 'second' },
      ],
    });
  });

  it('goes by the name that it has on each set', () => {
    expect(coupled({ headerEnd: 'flying' }, { header: 'flying' })).toEqual({ on: [], half: [] });
  });
});

describe('a piece that is half on', () => {
  const half = coupled({ header: 'flying' }, {});
  const tie = (item: string): Step => ({ act: 'attach', item, as: 'flying' });
  const untie = (item: string): Step => ({ act: 'release', item });

  it('is made whole on the set that has it not', () => {
    expect(endsHalf(half, 'second', tie('headerEnd'))).toBe(true);
    expect(endsHalf(half, 'second', tie('borderEnd'))).toBe(false);
    expect(endsHalf(half, 'second', untie('headerEnd'))).toBe(false);
  });

  it('comes off the set that has it', () => {
    expect(endsHalf(half, 'first', untie('header'))).toBe(true);
    expect(endsHalf(half, 'first', untie('border'))).toBe(false);
    expect(endsHalf(half, 'first', tie('header'))).toBe(false);
  });

  it('is one of several, and either may be seen to first', () => {
    const two = coupled({ header: 'flying' }, { borderEnd: 'flying' });
    expect(endsHalf(two, 'second', tie('headerEnd'))).toBe(true);
    expect(endsHalf(two, 'second', untie('borderEnd'))).toBe(true);
    expect(endsHalf(coupled({}, {}), 'second', tie('headerEnd'))).toBe(false);
  });
});
