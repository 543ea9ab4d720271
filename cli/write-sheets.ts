import { mkdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { thisInstallation } from '#installation';
import { fetchTongue } from '#languages';
import { csvOf, fileNameOf, localMoment, type Paper, renderPdf } from '#print';
import { CASES, type ValidationCase } from '#selfcheck';
import {
  SELF_CHECK_FAILED,
  type SheetContext,
  sayFailed,
  sheetContext,
  sheetIds,
  sheetOf,
} from '#sheets';
import type { Language } from '#texts';
import { EXIT, type ExitCode } from './exit-codes.ts';
import { type Opened, openDocuments } from './open-documents.ts';
import { COMMAND_REFUSALS } from './refusal-codes.ts';
import { checkedNow } from './self-check.ts';
import { progress, sayRefusals, type Voice } from './voice.ts';

export type SheetOptions = {
  readonly house: string;
  readonly show: string;
  readonly out: string;
  readonly paper: Paper;
  readonly by: string;
  readonly state?: string;
  readonly only?: string;
  /** Absent is the one that the house prints in. */
  readonly language?: Language;
  readonly json?: boolean;
};

/** Writes every sheet of a show as PDF, and as CSV where it has a table. */
export const writeSheets = async (
  voice: Voice,
  options: SheetOptions,
  cases: readonly ValidationCase[] = CASES,
): Promise<ExitCode> => {
  const opened = await openDocuments(voice, { ...options, state: options.state });
  if (opened === null) return EXIT.badInput;
  const context = await spoken(contextOf(opened, options.by, cases), options.language);
  const known = sheetIds(context);
  // A sheet may be made that no list offers: the section after any cue.
  const { only } = options;
  const ids = only === undefined ? known : sheetOf(context, only) === undefined ? [] : [only];
  if (ids.length === 0) {
    const { code } = COMMAND_REFUSALS.noSheet;
    const accepted = known.join(', ');
    sayRefusals(voice, '--only', [{ code, path: '', found: `"${only}"`, accepted }]);
    return EXIT.badInput;
  }
  await mkdir(options.out, { recursive: true });
  const say = progress(voice, 'Sheets', ids.length);
  const files: string[] = [];
  for (const [index, id] of ids.entries()) {
    files.push(...(await writeOne(context, id, options)));
    say(index + 1);
  }
  voice.out(
    options.json === true
      ? `${JSON.stringify({ files }, null, 2)}\n`
      : `${files.length} files in ${options.out}. ${WORK_BY}\n`,
  );
  return saidOfCheck(voice, context);
};

const spoken = async (context: SheetContext, language: Language | undefined) => {
  const tongue = await fetchTongue(language ?? context.house.language ?? 'en');
  return { ...context, house: { ...context.house, tongue } };
};

const WORK_BY =
  'WORK ONLY BY A SHEET THAT BEARS AN ORDER: cards are none, and a sheet without one says so.';

/** A failed self-check is on the sheets too; here it is what the shell is told. */
const saidOfCheck = (voice: Voice, { selfCheck: { state } }: SheetContext): ExitCode => {
  if (state.is !== 'done' || state.report.failed.length === 0) return EXIT.clear;
  voice.err(`${SELF_CHECK_FAILED}: ${sayFailed(state.report.failed)}\n`);
  return EXIT.fault;
};

/** Longer than this nobody waits for sheets; they then say that the self-check was not run. */
const SELF_CHECK_MS = 2000;

const contextOf = (
  { house, show, state }: Opened,
  by: string,
  cases: readonly ValidationCase[],
): SheetContext => {
  const now = new Date();
  return sheetContext(house.house, show.show, state?.state ?? null, {
    clockMs: now.getTime(),
    stamp: { revision: 'from file', printedAt: localMoment(now), printedBy: by },
    selfCheck: {
      installation: thisInstallation(),
      state: checkedNow({ cases, mostMs: SELF_CHECK_MS }),
    },
  });
};

const writeOne = async (
  context: SheetContext,
  id: string,
  { out, paper }: SheetOptions,
): Promise<readonly string[]> => {
  const sheet = sheetOf(context, id);
  if (sheet === undefined) return [];
  const pdf = join(out, fileNameOf(sheet, 'pdf'));
  await writeFile(pdf, await renderPdf(sheet, paper));
  const text = csvOf(sheet);
  if (text === null) return [pdf];
  const csv = join(out, fileNameOf(sheet, 'csv'));
  await writeFile(csv, text);
  return [pdf, csv];
};
