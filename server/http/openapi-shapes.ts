/**
 * What is answered, as shapes for the description of the interface. They describe and do nothing
 * else: answers are not cut to them, and the tests hold real answers against them.
 */
import * as z from 'zod';
import { commandShape, eventShape, ROLES, restraintShape, standingShape, stepShape } from '#events';
import { TASKS } from '../auth/index.ts';

const text = z.string();
const ms = z.int().describe('Milliseconds since 1970, by the clock of the server.');
const moment = z.iso.datetime().describe('A moment in UTC, by the clock of the server.');
const role = z.enum(ROLES);
const kind = z.enum(['house', 'show', 'state']);
const seq = z.int().min(0).describe('Number of an event; 0 before the first.');
const database = z.enum(['demo', 'house']);

const summary = {
  id: text.describe('`house:`, `show:` or `state:` and the own id of the document.'),
  kind,
  revision: z.int().min(1),
  savedAt: moment,
  savedBy: text,
  why: text,
  remark: text.describe('Empty where nobody wrote one.'),
};
const DocumentSummary = z.object(summary);
const Refusal = z.object({ code: text, path: text, found: text, accepted: text });
const Someone = z.object({ id: text, name: text, role });
const Person = Someone.extend({ joinedAtMs: ms });
const Competence = z.object({
  id: text,
  person: text,
  task: z.enum(TASKS),
  signedBy: text.nullable(),
  signedAtMs: ms,
  lapsesAtMs: ms.nullable(),
});
const Invitation = z.object({
  id: text,
  name: text,
  role,
  person: text.nullable(),
  madeBy: text.nullable(),
  madeAtMs: ms,
  expiresAtMs: ms,
});
const ProgramToken = z.object({
  id: text,
  name: text,
  role,
  madeBy: text.nullable(),
  madeAtMs: ms,
  expiresAtMs: ms,
  usedAtMs: ms.nullable(),
});
const Device = z.object({
  id: text,
  device: text,
  label: text,
  beganAtMs: ms,
  seenAtMs: ms,
  expiresAtMs: ms,
});
const Event = eventShape.describe('What happened, with its place in the chain.');
const CommandAnswer = z.object({
  outcome: z.literal('accepted'),
  commandId: text,
  seqs: z.array(z.int().min(1)).describe('Numbers of the events that it became.'),
});
const CommandRefused = z.object({
  outcome: z.literal('refused'),
  commandId: text,
  code: text,
  words: text,
  current: z.object({ seq, event: Event.nullable() }).nullable(),
});
const Heartbeat = z.object({
  seq,
  hash: text,
  serverMs: ms,
  build: text.nullable(),
  houseKey: text.describe('Of the house; another one is an alarm on a device.'),
  recordKey: text.describe('Of this record; made anew when a restored copy is made the record.'),
});

