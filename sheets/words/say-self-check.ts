/** Words of the self-check, on paper and on screen. */
import { unreachable } from '#outcome';
import type { Calculation, FailedCase, Measure, SelfCheckState } from '#selfcheck';
import { ENGLISH, message, phrase, type Voice } from '#texts';

/** In US words of the trade; a house of its own words puts them through `inHouseWords`. */
export const CALCULATION_WORDS: Readonly<Record<Calculation, string>> = {
  quantities: message('units and conversions'),
  house: message('travel, reach and stacks'),
  takeoff: message('take-off'),
  balance: message('balance'),
  bricks: message('bricks'),
  'pull-test': message('pull tests'),
  beam: message('battens on their lines'),
  lines: message('lift lines, blocks and totals'),
  motion: message('runaways and falls'),
};

/** What it proves, and what it does not. */
export const SELF_CHECK_CAUTION = message(
  'It proves that the program computes on this machine what it computed when it was checked. ' +
    'It certifies nothing, and says nothing of what no case covers.',
);

const FIGURES = 2;

/** Errors are known to be small, not how small to the last digit. */
export const sayError = (error: number): string => {
  const rounded = Number(error.toPrecision(FIGURES));
  return rounded === 0 || (rounded >= 0.001 && rounded < 1e6)
    ? String(rounded)
    : rounded.toExponential();
};

export const sayWorst = ({ error, unit }: Measure): string => `${sayError(error)} ${unit}`;

const listed = (words: readonly string[]): string => [...new Set(words)].join('; ');

/** Which calculations failed, in words, and by which cases. */
export const sayFailed = (failed: readonly FailedCase[], voice: Voice = ENGLISH): string => {
  const names = listed(
    failed.map(({ calculation }) => phrase(voice, CALCULATION_WORDS[calculation])),
  );
  const cases = failed.map(({ id }) => id).join(', ');
  return phrase(
    voice,
    'On this machine the program does not compute as it did when it was checked. ' +
      'It fails in: {names} ({cases}). Do not work by what is shown here.',
    { names, cases },
  );
};

export const SELF_CHECK_FAILED = message('SELF-CHECK FAILED');

/** A few words for the foot of a sheet; nothing where the check is done. */
export const sayUnfinished = (state: SelfCheckState): string | null => {
  switch (state.is) {
    case 'notRun':
      return message('Self-check not run.');
    case 'running':
      return message('Self-check not finished.');
    case 'done':
      return null;
    default:
      return unreachable(state);
  }
};
