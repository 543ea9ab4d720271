/** What the delivery simulation works at: notes, sign-offs, and documents saved meanwhile. */
import type { Command } from '#events';
import { takeCommand } from '#server';
import type { Chance } from './chance.ts';
import type { Hands } from './hands.ts';
import type { Work } from './house.ts';

const TARGETS = ['set:1', 'set:2', 'set:3', 'set:4', 'document:show:a', 'house'] as const;
const SAVED = {
  document: 'show:a',
  kind: 'show',
  revision: 1,
  savedBy: 'TD',
  why: 'edited',
  sha256: 'a'.repeat(64),
} as const;
const RIGHTS = { role: 'lead', maySign: true, provedAtMs: null } as const;
const EMPTY = '0'.repeat(64);

export const notesAndSigns = (chance: Chance): Work => ({
  open:
    () =>
    (record, body, speaker, { mayNote }) =>
      takeCommand(record, body, { ...speaker, ...RIGHTS, mayNote }, { signOffs: true }),
  isFolded: false,
  targets: TARGETS,
  /** A document is saved from the house's own screen, so that what rests on it changes. */
  own: () => {
    const target = chance.oneOf(['document:show:a', 'set:1', 'set:2', 'set:3']);
    return { drafts: [{ kind: 'document saved', target, payload: SAVED }], by: null };
  },
  committed: () => undefined,
});

export const writingHands = (chance: Chance): Hands => ({
  next: ({ number, around, pinnedSeq, seenOn }): Command => {
    const target = chance.oneOf(TARGETS);
    if (chance.isIn(0.5)) {
      const payload = { text: `note ${number}`, writtenMs: null };
      return { ...around, target, seen: null, kind: 'note written', payload };
    }
    const payload = {
      ...{ statement: 'balance confirmed', shown: EMPTY, role: 'lead', second: null },
      basis: pinnedSeq,
      restsOn: target.startsWith('set:') ? ['document:show:a'] : [],
    };
    return { ...around, target, seen: seenOn(target), kind: 'signed', payload };
  },
  applied: () => undefined,
  read: () => undefined,
  told: () => undefined,
});
