/** Runs the mutation tool on one folder and gives what it wrote. */
import { existsSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { BUILD, runNode } from '../running/program.ts';
import type { Folder } from './folders.ts';
import type { ToolReport } from './result.ts';

const STRYKER = 'node_modules/@stryker-mutator/core/bin/stryker.js';

/** Below `build`, which git, the formatter, the tests and the dead-code finder leave out. */
const PLACE = join(BUILD, 'mutation');

/** What no test of the engine opens; it need not be copied for each run. */
const NOT_COPIED = ['.runtime', 'build', 'web', 'journeys', 'pins', 'docs', '.data'];

const settings = ({ sources }: Folder, file: string, concurrency: number) => ({
  testRunner: 'vitest',
  plugins: ['@stryker-mutator/vitest-runner'],
  vitest: { configFile: 'tools/mutation/vitest.config.ts' },
  coverageAnalysis: 'perTest',
  mutate: sources,
  ignorePatterns: NOT_COPIED.map((name) => `/${name}`),
  tempDirName: 'build/mutation/copy',
  concurrency,
  // Beside one and a half times what its tests take, some seconds in all: a machine that does
  // other work as well is slow, and a slow mutant is not a killed one.
  timeoutMS: 20_000,
  reporters: ['progress-append-only', 'json'],
  jsonReporter: { fileName: file },
  // The tests run without types, so nothing has to be switched off in the files.
  disableTypeChecks: false,
  allowConsoleColors: false,
});

/** Null where the tool did not come to an end: its own words on the terminal say why. */
export const mutate = async (folder: Folder, concurrency: number): Promise<ToolReport | null> => {
  mkdirSync(PLACE, { recursive: true });
  // Parts of one folder may be measured side by side.
  const name = `${folder.folder.replaceAll('/', '-')}-${process.pid}`;
  const settingsFile = join(PLACE, `${name}.settings.json`);
  const resultFile = join(PLACE, `${name}.json`);
  rmSync(resultFile, { force: true });
  writeFileSync(settingsFile, JSON.stringify(settings(folder, resultFile, concurrency), null, 2));
  const env = { MUTATION_TESTS: folder.tests.join(',') };
  await runNode([STRYKER, 'run', settingsFile], { shown: true, env });
  if (!existsSync(resultFile)) return null;
  return JSON.parse(readFileSync(resultFile, 'utf8')) as ToolReport;
};
