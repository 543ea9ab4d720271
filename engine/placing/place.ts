import { candidateOn, findingsWithout } from './candidate.ts';
import { freeSets } from './free-sets.ts';
import type { Candidate, PlacingAsked, Withheld } from './types.ts';

export type Places = {
  /** In rail order; `rank` puts them in order of choice. */
  readonly candidates: readonly Candidate[];
  /** The piece where the show hangs it now, to compare; null for a new one. */
  readonly now: Candidate | null;
  readonly withheld: readonly Withheld[];
};

/**
 * A piece on every free line set of the house, one after the other, all else as the show has it.
 * Some 60 ms a set: never on the thread of a page.
 */
export const placesFor = (asked: PlacingAsked): Places => {
  const { free, withheld } = freeSets(asked);
  const before = findingsWithout(asked);
  const from = asked.house.lineSets.find(({ id }) => id === asked.piece.from);
  return {
    candidates: free.map((lineSet) => candidateOn(asked, lineSet, before)),
    now: from === undefined ? null : candidateOn(asked, from, before),
    withheld: withheld.filter(({ set }) => set !== from?.id),
  };
};

/** A hang of the show as a piece to move; null where the set is empty. */
export const pieceOf = (show: PlacingAsked['show'], set: string): PlacingAsked['piece'] | null => {
  const hang = show.hangs.find((each) => each.set === set);
  if (hang === undefined) return null;
  const { set: from, bricks: _left, ...rest } = hang;
  return { from, hang: rest };
};
