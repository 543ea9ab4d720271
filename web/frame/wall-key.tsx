import { GLYPH_NAMES, type GlyphName, glyphWord } from '#drawings';
import { Glyph } from '../drawing/glyph-view.tsx';
import { useTell } from '../language/use-tell.ts';
import { useWork } from '../reckoning/use-work.ts';
import { useWallSets } from './wall-sets.ts';

/** The signs that stand on this wall, each with its word. */
export const WallKey = () => {
  const tell = useTell();
  const { house } = useWork();
  const { sets, signs } = useWallSets();
  const present = new Set<GlyphName>(
    sets.flatMap((set) => {
      const { balance, hold } = signs(set);
      return [balance, hold].filter((name) => name !== null);
    }),
  );
  const mirrored = house.stage.operatingSide === 'stageLeft';
  return (
    <ul className="wall-key" aria-label={tell('Signs on the wall')}>
      {GLYPH_NAMES.filter((name) => present.has(name)).map((name) => (
        <li key={name}>
          <Glyph name={name} size={19} mirrored={mirrored} />
          {glyphWord(house, name)}
        </li>
      ))}
    </ul>
  );
};
