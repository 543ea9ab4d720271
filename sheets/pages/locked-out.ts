/** A locked-out set says so before anything else on its card. */
import type { SetAssessment } from '#assessment';
import type { Notice } from '../sheet.ts';

export const lockedOutNotice = ({ recorded }: SetAssessment): readonly Notice[] => {
  const { service, tag } = recorded.state;
  if (service !== 'lockedOut') return [];
  const number = tag === null ? 'no tag on record' : `tag ${tag.number}`;
  const reason = tag === null ? 'No reason on record.' : `Reason: ${tag.reason}.`;
  return [
    {
      kind: 'notice',
      degree: 'danger',
      heading: `LOCKED OUT, ${number}`,
      words: [`${reason} Not for use until the tag is returned.`],
    },
  ];
};
