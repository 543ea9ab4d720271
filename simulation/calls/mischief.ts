/** What nobody asked for: wrong steps, double words, contradictions, stops, and people who go. */
import { FOOT, metres, newtons } from '#quantities';
import type { Restraint, SetNow, Step } from '#state';
import { askedFor, foundAs, reporting, seenBy } from './duties.ts';
import type { Mischief } from './people.ts';
import { postOf } from './posts.ts';
import { besideOf, CALL, nextStep, type Said, setNow, targetOf, type Worker } from './worker.ts';

type Act = (worker: Worker) => Said | null;

const anySet = ({ inPlay, chance, demo }: Worker): string =>
  chance.isIn(0.85) ? chance.oneOf(inPlay) : chance.oneOf([...demo.sets.keys()]);

const LINE: Restraint = {
  ...{ kind: 'bullLine', resists: 'out', rating: newtons(2000), from: metres(0.9) },
  ...{ to: metres(18), owner: 'head flyman', tag: 'B1' },
};

const lineOf = ({ chance }: Worker): Restraint => ({
  ...LINE,
  kind: chance.oneOf(['bullLine', 'arborSling', 'stands', 'winch']),
  resists: chance.oneOf(['in', 'out', 'both']),
  rating: chance.isIn(0.2) ? null : newtons(chance.between(100, 3000)),
  owner: chance.isIn(0.3) ? null : 'head flyman',
  tag: chance.isIn(0.3) ? null : `T${chance.below(9)}`,
});

const itemOf = ({ demo, chance }: Worker, set: string): string => {
  const items = demo.sets.get(set)?.hang?.items ?? [];
  return items.length === 0 ? 'lamp' : chance.oneOf(items).id;
};

/** A step as somebody may hit on it: of any kind, with numbers that could be. */
const someStep = (worker: Worker, set: string): Step => {
  const { chance, demo } = worker;
  const gallery = chance.oneOf(demo.documents.house.galleries).id;
  const item = itemOf(worker, set);
  const zone = chance.isIn(0.5) ? ({ zone: 'run' } as const) : ({ zone: 'drop', gallery } as const);
  const heightM = chance.oneOf([3, 4, 12, 23, 30, 40, 46, 52, 60]) * FOOT;
  const standing = setNow(worker, set)?.standing ?? null;
  const rigged = standing?.restraints ?? [];
  const act = chance.below(13);
  if (act < 2) return { act: 'add', kind: 'F', count: 1 + chance.below(30), gallery };
  if (act < 4) return { act: 'remove', kind: topOf(standing), count: 1 + chance.below(8), gallery };
  if (act < 7) return { act: 'fly', to: metres(heightM) };
  if (act === 7) return { act: 'attach', item, as: chance.oneOf(['flying', 'attachedSlack']) };
  if (act === 8) return { act: chance.oneOf(['release', 'rest', 'takeUp'] as const), item };
  if (act === 9) return { act: 'rig', restraint: lineOf(worker) };
  if (act === 10 && rigged.length > 0) return { act: 'unrig', restraint: chance.oneOf(rigged) };
  if (act === 11) return { act: 'ease', pull: newtons(chance.between(0, 400)), lifted: false };
  return { act: chance.oneOf(['close', 'close', 'reopen'] as const), zone };
};

const topOf = (standing: SetNow['standing']): string =>
  standing?.stack.findLast(({ tag }) => tag !== 'spreader')?.kind ?? 'F';

/** Any step on any set, by whose work it is or by another. */
const askAnything: Act = (worker) => {
  const { person, chance, demo } = worker;
  const set = anySet(worker);
  for (let tries = 0; tries < 6; tries += 1) {
    const step = someStep(worker, set);
    if (postOf(step) === person.post) return askedFor(worker, set, step, paperBy(worker));
  }
  const step = someStep(worker, chance.isIn(0.5) ? set : chance.oneOf([...demo.sets.keys()]));
  return askedFor(worker, set, step);
};

const paperBy = ({ chance }: Worker) => (chance.isIn(0.15) ? { paper: 'a name on paper' } : {});

/** 17 for 19: the next step of one set, asked on the set beside it. */
const askBeside: Act = (worker) => {
  const { inPlay, chance } = worker;
  const set = chance.oneOf(inPlay);
  const state = setNow(worker, set);
  const step = state === null ? null : nextStep(state);
  return step === null ? null : askedFor(worker, besideOf(worker, set), step);
};

/** A step left out. */
const askAhead: Act = (worker) => {
  const { inPlay, person, chance } = worker;
  const own = inPlay.flatMap((set) => {
    const plan = setNow(worker, set)?.plan ?? null;
    const steps = plan === null ? [] : plan.steps.slice(plan.done + 1);
    const step = steps.find((each) => postOf(each) === person.post);
    return step === undefined ? [] : [{ set, step }];
  });
  if (own.length === 0) return null;
  const { set, step } = chance.oneOf(own);
  return askedFor(worker, set, step, paperBy(worker));
};

