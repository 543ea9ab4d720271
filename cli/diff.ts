import { type Command, Option } from 'commander';
import { type DifferenceGroup, sayDifference } from '#differences';
import {
  type JsonObject,
  readHouseValue,
  readJson,
  readOrderValue,
  readShowValue,
  readStateValue,
} from '#documents';
import { fail, ok, type Refusal, type Result } from '#outcome';
import { EXIT, type ExitCode } from './exit-codes.ts';
import { textOf } from './open-documents.ts';
import { COMMAND_REFUSALS } from './refusal-codes.ts';
import { sayRefusals, type Voice } from './voice.ts';

export const addDiffCommand = (
  program: Command,
  voice: Voice,
  ended: (code: ExitCode) => void,
): void => {
  program
    .command('diff')
    .description('says what two versions of a house, a show, a record or an order say apart')
    .argument('<older>', 'the older document (JSON; - reads standard input)')
    .argument('<newer>', 'the newer one')
    .addOption(new Option('--words <words>', 'trade words').choices(['US', 'UK']))
    .option('--json', 'answer as JSON')
    .action(async (older, newer, options) =>
      ended(await diff(voice, { older, newer, ...options })),
    );
};

type DiffOptions = {
  readonly older: string;
  readonly newer: string;
  readonly words?: 'US' | 'UK';
  readonly json?: boolean;
};

const READERS = {
  'counterpoise-house': readHouseValue,
  'counterpoise-show': readShowValue,
  'counterpoise-state': readStateValue,
  'counterpoise-order': readOrderValue,
} as const;

const isFormat = (format: unknown): format is keyof typeof READERS =>
  typeof format === 'string' && Object.hasOwn(READERS, format);

/** What two versions of one document say apart, in words. It judges neither. */
const diff = async (voice: Voice, options: DiffOptions): Promise<ExitCode> => {
  const { older, newer, words } = options;
  const before = await opened(voice, older);
  const after = await opened(voice, newer);
  if (before === null || after === null) return EXIT.badInput;
  if (before['format'] !== after['format']) {
    const found = `${String(before['format'])}, then ${String(after['format'])}`;
    const { code } = COMMAND_REFUSALS.notAlike;
    const accepted = 'two versions of one kind of document';
    sayRefusals(voice, newer, [{ code, path: 'format', found, accepted }]);
    return EXIT.badInput;
  }
  const own = after['words'] === 'UK' ? 'UK' : 'US';
  const groups = sayDifference(before, after, { words: words ?? own });
  voice.out(options.json === true ? `${JSON.stringify({ groups }, null, 2)}\n` : said(groups));
  return EXIT.clear;
};

const said = (groups: readonly DifferenceGroup[]): string => {
  const count = groups.reduce((sum, { lines }) => sum + lines.length, 0);
  const words = groups.flatMap(({ heading, lines }) =>
    lines.flatMap((line) => [
      `${heading}: ${line.words}${line.path === null ? '' : ` [${line.path}]`}`,
      ...line.details.map((detail) => `  ${detail}`),
    ]),
  );
  const last = `${count} ${count === 1 ? 'place differs' : 'places differ'}.`;
  return `${[...words, last].join('\n')}\n`;
};

const opened = async (voice: Voice, file: string): Promise<JsonObject | null> => {
  const text = await textOf(file);
  const read = text.ok ? documentIn(text.value) : text;
  if (read.ok) return read.value;
  sayRefusals(voice, file, read.error);
  return null;
};

const documentIn = (text: string): Result<JsonObject, readonly Refusal[]> => {
  const json = readJson(text);
  if (!json.ok) return json;
  const format: unknown = (json.value as JsonObject | null)?.['format'];
  // Nothing is known of another document; the reader of a house says what it looks like.
  const read = READERS[isFormat(format) ? format : 'counterpoise-house'](json.value);
  return read.ok ? ok(read.value.raw) : fail(read.error);
};
