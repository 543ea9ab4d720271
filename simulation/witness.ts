/** Who sees all that happens, and says at once where a rule is broken. */
import {
  type Command,
  type DeviceState,
  deviceStanding,
  type EventLog,
  type HouseEvent,
  type Outcome,
} from '#events';
import { RuleBroken } from './delivery-rules.ts';
import type { House } from './house.ts';
import type { Timeline } from './timeline.ts';

type Given = {
  readonly device: string;
  readonly command: Command;
  readonly isLive: boolean;
  readonly outcome: Outcome | null;
};

/** Who else wants to hear what became of a command. */
type Heard = (command: Command, outcome: Outcome) => void;

/** 15 s that a heartbeat is good for, 5 s that a jump of the clock goes unnoticed, one tick. */
const LIVE_MS = 21_000;

export class Witness {
  readonly #timeline: Timeline;
  readonly #heard: Heard;
  readonly #given = new Map<string, Given>();
  readonly #appliedTo = new Map<string, number>();
  readonly #heads: { readonly atMs: number; readonly seq: number }[] = [];
  #house: House | null = null;
  #oldest = 0;

  constructor(timeline: Timeline, heard: Heard = () => undefined) {
    this.#timeline = timeline;
    this.#heard = heard;
  }

  /** Looks on as the record grows. */
  watch(house: House): void {
    this.#house = house;
    this.#timeline.every(500, () => {
      if (house.isUp) this.#heads.push({ atMs: this.#timeline.nowMs, seq: house.log.head().seq });
    });
  }

  get given(): number {
    return this.#given.size;
  }

  made(device: string, command: Command, isLive: boolean): void {
    if (!this.#given.has(command.commandId)) {
      this.#given.set(command.commandId, { device, command, isLive, outcome: null });
    }
  }

  told(device: string, outcome: Outcome): void {
    const given = this.#given.get(outcome.commandId);
    if (given === undefined) throw new RuleBroken('told', `${device} of what nobody gave`);
    // Each of two taps hears that nothing was sent.
    const isRefusedTap =
      outcome.outcome === 'notSent' && (outcome.why === 'notLive' || outcome.why === 'tooMany');
    if (given.outcome !== null && !isRefusedTap) {
      const [one, other] = [given.outcome, outcome].map(whatOf);
      throw new RuleBroken('told', `${device} of ${outcome.commandId}: ${one}, then ${other}`);
    }
    this.#given.set(outcome.commandId, { ...given, outcome });
    this.#heard(given.command, outcome);
    if (outcome.outcome === 'refused' && (outcome.words === '' || outcome.code === '')) {
      throw new RuleBroken('told', `${outcome.commandId} was refused without a reason`);
    }
  }

  adopted(device: string, seq: number): void {
    this.#appliedTo.set(device, seq);
  }

  applied(device: string, event: HouseEvent): void {
    const before = this.#appliedTo.get(device) ?? 0;
    if (event.seq !== before + 1) {
      throw new RuleBroken('order', `${device} applied ${event.seq} after ${before}`);
    }
    this.#appliedTo.set(device, event.seq);
    const house = this.#house;
    if (house === null || !house.isUp) return;
    const [own] = house.log.after(event.seq - 1, 1);
    if (own?.hash !== event.hash) {
      throw new RuleBroken('committed', `${device} heard of ${event.seq}, which is not there`);
    }
  }

  stood(device: string, state: DeviceState, nowMs: number): void {
    if (deviceStanding(state, nowMs).is !== 'live') return;
    const seq = state.pinned?.seq ?? 0;
    const then = this.#headBefore(this.#timeline.nowMs - LIVE_MS);
    if (seq < then) {
      throw new RuleBroken('live', `${device} is live with ${seq} where the house had ${then}`);
    }
  }

  #headBefore(atMs: number): number {
    while ((this.#heads[this.#oldest + 1]?.atMs ?? Number.POSITIVE_INFINITY) <= atMs) {
      this.#oldest += 1;
    }
    const head = this.#heads[this.#oldest];
    return head === undefined || head.atMs > atMs ? 0 : head.seq;
  }

  /** When all is quiet again: the record against what everybody was told. */
  judge(log: EventLog): { readonly events: number; readonly outcomes: Record<string, number> } {
    const events = [...everyEvent(log)];
    const recorded = recordedBy(events);
    timesOf(events);
    const outcomes: Record<string, number> = {};
    for (const given of this.#given.values()) {
      const what = this.#judgeOne(given, recorded.get(given.command.commandId) ?? [], log);
      outcomes[what] = (outcomes[what] ?? 0) + 1;
    }
    for (const commandId of recorded.keys()) {
      if (!this.#given.has(commandId)) throw new RuleBroken('once', `${commandId}: nobody gave it`);
    }
    for (const event of events) this.#judgeSight(event, events);
    return { events: events.length, outcomes };
  }

  #judgeOne(given: Given, own: readonly HouseEvent[], log: EventLog): string {
    const { command, outcome, isLive } = given;
    const { commandId, kind } = command;
    if (own.length > 1) throw new RuleBroken('once', `${commandId} is there ${own.length} times`);
    if (kind !== 'note written' && !isLive && own.length > 0) {
      throw new RuleBroken('waiting', `${commandId} was given by a device that was not live`);
    }
    if (outcome === null) throw new RuleBroken('told', `${commandId} heard nothing`);
    if (outcome.outcome !== 'accepted') {
      if (own.length > 0) {
        throw new RuleBroken('refused', `${commandId} heard ${whatOf(outcome)} and is recorded`);
      }
      return whatOf(outcome);
    }
    const [event] = own;
    if (event === undefined || event.seq !== outcome.seqs[0] || event.target !== command.target) {
      throw new RuleBroken('kept', `${commandId} was acknowledged as ${outcome.seqs.join()}`);
    }
    if (log.answerTo(commandId)?.answer.outcome !== 'accepted') {
      throw new RuleBroken('kept', `the answer to ${commandId} is gone`);
    }
    return 'accepted';
  }

  /** The last event on its target before it is the one that its giver had seen. */
  #judgeSight(event: HouseEvent, events: readonly HouseEvent[]): void {
    if (event.kind !== 'signed' || event.commandId === null) return;
    const seen = this.#given.get(event.commandId)?.command.seen ?? null;
    const last = events.slice(0, event.seq - 1).findLast(({ target }) => target === event.target);
    if (seen !== (last?.seq ?? 0)) {
      throw new RuleBroken('fresh', `${event.commandId} had seen ${seen}, not ${last?.seq ?? 0}`);
    }
  }
}

const whatOf = (outcome: Outcome): string => {
  if (outcome.outcome === 'accepted') return `accepted as ${outcome.seqs.join()}`;
  return outcome.outcome === 'refused' ? outcome.code : outcome.why;
};

function* everyEvent(log: EventLog): Generator<HouseEvent> {
  for (let seq = 0; ; ) {
    const page = log.after(seq, 1000);
    yield* page;
    const last = page.at(-1);
    if (last === undefined) return;
    seq = last.seq;
  }
}

const recordedBy = (events: readonly HouseEvent[]): ReadonlyMap<string, readonly HouseEvent[]> => {
  const recorded = new Map<string, HouseEvent[]>();
  for (const event of events) {
    if (event.commandId === null) continue;
    recorded.set(event.commandId, [...(recorded.get(event.commandId) ?? []), event]);
  }
  return recorded;
};

const timesOf = (events: readonly HouseEvent[]): void => {
  for (const [at, { atMs, seq }] of events.entries()) {
    const before = events[at - 1];
    if (before !== undefined && atMs < before.atMs) {
      throw new RuleBroken('clock', `event ${seq} is earlier than the one before it`);
    }
  }
};
