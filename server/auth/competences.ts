/** Sign-offs by task: who was seen to do it, who says so, and until when. */

import type { Task } from '#events';
import { ok, type Result } from '#outcome';
import { isAbove, lapseOf, taskFrom } from './competence.ts';
import {
  all,
  byOf,
  deviceOf,
  type Ground,
  inOne,
  numberIn,
  numberOrNull,
  one,
  type Row,
  refused,
  run,
  textIn,
  textOrNull,
} from './ground.ts';
import { noSuch, someone } from './people.ts';
import type { AccessRefusal } from './refusal-codes.ts';
import { newId } from './secrets.ts';
import { mayDo, type Who } from './who.ts';

export type Competence = {
  readonly id: string;
  readonly person: string;
  readonly task: Task;
  /** Null where the machine's owner gave it before anybody had a name. */
  readonly signedBy: string | null;
  readonly signedAtMs: number;
  readonly lapsesAtMs: number | null;
};

const competenceOf = (row: Row): Competence => ({
  id: textIn(row, 'id'),
  person: textIn(row, 'person'),
  task: taskFrom(row['task']),
  signedBy: textOrNull(row, 'signed_by'),
  signedAtMs: numberIn(row, 'signed_at_ms'),
  lapsesAtMs: numberOrNull(row, 'lapses_at_ms'),
});

/** All that were not revoked and not replaced, those that lapsed too: a lapse is to be seen. */
export const competences = (ground: Ground): readonly Competence[] =>
  all(
    ground,
    `SELECT c.* FROM competence c JOIN person p ON p.id = c.person
     WHERE c.revoked_at_ms IS NULL AND p.removed_at_ms IS NULL
     ORDER BY c.signed_at_ms, c.id`,
  ).map(competenceOf);

const holdsNow = (competence: Competence, nowMs: number): boolean =>
  competence.lapsesAtMs === null || competence.lapsesAtMs > nowMs;

/** What the person is signed off for at this moment; what lapsed or was revoked is not in it. */
export const tasksOf = (ground: Ground, person: string): readonly Task[] =>
  competences(ground)
    .filter((each) => each.person === person && holdsNow(each, ground.now()))
    .map(({ task }) => task);

/** Whether the person is signed off for the task at this moment. */
export const holds = (ground: Ground, person: string, task: Task): boolean =>
  tasksOf(ground, person).includes(task);

/** An owner, or one who holds a higher level; nobody for themselves, but an owner, who appoints. */
const maySign = (ground: Ground, who: Who, person: string, task: Task): boolean => {
  if (mayDo(who, 'own')) return true;
  return who.kind === 'person' && who.id !== person && isAbove(tasksOf(ground, who.id), task);
};

const notAbove = <T>(): Result<T, AccessRefusal> =>
  refused('notAbove', 'one who is not above the task', 'an owner, or one who holds a higher level');

export type Given = {
  readonly person: string;
  readonly task: Task;
  /** Last day on which it holds, `2027-05-31`; null where the usual time is meant. */
  readonly lastDay: string | null;
};

export const giveCompetence = (
  ground: Ground,
  who: Who,
  { person, task, lastDay }: Given,
): Result<Competence, AccessRefusal> => {
  if (someone(ground, person) === null) return noSuch('person');
  if (!maySign(ground, who, person, task)) return notAbove();
  const lapse = lapseOf(task, ground.now(), lastDay);
  if (lapse.is !== 'at') {
    const latest =
      lapse.is === 'tooLate'
        ? ` no later than ${new Date(lapse.latestMs - 1).toISOString().slice(0, 10)}`
        : '';
    return refused('lapse', lastDay ?? 'no day', `a day to come${latest}, as year-month-day`);
  }
  const given: Competence = {
    id: newId(),
    person,
    task,
    signedBy: byOf(who),
    signedAtMs: ground.now(),
    lapsesAtMs: lapse.lapsesAtMs,
  };
  inOne(ground, () => {
    run(
      ground,
      `INSERT INTO competence (id, person, task, signed_by, signed_at_ms, lapses_at_ms)
       VALUES (?, ?, ?, ?, ?, ?)`,
      given.id,
      person,
      task,
      given.signedBy,
      given.signedAtMs,
      given.lapsesAtMs,
    );
    noteOf(ground, who, given, 'competence given');
  });
  return ok(given);
};

/** At once, and without a reason: whoever has a doubt does not have to prove it first. */
export const revokeCompetence = (
  ground: Ground,
  who: Who,
  { person, id }: { readonly person: string; readonly id: string },
): Result<null, AccessRefusal> => {
  const row = one(
    ground,
    'SELECT * FROM competence WHERE id = ? AND person = ? AND revoked_at_ms IS NULL',
    id,
    person,
  );
  if (row === undefined) return noSuch('sign-off');
  const competence = competenceOf(row);
  const isSigner = who.kind === 'person' && competence.signedBy === who.id;
  if (!isSigner && !maySign(ground, who, person, competence.task)) return notAbove();
  inOne(ground, () => {
    run(
      ground,
      'UPDATE competence SET revoked_at_ms = ?, revoked_by = ? WHERE id = ?',
      ground.now(),
      byOf(who),
      id,
    );
    noteOf(ground, who, competence, 'competence revoked');
  });
  return ok(null);
};

const noteOf = (
  { note }: Ground,
  who: Who,
  { person, task, lapsesAtMs }: Competence,
  kind: 'competence given' | 'competence revoked',
): void => {
  const where = { target: `person:${person}`, by: byOf(who), device: deviceOf(who) };
  if (kind === 'competence given') note({ ...where, kind, payload: { task, untilMs: lapsesAtMs } });
  else note({ ...where, kind, payload: { task } });
};
