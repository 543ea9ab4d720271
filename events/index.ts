export { CALL_REQUESTS, type CallCommandKind } from './call-kinds.ts';
export {
  restraint as restraintShape,
  standing as standingShape,
  step as stepShape,
} from './call-shapes.ts';
export { canonicalJson } from './canonical.ts';
export {
  type ChainFault,
  sha256OfText,
  sha256OfValue,
  verifyChain,
} from './chain.ts';
export type { Command, CommandAnswer, Current } from './command.ts';
export {
  backOffMs,
  type DeviceEffect,
  type DeviceInput,
  deviceStep,
  TICK_MS,
} from './device.ts';
export {
  type Outbox,
  type OutboxEffect,
  type OutboxInput,
  type Outcome,
  outboxStep,
  type Pending,
} from './device-outbox.ts';
export {
  type Alarm,
  alarmsOf,
  clockOffsetMs,
  type DeviceStanding,
  type DeviceState,
  deviceStanding,
  type Heartbeat,
  newDevice,
  type Pinned,
  type Sequenced,
} from './device-state.ts';
export {
  type EventDraft,
  type EventOf,
  type Head,
  type HouseEvent,
  headOf,
  NOTHING_YET,
} from './event.ts';
export type { Batch, EventLog, LogFault, StoredAnswer } from './event-log.ts';
export type { Caution, CertificateState, Disk, Health, ListeningMode } from './health.ts';
export {
  type CommandKind,
  type EventKind,
  type Payload,
  ROLES,
  type Role,
  type Task,
} from './kinds.ts';
export { assertFollows, memoryLog } from './memory-log.ts';
export { commandShape, eventShape, readAnswer, readCommand, readEvent } from './read.ts';
export {
  type Follow,
  giveUpCommand,
  type Judge,
  type Reception,
  receiveCommand,
  recordEvents,
  type Speaker,
} from './receive.ts';
export { REFUSALS as EVENT_REFUSALS } from './refusal-codes.ts';
export { RESTS_ON_STATE } from './rests-on-state.ts';
export { type Looked, type Standing, standingOf } from './signature.ts';
