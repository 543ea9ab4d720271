/** Runs projects of the test runner and counts, from its own JSON, what passed and failed. */
import { existsSync, mkdirSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { BUILD, runNode, TOOLS } from './program.ts';

export type Count = {
  readonly passed: number;
  readonly failed: number;
  readonly notRun: number;
};

/** The parts of the runner's JSON that we read. */
export type RunnerReport = {
  readonly success: boolean;
  readonly numPassedTests: number;
  readonly numFailedTests: number;
  readonly numPendingTests: number;
  readonly numTodoTests: number;
  readonly testResults: readonly {
    readonly status: string;
    readonly assertionResults: readonly unknown[];
  }[];
};

/** A file that would not load holds no test, yet it failed: it counts as one. */
export const countOf = (report: RunnerReport): Count => {
  const unloaded = report.testResults.filter(
    (file) => file.status === 'failed' && file.assertionResults.length === 0,
  ).length;
  const failed = report.numFailedTests + unloaded;
  return {
    passed: report.numPassedTests,
    // An error outside any test makes the run a failure that no test shows.
    failed: failed === 0 && !report.success ? 1 : failed,
    notRun: report.numPendingTests + report.numTodoTests,
  };
};

export type VitestRun = { readonly projects: readonly string[]; readonly record: boolean };

/** A runner that dies before it writes its JSON is one failure, never a silent pass. */
export const runVitest = async ({ projects, record }: VitestRun): Promise<Count> => {
  const folder = join(BUILD, 'tests');
  mkdirSync(folder, { recursive: true });
  const file = join(folder, `${projects.join('-')}.json`);
  rmSync(file, { force: true });
  const { code } = await runNode(
    [
      TOOLS.vitest,
      'run',
      ...projects.flatMap((project) => ['--project', project]),
      '--reporter=default',
      '--reporter=json',
      `--outputFile.json=${file}`,
    ],
    { shown: true, env: { RECORD: record ? '1' : '0' } },
  );
  if (!existsSync(file)) return { passed: 0, failed: 1, notRun: 0 };
  const count = countOf(JSON.parse(readFileSync(file, 'utf8')) as RunnerReport);
  return code !== 0 && count.failed === 0 ? { ...count, failed: 1 } : count;
};
