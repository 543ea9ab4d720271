/** How the server listens and what it logs, as whoever runs it has set it. */
import { randomBytes } from 'node:crypto';
import { hostname, networkInterfaces } from 'node:os';
import { LOG_LEVELS, type LogLevel, readLogLevel } from './http/index.ts';
import { type Listening, openListening, PORT, readLanSettings } from './lan/index.ts';

type Environment = Readonly<Record<string, string | undefined>>;

type LanStart = {
  readonly listening: Listening;
  readonly port: number;
  readonly trustPort: number;
  readonly logLevel: LogLevel;
};

const MACHINE = { hostname, interfaces: networkInterfaces };

/** A text where something is not understood: it is said, and the server does not start. */
export const lanStartOf = (
  environment: Environment,
  dataFolder: string,
  now: () => Date,
): LanStart | string => {
  const port = portOf(environment, 'COUNTERPOISE_PORT', PORT);
  if (typeof port === 'string') return port;
  const trustPort = portOf(environment, 'COUNTERPOISE_TRUST_PORT', port + 1);
  if (typeof trustPort === 'string') return trustPort;
  const settings = readLanSettings(dataFolder, environment['COUNTERPOISE_LAN']);
  if (!settings.ok) return wordsOf(settings.error);
  const making = { now, randomBytes };
  const asked = { settings: settings.value, dataFolder, port, trustPort, machine: MACHINE, making };
  const opened = openListening(asked);
  if (!opened.ok) return wordsOf(opened.error);
  const word = environment['COUNTERPOISE_LOG'];
  // On one's own machine the terminal stays quiet; a service has a log that is read later.
  const logLevel = readLogLevel(word ?? (opened.value.mode === 'loopback' ? 'warn' : 'info'));
  if (logLevel === undefined) {
    return `COUNTERPOISE_LOG is "${word}"; it may be ${LOG_LEVELS.join(', ')}.`;
  }
  return { listening: opened.value, port, trustPort, logLevel };
};

const portOf = (environment: Environment, name: string, usual: number): number | string => {
  const word = environment[name];
  if (word === undefined || word === '') return usual;
  const port = /^\d{1,5}$/.test(word) ? Number(word) : 0;
  return port >= 1 && port <= 65_535 ? port : `${name} is "${word}"; it may be 1 to 65535.`;
};

const wordsOf = (
  refusals: readonly { code: string; path: string; found: string; accepted: string }[],
): string =>
  refusals
    .map(({ code, path, found, accepted }) => `${code} ${path}: ${found}. Accepted: ${accepted}.`)
    .join('\n');
