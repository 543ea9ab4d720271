/**
 * A drill: the call of tonight's hang with a simulated crew that does as it is told and trusts what
 * it is told, a fault that an instructor has planted, and one post at which somebody learns. It has
 * a record of its own that says so, and nothing of it reaches the record of the house.
 */
import type { CommandAnswer } from '#events';
import { assert } from '#outcome';
import type { HouseNow, OrderPhysics, PostId, Standing } from '#state';
import { type CrewTurn, crewTurn, takeTurn } from './drill-crew.ts';
import { type Debrief, type DrillEnd, debriefOf, postsOf } from './drill-debrief.ts';
import { openRun } from './drill-run.ts';
import type { DrillStart } from './drill-start.ts';
import { type DrillFault, reallyDone, worldAfter } from './drill-world.ts';
import { isBrickStep } from './plates.ts';

export type DrillAsked = DrillStart & {
  readonly trainee: PostId;
  readonly fault: DrillFault | null;
  readonly startMs: number;
};

/** One thing that was said, as the list beside the drill has it; steps are counted from 0. */
export type DrillLine = {
  /** Counted from 1. */
  readonly number: number;
  readonly step: number;
  readonly post: PostId;
  readonly did: CrewTurn['does'] | 'stop' | 'lift' | 'doubt' | 'found' | 'look';
};

/** What the one who learns does instead of going on. */
export type DrillAct =
  /** Goes and looks: how it truly stands. Nobody else learns of it. */
  | { readonly does: 'look' }
  /** What is told next, but with the count that they made themselves. */
  | { readonly does: 'second'; readonly plates: number }
  | { readonly does: 'stop' }
  | { readonly does: 'doubt' }
  /** Writes down how they found it. */
  | { readonly does: 'found' };

export type DrillView = {
  readonly now: HouseNow;
  /** What is told next; null where nothing can go on. */
  readonly turn: CrewTurn | null;
  readonly isTrainee: boolean;
  /** Step that is worked on, counted from 0. */
  readonly step: number;
  readonly lines: readonly DrillLine[];
  /** As the one who learns saw it last; null where something was done since they looked. */
  readonly seen: Standing | null;
  /** They said stop, and nothing was wrong. */
  readonly stoppedForNothing: boolean;
  readonly end: DrillEnd | null;
  readonly debrief: Debrief | null;
};

export type Drill = {
  readonly view: () => DrillView;
  /** The crew goes on until the one who learns is asked, a step is done, or it is over. */
  readonly goOn: () => void;
  /** The one who learns does what is told. */
  readonly asTold: () => void;
  readonly act: (act: DrillAct) => void;
};

const TURNS_MOST = 400;

class Practice implements Drill {
  readonly #asked: DrillAsked;
  readonly #run: ReturnType<typeof openRun>;
  readonly #physics: OrderPhysics;
  readonly #start: Standing;
  #truth: Standing;
  /** The step that hands did last. */
  #handsAt = -1;
  #lines: readonly DrillLine[] = [];
  #seen: Standing | null = null;
  #stoppedForNothing = false;
  #end: DrillEnd | null = null;

  constructor(asked: DrillAsked) {
    const { documents, set, job, steps, startMs, trainee } = asked;
    const posts = [...new Set([...postsOf(steps), trainee])];
    this.#asked = asked;
    this.#run = openRun({ documents, posts, startMs, isDrill: true });
    const standing = this.#run.now().sets[set]?.standing ?? null;
    const physics = this.#run.desk.physicsOf(this.#run.now(), set);
    assert(standing !== null && physics !== null, 'a drill begins from a set that is known');
    [this.#start, this.#truth, this.#physics] = [standing, standing, physics];
    const payload = { job, steps: [...steps] };
    const told = this.#run.say('headFly', { kind: 'plan told', set, payload });
    if (told.outcome === 'refused') this.#refused('headFly', told);
  }

  view = (): DrillView => {
    const turn = this.#turn();
    return {
      now: this.#run.now(),
      turn,
      isTrainee: turn?.post === this.#asked.trainee,
      step: this.#step(),
      lines: this.#lines,
      seen: this.#seen,
      stoppedForNothing: this.#stoppedForNothing,
      end: this.#end,
      debrief: this.#end === null ? null : this.#debrief(),
    };
  };

  goOn = (): void => {
    for (let turns = 0; turns < TURNS_MOST; turns++) {
      const turn = this.#turn();
      if (turn === null || turn.post === this.#asked.trainee) return;
      this.#take(turn);
      if (turn.does === 'report') return;
    }
  };

  asTold = (): void => {
    const turn = this.#turn();
    if (turn === null || turn.post !== this.#asked.trainee) return;
    // Counted one by one, each told; a thumb need not do each.
    for (let turns = 0; turns < TURNS_MOST; turns++) {
      const next = this.#turn();
      if (next === null || next.does !== turn.does || next.post !== turn.post) return;
      this.#take(next);
      if (turn.does !== 'count') return;
    }
  };

  act = (act: DrillAct): void => {
    const { trainee, set } = this.#asked;
    if (this.#end !== null) return;
    this.#stoppedForNothing = false;
    if (act.does === 'look') this.#look();
    else if (act.does === 'second') this.#second(act.plates);
    else if (act.does === 'stop') this.#stop();
    else if (act.does === 'doubt') this.#doubt(`doubted at the post ${trainee}`, set);
    else this.#found();
  };

  #look(): void {
    this.#seen = this.#truth;
    this.#note('look');
  }

  #doubt(why: string, set: string): void {
    this.#run.say(this.#asked.trainee, { kind: 'set doubted', set, payload: { why } });
    this.#note('doubt');
    this.#caught('doubt');
  }

  #turn(): CrewTurn | null {
    return this.#end === null ? crewTurn(this.#run.now(), this.#asked.set) : null;
  }

  #step(): number {
    const plan = this.#run.now().sets[this.#asked.set]?.plan ?? null;
    return plan?.done ?? this.#lines.at(-1)?.step ?? 0;
  }

