/** What the routes of a call stand on: the room, who asks, and what is written for them. */
import { randomUUID } from 'node:crypto';
import type { FastifyRequest } from 'fastify';
import { type EventDraft, type Follow, type LogFault, recordEvents } from '#events';
import type { Result } from '#outcome';
import { byOf, mayDo, type Who } from '../auth/index.ts';
import type { Databases } from '../databases.ts';
import { type CallRoom, type CallStand, openCallRoom, type RecordInHand } from '../live/index.ts';
import { RecordFault } from '../log/index.ts';
import { documentsOfCall } from './call-documents.ts';
import { whoOf } from './rights.ts';

/** The id that a device makes itself, and that stands in its commands. */
export const CALL_DEVICE = { type: 'string', pattern: '^[A-Za-z0-9_.:-]{1,64}$' } as const;

export const recordOf = (databases: Databases): RecordInHand => {
  const { log, identity } = databases.record();
  const { houseKey, recordKey } = identity();
  return { log, houseKey, recordKey };
};

export const roomOf = (databases: Databases): CallRoom =>
  openCallRoom({
    record: () => recordOf(databases),
    documentsOf: (call) => documentsOfCall(databases.store(), call),
  });

/**
 * Whether who asks takes part in a call by more than reports: a person, or whoever sits at a
 * machine at which nobody has a name. Where people have names a machine that is kept open has none.
 */
export const hasPart = (who: Who, hasOwner: boolean): boolean =>
  who.kind === 'person' || (who.kind === 'thisMachine' && !hasOwner);

/** Looked up at each command: what was revoked a second ago is not in it. */
export const standOf = (request: FastifyRequest, databases: Databases): CallStand | null => {
  const who = whoOf(request);
  if (who.kind !== 'person' && who.kind !== 'thisMachine') return null;
  const auth = databases.auth();
  return {
    role: who.kind === 'person' ? who.role : 'this machine',
    tasks: who.kind === 'person' ? auth.tasksOf(who.id) : [],
    mayAsk: hasPart(who, auth.hasOwner()) && mayDo(who, 'run'),
    whyNot: ({ kind, device: client, payload }) => {
      const { call } = payload;
      if (!auth.isOwnClient(who, { call, client })) return 'notYourPost';
      // The word of a second person, though from no post: it is said from a device of their own.
      const isSecond = kind === 'note settled' || kind === 'tag returned';
      if (isSecond && !auth.isSeated(who, { call, client })) return 'notYourPost';
      if (!('post' in payload) || payload.post === null) return null;
      const seated = auth.seatedAt(who, { call, client, post: payload.post });
      if (seated === 'own') return null;
      return seated === 'unanswered' ? 'nobodyAnswers' : 'notYourPost';
    },
  };
};

type Said = { readonly who: Who; readonly nowMs: number; readonly device: string };

/**
 * Into the record, by who asks and from the device that they name, and after it what the server
 * says to it; throws where it is not taken. `follow` is of a desk that has not seen it yet.
 */
export const sayIn = (
  { log }: RecordInHand,
  drafts: readonly EventDraft[],
  { who, nowMs, device }: Said,
  follow: Follow = () => [],
): void => {
  const speaker = { by: byOf(who), nowMs, newId: randomUUID };
  const said = written(recordEvents(log, drafts, { ...speaker, device }));
  const more = said.flatMap(follow);
  if (more.length > 0) written(recordEvents(log, more, { ...speaker, by: null }));
};

const written = <T>(done: Result<T, LogFault>): T => {
  if (!done.ok) throw new RecordFault(done.error);
  return done.value;
};
