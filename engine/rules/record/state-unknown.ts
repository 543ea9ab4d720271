import { purchaseOf } from '#house';
import { raise } from '../raise.ts';
import type { HouseRule, SetRule } from '../rule.ts';

/** STA-005 for the whole house: no record was read, so that every number here is the plan. */
export const noRecord: HouseRule = ({ state }) =>
  state === null
    ? [raise('STA-005', { at: {}, facts: { what: 'how the sets stand; no record was read' } })]
    : [];

/** STA-005 for one set: it is not in the record, or the record leaves something out. */
export const stateUnknown: SetRule = ({ state, set: { lineSet, recorded } }) => {
  if (state === null) return [];
  const what = unrecorded(state.sets[lineSet.id] === undefined, lineSet.suspension, recorded.state);
  if (what.length === 0) return [];
  return [raise('STA-005', { at: { set: lineSet.id }, facts: { what: what.join(', ') } })];
};

const unrecorded = (
  isAbsent: boolean,
  suspension: Parameters<typeof purchaseOf>[0],
  {
    height,
    lock,
    ring,
    stack,
    items,
    knowledge,
  }: Parameters<SetRule>[0]['set']['recorded']['state'],
): readonly string[] => {
  if (isAbsent) return ['how this set stands; it is not in the record'];
  if (knowledge.basis === 'unknown') return ['how this set stands; nobody has confirmed it'];
  const hasArbor = purchaseOf(suspension) !== null;
  return [
    ...(height === null ? ['height of the batten'] : []),
    ...(items === null ? ['what hangs'] : []),
    ...(hasArbor && stack === null ? ['bricks on the arbor'] : []),
    ...(hasArbor && lock === null ? ['rope lock'] : []),
    ...(hasArbor && ring === null ? ['ring of the rope lock'] : []),
  ];
};
