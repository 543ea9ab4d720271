/** The order as it is told: restraints rigged before they are needed, zones closed in time. */
import { metres, newtons } from '#quantities';
import type { Restraint, Standing, Step, WorkZone } from '#state';
import { type HeldLoads, heldLoads } from './held-loads.ts';
import { type Loads, phasesOf } from './load.ts';
import { type Rigging, riggingOf, spanOf } from './rigging.ts';
import type { Site } from './site.ts';
import { isWithin, pointSpan, type Span } from './span.ts';
import { type Stage, stackAs } from './stages.ts';
import { standingAt, stateOf } from './states.ts';
import type { OrderState } from './types.ts';

export type Told = {
  readonly steps: readonly Step[];
  readonly states: readonly OrderState[];
  /** Heights between which the extra restraint is needed. */
  readonly restraintSpan: Span | null;
};

export const told = (loads: Loads, held: HeldLoads, stages: readonly Stage[]): Told => {
  const { site } = loads;
  const rigging = riggingOf(loads, held, stages);
  const zones = zonesOf(site, proofsOf(loads, held, stages, rigging), stages);
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
      for (const { restraint, first } of rigging) {
        if (index !== first) continue;
        for (const { act, zone } of zones.beforeRig(index, closed)) setZone(act, zone);
        rigged = [...rigged, restraint];
        take({ act: 'rig', restraint });
      }
      // Riggers come to a batten that is held already, so the run is opened after rigging.
      for (const { act, zone } of zones.before(index, closed)) setZone(act, zone);
      const steel = steelFor(site, stage, rigged);
      if (steel !== null) {
        for (const { act, zone } of zones.beforeRig(index, closed)) setZone(act, zone);
        rigged = [...rigged.filter(({ kind }) => kind !== 'deadHangSteel'), steel];
        take({ act: 'rig', restraint: steel });
      }
      const loose = at?.load.tied === true && !stage.load.tied;
      at = stage;
      if (stage.step?.act === 'takeOffSteel') {
        rigged = rigged.filter(({ kind }) => kind !== 'deadHangSteel');
      }
      if (loose) {
        for (const restraint of site.tied.all) {
          rigged = rigged.filter((each) => each !== restraint);
          take({ act: 'unrig', restraint });
        }
      } else if (stage.step !== null) take(stage.step);
      for (const { restraint, last } of rigging) {
        if (index !== last) continue;
        for (const { act, zone } of zones.beforeUnrig(index, closed)) setZone(act, zone);
        rigged = rigged.filter((each) => each !== restraint);
        take({ act: 'unrig', restraint });
      }
    }
  });
  for (const { act, zone } of zones.atEnd(closed)) setZone(act, zone);
  return { steps, states, restraintSpan: spanOf(rigging) };
};

/** Steel is rigged and in the register before anything is hung on it, and leaves with its load. */
const steelFor = (
  site: Site,
  { step, heightM }: Stage,
  rigged: readonly Restraint[],
): Restraint | null => {
  if (step?.act !== 'hangOnSteel' || site.steelN === null) return null;
  const isThere = rigged.some(
    ({ kind, rating, from, to }) =>
      kind === 'deadHangSteel' && rating !== null && from !== null && to !== null,
  );
  if (isThere) return null;
  const [rating, at] = [newtons(site.steelN), metres(heightM)];
  const kind = 'deadHangSteel';
  return { kind, resists: 'in', rating, from: at, to: at, owner: null, tag: null };
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

type ZoneStep = { readonly act: 'close' | 'reopen'; readonly zone: WorkZone };

const RUN: WorkZone = { zone: 'run' };

/** Where each stage may be left with people where it runs, and where with hands on it. */
type Proof = {
  readonly before: boolean;
  readonly hands: boolean;
  readonly rigged: boolean;
  readonly unrigged: boolean;
};

const proofsOf = (
  loads: Loads,
  held: HeldLoads,
  stages: readonly Stage[],
  rigging: readonly Rigging[],
): readonly Proof[] => {
  const bare = heldLoads(loads, { ...held.trust, extra: null });
  const isIn = (spans: readonly Span[], { heightM }: Stage): boolean =>
    spans.some((span) => isWithin(pointSpan(heightM), span));
  return stages.map((stage, index) => {
    const during = rigging.some(({ first, last }) => first <= index && index <= last);
    const after = rigging.some(({ first, last }) => first <= index + 1 && index < last);
    return {
      before: isIn((after ? held : bare).open(stage.load), stage),
      hands: isIn((during ? held : bare).work(stage.load), stage),
      rigged: isIn(held.work(stage.load), stage),
      unrigged: isIn(bare.work(stage.load), stage),
    };
  });
};

/**
 * The run is closed before the set is flown, and before a step after which a single fault would
 * not be held; it is open whenever riggers go to the batten, and again in the end where nothing
 * speaks against it. The drop zone of a gallery is closed while it handles bricks.
 */
const zonesOf = (site: Site, proofs: readonly Proof[], stages: readonly Stage[]) => {
  const opens = (zone: WorkZone): boolean => !site.start.closed.some((each) => isSame(each, zone));
  const isShut = (closed: readonly WorkZone[]): boolean =>
    closed.some(({ zone }) => zone === 'run');
  const needsRun = (index: number): boolean =>
    (stages[index]?.way ?? null) !== null ||
    proofs[index]?.hands === false ||
    proofs[index - 1]?.before === false;
  const others = (closed: readonly WorkZone[], gallery: string | null): readonly ZoneStep[] =>
    closed
      .filter((zone) => zone.zone === 'drop' && zone.gallery !== gallery && opens(zone))
      .map((zone) => ({ act: 'reopen', zone }));
  return {
    before: (index: number, closed: readonly WorkZone[]): readonly ZoneStep[] => {
      const stage = stages[index];
      if (stage === undefined) return [];
      const { gallery, isAtBatten } = stage;
      const steps: ZoneStep[] = [];
      if (gallery !== null || isAtBatten) steps.push(...others(closed, gallery));
      if (!isAtBatten && needsRun(index) && !isShut(closed)) {
        steps.push({ act: 'close', zone: RUN });
      }
      if (isAtBatten && isShut(closed) && opens(RUN)) steps.push({ act: 'reopen', zone: RUN });
      if (gallery !== null && !closed.some((zone) => isSame(zone, { zone: 'drop', gallery }))) {
        steps.push({ act: 'close', zone: { zone: 'drop', gallery } });
      }
      return steps;
    },
    beforeRig: (index: number, closed: readonly WorkZone[]): readonly ZoneStep[] =>
      proofs[index - 1]?.rigged === false && !isShut(closed) ? [{ act: 'close', zone: RUN }] : [],
    beforeUnrig: (index: number, closed: readonly WorkZone[]): readonly ZoneStep[] =>
      proofs[index]?.unrigged === false && !isShut(closed) ? [{ act: 'close', zone: RUN }] : [],
    atEnd: (closed: readonly WorkZone[]): readonly ZoneStep[] => [
      ...others(closed, null),
      ...(isShut(closed) && opens(RUN) && proofs.at(-1)?.before === true
        ? [{ act: 'reopen', zone: RUN } as const]
        : []),
    ],
  };
};
