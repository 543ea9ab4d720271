/** The set that a finger took in the drawing: what hangs on it, where, and the ways on. */
import { type HouseMoment, lowestOf } from '#assessment';
import { upstageOf } from '#drawings';
import { Link } from '../address/link.tsx';
import { useTell } from '../language/use-tell.ts';
import { useSet, useWork } from '../reckoning/use-work.ts';
import { lengthWords } from './length-words.ts';

type InHandProps = { readonly moment: HouseMoment; readonly id: string | null };

export const SetInHand = ({ moment, id }: InHandProps) => {
  const tell = useTell();
  const { house } = useWork();
  const each = useSet(id ?? '');
  if (id === null || each === undefined) return null;
  const { set } = each;
  const now = moment.sets.get(id) ?? { heightM: null, items: null };
  const names = (set.hang?.items ?? []).filter((item) => now.items?.includes(item.id));
  const hangs =
    now.items === null
      ? tell('not recorded')
      : names.length === 0
        ? tell('nothing')
        : names.map(({ name }) => name).join(', ');
  return (
    <section
      className="in-hand-now"
      aria-live="polite"
      aria-label={tell('Set {id} in hand', { id })}
    >
      <h2>{tell('set {id}, {name}', { id, name: set.hang?.name ?? tell('empty') })}</h2>
      <dl className="step-rows">
        <div>
          <dt>{tell('batten at')}</dt>
          <dd>{lengthWords(now.heightM, house)}</dd>
        </div>
        <div>
          <dt>{tell('lowest point at')}</dt>
          <dd>{lengthWords(lowestOf(set, now), house)}</dd>
        </div>
        <div>
          <dt>{tell('upstage')}</dt>
          <dd>{lengthWords(upstageOf(set), house)}</dd>
        </div>
        <div>
          <dt>{tell('on it')}</dt>
          <dd>{hangs}</dd>
        </div>
      </dl>
      <p className="in-hand-ways">
        <Link to={{ kind: 'set', set: id }}>{tell('Set {id} whole', { id })}</Link>
        <Link to={{ kind: 'order', set: id, job: null, from: null }}>
          {tell('Its order of work')}
        </Link>
      </p>
    </section>
  );
};
