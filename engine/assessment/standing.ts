import { blocked, type Reckoned, reckoned } from '#findings';
import type { SetState, Standing } from '#state';

/**
 * How one set stands, as an order of work needs it. What nobody recorded is asked for by name: no
 * state means unknown, never bare and at low trim. A set that is not at rest has no order yet.
 *
 * Source  procedure.md; the-job.md 4.2: between steps the lock is closed and its ring on
 * Holds   the list of items is whole: what it does not name is away
 * Omits   zones that are closed at the time, which no record has; none counts as closed
 */
export const standingOf = (state: SetState): Reckoned<Standing> => {
  const { height, stack, items, restraints, service } = state;
  const needs = [
    ...heightNeeds(height),
    ...(stack === null ? ['what is on the arbor'] : []),
    ...(items === null ? ['what hangs on the batten'] : []),
    ...(restraints === null ? ['what else holds the set'] : []),
    ...(service === null ? ['whether the set is in use'] : []),
    ...atRestNeeds(state),
    ...(state.knowledge.basis === 'unknown' ? ['how all this is known, and by whom'] : []),
  ];
  const isWhole = height && stack && items && restraints && service;
  if (!isWhole || needs.length > 0) return blocked(needs);
  return reckoned({
    height: height.low,
    stack,
    items: Object.fromEntries(items.map(({ item, phase }) => [item, phase])),
    restraints,
    service,
    closed: [],
  });
};

const heightNeeds = (height: SetState['height']): readonly string[] => {
  if (height === null) return ['height of the batten'];
  return height.low === height.high ? [] : ['height of the batten, measured: two are recorded'];
};

const atRestNeeds = ({ lock, ring }: SetState): readonly string[] => [
  ...(lock === null ? ['whether the lock is closed'] : []),
  ...(lock === 'open' ? ['the lock closed: it is recorded open'] : []),
  ...(ring === null ? ['whether the ring is on'] : []),
  ...(ring === 'off' ? ['the ring on: it is recorded off'] : []),
];
