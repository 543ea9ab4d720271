import { unreachable } from '#outcome';
import type { BrokenRule, OrderPlan, RestraintNeeded, SmallestChange } from '#sequence';
import { inHouseWords, sayForce } from '#sheets';
import type { Standing } from '#state';
import type { OrderJob } from './order-job.ts';
import { heightWords } from './order-text.ts';

/** What the search says of itself. That none exists and that none was found never share words. */
export const outcomeText = (plan: OrderPlan, job: OrderJob, start: Standing): readonly string[] => {
  if ('stopped' in plan) return [`None found in ${plan.stopped.searched} states: stop and ask.`];
  if ('none' in plan) return noneText(plan.none, job, start);
  const { searched, optimal, restraint } = plan.found;
  const best = optimal ? 'by its own measure no order is better' : 'a better order may exist';
  return [
    ...(restraint === null ? [] : restraintText(restraint, job)),
    `Searched ${searched} states: ${best}.`,
  ];
};

type None = Extract<OrderPlan, { readonly none: unknown }>['none'];

const noneText = (none: None, job: OrderJob, start: Standing): readonly string[] => {
  const { searched, rule, atHeight, byN, smallestChange } = none;
  const isStart = rule === 'HOLD' && searched === 1 && atHeight === start.height;
  const head =
    searched === 0
      ? 'No order: what is asked for cannot be.'
      : `None exists (all ${searched} states searched).`;
  const why = isStart
    ? 'Nothing rated holds the set as it stands. Make it hold first, then ask again.'
    : RULE_WORDS[rule];
  const at = atHeight === null ? '' : ` With the batten at ${heightWords(atHeight, job)}.`;
  const by = byN === null ? '' : ` Short by ${sayForce(byN, job.house, 'up')}.`;
  const change =
    smallestChange === null
      ? 'No small change was found after which one exists.'
      : `Smallest change after which one exists: ${changeWords(smallestChange, job)}.`;
  return [
    `${head} ${inHouseWords(why + at, job.house)}${by} [${rule}]`,
    inHouseWords(change, job.house),
  ];
};

const RULE_WORDS: Readonly<Record<BrokenRule, string>> = {
  HOLD: 'Somewhere on every way nothing rated holds the set.',
  REACH: 'Bricks that have to be handled are out of reach of every gallery.',
  STOCK: 'The galleries do not have the bricks that it takes.',
  ROD: 'The bricks are higher than the rods take.',
  TRAVEL: 'The batten does not go where it is wanted.',
  SERVICE: 'The set is out of use, or is to hang on steel of which no rating is given.',
  GOAL: 'It is asked for items, bricks or a height that the set does not have.',
};

const restraintWords = (
  { resists, rated, from, to }: Omit<RestraintNeeded, 'refutedStates'>,
  job: OrderJob,
): string =>
  `something that resists the batten going ${resists}, rated ${sayForce(rated, job.house, 'up')} ` +
  `or more, with the batten from ${heightWords(from, job)} to ${heightWords(to, job)}`;

const restraintText = (restraint: RestraintNeeded, job: OrderJob): readonly string[] => [
  inHouseWords(`RESTRAINT NEEDED: ${restraintWords(restraint, job)}.`, job.house),
  inHouseWords(
    'A wish and not a leave: nobody has checked batten, lift lines, blocks, arbor and anchor at ' +
      `that load. One step less finds no order (${restraint.refutedStates} states searched).`,
    job.house,
  ),
];

const changeWords = (change: SmallestChange, job: OrderJob): string => {
  switch (change.change) {
    case 'restraint':
      return restraintWords(change, job);
    case 'tolerances':
      return `masses known to ${Math.floor(change.share * 100)} % of their tolerances, by weighing`;
    case 'higher':
      return `riggers who reach the batten up to ${heightWords(change.to, job)}`;
    case 'lower':
      return `riggers who reach the batten down to ${heightWords(change.to, job)}`;
    case 'stock':
      return 'enough bricks at the galleries';
    case 'gallery':
      return (
        `bricks handled with the batten from ${heightWords(change.from, job)} to ` +
        `${heightWords(change.to, job)}, where no gallery reaches now`
      );
    case 'rod':
      return `rods that take ${heightWords(change.by, job)} more`;
    default:
      return unreachable(change);
  }
};
