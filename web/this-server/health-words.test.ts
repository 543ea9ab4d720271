import { describe, expect, it } from 'vitest';
import type { Health } from '#events';
import { fetchTongue } from '#languages';
import { inGroups, rowsOf, stateWords } from './health-words.ts';

const VOICE = { words: 'US' } as const;
const OWN_BUILD = 'abcdefabcdef';

const health: Health = {
  is: 'well',
  cautions: [],
  time: '2026-11-25T14:31:00.000Z',
  startedAt: '2026-11-24T08:00:00.000Z',
  version: '1.2.3',
  build: OWN_BUILD,
  mode: 'ownAuthority',
  signOffs: true,
  addresses: ['https://192.168.7.20:4747'],
  trustAddresses: ['http://192.168.7.20:4748/trust'],
  certificate: {
    fingerprint: 'AA:BB',
    until: '2028-01-02T13:46:03.000Z',
    daysLeft: 1,
    isDue: false,
  },
  database: 'house',
  record: {
    seq: 1,
    houseKey: '04a2b4b8-1049',
    recordKey: '24ba3348',
    isReadOnly: false,
    isFlushed: true,
    lastBackupAt: null,
  },
  disk: { freeBytes: 9_999_999_999, totalBytes: 270_553_174_016 },
  logLevel: 'info',
};

const saysOf = (changes: Partial<Health>, key: string, ownBuild = OWN_BUILD) =>
  rowsOf({ ...health, ...changes }, ownBuild, VOICE).find((row) => row.key === key)?.says;

describe('what the server says of itself', () => {
  it('is in words and whole numbers', () => {
    expect(saysOf({}, 'disk')).toBe('9999 MB free of 270 GB');
    expect(saysOf({ disk: null }, 'disk')).toBe('not known');
    expect(saysOf({}, 'certificate')).toBe('until 2 Jan 2028, 13:46 UTC, 1 day left');
    expect(saysOf({ certificate: null }, 'certificate')).toBeUndefined();
    expect(saysOf({}, 'events')).toContain('1 event; each is flushed');
    expect(saysOf({ record: { ...health.record, isReadOnly: true } }, 'events')).toBe(
      '1 event; read only',
    );
    expect(saysOf({}, 'backup')).toBe('none was made');
    expect(saysOf({ logLevel: null }, 'log')).toBe('nothing');
  });

  it('says why nothing is signed off, and of which build the page is', () => {
    expect(saysOf({ mode: 'plain', signOffs: false }, 'signOffs')).toMatch(/^off: over plain HTTP/);
    expect(saysOf({}, 'page')).toBe('of the same build');
    expect(saysOf({}, 'page', 'another')).toBe('of another build, another: load it again');
  });

  it('groups what a person reads out', () => {
    expect(inGroups('04a2b4b8-1049')).toBe('04a2 b4b8 1049');
    expect(inGroups('AA:BB:CC')).toBe('AABB CC');
    expect(inGroups('')).toBe('');
  });

  it('says all of it in German too', async () => {
    const voice = { words: 'US', tongue: await fetchTongue('de') } as const;
    const english = rowsOf(health, OWN_BUILD, VOICE).map(({ head }) => head);
    const german = rowsOf(health, OWN_BUILD, voice).map(({ head }) => head);
    expect(german.filter((head) => english.includes(head) && head !== 'Server')).toEqual([]);
    expect(stateWords(health, voice)).toContain('Er antwortet');
  });
});
