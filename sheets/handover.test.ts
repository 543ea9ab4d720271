import { describe, expect, it } from 'vitest';
import { metres, newtons } from '#quantities';
import type { Restraint, SetNow, Standing } from '#state';
import { openExample } from '../examples/open-example.ts';
import { openedNow, withSets } from './example-now.ts';
import { feet } from './example-orders.ts';
import { allWords, exampleContext, mustMake, rowsOf, tableNamed } from './example-sheets.ts';
import { answerCode, type SheetContext } from './index.ts';

const context = exampleContext(openExample('kestlemere'));
const opened = openedNow(context);

const standingOf = (set: string): Standing => {
  const standing = opened.sets[set]?.standing;
  if (standing == null) throw new Error(`set ${set} is known in the example`);
  return standing;
};

const wordsWith = (changes: Readonly<Record<string, Partial<SetNow>>>): string =>
  allWords(mustMake({ ...context, now: withSets(opened, changes) }, 'handover'));

const noticesOf = (made: SheetContext): readonly string[] =>
  mustMake(made, 'handover').blocks.flatMap((block) =>
    block.kind === 'notice' ? [`${block.degree}: ${block.heading}`] : [],
  );

describe('the handover note', () => {
  it('says of a house as planned that it is so, and ends at the rail', () => {
    const words = wordsWith({});
    expect(words).toContain('Made from the record of the call that was opened at 25 Nov 2026');
    expect(words).toContain('None of those that are known.');
    expect(words).not.toMatch(/NOT HELD|STOP NOT LIFTED|Bare, and planned/);
    const blocks = mustMake({ ...context, now: opened }, 'handover').blocks;
    expect(blocks.at(-3)).toMatchObject({ heading: 'Verified by both at the rail' });
    expect(blocks.slice(-2).map((block) => block.kind)).toEqual(['text', 'text']);
  });

  it('names each set that is otherwise, and in what', () => {
    const eleven = standingOf('11');
    const words = wordsWith({
      '11': { standing: { ...eleven, height: feet(23.25), stack: eleven.stack.slice(0, 2) } },
      '9': { standing: { ...standingOf('9'), height: feet(40), items: {} } },
      '17': {
        standing: {
          ...standingOf('17'),
          height: feet(3),
          items: {},
          stack: standingOf('17').stack.slice(0, 1),
        },
      },
      '5': { lock: 'open', ring: 'off', collar: 'loose', lockDoubt: 'the rope is wet' },
      '36': {
        plan: {
          seq: 9,
          job: 'strike',
          done: 1,
          steps: [{ act: 'hangOnSteel' }, { act: 'rest', item: 'bridge' }],
        },
      },
    });
    // 23'-3" is within half a foot of the trim at 23', so only the bricks are told.
    expect(words).toContain(
      '11 | Clock tower flat | show bricks 25 full, planned 25 full, 1 half.',
    );
    expect(words).toContain(
      '9 | Harbour drop | stands at 40\'-0", planned in 28\'-3", out 60\'-6"; not on it: Harbour',
    );
    expect(words).toContain('Bare, and planned to hang: 17.');
    expect(words).toContain(
      'LOCK OPEN; RING OFF; COLLAR LOOSE; its lock is not to be trusted: the',
    );
    expect(words).toContain('strike: 1 of 2 steps done.');
  });

  it('puts first what nothing holds, what nobody knows, and a STOP', () => {
    const now = {
      ...withSets(opened, {
        '11': { held: 'unheld', rule: 'LOD-005' },
        '9': { standing: null, doubt: 'two counts differ: 10 bricks in the record, 9 counted' },
      }),
      stops: [
        {
          ...{ seq: 70, by: 'p-1', device: 'd-1', post: 'deck', set: null, words: 'a rope fell' },
          ...{ atMs: Date.parse('2026-11-25T17:00:00Z'), heard: {}, isAgreed: false },
        },
      ],
    };
    const [, ...first] = noticesOf({ ...context, now });
    expect(first.slice(0, 3)).toEqual([
      'caution: STOP NOT LIFTED: EVERYTHING',
      'danger: NOT HELD: SET 11',
      'caution: NOT KNOWN: SET 9',
    ]);
    const words = allWords(mustMake({ ...context, now }, 'handover'));
    expect(words).toContain('a rope fell');
    expect(words).toContain('It breaks LOD-005');
    expect(words).toContain('two counts differ: 10 bricks in the record, 9 counted. Last known:');
    expect(words).toContain('Whether any lie elsewhere is not known');
  });

  it('keeps the register of restraints, also of a set that is not known', () => {
    const line: Restraint = {
      ...{ kind: 'bullLine', resists: 'out', rating: newtons(2300), owner: 'Kit Marsh' },
      ...{ from: metres(1), to: metres(4.6), tag: '14' },
    };
    const last = { ...standingOf('36'), restraints: [line] };
    const now = withSets(opened, { '36': { standing: null, last, doubt: 'touched' } });
    const rows = rowsOf(tableNamed(mustMake({ ...context, now }, 'handover'), 'Set'));
    expect(rows.map(([set, what, owner, tag]) => [set, what?.slice(0, 28), owner, tag])).toEqual([
      ['36', 'bull line against going out,', 'Kit Marsh', '14'],
      ['D3', 'steel to hang the set on aga', 'head flyperson', 'none'],
    ]);
    expect(rows[0]?.[1]).toContain('as last known: look for it');
  });

  it('holds loose bricks against what lay there, what is kept back, and what is owned', () => {
    const galleries = {
      upper: { stock: { F: 14, H: 12, O: 21 }, countedMs: 0, countedBy: null },
      mid: { stock: { F: 15, H: 10 }, countedMs: 0, countedBy: null },
    };
    const sheet = mustMake({ ...context, now: { ...opened, galleries } }, 'handover');
    expect(rowsOf(tableNamed(sheet, 'Gallery'))).toEqual([
      ['Upper loading gallery', 'full', '10', '14', '4 more', 'none'],
      ['Upper loading gallery', 'half', '12', '12', 'none', 'none'],
      ['Upper loading gallery', 'old cast', '21', '21', 'none', 'none'],
      ['Mid loading gallery', 'full', '19', '15', '4 fewer', '19, and 4 short'],
      ['Mid loading gallery', 'half', '12', '10', '2 fewer', 'none'],
      ['Mid loading gallery', 'old cast', '0', 'not counted', 'not counted', 'none'],
    ]);
  });

  it('says which bricks no count accounts for', () => {
    const mid = { stock: { F: 19, H: 11, O: 0 }, countedMs: 0, countedBy: null };
    const now = { ...opened, galleries: { ...opened.galleries, mid } };
    expect(allWords(mustMake({ ...context, now }, 'handover'))).toContain(
      '40 half owned, 39 counted: 1 lie elsewhere.',
    );
  });

  it('gives every count its age and author, and what is too old its word', () => {
    const words = wordsWith({
      '17': {
        knowledge: { basis: 'counted', at: '2026-11-25T17:40:00Z', by: 'p-1', second: 'Bo Lind' },
      },
    });
    // Printed at 18:55 an hour east of Greenwich, fifteen minutes after the count.
    expect(words).toContain('17 | counted | 15 min | p-1, Bo Lind');
    // What was recorded before the call is as old as at the hour of the demo's record, 14:31 UTC.
    expect(words).toMatch(/40 \| counted \| STALE, 1 d 0 h \| upper loader lead, head flyperson/);
    expect(words).toMatch(/33 to 39 \| counted \| 47 min to 1 h 26 min \| upper loader lead/);
    expect(words).toContain('Mid loading gallery | counted | 19 min | mid loader lead');
  });

  it('says what two people set aside, and paper that nobody has settled', () => {
    const words = wordsWith({
      '36': {
        notes: [12, 15],
        overrides: [
          {
            ...{ why: 'one watcher is ill', rules: ['CAL-009'], seq: 40 },
            first: { by: 'p-1', device: 'd-1' },
            second: { is: 'paper', name: 'Kit Marsh' },
          },
        ],
      },
    });
    expect(words).toContain('Set 36: 2 notes, number 12, 15 in the record.');
    expect(words).toContain('CAL-009 set aside by p-1 and Kit Marsh: one watcher is ill');
  });

  it('is made from the document where no call is open, and says where nothing is', () => {
    expect(allWords(mustMake(context, 'handover'))).toContain('No call is open. Made from the');
    const nothing = exampleContext({ ...openExample('kestlemere'), state: null });
    expect(noticesOf(nothing)).toContain('caution: NOTHING IS RECORDED');
  });

  it('is another sheet after a brick more, and the same one at another minute', () => {
    const sheet = mustMake({ ...context, now: opened }, 'handover');
    const later = { ...context.stamp, printedAt: '2026-11-25T19:10:00+01:00' };
    const asLater = { ...context, stamp: later, now: { ...opened, seq: 99 } };
    expect(answerCode(asLater, 'handover', sheet.footer.code)).toBe('current');
    const moved = withSets(opened, {
      '17': { standing: { ...standingOf('17'), height: feet(50) } },
    });
    expect(answerCode({ ...context, now: moved }, 'handover', sheet.footer.code)).toBe(
      'superseded',
    );
  });

  it('of a drill says on its frame that it is one', () => {
    const call = opened.call === null ? null : { ...opened.call, isDrill: true };
    const { frame } = mustMake({ ...context, now: { ...opened, call } }, 'handover');
    expect(frame).toBe('DRILL: for practice, none of this happened');
  });
});
