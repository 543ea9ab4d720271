/** The matched order as it is told: zones closed for both in time, and how both stand then. */
import { metres } from '#quantities';
import type { PairStep, Standing, WorkZone } from '#state';
import { otherOf, SIDES, type Side } from './coupling.ts';
import { isRunClosed } from './course.ts';
import {
  type Act,
  isAtBatten,
  isHeldIfLetGo,
  type Match,
  type Next,
  type Spot,
  standingsAt,
} from './moves.ts';
import type { PairState } from './types.ts';

type PairTold = { readonly steps: readonly PairStep[]; readonly states: readonly PairState[] };

type ZoneStep = { readonly act: 'close' | 'reopen'; readonly zone: WorkZone };

export const isSameZone = (one: WorkZone, other: WorkZone): boolean =>
  one.zone === 'run'
    ? other.zone === 'run'
    : other.zone === 'drop' && one.gallery === other.gallery;

const RUN: WorkZone = { zone: 'run' };

/** `closed` are the zones that are closed to begin with; those stay as they are found. */
export const pairTold = (
  match: Match,
  start: Spot,
  path: readonly Next[],
  closed: readonly WorkZone[],
): PairTold => {
  const steps: PairStep[] = [];
  const states: PairState[] = [];
  const given = closed;
  let [spot, shut] = [start, closed];
  const stand = (): void => {
    const { first, second } = standingsAt(match, spot);
    const withZones = (standing: Standing): Standing => ({ ...standing, closed: shut });
    states.push({ first: withZones(first), second: withZones(second) });
  };
  const setZones = (side: Side, zones: readonly ZoneStep[]): void => {
    for (const { act, zone } of zones) {
      shut = act === 'close' ? [...shut, zone] : shut.filter((each) => !isSameZone(each, zone));
      steps.push({ set: match.physics[side].set, step: { act, zone } });
      stand();
    }
  };
  stand();
  for (const next of path) {
    const { act } = next;
    const side = act.act === 'deed' ? act.side : 'first';
    setZones(side, zonesBefore(match, spot, next, { shut, given }));
    spot = next.spot;
    steps.push(stepOf(match, act));
    stand();
  }
  const last = path.at(-1)?.act;
  setZones(last?.act === 'deed' ? last.side : 'first', zonesAtEnd(match, spot, { shut, given }));
  return { steps, states };
};

const stepOf = ({ physics }: Match, act: Act): PairStep => {
  if (act.act === 'deed') return { set: physics[act.side].set, step: act.step };
  const move = (side: Side) => ({ set: physics[side].set, to: metres(act.toM[side]) });
  return { together: [move('first'), move('second')] };
};

type Zones = { readonly shut: readonly WorkZone[]; readonly given: readonly WorkZone[] };

const mayReopen = ({ shut, given }: Zones, zone: WorkZone): boolean =>
  shut.some((each) => isSameZone(each, zone)) && !given.some((each) => isSameZone(each, zone));

/** Drop zones of galleries that are done, but for the one that is at work. */
const reopened = (zones: Zones, gallery: string | null): readonly ZoneStep[] =>
  zones.shut
    .filter((zone) => zone.zone === 'drop' && zone.gallery !== gallery && mayReopen(zones, zone))
    .map((zone) => ({ act: 'reopen', zone }));

/**
 * The run is closed before every flight; where the order of the set at work has it closed; where
 * the other set stands so that its own order never has it open; and where it would not be held
 * with all of a piece that is let go on this one.
 */
const needsRun = (match: Match, spot: Spot, { act, spot: after }: Next): boolean => {
  if (act.act === 'together' || act.step.act === 'fly') return true;
  const { courses } = match;
  const { done } = spot;
  const { side } = act;
  const other = otherOf(side);
  const point = courses[other].points[done[other]];
  const deed = courses[side].deeds[done[side]];
  return (
    deed?.inClosedRun === true ||
    point?.mayBeOpen === false ||
    !isHeldIfLetGo(match, standingsAt(match, after), side)
  );
};

const zonesBefore = (match: Match, spot: Spot, next: Next, zones: Zones): readonly ZoneStep[] => {
  const { act } = next;
  const steps: ZoneStep[] = [];
  const isClosed = isRunClosed(zones.shut);
  const isNeeded = needsRun(match, spot, next);
  const step = act.act === 'deed' ? act.step : null;
  const gallery = step !== null && 'gallery' in step ? step.gallery : null;
  const hands = step !== null && isAtBatten(step);
  if (gallery !== null || hands) steps.push(...reopened(zones, gallery));
  if (isNeeded && !isClosed) steps.push({ act: 'close', zone: RUN });
  if (hands && !isNeeded && mayReopen(zones, RUN)) steps.push({ act: 'reopen', zone: RUN });
  if (gallery !== null) {
    const drop: WorkZone = { zone: 'drop', gallery };
    if (!zones.shut.some((zone) => isSameZone(zone, drop)))
      steps.push({ act: 'close', zone: drop });
  }
  return steps;
};

const zonesAtEnd = ({ courses }: Match, { done }: Spot, zones: Zones): readonly ZoneStep[] => {
  const isOpen = SIDES.every((side) => courses[side].points[done[side]]?.mayBeOpen === true);
  return [
    ...reopened(zones, null),
    ...(isOpen && mayReopen(zones, RUN) ? [{ act: 'reopen', zone: RUN } as const] : []),
  ];
};
