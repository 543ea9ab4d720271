/**
 * Looks on at a call: reads each committed batch in its own way, holds every leave against the
 * invariants, and what the house makes of the record against its own reading of it.
 */
import { CALL_REFUSALS, type CallDesk, foldEvent, NOTHING_OPEN, openDesk } from '#call';
import {
  CALL_REQUESTS,
  type Command,
  canonicalJson,
  EVENT_REFUSALS,
  type EventOf,
  type HouseEvent,
  type Outcome,
} from '#events';
import { ORDER_REFUSALS, RULES } from '#rules';
import { LIVE_REFUSALS } from '#server';
import type { HouseNow, SetNow } from '#state';
import { CallRuleBroken } from './call-rules.ts';
import type { Demo } from './demo-call.ts';
import { whyUnheld } from './held.ts';
import { IN_THE_HOUSE } from './house-checks.ts';
import { ON_ITS_SET } from './leave-checks.ts';
import { Ledger, type SetRecord } from './ledger.ts';
import { partingOf, platesIn, zoneKey } from './steps-done.ts';
import type { Truth } from './truth.ts';

const CHECKS = [...IN_THE_HOUSE, ...ON_ITS_SET];
const REQUESTS: ReadonlySet<string> = new Set(CALL_REQUESTS);
const NAMED: ReadonlySet<string> = new Set([
  ...RULES.map(({ code }) => code),
  ...[EVENT_REFUSALS, LIVE_REFUSALS, CALL_REFUSALS, ORDER_REFUSALS].flatMap((each) =>
    Object.values(each).map(({ code }) => code),
  ),
]);

const TALLIED: ReadonlySet<string> = new Set([
  ...['stop called', 'stop lifted', 'plan told', 'set found', 'set doubted', 'step reported'],
]);

export class CallWitness {
  readonly #demo: Demo;
  readonly #truth: Truth;
  /** Asked for the physics of a set, with what was weighed in the call, and for no judgement. */
  readonly #desk: Pick<CallDesk, 'physicsOf'>;
  readonly #ledger: Ledger;
  readonly #counts = new Map<string, number>();
  #now: HouseNow = NOTHING_OPEN;

  constructor(demo: Demo, truth: Truth) {
    this.#demo = demo;
    this.#truth = truth;
    this.#desk = openDesk(demo.documents);
    this.#ledger = new Ledger(demo);
  }

  get now(): HouseNow {
    return this.#now;
  }

  get counts(): ReadonlyMap<string, number> {
    return this.#counts;
  }

