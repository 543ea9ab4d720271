/** The house apart from its sets: bricks on the galleries, closed zones, and sheets to print. */
import type { Gallery } from '#house';
import { zoneName } from '#sheets';
import { message } from '#texts';
import { Link } from '../address/link.tsx';
import { Glyph } from '../drawing/glyph-view.tsx';
import { useTell, useVoice } from '../language/use-tell.ts';
import { CountForm } from './count-form.tsx';
import { setPlace } from './desk-parts.ts';
import { momentWords, postWords, titleWordsOf } from './desk-words.ts';
import { SheetLinks } from './sheet-links.tsx';
import type { OpenDesk } from './use-desk.ts';
import { useNow } from './use-now.ts';

type PartProps = { readonly open: OpenDesk };

export const HousePart = ({ open }: PartProps) => (
  <>
    <Zones open={open} />
    <Galleries open={open} />
    <Papers />
  </>
);

const Zones = ({ open: { now, house } }: PartProps) => {
  const tell = useTell();
  const voice = useVoice();
  const nowMs = useNow();
  return (
    <section className="call-part" aria-labelledby="zones-head">
      <h2 id="zones-head">{tell('Zones closed')}</h2>
      {now.zones.length === 0 ? <p>{tell('No zone is closed.')}</p> : null}
      <ul className="call-lines">
        {now.zones.map(({ zone, set, post, sinceMs }) => {
          const marshal = now.posts[post];
          const words = titleWordsOf({ house, set, nameOf: (item) => item });
          return (
            <li key={`${set} ${JSON.stringify(zone)}`}>
              <Glyph name="zoneClosed" />{' '}
              {tell(
                zone.zone === 'run'
                  ? message('{zone}, since {moment}')
                  : message('{zone}, for set {set}, since {moment}'),
                { zone: zoneName(zone, words), set, moment: momentWords(sinceMs, nowMs, voice) },
              )}
              {': '}
              {marshal === undefined ? (
                <b className="caution-word">
                  {tell('NO MARSHAL at the post, so it counts as open')}
                </b>
              ) : (
                tell('{post}, {name}', { post: postWords(post, house), name: marshal.name })
              )}
            </li>
          );
        })}
      </ul>
    </section>
  );
};

const Galleries = ({ open }: PartProps) => {
  const tell = useTell();
  const { house } = open;
  if (house.galleries.length === 0) return null;
  return (
    <section className="call-part" aria-labelledby="galleries-head">
      <h2 id="galleries-head">{tell('Loose bricks on the galleries')}</h2>
      {house.galleries.map((gallery) => (
        <OneGallery key={gallery.id} open={open} gallery={gallery} />
      ))}
    </section>
  );
};

type GalleryProps = PartProps & { readonly gallery: Gallery };

const OneGallery = ({ open, gallery }: GalleryProps) => {
  const tell = useTell();
  const voice = useVoice();
  const nowMs = useNow();
  const { now, house, names, isLive, post } = open;
  const there = now.galleries[gallery.id];
  const by = there?.countedBy ?? null;
  const busy = Object.entries(now.sets).flatMap(([id, { leave }]) =>
    leave !== null && 'gallery' in leave.step && leave.step.gallery === gallery.id ? [id] : [],
  );
  return (
    <div className="call-block">
      <h3>{gallery.name}</h3>
      <p>
        {house.brickKinds
          .map(({ id, name }) => {
            const count = there?.stock[id];
            return count === undefined
              ? tell('{name}: not counted', { name })
              : tell('{name}: {count}', { name, count });
          })
          .join('; ')}
      </p>
      <p className="quiet">
        {there?.countedMs == null
          ? tell('Nobody has counted.')
          : tell('Counted {moment}, {by}; since then as bricks were told on and off.', {
              moment: momentWords(there.countedMs, nowMs, voice),
              by: by === null ? tell('nobody named') : (names[by] ?? by),
            })}
      </p>
      {busy.map((id) => (
        <p key={id}>
          {tell('Bricks in hand for set {id}', { id })}{' '}
          <Link to={setPlace(id)}>{tell('Set {id}', { id })}</Link>
        </p>
      ))}
      <details className="call-more">
        <summary>{tell('Count it anew')}</summary>
        <CountForm gallery={gallery} now={now} house={house} isLive={isLive} post={post} />
      </details>
    </div>
  );
};

const Papers = () => {
  const tell = useTell();
  return (
    <section className="call-part" aria-labelledby="papers-head">
      <h2 id="papers-head">{tell('On paper')}</h2>
      <SheetLinks />
    </section>
  );
};
