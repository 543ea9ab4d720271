/** What an event on one set makes of it. */
import { canonicalJson, type EventKind, type EventOf, type HouseEvent } from '#events';
import { metres, newtons } from '#quantities';
import type { Knowledge, LeaveNow, SetNow, Standing, Step } from '#state';
import { message } from '#texts';
import { isBrickStep, platesOf, stackAfter } from './plates.ts';
import { foundAs, inDoubt, standingAs } from './set-now.ts';

const MORE_OFF = message('more bricks were counted off than lie there');

/** Half a foot: how far a height read off at the rail may be off. */
const READ_M = 0.15;

type Folds = {
  readonly [K in EventKind]?: (set: SetNow, event: EventOf<K>) => SetNow;
};

/** What was planned, asked, given and done. */
const WORK: Folds = {
  'plan told': (set, { seq, payload: { job, steps } }) => ({
    ...set,
    plan: { seq, job, steps, done: 0 },
  }),
  'leave waits': (set, { payload: { asked: seq, secondOf } }) =>
    set.asked?.seq === seq ? { ...set, asked: { ...set.asked, secondOf } } : set,
  'leave asked': (set, event) => asked(set, event),
  'leave given': (set, event) => given(set, event),
  'leave returned': (set, { payload }) => returned(set, payload.asked),
  'leave seconded': (set, event) => seconded(set, event),
  'plates counted': (set, event) => counted(set, event),
  'step reported': (set, event) => reported(set, event),
  'set judged': (set, { payload: { held, rule } }) => ({ ...set, held, rule }),
};

/** What was found, measured, tagged and written of a set, apart from its steps. */
const FINDS: Folds = {
  'set found': (set, event) => found(set, event),
  'set doubted': (set, { payload }) => inDoubt(set, payload.why),
  'lock doubted': (set, { payload }) => ({ ...set, lockDoubt: payload.why }),
  'pull tested': (set, { by, atMs, payload }) => {
    const { out, in: inward, height } = payload;
    const pull = { out: newtons(out), in: newtons(inward), height: metres(height) };
    const said = { at: new Date(atMs).toISOString(), by: by ?? '' };
    return { ...set, pullTest: { ...pull, ...said }, pulledAs: set.standing };
  },
  'item weighed': (set, { payload: { item, mass } }) => ({
    ...set,
    weighed: { ...set.weighed, [item]: mass },
  }),
  'tag placed': (set, { payload: { tag, service } }) =>
    withService({ ...set, tag, plan: null, asked: null }, service),
  'tag returned': (set, { payload }) =>
    set.tag?.number === payload.number ? withService({ ...set, tag: null }, 'in') : set,
  'note written': (set, { seq, by, device, payload }) =>
    // Written while the house was not heard, and come later: paper, which people settle.
    payload.writtenMs === null
      ? set
      : {
          ...set,
          notes: [...set.notes, seq],
          noteBy: { ...set.noteBy, [seq]: { by, device } },
        },
  'note settled': (set, { payload }) => ({
    ...set,
    notes: set.notes.filter((seq) => seq !== payload.note),
  }),
};

const FOLDS: Folds = { ...WORK, ...FINDS };

/** A set with one event more; what says nothing of a set leaves it as it is. */
export const foldOfSet = (set: SetNow, event: HouseEvent): SetNow => {
  // The fold of a kind takes events of that kind, and is looked up by the kind of this one.
  const fold = FOLDS[event.kind] as ((set: SetNow, event: HouseEvent) => SetNow) | undefined;
  return fold === undefined ? set : fold(set, event);
};

const withService = (set: SetNow, service: Standing['service']): SetNow =>
  set.standing === null || set.standing.service === 'deadHung'
    ? set
    : standingAs(set, { ...set.standing, service });

const asked = (
  set: SetNow,
  { seq, by, device, atMs, payload }: EventOf<'leave asked'>,
): SetNow => ({
  ...set,
  asked: {
    ...{ seq, by, device, atMs },
    post: payload.post,
    step: payload.step,
    override: payload.override,
    secondOf: '',
  },
});

