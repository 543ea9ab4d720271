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

    it('keeps text that would end a statement of its own language', () => {
      const text = "'); DROP TABLE document; --";
      store.save(save({ text }));
      expect(store.current('house:one')?.text).toBe(text);
    });
  });
};
