/** What a person at a post does next where they do what the call asks of them. */
import { metres } from '#quantities';
import type { SetNow, Standing, Step } from '#state';
import { planFor } from './plans.ts';
import { postOf } from './posts.ts';
import {
  besideOf,
  CALL,
  type Doing,
  isBricks,
  nextStep,
  type Open,
  type Said,
  setNow,
  targetOf,
  type Worker,
} from './worker.ts';

type Duty = (worker: Worker) => Said | null;

const hear: Duty = ({ now, person }) => {
  const stop = now.stops.find(({ heard }) => heard[person.post] === undefined);
  if (stop === undefined) return null;
  const payload = { call: CALL, post: person.post, stop: stop.seq };
  return { kind: 'stop heard', target: 'house', payload };
};

const agree: Duty = ({ now, person, chance }) => {
  const stop = now.stops.find(({ by, isAgreed }) => by === person.id && !isAgreed);
  if (stop === undefined || !chance.isIn(0.5)) return null;
  return { kind: 'stop agreed', target: 'house', payload: { call: CALL, stop: stop.seq } };
};

const lift: Duty = ({ now, person, chance }) => {
  const [stop] = now.stops;
  if (stop === undefined || person.post !== 'headFly') return null;
  const substitute = chance.isIn(0.3) ? { name: 'deck lead', why: 'they have gone home' } : null;
  if (!stop.isAgreed && substitute === null) return null;
  const payload = { call: CALL, post: person.post, stop: stop.seq, substitute };
  return { kind: 'stop lifted', target: 'house', payload };
};

const begun = (worker: Worker, set: string, leave: NonNullable<SetNow['leave']>): Open<Doing> => {
  const { chance, habits } = worker;
  const how = chance.isIn(habits.leaves)
    ? 'not'
    : chance.isIn(habits.otherwise)
      ? 'otherwise'
      : 'asTold';
  return {
    ...{ leave: leave.seq, how, moved: 0 },
    on: chance.isIn(habits.wrongSet) ? besideOf(worker, set) : set,
    slip: chance.isIn(habits.miscounts) ? chance.oneOf([-1, 1]) : 0,
    isSilent: chance.isIn(habits.forgets),
  };
};

/** Work on the leave that was given them: bricks one by one, all else at once. */
const finish: Duty = (worker) => {
  const { now, person, memory, truth } = worker;
  const own = Object.entries(now.sets).find(
    ([, { leave }]) => leave?.post === person.post && leave.device === person.device,
  );
  const [set, state] = own ?? [];
  const leave = state?.leave;
  if (set === undefined || leave == null) {
    memory.doing = null;
    return null;
  }
  if (memory.doing?.leave !== leave.seq) memory.doing = begun(worker, set, leave);
  const { doing } = memory;
  const { step } = leave;
  const report = reporting(worker, set, leave.seq);
  if (doing.how === 'not') {
    return report({
      as: 'notDone',
      plates: isBricks(step) ? 0 : null,
      height: heightNow(worker, set),
    });
  }
  if (doing.how === 'otherwise') {
    truth.slips += 1;
    truth.do(doing.on, otherThan(step));
    return report({ as: 'otherwise', words: 'it would not go as it was told' });
  }
  if (isBricks(step)) return bricks(worker, { set, step, doing, report });
  if (doing.moved === 0) truth.do(doing.on, step);
  if (doing.moved === 0 && (doing.on !== set || doing.isSilent)) truth.slips += 1;
  doing.moved = 1;
  if (doing.isSilent) return null;
  return report({ as: 'done', height: step.act === 'fly' ? step.to : null });
};

type Report = (said: Partial<Extract<Said, { readonly kind: 'step reported' }>['payload']>) => Said;

export const reporting =
  (worker: Worker, set: string, leave: number): Report =>
  (said) => ({
    kind: 'step reported',
    target: targetOf(worker, set),
    payload: { ...PLAIN, call: CALL, post: worker.person.post, leave, ...said },
  });

