import { describe, expect, it } from 'vitest';
import clockmaker from '../../examples/kestlemere/clockmaker.show.json' with { type: 'json' };
import kestlemere from '../../examples/kestlemere/house.json' with { type: 'json' };
import { withMass } from '../editing/show-edits.ts';
import type { JsonObject } from '../keeping/json.ts';
import { type Reckoning, reckon } from '../reckoning/reckon.ts';
import { findingsApart } from './findings-apart.ts';
import { changeSentences } from './say-change.ts';
import { bricksApart, lineRows, type Side, sideRows } from './side-rows.ts';

const NOW_MS = Date.parse('2031-01-01T00:00:00Z');
const plan = clockmaker as JsonObject;

const reckoned = (show: JsonObject, before: Reckoning | null = null): Reckoning => {
  const answer = reckon({ house: kestlemere as JsonObject, show, state: null }, NOW_MS, before);
  if (!answer.ok) throw new Error(JSON.stringify(answer.error));
  return answer.value;
};

const sideOf = ({ sets, house }: Reckoning, id: string): Side => {
  const each = sets.find((one) => one.id === id);
  if (each === undefined) throw new Error(`no set ${id}`);
  return { set: each.set, house };
};

const before = reckoned(plan);
const after = reckoned(withMass(plan, '11', ['items', 0, 'takeoff', 'mass'], '700 lb'), before);
const [one, other] = [sideOf(before, '11'), sideOf(after, '11')];
const plain = (words: string): string => words.replaceAll('\u00a0', ' ');

describe('a tower that weighs 60 lb more', () => {
  const rows = sideRows(one, other, before.house);
  const row = (what: string) => rows.find((each) => each.what === what);

  it('says what hangs before and after, and how much more', () => {
    expect([row('what hangs')?.before, row('what hangs')?.after].map((each) => plain(`${each}`)))
      // As written; the tolerance is the matter of the rules.
      .toEqual(['640 lb', '700 lb']);
    expect(plain(row('what hangs')?.change ?? '')).toBe('60 lb more');
  });

  it('says which bricks more it takes', () => {
    // 60 lb of flat is 2 full and a half, 62.5 lb: the nearest to 60 in steps of 12.5.
    const apart = bricksApart(one, other) ?? [];
    const massLb = apart.reduce(
      (sum, { kind, count }) => sum + count * (kind === 'F' ? 25 : 12.5),
      0,
    );
    expect(Math.abs(massLb - 60)).toBeLessThanOrEqual(12.5);
    expect(row('show bricks')?.change).not.toBe('');
  });

  it('leaves the trims as they are', () => {
    expect(row('trim in')?.change).toBe('');
    expect(row('trim out')?.change).toBe('');
  });

  it('says what each line pulls more, and that all of them together carry the 60 lb', () => {
    const lines = lineRows(one, other, before.house)?.rows ?? [];
    expect(lines).toHaveLength(6);
    const more = lines.reduce((sum, { change }) => {
      const [, pounds = '0', way = 'more'] = /^([\d.]+).*(more|less)$/.exec(plain(change)) ?? [];
      return sum + Number(pounds) * (way === 'more' ? 1 : -1);
    }, 0);
    // Each of six figures is rounded up by less than a pound.
    expect(more).toBeGreaterThan(60 - 6);
    expect(more).toBeLessThan(60 + 6);
  });

  it('says it in sentences, bricks and hand pull first', () => {
    const changes = findingsApart(before.findings, after.findings);
    const said = changeSentences(one, other, changes).map(plain);
    expect(said[0]).toBe('3 full bricks more (25 lb each), 1 half brick fewer (12 1/2 lb each).');
    expect(said[1]).toMatch(/^Hand pull to start it at most \d+ lbf, (was \d+ lbf|as it was)\.$/);
    // Heavier, it is held even less while its foot stands on the deck.
    expect(said.join(' ')).toContain('Worse, set 11: Not held by the lock below lift-off');
  });

  it('says that nothing changes where nothing does', () => {
    expect(sideRows(one, one, before.house).every(({ change }) => change === '')).toBe(true);
    expect(changeSentences(one, one, [])).toContain('No check changes.');
  });
});
