/** The loading sheet of a gallery: visits in their order, and what is loose before and after. */
import { describe, expect, it } from 'vitest';
import { openExample } from '../examples/open-example.ts';
import { RIGHT, strikeOf, WRONG, withOrders } from './example-orders.ts';
import { allWords, exampleContext, mustMake, rowsOf, tableNamed } from './example-sheets.ts';
import { loadingSheet, sheetOf } from './index.ts';

const kestlemere = exampleContext(openExample('kestlemere'));
const right = strikeOf(kestlemere, RIGHT);
const context = withOrders(kestlemere, [right]);
const loose = (gallery: string, kind: string): number =>
  right.physics.galleries.find(({ id }) => id === gallery)?.stock[kind] ?? Number.NaN;

describe('a loading sheet', () => {
  const mid = mustMake(context, 'unloading-sheet/mid');
  const upper = mustMake(context, 'unloading-sheet/upper');

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
    expect(mustMake(context, 'unloading-sheet/mid')).toEqual(mid);
  });

  it('names the sets of the call that have no order, before anything else', () => {
    const broken = { ...strikeOf(kestlemere, WRONG), job: 'change' as const };
    const left = [{ set: '11', why: 'None exists.' }];
    const made = loadingSheet(kestlemere, { gallery: 'mid', work: 'strike', left }, [
      right,
      broken,
    ]);
    if (!made.ok) throw new Error(made.error.found);
    expect(allWords(made.value)).toMatch(
      /^NOT ON THIS SHEET: SETS 11, 9 Nobody loads them by this/,
    );
    expect(allWords(made.value)).toContain('Set 11: None exists. Set 9: ORD-008 is broken by step');
    expect(rowsOf(tableNamed(made.value, 'Visit'))).toHaveLength(2);
  });

  it('[trap 11] shows what is kept for other work, and lets nobody take it', () => {
    const kept = [{ kind: 'F', count: loose('mid', 'F'), for: 'releasing D3' }];
    const assumed = [{ is: 'stockKept', gallery: 'mid', kept } as const];
    const [start] = right.verdict.states;
    if (start === undefined) throw new Error('the order has a start');
    const step = { act: 'add', kind: 'F', count: 3, gallery: 'mid' } as const;
    const verdict = { ...right.verdict, states: [start, start], proofsDue: [] };
    const takes = { ...right, job: 'load' as const, steps: [step], verdict, assumed };
    const call = { gallery: 'mid', work: 'load' } as const;
    // Two full came back in the strike before it, and two may be taken.
    const after = loadingSheet(kestlemere, call, [right, takes]);
    if (!after.ok) throw new Error(after.error.found);
    expect(allWords(after.value)).toContain('Set 9: step 1 wants 3 full, and 2 may be taken.');
    const two = { ...takes, steps: [{ ...step, count: 2 }] };
    const made = loadingSheet(kestlemere, call, [right, two]);
    if (!made.ok) throw new Error(made.error.found);
    expect(allWords(made.value)).toContain('Lies here and is not taken: 19 full (releasing D3).');
    expect(rowsOf(tableNamed(made.value, 'Visit'))).toHaveLength(3);
  });

  it('has bricks of bare sets brought and counted first, each only once', () => {
    const [start] = right.verdict.states;
    if (start === undefined) throw new Error('the order has a start');
    const steps = [
      { act: 'add', kind: 'O', count: 3, gallery: 'upper' },
      { act: 'add', kind: 'O', count: 2, gallery: 'mid' },
    ] as const;
    const verdict = { ...right.verdict, states: [start, start, start], proofsDue: [] };
    const back = { is: 'bricksBack', set: '9', bricks: [{ kind: 'O', count: 4 }] } as const;
    const load = { ...right, job: 'load' as const, steps, verdict, assumed: [back] };
    const brought = (gallery: string): string => {
      const made = loadingSheet(kestlemere, { gallery, work: 'load' }, [load]);
      return made.ok ? allWords(made.value) : made.error.found;
    };
    expect(brought('upper')).toContain('Bring here and count first: 3 old cast.');
    // One of the four is left for here, where none lies and two are wanted.
    expect(brought('mid')).toContain('step 2 wants 2 old cast, and 1 may be taken');
  });
});

describe('no loading sheet is made', () => {
  it('without an order; for a gallery that no order goes to a page says so', () => {
    expect(sheetOf(kestlemere, 'loading-sheet/mid')).toBeUndefined();
    expect(sheetOf(context, 'loading-sheet/grid')).toBeUndefined();
    const short = withOrders(kestlemere, [strikeOf(kestlemere, RIGHT.slice(0, 4))]);
    expect(allWords(mustMake(short, 'unloading-sheet/upper'))).toMatch(
      /^NOT AN ORDER: DO NOT WORK BY THIS No order has bricks handled here\./,
    );
  });

  it('[SHT-001] of orders of which none may be worked by', () => {
    const broken = strikeOf(kestlemere, WRONG);
    const made = loadingSheet(kestlemere, { gallery: 'upper', work: 'strike' }, [broken]);
    expect(made.ok ? '' : `${made.error.code} ${made.error.found}`).toBe(
      'SHT-001 no order has bricks handled there; set 9: ORD-008 is broken by step 1',
    );
  });

  it('[SHT-001] where the bricks do not last', () => {
    const step = { act: 'add', kind: 'H', count: loose('mid', 'H') + 2, gallery: 'mid' } as const;
    const state = right.verdict.states[0];
    if (state === undefined) throw new Error('the order has a start');
    // A judge sees one order at a time; that two of them share the stock shows only here.
    const verdict = { ...right.verdict, states: [state, state], proofsDue: [] };
    const later = { ...right, job: 'load' as const, steps: [step], verdict };
    const made = loadingSheet(kestlemere, { gallery: 'mid', work: 'load' }, [later]);
    expect(made.ok ? '' : made.error.found).toBe(
      'no order has bricks handled there; ' +
        `set 9: step 1 wants ${step.count} half, and ${loose('mid', 'H')} may be taken`,
    );
  });
});
