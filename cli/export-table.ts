import { writeFile } from 'node:fs/promises';
import { tablesOut, writeCsv, writeXlsx } from '#exchange';
import { EXIT, type ExitCode } from './exit-codes.ts';
import { openDocuments } from './open-documents.ts';
import { COMMAND_REFUSALS } from './refusal-codes.ts';
import { sayRefusals, type Voice } from './voice.ts';

export type ExportOptions = {
  readonly table: 'schedule' | 'takeoff';
  readonly house: string;
  readonly show: string;
  readonly as: 'csv' | 'xlsx';
  readonly out: string;
};

/** Writes one table of a show, in the figures and units in which the show was typed. */
export const exportTable = async (voice: Voice, options: ExportOptions): Promise<ExitCode> => {
  const { table, out } = options;
  const opened = await openDocuments(voice, { ...options, state: undefined });
  if (opened === null) return EXIT.badInput;
  const written = tablesOut(opened.house.house, opened.show)[table];
  const bytes = options.as === 'csv' ? writeCsv(written) : writeXlsx(written);
  if (!(await wrote(voice, out, bytes))) return EXIT.badInput;
  voice.out(`${out}: ${written.rows.length - 1} rows\n`);
  return EXIT.clear;
};

/** Writes a file, or says why it cannot be written. */
export const wrote = async (
  voice: Voice,
  file: string,
  content: string | Uint8Array,
): Promise<boolean> => {
  try {
    await writeFile(file, content);
    return true;
  } catch (fault) {
    const { code } = COMMAND_REFUSALS.notWritten;
    const found = `it could not be written (${(fault as { code?: string }).code})`;
    const accepted = 'a file in a folder that is there';
    sayRefusals(voice, file, [{ code, path: '', found, accepted }]);
    return false;
  }
};
