/** The strike sheet: made from an order that was judged and held, and from no other. */
import { describe, expect, it } from 'vitest';
import type { CheckedOrder } from '#orders';
import { openExample } from '../examples/open-example.ts';
import { drop, inUkWords, RIGHT, strikeOf, WRONG, withOrders } from './example-orders.ts';
import { allWords, exampleContext, mustMake, rowsOf, tablesOf } from './example-sheets.ts';
import { sheetIds, sheetOf, strikeSheet } from './index.ts';

const kestlemere = exampleContext(openExample('kestlemere'));
const right = strikeOf(kestlemere, RIGHT);
const wrong = strikeOf(kestlemere, WRONG);
const context = withOrders(kestlemere, [right]);
const ID = 'strike-sheet/9';

const refusalOf = (order: CheckedOrder, set = drop(kestlemere)): string => {
  const made = strikeSheet(kestlemere, set, order);
  return made.ok ? 'made' : `${made.error.code} ${made.error.found}`;
};

describe('a strike sheet', () => {
  const sheet = mustMake(context, ID);
  const words = allWords(sheet);
  const cells = rowsOf(tablesOf(sheet)[0]);

  it('has each step under its number, with proofs and a way to give it up beside it', () => {
    const heads = cells.filter((row) => row.length === 1).map(([head]) => head);
    expect(heads).toHaveLength(RIGHT.length);
    heads.forEach((head, index) => {
      expect(head).toContain(`${index + 1}  `);
    });
    expect(words.match(/Give up: /g)).toHaveLength(RIGHT.length);
    expect(words.match(/Stop if: /g)).toHaveLength(RIGHT.length);
    expect(words).toContain('Inch test before it is flown');
    expect(words).toContain('Count the plates aloud');
  });

  /** The plan of the demo prints whole pounds (the-job.md 4.7, S4); the sheet rounds up. */
  it.each([
    ['at 24 ft', 1, 41, 'arbor heavy'],
    ['with 2 full and 1 half off', 4, 22, 'batten heavy'],
    ['on the low stop', 5, 40, 'arbor heavy'],
    ['with 4 full off', 8, 60, 'batten heavy'],
    ['with the cloth untied', 11, 49, 'batten heavy'],
  ] as const)('says what to expect %s as the plan does', (_, step, sizeLb, side) => {
    const [, after] = words.split(new RegExp(`(?:^|\\n) ${step}  `));
    const [, size, said] = /After it: (\d+) lb (\w+ heavy)/.exec(after ?? '') ?? [];
    expect([sizeLb, sizeLb + 1]).toContain(Number(size));
    expect(said).toBe(side);
  });

  it('says what was checked, what was not, what is assumed, and is no order "by the rule"', () => {
    expect(words).toMatch(/CAUTION: NOT ALL OF IT WAS CHECKED No tolerance was tried/);
    expect(words).toMatch(/Replayed step by step: .*worst single fault/);
    expect(words).toMatch(/Assumed: .*the lock grips what its limit says/);
    expect(words).toMatch(/Not checked: .*coupled sets/);
    expect(words).not.toMatch(/NOT AN ORDER OF WORK|usual rule|\bsafe/i);
    expect(words).toContain('Begin only if it stands so: batten at 60\'-6"; 10 plates');
  });

  it('warns of a look-alike where it is handled, and of a state past the planning limit', () => {
    expect(words).toMatch(/Take off 2 full, .*Look at each one: old cast looks like it\./);
    expect(words).toMatch(/41 lb arbor heavy\..*Past the planning limit of the lock: nobody/);
    expect(words).toMatch(/No hold point: the zone stays closed and empty/);
    expect(words).toMatch(/HOLD POINT: it may wait here/);
  });

  it('bears the code of its order, and is superseded by another order', () => {
    expect(sheet.title).toMatch(/^Strike sheet, order \w{4}-\w{4}$/);
    const shorter = strikeOf(kestlemere, RIGHT.slice(0, 1));
    const other = mustMake(withOrders(kestlemere, [shorter]), ID);
    expect(other.title).not.toBe(sheet.title);
    expect(other.footer.code).not.toBe(sheet.footer.code);
    expect(mustMake(context, ID)).toEqual(sheet);
  });

  it('speaks UK to a UK house, in metres', () => {
    const uk = { ...context, house: inUkWords(context.house) };
    const said = allWords(mustMake(uk, ID));
    expect(said).toMatch(/18\.\d kg cradle heavy/);
    expect(said).not.toMatch(/\b(batten|arbor|bricks?|deck|ft|lbf?)\b/i);
    expect(mustMake(uk, ID).title).toMatch(/^Get-out sheet/);
  });
});

describe('no strike sheet is made to work by', () => {
  it('without orders, and then the sheets are what they were', () => {
    expect(sheetOf(kestlemere, ID)).toBeUndefined();
    expect(sheetIds(kestlemere).some((id) => /sheet\/|permit|briefing/.test(id))).toBe(false);
    expect(sheetIds(context)).toEqual([
      ...sheetIds(kestlemere),
      ID,
      'loading-sheet/upper',
      'loading-sheet/mid',
      'unloading-sheet/upper',
      'unloading-sheet/mid',
      'permit/9',
      'briefing/load',
      'briefing/strike',
    ]);
  });

  it('[SHT-001] of an order that breaks a rule: a page says so, with the reason', () => {
    expect(refusalOf(wrong)).toBe('SHT-001 ORD-008 is broken by step 1');
    const sheet = mustMake(withOrders(kestlemere, [wrong]), ID);
    const words = allWords(sheet);
    expect(sheet.title).toBe('Strike sheet');
    expect(words).toMatch(/^NOT AN ORDER: DO NOT WORK BY THIS An order was found, and the judge/);
    expect(words).toMatch(/refuses it at step 1: .*at most 100 lb arbor heavy.*\[ORD-008\]/);
    expect(words).not.toMatch(/Give up|HOLD POINT|\bsafe/);
  });

  it('[SHT-001] of one that cannot be replayed, has no step, or lost its states', () => {
    const impossible = strikeOf(kestlemere, [
      { act: 'remove', kind: 'Z', count: 1, gallery: 'mid' },
    ]);
    expect(refusalOf(impossible)).toMatch(/^SHT-001 step 1 cannot be replayed/);
    expect(refusalOf(strikeOf(kestlemere, []))).toBe('SHT-001 the order has no step');
    const cut = { ...right, verdict: { ...right.verdict, states: right.verdict.states.slice(1) } };
    expect(refusalOf(cut)).toMatch(/^SHT-001 11 steps have 11 states/);
  });

  it('[SHT-001] of another set, another job, or with a person on it', () => {
    expect(refusalOf({ ...right, set: '11' })).toBe('SHT-001 the order is for set 11');
    expect(refusalOf({ ...right, job: 'load' })).toBe('SHT-001 the order is a load');
    const other = { ...right, physics: { ...right.physics, set: '8' } };
    expect(refusalOf(other)).toBe('SHT-001 the order is for set 8, not for set 9');
    const set = drop(kestlemere);
    const carried = set.takeoffs.map((each) => ({
      ...each,
      item: { ...each.item, carriesPerson: true },
    }));
    expect(refusalOf(right, { ...set, takeoffs: carried })).toMatch(/^SHT-001 .*out of scope/);
  });
});
