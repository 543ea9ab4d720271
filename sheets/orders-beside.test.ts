/** A right and a wrong order side by side: what each breaks, and what each would set free. */
import { describe, expect, it } from 'vitest';
import { openExample } from '../examples/open-example.ts';
import { RIGHT, strikeOf, WRONG } from './example-orders.ts';
import { exampleContext } from './example-sheets.ts';
import { ordersBeside } from './index.ts';

const context = exampleContext(openExample('kestlemere'));
const named = { house: context.house, nameOf: () => 'Harbour drop' };
const plain = (text: string | undefined): string => (text ?? '').replaceAll('\u00A0', ' ');

/** Any number will do here, as long as it tells one standing from the next. */
const releasableJ = ({ height }: { readonly height: number }): number => 100 * height;

const right = strikeOf(context, RIGHT);
const wrong = strikeOf(context, WRONG);
const { rows, left, right: other } = ordersBeside(right, wrong, named);

describe('two orders of one job', () => {
  it('stand in rows of one number, with nothing beside the end of the longer', () => {
    expect(rows.map(({ number }) => number)).toEqual([...Array(RIGHT.length + 1).keys()]);
    expect(rows[0]?.left?.title).toBe('Now');
    expect(rows[0]?.right).toEqual(rows[0]?.left);
    expect(rows.filter((row) => row.right === null)).toHaveLength(RIGHT.length - WRONG.length);
    expect(rows.every((row) => row.left?.isBroken === false)).toBe(true);
  });

  it('say in words where the wrong one is not held, and by which rule', () => {
    const [, first, second] = rows;
    expect(plain(first?.right?.title)).toBe('In to 4\'-0"');
    expect(first?.right?.isBroken).toBe(true);
    expect(plain(first?.right?.held)).toMatch(
      /^Danger, ORD-008: .*at most 100 lb arbor heavy, at 4'-0", where the rope lock holds 50 lbf/,
    );
    // Closing a zone breaks nothing, but the set is still as the step before left it.
    expect(second?.right?.isBroken).toBe(true);
    expect(second?.right?.held).toBe('NOT HELD: as the step before it left it.');
  });

  it('sum each up, and say where energy was not reckoned', () => {
    expect(left).toBe('Replayed to its end, nothing broken. Energy not reckoned.');
    expect(other).toBe('Breaks ORD-008 at step 1. Energy not reckoned.');
    expect(rows.every((row) => row.left?.energy === null)).toBe(true);
  });

  it('give the energy of each step and the most of all where it was reckoned', () => {
    const given = { releasableJ };
    const both = ordersBeside(
      strikeOf(context, RIGHT, given),
      strikeOf(context, WRONG, given),
      named,
    );
    // 100 J a metre: 1,844.04 J at 60'-6", which is the highest that either of them stands.
    expect(both.rows[0]?.left?.energyJ).toBeCloseTo(1844.04, 2);
    expect(plain(both.rows[0]?.left?.energy ?? '')).toMatch(/^1\.85 kJ, as 1 full let fall /);
    expect(plain(both.left)).toMatch(/The most that it could set free: 1\.85 kJ, as 1 full/);
  });

  it('say that a step cannot be replayed', () => {
    const impossible = strikeOf(context, [{ act: 'release', item: 'nothing' }]);
    const beside = ordersBeside(right, impossible, named);
    expect(beside.right).toMatch(/^Step 1 cannot be replayed\./);
    expect(beside.rows[1]?.right).toBeNull();
  });
});
