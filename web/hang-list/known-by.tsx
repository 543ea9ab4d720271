import type { SetAssessment } from '#assessment';
import type { House } from '#house';
import { Glyph } from '../drawing/glyph-view.tsx';
import { knownBy } from './known-by-words.ts';

export { knownBy } from './known-by-words.ts';

type KnownByProps = {
  readonly set: SetAssessment;
  readonly house: House;
  readonly nowMs: number;
};

export const KnownBy = ({ set, house, nowMs }: KnownByProps) => {
  const { glyph, words } = knownBy(set, house, nowMs);
  return (
    <span className="signed">
      {glyph === null ? null : <Glyph name={glyph} size={18} />}
      {words}
    </span>
  );
};
