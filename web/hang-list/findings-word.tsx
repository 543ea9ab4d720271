import { type Finding, worstLevel } from '#findings';
import { Glyph } from '../drawing/glyph-view.tsx';
import { useVoice } from '../language/use-tell.ts';
import { findingsText } from './findings-text.ts';

/** The gravest degree with its mark and word, and how many; notes have neither mark nor frame. */
export const FindingsWord = ({ findings }: { readonly findings: readonly Finding[] }) => {
  const worst = worstLevel(findings);
  const text = findingsText(findings, useVoice());
  if (worst === null || worst === 'note') return <span className="quiet">{text}</span>;
  const isDanger = worst === 'stop';
  return (
    <span className={isDanger ? 'signed danger-word' : 'signed caution-word'}>
      <Glyph name={isDanger ? 'danger' : 'caution'} size={18} />
      {text}
    </span>
  );
};
