import { describe, expect, it } from 'vitest';
import { keptAs, keptByOthers, wayOf } from './worker-rules.ts';

const own = 'https://house.example';
const way = (path: string, more: { method?: string; isPage?: boolean } = {}) =>
  wayOf({ method: 'GET', url: `${own}${path}`, isPage: false, own, ...more });

describe('what the worker answers', () => {
  it('never answers for the server: documents, commands, events, prints', () => {
    for (const path of ['/api', '/api/documents', '/api/events?after=3', '/api/health']) {
      expect(way(path), path).toBe('server');
    }
    // A print opens as a page of its own, and is the server's all the same.
    expect(way('/api/sheet.pdf?sheet=schedule', { isPage: true })).toBe('server');
    for (const method of ['POST', 'PUT', 'DELETE', 'HEAD']) {
      expect(way('/assets/a.js', { method }), method).toBe('server');
      expect(way('/set/11', { method, isPage: true }), method).toBe('server');
    }
  });

  it('lets its own newer version through, and what is not of this house', () => {
    expect(way('/sw.js')).toBe('server');
    const url = 'https://other.example/assets/a.js';
    expect(wayOf({ method: 'GET', url, isPage: false, own })).toBe('server');
  });

  it('opens every address with the page, the newest that there is', () => {
    for (const path of ['/', '/set/11?house=a', '/apiary']) {
      expect(way(path, { isPage: true }), path).toBe('page');
    }
    expect(way('/apiary')).toBe('newest');
  });

  it('takes from what is kept only what is named by its content', () => {
    expect(way('/assets/set-page-Bpy01L9I.js')).toBe('kept');
    expect(way('/theme-first.js')).toBe('newest');
  });

  it('clears what other builds kept, and nothing of other programs', () => {
    const names = [keptAs('aaa'), 'theirs', keptAs('bbb'), 'counterpoise'];
    expect(keptByOthers(names, 'bbb')).toEqual([keptAs('aaa')]);
    expect(keptByOthers(names, '')).toEqual([keptAs('aaa'), keptAs('bbb')]);
  });
});
