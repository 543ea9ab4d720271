/**
 * Kinds of a call: what was asked, said, done and found. A request asks leave for one step and may
 * be refused; a report says what happened and is refused to nobody who is signed in. What the
 * server says itself goes into the same batch as what it answers.
 */
import * as z from 'zod';
import * as shape from './call-shapes.ts';
import * as field from './fields.ts';

const call = shape.call();
const words = () => field.text(400, 0);
const leave = field.whole(1);

export const CALL_PAYLOADS = {
  /** By the server, from the documents as they stood: the state that all the rest is added to. */
  'call opened': field.fields({
    call,
    house: field.text(80),
    show: field.text(80),
    isDrill: z.boolean(),
    documents: shape.documents(),
    sets: shape.openings(),
    galleries: shape.openGalleries(),
  }),
  'call closed': field.fields({ call, words: words() }),
  /** By the server, when a joining code was given back with a post and a name. */
  'post taken': field.fields({
    call,
    post: shape.post(),
    name: field.text(120),
    answeredBy: field.text(120).nullable(),
  }),
  'post left': field.fields({ call, post: shape.post() }),
  /** That a post and those with it are out of every drop zone, hands off bricks; or back again. */
  'post said': field.fields({ call, post: shape.post(), isClear: z.boolean() }),

  /** The order that a set is to be worked by; taken only where the rules find nothing in it. */
  'plan told': field.fields({
    call,
    job: field.oneOf(['load', 'strike', 'change']),
    steps: shape.steps(),
  }),
  /** `paper`: a second person whose word stands on paper, where there is one device only. */
  'leave asked': field.fields({
    call,
    post: shape.post(),
    step: shape.step,
    paper: field.text(120).nullable(),
    override: shape.override.nullable(),
  }),
  /** `plates`: as the second counted what is on the arbor, all of it; null where not asked. */
  'leave seconded': field.fields({
    call,
    post: shape.post(),
    asked: leave,
    plates: field.whole(0).nullable(),
  }),
  /** By the server. `asked` is the number of what asked for it. */
  'leave given': field.fields({
    call,
    post: shape.post(),
    asked: leave,
    step: shape.step,
    expects: shape.standing,
    second: shape.second.nullable(),
    override: shape.override.nullable(),
  }),
  /** By the server: leave waits for the second person, who is at that post. */
  'leave waits': field.fields({ call, asked: leave, secondOf: shape.post() }),
  /** Nobody does it now: what waits is forgotten. Of leave that was given: nothing was done. */
  'leave returned': field.fields({ call, asked: leave, words: words() }),

  /** Bricks of this step so far, counted aloud; one more or one taken back. */
  'plates counted': field.fields({ call, post: shape.post(), leave, count: field.whole(0) }),
  /** `plates` of a step with bricks; `height` where the batten stopped. */
  'step reported': field.fields({
    call,
    post: shape.post(),
    leave,
    as: field.oneOf(['done', 'notDone', 'otherwise']),
    plates: field.whole(0).nullable(),
    height: shape.figure().nullable(),
    words: words(),
  }),
  /** How a set was found by looking, counting and measuring; notes of paper that this settles. */
  'set found': field.fields({
    call,
    post: shape.post(),
    standing: shape.standing,
    lock: field.oneOf(['closed', 'open']),
    ring: field.oneOf(['on', 'off']),
    collar: field.oneOf(['secured', 'loose']),
    basis: field.oneOf(['counted', 'weighed', 'pullTested']),
    second: field.text(120).nullable(),
    settles: z.array(field.whole(1)).max(100),
  }),
  /** Somebody says that how the set stands is not known any more: touched, slipped, forgotten. */
  'set doubted': field.fields({ call, why: field.text(400) }),
  /** By the server, when what was reported changed how the rules judge the set. */
  'set judged': field.fields({
    call,
    held: field.oneOf(['held', 'unheld', 'unknown']),
    rule: field.text(20).nullable(),
  }),
  'lock doubted': field.fields({ call, why: field.text(400).nullable() }),
  'gallery counted': field.fields({
    call,
    post: shape.post(),
    gallery: field.text(80),
    stock: shape.stock(),
    second: field.text(120).nullable(),
  }),
  'pull tested': field.fields({
    call,
    post: shape.post(),
    out: shape.figure(),
    in: shape.figure(),
    height: shape.figure(),
  }),
  'item weighed': field.fields({
    call,
    post: shape.post(),
    item: field.text(80),
    mass: shape.figure().min(0, { error: 'a mass from 0 kg' }),
  }),

  /** Everything where `set` is null. It stops no rope: it tells people. */
  'stop called': field.fields({
    call,
    post: shape.post().nullable(),
    set: field.text(80).nullable(),
    words: words(),
  }),
  'stop heard': field.fields({ call, post: shape.post(), stop: leave }),
  /** Whoever called it says that work may go on. */
  'stop agreed': field.fields({ call, stop: leave }),
  /** By the head flyman, with whoever called it or a named substitute and the reason. */
  'stop lifted': field.fields({
    call,
    post: shape.post(),
    stop: leave,
    substitute: field.fields({ name: field.text(120), why: field.text(400) }).nullable(),
  }),

  'tag placed': field.fields({
    call,
    tag: shape.tag,
    service: field.oneOf(['paused', 'lockedOut']),
  }),
  /** `repairedBy` and who looked at it are two people; whoever gives this back is the second. */
  'tag returned': field.fields({
    call,
    number: field.text(80),
    repairedBy: field.text(120),
    words: field.text(400),
  }),
  /** A note of paper that changes nothing, as two people say. */
  'note settled': field.fields({ call, note: leave, words: field.text(400) }),
} as const;

/** What a device may ask for; the others are the server's. */
export const CALL_COMMAND_KINDS = [
  'post left',
  'post said',
  'plan told',
  'leave asked',
  'leave seconded',
  'leave returned',
  'plates counted',
  'step reported',
  'set found',
  'set doubted',
  'lock doubted',
  'gallery counted',
  'pull tested',
  'item weighed',
  'stop called',
  'stop heard',
  'stop agreed',
  'stop lifted',
  'tag placed',
  'tag returned',
  'note settled',
] as const;
export type CallCommandKind = (typeof CALL_COMMAND_KINDS)[number];

/** Asks leave, and is refused by rule; all the others report. */
export const CALL_REQUESTS = [
  'plan told',
  'leave asked',
  'leave seconded',
  'stop lifted',
  'tag returned',
  'note settled',
] as const satisfies readonly CallCommandKind[];
