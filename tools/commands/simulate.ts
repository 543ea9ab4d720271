/** `npm run simulate`: the server in false weather, 1,000,000 commands; the suite has 20,000. */
import { runNode } from '../running/program.ts';

const [commands = '1000000', ...rest] = process.argv.slice(2);
process.exitCode = (await runNode(['simulation/main.ts', commands, ...rest], { shown: true })).code;
