/** What is on the set, apart from where it stands and in which order its plates lie. */

import { metres } from '#quantities';
import type { ItemPhase, OrderNode, StackRun, Standing } from '#state';
import { type Counts, HANGING, type Phase, RESTING, type Site, SLACK } from './site.ts';
import { overlap, pointSpan, type Span } from './span.ts';

export type Load = {
  readonly key: string;
  readonly counts: Counts;
  readonly phases: readonly Phase[];
  /** On steel: it holds the batten from coming in. */
  readonly onSteel: boolean;
  /** Restraints of the start still engaged. */
  readonly tied: boolean;
  /** Imbalance over the travel; a load with a resting piece stands at one height only. */
  readonly nodes: readonly OrderNode[];
  /** Where the batten may stand with this load, whatever holds it. */
  readonly room: Span;
  /** Batten heights at which the next plate is in reach, by gallery. */
  readonly windows: readonly (Span | null)[];
  /** Neither higher than the rods nor heavier than the arbor may be. */
  readonly fitsArbor: boolean;
};

export type LoadChange = Partial<Pick<Load, 'counts' | 'phases' | 'onSteel' | 'tied'>>;

/** Loads of a site, each made once. */
export type Loads = {
  readonly site: Site;
  readonly first: Load;
  readonly changed: (load: Load, change: LoadChange) => Load;
};

const ROUNDING_M = 1e-9;
const ROUNDING_KG = 1e-9;

export const loadsOf = (site: Site): Loads => {
  const made = new Map<string, Load>();
  const curves = new Map<string, readonly OrderNode[]>();
  const stacks = new Map<string, Pick<Load, 'windows' | 'fitsArbor'>>();
  const remember = <T>(map: Map<string, T>, key: string, make: () => T): T => {
    const known = map.get(key);
    if (known !== undefined) return known;
    const fresh = make();
    map.set(key, fresh);
    return fresh;
  };
  const load = (parts: Required<LoadChange>): Load => {
    const { counts, phases, onSteel, tied } = parts;
    const stackKey = counts.join(',');
    const itemKey = phases.join('');
    const key = `${stackKey}|${itemKey}|${onSteel ? 's' : ''}${tied ? 't' : ''}`;
    return remember(made, key, () => ({
      key,
      counts,
      phases,
      onSteel,
      tied,
      nodes: remember(curves, `${stackKey}|${itemKey}`, () => nodesOf(site, counts, phases)),
      room: roomOf(site, phases, onSteel),
      ...remember(stacks, stackKey, () => stackOf(site, counts)),
    }));
  };
  const first = load({
    counts: site.counts.start,
    phases: site.items.map(({ start }) => start),
    onSteel: site.start.service === 'deadHung',
    tied: site.tied.all.length > 0,
  });
  return { site, first, changed: (from, change) => load({ ...from, ...change }) };
};

export const runsOf = (site: Site, counts: Counts): readonly StackRun[] => [
  ...site.base,
  ...site.kinds.flatMap(({ id }, kind): readonly StackRun[] => {
    const count = counts[kind] ?? 0;
    return count === 0 ? [] : [{ kind: id, count, tag: 'show' }];
  }),
];

const WORDS: readonly ItemPhase[] = ['away', 'attachedSlack', 'attachedResting', 'flying'];

/** Phases by id; an item that never came keeps the word of the start. */
export const phasesOf = (
  site: Site,
  phases: readonly Phase[],
  onSteel: boolean,
): Standing['items'] =>
  Object.fromEntries(
    site.items.map(({ id, start }, index): [string, ItemPhase] => {
      const phase = phases[index] ?? 0;
      if (phase === HANGING && onSteel) return [id, 'heldElsewhere'];
      if (phase === 0 && start === 0) return [id, site.start.items[id] ?? 'away'];
      return [id, WORDS[phase] ?? 'away'];
    }),
  );

const nodesOf = (site: Site, counts: Counts, phases: readonly Phase[]): readonly OrderNode[] => {
  const items = phasesOf(site, phases, false);
  const stack = runsOf(site, counts);
  if (!phases.includes(RESTING)) return site.physics.curve({ stack, items });
  const height = metres(site.restAtM);
  const at = site.physics.at({ ...site.start, height, stack, items });
  // Nothing moves while a piece rests, so the one height is all there is.
  return [
    {
      heightM: site.restAtM,
      belowN: at.lowN,
      aboveN: at.lowN,
      contact: { lowN: at.lowN, highN: at.highN },
      doubtN: at.doubtN,
    },
  ];
};

const roomOf = (site: Site, phases: readonly Phase[], onSteel: boolean): Span => {
  if (onSteel) {
    const heightM = site.start.service === 'deadHung' ? site.start.height : site.goal.height;
    return pointSpan(heightM ?? Number.NaN);
  }
  if (phases.includes(RESTING)) return pointSpan(site.restAtM);
  // Slack picks reach no higher than where they come taut.
  const top = phases.includes(SLACK) ? Math.min(site.restAtM, site.travel.hi) : site.travel.hi;
  return { lo: site.travel.lo, hi: top };
};

const stackOf = (site: Site, counts: Counts): Pick<Load, 'windows' | 'fitsArbor'> => {
  const { physics, galleries } = site;
  const { lowStop, highStop, rodM } = physics;
  const stack = runsOf(site, counts);
  const topAt = (heightM: number, runs: readonly StackRun[] = stack): number =>
    physics.topOfStackM({ height: metres(heightM), stack: runs });
  const lowTopM = topAt(lowStop.heightM);
  // The arbor goes down as the batten goes out, so the slope is negative.
  const slope = (topAt(highStop.heightM) - lowTopM) / (highStop.heightM - lowStop.heightM);
  const heightFor = (topM: number): number => lowStop.heightM + (topM - lowTopM) / slope;
  return {
    windows: galleries.map(({ reachFromM, reachToM }) =>
      overlap(site.travel, { lo: heightFor(reachToM), hi: heightFor(reachFromM) }),
    ),
    fitsArbor: lowTopM - topAt(lowStop.heightM, []) <= rodM + ROUNDING_M && isCarried(site, stack),
  };
};

/** Every mass as heavy as nature may have made it. */
const isCarried = ({ physics, options }: Site, stack: readonly StackRun[]): boolean => {
  const { arborMassLimitKg: limitKg } = physics;
  const { massKg, doubtKg } = physics.arborKg(stack);
  return limitKg === null || massKg + options.doubtShare * doubtKg <= limitKg + ROUNDING_KG;
};
