/**
 * Survivors that somebody has looked at and found to be the same program: no input tells them
 * from the code, so no test can. An entry names the code and not its line, which moves.
 */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Survivor } from './result.ts';

export type LookedAt = {
  readonly file: string;
  readonly mutants: readonly {
    /** The line on which it begins: `[]` alone would be many. */
    readonly on: string;
    readonly code: string;
    readonly becomes: string;
  }[];
  readonly reason: string;
};

export const readLookedAt = (): readonly LookedAt[] =>
  JSON.parse(
    readFileSync(join(import.meta.dirname, 'looked-at.json'), 'utf8'),
  ) as readonly LookedAt[];

export const isLookedAt = (survivor: Survivor, lookedAt: readonly LookedAt[]): boolean =>
  lookedAt.some(
    ({ file, mutants }) =>
      file === survivor.file &&
      mutants.some(
        ({ on, code, becomes }) =>
          on === survivor.on && code === survivor.code && becomes === survivor.becomes,
      ),
  );
