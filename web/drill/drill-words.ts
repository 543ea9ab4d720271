/** What the screen of a drill says of a fault, of who does what, and of how it ended. */
import type { CrewTurn, DrillFault, DrillLine } from '#call';
import type { House } from '#house';
import { type CheckedOrder, stepsBetween } from '#orders';
import { formatLength } from '#quantities';
import { platesWords, stepTitle } from '#sheets';
import type { Standing } from '#state';
import { message, phrase, phraseCount } from '#texts';

type Names = (item: string) => string;

/** Each step of the order in a few words, in their order. */
export const stepTitles = (order: CheckedOrder, house: House, nameOf: Names): readonly string[] =>
  stepsBetween(order).map((between) =>
    stepTitle(between, { house, physics: order.physics, nameOf }),
  );

export const stepWords = (titles: readonly string[], at: number, house: House): string =>
  phrase(house, 'step {number}, {title}', { number: at + 1, title: titles[at] ?? '' });

export const faultWords = (fault: DrillFault, titles: readonly string[], house: House): string => {
  const step = stepWords(titles, fault.step, house);
  if (fault.is === 'miscount') {
    return fault.by < 0
      ? phraseCount(
          house,
          -fault.by,
          [
            'Miscount at {step}: {count} brick fewer than counted aloud',
            'Miscount at {step}: {count} bricks fewer than counted aloud',
          ],
          { step },
        )
      : phraseCount(
          house,
          fault.by,
          [
            'Miscount at {step}: {count} brick more than counted aloud',
            'Miscount at {step}: {count} bricks more than counted aloud',
          ],
          { step },
        );
  }
  if (fault.is === 'forgotten') {
    return phrase(house, 'Forgotten at {step}: told as done, and not done', { step });
  }
  if (fault.is === 'unclipped') {
    return phrase(house, 'Not clipped at {step}: told as tied on, and not tied on', { step });
  }
  return phrase(house, 'Wrong order: {step} is done after the step that follows it', { step });
};

const DID: Readonly<Record<DrillLine['did'], string>> = {
  clear: message('is out of the drop zone, hands off'),
  back: message('is back at the work'),
  ask: message('asks leave'),
  second: message('gives the second word'),
  count: message('counts a brick'),
  report: message('tells it done'),
  stop: message('says STOP'),
  lift: message('lifts the STOP'),
  doubt: message('says that it is not known how the set stands'),
  found: message('writes down how the set was found'),
  look: message('goes and looks'),
};

export const didWords = (did: DrillLine['did'], house: House): string => phrase(house, DID[did]);

const TURNS: Readonly<Record<CrewTurn['does'], string>> = {
  clear: message('Say that you are out of the drop zone'),
  back: message('Say that you are back at the work'),
  ask: message('Ask leave for this step'),
  second: message('Give the second word'),
  count: message('Count the bricks of this step'),
  report: message('Tell this step done'),
};

export const turnWords = ({ does }: CrewTurn, house: House): string => phrase(house, TURNS[does]);

const isOn = (phase: string): boolean => phase !== 'away' && phase !== 'beside';

/** Height, plates, what hangs and what else holds it: what somebody sees who walks up to it. */
export const seenWords = (
  { height, stack, items, restraints }: Standing,
  house: House,
  nameOf: Names,
): readonly string[] => {
  const on = Object.entries(items).filter(([, phase]) => isOn(phase));
  const hangs = on.map(([id]) => nameOf(id)).join(', ');
  return [
    phrase(house, 'Batten at {height}', { height: formatLength(height, house) }),
    platesWords({ stack }, house),
    on.length === 0
      ? phrase(house, 'nothing tied on')
      : phrase(house, 'tied on: {hangs}', { hangs }),
    restraints.length === 0
      ? phrase(house, 'no restraint besides')
      : phraseCount(house, restraints.length, [
          '{count} restraint besides',
          '{count} restraints besides',
        ]),
  ];
};
