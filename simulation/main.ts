/**
 * The server in false weather: `node simulation/main.ts [calls] [COMMANDS] [SEED] [disk|memory]`.
 * Worlds of some thousand commands each, every one with its own seed; the first broken rule ends
 * it. With `calls` a crew works a call in each; without, devices write notes and sign. `planted
 * CALL-09` runs the worlds in which a bug against that rule shows.
 */
import { CallRuleBroken } from './calls/call-rules.ts';
import { runCallWorld } from './calls/call-world.ts';
import { runPlantedWorlds } from './calls/planted-worlds.ts';
import { RuleBroken } from './delivery-rules.ts';
import type { Storage } from './house.ts';
import { inMemory, onDisk } from './storages.ts';
import { runWorld } from './world.ts';

const IN_A_WORLD = 2000;
/** One world in so many keeps its record in a file, as the house does. */
const ON_DISK = 5;

const words = process.argv.slice(2);
if (words[0] === 'planted') {
  runPlantedWorlds(words[1] ?? '');
  process.exit(0);
}
const isCalls = words[0] === 'calls';
const [commands = '20000', first = '1', where = ''] = isCalls ? words.slice(1) : words;
const wanted = Number(commands);
const seed = Number(first);
if (!Number.isSafeInteger(wanted) || wanted < 1 || !Number.isSafeInteger(seed)) {
  process.stderr.write('node simulation/main.ts [calls] [COMMANDS] [SEED] [disk|memory]\n');
  process.exit(2);
}

const isBroken = (fault: unknown): fault is Error =>
  fault instanceof RuleBroken || fault instanceof CallRuleBroken;

const sum: Record<string, number> = {};
const add = (name: string, count: number): void => {
  sum[name] = (sum[name] ?? 0) + count;
};

/** Runs one world, adds up what it tells, and says how many commands it had. */
const deliveries = (own: number, most: number, storage: Storage): number => {
  const told = runWorld(own, most, storage);
  for (const name of ['events', 'crashes', 'faults'] as const) add(name, told[name]);
  for (const [name, count] of Object.entries(told.outcomes)) add(`told ${name}`, count);
  return told.commands;
};

const calls = (own: number, most: number, storage: Storage): number => {
  const told = runCallWorld(own, most, storage);
  for (const name of ['events', 'crashes', 'slips'] as const) add(name, told[name]);
  for (const [name, count] of Object.entries(told.counts)) add(name, count);
  return told.commands;
};

const beganMs = performance.now();
let done = 0;
for (let world = 0; done < wanted; world += 1) {
  const own = seed + world;
  const isDisk = where === 'disk' || (where === '' && world % ON_DISK === 0);
  const storage = isDisk ? onDisk() : inMemory();
  try {
    done += (isCalls ? calls : deliveries)(own, Math.min(IN_A_WORLD, wanted - done), storage);
    if (world % 20 === 0) process.stdout.write(`${done} commands, ${world + 1} worlds\n`);
  } catch (fault) {
    if (!isBroken(fault)) throw fault;
    process.stderr.write(`seed ${own}: ${fault.message}\n`);
    process.exit(1);
  } finally {
    storage.remove();
  }
}
const seconds = (performance.now() - beganMs) / 1000;
process.stdout.write(`${done} commands from seed ${seed}: every rule held\n`);
process.stdout.write(`  commands a second: ${Math.round(done / seconds)}\n`);
for (const [name, count] of Object.entries(sum)) process.stdout.write(`  ${name}: ${count}\n`);
