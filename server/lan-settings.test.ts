import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { startWords } from './lan/index.ts';
import { lanStartOf } from './lan-settings.ts';

let folder = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'counterpoise-lan-start-'));
});
afterEach(() => rmSync(folder, { recursive: true }));

const now = (): Date => new Date('2026-11-25T12:00:00Z');
const startOf = (environment: Record<string, string>) => lanStartOf(environment, folder, now);

describe('how the server starts', () => {
  it('is on this machine alone, quiet, at its usual port, where nothing is set', () => {
    expect(startOf({})).toMatchObject({
      port: 4747,
      trustPort: 4748,
      logLevel: 'warn',
      listening: { mode: 'loopback', bind: '127.0.0.1' },
    });
  });

  it('is on the LAN with an authority of its own, and logs', () => {
    const start = startOf({ COUNTERPOISE_LAN: '1', COUNTERPOISE_PORT: '5000' });
    expect(start).toMatchObject({
      trustPort: 5001,
      logLevel: 'info',
      listening: { mode: 'ownAuthority', bind: '0.0.0.0', scheme: 'https' },
    });
    expect(readFileSync(join(folder, 'lan', 'authority.crt'), 'utf8')).toContain('CERTIFICATE');
  });

  it('says what is not understood, each with its code or its name', () => {
    expect(startOf({ COUNTERPOISE_LAN: 'maybe' })).toMatch(/^LAN-001 COUNTERPOISE_LAN: maybe/);
    expect(startOf({ COUNTERPOISE_PORT: '0' })).toMatch(/COUNTERPOISE_PORT/);
    expect(startOf({ COUNTERPOISE_TRUST_PORT: '99999' })).toMatch(/COUNTERPOISE_TRUST_PORT/);
    expect(startOf({ COUNTERPOISE_LOG: 'all' })).toMatch(/error, warn, info, debug/);
    writeFileSync(join(folder, 'lan.json'), '{"listen": "https", "certificate": {}}');
    expect(startOf({})).toMatch(/LAN-001 lan\.json\.certificate\.chain/);
  });
});

describe('what the terminal says', () => {
  const words = (environment: Record<string, string>, isTerminal: boolean): string => {
    const start = startOf(environment);
    if (typeof start === 'string') throw new Error(start);
    return startWords(start.listening, { isTerminal });
  };

  it('is one line on this machine alone', () => {
    expect(words({}, true)).toBe('Counterpoise is at http://127.0.0.1:4747 (Ctrl-C stops it)\n');
  });

  it('is the addresses, the fingerprint, and a QR for a person but not for a log', () => {
    writeFileSync(join(folder, 'lan.json'), '{"listen": "https", "names": ["flies.home.arpa"]}');
    const told = words({}, true);
    expect(told).toContain('https://flies.home.arpa:4747');
    expect(told).toContain('http://flies.home.arpa:4748/trust');
    expect(told).toMatch(/([0-9A-F]{2}:){31}[0-9A-F]{2}/);
    expect(told).toContain('█');
    expect(words({}, false)).not.toContain('█');
  });

  it('says of plain HTTP what it is', () => {
    expect(words({ COUNTERPOISE_LAN: 'plain' }, false)).toContain('Nothing can be signed off.');
  });
});
