import type { Command, HouseEvent, Outcome } from '#events';
import type { AtRead } from './house.ts';

/** Who works at a device: what they do next, and what they are shown. */
export type Hands = {
  /** Null: nothing just now. */
  readonly next: (at: {
    readonly number: number;
    readonly around: Pick<Command, 'commandId' | 'device' | 'clientMs'>;
    readonly pinnedSeq: number;
    readonly seenOn: (target: string) => number;
    readonly isLive: boolean;
  }) => Command | null;
  readonly applied: (event: HouseEvent) => void;
  /** The page is new, or takes the record as it stands; null while it does not know yet. */
  readonly read: (at: AtRead | null) => void;
  readonly told: (outcome: Outcome) => void;
};
