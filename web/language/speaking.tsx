/** Fetches the language that was chosen; English needs no fetching. */
import { type ReactNode, useEffect, useMemo, useState } from 'react';
import { fetchTongue } from '#languages';
import { ENGLISH, type Language, type Tongue } from '#texts';
import { keepLanguage, languageOfDevice } from './language.ts';
import { SpokenContext } from './use-tell.ts';

/** A language that cannot be fetched leaves what is on the screen as it is. */
export const Speaking = ({ children }: { readonly children: ReactNode }) => {
  const [language, choose] = useState<Language>(languageOfDevice);
  const [fetched, setFetched] = useState<{ readonly of: Language; readonly tongue?: Tongue }>({
    of: 'en',
  });
  useEffect(() => {
    let isWanted = true;
    const take = (tongue: Tongue | undefined): void => {
      if (isWanted) setFetched(tongue === undefined ? { of: language } : { of: language, tongue });
    };
    fetchTongue(language).then(take, () => choose(fetched.of));
    return () => {
      isWanted = false;
    };
  }, [language, fetched.of]);
  useEffect(() => {
    document.documentElement.lang = fetched.of;
  }, [fetched.of]);
  const spoken = useMemo(
    () => ({
      language: fetched.of,
      voice: fetched.tongue === undefined ? ENGLISH : { ...ENGLISH, tongue: fetched.tongue },
      choose: (next: Language): void => {
        keepLanguage(next);
        choose(next);
      },
    }),
    [fetched],
  );
  return <SpokenContext value={spoken}>{children}</SpokenContext>;
};
