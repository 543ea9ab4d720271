/** `npm run backup`, `restore`, `verify-record`, `take-out`, `make-record`: on a house's record. */
import { runNode } from '../running/program.ts';

process.exitCode = (
  await runNode(['server/record.ts', ...process.argv.slice(2)], { shown: true })
).code;
