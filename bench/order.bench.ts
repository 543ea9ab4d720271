/**
 * The order of work of every counterweight set of the demo, load and strike, by the words of the
 * issue: warm, 100 ms each at most, 500 ms for the house curtain and the iron bridge. With the
 * count of states. Run it by itself: `node bench/order.bench.ts`.
 */
import { type OrderGoal, type OrderPlan, planOrder } from '#sequence';
import type { Standing } from '#state';
import {
  bareOn,
  feet,
  hungOn,
  hungSet,
  type PlanSet,
  pounds,
  showRuns,
} from '../examples/kestlemere/plan-sets.ts';

/** Full and half bricks of each set (10.4 of the demo's plan). */
const SETS: readonly (readonly [string, number, number])[] = [
  ['1', 21, 1],
  ['2', 10, 0],
  ['3', 5, 0],
  ['5', 33, 0],
  ['7', 5, 1],
  ['8', 5, 0],
  ['9', 6, 1],
  ['11', 25, 1],
  ['15', 5, 1],
  ['16', 4, 1],
  ['17', 3, 1],
  ['19', 23, 0],
  ['21', 4, 1],
  ['22', 7, 0],
  ['23', 9, 1],
  ['27', 8, 0],
  ['28', 5, 1],
  ['29', 4, 1],
  ['30', 2, 1],
  ['32', 30, 0],
  ['34', 3, 0],
  ['36', 20, 1],
  ['38', 5, 1],
  ['40', 14, 1],
  ['D2', 32, 0],
  ['D3', 19, 0],
  ['D4', 15, 1],
];

const SLOW = new Set(['1', '36']);
const MOST_MS = 100;
const SLOW_MOST_MS = 500;
const RUNS = 7;

const median = (values: readonly number[]): number =>
  values.toSorted((one, other) => one - other)[values.length >> 1] ?? Number.NaN;

const words = (plan: OrderPlan): string => {
  if ('none' in plan) return `none exists, all ${plan.none.searched} states searched`;
  if ('stopped' in plan) return `none found in ${plan.stopped.searched} states`;
  const { searched, restraint } = plan.found;
  const held = restraint === null ? '' : `, ${Math.round(restraint.rated / pounds(1))} lb held`;
  return `${searched} states${held}`;
};

let late = 0;

const timed = (set: PlanSet, what: string, start: Standing, goal: OrderGoal): void => {
  const ask = () =>
    planOrder(set.physics, start, goal, {
      doubtShare: 0,
      lock: 'planning',
      restraintStepN: pounds(5),
      rests: set.rigid,
    });
  let plan = ask();
  const times = Array.from({ length: RUNS }, () => {
    const before = performance.now();
    plan = ask();
    return performance.now() - before;
  });
  const ms = median(times);
  const mostMs = SLOW.has(set.id) ? SLOW_MOST_MS : MOST_MS;
  if (ms > mostMs) late += 1;
  const mark = ms > mostMs ? `  late: ${mostMs} ms at most` : '';
  console.log(
    `${set.id.padStart(3)} ${what.padEnd(8)}${ms.toFixed(1).padStart(7)} ms  ${words(plan)}${mark}`,
  );
};

for (const [id, full, half] of SETS) {
  const set = hungSet(id);
  const trimM = Math.max(...set.trimsM);
  const all = (wanted: 'on' | 'away') =>
    Object.fromEntries(set.items.map((item) => [item, wanted]));
  const bricks = { F: full, H: half };
  const load: OrderGoal = {
    items: all('on'),
    bricks,
    height: feet(trimM / feet(1)),
    service: 'in',
  };
  const strike: OrderGoal = { items: all('away'), bricks: {}, height: null, service: 'in' };
  timed(set, 'load', bareOn(set, 3), load);
  timed(set, 'strike', hungOn(set, trimM / feet(1), showRuns(full, half)), strike);
}
if (late > 0) {
  console.error(`${late} plans take longer than they may`);
  process.exitCode = 1;
}
