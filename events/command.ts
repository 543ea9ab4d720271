/** What a device asks to be recorded, and the answer, which is given once and for all. */
import * as z from 'zod';
import type { EventDraft, HouseEvent } from './event.ts';
import * as field from './fields.ts';
import type { CommandKind } from './kinds.ts';

export type Command = EventDraft<CommandKind> & {
  /** Made and kept on the device before it is sent; a second sending has the same. */
  readonly commandId: string;
  readonly device: string;
  /** `seq` of the last event on the target that the device has applied; null where no matter. */
  readonly seen: number | null;
  /** The clock of the device. Evidence only: order and times are the server's. */
  readonly clientMs: number;
};

/** How the target stands, for the person who is refused: its last event, where it has one. */
export type Current = { readonly seq: number; readonly event: HouseEvent | null };

export type CommandAnswer =
  | {
      readonly outcome: 'accepted';
      readonly commandId: string;
      /** Numbers of the events that it became. */
      readonly seqs: readonly number[];
    }
  | {
      readonly outcome: 'refused';
      readonly commandId: string;
      /** `EVT-003`; what it means is in `REFUSALS`, and in `words`. */
      readonly code: string;
      readonly words: string;
      readonly current: Current | null;
    };

export const COMMAND = {
  commandId: field.commandId(),
  device: field.id(),
  target: field.target(),
  seen: field.whole(0).nullable(),
  clientMs: field.ms(),
};

export const answerShape = z.discriminatedUnion('outcome', [
  z.strictObject({
    outcome: z.literal('accepted'),
    commandId: field.commandId(),
    seqs: z.array(field.whole(1)),
  }),
  z.strictObject({
    outcome: z.literal('refused'),
    commandId: field.commandId(),
    code: field.text(20),
    words: field.text(400),
    current: z.strictObject({ seq: field.whole(0), event: z.unknown() }).nullable(),
  }),
]);
