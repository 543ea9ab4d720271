import { worstBy } from '../worst.ts';
import type { Scene } from './scene.ts';
import type { Breach } from './verdict.ts';

/** A step that was replayed: where it led, what it broke, and what is still to be seen. */
export type Done = {
  readonly scene: Scene;
  readonly breaches: readonly Breach[];
  readonly proofs: readonly string[];
};

/** Each rule once: a step that breaks one for every brick breaks it at the first. */
export const firstOfEach = (breaches: readonly Breach[]): readonly Breach[] =>
  breaches.filter(({ rule }, index) => breaches.findIndex((each) => each.rule === rule) === index);

/** The breach that goes furthest past its limit. */
export const gravest = (breaches: readonly Breach[]): readonly Breach[] => {
  const worst = worstBy(breaches, ({ byN }) => byN ?? 0);
  return worst === undefined ? [] : [worst];
};
