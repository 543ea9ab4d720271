/** What can happen, with what is kept of it. A kind, once written anywhere, never changes. */
import * as z from 'zod';
import { CALL_COMMAND_KINDS, CALL_PAYLOADS } from './call-kinds.ts';
import * as field from './fields.ts';

export const ROLES = ['view', 'plan', 'run', 'own'] as const;
export type Role = (typeof ROLES)[number];

/** What a person is trained to do; its terms are the server's. Common practice, no source. */
export type Task =
  | 'induct'
  | 'deck'
  | 'loader'
  | 'rail'
  | 'outOfBalance'
  | 'lead'
  | 'headFly'
  | 'inspector'
  | 'motor';

const words = () => field.text(400, 0);
const document = () => field.text(80);

export const PAYLOADS = {
  /** `writtenMs`: the clock of the device when it was written, where it waited to be sent. */
  'note written': field.fields({ text: field.text(4000), writtenMs: field.ms().nullable() }),
  /** In the same transaction as the revision; `sha256` is of its text, so the chain holds it. */
  'document saved': field.fields({
    document: document(),
    kind: field.oneOf(['house', 'show', 'state']),
    revision: field.whole(1),
    savedBy: words(),
    why: words(),
    sha256: field.hash(),
  }),
  'document set aside': field.fields({ document: document(), saidBy: words(), why: words() }),
  'document taken back': field.fields({ document: document(), saidBy: words(), why: words() }),
  /** `shown` is the hash of what the person saw, worked out of the record as it was at `basis`. */
  signed: field.fields({
    statement: field.text(400),
    shown: field.hash(),
    basis: field.whole(0),
    /** Documents that the figures came from; a save of one of them voids the sign-off too. */
    restsOn: z.array(field.target(), { error: 'a list of targets' }).max(20, {
      error: 'a list of at most 20 targets',
    }),
    role: field.text(80),
    second: field.id().nullable(),
  }),
  /** Refers to a wrong event of the same target. Nothing is edited, nothing is taken out. */
  withdrawn: field.fields({ seq: field.whole(1), event: field.id(), why: field.text(400) }),
  'person invited': field.fields({ name: field.text(120), role: field.oneOf(ROLES) }),
  'person joined': field.fields({ name: field.text(120), role: field.oneOf(ROLES) }),
  'person role changed': field.fields({ from: field.oneOf(ROLES), to: field.oneOf(ROLES) }),
  'person removed': field.fields({ why: words() }),
  'competence given': field.fields({ task: field.text(80), untilMs: field.ms().nullable() }),
  'competence revoked': field.fields({ task: field.text(80) }),
  'device revoked': field.fields({ revoked: field.id(), why: words() }),
  /** A person made a restored or copied database the record. */
  'record made': field.fields({
    houseKey: field.id(),
    recordKey: field.id(),
    before: field.id(),
    saidBy: field.text(120),
    why: field.text(400),
  }),
  /** The wall clock went back; times stay at `heldMs` until it has come up again. */
  'clock held': field.fields({ wallMs: field.ms(), heldMs: field.ms() }),
  ...CALL_PAYLOADS,
} as const;

export type EventKind = keyof typeof PAYLOADS;
export const EVENT_KINDS = Object.keys(PAYLOADS) as readonly EventKind[];
export type Payload<K extends EventKind> = Readonly<z.infer<(typeof PAYLOADS)[K]>>;

/** Kinds that a device may ask for by a command; others are written by what they come with. */
export const COMMAND_KINDS = [
  'note written',
  'signed',
  'withdrawn',
  ...CALL_COMMAND_KINDS,
] as const;
export type CommandKind = (typeof COMMAND_KINDS)[number];

/** Kinds that say something about a target and change nothing of what was shown of it. */
export const CHANGES_NOTHING: readonly EventKind[] = [
  'note written',
  'note settled',
  'signed',
  'withdrawn',
  'clock held',
  'plan told',
  'leave asked',
  'leave waits',
];