  #count(what: string): void {
    this.#counts.set(what, (this.#counts.get(what) ?? 0) + 1);
  }

  /** A batch that the house has written. */
  committed(events: readonly HouseEvent[]): void {
    const touched = new Set<string>();
    for (const event of events) {
      if (event.kind === 'leave given') this.#judge(event);
      this.#tally(event);
      this.#ledger.note(event);
      this.#now = foldEvent(this.#now, event);
      const set = this.#ledger.sets.size === 0 ? null : this.#ledger.setOf(event);
      if (set !== null) touched.add(set);
      if (event.kind === 'leave given' && set !== null) this.#isShown(event.seq, set);
    }
    for (const set of touched) this.#compare(set);
    if (touched.size > 0) this.#compareHouse();
  }

  #judge(event: EventOf<'leave given'>): void {
    const id = this.#ledger.setOf(event);
    const set = id === null ? undefined : this.#demo.sets.get(id);
    if (set === undefined) throw new CallRuleBroken('right', `leave for ${event.target}`);
    const physics = this.#desk.physicsOf(this.#now, set.id);
    const given = { demo: this.#demo, ledger: this.#ledger, event, set: { ...set, physics } };
    for (const check of CHECKS) {
      const broken = check({ ...given, record: this.#ledger.of(set.id) });
      if (broken !== null) throw new CallRuleBroken(broken[0], `event ${event.seq}, ${broken[1]}`);
    }
    this.#holdAgainstTruth(set.id, event);
  }

  /** Where the record and the world part, nobody in the house can know. It is counted, and said. */
  #holdAgainstTruth(set: string, { payload }: EventOf<'leave given'>): void {
    const { step } = payload;
    const isLoad = step.act !== 'close' && step.act !== 'reopen';
    if (isLoad && !this.#truth.isHeldAfter(set, step))
      this.#count('leave into what is truly unheld');
    const zone = step.act === 'fly' || step.act === 'ease' ? 'run' : null;
    const drop = step.act === 'add' || step.act === 'remove' ? `drop:${step.gallery}` : zone;
    if (drop !== null && this.#truth.isThere(drop)) this.#count('leave with somebody truly there');
  }

  #isShown(seq: number, set: string): void {
    if (this.#now.sets[set]?.leave?.seq === seq) return;
    throw new CallRuleBroken(
      'read',
      `leave ${seq} on set ${set} was given, and no device shows it`,
    );
  }

  #tally(event: HouseEvent): void {
    if (TALLIED.has(event.kind)) this.#count(event.kind);
    if (event.kind === 'leave given') {
      this.#count(`leave given: ${event.payload.step.act}`);
      if (event.payload.override !== null) this.#count('leave given with an override');
      if (event.payload.second !== null) this.#count('leave given on two words');
    }
    if (event.kind === 'set judged') this.#count(`judged ${event.payload.held}`);
    if (event.kind === 'set found') this.#tellsOtherwise(event);
    if (event.kind === 'leave seconded') this.#countsOtherwise(event);
  }

  /** A later look that shows what nobody had said. */
  #tellsOtherwise(event: EventOf<'set found'>): void {
    const set = this.#ledger.setOf(event);
    const standing = set === null ? null : this.#ledger.of(set).standing;
    if (standing === null) return;
    const isOther = partingOf(standing, event.payload.standing) !== null;
    if (isOther) this.#count('a later look contradicted the record');
  }

  #countsOtherwise(event: EventOf<'leave seconded'>): void {
    const set = this.#ledger.setOf(event);
    const standing = set === null ? null : this.#ledger.of(set).standing;
    const { plates } = event.payload;
    if (standing === null || plates === null || plates === platesIn(standing.stack)) return;
    this.#count('a second count contradicted the record');
  }

  /** What the house makes of the record of a set, against the witness's own reading. */
  #compare(id: string): void {
    const record = this.#ledger.of(id);
    const set = this.#now.sets[id];
    if (set === undefined) throw new CallRuleBroken('read', `set ${id} is not shown`);
    const parted = partingOfReadings(record, set);
    if (parted !== null) throw new CallRuleBroken('read', `set ${id}: ${parted}`);
    this.#judgedRight(id, record, set);
  }

  #compareHouse(): void {
    for (const [id, loose] of this.#ledger.stock) {
      const shown = this.#now.galleries[id]?.stock ?? {};
      const parted = [...new Set([...loose.keys(), ...Object.keys(shown)])].find(
        (kind) => loose.get(kind) !== shown[kind],
      );
      if (parted === undefined) continue;
      const both = `${shown[parted]} shown, ${loose.get(parted)} read`;
      throw new CallRuleBroken('read', `bricks ${parted} at ${id}: ${both}`);
    }
    const zones = this.#now.zones.map(({ zone, set, post }) => `${zoneKey(zone)} ${set} ${post}`);
    const read = this.#ledger.zones.map(({ key, set, post }) => `${key} ${set} ${post}`);
    const [one, other] = [zones, read].map((each) => each.toSorted(byText).join(', '));
    if (one !== other) throw new CallRuleBroken('read', `zones ${one} shown, ${other} read`);
  }

  #judgedRight(id: string, record: SetRecord, { held }: SetNow): void {
    const physics = this.#desk.physicsOf(this.#now, id);
    const { standing, lock, ring, collar, leave } = record;
    if (standing === null) {
      if (held === 'unknown') return;
      throw new CallRuleBroken('judged', `set ${id} is not known and is said to be ${held}`);
    }
    if (physics === null || held !== 'held') return;
    const asWritten = { physics, isWorst: false, seen: null };
    const how = whyUnheld(standing, { ...asWritten, lockN: physics.lockLimitN });
    const onDoubted = record.lockDoubted ? whyUnheld(standing, { ...asWritten, lockN: 0 }) : null;
    if (how === null && onDoubted !== null) {
      throw new CallRuleBroken('lockLimit', `set ${id} is said to be held: ${onDoubted}`);
    }
    if (how !== null) throw new CallRuleBroken('judged', `set ${id} is said to be held: ${how}`);
    const isOpen = lock === 'open' || ring === 'off' || collar === 'loose';
    if (leave === null && isOpen) {
      throw new CallRuleBroken('judged', `set ${id} is said to be held: ${lock} ${ring} ${collar}`);
    }
  }

  /** What became of a command, as its giver hears it. */
  told({ kind, payload }: Command, outcome: Outcome): void {
    this.#count(`told ${outcome.outcome}: ${kind}`);
    if (outcome.outcome !== 'refused') return;
    const { code, commandId } = outcome;
    this.#count(`refused ${code}`);
    if (!NAMED.has(code)) {
      throw new CallRuleBroken('explained', `${commandId}, ${kind}: ${code}`);
    }
    if (REQUESTS.has(kind) || !('call' in payload)) return;
    const isOfPost = code === CALL_REFUSALS.notYourPost.code;
    if (/^(CAL|ORD)-/.test(code) && !isOfPost) {
      throw new CallRuleBroken('taken', `${commandId}, ${kind} was refused by ${code}`);
    }
  }

  /** At the end: a device against what the record comes to. */
  agrees(device: string, now: HouseNow | null): void {
    if (now === null) throw new CallRuleBroken('sameFold', `${device} knows nothing`);
    const [one, other] = [now, this.#now].map((each) => canonicalJson(each));
    if (one === other) return;
    const parted = Object.keys(now.sets).find(
      (id) => canonicalJson(now.sets[id]) !== canonicalJson(this.#now.sets[id]),
    );
    throw new CallRuleBroken('sameFold', `${device} parts at ${parted ?? 'the house'}`);
  }
}

const byText = (one: string, other: string): number => one.localeCompare(other, 'en');

const partingOfReadings = (record: SetRecord, set: SetNow): string | null => {
  const { standing } = record;
  if ((standing === null) !== (set.standing === null)) {
    return standing === null ? 'it is shown as known' : 'it is shown as not known';
  }
  if (standing !== null && set.standing !== null) {
    const parted = partingOf(set.standing, standing);
    if (parted !== null) return parted;
  }
  if (record.leave?.seq !== set.leave?.seq) return `leave ${set.leave?.seq}, ${record.leave?.seq}`;
  if (record.wish?.seq !== set.asked?.seq) return `asked ${set.asked?.seq}, ${record.wish?.seq}`;
  const shown = `${set.lock} ${set.ring} ${set.collar} ${set.lockDoubt !== null}`;
  const read = `${record.lock} ${record.ring} ${record.collar} ${record.lockDoubted}`;
  return shown === read ? null : `${shown} and ${read}`;
};