/** What a rule refused, with two people and a reason. */
const override: Act = (worker) => {
  const { refused } = worker.memory;
  if (refused === null || refused.said.kind !== 'leave asked') return null;
  const { target, payload } = refused.said;
  const set = target.slice(target.indexOf('/') + 1);
  return askedFor(worker, set, payload.step, { rules: [refused.code], ...paperBy(worker) });
};

const leaveOf = (worker: Worker): readonly (readonly [string, number])[] =>
  Object.entries(worker.now.sets).flatMap(([set, { leave }]) =>
    leave === null ? [] : [[set, leave.seq] as const],
  );

/** The same word again, or on another's leave, or on none. */
const reportAgain: Act = (worker) => {
  const { chance, now } = worker;
  const open = leaveOf(worker);
  const set = anySet(worker);
  if (open.length === 0 || chance.isIn(0.3)) {
    return reporting(worker, set, 1 + chance.below(now.seq))({ plates: 1 });
  }
  const [of, leave] = chance.oneOf(open);
  const on = chance.isIn(0.5) ? of : set;
  if (chance.isIn(0.5)) return reporting(worker, on, leave)({ plates: chance.below(5) });
  const payload = { call: CALL, post: worker.person.post, leave, count: chance.below(12) };
  return { kind: 'plates counted', target: targetOf(worker, on), payload };
};

/** What a passer-by may do: a brick or two, a piece unhung, the batten a little higher. */
const smallDeed = (worker: Worker, set: string): Step => {
  const { chance, demo, truth } = worker;
  const standing = truth.of(set);
  const gallery = chance.oneOf(demo.documents.house.galleries).id;
  const count = 1 + chance.below(2);
  const hung = Object.keys(standing?.items ?? {});
  if (hung.length > 0 && chance.isIn(0.3)) return { act: 'release', item: chance.oneOf(hung) };
  if (chance.isIn(0.3)) return { act: 'add', kind: 'F', count, gallery };
  const hasShow = standing?.stack.some((run) => run.tag === 'show') === true;
  if (hasShow && chance.isIn(0.5)) return { act: 'remove', kind: topOf(standing), count, gallery };
  return { act: 'fly', to: metres(Math.min((standing?.height ?? 1) + 0.3, 18)) };
};

/** Somebody works on it and asks nobody; some say so after. */
const actAlone: Act = (worker) => {
  const { truth, chance } = worker;
  const set = anySet(worker);
  truth.slips += 1;
  truth.do(set, smallDeed(worker, set));
  if (chance.isIn(0.5)) return null;
  const payload = { call: CALL, why: 'I have changed something on it' };
  return { kind: 'set doubted', target: targetOf(worker, set), payload };
};

/** A second look, which may contradict the first. */
const lookAgain: Act = (worker) => {
  const set = anySet(worker);
  const standing = worker.truth.of(set);
  if (standing === null) return null;
  const { chance } = worker;
  const loose = chance.isIn(0.4)
    ? chance.oneOf([{ lock: 'open' }, { ring: 'off' }, { collar: 'loose' }] as const)
    : {};
  return foundAs(worker, set, seenBy(worker, standing), loose);
};

const doubtSet: Act = (worker) => {
  const payload = { call: CALL, why: 'it looks as if somebody had touched it' };
  return { kind: 'set doubted', target: targetOf(worker, anySet(worker)), payload };
};

const doubtLock: Act = (worker) => {
  const set = anySet(worker);
  const why = setNow(worker, set)?.lockDoubt == null ? 'its rope is wet' : null;
  const target = targetOf(worker, set);
  return { kind: 'lock doubted', target, payload: { call: CALL, why } };
};

const stop: Act = (worker) => {
  const { chance, person } = worker;
  const set = chance.isIn(0.6) ? anySet(worker) : null;
  const payload = { call: CALL, post: person.post, set, words: 'STOP' };
  return { kind: 'stop called', target: 'house', payload };
};

const tag: Act = (worker) => {
  const { chance, truth } = worker;
  const set = anySet(worker);
  const target = targetOf(worker, set);
  const hangs = setNow(worker, set)?.tag ?? null;
  if (hangs !== null) {
    const payload = { call: CALL, number: hangs.number, repairedBy: 'a rigger', words: 'mended' };
    truth.serve(set, 'in');
    return { kind: 'tag returned', target, payload };
  }
  const service = chance.oneOf(['paused', 'lockedOut'] as const);
  truth.serve(set, service);
  const hung = { number: `L${chance.below(99)}`, reason: 'the hand line is chafed' };
  return { kind: 'tag placed', target, payload: { call: CALL, tag: hung, service } };
};

