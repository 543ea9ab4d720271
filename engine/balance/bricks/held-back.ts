/** Which limits keep a set further out of balance than its smallest brick would. */
import { closestMixes } from './closest-mixes.ts';
import { holdWindow, massLimitLeft } from './mix-limits.ts';
import type { MixTask } from './mix-task.ts';
import { MASS_TIE, problemOf, type StackTask } from './problem.ts';

export type MixLimit = 'stock' | 'rod' | 'massLimit' | 'holds';

const LIMITS: readonly MixLimit[] = ['stock', 'rod', 'massLimit', 'holds'];

const gapWithout = (
  set: MixTask,
  task: StackTask,
  leastGap: number,
  lifted: readonly MixLimit[],
): number => {
  const holds = lifted.includes('holds')
    ? { massFrom: Number.NEGATIVE_INFINITY, massTo: Number.POSITIVE_INFINITY }
    : holdWindow(set);
  const massLimit = lifted.includes('massLimit') ? Number.POSITIVE_INFINITY : massLimitLeft(set);
  const problem = problemOf(
    {
      ...task,
      massFrom: Math.max(holds.massFrom, task.want - leastGap),
      massTo: Math.min(holds.massTo, massLimit, task.want + leastGap),
    },
    { stock: lifted.includes('stock'), rod: lifted.includes('rod') },
  );
  return closestMixes(problem, 0).best[0]?.gap ?? Number.POSITIVE_INFINITY;
};

/**
 * The limits which, lifted alone, would let a better mix in; all of them, where only all together
 * would. None where the least gap is within half the smallest brick, which is all one can ask.
 */
export const heldBackBy = (
  set: MixTask,
  task: StackTask,
  leastGap: number,
  halfSmallest: number,
): readonly MixLimit[] => {
  if (leastGap <= halfSmallest + MASS_TIE) return [];
  const helps = (lifted: readonly MixLimit[]): boolean =>
    gapWithout(set, task, leastGap, lifted) < leastGap - MASS_TIE;
  const alone = LIMITS.filter((limit) => helps([limit]));
  return alone.length > 0 || !helps(LIMITS) ? alone : LIMITS;
};
