/**
 * `npm run papers` writes the generated papers. `--check` compares instead, and fails when one
 * differs. `--measured` takes the errors of the last validation run rather than running again.
 */
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { ROOT } from '../running/program.ts';
import { compute } from './compute.ts';
import { firstDifference } from './difference.ts';
import { openApi } from './openapi.ts';
import { CannotMake, type Paper } from './paper.ts';
import { refusals } from './refusals.ts';
import { rules } from './rules.ts';
import { schemas } from './schemas.ts';
import { validation } from './validation.ts';

const compare = (path: string, made: string): readonly string[] => {
  const file = join(ROOT, path);
  const kept = existsSync(file) ? readFileSync(file, 'utf8') : '';
  const difference = firstDifference(kept, made);
  return difference === undefined ? [] : [`${path}${difference}, run "npm run papers"`];
};

const write = (path: string, made: string): readonly string[] => {
  const file = join(ROOT, path);
  mkdirSync(dirname(file), { recursive: true });
  writeFileSync(file, made);
  return [];
};

const faultsOf = async ({ path, make }: Paper, check: boolean): Promise<readonly string[]> => {
  try {
    const made = await make();
    return check ? compare(path, made) : write(path, made);
  } catch (error) {
    if (!(error instanceof CannotMake)) throw error;
    return error.reasons.map((reason) => `${path} cannot be made: ${reason}`);
  }
};

const main = async (args: readonly string[]): Promise<void> => {
  const check = args.includes('--check');
  const papers = [
    rules,
    validation(!args.includes('--measured')),
    refusals,
    compute,
    openApi,
    ...schemas,
  ];
  const faults: string[] = [];
  for (const paper of papers) faults.push(...(await faultsOf(paper, check)));
  for (const fault of faults) process.stdout.write(`${fault}\n`);
  const verb = check ? 'compared' : 'written';
  process.stdout.write(`papers: ${papers.length} ${verb}, ${faults.length} faults\n`);
  process.exitCode = faults.length === 0 ? 0 : 1;
};

await main(process.argv.slice(2));
