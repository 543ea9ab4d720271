import { describe, expect, it } from 'vitest';
import { UNKNOWN_SET } from '#call';
import type { Knowledge } from '#state';
import clockmaker from '../../examples/kestlemere/clockmaker.show.json' with { type: 'json' };
import kestlemere from '../../examples/kestlemere/house.json' with { type: 'json' };
import record from '../../examples/kestlemere/state.json' with { type: 'json' };
import {
  actorWords,
  agoWords,
  knowledgeWords,
  postsOf,
  postWords,
  rulesWords,
} from './desk-words.ts';
import { openedOn } from './opened-for-tests.ts';

const { example: EXAMPLE, now: OPENED } = openedOn({
  house: kestlemere,
  show: clockmaker,
  state: record,
});

const { house } = EXAMPLE;
const VOICE = { words: 'US' } as const;
const T = Date.UTC(2026, 10, 28, 14, 6);

describe('words of the desk', () => {
  it('has a name for every post of the house, and no two alike', () => {
    const names = postsOf(house).map((post) => postWords(post, house));
    expect(new Set(names).size).toBe(names.length);
    expect(names).toContain('Mid loading gallery');
    expect(names).toContain('Marshal under the Mid loading gallery');
    expect(names.filter((name) => name.includes(':'))).toEqual([]);
  });

  it('tells knowledge with its age, its author and the second person', () => {
    const at = new Date(T).toISOString();
    const knowledge: Knowledge = { basis: 'counted', at, by: 'pers_1', second: 'Bo' };
    const words = knowledgeWords(knowledge, T + 12 * 60_000, {
      ...{ names: { pers_1: 'Ada' }, voice: VOICE },
    });
    expect(words).toMatch(/^counted \d\d:06, 12 min ago, by Ada; second person Bo$/);
    const alone = knowledgeWords({ ...knowledge, second: null }, T, { names: {}, voice: VOICE });
    expect(alone).toMatch(/by pers_1; no second person$/);
    expect(knowledgeWords(UNKNOWN_SET.knowledge, T, { names: {}, voice: VOICE })).toBe('not known');
  });

  it('names whoever acted by the post they stand at, and makes up no name', () => {
    const now = OPENED;
    const post = {
      ...{ by: null, device: 'dev-1', name: 'Ada', sinceMs: T, answeredBy: null, isClear: false },
    };
    const posts = { ...now, posts: { rail: post } };
    const names = { names: {}, voice: VOICE };
    expect(actorWords({ by: null, device: 'dev-1' }, posts, names)).toBe('Ada');
    expect(actorWords({ by: null, device: 'dev-2' }, posts, names)).toBe(
      'a device without sign-in',
    );
    expect(actorWords({ by: 'pers_9', device: 'dev-2' }, posts, names)).toBe('pers_9');
  });

  it('names a rule by its code and its title, and one it does not know by its code', () => {
    expect(rulesWords(['CAL-001', 'CAL-999'], VOICE)).toBe(
      'CAL-001: Somebody has said stop; CAL-999',
    );
  });

  it('takes clocks that differ by seconds for the same moment, and says so of hours', () => {
    expect(agoWords(T + 5000, T, VOICE)).toBe('less than a minute ago');
    expect(agoWords(T + 3_600_000, T, VOICE)).toContain('not known');
  });
});
