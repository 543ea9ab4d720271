import { measure } from '#findings';
import { raise } from '../raise.ts';
import { whenStructured } from '../rule.ts';
import type { Unsteady } from './solved-states.ts';

/**
 * PIP-001: in every state the lines hold the batten, and nothing moves it until something else
 * does. Where they do not there are no numbers, and nothing else of this set is judged.
 */
export const tipsOver = whenStructured(({ set, structure }) => {
  const all = structure.states.flatMap((state) =>
    'unstable' in state.beam ? [{ state, unstable: state.beam.unstable }] : [],
  );
  const [first] = all;
  if (first === undefined) return [];
  const { state, unstable } = first;
  return [
    raise('PIP-001', {
      at: { set: set.lineSet.id, heightM: state.height },
      measured: measure(all.length, 'count'),
      facts: {
        what: REASONS[unstable.code],
        height: measure(state.height, 'length'),
        states: all.map(({ state: { name } }) => name).join(', '),
      },
    }),
  ];
});

const REASONS: Readonly<Record<Unsteady['code'], string>> = {
  tipsOver: 'the load as a whole pulls beyond the outermost line, and no line can push',
  tooFewLines: 'one line alone lets the batten turn about it',
  noLoad: 'nothing weighs on the lines, so nothing keeps them tight',
  notDetermined: 'lines that do not stretch may share the load in more ways than one',
  pieceTips: 'a piece pulls down beyond its outermost pick',
};