const given = (set: SetNow, { seq, atMs, payload }: EventOf<'leave given'>): SetNow => {
  const { asked: wish } = set;
  const { step, second } = payload;
  // Of a set that is not known only a zone is closed, and it stays as unknown as it was.
  const standing = set.standing ?? (step.act === 'close' ? set.last : null);
  if (standing === null || wish?.seq !== payload.asked) return set;
  const leave: LeaveNow = {
    ...{ seq, atMs, step, second, by: wish.by, device: wish.device, post: payload.post },
    before: standing,
    expects: payload.expects,
    plates: 0,
  };
  const override =
    payload.override === null || second === null
      ? []
      : [{ ...payload.override, seq, first: { by: wish.by, device: wish.device }, second }];
  const isMove = step.act === 'fly' || step.act === 'ease';
  return {
    ...set,
    asked: null,
    leave,
    overrides: [...set.overrides, ...override],
    collar: isBrickStep(step) ? 'loose' : set.collar,
    lock: isMove ? 'open' : set.lock,
    ring: isMove ? 'off' : set.ring,
  };
};

/** What was asked is asked no more; leave that was given was not used. */
const returned = (set: SetNow, seq: number): SetNow => {
  if (set.asked?.seq === seq) return { ...set, asked: null };
  if (set.leave?.seq !== seq) return set;
  return set.leave.plates === 0
    ? { ...set, ...madeFast(set.leave.step), leave: null }
    : inDoubt(set, message('work on it was broken off with bricks moved'));
};

/** What the step itself had loosened; a lock that was found open stays so when a zone is closed. */
const madeFast = (step: Step): Partial<Pick<SetNow, 'lock' | 'ring' | 'collar'>> => {
  if (isBrickStep(step)) return { collar: 'secured' };
  return step.act === 'fly' || step.act === 'ease' ? { lock: 'closed', ring: 'on' } : {};
};

/** The second counted other bricks than the record has: nobody knows which of both is right. */
const seconded = (set: SetNow, { payload }: EventOf<'leave seconded'>): SetNow => {
  const { plates } = payload;
  if (plates === null || set.standing === null) return set;
  const there = platesOf(set.standing.stack);
  return plates === there
    ? set
    : inDoubt(set, message('two counts differ: the second counted other bricks on it'));
};

const counted = (set: SetNow, { payload }: EventOf<'plates counted'>): SetNow => {
  const { leave } = set;
  const isTheirs = leave?.seq === payload.leave && leave.post === payload.post;
  if (leave === null || !isTheirs || !isBrickStep(leave.step)) {
    return inDoubt(set, message('bricks were moved without leave'));
  }
  const stack = stackAfter(leave.before.stack, leave.step, payload.count);
  if (stack === null) return inDoubt(set, MORE_OFF);
  const moved = { ...set, leave: { ...leave, plates: payload.count } };
  return standingAs(moved, { ...leave.before, stack });
};

const reported = (set: SetNow, event: EventOf<'step reported'>): SetNow => {
  const { leave } = set;
  const { payload } = event;
  const { as, words } = payload;
  // What another post says of it is said by who had no leave for it.
  if (leave === null || leave.seq !== payload.leave || leave.post !== payload.post) {
    return inDoubt(set, words === '' ? message('something was done without leave') : words);
  }
  if (set.standing === null) {
    return { ...set, leave: null, last: as === 'done' ? leave.expects : leave.before };
  }
  if (as === 'otherwise')
    return inDoubt({ ...set, ...madeFast(leave.step) }, words || message('done otherwise'));
  if (isBrickStep(leave.step)) return bricksReported(set, leave, event);
  if (isOffHeight(leave, payload))
    return inDoubt(set, message('it stands elsewhere than was told'));
  if (as === 'done') return done(set, leave, event);
  return standingAs({ ...set, ...madeFast(leave.step), leave: null }, leave.before);
};

