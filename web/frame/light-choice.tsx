import { memo } from 'react';
import { message } from '#texts';
import { useTell } from '../language/use-tell.ts';
import { LEVELS, type Level, type Light, useLight } from './light.ts';

const WORDS: Readonly<Record<Level, string>> = {
  '1': message('Dim, full'),
  '0.85': message('Dim, less'),
  '0.7': message('Dim, least'),
};

type Choice = { readonly light: Light; readonly words: string };

const CHOICES: readonly Choice[] = [
  { light: { theme: 'day', level: '1' }, words: message('Day') },
  ...LEVELS.map((level) => ({
    light: { theme: 'dim' as const, level },
    words: WORDS[level],
  })),
];

const keyOf = ({ theme, level }: Light): string => (theme === 'day' ? 'day' : `dim ${level}`);

/** The light of the page, for the wings. */
export const LightChoice = memo(() => {
  const tell = useTell();
  const [light, setLight] = useLight();
  return (
    <label className="light-choice">
      <span className="label">{tell('light')}</span>
      <select
        value={keyOf(light)}
        onChange={({ target }) => {
          const chosen = CHOICES.find((each) => keyOf(each.light) === target.value);
          if (chosen !== undefined) setLight(chosen.light);
        }}
      >
        {CHOICES.map((each) => (
          <option key={keyOf(each.light)} value={keyOf(each.light)}>
            {tell(each.words)}
          </option>
        ))}
      </select>
    </label>
  );
});
LightChoice.displayName = 'LightChoice';
