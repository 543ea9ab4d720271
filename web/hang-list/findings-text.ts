/** The gravest degree of findings and how many there are of it, as text. */
import { type Finding, worstLevel } from '#findings';
import { ENGLISH, phrase, phraseCount, type Voice } from '#texts';

export const findingsText = (findings: readonly Finding[], voice: Voice = ENGLISH): string => {
  const worst = worstLevel(findings);
  if (worst === null) return phrase(voice, 'none');
  const count = findings.filter(({ level }) => level === worst).length;
  if (worst === 'note') {
    return phraseCount(voice, findings.length, ['{count} note', '{count} notes']);
  }
  return worst === 'stop'
    ? phrase(voice, 'Danger: {count}', { count })
    : phrase(voice, 'Caution: {count}', { count });
};
