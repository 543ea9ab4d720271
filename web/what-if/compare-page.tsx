/** Two hangs side by side: two sets of this show, or one set in another show or house. */
import { useId, useMemo } from 'react';
import { inVoice, phrase } from '#texts';
import type { Place } from '../address/address.ts';
import { Link } from '../address/link.tsx';
import { go } from '../address/use-address.ts';
import { useAsked } from '../documents/asked.ts';
import { Notice } from '../frame/notice.tsx';
import { TitleBlock } from '../frame/title-block.tsx';
import { askRevision, askRevisions } from '../keeping/server.ts';
import { useKeeperState } from '../keeping/use-keeper.ts';
import { useTell } from '../language/use-tell.ts';
import { inView } from '../reckoning/in-view.ts';
import { type Documents, type Reckoning, reckon, type SetReckoning } from '../reckoning/reckon.ts';
import { useWork } from '../reckoning/use-work.ts';
import { ChecksApart, DrawnApart, FiguresApart, type Labels, noPlanWords } from './apart-view.tsx';
import { otherKey, othersToCompare } from './others.ts';
import type { Side } from './side-rows.ts';

export type ComparePlace = Extract<Place, { readonly kind: 'compare' }>;

type Other =
  | { readonly is: 'waiting' }
  | { readonly is: 'here'; readonly reckoning: Reckoning }
  | { readonly is: 'missing'; readonly why: string };

type Shown = { readonly id: string; readonly documents: Documents };

/** The documents of the other show as they stand now, and the name it is kept under. */
const useShown = ({ show, house }: ComparePlace): Shown | null => {
  const work = useWork();
  const state = useKeeperState();
  return useMemo(() => {
    if (show === null) return { id: work.kept.show.id, documents: work.documents };
    if (state.phase !== 'open') return null;
    const found = inView(state, { place: { kind: 'hangList' }, house, show });
    if ('missing' in found) return null;
    const documents = {
      house: found.house.document,
      show: found.show.document,
      state: found.state?.document ?? null,
    };
    return { id: found.show.id, documents };
  }, [state, house, show, work.kept.show.id, work.documents]);
};

/** The other show, now or at a revision, reckoned for this page only. */
const useOther = (place: ComparePlace): Other => {
  const work = useWork();
  const shown = useShown(place);
  const { revision } = place;
  const id = shown?.id ?? '';
  const old = useAsked(`${id} ${revision}`, async () =>
    revision === null || id === '' ? null : (await askRevision(id, revision)).document,
  );
  const raw = old.is === 'here' ? old.value : null;
  const read = useMemo(() => {
    if (shown === null || (revision !== null && raw === null)) return null;
    const { documents } = shown;
    return reckon({ ...documents, show: raw ?? documents.show }, work.nowMs);
  }, [shown, revision, raw, work.nowMs]);
  if (shown === null) {
    const why = phrase(work.house, 'there is no show {show} here', { show: place.show ?? '' });
    return { is: 'missing', why };
  }
  if (place.show === null && revision === null) return { is: 'here', reckoning: work };
  if (old.is === 'failed') return { is: 'missing', why: old.title };
  if (read === null) return { is: 'waiting' };
  if (!read.ok) {
    const document = inVoice(work.house, read.error.document);
    const why = phrase(work.house, 'the {document} is not understood as it was then', {
      document,
    });
    return { is: 'missing', why };
  }
  const { tongue } = work.house;
  return { is: 'here', reckoning: { ...read.value, house: { ...read.value.house, tongue } } };
};

export const ComparePage = ({ place }: { readonly place: ComparePlace }) => {
  const tell = useTell();
  const work = useWork();
  const other = useOther(place);
  const one = work.sets.find(({ id }) => id === place.set);
  return (
    <>
      <div className="page-head">
        <h1>{tell('Two hangs compared')}</h1>
        <p className="quiet">
          {tell('As planned, each by its own show and house. Nothing is changed here.')}
        </p>
      </div>
      <Choose place={place} />
      {one === undefined || place.other === null ? (
        <Notice degree="note" title={tell('Choose what to lay beside it.')}>
          <p>
            {tell('Another set of this show, a set of another show, or this one as it was before.')}
          </p>
        </Notice>
      ) : (
        <Beside place={place} one={one} other={other} />
      )}
      <TitleBlock
        drawing={tell('Two hangs compared')}
        scale={tell('one height for all drawings')}
      />
    </>
  );
};

type BesideProps = {
  readonly place: ComparePlace;
  readonly one: SetReckoning;
  readonly other: Other;
};

const Beside = ({ place, one, other }: BesideProps) => {
  const tell = useTell();
  const work = useWork();
  if (other.is === 'waiting') return <p role="status">{tell('Fetching the other show …')}</p>;
  if (other.is === 'missing') return <Notice degree="caution" title={other.why} />;
  const { reckoning } = other;
  const another = reckoning.sets.find(({ id }) => id === place.other);
  if (another === undefined) {
    return (
      <Notice
        degree="caution"
        title={tell('that house has no set {id}', { id: place.other ?? '' })}
      />
    );
  }
  return (
    <Both
      one={{ set: one.set, house: work.house }}
      other={{ set: another.set, house: reckoning.house }}
      labels={labelsOf(place, work, reckoning)}
      findings={[one.findings, another.findings]}
    />
  );
};

