/**
 * Runs a program of this project. Every tool is called by its path in node_modules and on the
 * running Node, so nothing depends on what else the machine has.
 */
import { spawn } from 'node:child_process';
import { constants } from 'node:os';
import { join } from 'node:path';
import { passSignalsTo } from './signals.ts';

export const ROOT = join(import.meta.dirname, '..', '..');

export const BUILD = join(ROOT, 'build');

export type Ended = { readonly code: number; readonly output: string };

export const TOOLS = {
  biome: 'node_modules/@biomejs/biome/bin/biome',
  depcruise: 'node_modules/dependency-cruiser/bin/dependency-cruiser.mjs',
  knip: 'node_modules/knip/bin/knip.js',
  tsc: 'node_modules/typescript7/bin/tsc',
  vite: 'node_modules/vite/bin/vite.js',
  vitest: 'node_modules/vitest/vitest.mjs',
} as const;

type Options = {
  /** True to let the person see it as it comes; false to collect it in `output`. */
  readonly shown: boolean;
  readonly env?: Readonly<Record<string, string>>;
  readonly cwd?: string;
};

const run = (
  program: string,
  args: readonly string[],
  { shown, env = {}, cwd = ROOT }: Options,
): Promise<Ended> =>
  new Promise((resolve, reject) => {
    const child = spawn(program, args, {
      cwd,
      env: { ...process.env, ...env },
      stdio: shown ? 'inherit' : ['ignore', 'pipe', 'pipe'],
    });
    let output = '';
    const collect = (chunk: Buffer): void => {
      output += chunk.toString('utf8');
    };
    child.stdout?.on('data', collect);
    child.stderr?.on('data', collect);
    const letGo = passSignalsTo(child);
    child.on('error', reject);
    child.on('close', (code, signal) => {
      letGo();
      resolve({ code: code ?? 128 + (signal === null ? 0 : constants.signals[signal]), output });
    });
  });

/** A script (`server/main.ts`) or a tool of TOOLS, on the running Node. */
export const runNode = (args: readonly string[], options: Options): Promise<Ended> =>
  run(process.execPath, args, options);

export const runProgram = run;
