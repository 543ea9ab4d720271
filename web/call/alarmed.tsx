/** Sets that nothing holds, or of which nobody knows any more: large, in words, at every post. */
import type { CallDocuments } from '#call';
import type { HouseNow } from '#state';
import { Link } from '../address/link.tsx';
import { Glyph } from '../drawing/glyph-view.tsx';
import { useTell } from '../language/use-tell.ts';
import { foundPlace } from './places.ts';
import { pieceOf } from './set-names.ts';
import { alarmedSets } from './tasks.ts';

type AlarmedProps = { readonly now: HouseNow; readonly documents: CallDocuments };

export const Alarmed = ({ now, documents }: AlarmedProps) => {
  const tell = useTell();
  const order = documents.house.lineSets.map(({ id }) => id);
  const all = alarmedSets(now, order);
  if (all.length === 0) return null;
  return (
    <div className="alarmed" role="alert">
      {all.map(({ id, is, set }) => (
        <div key={id} data-is={is}>
          <Glyph name={is === 'unheld' ? 'danger' : 'unknown'} />
          <div>
            <p>
              <b>
                {is === 'unheld'
                  ? tell('Set {id} is NOT HELD', { id })
                  : tell('Set {id} is UNKNOWN', { id })}
              </b>{' '}
              {pieceOf(documents, id) ?? ''}
            </p>
            <p>
              {is === 'unheld'
                ? tell('It breaks {rule}. Only what makes it held is done.', {
                    rule: set.rule ?? '',
                  })
                : tell('{why}. Only measuring and making safe.', { why: set.doubt ?? '' })}{' '}
              <Link to={foundPlace(id)}>{tell('Say how it is found')}</Link>
            </p>
          </div>
        </div>
      ))}
    </div>
  );
};
