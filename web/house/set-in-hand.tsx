/** The set that a finger took in the drawing: what hangs on it, where, and the ways on. */
import { type HouseMoment, lowestOf } from '#assessment';
import { tradeWord, upstageOf } from '#drawings';
import { Link } from '../address/link.tsx';
import { useSet, useWork } from '../reckoning/use-work.ts';
import { lengthWords } from './length-words.ts';

type InHandProps = { readonly moment: HouseMoment; readonly id: string | null };

export const SetInHand = ({ moment, id }: InHandProps) => {
  const { house } = useWork();
  const each = useSet(id ?? '');
  if (id === null || each === undefined) return null;
  const { set } = each;
  const now = moment.sets.get(id) ?? { heightM: null, items: null };
  const names = (set.hang?.items ?? []).filter((item) => now.items?.includes(item.id));
  const hangs =
    now.items === null
      ? 'not recorded'
      : names.length === 0
        ? 'nothing'
        : names.map(({ name }) => name).join(', ');
  return (
    <section className="in-hand-now" aria-live="polite" aria-label={`Set ${id} in hand`}>
      <h2>
        {tradeWord(house, 'set')} {id}, {set.hang?.name ?? 'empty'}
      </h2>
      <dl className="step-rows">
        <div>
          <dt>{tradeWord(house, 'batten')} at</dt>
          <dd>{lengthWords(now.heightM, house)}</dd>
        </div>
        <div>
          <dt>lowest point at</dt>
          <dd>{lengthWords(lowestOf(set, now), house)}</dd>
        </div>
        <div>
          <dt>upstage</dt>
          <dd>{lengthWords(upstageOf(set), house)}</dd>
        </div>
        <div>
          <dt>on it</dt>
          <dd>{hangs}</dd>
        </div>
      </dl>
      <p className="in-hand-ways">
        <Link to={{ kind: 'set', set: id }}>Set {id} whole</Link>
        <Link to={{ kind: 'order', set: id, job: null, from: null }}>Its order of work</Link>
      </p>
    </section>
  );
};
