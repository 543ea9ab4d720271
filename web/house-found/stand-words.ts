/** A record of a set in words, as it was written down. */
import { tradeWord } from '#drawings';
import type { House } from '#house';
import type { SetState, StackRun } from '#state';

export const kindWords = ({ kind, tag }: StackRun, house: House): string => {
  if (tag === 'spreader') return tradeWord(house, 'spreader');
  const name = house.brickKinds.find(({ id }) => id === kind)?.name ?? kind;
  return `${name}, ${tag === 'pipe' ? tradeWord(house, 'pipeWeight') : 'show'}`;
};

export const runWords = (run: StackRun, house: House): string =>
  `${run.count} ${kindWords(run, house)}`;

export const stackWords = ({ stack }: Pick<SetState, 'stack'>, house: House): string => {
  if (stack === null) return 'not counted';
  return stack.length === 0 ? 'bare' : stack.map((run) => runWords(run, house)).join('; ');
};

export const heightWords = (
  { height }: Pick<SetState, 'height'>,
  say: (heightM: number) => string,
): string => {
  if (height === null) return 'unknown';
  const { low, high } = height;
  return low === high ? say(low) : `${say(low)} to ${say(high)}`;
};
