/** Who may stand where while work of a kind is done, and the words that anybody may call. */
import type { CheckedOrder } from '#orders';
import type { Restraint, Step } from '#state';
import { message } from '#texts';

/** What one order asks people to stand clear of. */
export const WORKS = [
  'bricks',
  'items',
  'move',
  'resting',
  'outOfBalance',
  'restrained',
  'runaway',
] as const;

export type Work = (typeof WORKS)[number];

/** Source  the-job.md 6.4b; stricter at the rail, where no house says that it has rated cover. */
export const STAND: Readonly<Record<Work, { readonly while: string; readonly who: string }>> = {
  bricks: {
    while: message('Bricks in hand'),
    who: message(
      'Nobody under the gallery edge, at the rail, in the arbor well, on a level below, or below ' +
        'the deck where a trap in the zone is open. Under the batten only deck crew outside the ' +
        'drop zone. On the gallery its lead and its loaders, nobody passing behind them.',
    ),
  },
  items: {
    while: message('Tying on or off'),
    who: message(
      'Deck lead and named riggers, hands beside the tube and not below it. Rail operator at the ' +
        'ringed lock. Hands off bricks, gallery edge closed.',
    ),
  },
  move: {
    while: message('A set moves in balance'),
    who: message(
      'Nobody under the batten; its watcher beside it. Rail operator clear of where the rope ' +
        'falls. On galleries nobody leans over. Nobody below a trap on which the piece lands.',
    ),
  },
  resting: {
    while: message('A piece rests, tilts or lands'),
    who: message(
      'Foot crew beside its foot, never where its head can fall. Hands off bricks while it ' +
        'tilts. Nobody below the deck there.',
    ),
  },
  outOfBalance: {
    while: message('Out-of-balance move'),
    who: message(
      'Nobody under the whole batten, on a gallery below, or below the deck. At the rail and on ' +
        'a gallery only who the permit names, with a way out. Nobody in line with a bull line, ' +
        'or inside the angle at a block that it turns on.',
    ),
  },
  restrained: {
    while: message('A set is left on a restraint'),
    who: message('Nobody works below it. The line is flagged, the lock tagged.'),
  },
  runaway: {
    while: message('Runaway'),
    who: message(
      'Everybody away from batten, arbor well, rail and the line under the head blocks; back ' +
        'from the gallery edge. Nobody tries to stop it.',
    ),
  },
};

export const CALLS: readonly { readonly call: string; readonly means: string }[] = [
  {
    call: message('STOP'),
    means: message(
      'Anybody says it, with the number of the set. All hands keep what they have: no brick, no ' +
        'rope, no piece moves until the lead has said how the set stands.',
    ),
  },
  {
    call: message('RUNAWAY, CLEAR'),
    means: message('Let go of the line and get away from rail and well. Nobody tries to stop it.'),
  },
  {
    call: message('HEADS'),
    means: message('Only for something that falls. Do not look up: get out from under it.'),
  },
];

const workOfStep = ({ act }: Step): readonly Work[] => {
  if (act === 'add' || act === 'remove') return ['bricks'];
  if (act === 'attach' || act === 'release') return ['items'];
  if (act === 'takeUp' || act === 'rest') return ['items', 'resting'];
  if (act === 'hangOnSteel' || act === 'takeOffSteel') return ['items', 'restrained'];
  return act === 'fly' || act === 'ease' ? ['move'] : [];
};

const isForMove = ({ kind }: Pick<Restraint, 'kind'>): boolean => kind !== 'deadHangSteel';

/** Kinds of work in these orders, in the order of `WORKS`; a runaway is always told. */
export const worksIn = (orders: readonly CheckedOrder[]): readonly Work[] => {
  const found = new Set<Work>(['runaway']);
  for (const { steps, verdict } of orders) {
    for (const work of steps.flatMap(workOfStep)) found.add(work);
    for (const { imbalance, limit, standing } of verdict.states) {
      const isHeldOut = standing.restraints.some(isForMove);
      if (imbalance.highN > imbalance.lowN) found.add('resting');
      if (limit === 'nominal' || isHeldOut) found.add('outOfBalance');
      if (isHeldOut) found.add('restrained');
    }
  }
  return WORKS.filter((work) => found.has(work));
};
