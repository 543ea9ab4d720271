/** How far the self-check of one copy of the program is, and which copy that is. */
import type { SelfCheckReport } from './report.ts';
import type { SelfCheckProgress } from './run.ts';

/** A report holds for this alone. */
export type Installation = {
  readonly version: string;
  /** Hash of the program's own source files. */
  readonly build: string;
  /** What it runs on: `Node 24.1.0, V8 13.6, linux x64`. */
  readonly platform: string;
};

export type SelfCheckState =
  | { readonly is: 'notRun' }
  | ({ readonly is: 'running' } & SelfCheckProgress)
  | {
      readonly is: 'done';
      /** ISO date and time at which it ended, by the clock of whoever ran it. */
      readonly at: string;
      readonly report: SelfCheckReport;
    };

export type SelfCheckRecord = {
  readonly installation: Installation;
  readonly state: SelfCheckState;
};
