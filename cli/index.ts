export { EXIT, type ExitCode } from './exit-codes.ts';
export { run } from './program.ts';
export type { Voice } from './voice.ts';