const labelsOf = (place: ComparePlace, work: Reckoning, other: Reckoning): Labels => {
  const show = place.show === null ? [] : [other.show.name];
  const house = other.house.id === work.house.id ? [] : [other.house.name];
  const voice = work.house;
  const revision =
    place.revision === null
      ? []
      : [phrase(voice, 'revision {revision}', { revision: place.revision })];
  const setWords = (id: string): string => phrase(voice, 'set {id}', { id });
  const words = [setWords(place.other ?? ''), ...show, ...house, ...revision].join(', ');
  const one = setWords(place.set);
  const isSame = place.other === place.set && words === one;
  return { one, other: isSame ? phrase(voice, '{set} again', { set: words }) : words };
};

const Choose = ({ place }: { readonly place: ComparePlace }) => {
  const tell = useTell();
  const ids = useId();
  const work = useWork();
  const state = useKeeperState();
  const others = state.phase === 'open' ? othersToCompare(state, work) : [];
  return (
    <div className="compare-choice">
      <div className="piece-field">
        <label htmlFor={`${ids}-one`}>{tell('This set')}</label>
        <select
          id={`${ids}-one`}
          value={place.set}
          onChange={({ target }) => go({ ...place, set: target.value }, { replace: true })}
        >
          {work.sets.map(({ id, set }) => (
            <option key={id} value={id}>
              {id}, {set.hang?.name ?? tell('empty')}
            </option>
          ))}
        </select>
      </div>
      <div className="piece-field">
        <label htmlFor={`${ids}-other`}>{tell('Beside it')}</label>
        <select
          id={`${ids}-other`}
          value={otherKey(place)}
          onChange={({ target }) => {
            const chosen = others
              .flatMap(({ sets }) => sets)
              .find((each) => otherKey(each) === target.value);
            if (chosen !== undefined) {
              const { other, show, house } = chosen;
              go({ ...place, other, show, house, revision: null }, { replace: true });
            }
          }}
        >
          <option value="">{tell('choose …')}</option>
          {others.map(({ title, sets }) => (
            <optgroup key={title} label={title}>
              {sets.map((each) => (
                <option key={otherKey(each)} value={otherKey(each)}>
                  {each.other}, {each.name}
                </option>
              ))}
            </optgroup>
          ))}
        </select>
      </div>
      <RevisionChoice place={place} />
      <p>
        <Link to={{ kind: 'set', set: place.set }}>{tell('To set {id}', { id: place.set })}</Link>
      </p>
    </div>
  );
};

/** The other hang as it stands now, or as it was saved before. */
const RevisionChoice = ({ place }: { readonly place: ComparePlace }) => {
  const tell = useTell();
  const id = useId();
  const shown = useShown(place);
  const kept = shown?.id ?? '';
  const asked = useAsked(kept, async () => (kept === '' ? [] : askRevisions(kept)));
  const revisions = asked.is === 'here' ? asked.value : [];
  return (
    <div className="piece-field">
      <label htmlFor={id}>{tell('As it stands')}</label>
      <select
        id={id}
        value={place.revision ?? ''}
        disabled={place.other === null}
        onChange={({ target }) => {
          const revision = target.value === '' ? null : Number(target.value);
          go({ ...place, revision }, { replace: true });
        }}
      >
        <option value="">{tell('now')}</option>
        {revisions.map(({ revision, savedBy, why, remark }) => (
          <option key={revision} value={revision}>
            {tell('revision {revision}, {savedBy}: {why}', {
              revision,
              savedBy,
              why: (remark || why).slice(0, 60),
            })}
          </option>
        ))}
      </select>
    </div>
  );
};

type BothProps = {
  readonly one: Side;
  readonly other: Side;
  readonly labels: Labels;
  readonly findings: readonly [Reckoning['findings'], Reckoning['findings']];
};

const Both = ({ one, other, labels, findings: [before, after] }: BothProps) => {
  const { house } = useWork();
  const missing = [one, other].map(noPlanWords).filter((words) => words !== null);
  return (
    <>
      {missing.map((words) => (
        <Notice key={words} degree="caution" title={words} />
      ))}
      <DrawnApart one={one} other={other} labels={labels} />
      <FiguresApart one={one} other={other} labels={labels} reader={house} />
      <ChecksApart
        before={before.map(withoutPlace)}
        after={after.map(withoutPlace)}
        house={house}
        id="compare-checks"
        labels={labels}
      />
    </>
  );
};

/** Two sets are two places: what counts is which rule speaks, and not of which set. */
const withoutPlace = (finding: Reckoning['findings'][number]): Reckoning['findings'][number] => {
  const { set: _set, item: _item, ...at } = finding.at;
  return { ...finding, at };
};