const PLAIN = { as: 'done', plates: null, height: null, words: '' } as const;

const heightNow = ({ truth }: Worker, set: string): number | null => truth.of(set)?.height ?? null;

/** Half of a brick step, or a move that ends elsewhere. */
const otherThan = (step: Step): Step =>
  isBricks(step) ? { ...step, count: Math.ceil(step.count / 2) } : step;

type Handling = {
  readonly set: string;
  readonly step: Extract<Step, { readonly act: 'add' | 'remove' }>;
  readonly doing: Open<Doing>;
  readonly report: Report;
};

const bricks = (worker: Worker, { set, step, doing, report }: Handling): Said | null => {
  const { truth, chance, person, habits } = worker;
  if (doing.moved >= step.count) {
    return doing.isSilent ? null : report({ as: 'done', plates: step.count });
  }
  const more = Math.min(1 + chance.below(4), step.count - doing.moved);
  const isLast = doing.moved + more >= step.count;
  const wanted = Math.max(0, more + (isLast ? doing.slip : 0));
  const truly = truth.move(doing.on, step, wanted);
  if (truly !== more || doing.on !== set) truth.slips += 1;
  doing.moved += more;
  if (truly < wanted) return report({ as: 'otherwise', words: 'there are no more of them' });
  if (doing.isSilent) return null;
  if (isLast && chance.isIn(habits.skips)) return report({ as: 'done', plates: step.count });
  const payload = { call: CALL, post: person.post, leave: doing.leave, count: doing.moved };
  return { kind: 'plates counted', target: targetOf(worker, set), payload };
};

const second: Duty = (worker) => {
  const { now, person, truth } = worker;
  const found = Object.entries(now.sets).find(([, { asked }]) => asked?.secondOf === person.post);
  const [set, state] = found ?? [];
  if (set === undefined || state?.asked == null) return null;
  const { refused } = worker.memory;
  // One person is not two: they leave it, and somebody else has to come.
  const isAlone = refused?.code === 'CAL-105' && refused.said.target === targetOf(worker, set);
  if (isAlone && !worker.chance.isIn(0.05)) return null;
  const isMove = state.asked.step.act === 'fly' || state.asked.step.act === 'ease';
  const plates = isMove ? truth.plates(set) : null;
  const payload = { call: CALL, post: person.post, asked: state.asked.seq, plates };
  return { kind: 'leave seconded', target: targetOf(worker, set), payload };
};

const isStale = ({ now }: Worker, { knowledge }: SetNow): boolean =>
  knowledge.at === null || Date.parse(knowledge.at) < (now.call?.openedMs ?? 0);

/** Somebody looks at a set that is not known, and says what they see. */
const find: Duty = (worker) => {
  const { person, inPlay, truth, chance } = worker;
  if (person.post !== 'deck' && person.post !== 'headFly') return null;
  const set = inPlay.find((id) => {
    const state = setNow(worker, id);
    if (state === null || truth.of(id) === null || state.leave !== null) return false;
    return state.standing === null || isStale(worker, state) || state.notes.length > 0;
  });
  const standing = set === undefined ? null : truth.of(set);
  if (set === undefined || standing === null || !chance.isIn(0.5)) return null;
  return foundAs(worker, set, seenBy(worker, standing));
};

type Found = Extract<Said, { readonly kind: 'set found' }>['payload'];

export const foundAs = (
  worker: Worker,
  set: string,
  standing: Standing,
  loose: Partial<Pick<Found, 'lock' | 'ring' | 'collar'>> = {},
): Said => ({
  kind: 'set found',
  target: targetOf(worker, set),
  payload: {
    ...{ call: CALL, post: worker.person.post, standing: onWire(standing), second: 'deck lead' },
    ...{ basis: 'counted', lock: 'closed', ring: 'on', collar: 'secured', ...loose },
    settles: [...(setNow(worker, set)?.notes ?? [])].slice(0, 100),
  },
});

