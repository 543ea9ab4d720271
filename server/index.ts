export { type DatabaseName, type Databases, openDatabases } from './databases.ts';
export { demoDocuments } from './demo.ts';
export { buildApp } from './http/app.ts';
export type { AppParts } from './http/app-parts.ts';
export { type Hub, LIVE_REFUSALS, openCallRoom, openHub, takeCommand } from './live/index.ts';
export { openHouseRecord } from './log/index.ts';
export { type SelfCheck, startSelfCheck } from './self-check.ts';
