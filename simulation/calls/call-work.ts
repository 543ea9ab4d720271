/** A call at a house: its commands through the real reception, its room, its desk. */
import type { EventDraft, EventLog, HouseEvent } from '#events';
import { openCallRoom, takeCommand } from '#server';
import type { Chance } from '../chance.ts';
import type { Own, Work } from '../house.ts';
import type { CallWitness } from './call-witness.ts';
import type { Demo } from './demo-call.ts';
import type { Person } from './people.ts';
import { CALL } from './worker.ts';

const KEYS = { houseKey: 'house-1', recordKey: 'record-1' } as const;
const RIGHTS = { role: 'run', maySign: true, provedAtMs: null } as const;

const postTaken = ({ post, name }: Person): EventDraft<'post taken'> => ({
  kind: 'post taken',
  target: 'house',
  payload: { call: CALL, post, name, answeredBy: null },
});

export const takes = (person: Person): Own => ({
  drafts: [postTaken(person)],
  by: person.id,
  device: person.device,
});

export const callWork = (parts: {
  readonly demo: Demo;
  readonly chance: Chance;
  readonly crew: readonly Person[];
  readonly witness: CallWitness;
}): Work => {
  const { demo, chance, crew, witness } = parts;
  const { house } = demo.documents;
  return {
    open: (log: EventLog) => {
      const room = openCallRoom({
        record: () => ({ log, ...KEYS }),
        documentsOf: () => demo.documents,
      });
      return (record, body, speaker, { mayNote }) => {
        const tasks = crew.find(({ id }) => id === speaker.by)?.tasks ?? [];
        const inCall = { role: 'run', tasks, mayAsk: true, whyNot: () => null } as const;
        const sender = { ...speaker, ...RIGHTS, mayNote, inCall };
        return takeCommand(record, body, sender, { signOffs: true, room });
      };
    },
    isFolded: true,
    targets: ['house', ...[...demo.sets.keys()].map((set) => `set:${house.id}/${set}`)],
    /** Whoever left a post comes back to it, or somebody says a word about the day. */
    own: (): Own => {
      const { posts } = witness.now;
      const gone = crew.filter(({ post }) => posts[post] === undefined);
      if (gone.length > 0) return takes(chance.oneOf(gone));
      if (!chance.isIn(0.1)) return { drafts: [], by: null };
      const payload = { text: 'a word about the day', writtenMs: null };
      return { drafts: [{ kind: 'note written', target: 'house', payload }], by: null };
    },
    committed: (events: readonly HouseEvent[]) => witness.committed(events),
  };
};
