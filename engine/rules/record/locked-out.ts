import { raise } from '../raise.ts';
import type { SetRule } from '../rule.ts';

/** STA-003: a set that is locked out, or has a lock-out tag, is not for use. */
export const lockedOut: SetRule = ({ set: { lineSet, recorded } }) => {
  const { tag, service } = recorded.state;
  if (tag === null && service !== 'lockedOut') return [];
  return [
    raise('STA-003', {
      at: { set: lineSet.id },
      facts: {
        tag: tag?.number ?? 'not recorded',
        reason: tag?.reason ?? 'no reason recorded',
      },
    }),
  ];
};
