/**
 * The server in false weather: `node simulation/main.ts [COMMANDS] [SEED] [disk|memory]`. Worlds of
 * some thousand commands each, every one with its own seed; the first broken rule ends it.
 */
import { RuleBroken } from './delivery-rules.ts';
import { inMemory, onDisk } from './storages.ts';
import { runWorld } from './world.ts';

const IN_A_WORLD = 2000;
/** One world in so many keeps its record in a file, as the house does. */
const ON_DISK = 5;

const [commands = '20000', first = '1', where = ''] = process.argv.slice(2);
const wanted = Number(commands);
const seed = Number(first);
if (!Number.isSafeInteger(wanted) || wanted < 1 || !Number.isSafeInteger(seed)) {
  process.stderr.write('node simulation/main.ts [COMMANDS] [SEED] [disk|memory]\n');
  process.exit(2);
}

const sum: Record<string, number> = {};
const add = (name: string, count: number): void => {
  sum[name] = (sum[name] ?? 0) + count;
};

let done = 0;
for (let world = 0; done < wanted; world += 1) {
  const own = seed + world;
  const isDisk = where === 'disk' || (where === '' && world % ON_DISK === 0);
  const storage = isDisk ? onDisk() : inMemory();
  try {
    const told = runWorld(own, Math.min(IN_A_WORLD, wanted - done), storage);
    done += told.commands;
    for (const name of ['events', 'crashes', 'faults'] as const) add(name, told[name]);
    for (const [name, count] of Object.entries(told.outcomes)) add(`told ${name}`, count);
    if (world % 20 === 0) process.stdout.write(`${done} commands, ${world + 1} worlds\n`);
  } catch (fault) {
    if (!(fault instanceof RuleBroken)) throw fault;
    process.stderr.write(`seed ${own}: ${fault.message}\n`);
    process.exit(1);
  } finally {
    storage.remove();
  }
}
process.stdout.write(`${done} commands from seed ${seed}: every rule held\n`);
for (const [name, count] of Object.entries(sum)) process.stdout.write(`  ${name}: ${count}\n`);
