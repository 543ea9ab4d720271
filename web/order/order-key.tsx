/** How the little drawings are read. */
import { decimalMarkOf } from '#quantities';
import { planningLimitN } from '#rules';
import { sayForce } from '#sheets';
import type { OrderPhysics } from '#state';
import { useTell } from '../language/use-tell.ts';
import { useWork } from '../reckoning/use-work.ts';

type KeyProps = { readonly physics: OrderPhysics; readonly thicker: number };

export const OrderKey = ({ physics, thicker }: KeyProps) => {
  const tell = useTell();
  const { house } = useWork();
  const lock = sayForce(physics.lockLimitN, house, 'down');
  const planning = sayForce(planningLimitN(physics), house, 'down');
  const times = thicker.toFixed(1).replace('.', decimalMarkOf(house));
  const entries: readonly (readonly [string, string])[] = [
    [tell('Bracket'), tell('what holds, each way; restraints are never added up')],
    [
      tell('Wedge'),
      tell('where the set stands: arbor heavy or batten heavy, with its doubt as a bar'),
    ],
    [
      tell('Dashes in it'),
      tell(
        'the rope lock with people in its path, {planning}; of {lock} only with its run closed ' +
          'and empty',
        { planning, lock },
      ),
    ],
    [
      tell('Falling brick'),
      tell('what would be set free if nothing held it, to the scale of the drawing'),
    ],
    [tell('Heavy hatch'), tell('closed to people, a marshal at its edge')],
    [
      tell('Scale'),
      thicker > 1
        ? tell(
            'all heights to one scale, across not; plates drawn {times} times as thick as they are',
            { times },
          )
        : tell('all heights to one scale, across not'),
    ],
  ];
  return (
    <section aria-labelledby="order-key-head">
      <h2 id="order-key-head">{tell('How it is drawn')}</h2>
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
