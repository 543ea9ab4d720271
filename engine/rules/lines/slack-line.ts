import type { StructureState } from '#assessment';
import { measure } from '#findings';
import { raise } from '../raise.ts';
import { type StructuredCase, whenStructured } from '../rule.ts';
import { worstBy } from '../worst.ts';
import { overhangs } from './overhang.ts';

/**
 * LFT-003: every line of the batten pulls in every state. One that hangs slack carries nothing,
 * and those beside it carry its share; it comes tight with a jerk when the load changes. Slack
 * beside a load beyond the last line is LFT-004.
 */
export const slackLine = whenStructured((the) => {
  const slack = slackStates(the);
  const worst = worstBy(slack, ({ numbers }) => numbers.length);
  if (worst === undefined) return [];
  const { state, numbers } = worst;
  return [
    raise('LFT-003', {
      at: { set: the.set.lineSet.id, heightM: state.height },
      measured: measure(numbers.length, 'count'),
      facts: {
        lines: numbers.join(', '),
        of: measure(state.lines.length, 'count'),
        state: state.name,
        height: measure(state.height, 'length'),
        states: slack.map(({ state: { name } }) => name).join(', '),
      },
    }),
  ];
});

const slackStates = (the: StructuredCase) =>
  the.structure.states
    .map((state) => ({ state, numbers: slackNumbers(the, state) }))
    .filter(({ numbers }) => numbers.length > 0);

const slackNumbers = (the: StructuredCase, state: StructureState): readonly number[] => {
  const beside = new Set(overhangs(the, state).map(({ slackNumber }) => slackNumber));
  return state.lines
    .map(({ slack }, index) => ({ slack, number: index + 1 }))
    .filter(({ slack, number }) => slack && !beside.has(number))
    .map(({ number }) => number);
};
