import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { heard } from './heard.ts';

const examples = join(import.meta.dirname, '..', 'examples', 'skelderwick');
const HOUSE = join(examples, 'house.json');
const SHOW = join(examples, 'regatta.show.json');
const folder = mkdtempSync(join(tmpdir(), 'counterpoise-diff-'));
afterAll(() => rmSync(folder, { recursive: true }));

const changed = (file: string, name: string, change: (text: string) => string): string => {
  const path = join(folder, name);
  writeFileSync(path, change(readFileSync(file, 'utf8')));
  return path;
};

describe('diff', () => {
  it('says in the words of the house what differs, and counts it', async () => {
    const next = changed(HOUSE, 'next.json', (text) =>
      text
        .replace('"openingWidth": "10 m"', '"openingWidth": "10.2 m"')
        .replace('"thickness": "18 mm"', '"thickness": { "unknown": "two castings" }'),
    );
    const { out, err, code } = await heard('diff', HOUSE, next);
    expect(err).toBe('');
    expect(out).toBe(
      'Stage: width of the opening 10.2 m, was 10 m\n' +
        'Weight kind half: thickness unknown (two castings), was 18 mm\n' +
        '2 places differ.\n',
    );
    expect(code).toBe(0);
  });

  it('says that nothing differs, and answers as JSON', async () => {
    expect((await heard('diff', SHOW, SHOW)).out).toBe('0 places differ.\n');
    const { out } = await heard('diff', SHOW, SHOW, '--json');
    expect(JSON.parse(out)).toEqual({ groups: [] });
  });

  it('lists the values of what was added', async () => {
    const without = changed(SHOW, 'without.json', (text) => {
      const show = JSON.parse(text) as { hangs: unknown[] };
      return JSON.stringify({ ...show, hangs: show.hangs.slice(1) });
    });
    const { out } = await heard('diff', without, SHOW, '--words', 'UK');
    expect(out).toMatch(/^Set \S+, .*hangs here; nothing hung here before\n {2}set \S+\n/);
  });

  it('[CLI-016] refuses two documents of two kinds', async () => {
    const { err, code } = await heard('diff', HOUSE, SHOW);
    expect(err).toContain('[CLI-016]');
    expect(code).toBe(2);
  });

  it('refuses what is no document, before it compares', async () => {
    const broken = changed(SHOW, 'broken.json', (text) =>
      text.replace('"version": 1', '"version": 9'),
    );
    const answer = await heard('diff', SHOW, broken);
    expect(answer.code).toBe(2);
    expect(answer.err).toContain('[DOC-');
    expect(answer.out).toBe('');
    expect((await heard('diff', SHOW, join(folder, 'none.json'))).err).toContain('[CLI-001]');
  });
});
