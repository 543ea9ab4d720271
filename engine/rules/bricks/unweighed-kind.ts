import { measure } from '#findings';
import { lack, sourceOf } from '../known-values.ts';
import { raise } from '../raise.ts';
import type { HouseRule, Opinion } from '../rule.ts';

/** BRK-003: the mass of every kind of brick comes from a weighed sample and has its tolerance. */
export const unweighedKind: HouseRule = ({ house }) =>
  house.brickKinds.flatMap(({ id, mass }): readonly Opinion[] => {
    if (!mass.known) return [lack(`mass of brick ${id}`, 'all that lies on an arbor', 'house')];
    const isWeighed = mass.provenance.basis === 'weighed';
    if (isWeighed && mass.tolerance !== undefined) return [];
    return [
      raise('BRK-003', {
        at: { brickKind: id },
        measured: measure(mass.value, 'mass'),
        facts: {
          kind: id,
          basis: sourceOf(mass),
          missing: mass.tolerance === undefined ? ', and has no tolerance' : '',
        },
      }),
    ];
  });
