import { readFileSync } from 'node:fs';
import { arch, platform, release } from 'node:os';
import { join } from 'node:path';
import type { Installation } from '#selfcheck';
import { hashOfFiles, programFiles } from './program-files.ts';

const ROOT = join(import.meta.dirname, '..');
/** Enough to tell builds apart by eye; a collision by chance is 1 in 10¹⁴. */
const LETTERS = 12;

/**
 * Which copy of the program this is. The hash is of the files as they lie here and not of a commit:
 * an edit that nobody committed is another program too, and an installation has no history.
 */
export const thisInstallation = (root = ROOT): Installation => {
  const manifest: unknown = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8'));
  const { version } = manifest as { readonly version: string };
  const { node, v8 } = process.versions;
  return {
    version,
    build: hashOfFiles(root, programFiles(root)).slice(0, LETTERS),
    platform: `Node ${node}, V8 ${v8}, ${platform()} ${release()} ${arch()}`,
  };
};
