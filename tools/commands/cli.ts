/** `node tools/bootstrap.mjs cli ARGS`: the same command line as `./bin/counterpoise`. */
import { runNode } from '../running/program.ts';

process.exitCode = (await runNode(['cli/main.ts', ...process.argv.slice(2)], { shown: true })).code;
