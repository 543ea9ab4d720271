import type { Databases } from '../databases.ts';

/** What the HTTP side is built from; time and files come in as arguments. */
export type AppParts = {
  readonly databases: Databases;
  /** Folder of the built screens. */
  readonly webRoot: string;
  readonly now: () => Date;
};
