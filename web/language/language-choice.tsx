/** A plain list of the languages, each by its own name. */
import { memo } from 'react';
import { LANGUAGES, languageOf } from '#texts';
import { useSpoken, useTell } from './use-tell.ts';

export const LanguageChoice = memo(() => {
  const { language, choose } = useSpoken();
  const tell = useTell();
  return (
    <label className="light-choice">
      <span className="label">{tell('language')}</span>
      <select value={language} onChange={({ target }) => choose(languageOf(target.value) ?? 'en')}>
        {LANGUAGES.map((each) => (
          <option key={each.language} value={each.language} lang={each.language}>
            {each.name}
          </option>
        ))}
      </select>
    </label>
  );
});
LanguageChoice.displayName = 'LanguageChoice';
