/** What people wrote and signed: about one target, or the newest notes of the whole house. */
import { type EventLog, type EventOf, type HouseEvent, type Standing, standingOf } from '#events';

type Note = EventOf<'note written'>;
type Signed = EventOf<'signed'>;

type SaidNote = {
  readonly event: Note;
  /** What took it back; the note stays what it was. Null where it holds. */
  readonly withdrawal: HouseEvent | null;
  /** What has happened on its target last, for a command that withdraws it. */
  readonly seen: number;
};

export type Said = {
  /** The newest first, those that were withdrawn too. */
  readonly notes: readonly SaidNote[];
  readonly signed: readonly { readonly event: Signed; readonly standing: Standing }[];
  /** What has happened on the target last, for a command that rests on it; null for the house. */
  readonly seen: number | null;
  /** False where older ones are left out. */
  readonly isAll: boolean;
};

const PAGE = 1000;
/** Of a target all is looked at; of the house the last so many events. */
const PAGES_BACK = 20;
const NOTES_MAX = 200;

export const saidOn = (log: EventLog, target: string): Said => {
  const events: HouseEvent[] = [];
  for (;;) {
    const page = log.on(target, events.at(-1)?.seq ?? 0, PAGE);
    events.push(...page);
    if (page.length < PAGE) break;
  }
  const signed = events
    .filter((event): event is Signed => event.kind === 'signed')
    .map((event) => ({ event, standing: standingOf(log, event) }));
  const notes = notesIn(events);
  return {
    notes: asTheyStand(log, notes),
    signed: signed.toReversed().slice(0, NOTES_MAX),
    seen: log.lastOn(target),
    isAll: notes.length <= NOTES_MAX && signed.length <= NOTES_MAX,
  };
};

const notesIn = (events: readonly HouseEvent[]): readonly Note[] =>
  events.filter((event): event is Note => event.kind === 'note written').toReversed();

const asTheyStand = (log: EventLog, notes: readonly Note[]): readonly SaidNote[] =>
  notes.slice(0, NOTES_MAX).map((event) => ({
    event,
    withdrawal: log.withdrawalOf(event.seq),
    seen: log.lastOn(event.target),
  }));

export const newestNotes = (log: EventLog): Said => {
  const notes: Note[] = [];
  let before = log.head().seq;
  for (let page = 0; page < PAGES_BACK && before > 0 && notes.length < NOTES_MAX; page++) {
    const from = Math.max(0, before - PAGE);
    notes.push(...notesIn(log.after(from, before - from)));
    before = from;
  }
  const isAll = before === 0 && notes.length <= NOTES_MAX;
  return { notes: asTheyStand(log, notes), signed: [], seen: null, isAll };
};
