/** The order as it is told: restraints rigged before they are needed, zones closed in time. */
import { metres, newtons } from '#quantities';
import type { Restraint, Standing, Step, WorkZone } from '#state';
import { gapIn, type HeldLoads, type Trust } from './held-loads.ts';
import { phasesOf } from './load.ts';
import type { Site } from './site.ts';
import { pointSpan, SAME_M, type Span } from './span.ts';
import { type Stage, stackAs } from './stages.ts';
import { planningLockN, standingAt, stateOf } from './states.ts';
import type { OrderState } from './types.ts';

export type Told = {
  readonly steps: readonly Step[];
  readonly states: readonly OrderState[];
  /** Heights between which the extra restraint is needed. */
  readonly restraintSpan: Span | null;
};

export const told = (site: Site, held: HeldLoads, stages: readonly Stage[]): Told => {
  const extra = extraOf(site, held, stages);
  const zones = zonesOf(site, held, stages, extra);
  const steps: Step[] = [];
  const states: OrderState[] = [];
  let closed: readonly WorkZone[] = site.start.closed;
  let rigged: readonly Restraint[] = site.start.restraints;
  let [at] = stages;
  const stand = (): Standing | null =>
    at === undefined ? null : standing(site, at, rigged, closed);
  const take = (step: Step | null): void => {
    const now = stand();
    if (now === null) return;
    if (step !== null) steps.push(step);
    states.push(stateOf(site, now));
  };
  const setZone = (act: 'close' | 'reopen', zone: WorkZone): void => {
    closed = act === 'close' ? [...closed, zone] : closed.filter((each) => !isSame(each, zone));
    take({ act, zone });
  };
  take(null);
  stages.forEach((stage, index) => {
    if (index > 0) {
      for (const { act, zone } of zones.before(index, closed)) setZone(act, zone);
      if (extra !== null && index === extra.first) {
        rigged = [...rigged, extra.restraint];
        take({ act: 'rig', restraint: extra.restraint });
      }
      const loose = at?.load.tied === true && !stage.load.tied;
      at = stage;
      rigged = withSteel(site, stage, rigged);
      if (loose) {
        for (const restraint of site.tied.all) {
          rigged = rigged.filter((each) => each !== restraint);
          take({ act: 'unrig', restraint });
        }
      } else if (stage.step !== null) take(stage.step);
      if (extra !== null && index === extra.last) {
        for (const { act, zone } of zones.beforeUnrig(index, closed)) setZone(act, zone);
        rigged = rigged.filter((each) => each !== extra.restraint);
        take({ act: 'unrig', restraint: extra.restraint });
      }
    }
  });
  for (const { act, zone } of zones.atEnd(closed)) setZone(act, zone);
  return { steps, states, restraintSpan: extra?.span ?? null };
};

/** Steel comes and goes with its own steps. */
const withSteel = (
  site: Site,
  { step, heightM }: Stage,
  rigged: readonly Restraint[],
): readonly Restraint[] => {
  const others = rigged.filter(({ kind }) => kind !== 'deadHangSteel');
  if (step?.act === 'takeOffSteel') return others;
  if (step?.act !== 'hangOnSteel' || site.steelN === null) return rigged;
  const [rating, from, to] = [newtons(site.steelN), metres(heightM), metres(heightM)];
  const kind = 'deadHangSteel';
  return [...others, { kind, resists: 'in', rating, from, to, owner: null, tag: null }];
};

const standing = (
  site: Site,
  { load, order, heightM }: Stage,
  restraints: readonly Restraint[],
  closed: readonly WorkZone[],
): Standing =>
  standingAt(heightM, {
    stack: stackAs(site, order),
    items: phasesOf(site, load.phases, load.onSteel),
    restraints,
    service: load.onSteel ? 'deadHung' : 'in',
    closed,
  });

const isSame = (one: WorkZone, other: WorkZone): boolean =>
  one.zone === 'run'
    ? other.zone === 'run'
    : other.zone === 'drop' && one.gallery === other.gallery;

type Gaps = { readonly during: Span | null; readonly after: Span | null };

/** Where a step and the state that it leaves are not held under a reading of the lock. */
const gapsOf = (site: Site, trust: Trust, stages: readonly Stage[], index: number): Gaps => {
  const stage = stages[index];
  if (stage === undefined) return { during: null, after: null };
  const { lockN, workLockN } = trust;
  const here = pointSpan(stage.heightM);
  const after = gapIn(site, trust, stage.load, { span: here, lockN });
  if (stage.way !== null) {
    return { during: gapIn(site, trust, stage.load, { span: stage.way, lockN }), after };
  }
  if (!stage.isAtBatten) return { during: null, after };
  const before = stages[index - 1]?.load ?? stage.load;
  const during = [before, stage.load]
    .map((load) => gapIn(site, trust, load, { span: here, lockN: workLockN }))
    .find((gap) => gap !== null);
  return { during: during ?? null, after };
};

