/** Strict JSON for inputs that are no documents, with the refusals that documents have. */
import type { Refusal, Result } from '#outcome';
import { fail, ok } from '#outcome';
import { newFaults } from './faults.ts';
import { readJsonText } from './json-text.ts';

export const readJson = (text: unknown): Result<unknown, readonly Refusal[]> => {
  const faults = newFaults();
  const value = readJsonText(text, faults);
  return faults.count() > 0 ? fail(faults.list()) : ok(value);
};
