import type { Databases } from '../databases.ts';
import type { Listening } from '../lan/index.ts';
import type { SelfCheck } from '../self-check.ts';
import type { UpdateParts } from './build-routes.ts';
import type { HealthParts } from './health-parts.ts';
import type { Log } from './log.ts';

/** What the HTTP side is built from; time and files come in as arguments. */
export type AppParts = UpdateParts & {
  readonly databases: Databases;
  readonly now: () => Date;
  readonly selfCheck: Pick<SelfCheck, 'record'>;
  /** This machine alone, where it is not said. */
  readonly listening?: Listening;
  /** Absent in a test that asks nothing of it. */
  readonly log?: Log;
  readonly health?: HealthParts;
};
