/** `npm run papers`: writes the generated papers; with `--check`, only compares them. */
import { runNode } from '../running/program.ts';

process.exitCode = (
  await runNode(['tools/papers/main.ts', ...process.argv.slice(2)], { shown: true })
).code;
