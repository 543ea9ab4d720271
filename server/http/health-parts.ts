/** What the health of a server is told from outside of its database. */
import type { Disk } from '#events';

export type HealthParts = {
  readonly disk: () => Disk | null;
  /** When a backup of the database in hand was last made. */
  readonly lastBackupAt: () => string | null;
};
