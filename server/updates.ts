/** How the screens are given out, as whoever runs the server has set it. */
import { join } from 'node:path';
import type { UpdateParts } from './http/index.ts';

type Settings = Readonly<Record<string, string | undefined>>;

/**
 * The folder of the screens, the oldest build that anything is taken from, and whether devices keep
 * the screens to start without the server. A word that is not understood is said, not guessed.
 */
export const updatesOf = (settings: Settings, root: string): UpdateParts | string => {
  const offline = settings['COUNTERPOISE_STARTS_OFFLINE'] ?? 'yes';
  if (offline !== 'yes' && offline !== 'no') {
    return `COUNTERPOISE_STARTS_OFFLINE is "${offline}"; it may be yes or no.`;
  }
  return {
    webRoot: settings['COUNTERPOISE_SCREENS'] ?? join(root, 'build', 'web'),
    oldestBuild: settings['COUNTERPOISE_OLDEST_BUILD'] ?? null,
    startsOffline: offline === 'yes',
  };
};
