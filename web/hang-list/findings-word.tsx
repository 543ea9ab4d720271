import { type Finding, worstLevel } from '#findings';
import { Glyph } from '../drawing/glyph-view.tsx';

const count = (findings: readonly Finding[], level: Finding['level']): number =>
  findings.filter((finding) => finding.level === level).length;

/** The gravest degree with its mark and word, and how many; notes have neither mark nor frame. */
export const FindingsWord = ({ findings }: { readonly findings: readonly Finding[] }) => {
  const worst = worstLevel(findings);
  if (worst === null) return <span className="quiet">none</span>;
  if (worst === 'note') {
    const notes = findings.length;
    return <span className="quiet">{notes === 1 ? '1 note' : `${notes} notes`}</span>;
  }
  const isDanger = worst === 'stop';
  return (
    <span className={isDanger ? 'signed danger-word' : 'signed caution-word'}>
      <Glyph name={isDanger ? 'danger' : 'caution'} size={18} />
      {isDanger ? 'Danger' : 'Caution'}: {count(findings, worst)}
    </span>
  );
};
