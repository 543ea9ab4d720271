import type { House } from '#house';
import type { HouseCase } from '../rule.ts';

/** Bricks of a kind that stay on arbors, over the whole house, counted from the house itself. */
export const pipeWeightCount = ({ lineSets }: House, kind: string): number =>
  lineSets
    .flatMap(({ arbor }) => arbor?.pipeWeight ?? [])
    .filter((run) => run.kind === kind)
    .reduce((sum, { count }) => sum + count, 0);

/**
 * Show bricks of a kind that the show asks for: as a person fixed them, also on a set whose plan
 * cannot be worked out, else as the plan has them.
 */
export const showCount = ({ assessment }: HouseCase, kind: string): number =>
  assessment.sets.reduce((sum, { hang, plan }) => {
    const fixed = hang?.bricks?.counts[kind];
    if (fixed !== undefined) return sum + fixed;
    const runs = plan.known ? plan.value.stack.show : [];
    return sum + (runs.find((run) => run.kind === kind)?.count ?? 0);
  }, 0);
