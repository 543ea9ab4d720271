/**
 * The one way in for `npm start`, `npm test` and the rest: `node tools/bootstrap.mjs COMMAND`.
 *
 * Plain JavaScript that an old Node can read. It makes sure of a new enough Node and of the
 * packages, then hands over to `tools/commands/COMMAND.ts`, which the new Node runs as it is.
 */
import { existsSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { enter } from './bootstrap/enter.mjs';
import { COMMANDS } from './bootstrap/places.mjs';
import { say } from './bootstrap/speak.mjs';

const known = () =>
  readdirSync(COMMANDS)
    .filter((name) => name.endsWith('.ts'))
    .map((name) => name.slice(0, -3));

const [command = '', ...rest] = process.argv.slice(2);
const script = join(COMMANDS, `${command}.ts`);

if (/^[a-z]+$/.test(command) && existsSync(script)) {
  await enter(script, rest);
} else {
  say(`There is no command "${command}". The commands are: ${known().join(', ')}.`);
  process.exitCode = 2;
}