type Extra = {
  readonly restraint: Restraint;
  readonly first: number;
  readonly last: number;
  readonly span: Span;
};

/** Rigged before the first step that needs it, taken off after the last. */
const extraOf = (site: Site, { trust }: HeldLoads, stages: readonly Stage[]): Extra | null => {
  if (trust.extra === null) return null;
  const bare = { ...trust, extra: null };
  const gaps = stages.map((_, index) => gapsOf(site, bare, stages, index));
  const isNeeded = gaps.map(
    ({ during, after }, index) =>
      during !== null || after !== null || (gaps[index - 1]?.after ?? null) !== null,
  );
  const [first, last] = [isNeeded.indexOf(true), isNeeded.lastIndexOf(true)];
  const spans = gaps.flatMap(({ during, after }) => [during, after].filter((gap) => gap !== null));
  if (first < 0 || spans.length === 0) return null;
  const lo = Math.min(...spans.map((span) => span.lo));
  const hi = Math.max(...spans.map((span) => span.hi));
  const isStill = !stages.slice(first, last + 1).some(({ way }) => way !== null);
  const kind = kindFor(site, trust.extra.resists, isStill ? hi : null);
  const restraint: Restraint = {
    kind,
    resists: trust.extra.resists,
    rating: newtons(trust.extra.ratedN),
    from: metres(lo),
    to: metres(hi),
    owner: null,
    tag: null,
  };
  return { restraint, first, last, span: { lo, hi } };
};

/** What would do: a sling or stands at one height, a line over a stretch. */
const kindFor = (site: Site, resists: 'in' | 'out', stillM: number | null): Restraint['kind'] => {
  if (resists === 'out') return stillM === null ? 'bullLine' : 'arborSling';
  return stillM !== null && stillM <= site.physics.workingM + SAME_M ? 'stands' : 'winch';
};

type ZoneStep = { readonly act: 'close' | 'reopen'; readonly zone: WorkZone };

const RUN: WorkZone = { zone: 'run' };

/**
 * The run is closed before the lock is trusted with more than its planning limit, and opened again
 * before riggers go to the batten. The drop zone of a gallery is closed while it handles bricks.
 */
const zonesOf = (
  site: Site,
  { trust }: HeldLoads,
  stages: readonly Stage[],
  extra: Extra | null,
) => {
  const planningN = planningLockN(site.physics);
  const asPlanned = { lockN: planningN, workLockN: planningN };
  const isNominal = stages.map((_, index) => {
    const isRigged = extra !== null && index >= extra.first && index <= extra.last;
    const rigged = isRigged && trust.extra !== null ? { ...trust.extra, span: extra.span } : null;
    const { during, after } = gapsOf(site, { ...asPlanned, extra: rigged }, stages, index);
    const bare = gapsOf(site, { ...asPlanned, extra: null }, stages, index).after;
    const left = index === extra?.last ? bare : after;
    return { step: during !== null || after !== null, left: left !== null };
  });
  const opens = (zone: WorkZone): boolean => !site.start.closed.some((each) => isSame(each, zone));
  const others = (closed: readonly WorkZone[], gallery: string | null): readonly ZoneStep[] =>
    closed
      .filter((zone) => zone.zone === 'drop' && zone.gallery !== gallery && opens(zone))
      .map((zone) => ({ act: 'reopen', zone }));
  return {
    before: (index: number, closed: readonly WorkZone[]): readonly ZoneStep[] => {
      const stage = stages[index];
      if (stage === undefined) return [];
      const isRunClosed = closed.some(({ zone }) => zone === 'run');
      const steps: ZoneStep[] = [];
      if (stage.gallery !== null || stage.isAtBatten) steps.push(...others(closed, stage.gallery));
      const isNeeded = isNominal[index]?.step === true || isNominal[index - 1]?.left === true;
      if (isNeeded && !isRunClosed) steps.push({ act: 'close', zone: RUN });
      if (stage.isAtBatten && isRunClosed && !isNeeded && opens(RUN)) {
        steps.push({ act: 'reopen', zone: RUN });
      }
      const { gallery } = stage;
      if (gallery !== null && !closed.some((zone) => isSame(zone, { zone: 'drop', gallery }))) {
        steps.push({ act: 'close', zone: { zone: 'drop', gallery } });
      }
      return steps;
    },
    beforeUnrig: (index: number, closed: readonly WorkZone[]): readonly ZoneStep[] =>
      isNominal[index]?.left === true && !closed.some(({ zone }) => zone === 'run')
        ? [{ act: 'close', zone: RUN }]
        : [],
    atEnd: (closed: readonly WorkZone[]): readonly ZoneStep[] => {
      const steps = [...others(closed, null)];
      const isRunClosed = closed.some(({ zone }) => zone === 'run');
      if (isRunClosed && opens(RUN) && isNominal.at(-1)?.left !== true) {
        steps.push({ act: 'reopen', zone: RUN });
      }
      return steps;
    },
  };
};
