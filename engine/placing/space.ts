import type { House, Known, LineSet } from '#house';
import type { Metres } from '#quantities';
import type { Show } from '#show';
import type { Gap, Space } from './types.ts';

/** Depths are typed in inches: two that touch differ in the last binary place. */
const TOUCHING_M = 1e-9;

type Used = {
  readonly set: string;
  readonly awayM: number;
  readonly halfDepth: Known<Metres>;
};

/**
 * Room in depth between the piece and what hangs beside it.
 *
 *     gap = |y_j - y| - d_j - d      smallest over the used sets j of one side
 *
 *     y, y_j  m  places of the two sets, upstage of the plaster line
 *     d, d_j  m  half depths up and down stage of the batten's centre line
 *
 * Unknown where the place or depth of the piece or of the next used set is, or where any used set
 * has no known place: it may be the next. Overlap with a known depth further off is found too.
 *
 * Source  the-job.md C73, without its allowance: the house document has none
 * Omits   heights: what hangs above or below each other may overlap and clear (errs safe); the
 *         allowance for swing, drift and moving parts, and unknown depths behind the next used set
 *         (err unsafe)
 * Check   examples/kestlemere/which-set.test.ts
 */
export const spaceAt = (
  house: House,
  others: Show,
  lineSet: LineSet,
  halfDepth: Known<Metres>,
): Space => {
  const { y } = lineSet;
  const used = others.hangs.flatMap(({ set, halfDepth: depth }) => {
    const beside = house.lineSets.find(({ id }) => id === set);
    return beside === undefined || set === lineSet.id ? [] : [{ set, y: beside.y, depth }];
  });
  const needs = [
    ...(y.known ? [] : [`place of set ${lineSet.id}`]),
    ...(halfDepth.known ? [] : ['half depth of the piece']),
    ...used.flatMap((each) => (each.y.known ? [] : [`place of set ${each.set}`])),
  ];
  if (!y.known || !halfDepth.known || needs.length > 0) {
    const unknown: Gap = { is: 'unknown', needs };
    return { downstage: unknown, upstage: unknown };
  }
  const away = used.flatMap(({ set, y: place, depth }): readonly Used[] =>
    place.known ? [{ set, awayM: place.value - y.value, halfDepth: depth }] : [],
  );
  const backwards = away.map((each) => ({ ...each, awayM: -each.awayM }));
  return {
    downstage: gapOn(backwards, halfDepth.value),
    upstage: gapOn(away, halfDepth.value),
  };
};

const gapOn = (used: readonly Used[], halfM: number): Gap => {
  const side = used
    .filter(({ awayM }) => awayM >= 0)
    .toSorted((one, other) => one.awayM - other.awayM);
  const [next] = side;
  if (next === undefined) return { is: 'open' };
  const known = side.flatMap(({ set, awayM, halfDepth }) =>
    halfDepth.known ? [{ is: 'gap' as const, set, gapM: awayM - halfDepth.value - halfM }] : [],
  );
  const [least] = known.toSorted((one, other) => one.gapM - other.gapM);
  const isFoul = least !== undefined && least.gapM < -TOUCHING_M;
  if (!next.halfDepth.known && !isFoul) {
    return { is: 'unknown', needs: [`half depth of set ${next.set}`] };
  }
  return least ?? { is: 'unknown', needs: [`half depth of set ${next.set}`] };
};

/** Whether two depths overlap, and not only touch. */
export const isOverlap = (gapM: number): boolean => gapM < -TOUCHING_M;
