import { measure } from '#findings';
import { purchaseOf } from '#house';
import { GRAVITY } from '#quantities';
import { readCurve } from '../balance/curve-reading.ts';
import { byKnown, lack } from '../known-values.ts';
import { raise } from '../raise.ts';
import type { Opinion, SetCase, SetRule } from '../rule.ts';
import { term, workedOut } from '../show-working.ts';
import { hangingLoomKg, loomsOf } from './looms.ts';

/**
 * KIN-002: a set with an arbor that steel holds. The lock and the arbor do not hold it, whatever
 * their numbers say, and it goes by as much as it is out of balance the moment the steel lets go:
 * its bricks go on before the steel comes off.
 */
export const heldBySteel: SetRule = (the) => {
  const { hang, lineSet } = the.set;
  if (hang === null || hang.deadHungAt === null) return [];
  if (purchaseOf(lineSet.suspension) === null) return [];
  return byKnown(hang.deadHungAt, 'height at which it is dead-hung', BLOCKS, (heightM) =>
    judgeAt(the, heightM),
  );
};

const BLOCKS = 'imbalance if the steel lets go';

const judgeAt = (the: SetCase, heightM: number): readonly Opinion[] => {
  const { hang, hung, bare, lineSet } = the.set;
  // A mass that is not known is missed by UNK-001.
  if (hang === null || !hung.known || !bare.known) return [];
  const { looms, lacks } = loomsOf(hang.items);
  const show = showBricks(the);
  const bareReading = readCurve(bare.value.curve, heightM, 'above');
  if (bareReading === null || lacks.length > 0 || show.lacks.length > 0) {
    return [...lacks, ...show.lacks];
  }
  const { purchase } = bare.value.set;
  const loomKg = looms.reduce((sum, loom) => sum + hangingLoomKg(loom, heightM), 0);
  const hungKg = hung.value.withoutLoom + loomKg;
  const looseN = bareReading.imbalanceN + GRAVITY * (hungKg - show.massKg / purchase);
  return [
    raise('KIN-002', {
      at: { set: lineSet.id, heightM },
      measured: measure(looseN, 'imbalance'),
      facts: { height: measure(heightM, 'length') },
      working: workedOut(
        'Imbalance without the steel',
        'U_0 + C − b / r',
        [
          term('U_0', 'bare set at this height', bareReading.imbalanceN, 'imbalance'),
          term('C', 'all that hangs', hungKg, 'mass'),
          term('b', 'show bricks on the arbor', show.massKg, 'mass'),
          term('r', 'batten travel over arbor travel', purchase, 'count'),
        ],
        term('U', 'imbalance without the steel', looseN, 'imbalance'),
        { source: 'trade formula C15', omits: 'what the steel itself leaves in the lines' },
      ),
    }),
  ];
};

/** Mass of the show bricks that a person fixed for the set; none where nobody fixed any. */
const showBricks = ({ house, set: { hang } }: SetCase) => {
  let massKg = 0;
  const lacks = [];
  for (const [kind, count] of Object.entries(hang?.bricks?.counts ?? {})) {
    const mass = house.brickKinds.find(({ id }) => id === kind)?.mass;
    if (mass?.known === true) massKg += count * mass.value;
    else lacks.push(lack(`mass of brick ${kind}`, BLOCKS));
  }
  return { massKg, lacks };
};
