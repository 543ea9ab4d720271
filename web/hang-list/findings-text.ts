/** The gravest degree of findings and how many there are of it, as text. */
import { type Finding, worstLevel } from '#findings';

export const findingsText = (findings: readonly Finding[]): string => {
  const worst = worstLevel(findings);
  if (worst === null) return 'none';
  const count = findings.filter(({ level }) => level === worst).length;
  if (worst === 'note') return findings.length === 1 ? '1 note' : `${findings.length} notes`;
  return `${worst === 'stop' ? 'Danger' : 'Caution'}: ${count}`;
};
