/** A failed case of a calculation that a sheet rests on is said before anything else on it. */
import { phrase } from '#texts';
import type { SheetContext } from '../context.ts';
import { failedOf, RESTS_ON } from '../rests-on.ts';
import type { Notice, SheetKind } from '../sheet.ts';
import { sayFailed } from '../words/say-self-check.ts';

export const selfCheckNotice = (
  { house, selfCheck }: SheetContext,
  kind: SheetKind,
): readonly Notice[] => {
  const failed = failedOf(selfCheck.state, RESTS_ON[kind]);
  if (failed.length === 0) return [];
  return [
    {
      kind: 'notice',
      degree: 'danger',
      heading: phrase(house, 'SELF-CHECK FAILED: DO NOT WORK BY THIS'),
      words: [sayFailed(failed, house)],
    },
  ];
};
