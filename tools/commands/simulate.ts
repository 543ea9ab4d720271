/**
 * `npm run simulate`: the server in false weather, 1,000,000 commands; the suite has 20,000. With
 * `calls` before them a crew works a call in each world.
 */
import { runNode } from '../running/program.ts';

const words = process.argv.slice(2);
const mode = words[0] === 'calls' ? ['calls'] : [];
const [commands = '1000000', ...rest] = words.slice(mode.length);
const asked = ['simulation/main.ts', ...mode, commands, ...rest];
process.exitCode = (await runNode(asked, { shown: true })).code;
