import { describe, expect, it } from 'vitest';
import { type House, known, unknownValue } from '#house';
import { metres } from '#quantities';
import { type SetState, unknownSetState } from '#state';
import type { SetReckoning } from '../reckoning/reckon.ts';
import { withCount, withoutPlate, withPlate } from './tally.ts';
import { ageOf, leftOf, walkedSets, walkOf } from './walk.ts';

type Set = { readonly id: string; readonly railId: string | null };

const sets = (...all: readonly Set[]): readonly SetReckoning[] =>
  all.map(({ id, railId }) => ({ id, set: { lineSet: { id, railId } } }) as SetReckoning);

const rails = [
  { id: 'deck', name: 'Deck rail', floor: unknownValue() },
  { id: 'upper', name: 'Upper rail', floor: unknownValue() },
];

describe('the walk round the house', () => {
  const walk = walkOf(
    { rails },
    sets(
      { id: '1', railId: 'upper' },
      { id: '2', railId: 'deck' },
      { id: '3', railId: null },
      { id: '4', railId: 'deck' },
    ),
  );

  it('goes rail by rail in the order of the house, and ends with what has none', () => {
    expect(walk.map(({ rail }) => rail)).toEqual(['Deck rail', 'Upper rail', null]);
    expect(walkedSets(walk).map(({ id }) => id)).toEqual(['2', '4', '1', '3']);
  });
});

type Left = Parameters<typeof leftOf>[0];

const left = (suspension: string, state: Partial<SetState>): readonly string[] =>
  leftOf({
    lineSet: { suspension },
    recorded: { state: { ...unknownSetState, ...state } },
  } as Left);

describe('what is left of a set', () => {
  it('is everything of one that nobody has looked at, and less of one without an arbor', () => {
    expect(left('singlePurchase', {})).toEqual([
      'bricks on the arbor',
      'batten height',
      'rope lock',
      'what hangs',
      'how it is known',
    ]);
    expect(left('motor', {})).toEqual(['batten height', 'what hangs', 'how it is known']);
    expect(left('deadHung', {})).toEqual(['batten height', 'how it is known']);
  });

  it('is nothing where all was written down; but what was carried over is to be looked at', () => {
    const height = { low: metres(1), high: metres(1) };
    const counted = { ...unknownSetState.knowledge, basis: 'counted' } as const;
    const all = { stack: [], height, lock: 'closed', items: [], knowledge: counted } as const;
    expect(left('singlePurchase', all)).toEqual([]);
    const carried = { ...counted, basis: 'carriedOver' } as const;
    expect(left('singlePurchase', { ...all, knowledge: carried })).toEqual(['how it is known']);
  });
});

describe('the age of a record', () => {
  const nowMs = Date.parse('2026-11-25T14:00:00Z');
  const fourHours = known(4 * 3600, { basis: 'houseRule' });
  const house = { rules: { staleAfterSeconds: fourHours } } as Pick<House, 'rules'>;

  it('is said in minutes, hours and days, and is stale past what the house says', () => {
    const words = (at: string) => ageOf(at, house, nowMs);
    expect(words('2026-11-25T13:59:30Z')).toEqual({ words: 'just now', isStale: false });
    expect(words('2026-11-25T13:01:00Z')).toEqual({ words: '59 min old', isStale: false });
    expect(words('2026-11-25T10:00:00Z')).toEqual({ words: '4 h old', isStale: false });
    expect(words('2026-11-25T09:59:59Z')).toEqual({ words: '4 h old', isStale: true });
    expect(words('2026-11-20T14:00:00Z').words).toBe('5 days old');
  });

  it('is nothing where nobody looked, and never stale where the house has no rule', () => {
    expect(ageOf(null, house, nowMs).words).toBe('');
    const none = { rules: { staleAfterSeconds: unknownValue() } } as Pick<House, 'rules'>;
    expect(ageOf('2020-01-01T00:00:00Z', none, nowMs).isStale).toBe(false);
  });
});

describe('a tally', () => {
  const F = { kind: 'F', tag: 'show' } as const;
  const O = { kind: 'O', tag: 'pipe' } as const;

  it('counts plates from the bottom up, each kind and use a run of its own', () => {
    const stack = [O, O, F, F, F, O].reduce(withPlate, []);
    expect(stack).toEqual([
      { ...O, count: 2 },
      { ...F, count: 3 },
      { ...O, count: 1 },
    ]);
  });

  it('takes the top plate off again, and the run with its last', () => {
    const stack = [O, O, F].reduce(withPlate, []);
    expect(withoutPlate(stack)).toEqual([{ ...O, count: 2 }]);
    expect(withoutPlate(withoutPlate(stack))).toEqual([{ ...O, count: 1 }]);
    expect(withoutPlate([])).toEqual([]);
    expect(withCount(stack, 0, 7)).toEqual([
      { ...O, count: 7 },
      { ...F, count: 1 },
    ]);
    expect(withCount(stack, 0, 0)).toEqual([{ ...F, count: 1 }]);
  });
});
