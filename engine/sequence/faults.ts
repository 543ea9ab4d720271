/**
 * Where a load is held even after the worst single fault, so that people may be where it runs:
 * one largest brick miscounted, an item off by its tolerance, contact lost, a tended line lost; and
 * with hands on the set also an item let go.
 */
import type { OrderNode } from '#state';
import { heldSpans, type Rated } from './held.ts';
import type { Load, Loads } from './load.ts';
import { ratedBeside } from './rated-beside.ts';
import { AWAY, HANGING, RESTING, type Site } from './site.ts';
import { overlap, type Span } from './span.ts';
import { planningLockN } from './states.ts';

type Case = {
  readonly nodes: readonly OrderNode[];
  readonly rated: readonly Rated[];
  readonly lockN: number;
};

const spansIn = (site: Site, { room }: Load, { nodes, rated, lockN }: Case): readonly Span[] =>
  heldSpans(nodes, rated, lockN, site.options.doubtShare).flatMap((span) => {
    const inRoom = overlap(span, room);
    return inRoom === null ? [] : [inRoom];
  });

/** Heights that lie in all of them. */
export const meetAll = (lists: readonly (readonly Span[])[]): readonly Span[] =>
  lists.reduce((one, other) =>
    one.flatMap((span) =>
      other.flatMap((each) => {
        const both = overlap(span, each);
        return both === null ? [] : [both];
      }),
    ),
  );

const shifted = (nodes: readonly OrderNode[], byN: number): readonly OrderNode[] =>
  nodes.map(({ heightM, belowN, aboveN, contact, doubtN }) => ({
    heightM,
    belowN: belowN + byN,
    aboveN: aboveN + byN,
    contact: { lowN: contact.lowN + byN, highN: contact.highN + byN },
    doubtN,
  }));

/** What rests has slipped: the batten has all that it shared. */
const slipped = (nodes: readonly OrderNode[]): readonly OrderNode[] =>
  nodes.map((node) => ({
    ...node,
    contact: { lowN: node.contact.highN, highN: node.contact.highN },
  }));

const largestBrickN = (site: Site): number =>
  Math.max(0, ...site.physics.bricks.map(({ atBattenN }) => atBattenN));

/** With all of every tolerance counted already, no item is off by its own a second time. */
const tolerances = (site: Site, load: Load): readonly number[] => {
  if (site.options.doubtShare >= 1) return [];
  return site.items.flatMap(({ id }, index) =>
    load.phases[index] === HANGING || load.phases[index] === RESTING
      ? [(site.physics.itemMostN(id) - site.physics.itemLeastN(id)) / 2]
      : [],
  );
};

/** Nobody is at work on the set. What is made fast counts as a stop does, and so does `fixed`. */
export const faultless = (site: Site, load: Load, fixed: readonly Rated[]): readonly Span[] => {
  const { nodes } = load;
  const { lockLimitN } = site.physics;
  const rated = [...ratedBeside(site, load), ...fixed];
  const off = [largestBrickN(site), ...tolerances(site, load)];
  return meetAll([
    spansIn(site, load, { nodes, rated, lockN: planningLockN(site.physics) }),
    ...[Math.max(0, ...off)].flatMap((byN) =>
      [byN, -byN].map((sideN) =>
        spansIn(site, load, { nodes: shifted(nodes, sideN), rated, lockN: lockLimitN }),
      ),
    ),
    spansIn(site, load, {
      nodes: load.onSteel ? nodes : slipped(nodes),
      rated,
      lockN: lockLimitN,
    }),
    ...(load.tied ? site.tied.tended : []).map((lost) =>
      spansIn(site, load, {
        nodes,
        rated: rated.filter((each) => each !== lost),
        lockN: lockLimitN,
      }),
    ),
  ]);
};

/** What hands on the set may do besides: let an item go. */
export const handsOn = (loads: Loads, load: Load, fixed: readonly Rated[]): readonly Span[] => {
  const { site } = loads;
  const { lockLimitN: lockN } = site.physics;
  const rated = [...ratedBeside(site, load), ...fixed];
  const dropped = load.phases.flatMap((phase, index) => {
    if (phase !== HANGING && phase !== RESTING) return [];
    const phases = load.phases.map((each, at) => (at === index ? AWAY : each));
    const { nodes } = loads.changed(load, { phases });
    return [spansIn(site, load, { nodes, rated, lockN })];
  });
  return meetAll([[load.room], ...dropped]);
};
