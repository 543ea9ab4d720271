/**
 * `npm run bench -- WORDS`: every `bench/*.bench.ts`, or those whose name has one of the words.
 * Each is a program that measures against its budgets and fails when one is passed. They run one
 * after the other, so that none takes the machine from another.
 */
import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { ROOT, runNode } from '../running/program.ts';
import { wasStopped } from '../running/signals.ts';

const benches = (words: readonly string[]): readonly string[] =>
  readdirSync(join(ROOT, 'bench'))
    .filter((name) => name.endsWith('.bench.ts'))
    .filter((name) => words.length === 0 || words.some((word) => name.includes(word)))
    .map((name) => `bench/${name}`);

const main = async (words: readonly string[]): Promise<number> => {
  const files = benches(words);
  if (files.length === 0) {
    process.stderr.write(`No bench has ${words.join(' or ')} in its name.\n`);
    return 2;
  }
  let worst = 0;
  for (const file of files) {
    process.stdout.write(`\n${file}\n`);
    const { code } = await runNode([file], { shown: true });
    worst = Math.max(worst, code);
    if (wasStopped()) break;
  }
  return worst;
};

process.exitCode = await main(process.argv.slice(2));
