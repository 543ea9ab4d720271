export { assert, unreachable } from './defect.ts';
export type { Refusal } from './refusal.ts';
export { refusal } from './refusal.ts';
export type { Result } from './result.ts';
export { fail, ok } from './result.ts';