/** As it is written: lists that nobody shares with the world. */
const onWire = (standing: Standing): Found['standing'] => ({
  ...standing,
  stack: [...standing.stack],
  restraints: [...standing.restraints],
  closed: [...standing.closed],
});

/** What they see: as it is, or a brick off, or an item overlooked. */
export const seenBy = ({ chance, habits, truth }: Worker, standing: Standing): Standing => {
  if (!chance.isIn(habits.miscounts)) return standing;
  truth.slips += 1;
  const items = Object.keys(standing.items);
  if (items.length > 0 && chance.isIn(0.4)) {
    const [, ...seen] = Object.entries(standing.items);
    return { ...standing, items: Object.fromEntries(seen) };
  }
  const stack = standing.stack.map((run, at) =>
    at === standing.stack.length - 1 ? { ...run, count: Math.max(0, run.count - 1) } : run,
  );
  return { ...standing, stack };
};

const ABOVE_ALL = /^(headFly|caller|marshal:.*)$/;

/** Out from under while bricks come, and back when a line is to be worked. */
const clear: Duty = ({ now, person, inPlay }) => {
  const held = now.posts[person.post];
  if (held === undefined || ABOVE_ALL.test(person.post)) return null;
  const steps = inPlay.flatMap((id) => {
    const set = now.sets[id];
    return set === undefined ? [] : (nextStep(set) ?? []);
  });
  const wants = steps.some((step) => isBricks(step) && postOf(step) !== person.post);
  const isOver = Object.values(now.sets).some(
    ({ leave }) => leave !== null && isBricks(leave.step),
  );
  // Nobody walks back under bricks that are in hand.
  const works = !isOver && steps.some((step) => postOf(step) === person.post);
  const isClear = wants && !works ? true : works && !wants ? false : held.isClear;
  if (isClear === held.isClear) return null;
  return {
    kind: 'post said',
    target: 'house',
    payload: { call: CALL, post: person.post, isClear },
  };
};

const ask: Duty = (worker) => {
  const { person, inPlay, chance } = worker;
  const ready = inPlay.filter((id) => {
    const set = setNow(worker, id);
    if (set === null || set.standing === null || set.asked !== null || set.leave !== null) {
      return false;
    }
    const step = nextStep(set);
    return step !== null && postOf(step) === person.post;
  });
  if (ready.length === 0) return null;
  const set = chance.oneOf(ready);
  const state = setNow(worker, set);
  const step = state === null ? null : nextStep(state);
  const cover = coverOf(worker, set);
  const isRefused = worker.memory.refused?.said.target === targetOf(worker, set);
  // Who was refused looks what is wrong before they ask again.
  if (step === null || (isRefused && cover.rules === undefined && !chance.isIn(0.2))) return null;
  const paper = chance.isIn(0.05) ? { paper: 'a name on paper' } : {};
  return askedFor(worker, set, step, { ...cover, ...paper });
};

/** Where a rule that two people may cover was said of this very set, they cover it. */
const coverOf = (worker: Worker, set: string): { readonly rules?: readonly string[] } => {
  const { refused } = worker.memory;
  if (refused === null || refused.said.target !== targetOf(worker, set)) return {};
  return COVERED.includes(refused.code) ? { rules: COVERED } : {};
};

const COVERED: readonly string[] = ['CAL-024', 'CAL-022', 'ORD-014', 'ORD-017'];

export const askedFor = (
  worker: Worker,
  set: string,
  step: Step,
  more: {
    readonly paper?: string;
    readonly post?: string;
    readonly rules?: readonly string[];
  } = {},
): Said => ({
  kind: 'leave asked',
  target: targetOf(worker, set),
  payload: {
    ...{ call: CALL, post: more.post ?? worker.person.post, step, paper: more.paper ?? null },
    override: more.rules === undefined ? null : { why: 'we know it', rules: [...more.rules] },
  },
});

/** Searches take their time: so many of one crew in one call. */
const PLANS_MOST = 150;

