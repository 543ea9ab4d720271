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

/** What is so of a gallery at every visit is said at the first: bricks there that look alike. */
export const saidOnce = (cautions: readonly Breach[]): readonly Breach[] => {
  const placeOf = ({ finding: { at, facts } }: Breach): string =>
    JSON.stringify([at.set, at.gallery, facts['kind'], facts['others']]);
  return cautions.filter(
    (each, index) =>
      each.rule !== 'ORD-051' ||
      cautions.findIndex(
        (other) => other.rule === each.rule && placeOf(other) === placeOf(each),
      ) === index,
  );
};

/** The breach that goes furthest past its limit. */
export const gravest = (breaches: readonly Breach[]): readonly Breach[] => {
  const worst = worstBy(breaches, ({ byN }) => byN ?? 0);
  return worst === undefined ? [] : [worst];
};
