import type { CommandKind } from './kinds.ts';

/**
 * Whether a command of the kind rests on how its target stands. These name the last event seen on
 * it, are refused where there is a later one, and are never queued on a device.
 */
export const RESTS_ON_STATE: Readonly<Record<CommandKind, boolean>> = {
  'note written': false,
  signed: true,
  withdrawn: true,
};
