/** How the little drawings are read. */
import { tradeWord } from '#drawings';
import { planningLimitN } from '#rules';
import { sayForce } from '#sheets';
import type { OrderPhysics } from '#state';
import { useWork } from '../reckoning/use-work.ts';

type KeyProps = { readonly physics: OrderPhysics; readonly thicker: number };

export const OrderKey = ({ physics, thicker }: KeyProps) => {
  const { house } = useWork();
  const lock = sayForce(physics.lockLimitN, house, 'down');
  const planning = sayForce(planningLimitN(physics), house, 'down');
  const entries: readonly (readonly [string, string])[] = [
    ['Bracket', 'what holds, each way; restraints are never added up'],
    [
      'Wedge',
      `where the set stands: ${tradeWord(house, 'arborHeavy')} or ` +
        `${tradeWord(house, 'battenHeavy')}, with its doubt as a bar`,
    ],
    [
      'Dashes in it',
      `the rope lock with people in its path, ${planning}; of ${lock} only with its run closed ` +
        'and empty',
    ],
    [
      `Falling ${tradeWord(house, 'brick')}`,
      'what would be set free if nothing held it, to the scale of the drawing',
    ],
    ['Heavy hatch', 'closed to people, a marshal at its edge'],
    [
      'Scale',
      'all heights to one scale, across not' +
        (thicker > 1 ? `; plates drawn ${thicker.toFixed(1)} times as thick as they are` : ''),
    ],
  ];
  return (
    <section aria-labelledby="order-key-head">
      <h2 id="order-key-head">How it is drawn</h2>
      <dl className="order-key">
        {entries.map(([term, words]) => (
          <div key={term}>
            <dt>{term}</dt>
            <dd>{words}</dd>
          </div>
        ))}
      </dl>
    </section>
  );
};
