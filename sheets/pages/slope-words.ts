/** Whether a set comes back when it is moved or runs on, over the heights where it hangs free. */

import type { SetPlan } from '#assessment';
import { slopeAt } from '#balance';
import { tradeWord } from '#drawings';
import type { House } from '#house';
import { FOOT, formatLength, GRAVITY, metres } from '#quantities';
import { phrase } from '#texts';
import { height, loadMass } from '../words/say-set.ts';

/** A length over which the change is large enough to print in whole pounds. */
const STEP = { customary: 10 * FOOT, metric: 3 } as const;

type Piece = { readonly fromM: number; readonly toM: number; readonly slope: number };

const piecesOf = ({ curve, freeRange }: SetPlan): readonly Piece[] => {
  const inside = curve.nodes
    .map((node): number => node.height)
    .filter((heightM) => heightM > freeRange.from && heightM < freeRange.to);
  const heights = [freeRange.from as number, ...inside, freeRange.to as number];
  return heights.slice(1).flatMap((toM, index) => {
    const fromM = heights[index] ?? toM;
    const slope = slopeAt(curve, (fromM + toM) / 2);
    return toM - fromM > 1e-6 && slope !== null ? [{ fromM, toM, slope }] : [];
  });
};

const change = ({ slope }: Piece, house: House): string => {
  const stepM = STEP[house.units];
  const length = formatLength(metres(stepM), house, { customaryLength: 'inches' });
  const per = house.units === 'customary' ? phrase(house, '10 ft') : length;
  return phrase(house, '{abs} in {per}', {
    abs: loadMass((Math.abs(slope) * stepM) / GRAVITY, house),
    per,
  });
};

const pieceWords = (piece: Piece, isAlone: boolean, house: House): string => {
  const verb = piece.slope < 0 ? phrase(house, 'Runs') : phrase(house, 'Settles');
  const where = isAlone
    ? ''
    : phrase(house, ' from {fromM} to {toM}', {
        fromM: height(piece.fromM, house),
        toM: height(piece.toM, house),
      });
  return `${verb}${where}: ${change(piece, house)}.`;
};

export const slopeWords = (plan: SetPlan, house: House): string => {
  const pieces = piecesOf(plan);
  const level = pieces.filter(({ slope }) => slope !== 0);
  const set = tradeWord(house, 'set');
  if (pieces.length === 0) return phrase(house, 'It hangs free at one height only.');
  if (level.length === 0)
    return phrase(house, 'The {set} neither settles nor runs over its free travel.', { set });
  return level.map((piece) => pieceWords(piece, pieces.length === 1, house)).join(' ');
};
