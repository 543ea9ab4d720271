/** How every document is read: text, value, version, shape, checks; then all or nothing. */
import type { Refusal, Result } from '#outcome';
import { fail, ok } from '#outcome';
import type { DocumentKind } from './envelope.ts';
import { openDocument } from './envelope.ts';
import type { Faults } from './faults.ts';
import { newFaults } from './faults.ts';
import type { JsonObject } from './json.ts';
import { readJsonText } from './json-text.ts';
import { checkJsonValue } from './json-value.ts';
import type { ReadMemory, Shape } from './shape/shape.ts';

/** The raw document in its current version, as typed, beside what the engine takes. */
export type Read<T> = { readonly raw: JsonObject; readonly value: T };

export type Reading<W, T> = {
  readonly kind: DocumentKind;
  readonly shape: Shape<W>;
  /** Puts the written document together and checks what its fields say of one another. */
  readonly assemble: (written: W, faults: Faults) => T;
};

type Answer<T> = Result<Read<T>, readonly Refusal[]>;

export const readFromText = <W, T>(reading: Reading<W, T>, text: unknown): Answer<T> => {
  const faults = newFaults();
  const value = readJsonText(text, faults);
  return faults.count() > 0 ? fail(faults.list()) : readOpened(reading, value, faults);
};

export const readFromValue = <W, T>(
  reading: Reading<W, T>,
  value: unknown,
  memory?: ReadMemory,
): Answer<T> => {
  const faults = newFaults();
  return checkJsonValue(value, faults)
    ? readOpened(reading, value, faults, memory)
    : fail(faults.list());
};

const readOpened = <W, T>(
  { kind, shape, assemble }: Reading<W, T>,
  value: unknown,
  faults: Faults,
  memory?: ReadMemory,
): Answer<T> => {
  const raw = openDocument(kind, value, faults);
  if (raw === undefined) return fail(faults.list());
  const written = shape.read(raw, { path: '', given: null, faults, memory });
  const read = assemble(written, faults);
  return faults.count() > 0 ? fail(faults.list()) : ok({ raw, value: read });
};
