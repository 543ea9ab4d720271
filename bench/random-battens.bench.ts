/**
 * A hundred thousand random battens, each held to what must hold of any answer: numbers that are
 * numbers, lines that do not push, forces in balance, no answer for a mechanism and one for all
 * others. With how many and with which seed:
 *
 *     node bench/random-battens.bench.ts [HOW MANY] [SEED]
 */
import { trials } from '../validation/beam/random-trials.ts';

const COUNT = 100_000;
const SEED = 20_305;

const line = (what: string, value: string): void => {
  console.log(`${what.padEnd(52)}${value.padStart(14)}`);
};

export const run = (count: number, seed: number): void => {
  if (!(Number.isInteger(count) && count > 0 && Number.isInteger(seed))) {
    throw new Error('how many, and the seed, are whole numbers');
  }
  const from = performance.now();
  const { answered, withSlack, unstable, faults } = trials(count, seed);
  line(`random battens, seed ${seed}`, String(count));
  line('  answered', String(answered));
  line('  of these with slack lines', String(withSlack));
  line('  mechanisms, without a number', String(unstable));
  line('  faults', String(faults.length));
  line('  time', `${((performance.now() - from) / 1000).toFixed(1)} s`);
  if (faults.length > 0) {
    throw new Error(`${faults.length} faults: ${faults.slice(0, 10).join('; ')}`);
  }
};

if (import.meta.main) {
  const [count = COUNT, seed = SEED] = process.argv.slice(2).map(Number);
  run(count, seed);
}
