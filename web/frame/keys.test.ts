import { describe, expect, it } from 'vitest';
import { KEY_GROUPS, keyGroupsFor } from './keys.ts';

describe('the list of keys', () => {
  it('begins with the screen in view, and leaves no group out', () => {
    const titles = keyGroupsFor('order').map(({ title }) => title);
    expect(titles.slice(0, 2)).toEqual(['Order', 'Everywhere']);
    expect(new Set(titles)).toEqual(new Set(KEY_GROUPS.map(({ title }) => title)));
  });

  it('begins with what works everywhere on a screen without keys of its own', () => {
    expect(keyGroupsFor('sheets')[0]?.title).toBe('Everywhere');
  });
});
