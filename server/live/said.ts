/** What people wrote and signed: about one target, or the newest notes of the whole house. */
import { type EventLog, type EventOf, type HouseEvent, type Standing, standingOf } from '#events';

type Note = EventOf<'note written'>;
type Signed = EventOf<'signed'>;

export type Said = {
  /** Notes that nobody withdrew, the newest first. */
  readonly notes: readonly Note[];
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
  const notes = notesIn(log, events);
  return {
    notes: notes.slice(0, NOTES_MAX),
    signed: signed.toReversed().slice(0, NOTES_MAX),
    seen: log.lastOn(target),
    isAll: notes.length <= NOTES_MAX && signed.length <= NOTES_MAX,
  };
};

const notesIn = (log: EventLog, events: readonly HouseEvent[]): readonly Note[] =>
  events
    .filter((event): event is Note => event.kind === 'note written')
    .filter(({ seq }) => log.withdrawalOf(seq) === null)
    .toReversed();

export const newestNotes = (log: EventLog): Said => {
  const notes: Note[] = [];
  let before = log.head().seq;
  for (let page = 0; page < PAGES_BACK && before > 0 && notes.length < NOTES_MAX; page++) {
    const from = Math.max(0, before - PAGE);
    notes.push(...notesIn(log, log.after(from, before - from)));
    before = from;
  }
  const isAll = before === 0 && notes.length <= NOTES_MAX;
  return { notes: notes.slice(0, NOTES_MAX), signed: [], seen: null, isAll };
};
