/** Who is at which post and what they have said; which zones are closed, by whom, since when. */
import type { CallDocuments } from '#call';
import type { HouseNow } from '#state';
import { clockWords, postWords } from '../call-desk/desk-words.ts';
import { useTell } from '../language/use-tell.ts';

type ConfirmedProps = { readonly now: HouseNow; readonly documents: CallDocuments };

export const Confirmed = ({ now, documents }: ConfirmedProps) => {
  const tell = useTell();
  const { house } = documents;
  const zoneOf = (zone: HouseNow['zones'][number]['zone']): string =>
    zone.zone === 'run'
      ? tell('run')
      : tell('under {gallery}', {
          gallery: postWords(`gallery:${zone.gallery}`, house),
        });
  const list = (isClear: boolean): string => {
    const some = Object.entries(now.posts).filter(([, post]) => post.isClear === isClear);
    const words = some.map(([post]) => postWords(post, house));
    return words.length === 0 ? tell('nobody') : words.join(', ');
  };
  return (
    <aside className="confirmed" aria-label={tell('Who is where')}>
      <ul>
        {now.zones.map(({ zone, set, post, sinceMs }) => (
          <li key={`${set} ${JSON.stringify(zone)}`}>
            <span>
              <b>{tell('Closed, set {set}:', { set })}</b> {zoneOf(zone)}
              {now.posts[post] === undefined ? `, ${tell('no marshal')}` : ''}
            </span>
            <i>{clockWords(sinceMs)}</i>
          </li>
        ))}
      </ul>
      <p>
        <b>{tell('Clear:')}</b> {list(true)}
      </p>
      <p>
        <b>{tell('At their post:')}</b> {list(false)}
      </p>
    </aside>
  );
};
