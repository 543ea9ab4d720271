import { describe, expect, it } from 'vitest';
import { localMoment } from './local-moment.ts';

describe('the moment on the wall', () => {
  it('is the same moment, with the offset of where it is printed', () => {
    for (const text of ['2026-11-25T17:55:00Z', '2026-06-25T03:00:09Z', '2026-01-01T00:00:00Z']) {
      const moment = localMoment(new Date(text));
      expect(moment).toMatch(/^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}:\d{2}[+-]\d{2}:\d{2}$/);
      expect(Date.parse(moment)).toBe(Date.parse(text));
    }
  });
});
