/** A person of the crew at their device: they see what it shows, and do their duty or otherwise. */
import { foldAll, foldEvent, NOTHING_OPEN } from '#call';
import {
  CALL_REQUESTS,
  type Command,
  type HouseEvent,
  type Outcome,
  RESTS_ON_STATE,
} from '#events';
import type { HouseNow } from '#state';
import type { Chance } from '../chance.ts';
import type { Hands } from '../hands.ts';
import type { AtRead } from '../house.ts';
import type { Demo } from './demo-call.ts';
import { DUTIES } from './duties.ts';
import { mischief } from './mischief.ts';
import type { Habits, Person } from './people.ts';
import type { Truth } from './truth.ts';
import type { Said, Worker } from './worker.ts';

type Parts = {
  readonly person: Person;
  readonly demo: Demo;
  readonly truth: Truth;
  readonly chance: Chance;
  readonly habits: Habits;
  readonly inPlay: readonly string[];
};

const REQUESTS: ReadonlySet<string> = new Set([...CALL_REQUESTS, 'note written']);
const TRIES_UNHEARD = 0.1;
const IMPATIENT = 0.03;
/** How many a person has in hand and still remembers to say. */
const AGAIN_MOST = 5;

export class CrewHands implements Hands {
  readonly #parts: Parts;
  readonly #given = new Map<string, Said>();
  readonly #memory: Worker['memory'] = { doing: null, refused: null, plansMade: 0 };
  #again: Said[] = [];
  /** Number of the last of their own that they know to be in the record. */
  #heardTo = 0;
  /** Null while the page has not read how things stand. */
  #now: HouseNow | null = null;
  /** Applied meanwhile. */
  #waiting: HouseEvent[] = [];

  constructor(parts: Parts) {
    this.#parts = parts;
  }

  get person(): Person {
    return this.#parts.person;
  }

  get now(): HouseNow | null {
    return this.#now;
  }

  read(at: AtRead | null): void {
    if (at === null) {
      this.#now = null;
      this.#waiting = [];
      return;
    }
    // An answer that came late says less than what was applied since.
    if (this.#now !== null) return;
    this.#now = foldAll(at.events, NOTHING_OPEN);
    for (const event of this.#waiting.splice(0)) this.applied(event);
  }

  applied(event: HouseEvent): void {
    if (this.#now === null) this.#waiting.push(event);
    else if (event.seq > this.#now.seq) this.#now = foldEvent(this.#now, event);
  }

  next({ around, seenOn, isLive }: Parameters<Hands['next']>[0]): Command | null {
    // Who sees that the house is not heard mostly waits, or goes and shouts.
    if (!isLive && !this.#parts.chance.isIn(TRIES_UNHEARD)) return null;
    const now = this.#now;
    // What was said is on its way, or not yet on the screen: mostly a person waits for it.
    const isOpen = this.#given.size > 0 || (now !== null && now.seq < this.#heardTo);
    if (now === null || (isOpen && !this.#parts.chance.isIn(IMPATIENT))) return null;
    const said = this.#says(now, around.clientMs);
    if (said === null) return null;
    this.#given.set(around.commandId, said);
    const seen = RESTS_ON_STATE[said.kind] ? seenOn(said.target) : null;
    return { ...around, ...said, seen };
  }

  #says(now: HouseNow, clientMs: number): Said | null {
    const { chance, habits } = this.#parts;
    const again = this.#again.shift();
    if (again !== undefined) return again;
    const worker = { ...this.#parts, now, memory: this.#memory, writtenMs: clientMs };
    if (chance.isIn(habits.mischief)) return mischief(worker, habits.only);
    for (const duty of DUTIES) {
      const said = chance.isIn(0.85) ? duty(worker) : null;
      if (said !== null) return said;
    }
    return null;
  }

  /** A report that did not come through is told to who gave it, and mostly said again. */
  told(outcome: Outcome): void {
    const said = this.#given.get(outcome.commandId);
    if (said === undefined) return;
    this.#given.delete(outcome.commandId);
    if (outcome.outcome === 'accepted') {
      this.#heardTo = Math.max(this.#heardTo, ...outcome.seqs);
      return;
    }
    if (outcome.outcome === 'refused') this.#memory.refused = { said, code: outcome.code };
    const isReport = !REQUESTS.has(said.kind);
    if (isReport && this.#again.length < AGAIN_MOST && this.#parts.chance.isIn(0.7)) {
      this.#again.push(said);
    }
  }
}
