/** What a fit found, as short sentences in the words and units of whoever reads it. */
import type { House } from '#house';
import { unreachable } from '#outcome';
import type { Rounding } from '#quantities';
import { inHouseWords, sayMeasure } from '#sheets';
import type { Bar, Differs, FitChange, Question } from './types.ts';

const length = (valueM: number, reader: House, round: Rounding = 'nearest'): string =>
  sayMeasure({ value: valueM, kind: 'length' }, reader, { round });

const mass = (valueKg: number, reader: House, round: Rounding): string =>
  sayMeasure({ value: valueKg, kind: 'mass' }, reader, { round });

const force = (valueN: number, reader: House, round: Rounding): string =>
  sayMeasure({ value: valueN, kind: 'force' }, reader, { round });

const NO_MIX: Readonly<Record<string, string>> = {
  belowCarriage: 'the empty arbor is heavier than the piece needs',
  stockTooSmall: 'the house has too few bricks',
  rodTooShort: 'the rod is too short',
  massLimitTooLow: 'the arbor would pass its mass limit',
  severalLimits: 'several limits together stand in the way',
  bricksTooCoarse: 'the bricks are too coarse for what the lock holds',
};

export const sayBar = (bar: Bar, reader: House): string => {
  switch (bar.is) {
    case 'placeNotKnown':
      return 'nobody has written where the set hangs';
    case 'noTravel':
      return 'the set is fixed and does not travel';
    case 'tooHeavy':
      return `${mass(bar.massKg, reader, 'up')} hang, ${mass(bar.limitKg, reader, 'down')} may`;
    case 'noMix':
      return inHouseWords(`no mix of bricks: ${NO_MIX[bar.limit] ?? bar.limit}`, reader);
    case 'pastLock':
      return (
        `${force(bar.worstN, reader, 'up')} out of balance at a trim, ` +
        `the lock holds ${force(bar.lockN, reader, 'down')}`
      );
    default:
      return unreachable(bar);
  }
};

export const sayChange = (change: FitChange, reader: House): string => {
  switch (change.is) {
    case 'trim':
      return inHouseWords(
        `Trim ${change.name}, ${length(change.wasM, reader)}, is out of reach; written as ` +
          `${length(change.nowM, reader)}, the stop.`,
        reader,
      );
    case 'place':
      return inHouseWords(
        `${change.item} reaches ${length(change.byM, reader, 'up')} past the end of the batten; ` +
          'its place is left open.',
        reader,
      );
    case 'deadHung':
      return inHouseWords(
        `Steel held it at ${length(change.wasM, reader)}, out of reach; the height is left open.`,
        reader,
      );
    case 'bricks':
      return inHouseWords('Bricks that a person fixed are left out and chosen anew.', reader);
    case 'coupling':
      return `It was coupled with set ${change.withSet}, which hangs nowhere.`;
    case 'cue':
      return change.how === 'gone'
        ? `Cue ${change.number} would not move it any more and is left out.`
        : `Cue ${change.number} ends at the stop.`;
    default:
      return unreachable(change);
  }
};

/** A value of one house; null is not known. */
export const saySide = (side: Differs['there'], reader: House): string => {
  if (side === null) return 'not known';
  return typeof side === 'string'
    ? inHouseWords(side, reader)
    : sayMeasure(side, reader, { round: 'nearest' });
};

export const sayDiffers = ({ what, there, here }: Differs, reader: House): string =>
  `${inHouseWords(what, reader)}: ${saySide(there, reader)}, there ${saySide(here, reader)}`;

/** One line of a letter, below whatever it is asked of. */
export const sayQuestion = ({ what, why, decides }: Question, house: House): string => {
  const told = why === '' ? '' : `, said here: ${why}`;
  return inHouseWords(`${what}${told} (decides ${decides})`, house);
};

export type AskedOf = { readonly of: string; readonly lines: readonly string[] };

/** By what it is asked of, in the order in which it comes up. */
export const groupedQuestions = (
  questions: readonly Question[],
  house: House,
): readonly AskedOf[] => {
  const groups = new Map<string, string[]>();
  for (const question of questions) {
    groups.set(question.of, [...(groups.get(question.of) ?? []), sayQuestion(question, house)]);
  }
  return [...groups].map(([of, lines]) => ({ of: capital(inHouseWords(of, house)), lines }));
};

const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);

/** The questions as a letter in plain text, to be sent as it is. */
export const questionLetter = (
  questions: readonly Question[],
  {
    show,
    house,
    reader,
  }: { readonly show: string; readonly house: string; readonly reader: House },
): string => {
  const groups = groupedQuestions(questions, reader);
  const body = groups.flatMap(({ of, lines }) => ['', of, ...lines.map((line) => `  - ${line}`)]);
  const head = `${show} at ${house}: please tell us what you know of the following.`;
  return `${[head, ...body].join('\n')}\n`;
};
