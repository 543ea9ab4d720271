/** Pieces put elsewhere by hand, as the address has them: `9>12,11>`; no set is nowhere. */
import { type Mapping, remapped } from '#fitting';

export type Move = { readonly from: string; readonly to: string | null };

const ID = /^[A-Za-z0-9][A-Za-z0-9._-]{0,31}$/;

/** What is no move is left out: an old address still opens. */
export const readMoves = (text: string | null): readonly Move[] =>
  (text ?? '').split(',').flatMap((part): readonly Move[] => {
    const [from = '', to = '', ...more] = part.split('>');
    if (!part.includes('>') || more.length > 0 || !ID.test(from)) return [];
    if (to === '') return [{ from, to: null }];
    return ID.test(to) ? [{ from, to }] : [];
  });

export const writeMoves = (moves: readonly Move[]): string | null =>
  moves.length === 0 ? null : moves.map(({ from, to }) => `${from}>${to ?? ''}`).join(',');

/** The last move of a piece is the one that counts. */
export const withMove = (moves: readonly Move[], move: Move): readonly Move[] => [
  ...moves.filter(({ from }) => from !== move.from),
  move,
];

export const moved = (mapping: Mapping, moves: readonly Move[]): Mapping =>
  moves
    .filter(({ from }) => Object.hasOwn(mapping, from))
    .reduce((sofar, { from, to }) => remapped(sofar, from, to), mapping);
