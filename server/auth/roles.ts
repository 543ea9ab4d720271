/** What each role may do. A role may do what the one before it may: see docs/why/0019. */

import { ROLES, type Role } from '#events';

/**
 * look    read documents, sheets and people
 * note    write a note, a snag, a near miss: nobody who sees one is to be without a way to say it
 * plan    save houses and shows
 * run     record how the sets stand, and sign
 * own     people, programs, and which database is in hand
 */
export type Duty = 'look' | 'note' | 'plan' | 'run' | 'own';

const DUTIES: Readonly<Record<Role, readonly Duty[]>> = {
  view: ['look', 'note'],
  plan: ['look', 'note', 'plan'],
  run: ['look', 'note', 'plan', 'run'],
  own: ['look', 'note', 'plan', 'run', 'own'],
};

export const roleMay = (role: Role, duty: Duty): boolean => DUTIES[role].includes(duty);

/** From a column of the database, which admits no other. */
export const roleFrom = (value: unknown): Role => {
  const role = ROLES.find((each) => each === value);
  if (role === undefined) throw new Error(`defect: no role is called ${String(value)}`);
  return role;
};
