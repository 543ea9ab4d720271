/** The loading sheet of a gallery: visits in their order, and what is loose before and after. */
import { describe, expect, it } from 'vitest';
import { openExample } from '../examples/open-example.ts';
import { RIGHT, strikeOf, WRONG } from './example-orders.ts';
import { allWords, exampleContext, mustMake, rowsOf, tableNamed } from './example-sheets.ts';
import { loadingSheet, sheetIds, sheetOf } from './index.ts';

const kestlemere = exampleContext(openExample('kestlemere'));
const right = strikeOf(kestlemere, RIGHT);
const context = { ...kestlemere, orders: [right] };
const loose = (gallery: string, kind: string): number =>
  right.physics.galleries.find(({ id }) => id === gallery)?.stock[kind] ?? Number.NaN;

describe('a loading sheet', () => {
  const mid = mustMake(context, 'loading-sheet/mid');
  const upper = mustMake(context, 'loading-sheet/upper');

  it('has a line for each visit, with height, plates on the arbor and what is here', () => {
    const [half, full] = rowsOf(tableNamed(mid, 'Visit'));
    const [H, F] = [loose('mid', 'H'), loose('mid', 'F')];
    // Ten plates to begin with: 3 of pipe weight, 6 full, 1 half (the-job.md 4.7, S4).
    expect(half?.slice(0, 3)).toEqual(['1', '9, step 3', '24\'-0"']);
    expect(half?.[3]).toContain('OFF 1 half.');
    expect(half?.slice(4, 7)).toEqual(['9', `${H}`, `${H + 1}`]);
    expect(full?.[3]).toContain('OFF 2 full.  Not old cast.');
    expect(full?.slice(4, 7)).toEqual(['7', `${F}`, `${F + 2}`]);
    expect(rowsOf(tableNamed(upper, 'Visit'))).toHaveLength(1);
  });

  it('has a box to tally each brick', () => {
    const cells = tableNamed(upper, 'Visit')?.rows[0]?.cells[3] ?? [];
    expect(cells.filter((each) => typeof each !== 'string' && 'box' in each)).toHaveLength(4);
  });

  it('bears the code of each order, what was checked and what was not', () => {
    expect(allWords(mid)).toMatch(/Orders: set 9 Harbour drop, strike, \w{4}-\w{4}\./);
    expect(allWords(mid)).toMatch(/NOT ALL OF IT WAS CHECKED/);
    expect(allWords(mid)).not.toMatch(/NOT AN ORDER OF WORK|\bsafe/i);
    expect(mustMake(context, 'loading-sheet/mid')).toEqual(mid);
  });

  it('takes an order that was judged again once, as it was judged last', () => {
    const again = { ...kestlemere, orders: [strikeOf(kestlemere, RIGHT.slice(0, 3)), right] };
    expect(mustMake(again, 'loading-sheet/mid')).toEqual(mid);
  });
});

describe('no loading sheet is made', () => {
  it('without an order, or for a gallery that no order goes to', () => {
    expect(sheetOf(kestlemere, 'loading-sheet/mid')).toBeUndefined();
    const short = { ...kestlemere, orders: [strikeOf(kestlemere, RIGHT.slice(0, 4))] };
    expect(sheetIds(short).filter((id) => id.startsWith('loading'))).toEqual(['loading-sheet/mid']);
    expect(sheetOf(short, 'loading-sheet/upper')).toBeUndefined();
  });

  it('[SHT-001] while one of the orders of the call is broken', () => {
    const broken = { ...strikeOf(kestlemere, WRONG), job: 'change' as const };
    const made = loadingSheet(kestlemere, 'upper', [right, broken]);
    expect(made.ok ? '' : `${made.error.code} ${made.error.found}`).toBe(
      'SHT-001 set 9: ORD-008 is broken by step 1',
    );
    expect(sheetIds({ ...kestlemere, orders: [right, broken] }).join()).not.toContain('loading');
  });

  it('[SHT-001] where the bricks do not last for one order after the other', () => {
    const step = { act: 'add', kind: 'H', count: loose('mid', 'H') + 2, gallery: 'mid' } as const;
    const state = right.verdict.states[0];
    if (state === undefined) throw new Error('the order has a start');
    // A judge sees one order at a time; that two of them share the stock shows only here.
    const verdict = { ...right.verdict, states: [state, state], proofsDue: [] };
    const later = { ...right, job: 'load' as const, steps: [step], verdict };
    const made = loadingSheet(kestlemere, 'mid', [right, later]);
    expect(made.ok ? '' : made.error.found).toBe(
      `set 9, step 1 wants ${step.count} half, and ${loose('mid', 'H') + 1} are there`,
    );
    expect(sheetIds({ ...kestlemere, orders: [right, later] })).not.toContain('loading-sheet/mid');
  });
});
