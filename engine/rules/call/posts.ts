/** Whose work a step is, who has to be at their post for it, and whose second word it needs. */
import { unreachable } from '#outcome';
import type { HouseNow, PostId, PostNow, Restraint, Step } from '#state';
import { message } from '#texts';
import { type CallRule, isBricks, isMove, marshalOf } from './call-case.ts';
import { callFinding } from './finding.ts';

/** Ropes that one person leads: paid out, made fast, and called. Common practice, no source. */
const isLed = ({ kind }: Pick<Restraint, 'kind'>): boolean =>
  kind === 'bullLine' || kind === 'winch';

/** The post whose work a step is. Source: the-job.md 6.1. */
export const postOf = (step: Step): PostId => {
  switch (step.act) {
    case 'attach':
    case 'takeUp':
    case 'rest':
    case 'release':
    case 'hangOnSteel':
    case 'takeOffSteel':
      return 'deck';
    case 'add':
    case 'remove':
      return `gallery:${step.gallery}`;
    case 'fly':
    case 'ease':
      return 'rail';
    case 'rig':
    case 'unrig':
      return isLed(step.restraint) ? 'bullLine' : 'deck';
    case 'close':
    case 'reopen':
      return marshalOf(step.zone);
    default:
      return unreachable(step);
  }
};

/** CAL-003: each step has its post, and somebody is at it. */
export const atTheirPost: CallRule = ({ now, asked: { set, post, step } }) => {
  const wanted = postOf(step);
  const raised = (what: string) => [
    callFinding('CAL-003', { at: { set }, facts: { post: wanted, what } }),
  ];
  if (post !== wanted) return raised(message('it was not asked'));
  return now.posts[post] === undefined ? raised(message('nobody is')) : [];
};

/**
 * Whether two posts are held by two people. Without a sign-in the names that they gave stand for
 * them, as on paper; one device is one person.
 */
const areTwo = (one: PostNow, other: PostNow): boolean => {
  if (one.device !== null && one.device === other.device) return false;
  if (one.by !== null || other.by !== null) return one.by !== other.by;
  return one.name.trim().toLowerCase() !== other.name.trim().toLowerCase();
};

/** CAL-012: one at the line and one who watches; and one who leads a line that goes along. */
export const twoForMove: CallRule = ({ now, asked, set }) => {
  if (!isMove(asked.step)) return [];
  const raised = (what: string) => [
    callFinding('CAL-012', { at: { set: asked.set }, facts: { what } }),
  ];
  const { rail, watcher, bullLine } = now.posts;
  if (rail === undefined) return raised(message('nobody is at the rail'));
  if (watcher === undefined) return raised(message('nobody watches'));
  if (!areTwo(rail, watcher)) return raised(message('the rail and the watcher are one person'));
  const isOnLine = set.standing?.restraints.some(isLed) ?? false;
  if (!isOnLine) return [];
  if (bullLine === undefined) return raised(message('nobody leads the line that is on it'));
  return areTwo(rail, bullLine)
    ? []
    : raised(message('the rail also leads the line that is on it'));
};

/** Whether no brick was handled on the set since its drop zone there was closed last. */
const isFirstOfVisit = (steps: readonly Step[], gallery: string): boolean => {
  const last = steps.findLast(
    (step) =>
      (isBricks(step) && step.gallery === gallery) ||
      (step.act === 'close' && step.zone.zone === 'drop' && step.zone.gallery === gallery),
  );
  return last === undefined || last.act === 'close';
};

/**
 * The post whose word is needed besides; null where one person is enough.
 *
 * Source  the-job.md 6.3, two-person interlocks 1, 2, 3, 4, 6 and 8
 * Omits   what no step of one set is: a locked-out set, the preset at the half hour
 */
export const secondFor = (
  now: HouseNow,
  { set: id, step }: { readonly set: string; readonly step: Step },
  landsOn: readonly number[],
): PostId | null => {
  const set = now.sets[id];
  if (set === undefined) return null;
  switch (step.act) {
    case 'add':
    case 'remove':
      return isFirstOfVisit(set.since?.steps ?? [], step.gallery) ? 'deck' : null;
    case 'fly': {
      if (set.changed || set.standing?.restraints.some(isLed) === true) return 'headFly';
      const fromM = set.standing?.height ?? step.to;
      return landsOn.some((contactM) => isOnWay(contactM, fromM, step.to)) ? 'watcher' : null;
    }
    case 'ease':
      return set.changed ? 'headFly' : null;
    case 'unrig':
      return 'headFly';
    case 'attach':
    case 'takeUp':
    case 'rest':
    case 'release':
    case 'rig':
    case 'hangOnSteel':
    case 'takeOffSteel':
    case 'close':
    case 'reopen':
      return null;
    default:
      return unreachable(step);
  }
};

const isOnWay = (contactM: number, fromM: number, toM: number): boolean =>
  contactM >= Math.min(fromM, toM) && contactM <= Math.max(fromM, toM) && toM < fromM;