const plan: Duty = (worker) => {
  const { person, inPlay, chance, demo, memory, truth, now } = worker;
  if (person.post !== 'headFly') return null;
  const ready = inPlay.filter((id) => {
    const set = setNow(worker, id);
    const isHung = (demo.sets.get(id)?.hang?.items ?? []).length > 0;
    return isHung && set?.standing != null && isFree(set) && nextStep(set) === null;
  });
  if (ready.length === 0 || memory.plansMade >= PLANS_MOST) return null;
  const set = chance.oneOf(ready);
  const standing = setNow(worker, set)?.standing ?? null;
  if (standing === null) return null;
  const isHung = Object.values(standing.items).some((phase) => phase !== 'away');
  const wanted = isHung ? 'strike' : 'load';
  memory.plansMade += 1;
  const partner = demo.sets.get(set)?.hang?.coupledWith[0];
  if (partner !== undefined) return moveAlone(worker, set, standing);
  const made = planFor(demo, { set, standing, wanted, galleries: now.galleries });
  if (made === null || made.steps.length === 0) {
    if (truth.of(set) === null || !isOff(worker, set)) return null;
    truth.reset(set);
    const why = 'put right, and to be counted anew';
    return { kind: 'set doubted', target: targetOf(worker, set), payload: { call: CALL, why } };
  }
  const payload = { call: CALL, job: wanted, steps: [...made.steps] } as const;
  return {
    kind: 'plan told',
    target: targetOf(worker, set),
    payload: { ...payload, steps: [...made.steps] },
  };
};

/** A tag that was hung in passing comes off again; what it said was seen to. */
const untag: Duty = (worker) => {
  const { person, inPlay, chance, truth } = worker;
  if (person.post !== 'headFly' || !chance.isIn(0.05)) return null;
  const set = inPlay.find((id) => setNow(worker, id)?.tag != null);
  const tag = set === undefined ? null : setNow(worker, set)?.tag;
  if (set === undefined || tag == null) return null;
  truth.serve(set, 'in');
  const payload = { call: CALL, number: tag.number, repairedBy: 'a rigger', words: 'mended' };
  return { kind: 'tag returned', target: targetOf(worker, set), payload };
};

/** Who forgets that it is one of a pair. */
const moveAlone = (worker: Worker, set: string, { height }: Standing): Said => {
  const zone = { zone: 'run' } as const;
  const to = metres(height - 1);
  const steps: Step[] = [
    { act: 'close', zone },
    { act: 'fly', to },
  ];
  const payload = { call: CALL, job: 'change', steps } as const;
  return { kind: 'plan told', target: targetOf(worker, set), payload: { ...payload, steps } };
};

/** Whether it stands otherwise than it did when the day began. */
const isOff = ({ demo, truth }: Worker, set: string): boolean =>
  truth.of(set) !== demo.opened.payload.sets[set]?.standing;

const isFree = ({ asked, leave }: SetNow): boolean => asked === null && leave === null;

/** Leave that nobody has said a word of for so long is asked about. */
const OLD = 200;

const chase: Duty = (worker) => {
  const { now, person } = worker;
  if (person.post !== 'headFly') return null;
  for (const [set, { asked, leave }] of Object.entries(now.sets)) {
    const target = targetOf(worker, set);
    if (leave !== null && now.seq - leave.seq > OLD) {
      const why = 'nobody says what became of the last step';
      return { kind: 'set doubted', target, payload: { call: CALL, why } };
    }
    if (asked !== null && now.seq - asked.seq > OLD) {
      const payload = { call: CALL, asked: asked.seq, words: 'not now' };
      return { kind: 'leave returned', target, payload };
    }
  }
  return null;
};

/** In the order in which they press. */
export const DUTIES: readonly Duty[] = [
  hear,
  finish,
  second,
  agree,
  lift,
  untag,
  find,
  clear,
  chase,
  ask,
  plan,
];
