/** What a keeper is given, and how long it waits for what. */
import type { CopyBox, Moment } from './copies.ts';
import type { DraftBox } from './draft.ts';
import type { Server } from './server.ts';

export type KeeperParts = {
  readonly server: Server;
  readonly drafts: DraftBox;
  readonly copies: CopyBox;
  readonly savedBy: () => string;
  readonly moment: () => Moment;
  /** Calls back later; the answer stops it. */
  readonly later: (call: () => void, milliseconds: number) => () => void;
};

export const WAIT_MS = {
  /** Long enough that typing a number is one save, short enough that nobody waits for it. */
  rest: 400,
  /** Long enough that the edit is on the screen before it is written down beside it. */
  draft: 60,
  /** So long a person looks at a page that fetches, before what this device has kept is shown. */
  slow: 4000,
  again: 5000,
} as const;
export const RETRY_MS = [1500, 3000, 6000, 12_000] as const;
