/** The figures of one row of the hang list, in the house's words and units. */

import type { BrickCount, SetAssessment, TrimBalance } from '#assessment';
import { tradeWord } from '#drawings';
import type { House, Known } from '#house';
import { unreachable } from '#outcome';
import { formatLength, type Metres } from '#quantities';
import { sayMeasure } from '#sheets';
import type { HangFamily, Trim } from '#show';
import { ENGLISH, message, phrase, type Voice } from '#texts';

export const lengthWords = (value: Known<Metres>, house: House, inches = false): string | null =>
  value.known
    ? formatLength(value.value, house, {
        customaryLength: inches ? 'inches' : 'feetInches',
      })
    : null;

const FAMILIES = {
  soft: message('soft'),
  hard: message('hard'),
  electric: message('electric'),
  other: message('other'),
} as const;

export const familyWords = (family: HangFamily, voice: Voice = ENGLISH): string => {
  switch (family) {
    case 'soft':
    case 'hard':
    case 'electric':
    case 'other':
      return phrase(voice, FAMILIES[family]);
    default:
      return unreachable(family);
  }
};

/** `21 F, 1 H`: ids, since counts are called by them; the key below says what they are. */
export const countsWords = (counts: readonly BrickCount[]): string => {
  const some = counts.filter(({ count }) => count > 0);
  return some.length === 0 ? 'none' : some.map(({ kind, count }) => `${count} ${kind}`).join(', ');
};

const sameCounts = (one: readonly BrickCount[], other: readonly BrickCount[]): boolean =>
  countsWords(one) === countsWords(other);

/** What the program would take, however a person has decided; null where there is no choice. */
export const programCounts = ({ choice }: SetAssessment): readonly BrickCount[] | null => {
  if (!choice.known || 'infeasible' in choice.value) return null;
  return Object.entries(choice.value.chosen.counts).map(([kind, count]) => ({ kind, count }));
};

export type BrickWords = {
  readonly planned: string;
  /** Set where a person fixed the bricks and the program would now take others. */
  readonly program: string | null;
};

export const brickWords = (set: SetAssessment): BrickWords | null => {
  if (!set.plan.known) return null;
  const { show, chosenBy } = set.plan.value.stack;
  const program = programCounts(set);
  const differs = chosenBy === 'person' && program !== null && !sameCounts(show, program);
  return { planned: countsWords(show), program: differs ? countsWords(program) : null };
};

/** Size and side apart, so that the columns line up: "17 lb" and "batten heavy". */
export const imbalanceWords = (
  imbalanceN: number,
  house: House,
): { readonly size: string; readonly side: string } => {
  const said = sayMeasure({ value: imbalanceN, kind: 'imbalance' }, house);
  const heavy = [tradeWord(house, 'battenHeavy'), tradeWord(house, 'arborHeavy')];
  const side = heavy.find((words) => said.endsWith(words)) ?? '';
  return { size: said.slice(0, said.length - side.length).trim(), side };
};

export const balanceAt = (set: SetAssessment, trim: Trim | undefined): TrimBalance | undefined =>
  set.plan.known && trim !== undefined
    ? set.plan.value.trims.find((each) => each.trim.name === trim.name)
    : undefined;

export const hungWords = ({ hung }: SetAssessment, house: House): string | null =>
  hung.known
    ? sayMeasure({ value: hung.value.withoutLoom, kind: 'mass' }, house, { round: 'up' })
    : null;

export const stackWords = ({ plan }: SetAssessment, house: House): string | null =>
  plan.known
    ? formatLength(plan.value.stack.height, house, {
        customaryLength: 'inches',
        round: 'up',
      })
    : null;

/** One sentence for those who hear the result of an edit and do not see it. */
export const spokenResult = (set: SetAssessment, house: House): string => {
  const id = phrase(house, 'Set {id}', { id: set.lineSet.id });
  if (set.hang === null) return phrase(house, '{id}: empty.', { id });
  const hung = hungWords(set, house);
  const bricks = brickWords(set);
  const trims = set.plan.known
    ? set.plan.value.trims.map(({ trim, imbalance }) => {
        const said = sayMeasure({ value: imbalance, kind: 'imbalance' }, house);
        return phrase(house, '{said} at {name} trim', { said, name: trim.name });
      })
    : [];
  return [
    hung === null
      ? phrase(house, '{id}: hung mass unknown', { id })
      : phrase(house, '{id}: {hung} hung', { id, hung }),
    ...(bricks === null ? [] : [phrase(house, 'bricks {planned}', { planned: bricks.planned })]),
    ...trims,
  ].join(', ');
};
