/** Every reason for which this room does not give a figure. A code is never reused. */
import { type Refusal, refusal } from '#outcome';

export type RefusalCode = {
  readonly code: string;
  readonly title: string;
  readonly meaning: string;
};

const REFUSALS = {
  noFigure: {
    code: 'LIN-001',
    title: 'No published figure',
    meaning: 'The table of what an end or a bend leaves of the strength does not go so far.',
  },
} as const satisfies Readonly<Record<string, RefusalCode>>;

/** All codes of this room, in order, for the generated list. */
export const LINES_REFUSALS: readonly RefusalCode[] = Object.values(REFUSALS);

export const refuse = (
  name: keyof typeof REFUSALS,
  path: string,
  said: { readonly found: string; readonly accepted: string },
): Refusal => refusal(REFUSALS[name].code, path, said);
