import type { SetAssessment, SetStructure } from '#assessment';
import { measure } from '#findings';
import { raise } from '../raise.ts';
import type { HouseCase, HouseRule } from '../rule.ts';
import { setList } from '../set-list.ts';
import { solvedStates } from './solved-states.ts';

/** PIP-005: joints that nobody has looked for are not reckoned with. Said once for the house. */
export const jointsUnknown: HouseRule = (the) =>
  doubted(the, ({ lineSet }) => lineSet.batten.splices === null).flatMap((sets) => [
    raise('PIP-005', {
      at: {},
      measured: measure(sets.length, 'count'),
      facts: { sets: setList(the.house, sets) },
    }),
  ]);

/**
 * PIP-006: section values rest on the nominal wall or on the thinner design wall, and differ by
 * about 6 %. Where nobody says which, bending may be that much nearer to its limit.
 */
export const wallUnsaid: HouseRule = (the) =>
  doubted(the, ({ lineSet }) => lineSet.batten.pipe.wall === null).flatMap((sets) => [
    raise('PIP-006', {
      at: {},
      measured: measure(sets.length, 'count'),
      facts: { sets: setList(the.house, sets) },
    }),
  ]);

/** The sets whose bending is judged and of which this is true; no list where there are none. */
const doubted = ({ assessment }: HouseCase, isDoubted: (set: SetAssessment) => boolean) => {
  const sets = assessment.sets
    .filter(({ structure }) => structure.known && isJudged(structure.value))
    .filter(isDoubted)
    .map(({ lineSet }) => lineSet);
  return sets.length === 0 ? [] : [sets];
};

const isJudged = (structure: SetStructure): boolean =>
  solvedStates(structure).some(({ solution }) => solution.allowable !== null);