const measure: Act = (worker) => {
  const { chance, person, truth, demo } = worker;
  const set = anySet(worker);
  const target = targetOf(worker, set);
  const { post } = person;
  if (chance.isIn(0.4)) {
    const gallery = chance.oneOf(demo.documents.house.galleries).id;
    const stock = { ...truth.stockAt(gallery) };
    const payload = { call: CALL, post, gallery, stock, second: null };
    return { kind: 'gallery counted', target: 'house', payload };
  }
  if (chance.isIn(0.5)) {
    const item = itemOf(worker, set);
    const listedN = demo.sets.get(set)?.physics?.itemMostN(item) ?? 500;
    const share = chance.isIn(0.2) ? chance.between(0.3, 3) : chance.between(0.93, 1);
    const payload = { call: CALL, post, item, mass: (listedN / 9.81) * share };
    return { kind: 'item weighed', target, payload };
  }
  const height = truth.of(set)?.height ?? 1;
  const payload = { call: CALL, post, out: chance.between(20, 200), in: 90, height };
  return { kind: 'pull tested', target, payload };
};

/** Another crew has taken bricks, and says how many it left. */
const carryOff: Act = ({ chance, person, truth, demo }) => {
  const gallery = chance.oneOf(demo.documents.house.galleries).id;
  truth.carryOff(gallery, 'F', 1 + chance.below(2));
  const stock = { ...truth.stockAt(gallery) };
  const payload = { call: CALL, post: person.post, gallery, stock, second: null };
  return { kind: 'gallery counted', target: 'house', payload };
};

const note: Act = (worker) => {
  const { chance, writtenMs } = worker;
  const set = anySet(worker);
  const target = targetOf(worker, set);
  const [first] = setNow(worker, set)?.notes ?? [];
  if (first !== undefined && chance.isIn(0.7)) {
    const payload = { call: CALL, note: first, words: 'it changes nothing, as we both saw' };
    return { kind: 'note settled', target, payload };
  }
  const payload = {
    text: 'two bricks on, on paper',
    writtenMs: chance.isIn(0.5) ? writtenMs : null,
  };
  return { kind: 'note written', target, payload };
};

const goAway: Act = ({ person, now, chance }) => {
  const held = now.posts[person.post];
  if (held === undefined || person.post === 'headFly') return null;
  const { post } = person;
  if (chance.isIn(0.4))
    return { kind: 'post left', target: 'house', payload: { call: CALL, post } };
  const payload = { call: CALL, post, isClear: !held.isClear };
  return { kind: 'post said', target: 'house', payload };
};

const giveBack: Act = (worker) => {
  const { now, person } = worker;
  const found = Object.entries(now.sets).find(
    ([, { asked, leave }]) => (leave ?? asked)?.post === person.post,
  );
  const [set, state] = found ?? [];
  const asked = state?.leave?.seq ?? state?.asked?.seq;
  if (set === undefined || asked === undefined) return null;
  const payload = { call: CALL, asked, words: 'not now' };
  return { kind: 'leave returned', target: targetOf(worker, set), payload };
};

/** Who is not asked says yes, and with a count that they made up. */
const secondUnasked: Act = (worker) => {
  const { now, person, chance, truth } = worker;
  const found = Object.entries(now.sets).find(([, { asked }]) => asked !== null);
  const [set, state] = found ?? [];
  if (set === undefined || state?.asked == null) return null;
  const plates = chance.oneOf([null, truth.plates(set), truth.plates(set) + 1]);
  const payload = { call: CALL, post: person.post, asked: state.asked.seq, plates };
  return { kind: 'leave seconded', target: targetOf(worker, set), payload };
};

const tellNonsense: Act = (worker) => {
  const set = anySet(worker);
  const steps = Array.from({ length: 1 + worker.chance.below(4) }, () => someStep(worker, set));
  const payload = { call: CALL, job: 'change', steps } as const;
  return { kind: 'plan told', target: targetOf(worker, set), payload: { ...payload, steps } };
};

/** Into a zone that is said to be clear, and out again; nobody tells. */
const walk: Act = ({ truth, chance, demo }) => {
  const galleries = demo.documents.house.galleries.map(({ id }) => `drop:${id}`);
  truth.walk(chance.oneOf(['run', ...galleries]), chance.isIn(0.5));
  return null;
};

const ACTS = {
  askAnything: [14, askAnything],
  askBeside: [8, askBeside],
  askAhead: [14, askAhead],
  override: [10, override],
  reportAgain: [6, reportAgain],
  actAlone: [3, actAlone],
  lookAgain: [6, lookAgain],
  doubtSet: [1, doubtSet],
  doubtLock: [3, doubtLock],
  stop: [1, stop],
  tag: [2, tag],
  measure: [4, measure],
  carryOff: [1, carryOff],
  note: [3, note],
  goAway: [3, goAway],
  giveBack: [3, giveBack],
  secondUnasked: [4, secondUnasked],
  tellNonsense: [1, tellNonsense],
  walk: [3, walk],
} as const satisfies Readonly<Record<Mischief, readonly [share: number, act: Act]>>;

const SHARES = Object.values(ACTS).reduce((sum, [share]) => sum + share, 0);

/** One of them by its share, or the one that a crew is given to. */
export const mischief = (worker: Worker, only: Mischief | null): Said | null => {
  if (only !== null) return ACTS[only][1](worker);
  let left = worker.chance.below(SHARES);
  for (const [share, act] of Object.values(ACTS)) {
    if (left < share) return act(worker);
    left -= share;
  }
  return null;
};
