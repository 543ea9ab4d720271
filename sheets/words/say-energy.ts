/** Energy that a set would set free, as joules and as bricks let fall: a size that a hand knows. */
import { letFall } from '#drawings';
import type { House } from '#house';
import { formatLength, formatQuantity, metres } from '#quantities';
import type { OrderPhysics } from '#state';
import { filled } from './fill-words.ts';
import { bricksWords } from './say-standing.ts';

/** `365 J, as 1 full let fall 10'-9 1/8"`. Rounded up, as loads are. */
export const energyWords = (
  energyJ: number,
  { bricks }: Pick<OrderPhysics, 'bricks'>,
  house: House,
): string => {
  // Joules in every house: a foot-pound is taken for a torque.
  const size = formatQuantity('energy', energyJ, 'metric', { round: 'up' });
  const fall = letFall(energyJ, bricks);
  if (fall === null) return size;
  return filled('{size}, as {bricks} let fall {fall}', house, {
    size,
    bricks: bricksWords(fall.count, fall.kind, house),
    fall: formatLength(metres(fall.fallM), house, { round: 'up' }),
  });
};
