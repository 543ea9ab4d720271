import { cpSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { type FirstDocument, openDatabases } from './databases.ts';
import type { Save } from './log/index.ts';

const FIRST: readonly FirstDocument[] = [
  { id: 'house:a', kind: 'house', text: '{}' },
  { id: 'show:a', kind: 'show', text: '{}' },
];

const save: Save = {
  ...{ id: 'show:a', kind: 'show', text: '{"n":2}', expectedRevision: 1 },
  ...{ savedAt: '2026-11-28', savedBy: 'TD', why: 'edited', remark: '' },
};

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'counterpoise-databases-'));
});
afterEach(() => rmSync(folder, { recursive: true }));

const open = (name: string, first = FIRST) =>
  openDatabases(join(folder, name), first, () => new Date(5000));

describe('the databases of a folder', () => {
  it('have a record each, with its own keys and events', () => {
    const databases = open('one');
    const demo = databases.record().identity();
    expect(databases.log().head()).toMatchObject({ seq: 2, atMs: 5000 });
    databases.take('house', [FIRST[0] as FirstDocument]);
    expect(databases.log().head().seq).toBe(1);
    expect(databases.record().identity().houseKey).not.toBe(demo.houseKey);
    databases.take('demo', []);
    expect(databases.record().identity()).toEqual(demo);
    expect(databases.log().head().seq).toBe(2);
    databases.close();
  });

  it('[EVT-010] that were copied with their folder are shown, and take nothing', () => {
    open('one').close();
    cpSync(join(folder, 'one'), join(folder, 'two'), { recursive: true });
    // A newer program has one more document for the demo; it does not go into a copy.
    const copied = open('two', [...FIRST, { id: 'show:b', kind: 'show', text: '{}' }]);
    expect(copied.store().list()).toHaveLength(2);
    expect(copied.record().identity()).toMatchObject({ isRecord: false });
    expect(() => copied.store().save(save)).toThrow('readOnly');
    copied.close();
    const first = open('one');
    expect(first.store().save(save).ok).toBe(true);
    first.close();
  });
});
