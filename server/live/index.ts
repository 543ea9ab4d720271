export { faultStatus, type Sender, takeCommand } from './commands.ts';
export { type Hub, openHub } from './hub.ts';
export type { RecordInHand } from './record.ts';
export { newestNotes, type Said, saidOn } from './said.ts';
