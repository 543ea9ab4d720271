import { lack } from './known-values.ts';
import { isSameHeight } from './limits.ts';
import type { Lack, SetCase } from './rule.ts';

/** A batten height at which a set comes to rest, and what it is there for. */
export type RestHeight = { readonly name: string; readonly heightM: number };

/**
 * The trims of a hang as batten heights, with the height at which steel holds it. A trim that was
 * measured to a lens or a lowest point is a batten height only once the plan has worked it out.
 */
export const trimHeights = ({
  set: { hang, plan },
}: SetCase): { readonly heights: readonly RestHeight[]; readonly lacks: readonly Lack[] } => {
  if (hang === null) return { heights: [], lacks: [] };
  const heights: RestHeight[] = plan.known
    ? plan.value.trims.map(({ trim, height }) => ({ name: trim.name, heightM: height }))
    : [];
  const lacks: Lack[] = [];
  for (const { name, height, reference } of plan.known ? [] : hang.trims) {
    if (height.known && reference === 'batten') heights.push({ name, heightM: height.value });
    else lacks.push(lack(`height of the batten at ${name} trim`, 'trims of the set'));
  }
  const { deadHungAt } = hang;
  if (deadHungAt?.known === true) heights.push({ name: 'dead-hung', heightM: deadHungAt.value });
  return { heights, lacks };
};

/** Where the cues of the show leave a set at rest. */
export const cueHeights = ({ show, set }: SetCase): readonly RestHeight[] => {
  const found: RestHeight[] = [];
  for (const { number, set: id, from, to } of show?.cues ?? []) {
    if (id !== set.lineSet.id) continue;
    for (const [heightM, end] of [
      [from, 'before'],
      [to, 'after'],
    ] as const) {
      if (found.some((one) => isSameHeight(one.heightM, heightM))) continue;
      found.push({ name: `${end} cue ${number}`, heightM });
    }
  }
  return found;
};
