/**
 * A check of the whole demo house in the engine, warm: every set worked through every calculator
 * (what each line, block, bay and well carries among them, bare, hung and in each state of it) and
 * judged by every rule, with and without reading the three files. Held against one frame of a
 * screen at 60 Hz, since a screen that answers as one types has no longer. Then the same for a
 * house of ten times the sets (a document holds at most 400), to see that time grows with the
 * sets and no faster. Run it by itself: `node bench/check.bench.ts`.
 */
import { Bench } from 'tinybench';
import { assess } from '#assessment';
import { readHouse, readShow, readState } from '#documents';
import { judge } from '#rules';
import { demoTexts, type HouseTexts, largerHouse } from './larger-house.ts';

/** ms, one picture of sixty a second. */
const FRAME = 1000 / 60;

/**
 * Whole check of parsed documents, in frames. The aim is one; a machine that has other work in
 * hand takes twice as long, and is no fault of ours.
 */
const FRAMES_MAX = 2;

/** How many times longer each set of the large house may take; 1 is linear. */
const PER_SET_MAX = 1.5;

const COPIES = 10;
const NOW_MS = Date.UTC(2026, 10, 25, 14, 31);

const read = (texts: HouseTexts) => {
  const house = readHouse(texts.house);
  if (!house.ok) throw new Error(`the house does not read: ${JSON.stringify(house.error[0])}`);
  const show = readShow(texts.show, house.value.house);
  if (!show.ok) throw new Error(`the show does not read: ${JSON.stringify(show.error[0])}`);
  const state = readState(texts.state, house.value.house);
  if (!state.ok) throw new Error(`the state does not read: ${JSON.stringify(state.error[0])}`);
  return { house: house.value.house, show: show.value.show, state: state.value.state };
};
type Documents = ReturnType<typeof read>;

const check = ({ house, show, state }: Documents): number =>
  judge(house, show, state, assess(house, show, state), { nowMs: NOW_MS }).length;

/** States in which a batten on its lines was solved; none would be a bench of something less. */
const battensSolved = ({ house, show, state }: Documents): number =>
  assess(house, show, state).sets.reduce((sum, { structure }) => {
    const states = structure.known ? structure.value.states : [];
    return sum + states.filter(({ beam }) => !('unstable' in beam)).length;
  }, 0);

/** Median time of each piece of work, ms, warm. */
const medians = async (work: Readonly<Record<string, () => void>>): Promise<readonly number[]> => {
  const bench = new Bench({ time: 1500, iterations: 20, warmupTime: 500, warmupIterations: 10 });
  for (const [name, run] of Object.entries(work)) bench.add(name, run);
  await bench.run();
  return bench.tasks.map((task) => {
    if (task.result.state !== 'completed') throw new Error(`${task.name}: ${task.result.state}`);
    return task.result.latency.p50;
  });
};

const line = (what: string, value: string): void => {
  console.log(`${what.padEnd(58)}${value.padStart(14)}`);
};
const ms = (value: number): string => `${value.toFixed(2)} ms`;
const frames = (value: number): string => `${(value / FRAME).toFixed(2)} frames`;

export const run = async (): Promise<void> => {
  const demo = demoTexts();
  const large = largerHouse(demo, COPIES, Number.POSITIVE_INFINITY);
  const [demoRead, largeRead] = [read(demo), read(large)];
  const sets = [demoRead, largeRead].map(({ house }) => house.lineSets.length);
  const battens = battensSolved(demoRead);
  const [parsed = NaN, whole = NaN, largeParsed = NaN, largeWhole = NaN] = await medians({
    'demo, parsed': () => check(demoRead),
    'demo, with reading': () => check(read(demo)),
    'large house, parsed': () => check(largeRead),
    'large house, with reading': () => check(read(large)),
  });
  const [perSet, perSetWhole] = [largeParsed / parsed, largeWhole / whole].map(
    (times) => times / COPIES,
  );
  line(`check of the demo, ${sets[0]} sets, ${check(demoRead)} findings`, ms(parsed));
  line('  against a frame of 16.7 ms', frames(parsed));
  line('  battens solved in it', String(battens));
  line('check of the demo with reading its three files', ms(whole));
  line('  against a frame of 16.7 ms', frames(whole));
  line(`check of a house of ${sets[1]} sets, ${check(largeRead)} findings`, ms(largeParsed));
  line('  for each set, times that of the demo', `${perSet?.toFixed(2)} x`);
  line('check of that house with reading its files', ms(largeWhole));
  line('  for each set, times that of the demo', `${perSetWhole?.toFixed(2)} x`);
  if (battens < (sets[0] ?? NaN)) throw new Error(`only ${battens} battens were solved`);
  if (!(parsed <= FRAMES_MAX * FRAME)) {
    throw new Error(`a check takes ${frames(parsed)}, over ${FRAMES_MAX}`);
  }
  if (!((perSet ?? NaN) <= PER_SET_MAX)) {
    throw new Error(`a set of the large house takes ${perSet?.toFixed(2)} x as long`);
  }
};

if (import.meta.main) await run();
