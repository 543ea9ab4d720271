/** Roles, tasks and refusals in words. A state is said, and never shown by colour alone. */
import type { Role, Task } from '#events';
import { sayMoment } from '#sheets';
import { message, phrase, type Voice } from '#texts';
import type { Against, Competence } from './ask-people.ts';

export const ROLE_WORDS: Readonly<Record<Role, string>> = {
  view: message('Viewer'),
  plan: message('Planner'),
  run: message('Running crew'),
  own: message('Owner'),
};

/** What each may do; a role may do what the one before it may. */
export const ROLE_MEANINGS: Readonly<Record<Role, string>> = {
  view: message('sees and prints everything, and writes notes'),
  plan: message('also saves houses and shows'),
  run: message('also records how the sets stand, and signs'),
  own: message('also lets people and programs in'),
};

export const ROLES: readonly Role[] = ['view', 'plan', 'run', 'own'];

export const TASK_WORDS: Readonly<Record<Task, string>> = {
  induct: message('Induction: knows STOP, heads and zones'),
  deck: message('Deck: attaches and releases under a lead'),
  loader: message('Loader: handles bricks on a gallery'),
  rail: message('Rail: flies balanced sets'),
  outOfBalance: message('Out-of-balance hand'),
  lead: message('Lead: writes and leads permits'),
  headFly: message('Head flyperson'),
  inspector: message('Inspector'),
  motor: message('Motor operator'),
};

export const TASKS = Object.keys(TASK_WORDS) as readonly Task[];

/** The last day on which it holds, since the moment of lapse is the end of it. */
const lastDay = (lapsesAtMs: number): string => new Date(lapsesAtMs - 1).toISOString().slice(0, 10);

export const dayWords = (atMs: number, voice: Voice): string =>
  sayMoment(new Date(atMs).toISOString().slice(0, 10), voice);

export const lapseWords = (
  { lapsesAtMs }: Pick<Competence, 'lapsesAtMs'>,
  nowMs: number,
  voice: Voice,
): string => {
  if (lapsesAtMs === null) return phrase(voice, 'holds until it is revoked');
  const day = sayMoment(lastDay(lapsesAtMs), voice);
  return lapsesAtMs > nowMs
    ? phrase(voice, 'holds to the end of {day}', { day })
    : phrase(voice, 'LAPSED after {day}', { day });
};

const REFUSED: Readonly<Record<string, string>> = {
  'ACC-001': message('Nobody is signed in on this device any more. Sign in again.'),
  'ACC-002': message('Your role does not do this. An owner can.'),
  'ACC-004': message('That does not go together. Look at the name and the secret again.'),
  'ACC-006': message('The PIN is locked on this device. Sign in by name and passphrase.'),
  'ACC-008': message(
    'This invitation is not good: it was used, withdrawn, or is too old. Ask for another.',
  ),
  'ACC-009': message('Somebody of this house has that name already. Take another.'),
  'ACC-010': message(
    'Too easy to guess. A passphrase has at least 12 characters, best some words that do not ' +
      'belong together; a PIN 6 to 12 figures, neither alike nor in a row.',
  ),
  'ACC-011': message('This is the last owner. Make somebody else an owner first.'),
  'ACC-012': message('That is not there any more. Open this screen anew.'),
  'ACC-013': message(
    'A task is signed off by an owner, or by one who holds a higher level; never for oneself.',
  ),
  'ACC-014': message(
    'That day does not do: it is missing, is past, or is later than this task is signed off for.',
  ),
  'ACC-015': message('Many people are signing in at this moment. Try again shortly.'),
  'ACC-016': message('This code is not good: it was used, or is of an earlier start.'),
  'ACC-017': message('There are too many already. Take some out first.'),
};

const NOT_DONE = message('It was not done. What you typed was not understood.');

/** What stood against it, in a sentence that says what to do. */
export const againstWords = ({ code, waitSeconds }: Against, voice: Voice): string => {
  if (waitSeconds !== null && code === 'ACC-005') {
    return phrase(voice, 'Tried too often. The next attempt is taken in {seconds} s.', {
      seconds: waitSeconds,
    });
  }
  return phrase(voice, REFUSED[code ?? ''] ?? NOT_DONE);
};