  #note(did: DrillLine['did'], post: PostId = this.#asked.trainee): void {
    const number = this.#lines.length + 1;
    this.#lines = [...this.#lines, { number, step: this.#step(), post, did }];
  }

  /** Steps done the wrong way round are right again when both are done. */
  #isWrong(): boolean {
    const { fault } = this.#asked;
    if (fault === null) return false;
    return fault.is === 'wrongOrder' ? this.#handsAt === fault.step : this.#handsAt >= fault.step;
  }

  /** Whoever sees that what is told and what is so have parted ends the drill; else it goes on. */
  #caught(how: 'count' | 'stop' | 'doubt' | 'found'): void {
    const step = this.#step();
    if (this.#isWrong()) this.#end = { is: 'caught', step, by: this.#asked.trainee, how };
    else if (how !== 'stop') this.#end = { is: 'done', step, isWrong: false };
  }

  #refused(by: PostId, answer: CommandAnswer): void {
    this.#end = { is: 'refused', step: this.#step(), by, answer };
  }

  #take(turn: CrewTurn): void {
    const step = this.#step();
    if (turn.does === 'report' && this.#hands(turn, step)) return;
    this.#note(turn.does, turn.post);
    const answer = takeTurn(this.#run, turn);
    if (answer.outcome === 'refused') {
      this.#refused(turn.post, answer);
      return;
    }
    const set = this.#run.now().sets[this.#asked.set];
    const plan = set?.plan ?? null;
    if (plan !== null && plan.done === plan.steps.length && this.#end === null) {
      this.#end = { is: 'done', step, isWrong: this.#isWrong() };
    }
  }

  /** What hands do before it is told; true where the drill is over by it. */
  #hands(turn: Extract<CrewTurn, { does: 'report' }>, step: number): boolean {
    const { steps, fault, set } = this.#asked;
    const after = worldAfter(this.#physics, this.#truth, reallyDone(steps, step, fault));
    this.#seen = null;
    if (after.cannot !== null) {
      const { seq, step: what } = turn.leave;
      const payload = {
        ...{ post: turn.post, leave: seq, as: 'otherwise' as const, height: null },
        plates: isBrickStep(what) ? 0 : null,
        words: 'it cannot be done as it was told',
      };
      this.#run.say(turn.post, { kind: 'step reported', set, payload });
      this.#end = { is: 'impossible', step, by: turn.post, why: after.cannot };
      return true;
    }
    this.#truth = after.truth;
    this.#handsAt = step;
    if (after.ran === null || !this.#isWrong()) return false;
    const why = `RUNAWAY: ${after.ran.says}`;
    this.#run.say(turn.post, { kind: 'set doubted', set, payload: { why } });
    this.#end = { is: 'ranAway', step, ran: after.ran };
    return true;
  }

  #second(plates: number): void {
    const turn = this.#turn();
    const { trainee, set } = this.#asked;
    if (turn?.does !== 'second' || turn.post !== trainee) return;
    const payload = { post: trainee, asked: turn.asked.seq, plates };
    const answer = this.#run.say(trainee, { kind: 'leave seconded', set, payload });
    this.#note('second');
    if (answer.outcome === 'refused') this.#refused(trainee, answer);
    else if (this.#run.now().sets[set]?.standing === null) this.#caught('count');
  }

  /** In a drill the lead lifts it at once, with a name for the reason where both are one. */
  #stop(): void {
    const { trainee, set } = this.#asked;
    const payload = { post: trainee, set, words: '' };
    this.#run.say(trainee, { kind: 'stop called', set: null, payload });
    this.#note('stop');
    this.#caught('stop');
    if (this.#end !== null) return;
    this.#stoppedForNothing = true;
    for (const { seq } of this.#run.now().stops) {
      this.#run.say(trainee, { kind: 'stop agreed', set: null, payload: { stop: seq } });
      const substitute = { name: 'instructor', why: 'a drill: nothing was wrong' };
      const lifted = { post: 'headFly', stop: seq, substitute };
      this.#run.say('headFly', { kind: 'stop lifted', set: null, payload: lifted });
      this.#note('lift', 'headFly');
    }
  }

  #found(): void {
    const { trainee, set } = this.#asked;
    const { closed, ...rest } = this.#truth;
    const standing = {
      ...rest,
      stack: rest.stack.map((run) => ({ ...run })),
      items: { ...rest.items },
      restraints: rest.restraints.map((each) => ({ ...each })),
      closed: closed.map((each) => ({ ...each })),
    };
    const at = { lock: 'closed', ring: 'on', collar: 'secured', basis: 'counted' } as const;
    const payload = { post: trainee, standing, second: 'instructor', settles: [], ...at };
    this.#run.say(trainee, { kind: 'set found', set, payload });
    this.#note('found');
    this.#caught('found');
  }

  #debrief(): Debrief | null {
    const { fault, steps, set } = this.#asked;
    if (fault === null) return null;
    const here = this.#run.now().sets[set];
    const told = here?.standing ?? here?.last ?? this.#start;
    const planted = { physics: this.#physics, start: this.#start, steps, fault };
    return debriefOf(planted, { told, truth: this.#truth });
  }
}

export const openDrill = (asked: DrillAsked): Drill => new Practice(asked);
