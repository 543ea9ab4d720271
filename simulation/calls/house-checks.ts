/** What other sets and the people in the house decide of a leave: V5 to V9, STOP, posts. */
import type { Standing, Step } from '#state';
import { type Check, type Given, isOverridden } from './leave-checks.ts';
import type { Hand, Leave, Zone } from './ledger.ts';
import { postOf } from './posts.ts';
import { isSame, phaseOf } from './steps-done.ts';

type Bricks = Extract<Step, { readonly act: 'add' | 'remove' }>;

const bricksOf = (step: Step): Bricks | null =>
  step.act === 'add' || step.act === 'remove' ? step : null;

const isMove = (step: Step): boolean => step.act === 'fly' || step.act === 'ease';

/** Work that leave was given for on other sets, and that nobody has reported. */
const others = ({ ledger, set }: Given): readonly (readonly [string, Leave])[] =>
  [...ledger.sets].flatMap(([id, { leave }]) =>
    leave === null || id === set.id ? [] : [[id, leave] as const],
  );

const floorOf = ({ set }: Given, gallery: string): number =>
  set.physics?.galleries.find(({ id }) => id === gallery)?.floorM ?? 0;

const keptBy = ({ ledger }: Given, zones: readonly Zone[]): boolean =>
  zones.some(({ post }) => ledger.posts.has(post));

const dropZone: Check = (given) => {
  const { ledger, set, event } = given;
  const step = bricksOf(event.payload.step);
  if (step === null) return null;
  const closed = ledger.zones.filter(({ key }) => key === `drop:${step.gallery}`);
  if (!keptBy(given, closed)) {
    return ['dropZone', `bricks for set ${set.id} at ${step.gallery}, its zone not kept`];
  }
  const below = [...ledger.posts].find(
    ([post, { isClear }]) => !isClear && isUnder(given, post, step.gallery),
  );
  if (below === undefined) return null;
  return [
    'dropZone',
    `bricks for set ${set.id} at ${step.gallery}, ${below[0]} not out from under`,
  ];
};

const ELSEWHERE = /^(headFly|caller|marshal:.*)$/;

/** All who work on the deck and at the rail, and each gallery under those above it. */
const isUnder = (given: Given, post: string, gallery: string): boolean => {
  if (ELSEWHERE.test(post)) return false;
  if (!post.startsWith('gallery:')) return true;
  const [, own] = /^gallery:(.+)$/.exec(post) ?? [];
  return own !== undefined && floorOf(given, own) < floorOf(given, gallery);
};

const oneGallery: Check = (given) => {
  const { set, event } = given;
  const step = bricksOf(event.payload.step);
  if (step === null) return null;
  for (const [other, leave] of others(given)) {
    const theirs = bricksOf(leave.step);
    if (theirs === null) continue;
    return ['oneGallery', `set ${set.id} at ${step.gallery}, set ${other} at ${theirs.gallery}`];
  }
  return null;
};

const neighbours: Check = (given) => {
  const { set, event } = given;
  const { step } = event.payload;
  const rank = rankOf(given, set.id);
  const beside = others(given).filter(([id]) => Math.abs(rankOf(given, id) - rank) === 1);
  const clash = beside.find(
    ([, leave]) =>
      (isMove(step) && bricksOf(leave.step) !== null) ||
      (bricksOf(step) !== null && isMove(leave.step)),
  );
  return clash === undefined
    ? null
    : ['neighbours', `${step.act} on set ${set.id} beside ${clash[1].step.act} on ${clash[0]}`];
};

const rankOf = ({ demo }: Given, set: string): number => [...demo.sets.keys()].indexOf(set);

const clearWay: Check = (given) => {
  const { ledger, set, event } = given;
  if (!isMove(event.payload.step)) return null;
  const own = ledger.zones.filter(({ key, set: of }) => key === 'run' && of === set.id);
  if (!keptBy(given, own)) return ['clearWay', `set ${set.id} moves, its zone not kept`];
  const absent = ['rail', 'watcher'].find((post) => !ledger.posts.has(post));
  return absent === undefined ? null : ['clearWay', `set ${set.id} moves and nobody is ${absent}`];
};

const coupled: Check = ({ set, record, event }) => {
  const { step } = event.payload;
  const { hang } = set;
  if (step.act !== 'fly' || hang === null || hang.coupledWith.length === 0) return null;
  const isOn = hang.items.some(({ id }) => phaseOf(record.standing?.items ?? {}, id) === 'flying');
  return isOn ? ['coupled', `set ${set.id} alone, coupled with ${hang.coupledWith.join()}`] : null;
};

const stopped: Check = ({ ledger, set }) => {
  const stop = ledger.stops.find((each) => each.set === null || each.set === set.id);
  return stop === undefined ? null : ['stopped', `set ${set.id} under STOP ${stop.seq}`];
};

const isOther = (one: Hand, other: Hand): boolean =>
  one.by !== null && other.by !== null && one.by !== other.by && one.device !== other.device;

/** A landing or a lift-off: something taut on its rest leaves it, or something that hangs lands. */
const meetsDeck = ({ set, record, event }: Given): boolean => {
  const { step } = event.payload;
  const { standing } = record;
  const { physics } = set;
  if (step.act !== 'fly' || standing === null || physics === null) return false;
  const isFlying = (id: string): boolean => standing.items[id] === 'flying';
  return Object.keys(standing.items).some((id) => {
    const contactM = physics.contactM(id);
    return contactM !== null && isFlying(id) && lands(standing, step.to, contactM);
  });
};

const lands = ({ height }: Standing, toM: number, contactM: number): boolean =>
  height > contactM + 1e-6 && (toM < contactM || isSame(toM, contactM));

const needsSecond = (given: Given): boolean => {
  const { record, event } = given;
  const { step } = event.payload;
  if (isOverridden(given)) return true;
  const bricks = bricksOf(step);
  if (bricks !== null) return !record.visited.includes(bricks.gallery);
  if (step.act === 'unrig') return true;
  return isMove(step) && (record.changed || meetsDeck(given));
};

const twoPeople: Check = (given) => {
  const { ledger, set, record, event } = given;
  const { second, step } = event.payload;
  const { wish } = record;
  if (wish === null) return ['twoPeople', `leave for set ${set.id} that nobody asked`];
  if (second === null) {
    return needsSecond(given) ? ['twoPeople', `${step.act} on set ${set.id} on one word`] : null;
  }
  if (second.is === 'paper') return null;
  const atPost = ledger.posts.get(second.post);
  const isThere = atPost?.by === second.by && atPost.device === second.device;
  return isThere && isOther(wish, second)
    ? null
    : ['twoPeople', `${step.act} on set ${set.id}: ${wish.by} and ${second.by} at ${second.post}`];
};

const right: Check = ({ ledger, set, record, event }) => {
  const { post, step } = event.payload;
  const { wish } = record;
  const held = ledger.posts.get(post);
  if (post !== postOf(step)) return ['right', `${step.act} on set ${set.id} to ${post}`];
  return held !== undefined && held.by === wish?.by && held.device === wish.device
    ? null
    : ['right', `${step.act} on set ${set.id} to ${wish?.by}, who is not at ${post}`];
};

export const IN_THE_HOUSE: readonly Check[] = [
  stopped,
  right,
  twoPeople,
  dropZone,
  oneGallery,
  neighbours,
  clearWay,
  coupled,
];
