/** A locked-out set says so before anything else on its card. */
import type { SetAssessment } from '#assessment';
import type { House } from '#house';
import { phrase } from '#texts';
import type { Notice } from '../sheet.ts';

export const lockedOutNotice = ({ recorded }: SetAssessment, house: House): readonly Notice[] => {
  const { service, tag } = recorded.state;
  if (service !== 'lockedOut') return [];
  const heading =
    tag === null
      ? phrase(house, 'LOCKED OUT, no tag on record')
      : phrase(house, 'LOCKED OUT, tag {number}', { number: tag.number });
  const reason =
    tag === null
      ? phrase(house, 'No reason on record.')
      : phrase(house, 'Reason: {reason}.', { reason: tag.reason });
  return [
    {
      kind: 'notice',
      degree: 'danger',
      heading,
      words: [`${reason} ${phrase(house, 'Not for use until the tag is returned.')}`],
    },
  ];
};
