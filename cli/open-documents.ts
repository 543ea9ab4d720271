import { readFile } from 'node:fs/promises';
import {
  type HouseDocument,
  readHouse,
  readShow,
  readState,
  type ShowDocument,
  type StateDocument,
} from '#documents';
import type { Refusal, Result } from '#outcome';
import { fail, ok } from '#outcome';
import { COMMAND_REFUSALS } from './refusal-codes.ts';
import { sayRefusals, type Voice } from './voice.ts';

export type Opened = {
  readonly house: HouseDocument;
  readonly show: ShowDocument;
  readonly state: StateDocument | null;
};

/** Reads the files of one job, and says every fault of every file before it gives up. */
export const openDocuments = async (
  voice: Voice,
  files: { readonly house: string; readonly show: string; readonly state: string | undefined },
): Promise<Opened | null> => {
  const house = await readWith(voice, files.house, readHouse);
  const plant = house?.house;
  const show = await readWith(voice, files.show, (text) => readShow(text, plant));
  const state =
    files.state === undefined
      ? null
      : await readWith(voice, files.state, (text) => readState(text, plant));
  const failed = house === null || show === null || (files.state !== undefined && state === null);
  return failed ? null : { house, show, state };
};

/** A house with what is recorded in it, where a file says so. */
export const openHouseAndState = async (
  voice: Voice,
  files: { readonly house: string; readonly state?: string },
): Promise<Pick<Opened, 'house' | 'state'> | null> => {
  const house = await readWith(voice, files.house, readHouse);
  if (house === null) return null;
  if (files.state === undefined) return { house, state: null };
  const state = await readWith(voice, files.state, (text) => readState(text, house.house));
  return state === null ? null : { house, state };
};

const readWith = async <T>(
  voice: Voice,
  file: string,
  read: (text: string) => Result<T, readonly Refusal[]>,
): Promise<T | null> => {
  const text = await textOf(file);
  const answer = text.ok ? read(text.value) : text;
  if (answer.ok) return answer.value;
  sayRefusals(voice, file, answer.error);
  return null;
};

/** A file, or standard input for `-`. */
export const textOf = async (file: string): Promise<Result<string, readonly Refusal[]>> => {
  try {
    if (file === '-') return ok(await standardInput());
    return ok(await readFile(file, 'utf8'));
  } catch (fault) {
    const { code } = fault as { code?: string };
    const found = code === 'ENOENT' ? 'no such file' : `it could not be read (${code})`;
    return fail([{ code: COMMAND_REFUSALS.noFile.code, path: '', found, accepted: 'a JSON file' }]);
  }
};

const standardInput = async (): Promise<string> => {
  const parts: Buffer[] = [];
  for await (const part of process.stdin) parts.push(part as Buffer);
  return Buffer.concat(parts).toString('utf8');
};
