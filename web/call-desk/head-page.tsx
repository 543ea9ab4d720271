/** The head flyman's overview, read at arm's length: what nothing holds and nobody knows first. */
import { Link } from '../address/link.tsx';
import { Glyph } from '../drawing/glyph-view.tsx';
import { useTell, useTellCount, useVoice } from '../language/use-tell.ts';
import { byShowOf } from './closing.ts';
import { setPlace } from './desk-parts.ts';
import { platesCounted } from './desk-words.ts';
import { firstSets, isTallyOff, type SetInCall, tallyOf } from './first-sets.ts';
import { HousePart } from './house-part.tsx';
import { SetName } from './set-name.tsx';
import { SetWarnings, SetWork } from './set-state.tsx';
import { StopsPart } from './stops-part.tsx';
import { type OpenDesk, setOnDesk } from './use-desk.ts';
import { WaitsPart } from './waits-part.tsx';

type PageProps = { readonly open: OpenDesk };

export const HeadPage = ({ open }: PageProps) => {
  const tell = useTell();
  const { now, work, names, here, isLive } = open;
  const first = firstSets(
    now,
    work.sets.map(({ id }) => id),
  );
  return (
    <>
      <h1>{tell('Overview of the call')}</h1>
      <StopsPart now={now} names={names} posts={here.posts} isLive={isLive} />
      <WaitsPart open={open} />
      <Sets open={open} title={tell('Not held')} sets={first.unheld} />
      <Sets open={open} title={tell('Unknown')} sets={first.doubted} />
      <section className="call-part" aria-labelledby="worked-head">
        <h2 id="worked-head">{tell('Worked now')}</h2>
        {first.worked.length === 0 ? <p>{tell('No set is worked.')}</p> : null}
        {first.worked.map((each) => (
          <OneSet key={each.id} open={open} {...each} />
        ))}
        <PlanSet open={open} />
      </section>
      <Sets open={open} title={tell('Begun, and no order stands')} sets={first.begun} />
      <Sets open={open} title={tell('With a tag')} sets={first.tagged} />
      <NeverKnown ids={first.neverKnown} />
      <HousePart open={open} />
    </>
  );
};

type SetsProps = PageProps & { readonly title: string; readonly sets: readonly SetInCall[] };

const Sets = ({ open, title, sets }: SetsProps) =>
  sets.length === 0 ? null : (
    <section className="call-part" aria-label={title}>
      <h2>{title}</h2>
      {sets.map((each) => (
        <OneSet key={each.id} open={open} {...each} />
      ))}
    </section>
  );

const OneSet = ({ open, id }: PageProps & SetInCall) => {
  const desk = setOnDesk(open, id);
  if (desk === null) return null;
  return (
    <div className="call-block">
      <SetName each={desk.each} />
      <SetWarnings desk={desk} />
      <SetWork desk={desk} />
      <TallyWords open={open} id={id} />
    </div>
  );
};

/** Plates against the plan: a difference that no work will mend stops the set. */
const TallyWords = ({ open: { now, work }, id }: PageProps & { readonly id: string }) => {
  const tell = useTell();
  const voice = useVoice();
  const set = now.sets[id];
  const each = work.sets.find((one) => one.id === id);
  if (set === undefined || each === undefined) return null;
  const tally = tallyOf(set, byShowOf(each));
  if (tally === null) return null;
  const { on, atEnd, byShow } = tally;
  const names = { on: platesCounted(on, voice), atEnd: atEnd ?? '', byShow: byShow ?? '' };
  const planned = [
    ...(atEnd === null ? [] : [tell('{atEnd} when the order is done', names)]),
    ...(byShow === null ? [] : [tell('{byShow} by the show', names)]),
  ];
  const isOff = isTallyOff(tally, set);
  return (
    <p className={isOff ? 'call-tally caution-word' : 'call-tally'}>
      <Glyph name={isOff ? 'caution' : 'counted'} />
      {[tell('{on} on the arbor', names), ...planned].join(', ')}
      {isOff ? ` ${tell('The counts differ: stop here, and count it again.')}` : ''}
    </p>
  );
};

/** Another set is taken up from its own screen, where the order is worked out and told. */
const PlanSet = ({ open: { work, now } }: PageProps) => {
  const tell = useTell();
  const ready = work.sets.filter(({ id }) => {
    const set = now.sets[id];
    return set !== undefined && set.standing !== null && set.plan === null && set.leave === null;
  });
  return (
    <details className="call-more">
      <summary>{tell('Take up another set')}</summary>
      <ul className="call-links">
        {ready.map(({ id, set }) => (
          <li key={id}>
            <Link to={setPlace(id)}>
              {id} {set.hang?.name ?? tell('empty by the plan')}
            </Link>
          </li>
        ))}
      </ul>
    </details>
  );
};

const NeverKnown = ({ ids }: { readonly ids: readonly string[] }) => {
  const tell = useTell();
  const tellCount = useTellCount();
  if (ids.length === 0) return null;
  return (
    <details className="call-more">
      <summary>
        {tellCount(ids.length, [
          '{count} set that nobody has looked at yet: UNKNOWN',
          '{count} sets that nobody has looked at yet: UNKNOWN',
        ])}
      </summary>
      <p className="call-links">
        {ids.map((id) => (
          <Link key={id} to={setPlace(id)} name={tell('Set {id}', { id })}>
            {id}
          </Link>
        ))}
      </p>
    </details>
  );
};
