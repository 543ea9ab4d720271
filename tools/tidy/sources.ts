/** The files of the project: those git tracks and those it would, and nothing that is built. */
import { execFileSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { ROOT } from '../running/program.ts';
import type { Source } from './fault.ts';

const TEXT = /(\.(ts|tsx|mts|mjs|js|cjs|json|md|css|html|svg|csv|txt|yml|yaml)|^[^.]+|rc|ignore)$/;

export const listFiles = (): readonly string[] =>
  execFileSync('git', ['ls-files', '-z', '--cached', '--others', '--exclude-standard'], {
    cwd: ROOT,
    encoding: 'utf8',
    maxBuffer: 64 * 1024 * 1024,
  })
    .split('\0')
    .filter((path) => path !== '' && existsSync(join(ROOT, path)))
    .sort();

const isText = (path: string): boolean => TEXT.test(path.slice(path.lastIndexOf('/') + 1));

export const readSources = (): readonly Source[] =>
  listFiles()
    .filter(isText)
    .map((path) => ({ path, text: readFileSync(join(ROOT, path), 'utf8') }));

export const isCode = (path: string): boolean => /\.(ts|tsx|mts|mjs|cjs|js)$/.test(path);

export const isTest = (path: string): boolean => /\.(test|contract)\.tsx?$/.test(path);

/** What people run, as against what only measures or tries it. */
export const isProgram = (path: string): boolean =>
  isCode(path) && !isTest(path) && !/^(validation|journeys|bench|pins|examples)\//.test(path);

/** Papers written by `npm run papers`; their shape is their maker's. */
export const isGenerated = (path: string): boolean =>
  path === 'RULES.md' || path === 'VALIDATION.md' || path.startsWith('docs/reference/');
