import { raise } from '../raise.ts';
import type { AmongRule } from '../rule.ts';

/**
 * COU-001: a piece that hangs on several sets hangs on all of them. A partner that does not hang
 * leaves the whole piece to this set; one that does not name this set back was coupled by halves.
 */
export const coupledAlone: AmongRule = ({ show, set: { hang, lineSet } }) =>
  (hang?.coupledWith ?? []).flatMap((partner) => {
    const other = show?.hangs.find(({ set }) => set === partner);
    if (other?.coupledWith.includes(lineSet.id) === true) return [];
    return [
      raise('COU-001', {
        at: { set: lineSet.id },
        level: other === undefined ? 'stop' : 'caution',
        facts: {
          hang: hang?.name ?? '',
          partner,
          trouble:
            other === undefined ? 'nothing hangs there' : 'the hang there does not name this set',
        },
      }),
    ];
  });
