/**
 * Runs every check and prints one line a fault: `file:line what, what is wanted`. With `--fix`,
 * the formatter mends what it can first.
 */
import { ROOT } from '../running/program.ts';
import { texts } from '../texts/check.ts';
import { biome } from './biome.ts';
import { codes } from './codes.ts';
import { columns } from './columns.ts';
import { faultsOfCommits, recentCommits } from './commit-titles.ts';
import { deadCode } from './dead-code.ts';
import { deadComments } from './dead-comments.ts';
import { dependencies } from './dependencies.ts';
import { docExamples } from './doc-examples.ts';
import { type Check, type Fault, printed } from './fault.ts';
import { fileNames } from './file-names.ts';
import { kindSwitches } from './kind-switches.ts';
import { machinePaths } from './machine-paths.ts';
import { massOrWeight } from './mass-or-weight.ts';
import { pureRooms } from './pure-rooms.ts';
import { readonlyData } from './readonly-data.ts';
import { rooms } from './rooms.ts';
import { sizes } from './sizes.ts';
import { readSources } from './sources.ts';
import { switchedOff } from './switched-off.ts';

const CHECKS: readonly Check[] = [
  fileNames,
  rooms,
  sizes,
  columns,
  massOrWeight,
  kindSwitches,
  readonlyData,
  deadComments,
  pureRooms,
  switchedOff,
  codes,
  docExamples,
  machinePaths,
  texts,
];

const inOrder = (a: Fault, b: Fault): number =>
  a.file === b.file ? a.line - b.line : a.file < b.file ? -1 : 1;

const main = async (args: readonly string[]): Promise<void> => {
  const began = Date.now();
  const byLinter = await biome(args.includes('--fix'));
  const sources = readSources();
  const found = await Promise.all([dependencies({ root: ROOT, sources }), deadCode()]);
  const faults = [
    ...byLinter,
    ...found.flat(),
    ...CHECKS.flatMap((check) => check(sources)),
    ...faultsOfCommits(recentCommits()),
  ].sort(inOrder);
  for (const fault of faults) process.stdout.write(`${printed(fault)}\n`);
  const seconds = ((Date.now() - began) / 1000).toFixed(1);
  process.stdout.write(`tidy: ${faults.length} faults in ${sources.length} files, ${seconds} s\n`);
  process.exitCode = faults.length === 0 ? 0 : 1;
};

await main(process.argv.slice(2));
