/** `npm run tidy`: the lines of STYLE.md that a machine can check. */
import { runNode } from '../running/program.ts';

process.exitCode = (
  await runNode(['tools/tidy/main.ts', ...process.argv.slice(2)], { shown: true })
).code;
