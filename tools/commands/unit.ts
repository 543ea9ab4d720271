/** `npm run unit -- engine/balance`: the tests beside the code, all or those named. */
import { runNode, TOOLS } from '../running/program.ts';

const args = [TOOLS.vitest, 'run', '--project', 'unit', ...process.argv.slice(2)];
process.exitCode = (await runNode(args, { shown: true })).code;
