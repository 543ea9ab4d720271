/** `npm run bench`: measures the engine against its budgets; fails when one is passed. */
import { runNode } from '../running/program.ts';

process.exitCode = (
  await runNode(['bench/main.ts', ...process.argv.slice(2)], { shown: true })
).code;
