/**
 * Pulls on a single purchase set whose two blocks, loft and head, each make the line that leaves
 * them K times as tight as the line that comes in. Forces in kgf, as the handbook's table.
 */
import { pullTest } from '#balance';

const KILOGRAM_FORCE = 9.80665;

export const battenKgf = 250;
export const arborKgf = 255;

export type Pulls = { readonly outKgf: number; readonly inKgf: number };

/** Going out the line leaves the blocks toward the arbor, coming in toward the batten. */
export const pullsOver = (perBlock: number): Pulls => ({
  outKgf: battenKgf * perBlock * perBlock - arborKgf,
  inKgf: arborKgf - battenKgf / (perBlock * perBlock),
});

/** What the program makes of the two pulls. */
export const readKgf = ({ outKgf, inKgf }: Pulls) => {
  const found = pullTest({
    outN: outKgf * KILOGRAM_FORCE,
    inN: inKgf * KILOGRAM_FORCE,
    handLinePerBatten: 1,
  });
  return {
    imbalanceKgf: found.imbalance / KILOGRAM_FORCE,
    frictionKgf: found.friction / KILOGRAM_FORCE,
  };
};
