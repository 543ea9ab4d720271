import { measure } from '#findings';
import { acrossStage } from '../across-stage.ts';
import { byKnown } from '../known-values.ts';
import { isAbove } from '../limits.ts';
import { raise } from '../raise.ts';
import { whenStructured } from '../rule.ts';
import { worstBy } from '../worst.ts';
import { solvedStates } from './solved-states.ts';

/** PIP-004: between two lines the batten sags by no larger share of their distance than allowed. */
export const sagging = whenStructured(({ set, structure, house }) => {
  const sags = solvedStates(structure).flatMap(({ state, solution: { sag } }) =>
    sag === null || sag.span <= 0 ? [] : [{ state, sag }],
  );
  const worst = worstBy(sags, ({ sag }) => sag.value / sag.span);
  if (worst === undefined) return [];
  const { state, sag } = worst;
  return byKnown(
    house.rules.sagLimit,
    'limit of the sag between lines',
    'sag of the battens',
    (share, source) => {
      const limitM = share * sag.span;
      if (!isAbove(sag.value, limitM)) return [];
      return [
        raise('PIP-004', {
          at: { set: set.lineSet.id, heightM: state.height },
          measured: measure(sag.value, 'length'),
          limit: measure(limitM, 'length'),
          limitSource: source,
          facts: {
            ...acrossStage(sag.x),
            state: state.name,
            height: measure(state.height, 'length'),
            span: measure(sag.span, 'length'),
          },
        }),
      ];
    },
    'house',
  );
});
