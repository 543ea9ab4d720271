/**
 * How the server listens: `COUNTERPOISE_LAN`, else `lan.json` in the data folder, else this machine
 * only. What is not understood stops the start.
 */
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { z } from 'zod';
import { fail, ok, type Refusal, type Result } from '#outcome';
import { LAN_REFUSALS } from './refusal-codes.ts';

export type LanSettings = {
  readonly listen: 'loopback' | 'https' | 'plain';
  /** Names of this server in the house's network, beside those of the machine. */
  readonly names: readonly string[];
  /** The address that is shown first, where the machine has several. */
  readonly address?: string;
  /** PEM files of a certificate that the house gives; absent where the own authority signs. */
  readonly certificate?: { readonly chain: string; readonly key: string };
};

export const SETTINGS_FILE = 'lan.json';

const DNS_NAME =
  /^(?=.{1,253}$)[a-z0-9]([a-z0-9-]{0,61}[a-z0-9])?(\.[a-z0-9]([a-z0-9-]{0,61}[a-z0-9])?)*$/;

const SETTINGS = z.strictObject({
  listen: z.enum(['loopback', 'https', 'plain']),
  names: z.array(z.string().regex(DNS_NAME, 'a name such as flies.home.arpa')).max(20).default([]),
  address: z.ipv4().optional(),
  certificate: z.strictObject({ chain: z.string().min(1), key: z.string().min(1) }).optional(),
});

const refused = (path: string, found: string, accepted: string): readonly Refusal[] => [
  { code: LAN_REFUSALS.settings.code, path, found, accepted },
];

const WORDS = { '0': 'loopback', '1': 'https', https: 'https', plain: 'plain' } as const;

const isWord = (word: string): word is keyof typeof WORDS => Object.hasOwn(WORDS, word);

/** `word` is what COUNTERPOISE_LAN says; it goes before what the file says of listening. */
export const readLanSettings = (
  folder: string,
  word: string | undefined,
): Result<LanSettings, readonly Refusal[]> => {
  const file = readFile(join(folder, SETTINGS_FILE));
  if (!file.ok) return file;
  if (word === undefined || word === '') return file;
  if (!isWord(word)) {
    return fail(refused('COUNTERPOISE_LAN', word, Object.keys(WORDS).join(', ')));
  }
  return ok({ ...file.value, listen: WORDS[word] });
};

const readFile = (path: string): Result<LanSettings, readonly Refusal[]> => {
  if (!existsSync(path)) return ok({ listen: 'loopback', names: [] });
  const read = SETTINGS.safeParse(json(readFileSync(path, 'utf8')));
  if (read.success) {
    const { address, certificate, ...rest } = read.data;
    return ok({
      ...rest,
      ...(address === undefined ? {} : { address }),
      ...(certificate === undefined ? {} : { certificate }),
    });
  }
  return fail(
    read.error.issues.flatMap(({ path: at, message }) =>
      refused([SETTINGS_FILE, ...at.map(String)].join('.'), message, 'see the guide on running it'),
    ),
  );
};

/** Text that is no JSON is refused by its form, as a text where settings belong. */
const json = (text: string): unknown => {
  try {
    return JSON.parse(text) as unknown;
  } catch {
    return text;
  }
};
