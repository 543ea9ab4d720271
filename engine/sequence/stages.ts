/** The cheapest path as steps at heights, before zones are closed and restraints rigged. */
import { unreachable } from '#outcome';
import { metres } from '#quantities';
import type { StackRun, Step } from '#state';
import type { Halt } from './heights.ts';
import type { Load } from './load.ts';
import { HANGING, RESTING, type Site, SLACK } from './site.ts';
import type { Span } from './span.ts';
import type { Trail } from './trail.ts';

/** One step, and how it leaves the set. */
export type Stage = {
  readonly step: Step | null;
  readonly load: Load;
  readonly order: string;
  readonly heightM: number;
  /** The way of a flight. */
  readonly way: Span | null;
  /** Plates go on or come off at this gallery. */
  readonly gallery: string | null;
  readonly isAtBatten: boolean;
};

export const stagesOf = (site: Site, halts: readonly Halt[]): readonly Stage[] => {
  const stages: Stage[] = [];
  let [wasM, run] = [site.start.height as number, ''];
  for (const { heightM, trails } of halts) {
    for (const trail of trails) {
      const step = stepOf(site, trail, heightM);
      const stage = {
        step,
        load: trail.place.load,
        order: trail.place.order,
        heightM,
        way:
          step?.act === 'fly' ? { lo: Math.min(wasM, heightM), hi: Math.max(wasM, heightM) } : null,
        gallery: step !== null && 'gallery' in step ? step.gallery : null,
        isAtBatten: AT_BATTEN.has(step?.act ?? 'fly'),
      };
      const before = stages.at(-1)?.step;
      if (trail.run !== '' && trail.run === run && before !== null && before !== undefined) {
        stages[stages.length - 1] = { ...stage, step: oneMore(before) };
      } else stages.push(stage);
      run = trail.run;
    }
    wasM = heightM;
  }
  return stages;
};

const AT_BATTEN: ReadonlySet<Step['act']> = new Set(['attach', 'release']);

const oneMore = (step: Step): Step =>
  step.act === 'add' || step.act === 'remove' ? { ...step, count: step.count + 1 } : step;

const PHASE_WORDS = {
  [SLACK]: 'attachedSlack',
  [RESTING]: 'attachedResting',
  [HANGING]: 'flying',
} as const;

const stepOf = (site: Site, { deed }: Trail, heightM: number): Step | null => {
  const itemId = (index: number): string => site.items[index]?.id ?? '';
  switch (deed.deed) {
    case 'start':
      return null;
    case 'fly':
      return { act: 'fly', to: metres(heightM) };
    case 'brick':
      return {
        act: deed.act,
        kind: site.kinds[deed.kind]?.id ?? '',
        count: 1,
        gallery: site.galleries[deed.gallery]?.id ?? '',
      };
    case 'attach':
      return {
        act: 'attach',
        item: itemId(deed.item),
        as: deed.as === 0 ? 'flying' : PHASE_WORDS[deed.as],
      };
    case 'takeUp':
    case 'rest':
    case 'release':
      return { act: deed.deed, item: itemId(deed.item) };
    case 'hangOnSteel':
      return { act: 'hangOnSteel' };
    case 'takeOffSteel':
      return { act: 'takeOffSteel' };
    case 'untie':
      // Each restraint of the start is a step of its own; the teller makes them.
      return null;
    default:
      return unreachable(deed);
  }
};

/** Runs of one kind and tag, from the bottom up, as they lie. */
export const stackAs = (site: Site, order: string): readonly StackRun[] => {
  const runs: StackRun[] = [...site.base];
  for (const letter of order) {
    const kind = site.kinds[Number(letter)]?.id ?? '';
    const last = runs.at(-1);
    if (last?.kind === kind && last.tag === 'show') {
      runs[runs.length - 1] = { ...last, count: last.count + 1 };
    } else runs.push({ kind, count: 1, tag: 'show' });
  }
  return runs;
};
