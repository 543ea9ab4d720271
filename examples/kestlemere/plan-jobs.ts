/** Load and strike of every counterweight set of the demo, as the planner is asked for them. */
import { type OrderGoal, type OrderOptions, type OrderPlan, planOrder } from '#sequence';
import type { Standing } from '#state';
import {
  asFeet,
  bareOn,
  feet,
  hungOn,
  hungSet,
  type PlanSet,
  pounds,
  showRuns,
} from './plan-sets.ts';

/** Full and half bricks of each set (10.4 of the demo's plan; D3 as when its frame flies). */
const BRICKS: readonly (readonly [string, number, number])[] = [
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

export type PlanJob = {
  readonly name: string;
  readonly set: PlanSet;
  readonly start: Standing;
  readonly goal: OrderGoal;
};

const jobsOn = ([id, full, half]: (typeof BRICKS)[number]): readonly PlanJob[] => {
  const set = hungSet(id);
  const trimFt = asFeet(Math.max(...set.trimsM));
  const all = (wanted: 'on' | 'away') =>
    Object.fromEntries(set.items.map((item) => [item, wanted]));
  const load: OrderGoal = {
    items: all('on'),
    bricks: { F: full, H: half },
    height: feet(trimFt),
    service: 'in',
  };
  const strike: OrderGoal = { items: all('away'), bricks: {}, height: null, service: 'in' };
  const hung = hungOn(set, trimFt, showRuns(full, half));
  return [
    { name: `set ${id}, load`, set, start: bareOn(set, 3), goal: load },
    { name: `set ${id}, strike`, set, start: hung, goal: strike },
  ];
};

export const DEMO_JOBS: readonly PlanJob[] = BRICKS.flatMap(jobsOn);

export const planOf = (
  { set, start, goal }: PlanJob,
  options: Partial<OrderOptions> = {},
): OrderPlan =>
  planOrder(set.physics, start, goal, {
    doubtShare: 0,
    lock: 'planning',
    restraintStepN: pounds(5),
    rests: set.rigid,
    ...options,
  });
