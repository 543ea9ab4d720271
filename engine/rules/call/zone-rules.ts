/** People and sets around a step: who stands where, what else moves, and who keeps a zone. */
import { measure } from '#findings';
import type { House } from '#house';
import type { HouseNow, PostId, Standing, WorkZone } from '#state';
import { message } from '#texts';
import { isAbove } from '../limits.ts';
import {
  type CallCase,
  type CallRule,
  galleryName,
  isBricks,
  isMove,
  isSameZone,
  isZoneWork,
  leavesElsewhere,
  marshalOf,
} from './call-case.ts';
import { type CallFinding, callFinding } from './finding.ts';

/** How far a loader reaches to the side with a brick. Common practice, no source. */
const ARM_M = 0.75;

/** Why a zone is not kept for a set; null where it is closed with its marshal at their post. */
const whyNotKept = (now: HouseNow, set: string, zone: WorkZone): string | null => {
  const closed = now.zones.find((each) => each.set === set && isSameZone(each.zone, zone));
  if (closed === undefined) return message('nobody has closed it for this set');
  return now.posts[closed.post] === undefined ? message('its marshal has left the post') : null;
};

const keptBy = (zone: WorkZone, { now, asked }: CallCase): readonly CallFinding[] => {
  const what = whyNotKept(now, asked.set, zone);
  return what === null
    ? []
    : [
        callFinding('CAL-008', {
          at: { set: asked.set },
          facts: { what, post: marshalOf(zone) },
        }),
      ];
};

/** CAL-008: bricks only with the drop zone kept, a move only with the run kept (V5, V8). */
export const zonesKept: CallRule = (the) => {
  const { step } = the.asked;
  if (isBricks(step)) return keptBy({ zone: 'drop', gallery: step.gallery }, the);
  return isMove(step) ? keptBy({ zone: 'run' }, the) : [];
};

/** Posts that are no place under a gallery: the lead's and the caller's word, and the marshals. */
const isElsewhere = (post: PostId): boolean =>
  post === 'headFly' || post === 'caller' || post.startsWith('marshal:');

/** A gallery of which nobody knows the height may lie below. */
const isAboveGallery = ({ galleries }: House, post: PostId, loading: string): boolean => {
  const floorOf = (id: string) => galleries.find((each) => each.id === id)?.floor;
  const [own, other] = [floorOf(post.slice('gallery:'.length)), floorOf(loading)];
  return own?.known === true && other?.known === true && isAbove(own.value, other.value);
};

/** Posts that may stand under the bricks of a gallery and have not said that they are out. */
export const notClearOf = (now: HouseNow, house: House, gallery: string): readonly PostId[] =>
  Object.entries(now.posts)
    .filter(([post, { isClear }]) => {
      if (isClear || isElsewhere(post) || post === `gallery:${gallery}`) return false;
      return !(post.startsWith('gallery:') && isAboveGallery(house, post, gallery));
    })
    .map(([post]) => post);

/** CAL-009: everybody whose post may lie in the drop zone has said that they are out of it (V5). */
export const nobodyUnder: CallRule = ({ now, asked: { set, step }, facts: { house } }) => {
  if (!isBricks(step)) return [];
  const posts = notClearOf(now, house, step.gallery);
  if (posts.length === 0) return [];
  return [
    callFinding('CAL-009', {
      at: { set, gallery: step.gallery },
      facts: { gallery: galleryName(house, step.gallery), posts: posts.join(', ') },
    }),
  ];
};

/**
 * CAL-010: bricks of one set at a time (V6). The documents of a house give no plan of its drop
 * zones, so that every gallery counts as lying in the zone of the ones above it.
 */
export const oneGallery: CallRule = ({ now, asked: { set, step }, facts: { house } }) => {
  if (!isBricks(step)) return [];
  return leavesElsewhere(now, set).flatMap((other) =>
    isBricks(other.step)
      ? [
          callFinding('CAL-010', {
            at: { set, gallery: step.gallery },
            facts: { gallery: galleryName(house, other.step.gallery), other: other.set },
          }),
        ]
      : [],
  );
};

const distanceM = ({ lineSets }: House, one: string, other: string): number | null => {
  const [a, b] = [one, other].map((id) => lineSets.find((each) => each.id === id)?.y);
  return a?.known === true && b?.known === true ? Math.abs(a.value - b.value) : null;
};

/** CAL-011: nothing moves within reach of a loader (V7). A set of unknown place counts as near. */
export const nothingBeside: CallRule = ({ now, asked: { set, step }, facts: { house } }) => {
  if (!isBricks(step) && !isMove(step)) return [];
  return leavesElsewhere(now, set).flatMap((other) => {
    const isBeside = isBricks(step) ? isMove(other.step) : isBricks(other.step);
    const apartM = distanceM(house, set, other.set);
    if (!isBeside || (apartM !== null && isAbove(apartM, ARM_M))) return [];
    return [
      callFinding('CAL-011', {
        at: { set },
        measured: measure(apartM ?? 0, 'length'),
        limit: measure(ARM_M, 'length'),
        limitSource: 'common practice, no source',
        facts: { other: other.set },
      }),
    ];
  });
};

/**
 * CAL-013: the rail has one line in hand (V8), and while bricks are in hand nobody goes to a line
 * or a batten, for no document says which of them lie outside the drop zone (V5, 6.4b). The other
 * way round, who is there has not said that they are out of it: CAL-009.
 */
export const oneMove: CallRule = ({ now, asked: { set, step } }) => {
  if (isZoneWork(step)) return [];
  return leavesElsewhere(now, set).flatMap((other) => {
    const isBesideMove = isMove(other.step) && (isMove(step) || isBricks(step));
    const what = isBesideMove
      ? message('is on the move')
      : isBricks(other.step) && !isBricks(step)
        ? message('has bricks in hand')
        : null;
    return what === null
      ? []
      : [callFinding('CAL-013', { at: { set }, facts: { other: other.set, what } })];
  });
};

const hasOn = ({ items }: Standing): boolean =>
  Object.values(items).some((phase) => phase !== 'away' && phase !== 'beside');

/**
 * CAL-014: with a piece on either of them, coupled sets are one, and no step here is of two sets
 * (V9, R10). How far apart they may hang no document says, so that it is not judged here either:
 * they are worked by the sheet of the pair, and found again. Bare, each is a set like any other.
 */
export const notAlone: CallRule = ({ now, asked: { set: id, step }, set, facts: { hang } }) => {
  const others = hang?.coupledWith ?? [];
  if (others.length === 0 || isZoneWork(step) || step.act === 'rig') return [];
  const sets = [set, ...others.map((other) => now.sets[other])];
  const isUnknown = sets.some((each) => (each?.standing ?? null) === null);
  const isOn = sets.some(
    (each) => each?.standing !== undefined && each.standing !== null && hasOn(each.standing),
  );
  const what = isUnknown
    ? message('how one of them stands is not known')
    : isOn || step.act === 'attach'
      ? message('both are worked as one, by the sheet of the pair')
      : null;
  return what === null
    ? []
    : [callFinding('CAL-014', { at: { set: id }, facts: { others: others.join(', '), what } })];
};
