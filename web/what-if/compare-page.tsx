/** Two hangs side by side: two sets of this show, or one set in another show or house. */
import { useId, useMemo } from 'react';
import type { Place } from '../address/address.ts';
import { Link } from '../address/link.tsx';
import { go } from '../address/use-address.ts';
import { Notice } from '../frame/notice.tsx';
import { TitleBlock } from '../frame/title-block.tsx';
import { useKeeperState } from '../keeping/use-keeper.ts';
import { inView } from '../reckoning/in-view.ts';
import { type Reckoning, reckon } from '../reckoning/reckon.ts';
import { useWork } from '../reckoning/use-work.ts';
import { ChecksApart, DrawnApart, FiguresApart, type Labels, noPlanWords } from './apart-view.tsx';
import { otherKey, othersToCompare } from './others.ts';
import type { Side } from './side-rows.ts';

export type ComparePlace = Extract<Place, { readonly kind: 'compare' }>;

/** The show that the other set hangs in: this one, or another, reckoned for this page only. */
const useOther = ({ show, house }: ComparePlace): Reckoning | null => {
  const work = useWork();
  const state = useKeeperState();
  const view = useMemo(() => {
    if (show === null || state.phase !== 'open') return null;
    const found = inView(state, { place: { kind: 'hangList' }, house, show });
    return 'missing' in found ? null : found;
  }, [state, house, show]);
  const answer = useMemo(() => {
    if (view === null) return null;
    const documents = {
      house: view.house.document,
      show: view.show.document,
      state: view.state?.document ?? null,
    };
    const read = reckon(documents, work.nowMs);
    return read.ok ? read.value : null;
  }, [view, work.nowMs]);
  return show === null ? work : answer;
};

export const ComparePage = ({ place }: { readonly place: ComparePlace }) => {
  const work = useWork();
  const other = useOther(place);
  const one = work.sets.find(({ id }) => id === place.set);
  const another = other?.sets.find(({ id }) => id === place.other);
  return (
    <>
      <div className="page-head">
        <h1>Two hangs compared</h1>
        <p className="quiet">
          As planned, each by its own show and house. Nothing is changed here.
        </p>
      </div>
      <Choose place={place} />
      {one === undefined || another === undefined || other === null ? (
        <Notice degree="note" title="Choose what to lay beside it.">
          <p>Another set of this show, or a set of another show.</p>
        </Notice>
      ) : (
        <Both
          one={{ set: one.set, house: work.house }}
          other={{ set: another.set, house: other.house }}
          labels={labelsOf(place, work, other)}
          findings={[one.findings, another.findings]}
        />
      )}
      <TitleBlock drawing="Two hangs compared" scale="one height for all drawings" />
    </>
  );
};

const labelsOf = (place: ComparePlace, work: Reckoning, other: Reckoning): Labels => {
  const isHere = other.show === work.show;
  const isOneHouse = other.house === work.house;
  const of = ({ show, house }: Reckoning, set: string): string =>
    isHere ? `set ${set}` : `set ${set}, ${show.name}${isOneHouse ? '' : `, ${house.name}`}`;
  return { one: of(work, place.set), other: of(other, place.other ?? '') };
};

const Choose = ({ place }: { readonly place: ComparePlace }) => {
  const ids = useId();
  const work = useWork();
  const state = useKeeperState();
  const others = state.phase === 'open' ? othersToCompare(state, work) : [];
  return (
    <div className="compare-choice">
      <div className="piece-field">
        <label htmlFor={`${ids}-one`}>This set</label>
        <select
          id={`${ids}-one`}
          value={place.set}
          onChange={({ target }) => go({ ...place, set: target.value }, { replace: true })}
        >
          {work.sets.map(({ id, set }) => (
            <option key={id} value={id}>
              {id}, {set.hang?.name ?? 'empty'}
            </option>
          ))}
        </select>
      </div>
      <div className="piece-field">
        <label htmlFor={`${ids}-other`}>Beside it</label>
        <select
          id={`${ids}-other`}
          value={otherKey(place)}
          onChange={({ target }) => {
            const chosen = others
              .flatMap(({ sets }) => sets)
              .find((each) => otherKey(each) === target.value);
            if (chosen !== undefined) {
              const { other, show, house } = chosen;
              go({ ...place, other, show, house }, { replace: true });
            }
          }}
        >
          <option value="">choose …</option>
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
      <p>
        <Link to={{ kind: 'set', set: place.set }}>To set {place.set}</Link>
      </p>
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