/** By the name that each has in the description. */
export const SHAPES: Readonly<Record<string, z.ZodType>> = {
  Problem: z
    .object({
      type: text.describe('`about:blank`, or a path that tells it from others of its status.'),
      title: text,
      status: z.int(),
      detail: text.optional(),
      refusals: z.array(Refusal).optional(),
      current: z.unknown().optional().describe('How it stands now, where that is why.'),
      answer: z.unknown().optional().describe('The stored answer to a command.'),
    })
    .describe('A refused request (RFC 9457).'),
  Nothing: z.object({}).describe('It is done; there is nothing to say.'),
  DatabaseInHand: z.object({
    inHand: database,
    hasHouse: z.boolean(),
    /** Of the house that is in hand; absent where the answer is about the change alone. */
    houseKey: z.string().optional(),
  }),
  DocumentSummary,
  Documents: z.object({ database, documents: z.array(DocumentSummary) }),
  DocumentsAside: z.object({
    documents: z.array(
      z.object({ ...summary, asideAt: moment, asideBy: text, asideWhy: text, name: text }),
    ),
  }),
  Revisions: z.object({ revisions: z.array(DocumentSummary) }),
  Shelved: z.object({ id: text, isAside: z.boolean() }),
  Sheets: z.object({ sheets: z.array(text).describe('Ids to ask `/api/sheet.pdf` for.') }),
  SheetCode: z.object({ answer: z.enum(['current', 'superseded', 'no such sheet']) }),
  SelfCheck: z.object({
    installation: z.object({ version: text, build: text, platform: text }),
    state: z.looseObject({ is: z.enum(['notRun', 'running', 'done']) }),
  }),
  Health: z.object({
    is: z.enum(['well', 'caution', 'failing']),
    cautions: z.array(text),
    time: moment,
    startedAt: moment,
    version: text,
    build: text,
    mode: z.enum(['loopback', 'ownAuthority', 'houseCertificate', 'plain']),
    signOffs: z.boolean().describe('False where nothing can be signed off here.'),
    addresses: z.array(text),
    trustAddresses: z.array(text).describe('Where a device reads how to trust this server.'),
    certificate: z
      .object({
        fingerprint: text.describe('SHA-256 of what a device is made to trust.'),
        until: moment,
        daysLeft: z.int(),
        isDue: z.boolean(),
      })
      .nullable(),
    database,
    record: z.object({
      seq,
      houseKey: text,
      recordKey: text,
      isReadOnly: z.boolean(),
      isFlushed: z.boolean(),
      lastBackupAt: moment.nullable(),
    }),
    disk: z.object({ freeBytes: z.number(), totalBytes: z.number() }).nullable(),
    logLevel: z.enum(['error', 'warn', 'info', 'debug']).nullable(),
  }),
  Description: z.looseObject({ openapi: text }).describe('This description.'),
  Session: z.object({
    kind: z.enum(['nobody', 'thisMachine', 'person', 'program']),
    id: text.optional(),
    name: text.optional(),
    role: role.optional(),
    hasOwner: z.boolean(),
    ownerCode: text.optional(),
    isMine: z.boolean().optional(),
    byPin: z.array(z.object({ id: text, name: text })),
  }),
  Someone,
  Person,
  Devices: z.object({ devices: z.array(Device), own: text.optional() }),
  SignedOut: z.object({ ended: z.int().min(0) }),
  InvitationFound: z.object({ name: text, role, isNewPassphrase: z.boolean(), expiresAtMs: ms }),
  Invitations: z.object({ invitations: z.array(Invitation) }),
  InvitationMade: z.object({ invitation: Invitation, token: text.describe('Shown this once.') }),
  People: z.object({ people: z.array(Person), competences: z.array(Competence) }),
  Competence,
  ThisMachine: z.object({ isMine: z.boolean() }),
  Programs: z.object({ programs: z.array(ProgramToken) }),
  ProgramMade: z.object({ program: ProgramToken, token: text.describe('Shown this once.') }),
  Command: commandShape.describe('What a device asks to be recorded.'),
  Event,
  CommandAnswer,
  StoredAnswer: z.union([CommandAnswer, CommandRefused]),
  Events: z.object({ events: z.array(Event), heartbeat: Heartbeat }),
  // Named once, since many kinds of events hold them.
  SetStanding: standingShape,
  WorkStep: stepShape,
  Restraint: restraintShape,
  Call: z.object({
    call: z
      .object({
        id: text,
        seq: z.int().min(1),
        house: text,
        show: text,
        openedMs: ms,
        isDrill: z.boolean(),
        documents: z.array(z.object({ id: text, revision: z.int().min(1) })),
      })
      .nullable(),
    from: z.int().min(1).nullable().describe('Number of `call opened`; null where none is open.'),
    head: seq,
  }),
  CallCode: z.object({
    code: text.describe('Six letters and digits, shown this once.'),
    link: text.describe('Where a page of this server takes it.'),
    expiresMs: ms,
  }),
  PostTaken: z.object({
    call: text,
    post: text,
    answeredBy: text.nullable().describe('Who answers by name for whoever joined.'),
  }),
  Said: z.object({
    notes: z.array(
      z.object({
        event: Event,
        withdrawal: Event.nullable().describe('What took it back, and why.'),
        seen: seq.describe('The last event on its target, for a command that withdraws it.'),
      }),
    ),
    signed: z.array(z.object({ event: Event, standing: z.looseObject({ stands: z.boolean() }) })),
    seen: seq.nullable(),
    isAll: z.boolean(),
  }),
};
