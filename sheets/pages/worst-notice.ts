/** The first thing on a balance card: the worst height, which way, and whether the lock has it. */

import { heavySide } from '#drawings';
import { type House, type LineSet, lockHoldOf } from '#house';
import { GRAVITY } from '#quantities';
import { phrase, told } from '#texts';
import type { Notice, Words } from '../sheet.ts';
import { strong } from '../sheet.ts';
import { sayMeasure } from '../words/say-measure.ts';
import { height, loadMass } from '../words/say-set.ts';
import type { Reading, Worst } from './readings.ts';

/** `just below 23'-0"`, `at 60'-0"`. */
export const whereWords = ({ heightM, side }: Reading, house: House): string => {
  const words = height(heightM, house);
  if (side === 'at') return phrase(house, 'at {words}', { words });
  return side === 'below'
    ? phrase(house, 'just below {words}', { words })
    : phrase(house, 'just above {words}', { words });
};

const lockWords = (house: House, limitN: number): string =>
  phrase(house, 'the lock ({measure})', {
    measure: sayMeasure({ value: limitN, kind: 'force' }, house, { round: 'down' }),
  });

export type NoticeContext = {
  readonly house: House;
  readonly lineSet: LineSet;
  /** Whether somebody stated a tolerance for every mass; else nothing is said of the worst case. */
  readonly isDoubtWhole: boolean;
};

const againstLock = (
  worst: Worst,
  { house, lineSet, isDoubtWhole }: NoticeContext,
): { readonly degree: Notice['degree']; readonly words: string } => {
  const hold = lockHoldOf(lineSet, house.rules);
  if (!hold.known) {
    return {
      degree: 'caution',
      words: phrase(house, 'What the lock may hold is not known: nothing is known to hold it.'),
    };
  }
  const limitN = hold.value;
  const lock = lockWords(house, limitN);
  const pastKg = (Math.abs(worst.any.valueN) - limitN) / GRAVITY;
  if (pastKg > 0) {
    return {
      degree: 'danger',
      words: phrase(house, 'NOT HELD: {pastKg} past {lock}.', {
        pastKg: loadMass(pastKg, house),
        lock,
      }),
    };
  }
  const { withDoubt } = worst;
  const atWorstN = Math.abs(withDoubt.valueN) + withDoubt.doubtN;
  if (atWorstN > limitN) {
    const size = loadMass(atWorstN / GRAVITY, house);
    return {
      degree: 'caution',
      words: phrase(
        house,
        'Within {lock} as listed; with every mass at its worst up to {size}, past it.',
        { lock, size },
      ),
    };
  }
  return isDoubtWhole
    ? {
        degree: 'note',
        words: phrase(house, 'Within {lock}, with every mass at its worst too.', { lock }),
      }
    : {
        degree: 'caution',
        words: phrase(house, 'Within {lock} as listed; not every tolerance is given.', { lock }),
      };
};

/** `WORST: 321 lb ARBOR HEAVY`, where, and what the lock makes of it. */
export const worstNotice = (worst: Worst, load: string, context: NoticeContext): Notice => {
  const { house } = context;
  const { degree, words } = againstLock(worst, context);
  const sizeKg = Math.abs(worst.any.valueN) / GRAVITY;
  const side = heavySide(house, worst.any.valueN).toUpperCase();
  return {
    kind: 'notice',
    degree,
    heading: phrase(house, 'WORST: {sizeKg} {side}', { sizeKg: loadMass(sizeKg, house), side }),
    words: [`${capital(whereWords(worst.any, house))}, ${load}. ${words}`],
  };
};

const capital = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}`;

/** The same in one sentence, for the curve after something has left in view. */
export const worstAfter = (worst: Worst, how: string, context: NoticeContext): Words => {
  const { house } = context;
  const { degree, words } = againstLock(worst, context);
  const word =
    degree === 'danger'
      ? phrase(house, 'Danger: ')
      : degree === 'caution'
        ? phrase(house, 'Caution: ')
        : '';
  const size = loadMass(Math.abs(worst.any.valueN) / GRAVITY, house);
  const heavy = `${size} ${heavySide(house, worst.any.valueN)}`;
  return [
    strong(`${word}${capital(told(house, `after ${how}`))}: ${heavy}`),
    ` ${whereWords(worst.any, house)}. ${words}`,
  ];
};

export const allBricksOn = (house: House): string => phrase(house, 'all bricks on');
