/** Energy that a set would set free, as joules and as bricks let fall: a size that a hand knows. */
import { letFall } from '#drawings';
import type { House } from '#house';
import { formatLength, formatQuantity, metres } from '#quantities';
import type { OrderPhysics } from '#state';
import { filled } from './fill-words.ts';
import { bricksWords } from './say-standing.ts';

type Bricks = Pick<OrderPhysics, 'bricks'>;

/** Joules in every house: a foot-pound is taken for a torque. Rounded up, as loads are. */
export const energySize = (energyJ: number, { tongue }: House): string =>
  formatQuantity('energy', energyJ, { units: 'metric', tongue }, { round: 'up' });

const fallNames = (energyJ: number, { bricks }: Bricks, house: House) => {
  const fall = letFall(energyJ, bricks);
  return fall === null
    ? null
    : {
        bricks: bricksWords(fall.count, fall.kind, house),
        fall: formatLength(metres(fall.fallM), house, { round: 'up' }),
      };
};

/** `1 full let fall 10'-9 1/8"`; null where it is next to nothing. */
export const fallWords = (energyJ: number, physics: Bricks, house: House): string | null => {
  const names = fallNames(energyJ, physics, house);
  return names === null ? null : filled('{bricks} let fall {fall}', house, names);
};

/** `365 J, as 1 full let fall 10'-9 1/8"`. */
export const energyWords = (energyJ: number, physics: Bricks, house: House): string => {
  const size = energySize(energyJ, house);
  const names = fallNames(energyJ, physics, house);
  if (names === null) return size;
  return filled('{size}, as {bricks} let fall {fall}', house, { size, ...names });
};
