import { GLYPH_NAMES, type GlyphName, glyphWord, wallSigns } from '#drawings';
import { Glyph } from '../drawing/glyph-view.tsx';
import { useWork } from '../reckoning/use-work.ts';

/** The signs that stand on this wall, each with its word. */
export const WallKey = () => {
  const { assessment, house, nowMs } = useWork();
  const present = new Set<GlyphName>(
    assessment.sets.flatMap((set) => {
      const { balance, hold } = wallSigns(set, house, nowMs);
      return [balance, hold].filter((name) => name !== null);
    }),
  );
  const mirrored = house.stage.operatingSide === 'stageLeft';
  return (
    <ul className="wall-key" aria-label="Signs on the wall">
      {GLYPH_NAMES.filter((name) => present.has(name)).map((name) => (
        <li key={name}>
          <Glyph name={name} size={19} mirrored={mirrored} />
          {glyphWord(house, name)}
        </li>
      ))}
    </ul>
  );
};
