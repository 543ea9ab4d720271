/** Every reason for which this room does not take a number. A code is never reused. */
import type { Refusal } from '#outcome';
import { refusal } from '#outcome';

export type RefusalCode = {
  readonly code: string;
  readonly title: string;
  readonly meaning: string;
};

const REFUSALS = {
  notMagnitude: {
    code: 'TKO-001',
    title: 'Not a magnitude',
    meaning: 'A length, a mass or a share is finite and not negative.',
  },
  notCount: {
    code: 'TKO-002',
    title: 'Not a count',
    meaning: 'A number of parts is whole and not negative.',
  },
  tolerance: {
    code: 'TKO-003',
    title: 'Not a tolerance',
    meaning: 'A tolerance is a half width: finite and not negative.',
  },
  shareTooLarge: {
    code: 'TKO-004',
    title: 'Share too large',
    meaning: 'A share is a part of one, so 50 % is 0.5; 3 or more is a per cent sign forgotten.',
  },
  centreOutside: {
    code: 'TKO-005',
    title: 'Centre outside the piece',
    meaning: 'The centre of gravity lies between the foot and the top of the piece.',
  },
  positions: {
    code: 'TKO-006',
    title: 'Positions do not fit',
    meaning: 'Positions across the stage are finite numbers, and a row has one for each unit.',
  },
  nothingListed: {
    code: 'TKO-007',
    title: 'Nothing on the list',
    meaning: 'A take-off without a line weighs nothing only on paper.',
  },
  toleranceTwice: {
    code: 'TKO-008',
    title: 'Tolerance given twice',
    meaning: 'A tolerance is given in the unit of the value or as a share of it, not as both.',
  },
} as const satisfies Readonly<Record<string, RefusalCode>>;

export type RefusalName = keyof typeof REFUSALS;

/** All codes of this room, in order, for the generated list. */
export const TAKEOFF_REFUSALS: readonly RefusalCode[] = Object.values(REFUSALS);

export const refuse = (
  name: RefusalName,
  path: string,
  said: { readonly found: string; readonly accepted: string },
): Refusal => refusal(REFUSALS[name].code, path, said);
