/** What the search says of itself. That none exists and that none was found never share words. */
import type { House } from '#house';
import { unreachable } from '#outcome';
import type { BrokenRule, OrderPlan, RestraintNeeded, SmallestChange } from '#sequence';
import type { Standing } from '#state';
import { height, loadMass } from './say-set.ts';
import { sayForce } from './say-standing.ts';
import { inHouseWords } from './trade-translation.ts';

/** Sentences, the one that matters most first; `start` is where the search began. */
export const sayPlan = (plan: OrderPlan, house: House, start: Standing): readonly string[] => {
  if ('stopped' in plan) return [`None found in ${plan.stopped.searched} states: stop and ask.`];
  if ('none' in plan) return noneWords(plan.none, house, start);
  const { searched, optimal, restraint } = plan.found;
  const best = optimal ? 'by its own measure no order is better' : 'a better order may exist';
  return [
    ...(restraint === null ? [] : neededWords(restraint, house)),
    `Searched ${statesWords(searched)}: ${best}.`,
  ];
};

const statesWords = (count: number): string => (count === 1 ? '1 state' : `${count} states`);

type None = Extract<OrderPlan, { readonly none: unknown }>['none'];

const noneWords = (none: None, house: House, start: Standing): readonly string[] => {
  const { searched, rule, atHeight, byN, smallestChange } = none;
  const isStart = rule === 'HOLD' && searched === 1 && atHeight === start.height;
  const head =
    searched === 0
      ? 'No order: what is asked for cannot be.'
      : `None exists (all ${statesWords(searched)} searched).`;
  const isEnd = rule === 'HOLD' && searched === 2 && atHeight !== null;
  const why = isStart
    ? 'Nothing rated holds the set as it stands. Make it hold first, then ask again.'
    : isEnd
      ? 'Nothing rated holds the set as it is to stand in the end, however one comes there.'
      : RULE_WORDS[rule];
  const at = atHeight === null ? '' : ` With the batten at ${height(atHeight, house)}.`;
  const by = byN === null ? '' : ` Short by ${sayForce(byN, house, 'up')}.`;
  const change =
    smallestChange === null
      ? 'No small change was found after which one exists.'
      : `Smallest change after which one exists: ${changeWords(smallestChange, house)}.`;
  return [`${head} ${inHouseWords(why + at, house)}${by} [${rule}]`, inHouseWords(change, house)];
};

const RULE_WORDS: Readonly<Record<BrokenRule, string>> = {
  HOLD: 'Somewhere on every way nothing rated holds the set.',
  REACH: 'Bricks that have to be handled are out of reach of every gallery.',
  STOCK: 'The galleries do not have the bricks that it takes.',
  ROD: 'The bricks are higher than the rods take.',
  MASS: 'The bricks are heavier than the arbor may carry.',
  TRAVEL: 'The batten does not go where it is wanted.',
  SERVICE: 'The set is out of use, or is to hang on steel of which no rating is given.',
  GOAL: 'It is asked for items, bricks or a height that the set does not have.',
};

const wantedWords = (
  { resists, rated, from, to }: Omit<RestraintNeeded, 'refutedStates'>,
  house: House,
): string =>
  `something that resists the batten going ${resists}, rated ${sayForce(rated, house, 'up')} ` +
  `or more, with the batten from ${height(from, house)} to ${height(to, house)}`;

const neededWords = (restraint: RestraintNeeded, house: House): readonly string[] => [
  inHouseWords(`RESTRAINT NEEDED: ${wantedWords(restraint, house)}.`, house),
  inHouseWords(
    'A wish and not a leave: it waits for batten, lift lines, blocks, arbor, line and anchor to ' +
      'be checked at that load. ' +
      `One step less finds no order (${statesWords(restraint.refutedStates)} searched).`,
    house,
  ),
];

const changeWords = (change: SmallestChange, house: House): string => {
  switch (change.change) {
    case 'restraint':
      return wantedWords(change, house);
    case 'tolerances':
      return `masses known to ${Math.floor(change.share * 100)} % of their tolerances, by weighing`;
    case 'higher':
      return `riggers who reach the batten up to ${height(change.to, house)}`;
    case 'lower':
      return `riggers who reach the batten down to ${height(change.to, house)}`;
    case 'stock':
      return 'enough bricks at the galleries';
    case 'gallery':
      return (
        `bricks handled with the batten from ${height(change.from, house)} to ` +
        `${height(change.to, house)}, where no gallery reaches now`
      );
    case 'rod':
      return `rods that take ${height(change.by, house)} more`;
    case 'arbor':
      return `an arbor that may weigh ${loadMass(change.by, house)} more`;
    default:
      return unreachable(change);
  }
};
