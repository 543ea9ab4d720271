/**
 * Fields of events and commands. Each says in words what it accepts; a refusal repeats them, and
 * so does the description of the interface for other programs.
 */
import * as z from 'zod';
import { isWellFormed } from './well-formed.ts';

const said = (accepted: string) => ({ error: accepted });

/** These fields and no other. */
export const fields = <const S extends z.core.$ZodLooseShape>(shape: S) => {
  const accepted = `an object with ${Object.keys(shape).join(', ')}`;
  // What is not an object is told in words; a field too many is told by its name.
  return z.strictObject(shape, {
    error: (issue) => (issue.code === 'invalid_type' ? accepted : undefined),
  });
};

/** Text of a person: something in it, and an end. */
export const text = (max: number, min = 1) => {
  const accepted = `a text of ${min} to ${max} characters`;
  return z
    .string(said(accepted))
    .min(min, said(accepted))
    .max(max, said(accepted))
    .refine(isWellFormed, said('a text without half a character'))
    .describe(accepted);
};

const ID = 'an id of 1 to 64 letters, digits, _ . : or -';
export const id = () =>
  z
    .string(said(ID))
    .regex(/^[A-Za-z0-9_.:-]{1,64}$/, said(ID))
    .describe(ID);

const COMMAND_ID = 'an id of 8 to 64 letters, digits, _ or -, made on the device and never again';
export const commandId = () =>
  z
    .string(said(COMMAND_ID))
    .regex(/^[A-Za-z0-9_-]{8,64}$/, said(COMMAND_ID))
    .describe(COMMAND_ID);

const HASH = 'a SHA-256 as 64 signs of 0-9 a-f';
export const hash = () =>
  z
    .string(said(HASH))
    .regex(/^[0-9a-f]{64}$/, said(HASH))
    .describe(HASH);

const TARGET = 'house, clock, or set:, document:, person: or device: with a name';
export const target = () =>
  z
    .string(said(TARGET))
    .regex(
      /^(?:house|clock|(?:set|document|person|device):[^\s\p{C}](?:[^\p{C}]{0,158}[^\s\p{C}])?)$/u,
      said(TARGET),
    )
    .describe(TARGET);

/** Whole numbers from `min`, as far as they are exact. */
export const whole = (min: number) => {
  const accepted = `a whole number from ${min}`;
  return z
    .int(said(accepted))
    .min(min, said(accepted))
    .max(Number.MAX_SAFE_INTEGER, said(accepted))
    .describe(accepted);
};

const MS = 'milliseconds since 1970-01-01 UTC, a whole number';
export const ms = () =>
  z.int(said(MS)).min(0, said(MS)).max(8_640_000_000_000_000, said(MS)).describe(MS);

export const oneOf = <const T extends readonly [string, ...string[]]>(names: T) => {
  const accepted = `one of ${names.join(', ')}`;
  return z.enum(names, said(accepted)).describe(accepted);
};
