/** What happened on a set, one line an event, in the words of the house. */
import type { EventKind, EventOf, HouseEvent, Payload } from '#events';
import { sayMeasure } from '#sheets';
import { message, phrase, phraseCount } from '#texts';
import { jobWords, postWords, type StepContext, stepWords } from './desk-words.ts';

type Said = { readonly text: string; readonly names: Readonly<Record<string, string>> };

const AS = {
  done: message('done as told'),
  notDone: message('not done'),
  otherwise: message('done otherwise'),
} as const;

const DOUBT_OF_LOCK = message('The rope lock is in doubt: {why}');
const LOCK_TRIED = message('The rope lock was tried and holds');

const reportWords = (
  { as, plates, words }: Payload<'step reported'>,
  { house }: StepContext,
): string =>
  [
    phrase(house, AS[as]),
    ...(plates === null
      ? []
      : [phraseCount(house, plates, ['{count} plate counted', '{count} plates counted'])]),
    ...(words === '' ? [] : [words]),
  ].join(', ');

const JUDGED = {
  held: message('Judged: held'),
  unheld: message('Judged: NOT HELD, {rule}'),
  unknown: message('Judged: UNKNOWN, {rule}'),
} as const;

const just = (text: string, names: Readonly<Record<string, string>> = {}): Said => ({
  text,
  names,
});

type Sayings = {
  readonly [K in EventKind]?: (event: EventOf<K>, context: StepContext) => Said;
};

const force = (value: number, { house }: StepContext): string =>
  sayMeasure({ value, kind: 'force' }, house);

/** What was asked, given and done. */
const WORK: Sayings = {
  'plan told': ({ payload: { job, steps } }, { house }) =>
    just(message('Order told: {job}, {count} steps'), {
      job: jobWords(job, house),
      count: String(steps.length),
    }),
  'leave asked': ({ payload: { post, step } }, context) =>
    just(message('{post} asked leave: {step}'), {
      post: postWords(post, context.house),
      step: stepWords(step, null, context),
    }),
  'leave waits': ({ payload }, { house }) =>
    just(message('Leave waits for the word of: {post}'), {
      post: postWords(payload.secondOf, house),
    }),
  'leave seconded': ({ payload: { post, plates } }, { house }) =>
    just(
      plates === null
        ? message('{post} gave the second word')
        : message('{post} gave the second word and counted {plates} plates'),
      { post: postWords(post, house), plates: String(plates ?? '') },
    ),
  'leave given': ({ payload: { post, step } }, context) =>
    just(message('Leave given to {post}: {step}'), {
      post: postWords(post, context.house),
      step: stepWords(step, null, context),
    }),
  'leave returned': ({ payload: { words } }) =>
    just(message('Leave given back: {words}'), { words }),
  'step reported': ({ payload }, context) =>
    just(message('{post} reported: {how}'), {
      post: postWords(payload.post, context.house),
      how: reportWords(payload, context),
    }),
  'set judged': ({ payload: { held, rule } }, { house }) =>
    just(JUDGED[held], { rule: rule ?? phrase(house, 'no rule named') }),
};

/** What was found, measured, tagged and written. */
const FINDS: Sayings = {
  'set found': ({ payload: { second } }) =>
    second === null
      ? just(message('Found and counted; no second person'))
      : just(message('Found and counted; second person {second}'), { second }),
  'set doubted': ({ payload: { why } }) => just(message('Not known any more: {why}'), { why }),
  'lock doubted': ({ payload: { why } }) =>
    why === null ? just(LOCK_TRIED) : just(DOUBT_OF_LOCK, { why }),
  'pull tested': ({ payload }, context) =>
    just(message('Pull test: {out} out, {in} in, at {height}'), {
      out: force(payload.out, context),
      in: force(payload.in, context),
      height: sayMeasure({ value: payload.height, kind: 'length' }, context.house),
    }),
  'item weighed': ({ payload: { item, mass } }, { house, nameOf }) =>
    just(message('Weighed: {item}, {mass}'), {
      item: nameOf(item),
      mass: sayMeasure({ value: mass, kind: 'mass' }, house),
    }),
  'tag placed': ({ payload: { tag } }) => just(message('Tag {number} placed: {reason}'), tag),
  'tag returned': ({ payload: { number, repairedBy, words } }) =>
    just(message('Tag {number} given back, repaired by {repairedBy}: {words}'), {
      ...{ number, repairedBy, words },
    }),
  'note written': ({ payload: { text } }) => just(message('Note: {text}'), { text }),
  'note settled': ({ payload: { note, words } }) =>
    just(message('Note {note} changes nothing: {words}'), { note: String(note), words }),
};

const SAYINGS: Sayings = { ...WORK, ...FINDS };

/** Null for what is no news to a reader: the server's own book-keeping, and other houses. */
export const eventWords = (event: HouseEvent, context: StepContext): string | null => {
  // A saying is kept under the kind of the events that it takes.
  const say = SAYINGS[event.kind] as ((each: HouseEvent, of: StepContext) => Said) | undefined;
  if (say === undefined) return null;
  const { text, names } = say(event, context);
  return phrase(context.house, text, names);
};
