/** Readers of the wire: a value from outside becomes ours, or is refused with where and why. */
import * as z from 'zod';
import { fail, ok, type Refusal, type Result } from '#outcome';
import { answerShape, COMMAND, type Command, type CommandAnswer } from './command.ts';
import { type HouseEvent, PLACE } from './event.ts';
import { COMMAND_KINDS, type CommandKind, EVENT_KINDS, type EventKind, PAYLOADS } from './kinds.ts';
import { refuse } from './refusal-codes.ts';
import { RESTS_ON_STATE } from './rests-on-state.ts';

const eventShapes = new Map<EventKind, z.ZodType>(
  EVENT_KINDS.map((kind) => [
    kind,
    z.strictObject({ ...PLACE, kind: z.literal(kind), payload: PAYLOADS[kind] }),
  ]),
);

const commandShapes = new Map<CommandKind, z.ZodType>(
  COMMAND_KINDS.map((kind) => [
    kind,
    z.strictObject({
      ...COMMAND,
      ...(RESTS_ON_STATE[kind]
        ? { seen: COMMAND.seen.refine((seen) => seen !== null, 'the last number seen, never null') }
        : {}),
      kind: z.literal(kind),
      payload: PAYLOADS[kind],
    }),
  ]),
);

/** The shapes as they stand on the wire, for the description of the interface. */
export const commandShape = z.union([...commandShapes.values()] as readonly z.ZodType[]);
export const eventShape = z.union([...eventShapes.values()] as readonly z.ZodType[]);

export const readEvent = (input: unknown): Result<HouseEvent, readonly Refusal[]> =>
  readByKind<HouseEvent>(input, eventShapes);

export const readCommand = (input: unknown): Result<Command, readonly Refusal[]> =>
  readByKind<Command>(input, commandShapes);

export const readAnswer = (input: unknown): Result<CommandAnswer, readonly Refusal[]> => {
  const read = answerShape.safeParse(input);
  if (!read.success) return fail(refusalsOf(read.error, input));
  const answer = read.data;
  if (answer.outcome === 'accepted' || answer.current === null) return ok(answer as CommandAnswer);
  if (answer.current.event === null) return ok(answer as CommandAnswer);
  const event = readEvent(answer.current.event);
  return event.ok ? ok({ ...answer, current: { ...answer.current, event: event.value } }) : event;
};

const readByKind = <T>(
  input: unknown,
  shapes: ReadonlyMap<string, z.ZodType>,
): Result<T, readonly Refusal[]> => {
  const kind = fieldOf(input, 'kind');
  const shape = typeof kind === 'string' ? shapes.get(kind) : undefined;
  if (shape === undefined) {
    const accepted = `one of ${[...shapes.keys()].join(', ')}`;
    return fail([refuse('notRead', 'kind', { found: shown(kind), accepted })]);
  }
  const read = shape.safeParse(input);
  // The shape of the kind was chosen by the kind; the compiler cannot follow that.
  return read.success ? ok(read.data as T) : fail(refusalsOf(read.error, input));
};

const refusalsOf = (error: z.ZodError, input: unknown): readonly Refusal[] =>
  error.issues.slice(0, MOST_REFUSALS).flatMap((issue) =>
    issue.code === 'unrecognized_keys'
      ? issue.keys.map((key) =>
          refuse('notRead', pathOf([...issue.path, key]), {
            found: 'a field of this name',
            accepted: 'no such field',
          }),
        )
      : [
          refuse('notRead', pathOf(issue.path), {
            found: shown(issue.path.reduce<unknown>((value, name) => fieldOf(value, name), input)),
            accepted: issue.message,
          }),
        ],
  );

/** Enough to mend by; a hostile body could have thousands. */
const MOST_REFUSALS = 20;

const pathOf = (path: readonly PropertyKey[]): string =>
  path
    .map((name) => (typeof name === 'number' ? `[${name}]` : `.${String(name).slice(0, 60)}`))
    .join('')
    .replace(/^\./, '');

const fieldOf = (value: unknown, name: PropertyKey): unknown =>
  typeof value === 'object' && value !== null && Object.hasOwn(value, name)
    ? (value as Readonly<Record<PropertyKey, unknown>>)[name]
    : undefined;

const shown = (value: unknown): string => {
  if (value === undefined) return 'nothing';
  if (typeof value === 'object' && value !== null) {
    return Array.isArray(value) ? `a list of ${value.length}` : 'an object';
  }
  const whole = typeof value === 'string' ? JSON.stringify(value) : String(value);
  return whole.length > 60 ? `${whole.slice(0, 60)}…` : whole;
};
