/** A record of a set in words, as it was written down. */
import { tradeWord } from '#drawings';
import type { House } from '#house';
import type { SetState, StackRun } from '#state';
import { phrase, type Voice } from '#texts';

export const kindWords = ({ kind, tag }: StackRun, house: House): string => {
  if (tag === 'spreader') return tradeWord(house, 'spreader');
  const name = house.brickKinds.find(({ id }) => id === kind)?.name ?? kind;
  return tag === 'pipe'
    ? phrase(house, '{name}, pipe weight', { name })
    : phrase(house, '{name}, show', { name });
};

export const runWords = (run: StackRun, house: House): string =>
  `${run.count} ${kindWords(run, house)}`;

export const stackWords = ({ stack }: Pick<SetState, 'stack'>, house: House): string => {
  if (stack === null) return phrase(house, 'not counted');
  return stack.length === 0
    ? phrase(house, 'bare')
    : stack.map((run) => runWords(run, house)).join('; ');
};

export const heightWords = (
  { height }: Pick<SetState, 'height'>,
  say: (heightM: number) => string,
  voice: Voice,
): string => {
  if (height === null) return phrase(voice, 'unknown');
  const { low, high } = height;
  return low === high
    ? say(low)
    : phrase(voice, '{low} to {high}', { low: say(low), high: say(high) });
};
