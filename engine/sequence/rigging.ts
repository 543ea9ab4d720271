/** When the one restraint that is asked for is rigged, to what heights, and when it comes off. */
import { metres, newtons } from '#quantities';
import type { Restraint } from '#state';
import { gapIn, type HeldLoads, heldLoads, type Trust } from './held-loads.ts';
import type { Loads } from './load.ts';
import type { Site } from './site.ts';
import { isWithin, pointSpan, SAME_M, type Span } from './span.ts';
import type { Stage } from './stages.ts';

export type Rigging = {
  readonly restraint: Restraint;
  /** Rigged before this stage, taken off after that one. */
  readonly first: number;
  readonly last: number;
  /** Heights at which it is needed. */
  readonly span: Span;
};

type Extra = NonNullable<Trust['extra']>;

/** Whether the line would have to draw the arbor up where it is only rated to pay out. */
export const mustHaul = (site: Site, { trust }: HeldLoads, stages: readonly Stage[]): boolean => {
  const { extra, lockN } = trust;
  if (extra?.as !== 'line') return false;
  const hauling: Trust = { ...trust, extra: { ...extra, as: 'hauled' } };
  return stages.some(({ load, way, heightM }) => {
    if (way === null || heightM > way.lo + SAME_M) return false;
    return gapIn(site, hauling, load, { span: way, lockN, when: 'way' }) !== null;
  });
};

type Need = { readonly isNeeded: boolean; readonly spans: readonly Span[] };

/** Where a step, or the state before or after it, is not held without. */
const needAt = (site: Site, bare: HeldLoads, stages: readonly Stage[], index: number): Need => {
  const stage = stages[index];
  if (stage === undefined) return { isNeeded: false, spans: [] };
  const { trust } = bare;
  const { lockN } = trust;
  const { heightM, load, way } = stage;
  const here = pointSpan(heightM);
  const gapAt = (each: Stage | undefined): Span | null =>
    each === undefined
      ? null
      : gapIn(site, trust, each.load, { span: pointSpan(each.heightM), lockN });
  const onWay = way === null ? null : gapIn(site, trust, load, { span: way, lockN, when: 'way' });
  const before = stages[index - 1];
  const isIn = (spans: readonly Span[]): boolean => spans.some((span) => isWithin(here, span));
  const hands =
    stage.isAtBatten && !(isIn(bare.open((before ?? stage).load)) && isIn(bare.work(load)))
      ? here
      : null;
  const spans = [onWay, gapAt(stage), hands].filter((span) => span !== null);
  return { isNeeded: spans.length > 0 || (index > 0 && gapAt(before) !== null), spans };
};

/** Where it is rigged and taken off again: a line once, what is made fast at each stop anew. */
export const riggingOf = (
  loads: Loads,
  { trust }: HeldLoads,
  stages: readonly Stage[],
): readonly Rigging[] => {
  const { extra } = trust;
  if (extra === null) return [];
  const { site } = loads;
  const bare = heldLoads(loads, { ...trust, extra: null });
  const needs = stages.map((_, index) => needAt(site, bare, stages, index));
  const groups: { first: number; last: number; spans: Span[] }[] = [];
  needs.forEach(({ isNeeded, spans }, index) => {
    if (!isNeeded) return;
    const open = groups.at(-1);
    const between = stages.slice((open?.last ?? 0) + 1, index + 1);
    const goesOn = extra.as !== 'fast' || !between.some(({ way }) => way !== null);
    if (open === undefined || !goesOn)
      groups.push({ first: index, last: index, spans: [...spans] });
    else {
      open.last = index;
      open.spans.push(...spans);
    }
  });
  return groups.flatMap(({ first, last, spans }) => {
    const lo = Math.min(...spans.map((span) => span.lo));
    const hi = Math.max(...spans.map((span) => span.hi));
    if (spans.length === 0) return [];
    return [{ restraint: restraintOf(site, extra, { lo, hi }), first, last, span: { lo, hi } }];
  });
};

export const spanOf = (rigging: readonly Rigging[]): Span | null =>
  rigging.length === 0
    ? null
    : {
        lo: Math.min(...rigging.map(({ span }) => span.lo)),
        hi: Math.max(...rigging.map(({ span }) => span.hi)),
      };

const restraintOf = (site: Site, extra: Extra, { lo, hi }: Span): Restraint => {
  const isFast = extra.as === 'fast';
  const at = (heightM: number, round: (steps: number) => number): number =>
    isFast ? heightM : neat(site, heightM, round);
  return {
    kind: isFast ? (extra.resists === 'in' ? 'stands' : 'arborSling') : 'bullLine',
    resists: extra.resists,
    rating: newtons(extra.ratedN),
    from: metres(at(lo, Math.floor)),
    to: metres(at(hi, Math.ceil)),
    owner: null,
    tag: null,
  };
};

/** Rigged to heights that can be called, a little wider than it is needed. */
const neat = (site: Site, heightM: number, round: (steps: number) => number): number => {
  const { lowStop, highStop } = site.physics;
  const { neatM } = site.options;
  const calledM = round(heightM / neatM) * neatM;
  return Math.min(highStop.heightM, Math.max(lowStop.heightM, calledM));
};
