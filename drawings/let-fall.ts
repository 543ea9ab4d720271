/** Energy that nothing holds, as whole bricks let fall: a size that a hand knows. */
import { GRAVITY } from '#quantities';
import type { OrderBrick } from '#state';

/** No grid is much higher; a longer fall is told with more bricks instead. */
const FALL_MOST_M = 20;

export type LetFall = {
  /** Id of the kind: the largest of the house. */
  readonly kind: string;
  readonly count: number;
  readonly fallM: number;
};

/**
 * How many of the largest brick let fall how far would set the same energy free.
 *
 *     fall = E / (n · m · g)
 *
 *     E     J    energyJ
 *     n     -    count, the least whole number with a fall of at most 20 m
 *     m     kg   mass of the largest brick
 *     fall  m    returned
 *
 * Source  energy of a falling body; standard gravity
 * Omits   air, which slows a brick (the picture shows no less than there is)
 * Check   one 11.34 kg brick over 1 m is 111.2 J (let-fall.test.ts)
 */
export const letFall = (energyJ: number, bricks: readonly OrderBrick[]): LetFall | null => {
  const [first, ...others] = bricks;
  if (energyJ <= 0 || first === undefined) return null;
  const largest = others.reduce((most, each) => (each.massKg > most.massKg ? each : most), first);
  const oneFallM = energyJ / (largest.massKg * GRAVITY);
  const count = Math.max(1, Math.ceil(oneFallM / FALL_MOST_M));
  return { kind: largest.id, count, fallM: oneFallM / count };
};
