/** `npm run kill-test`: `kill -9` under load, 200 times; a test of the suite does 20. */
import { runNode } from '../running/program.ts';

process.exitCode = (
  await runNode(['server/log/kill-main.ts', ...process.argv.slice(2)], { shown: true })
).code;
