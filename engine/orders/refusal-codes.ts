/** Every reason for which no order of work can be asked for. A code is never reused. */
import { type Refusal, refusal } from '#outcome';

export type RefusalCode = {
  readonly code: string;
  readonly title: string;
  readonly meaning: string;
};

const REFUSALS = {
  noState: {
    code: 'WRK-001',
    title: 'No state',
    meaning:
      'An order of work begins from a record: no state means unknown, never bare and at low trim.',
  },
  noSet: {
    code: 'WRK-002',
    title: 'No such set',
    meaning: 'The house has no set of this name.',
  },
  notKnown: {
    code: 'WRK-003',
    title: 'Not known',
    meaning: 'An order of work needs a value that nobody has written down.',
  },
  coupled: {
    code: 'WRK-004',
    title: 'Coupled with other sets',
    meaning:
      'This set never moves alone: an order is found for it and its partner, or for neither.',
  },
  carriesPerson: {
    code: 'WRK-005',
    title: 'Carries a person',
    meaning: 'Flying people is out of scope: no order is found or judged for such a set.',
  },
} as const satisfies Readonly<Record<string, RefusalCode>>;

/** All codes of this room, in order, for the generated list. */
export const WORK_REFUSALS: readonly RefusalCode[] = Object.values(REFUSALS);

export const refuse = (
  name: keyof typeof REFUSALS,
  path: string,
  said: { readonly found: string; readonly accepted: string },
): Refusal => refusal(REFUSALS[name].code, path, said);
