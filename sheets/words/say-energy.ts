/** Energy that a set would set free, as joules and as bricks let fall: a size that a hand knows. */
import type { House } from '#house';
import { formatLength, formatQuantity, GRAVITY, metres } from '#quantities';
import type { OrderPhysics } from '#state';
import { filled } from './fill-words.ts';
import { bricksWords } from './say-standing.ts';

/** No grid is much higher; a longer fall is told with more bricks instead. */
const FALL_MOST_M = 20;

/**
 * `365 J, as 1 full let fall 10'-9 1/8"`.
 *
 *     fall = E / (n · m · g), n the least whole number with a fall of at most 20 m
 *
 * E energy J, m mass of the largest brick kg, g standard gravity. Rounded up, as loads are.
 */
export const energyWords = (
  energyJ: number,
  { bricks }: Pick<OrderPhysics, 'bricks'>,
  house: House,
): string => {
  // Joules in every house: a foot-pound is taken for a torque.
  const size = formatQuantity('energy', energyJ, 'metric', { round: 'up' });
  const [first, ...others] = bricks;
  if (energyJ <= 0 || first === undefined) return size;
  const largest = others.reduce((most, each) => (each.massKg > most.massKg ? each : most), first);
  const oneFallM = energyJ / (largest.massKg * GRAVITY);
  const count = Math.max(1, Math.ceil(oneFallM / FALL_MOST_M));
  return filled('{size}, as {bricks} let fall {fall}', house, {
    size,
    bricks: bricksWords(count, largest.id, house),
    fall: formatLength(metres(oneFallM / count), house.units, { round: 'up' }),
  });
};
