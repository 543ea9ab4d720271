export { areTwoPeople, postsOf } from './call-posts.ts';
export { type CallRoom, openCallRoom } from './call-room.ts';
export { faultStatus, takeCommand } from './commands.ts';
export { type Hub, openHub } from './hub.ts';
export type { RecordInHand } from './record.ts';
export { LIVE_REFUSALS, type LiveRefusalName } from './refusal-codes.ts';
export { newestNotes, type Said, saidOn } from './said.ts';
export type { CallStand, Sender } from './sender.ts';
