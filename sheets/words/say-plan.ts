/** What the search says of itself. That none exists and that none was found never share words. */

import type { House } from '#house';
import { unreachable } from '#outcome';
import type { BrokenRule, OrderPlan, RestraintNeeded, SmallestChange } from '#sequence';
import type { Standing } from '#state';
import { message, phrase, phraseCount } from '#texts';
import { height, loadMass } from './say-set.ts';
import { sayForce } from './say-standing.ts';

/** Sentences, the one that matters most first; `start` is where the search began. */
export const sayPlan = (plan: OrderPlan, house: House, start: Standing): readonly string[] => {
  if ('stopped' in plan)
    return [
      phrase(house, 'None found in {searched} states: stop and ask.', {
        searched: plan.stopped.searched,
      }),
    ];
  if ('none' in plan) return noneWords(plan.none, house, start);
  const { searched, optimal, restraint } = plan.found;
  const best = optimal
    ? phrase(house, 'by its own measure no order is better')
    : phrase(house, 'a better order may exist');
  return [
    ...(restraint === null ? [] : neededWords(restraint, house)),
    phrase(house, 'Searched {states}: {best}.', { states: statesWords(searched, house), best }),
  ];
};

const statesWords = (count: number, house: House): string =>
  phraseCount(house, count, ['{count} state', '{count} states']);

type None = Extract<OrderPlan, { readonly none: unknown }>['none'];

const noneWords = (none: None, house: House, start: Standing): readonly string[] => {
  const { searched, rule, atHeight, byN, smallestChange } = none;
  const isStart = rule === 'HOLD' && searched === 1 && atHeight === start.height;
  const head =
    searched === 0
      ? phrase(house, 'No order: what is asked for cannot be.')
      : phrase(house, 'None exists (all {states} searched).', {
          states: statesWords(searched, house),
        });
  const isEnd = rule === 'HOLD' && searched === 2 && atHeight !== null;
  const why = isStart
    ? phrase(house, 'Nothing rated holds the set as it stands. Make it hold first, then ask again.')
    : isEnd
      ? phrase(
          house,
          'Nothing rated holds the set as it is to stand in the end, however one comes there.',
        )
      : phrase(house, RULE_WORDS[rule]);
  const at =
    atHeight === null
      ? ''
      : phrase(house, ' With the batten at {atHeight}.', { atHeight: height(atHeight, house) });
  const by =
    byN === null ? '' : phrase(house, ' Short by {byN}.', { byN: sayForce(byN, house, 'up') });
  const change =
    smallestChange === null
      ? phrase(house, 'No small change was found after which one exists.')
      : phrase(house, 'Smallest change after which one exists: {change}.', {
          change: changeWords(smallestChange, house),
        });
  return [`${head} ${why}${at}${by} [${rule}]`, change];
};

const RULE_WORDS: Readonly<Record<BrokenRule, string>> = {
  HOLD: message('Somewhere on every way nothing rated holds the set.'),
  REACH: message('Bricks that have to be handled are out of reach of every gallery.'),
  STOCK: message('The galleries do not have the bricks that it takes.'),
  ROD: message('The bricks are higher than the rods take.'),
  MASS: message('The bricks are heavier than the arbor may carry.'),
  TRAVEL: message('The batten does not go where it is wanted.'),
  SERVICE: message('The set is out of use, or is to hang on steel of which no rating is given.'),
  GOAL: message('It is asked for items, bricks or a height that the set does not have.'),
};

const GOING = { in: message('in'), out: message('out') } as const;

const wantedWords = (
  { resists, rated, from, to }: Omit<RestraintNeeded, 'refutedStates'>,
  house: House,
): string =>
  phrase(
    house,
    'something that resists the batten going {resists}, rated {rated} ' +
      'or more, with the batten from {from} to {to}',
    {
      resists: phrase(house, GOING[resists]),
      rated: sayForce(rated, house, 'up'),
      from: height(from, house),
      to: height(to, house),
    },
  );

const neededWords = (restraint: RestraintNeeded, house: House): readonly string[] => [
  phrase(house, 'RESTRAINT NEEDED: {wanted}.', { wanted: wantedWords(restraint, house) }),
  phrase(
    house,
    'A wish and not a leave: it waits for batten, lift lines, blocks, arbor, line and anchor to ' +
      'be checked at that load. One step less finds no order ({states} searched).',
    { states: statesWords(restraint.refutedStates, house) },
  ),
];

const changeWords = (change: SmallestChange, house: House): string => {
  switch (change.change) {
    case 'restraint':
      return wantedWords(change, house);
    case 'tolerances':
      return phrase(house, 'masses known to {floor} % of their tolerances, by weighing', {
        floor: Math.floor(change.share * 100),
      });
    case 'higher':
      return phrase(house, 'riggers who reach the batten up to {to}', {
        to: height(change.to, house),
      });
    case 'lower':
      return phrase(house, 'riggers who reach the batten down to {to}', {
        to: height(change.to, house),
      });
    case 'stock':
      return phrase(house, 'enough bricks at the galleries');
    case 'gallery':
      return phrase(
        house,
        'bricks handled with the batten from {from} to {to}, where no gallery reaches now',
        { from: height(change.from, house), to: height(change.to, house) },
      );
    case 'rod':
      return phrase(house, 'rods that take {by} more', { by: height(change.by, house) });
    case 'arbor':
      return phrase(house, 'an arbor that may weigh {by} more', { by: loadMass(change.by, house) });
    default:
      return unreachable(change);
  }
};
