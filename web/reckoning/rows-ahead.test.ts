import { describe, expect, it } from 'vitest';
import clockmaker from '../../examples/kestlemere/clockmaker.show.json' with { type: 'json' };
import kestlemere from '../../examples/kestlemere/house.json' with { type: 'json' };
import { withField } from '../editing/show-edits.ts';
import type { JsonObject } from '../keeping/json.ts';
import { asSaved, type Open } from '../keeping/kept.ts';
import { type Reckoning, reckon } from './reckon.ts';
import { RowsAhead } from './rows-ahead.ts';

const SHOW = clockmaker as JsonObject;
const IDS = { house: 'house:k', show: 'show:c', state: null };

const kept = (id: string, kind: 'house' | 'show', document: JsonObject) =>
  asSaved({ id, kind, revision: 1, savedAt: '', savedBy: '', why: '', remark: '', document });

const openWith = (show: JsonObject): Open => ({
  phase: 'open',
  asOf: null,
  databases: { inHand: 'demo', hasHouse: false },
  documents: {
    [IDS.house]: kept(IDS.house, 'house', kestlemere as JsonObject),
    [IDS.show]: kept(IDS.show, 'show', show),
  },
  history: { past: [], future: [] },
  keptOnDevice: true,
});

const reckoned = (show: JsonObject, before: Reckoning | null = null): Reckoning => {
  const answer = reckon({ house: kestlemere as JsonObject, show, state: null }, 0, before);
  if (!answer.ok) throw new Error(JSON.stringify(answer.error));
  return answer.value;
};

const named = (show: JsonObject, set: string, name: string): JsonObject =>
  withField(show, set, ['name'], name);

const settled = () => {
  const rows = new RowsAhead();
  const before = reckoned(SHOW);
  rows.settle({ reckoning: before, ids: IDS });
  let heard = 0;
  rows.subscribe(() => {
    heard += 1;
  });
  return { rows, before, heard: () => heard };
};

const nameOn = (rows: RowsAhead, set: string): string | undefined => rows.row(set)?.set.hang?.name;

describe('rows ahead of their page', () => {
  it('say what was changed until the page says it', () => {
    const { rows, before, heard } = settled();
    const next = named(SHOW, '5', 'Another');
    expect(rows.answer(openWith(next))).toBe(true);
    expect(heard()).toBe(1);
    expect(nameOn(rows, '5')).toBe('Another');
    expect(rows.row('6')).toBeNull();
    rows.settle({ reckoning: reckoned(next, before), ids: IDS });
    expect(rows.row('5')).toBeNull();
  });

  it('stand over the rows of the page for who copies or fills right after an edit', () => {
    const { rows, before } = settled();
    rows.answer(openWith(named(SHOW, '5', 'Just typed')));
    const over = rows.over(before.sets);
    expect(over.map(({ id }) => id)).toEqual(before.sets.map(({ id }) => id));
    expect(over.find(({ id }) => id === '5')?.set.hang?.name).toBe('Just typed');
    expect(over.filter((each, at) => each !== before.sets[at])).toHaveLength(1);
  });

  it('stay where more was typed than the page has come to', () => {
    const { rows, before } = settled();
    const first = named(SHOW, '5', 'One');
    const second = named(first, '5', 'Two');
    rows.answer(openWith(first));
    expect(rows.answer(openWith(second))).toBe(true);
    rows.settle({ reckoning: reckoned(first, before), ids: IDS });
    expect(nameOn(rows, '5')).toBe('Two');
  });

  it('go where the change is undone, or touches more than rows', () => {
    const { rows } = settled();
    rows.answer(openWith(named(SHOW, '5', 'One')));
    expect(rows.answer(openWith(SHOW))).toBe(false);
    expect(rows.row('5')).toBeNull();
    rows.answer(openWith(named(SHOW, '5', 'One')));
    expect(rows.answer(openWith({ ...SHOW, cues: [] }))).toBe(false);
    expect(rows.row('5')).toBeNull();
  });

  it('answer nothing where the page shows no rows', () => {
    const { rows } = settled();
    rows.answer(openWith(named(SHOW, '5', 'One')));
    rows.settle(null);
    expect(rows.row('5')).toBeNull();
    expect(rows.answer(openWith(named(SHOW, '5', 'Two')))).toBe(false);
  });
});
