import type { CommandKind } from './kinds.ts';

/**
 * Whether a command of the kind rests on how its target stands. These name the last event seen on
 * it, and are refused where there is a later one.
 */
export const RESTS_ON_STATE: Readonly<Record<CommandKind, boolean>> = {
  'note written': false,
  signed: true,
  withdrawn: true,
  'plan told': true,
  'leave asked': true,
  'leave seconded': true,
  'leave returned': false,
  'post left': false,
  'post said': false,
  'plates counted': false,
  'step reported': false,
  'set found': false,
  'set doubted': false,
  'lock doubted': false,
  'gallery counted': false,
  'pull tested': false,
  'item weighed': false,
  'stop called': false,
  'stop heard': false,
  'stop agreed': false,
  'stop lifted': false,
  'tag placed': false,
  'tag returned': false,
  'note settled': false,
};

/**
 * What may wait on a device, for a person's word. All else means the moment in which it was said:
 * a report that did not arrive is told to whoever gave it, and is written again or on paper.
 */
export const mayWait = (kind: CommandKind): boolean => kind === 'note written';
