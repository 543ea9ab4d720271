/** Tokens for other programs: each has a name, a role, an end, and is shown once. */

import type { Role } from '#events';
import { ok, type Result } from '#outcome';
import {
  all,
  byOf,
  type Ground,
  numberIn,
  numberOrNull,
  one,
  type Row,
  refused,
  run,
  textIn,
  textOrNull,
} from './ground.ts';
import { noSuch } from './people.ts';
import type { AccessRefusal } from './refusal-codes.ts';
import { roleFrom } from './roles.ts';
import { hashOfToken, newId, newToken } from './secrets.ts';
import type { Program, Who } from './who.ts';

/** A program never owns: it could let others in. */
export const PROGRAM_ROLES = ['view', 'plan', 'run'] as const satisfies readonly Role[];
export type ProgramRole = (typeof PROGRAM_ROLES)[number];

export type ProgramToken = {
  readonly id: string;
  readonly name: string;
  readonly role: Role;
  readonly madeBy: string | null;
  readonly madeAtMs: number;
  readonly expiresAtMs: number;
  readonly usedAtMs: number | null;
};

/** A year, so that a program nobody remembers stops by itself. */
export const PROGRAM_MS = 365 * 24 * 60 * 60_000;
const PROGRAMS_MAX = 100;
const USED_EVERY_MS = 60_000;

const LIVE = 'revoked_at_ms IS NULL AND expires_at_ms > ?';

const programOf = (row: Row): ProgramToken => ({
  id: textIn(row, 'id'),
  name: textIn(row, 'name'),
  role: roleFrom(row['role']),
  madeBy: textOrNull(row, 'made_by'),
  madeAtMs: numberIn(row, 'made_at_ms'),
  expiresAtMs: numberIn(row, 'expires_at_ms'),
  usedAtMs: numberOrNull(row, 'used_at_ms'),
});

export const programs = (ground: Ground): readonly ProgramToken[] =>
  all(ground, `SELECT * FROM program WHERE ${LIVE} ORDER BY made_at_ms, id`, ground.now()).map(
    programOf,
  );

export const addProgram = (
  ground: Ground,
  who: Who,
  { name, role }: { readonly name: string; readonly role: ProgramRole },
): Result<{ readonly program: ProgramToken; readonly token: string }, AccessRefusal> => {
  if (programs(ground).length >= PROGRAMS_MAX) {
    return refused('tooMany', `${PROGRAMS_MAX} programs`, `at most ${PROGRAMS_MAX}`);
  }
  const [token, madeAtMs] = [newToken(), ground.now()];
  const program: ProgramToken = {
    id: newId(),
    name: name.trim(),
    role,
    madeBy: byOf(who),
    madeAtMs,
    expiresAtMs: madeAtMs + PROGRAM_MS,
    usedAtMs: null,
  };
  run(
    ground,
    `INSERT INTO program (id, token_hash, name, role, made_by, made_at_ms, expires_at_ms)
     VALUES (?, ?, ?, ?, ?, ?, ?)`,
    program.id,
    hashOfToken(token),
    program.name,
    role,
    program.madeBy,
    madeAtMs,
    program.expiresAtMs,
  );
  return ok({ program, token });
};

export const revokeProgram = (ground: Ground, id: string): Result<null, AccessRefusal> => {
  const nowMs = ground.now();
  const changed = run(
    ground,
    'UPDATE program SET revoked_at_ms = ? WHERE id = ? AND revoked_at_ms IS NULL',
    nowMs,
    id,
  );
  return changed === 1 ? ok(null) : noSuch('program');
};

export const programBy = (ground: Ground, token: string): Program | null => {
  const nowMs = ground.now();
  const row = one(
    ground,
    `SELECT * FROM program WHERE token_hash = ? AND ${LIVE}`,
    hashOfToken(token),
    nowMs,
  );
  if (row === undefined) return null;
  const { id, name, role, usedAtMs } = programOf(row);
  if (usedAtMs === null || nowMs - usedAtMs > USED_EVERY_MS) used(ground, id, nowMs);
  return { kind: 'program', id, name, role };
};

/** A disk that takes nothing must not keep a program from reading. */
const used = (ground: Ground, id: string, nowMs: number): void => {
  try {
    run(ground, 'UPDATE program SET used_at_ms = ? WHERE id = ?', nowMs, id);
  } catch {
    // Said by the next command, which is refused for the same reason.
  }
};
