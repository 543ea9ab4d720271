import { GRAVITY, type Kilograms, kilograms, type Newtons, newtons } from '#quantities';

/** The lines of a set and the heights of their ends at one height of the batten. */
export type SetLines = {
  readonly purchase: 1 | 2;
  readonly lines: number;
  readonly massPerLength: number;
  readonly headZ: number;
  readonly wireEndZ: number;
  readonly attachZ: number;
};

/**
 * Wire that hangs from the head steel on the arbor's side.
 *
 *     r·n·w·(z_H − z_t)
 *
 * It grows as the batten goes out: 6 lines of 1/4 in with the arbor 58 ft below are 38 lb.
 *
 * Source  geometry
 */
export const arborWireMass = (set: SetLines): Kilograms =>
  kilograms(set.purchase * set.lines * set.massPerLength * (set.headZ - set.attachZ));

export type Restrained = {
  readonly battenSide: Newtons;
  readonly arborSide: Newtons;
  /** The larger: what the lines carry when the other side is held. */
  readonly force: Newtons;
};

/**
 * Force of all lines at the head block when one side is held and the other hangs.
 *
 *     batten's side  g·(B + n·w·(z_H − z_e))          arbor held
 *     arbor's side   g·(A/r + n·w·(z_H − z_t))        batten held down, or stood on the deck
 *
 *     B    kg    battenSideKg  batten, fittings and all that hangs
 *     A    kg    arborMassKg
 *     n    -     lines
 *     w    kg/m  massPerLength
 *     z_H  m     headZ         where a line is highest it carries most
 *     z_e  m     wireEndZ
 *     z_t  m     attachZ
 *     r    -     purchase
 *
 * Source  equilibrium of the side that hangs; the-job.md C37
 * Holds   whatever holds the other side does not pull as well: a bull line or a capstan adds to it
 * Omits   friction of the blocks, which takes some of it (less)
 * Check   both-sides.test.ts; the difference of the two is the imbalance of `#balance`
 */
export const restrainedForce = (
  set: SetLines,
  { battenSideKg, arborMassKg }: { readonly battenSideKg: number; readonly arborMassKg: number },
): Restrained => {
  const wireKg = (endZ: number): number => set.lines * set.massPerLength * (set.headZ - endZ);
  const battenSideN = GRAVITY * (battenSideKg + wireKg(set.wireEndZ));
  const arborSideN = GRAVITY * (arborMassKg / set.purchase + wireKg(set.attachZ));
  return {
    battenSide: newtons(battenSideN),
    arborSide: newtons(arborSideN),
    force: newtons(Math.max(battenSideN, arborSideN)),
  };
};