/** Where the batten was seen, against where it is to be; what only hangs has not moved. */
const isOffHeight = (
  { step, before, expects }: LeaveNow,
  { as, height }: EventOf<'step reported'>['payload'],
): boolean => {
  if (step.act !== 'fly' && step.act !== 'ease') return false;
  // A move that was broken off stands wherever it was stopped, until somebody has looked.
  if (height === null) return as === 'notDone';
  return Math.abs(height - (as === 'done' ? expects.height : before.height)) > READ_M;
};

/** The count at the end is what holds; told otherwise one by one, nobody knows. */
const bricksReported = (set: SetNow, leave: LeaveNow, event: EventOf<'step reported'>): SetNow => {
  const { step } = leave;
  const { plates } = event.payload;
  if (!isBrickStep(step)) return set;
  if (plates === null) return inDoubt(set, message('bricks were handled and not counted'));
  if (leave.plates > 0 && plates !== leave.plates) {
    const why = message('two counts differ: told one by one, and told at the end');
    return inDoubt({ ...set, collar: 'secured' }, why);
  }
  if (plates === step.count) return done(set, leave, event);
  const stack = stackAfter(leave.before.stack, step, plates);
  if (stack === null) return inDoubt(set, MORE_OFF);
  const standing = { ...leave.before, stack };
  const other = plates === 0 ? set.plan : null;
  const steps = plates === 0 ? [] : [{ ...step, count: plates }];
  return {
    ...standingAs({ ...set, collar: 'secured', leave: null, plan: other }, standing),
    knowledge: toldBy(set, event),
    since: sinceWith(set, steps),
    changed: set.changed || plates > 0,
  };
};

const sinceWith = ({ since }: SetNow, steps: readonly Step[]): SetNow['since'] =>
  since === null ? null : { ...since, steps: [...since.steps, ...steps] };

const CHANGES_BALANCE: ReadonlySet<Step['act']> = new Set([
  'attach',
  'takeUp',
  'rest',
  'release',
  'add',
  'remove',
  'hangOnSteel',
  'takeOffSteel',
]);

/** What was counted and is worked on as told is as fresh as the last report of it, and by whom. */
const toldBy = ({ knowledge }: SetNow, { atMs, by }: EventOf<'step reported'>): Knowledge =>
  knowledge.basis === 'unknown' || knowledge.basis === 'carriedOver' || knowledge.by === null
    ? knowledge
    : { ...knowledge, at: new Date(atMs).toISOString(), by: by ?? knowledge.by };

const done = (
  set: SetNow,
  { step, expects }: LeaveNow,
  event: EventOf<'step reported'>,
): SetNow => {
  const { plan } = set;
  const next = plan?.steps[plan.done];
  // As they are read off the wire their fields may come in any order.
  const isPlanned = next !== undefined && canonicalJson(next) === canonicalJson(step);
  const isMove = step.act === 'fly' || step.act === 'ease';
  return {
    ...standingAs({ ...set, ...madeFast(step), leave: null }, expects),
    // An order whose steps are done otherwise is an order no more.
    plan: plan !== null && isPlanned ? { ...plan, done: plan.done + 1 } : null,
    knowledge: toldBy(set, event),
    since: sinceWith(set, [step]),
    changed: isMove ? false : set.changed || CHANGES_BALANCE.has(step.act),
  };
};

const found = (set: SetNow, event: EventOf<'set found'>): SetNow => {
  const { standing, lock, ring, collar, basis, second, settles } = event.payload;
  const knowledge: Knowledge = {
    basis,
    at: new Date(event.atMs).toISOString(),
    by: event.by,
    second,
  };
  return {
    ...foundAs(set, standing, knowledge),
    ...{ lock, ring, collar },
    notes: set.notes.filter((seq) => !settles.includes(seq)),
  };
};
