/** What a fit found, as short sentences in the words and units of whoever reads it. */
import type { House } from '#house';
import { unreachable } from '#outcome';
import type { Rounding } from '#quantities';
import { sayMeasure } from '#sheets';
import { inVoice, message, phrase, type Voice } from '#texts';
import type { Bar, Differs, FitChange, Question } from './types.ts';

const length = (valueM: number, reader: House, round: Rounding = 'nearest'): string =>
  sayMeasure({ value: valueM, kind: 'length' }, reader, { round });

const mass = (valueKg: number, reader: House, round: Rounding): string =>
  sayMeasure({ value: valueKg, kind: 'mass' }, reader, { round });

const force = (valueN: number, reader: House, round: Rounding): string =>
  sayMeasure({ value: valueN, kind: 'force' }, reader, { round });

const NO_MIX: Readonly<Record<string, string>> = {
  belowCarriage: message('no mix of bricks: the empty arbor is heavier than the piece needs'),
  stockTooSmall: message('no mix of bricks: the house has too few bricks'),
  rodTooShort: message('no mix of bricks: the rod is too short'),
  massLimitTooLow: message('no mix of bricks: the arbor would pass its mass limit'),
  severalLimits: message('no mix of bricks: several limits together stand in the way'),
  bricksTooCoarse: message('no mix of bricks: the bricks are too coarse for what the lock holds'),
};

export const sayBar = (bar: Bar, reader: House): string => {
  switch (bar.is) {
    case 'placeNotKnown':
      return phrase(reader, 'nobody has written where the set hangs');
    case 'noTravel':
      return phrase(reader, 'the set is fixed and does not travel');
    case 'tooHeavy':
      return phrase(reader, '{mass} hang, {limit} may', {
        mass: mass(bar.massKg, reader, 'up'),
        limit: mass(bar.limitKg, reader, 'down'),
      });
    case 'noMix':
      return NO_MIX[bar.limit] === undefined
        ? phrase(reader, 'no mix of bricks: {limit}', { limit: bar.limit })
        : phrase(reader, NO_MIX[bar.limit] ?? '');
    case 'pastLock':
      return phrase(reader, '{worst} out of balance at a trim, the lock holds {lock}', {
        worst: force(bar.worstN, reader, 'up'),
        lock: force(bar.lockN, reader, 'down'),
      });
    default:
      return unreachable(bar);
  }
};

export const sayChange = (change: FitChange, reader: House): string => {
  switch (change.is) {
    case 'trim':
      return phrase(reader, 'Trim {name}, {was}, is out of reach; written as {now}, the stop.', {
        name: change.name,
        was: length(change.wasM, reader),
        now: length(change.nowM, reader),
      });
    case 'place':
      return phrase(
        reader,
        '{item} reaches {by} past the end of the batten; its place is left open.',
        { item: change.item, by: length(change.byM, reader, 'up') },
      );
    case 'deadHung':
      return phrase(reader, 'Steel held it at {was}, out of reach; the height is left open.', {
        was: length(change.wasM, reader),
      });
    case 'bricks':
      return phrase(reader, 'Bricks that a person fixed are left out and chosen anew.');
    case 'coupling':
      return phrase(reader, 'It was coupled with set {set}, which hangs nowhere.', {
        set: change.withSet,
      });
    case 'cue':
      return change.how === 'gone'
        ? phrase(reader, 'Cue {number} would not move it any more and is left out.', {
            number: change.number,
          })
        : phrase(reader, 'Cue {number} ends at the stop.', { number: change.number });
    default:
      return unreachable(change);
  }
};

/** A value of one house; null is not known. */
export const saySide = (side: Differs['there'], reader: House): string => {
  if (side === null) return phrase(reader, 'not known');
  return typeof side === 'string'
    ? inVoice(reader, side)
    : sayMeasure(side, reader, { round: 'nearest' });
};

/** Texts with a name or a number in them, as they come from the comparison. */
const WITH_NAMES: readonly (readonly [RegExp, string])[] = [
  [
    /^floor of loading gallery (?<index>\d+) from below$/,
    message('floor of loading gallery {index} from below'),
  ],
  [/^brick (?<id>\S+) \((?<name>.*)\)$/, message('brick {id} ({name})')],
  [/^bricks (?<id>\S+) owned$/, message('bricks {id} owned')],
  [/^line set (?<sets>.+)$/, message('line set {sets}')],
  [/^line sets (?<sets>.+)$/, message('line sets {sets}')],
  [/^head-block bay (?<id>.+)$/, message('head-block bay {id}')],
  [/^loft well (?<id>.+)$/, message('loft well {id}')],
];

/** Our words of a text in those of the reader, and the names in it as they are. */
export const sayWhat = (what: string, reader: Voice): string => {
  for (const [pattern, text] of WITH_NAMES) {
    const names = pattern.exec(what)?.groups;
    if (names !== undefined) return phrase(reader, text, { ...names });
  }
  return inVoice(reader, what);
};

export const sayDiffers = ({ what, there, here }: Differs, reader: House): string =>
  phrase(reader, '{what}: {old}, there {now}', {
    what: sayWhat(what, reader),
    old: saySide(there, reader),
    now: saySide(here, reader),
  });

/** One line of a letter, below whatever it is asked of. */
export const sayQuestion = ({ what, why, decides }: Question, house: House): string => {
  const names = { what: inVoice(house, what), why, decides: inVoice(house, decides) };
  return why === ''
    ? phrase(house, '{what} (decides {decides})', names)
    : phrase(house, '{what}, said here: {why} (decides {decides})', names);
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
  return [...groups].map(([of, lines]) => ({ of: capital(sayWhat(of, house)), lines }));
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
  const head = phrase(reader, '{show} at {house}: please tell us what you know of the following.', {
    show,
    house,
  });
  return `${[head, ...body].join('\n')}\n`;
};
