/** Which pieces two sets share at a moment, and what may be done while they do. */
import type { Standing, Step } from '#state';
import { SAME_M } from '../span.ts';
import type { PairBand, SharedPiece } from './types.ts';

export const SIDES = ['first', 'second'] as const;
export type Side = (typeof SIDES)[number];

export const otherOf = (side: Side): Side => (side === 'first' ? 'second' : 'first');

const isOn = ({ items }: Standing, id: string): boolean => {
  const phase = items[id] ?? 'away';
  return phase !== 'away' && phase !== 'beside';
};

export type Coupling = {
  /** On both: the battens go together or not at all. */
  readonly on: readonly SharedPiece[];
  /** On one of the two only: nothing else is done until it is on both or on neither. */
  readonly half: readonly { readonly piece: SharedPiece; readonly has: Side }[];
};

export const couplingOf = (
  shared: readonly SharedPiece[],
  standings: Readonly<Record<Side, Standing>>,
): Coupling => {
  const each = shared.map((piece) => ({
    piece,
    first: isOn(standings.first, piece.first),
    second: isOn(standings.second, piece.second),
  }));
  return {
    on: each.filter(({ first, second }) => first && second).map(({ piece }) => piece),
    half: each
      .filter(({ first, second }) => first !== second)
      .map(({ piece, first }) => ({ piece, has: first ? 'first' : 'second' })),
  };
};

/** Whether a deed of one set makes a piece that is half on whole again, or takes it off. */
export const endsHalf = ({ half }: Coupling, side: Side, step: Step): boolean =>
  half.some(({ piece, has }) =>
    side === has
      ? step.act === 'release' && step.item === piece[side]
      : step.act === 'attach' && step.item === piece[side],
  );

export const apartOf = (standings: Readonly<Record<Side, Standing>>): number =>
  standings.second.height - standings.first.height;

export const isInBand = ({ leastM, mostM }: PairBand, apartM: number): boolean =>
  apartM >= leastM - SAME_M && apartM <= mostM + SAME_M;
