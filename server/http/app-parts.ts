import type { Databases } from '../databases.ts';
import type { SelfCheck } from '../self-check.ts';

/** What the HTTP side is built from; time and files come in as arguments. */
export type AppParts = {
  readonly databases: Databases;
  /** Folder of the built screens. */
  readonly webRoot: string;
  readonly now: () => Date;
  readonly selfCheck: Pick<SelfCheck, 'record'>;
};
