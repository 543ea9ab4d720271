/** Every reason for which this room does not take what it is asked. A code is never reused. */
import { type Refusal, refusal } from '#outcome';

export type RefusalCode = {
  readonly code: string;
  readonly title: string;
  readonly meaning: string;
};

const REFUSALS = {
  nodesDisordered: {
    code: 'MOT-001',
    title: 'Heights out of order',
    meaning: 'Nodes of a curve go upward, each a millimetre or more above the one before.',
  },
  travelUncovered: {
    code: 'MOT-002',
    title: 'Travel not covered',
    meaning:
      'A curve reaches from the low stop to the high stop; beyond its ends nothing is known.',
  },
  jumpUnlike: {
    code: 'MOT-003',
    title: 'Jump without its mass',
    meaning:
      'Where the imbalance jumps as a piece meets the deck, the hanging mass jumps by as much.',
  },
  moreThanHangs: {
    code: 'MOT-004',
    title: 'More than hangs',
    meaning: 'The imbalance is more than the weight of that side, so one of the two is a slip.',
  },
  contactReversed: {
    code: 'MOT-005',
    title: 'Contact reversed',
    meaning: 'The lower value of a contact is not above the higher one.',
  },
} as const satisfies Readonly<Record<string, RefusalCode>>;

/** All codes of this room, in order, for the generated list. */
export const MOTION_REFUSALS: readonly RefusalCode[] = Object.values(REFUSALS);

export const refuse = (
  name: keyof typeof REFUSALS,
  path: string,
  said: { readonly found: string; readonly accepted: string },
): Refusal => refusal(REFUSALS[name].code, path, said);
