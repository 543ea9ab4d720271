import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { programFiles, thisInstallation } from './index.ts';

let root = '';
const put = (path: string, text: string): void => {
  mkdirSync(join(root, path, '..'), { recursive: true });
  writeFileSync(join(root, path), text);
};
const build = (): string => thisInstallation(root).build;

beforeEach(() => {
  root = mkdtempSync(join(tmpdir(), 'counterpoise-installation-'));
  put('package.json', '{"version":"7.8.9"}');
  put('engine/balance/curve.ts', 'export const a = 1;');
});
afterEach(() => rmSync(root, { recursive: true }));

describe('the installation', () => {
  it('is named by version, twelve letters of build, and what it runs on', () => {
    const found = thisInstallation(root);
    expect(found.version).toBe('7.8.9');
    expect(found.build).toMatch(/^[0-9a-f]{12}$/);
    expect(found.platform).toContain(process.versions.node);
  });

  it('is another with a letter changed or a file renamed, and the same when put back', () => {
    const first = build();
    put('engine/balance/curve.ts', 'export const a = 2;');
    expect(build()).not.toBe(first);
    put('engine/balance/curve.ts', 'export const a = 1;');
    expect(build()).toBe(first);
    rmSync(join(root, 'engine/balance/curve.ts'));
    put('engine/balance/slope.ts', 'export const a = 1;');
    expect(build()).not.toBe(first);
  });

  it('leaves out tests and papers, and holds the cases that the self-check reruns', () => {
    const first = build();
    put('engine/balance/curve.test.ts', 'x');
    put('engine/README.md', 'x');
    put('tools/a.ts', 'x');
    expect(build()).toBe(first);
    put('validation/house/arbor/case.ts', 'x');
    expect(programFiles(root)).toContain('validation/house/arbor/case.ts');
    expect(build()).not.toBe(first);
  });

  it('knows this very program', () => {
    const files = programFiles(join(import.meta.dirname, '..'));
    expect(files).toContain('engine/balance/index.ts');
    expect(files).toContain('package-lock.json');
    expect(thisInstallation().version).toMatch(/^\d+\.\d+\.\d+/);
  });
});
