/** Day or dim, and how bright: kept on the device, never raised by the program. */
import { useState } from 'react';

export type Theme = 'day' | 'dim';
export const LEVELS = ['1', '0.85', '0.7'] as const;
export type Level = (typeof LEVELS)[number];
export type Light = { readonly theme: Theme; readonly level: Level };

const KEY = 'counterpoise.light';

/** What the page was painted with first, before any of this ran. */
const lightOfPage = (): Light => {
  const { theme, level } = document.documentElement.dataset;
  return {
    theme: theme === 'dim' ? 'dim' : 'day',
    level: LEVELS.find((each) => each === level) ?? '1',
  };
};

export const useLight = (): readonly [Light, (light: Light) => void] => {
  const [light, setLight] = useState(lightOfPage);
  const change = (next: Light): void => {
    document.documentElement.dataset['theme'] = next.theme;
    document.documentElement.dataset['level'] = next.level;
    try {
      localStorage.setItem(KEY, JSON.stringify(next));
    } catch {
      // A device that keeps nothing starts with its own setting next time.
    }
    setLight(next);
  };
  return [light, change];
};
