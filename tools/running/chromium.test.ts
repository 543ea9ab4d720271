import { chmodSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { delimiter, join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { findChromium } from './chromium.ts';

let folder = '';
const put = (name: string, mode: number): string => {
  const file = join(folder, name);
  writeFileSync(file, '');
  chmodSync(file, mode);
  return file;
};

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'browser-'));
});
afterAll(() => {
  rmSync(folder, { recursive: true });
});

describe('the browser', () => {
  it('is the one that is named', () => {
    const named = put('my-browser', 0o755);
    expect(findChromium({ CHROMIUM: named, PATH: folder })).toBe(named);
  });

  it('is no other when the one that is named cannot run', () => {
    put('chromium', 0o755);
    expect(findChromium({ CHROMIUM: join(folder, 'none'), PATH: folder })).toBeUndefined();
  });

  it('is found on PATH, in any folder of it', () => {
    const chromium = put('chromium', 0o755);
    const PATH = ['', join(folder, 'none'), folder].join(delimiter);
    expect(findChromium({ PATH })).toBe(chromium);
  });
});
