export { buildApp } from './app.ts';
export type { UpdateParts } from './build-routes.ts';
export { diskOf } from './health.ts';
export { LOG_LEVELS, type Log, type LogLevel, logTo, readLogLevel } from './log.ts';
