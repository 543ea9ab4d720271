/** How the record of a set came to be believed, with its sign and its word. */

import type { SetAssessment } from '#assessment';
import type { GlyphName } from '#drawings';
import { tradeWord, wallSigns } from '#drawings';
import type { House } from '#house';
import { unreachable } from '#outcome';
import type { Knowledge } from '#state';
import { phrase } from '#texts';

export type Known = {
  /** Null where no sign says it. */ readonly glyph: GlyphName | null;
  readonly words: string;
};

const byBasis = ({ basis, second }: Knowledge, house: House): Known => {
  switch (basis) {
    case 'counted':
      return {
        glyph: 'counted',
        words: second === null ? phrase(house, 'counted by one') : phrase(house, 'counted'),
      };
    case 'pullTested':
      return { glyph: 'pullTested', words: phrase(house, 'pull-tested') };
    case 'weighed':
      return { glyph: null, words: phrase(house, 'weighed') };
    case 'carriedOver':
      return { glyph: null, words: phrase(house, 'carried over') };
    case 'unknown':
      return { glyph: 'unknown', words: phrase(house, 'not recorded') };
    default:
      return unreachable(basis);
  }
};

/** A state that overrules the rest is said instead: locked out, stale, held by steel. */
export const knownBy = (set: SetAssessment, house: House, nowMs: number): Known => {
  const { state } = set.recorded;
  const { word } = wallSigns(set, house, nowMs);
  if (state.service === 'lockedOut')
    return { glyph: 'lockedOut', words: word ?? phrase(house, 'LOCKED OUT') };
  if (state.service === 'deadHung') {
    return { glyph: 'deadHung', words: tradeWord(house, 'deadHung') };
  }
  return word === null ? byBasis(state.knowledge, house) : { glyph: 'stale', words: word };
};
