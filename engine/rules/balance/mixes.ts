import type { SetAssessment } from '#assessment';
import { lack } from '../known-values.ts';
import type { Lack } from '../rule.ts';

type Choice = Extract<SetAssessment['choice'], { readonly known: true }>['value'];
type Infeasible = Extract<Choice, { readonly infeasible: unknown }>;

/** What the program chose for a set, without the answer that there is no mix. */
export type FoundChoice = Exclude<Choice, Infeasible>;

export const foundChoice = ({ choice }: SetAssessment): FoundChoice | null =>
  choice.known && !('infeasible' in choice.value) ? choice.value : null;

/** That no mix exists, with its reason; null where there is one or nothing was asked. */
export const noMix = ({ choice }: SetAssessment): Infeasible['infeasible'] | null =>
  choice.known && 'infeasible' in choice.value ? choice.value.infeasible : null;

/** A search that gave up has shown nothing, and must not read like one that has. */
export const gaveUp = (reason: string): Lack =>
  lack(`a mix of bricks (${reason})`, 'whether any mix of bricks keeps within the lock');

/** `7 F, 1 H`, kinds with none left out. */
export const mixText = (counts: Readonly<Record<string, number>>): string =>
  Object.entries(counts)
    .filter(([, count]) => count !== 0)
    .map(([kind, count]) => `${count} ${kind}`)
    .join(', ') || 'no show bricks';
