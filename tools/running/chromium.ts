/**
 * A browser for the journeys: the one named by CHROMIUM, else one of this machine, else the
 * system's own package on Debian and its kin, when we may install it.
 */
import { accessSync, constants, existsSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { runProgram } from './program.ts';

const NAMES = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable', 'chrome'];

/** Where browsers are that put nothing on PATH. */
const ELSEWHERE = [
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
];

const canRun = (file: string): boolean => {
  try {
    accessSync(file, constants.X_OK);
    return true;
  } catch {
    return false;
  }
};

/** The path of a browser, or nothing. */
export const findChromium = (env: NodeJS.ProcessEnv): string | undefined => {
  const named = env.CHROMIUM;
  if (named !== undefined && named !== '') return canRun(named) ? named : undefined;
  const folders = (env.PATH ?? '').split(delimiter).filter((folder) => folder !== '');
  const candidates = NAMES.flatMap((name) => folders.map((folder) => join(folder, name)));
  return [...candidates, ...ELSEWHERE].find(canRun);
};

const mayInstall = (): boolean => existsSync('/usr/bin/apt-get') && process.getuid?.() === 0;

const install = async (): Promise<void> => {
  process.stderr.write('No browser found. Installing Chromium with apt-get (1 to 5 min) ...\n');
  const env = { DEBIAN_FRONTEND: 'noninteractive' };
  await runProgram('apt-get', ['update', '-q'], { shown: false, env });
  const wanted = ['install', '-y', '-q', '--no-install-recommends', 'chromium'];
  const { code, output } = await runProgram('apt-get', wanted, { shown: false, env });
  if (code !== 0) process.stderr.write(`${output}\napt-get could not install Chromium.\n`);
};

export const CHROMIUM_ADVICE =
  'No browser: the journeys need Chromium or Chrome. Install one, or name it: ' +
  'CHROMIUM=/path/to/chromium npm test';

/** The path of a browser, installed if need be and possible; nothing if there is none. */
export const ensureChromium = async (): Promise<string | undefined> => {
  const found = findChromium(process.env);
  if (found !== undefined || process.env.CHROMIUM || !mayInstall()) return found;
  await install();
  return findChromium(process.env);
};
