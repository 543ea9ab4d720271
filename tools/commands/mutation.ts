/**
 * `npm run mutation -- engine/rules/arbor --concurrency 2`: changes the code of each folder a
 * little, runs its tests on every change, and writes the share they noticed to
 * `docs/mutation.md`. Without a folder it takes all of `sequence` and `rules`: some hours. Files in
 * place of a folder measure it in parts; its row is written once each has been measured.
 */
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { allFolders, type Folder, foldersIn } from '../mutation/folders.ts';
import { keep, keptReport } from '../mutation/kept.ts';
import { readLookedAt } from '../mutation/looked-at.ts';
import { merged, notLookedAt, reportText, talliesIn } from '../mutation/report.ts';
import { survivorsOf, type Tally, tallyOf } from '../mutation/result.ts';
import { mutate } from '../mutation/run.ts';
import { ROOT } from '../running/program.ts';
import { wasStopped } from '../running/signals.ts';

const REPORT = join(ROOT, 'docs', 'mutation.md');

const writeReport = (fresh: readonly Tally[]): void => {
  const old = existsSync(REPORT) ? talliesIn(readFileSync(REPORT, 'utf8')) : [];
  const names = allFolders().map(({ folder }) => folder);
  const tallies = merged(old, fresh).filter(({ folder }) => names.includes(folder));
  writeFileSync(REPORT, reportText(tallies, readLookedAt(), names));
};

/** From all files of the folder, those of earlier runs too. */
const writeRow = (folder: string): void => {
  const kept = keptReport(foldersIn([folder]).find((one) => one.folder === folder)?.sources ?? []);
  if ('report' in kept) writeReport([tallyOf(folder, kept.report)]);
  else process.stdout.write(`No row yet: not measured as it is now: ${kept.missing.join(', ')}\n`);
};

type Asked = { readonly folders: readonly Folder[]; readonly concurrency: number };

/** Null where the words of the command make no sense. */
const read = (args: readonly string[]): Asked | null => {
  const at = args.indexOf('--concurrency');
  const concurrency = at < 0 ? 2 : Number(args[at + 1]);
  const folders = foldersIn(at < 0 ? args : args.toSpliced(at, 2));
  return Number.isInteger(concurrency) && concurrency > 0 && folders.length > 0
    ? { folders, concurrency }
    : null;
};

const main = async (args: readonly string[]): Promise<number> => {
  const asked = read(args);
  if (asked === null) {
    const names = allFolders().map(({ folder }) => folder);
    process.stderr.write(
      `Wanted: folders of ${names.join(', ')}, or files there, and --concurrency 1 or more.\n`,
    );
    return 2;
  }
  const { folders, concurrency } = asked;
  let failed = 0;
  for (const folder of folders) {
    process.stdout.write(`\n${folder.folder}\n`);
    const report = await mutate(folder, concurrency);
    if (wasStopped()) return 130;
    if (report === null) {
      failed += 1;
      continue;
    }
    for (const line of notLookedAt(survivorsOf(report), readLookedAt()))
      process.stdout.write(`${line}\n`);
    keep(report, folder.sources);
    writeRow(folder.folder);
  }
  return failed === 0 ? 0 : 1;
};

process.exitCode = await main(process.argv.slice(2));
