import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { DocumentStore, Save } from './document-store.ts';

const save = (changes: Partial<Save> = {}): Save => ({
  id: 'house:one',
  kind: 'house',
  text: '{"first":true}',
  expectedRevision: 0,
  savedAt: '2026-11-25T10:00:00.000Z',
  savedBy: 'head flyman',
  why: 'surveyed',
  remark: '',
  ...changes,
});

/** What every store of documents must do, whatever keeps it. */
export const documentStoreContract = (name: string, open: () => DocumentStore): void => {
  describe(`document store: ${name}`, () => {
    let store: DocumentStore;
    beforeEach(() => {
      store = open();
    });
    afterEach(() => store.close());

    it('gives back what was saved, with who and why', () => {
      const saved = store.save(save());
      expect(saved).toEqual({
        ok: true,
        value: {
          id: 'house:one',
          kind: 'house',
          revision: 1,
          savedAt: '2026-11-25T10:00:00.000Z',
          savedBy: 'head flyman',
          why: 'surveyed',
          remark: '',
        },
      });
      expect(store.current('house:one')?.text).toBe('{"first":true}');
    });

    it('refuses a save that saw an older revision, and changes nothing', () => {
      store.save(save());
      store.save(save({ expectedRevision: 1, text: '{"second":true}' }));
      const stale = store.save(save({ expectedRevision: 1, text: '{"lost":true}' }));
      expect(stale.ok).toBe(false);
      expect(stale).toMatchObject({ error: { reason: 'stale', current: { revision: 2 } } });
      expect(store.current('house:one')?.text).toBe('{"second":true}');
      expect(store.revisions('house:one')).toHaveLength(2);
    });

    it('refuses a first save that expects a revision, and a new document twice', () => {
      expect(store.save(save({ expectedRevision: 3 })).ok).toBe(false);
      expect(store.current('house:one')).toBeNull();
      store.save(save());
      expect(store.save(save()).ok).toBe(false);
    });

    it('keeps every revision, newest first, and each text as it was', () => {
      store.save(save());
      store.save(save({ expectedRevision: 1, text: '{"second":true}', why: 'weighed again' }));
      expect(store.revisions('house:one').map(({ revision }) => revision)).toEqual([2, 1]);
      expect(store.revision('house:one', 1)?.text).toBe('{"first":true}');
      expect(store.revision('house:one', 2)?.why).toBe('weighed again');
      expect(store.revision('house:one', 3)).toBeNull();
    });

    it('lists the current revision of each document', () => {
      store.save(save());
      store.save(save({ id: 'show:a', kind: 'show' }));
      store.save(save({ id: 'show:a', kind: 'show', expectedRevision: 1 }));
      expect(store.list().map(({ id, revision }) => [id, revision])).toEqual([
        ['house:one', 1],
        ['show:a', 2],
      ]);
    });

    it('keeps what a person wrote to find a revision by', () => {
      store.save(save({ remark: 'as hung on Tuesday' }));
      store.save(save({ expectedRevision: 1 }));
      expect(store.revisions('house:one').map(({ remark }) => remark)).toEqual([
        '',
        'as hung on Tuesday',
      ]);
      expect(store.revision('house:one', 1)?.remark).toBe('as hung on Tuesday');
    });

    const shelving = (isAside: boolean) => ({
      id: 'show:a',
      isAside,
      at: '2026-11-26T09:00:00.000Z',
      by: 'TD',
      why: 'the run is over',
    });

    it('sets a document aside with who and why, and keeps its history', () => {
      store.save(save());
      store.save(save({ id: 'show:a', kind: 'show' }));
      expect(store.shelve(shelving(true))).toBe(true);
      expect(store.list().map(({ id }) => id)).toEqual(['house:one']);
      expect(store.listAside()).toMatchObject([
        {
          id: 'show:a',
          revision: 1,
          why: 'surveyed',
          asideAt: '2026-11-26T09:00:00.000Z',
          asideBy: 'TD',
          asideWhy: 'the run is over',
        },
      ]);
      expect(store.revisions('show:a')).toHaveLength(1);
      expect(store.current('show:a')?.text).toBe('{"first":true}');
    });

    it('takes a document back, as often as it is set aside', () => {
      store.save(save({ id: 'show:a', kind: 'show' }));
      for (const isAside of [true, false, true, false]) {
        expect(store.shelve(shelving(isAside))).toBe(true);
        expect(store.list()).toHaveLength(isAside ? 0 : 1);
        expect(store.listAside()).toHaveLength(isAside ? 1 : 0);
      }
    });

    it('notes nothing where nothing changes', () => {
      expect(store.shelve(shelving(true))).toBe(false);
      store.save(save({ id: 'show:a', kind: 'show' }));
      expect(store.shelve(shelving(false))).toBe(false);
      store.shelve(shelving(true));
      expect(store.shelve({ ...shelving(true), why: 'again' })).toBe(false);
      expect(store.listAside()[0]?.asideWhy).toBe('the run is over');
    });

    it('keeps text that would end a statement of its own language', () => {
      const text = "'); DROP TABLE document; --";
      store.save(save({ text }));
      expect(store.current('house:one')?.text).toBe(text);
    });
  });
};
