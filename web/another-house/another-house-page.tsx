/** A show put on the sets of another house: what differs, what no longer works, what to ask. */
import { useId, useMemo } from 'react';
import { readHouseValue } from '#documents';
import type { House } from '#house';
import type { Place } from '../address/address.ts';
import { Link } from '../address/link.tsx';
import { go } from '../address/use-address.ts';
import { Notice } from '../frame/notice.tsx';
import { Refusals } from '../frame/refusals.tsx';
import { TitleBlock } from '../frame/title-block.tsx';
import type { Kept, Open } from '../keeping/kept.ts';
import { useTell } from '../language/use-tell.ts';
import { PlannedFrame } from '../order/planned-frame.tsx';
import { useWork } from '../reckoning/use-work.ts';
import { FitView } from './fit-view.tsx';
import { MakeShow } from './make-show.tsx';
import { readMoves, withMove, writeMoves } from './moved.ts';
import { type Target, useFit } from './use-fit.ts';

export type AnotherHousePlace = Extract<Place, { readonly kind: 'anotherHouse' }>;

type PageProps = { readonly place: AnotherHousePlace; readonly open: Open };

const ofKind = ({ documents }: Open, kind: Kept['kind']): readonly Kept[] =>
  Object.values(documents).filter((kept) => kept.kind === kind);

export const AnotherHousePage = ({ place, open }: PageProps) => {
  const tell = useTell();
  const { house, show } = useWork();
  const others = ofKind(open, 'house').filter(({ document }) => document['id'] !== house.id);
  const to = others.find(({ document }) => document['id'] === place.to);
  return (
    <>
      <div className="page-head">
        <h1>{tell('Another house')}</h1>
        <p className="quiet">
          {tell(
            '{show} put on the sets of another house, as a question: nothing of it is kept until ' +
              'you make a show of it.',
            { show: show.name },
          )}
        </p>
      </div>
      <ChooseHouse place={place} others={others} />
      {to === undefined ? null : <ToHouse key={to.id} place={place} open={open} kept={to} />}
      <TitleBlock drawing={tell('Another house, a question')} scale={tell('none')} />
    </>
  );
};

type ChooseProps = { readonly place: AnotherHousePlace; readonly others: readonly Kept[] };

const ChooseHouse = ({ place, others }: ChooseProps) => {
  const tell = useTell();
  const id = useId();
  if (others.length === 0) {
    return (
      <Notice degree="note" title={tell('There is no other house in this database.')}>
        <p>
          {tell('Bring one in, or begin one, under')}{' '}
          <Link to={{ kind: 'documents', document: null, older: null, newer: null }}>
            {tell('Documents')}
          </Link>
          .
        </p>
      </Notice>
    );
  }
  return (
    <p className="piece-field house-choice">
      <label htmlFor={id}>{tell('House to go to')}</label>
      <select
        id={id}
        value={place.to ?? ''}
        onChange={({ target }) =>
          go({ kind: 'anotherHouse', to: target.value || null, moved: null })
        }
      >
        <option value="">{tell('choose …')}</option>
        {others.map(({ document }) => (
          <option key={String(document['id'])} value={String(document['id'])}>
            {String(document['name'])}
          </option>
        ))}
      </select>
    </p>
  );
};

type ToProps = PageProps & { readonly kept: Kept };

const ToHouse = ({ place, open, kept }: ToProps) => {
  const tell = useTell();
  const read = useMemo(() => readHouseValue(kept.document), [kept.document]);
  const state = ofKind(open, 'state').find(
    ({ document }) => document['house'] === kept.document['id'],
  );
  const target = useMemo(
    () => ({ house: kept.document, state: state?.document ?? null }),
    [kept.document, state],
  );
  if (!read.ok) {
    return (
      <Notice
        degree="caution"
        title={tell('{name} is not understood', { name: String(kept.document['name']) })}
      >
        <Refusals refusals={read.error} />
      </Notice>
    );
  }
  return <Fitted place={place} open={open} target={target} to={read.value.house} />;
};

type FittedProps = PageProps & { readonly target: Target; readonly to: House };

const Fitted = ({ place, open, target, to }: FittedProps) => {
  const tell = useTell();
  const { show } = useWork();
  const { fit, progress, isStopped, stop, again } = useFit(target, place.moved);
  const title = tell('{show} in {house}', { show: show.name, house: to.name });
  if (fit === null) {
    return (
      <PlannedFrame word="WHAT IF" title={title}>
        {isStopped ? (
          <p className="buttons">
            <span role="status">{tell('Stopped.')}</span>
            <button type="button" onClick={again}>
              {tell('Fit it again')}
            </button>
          </p>
        ) : (
          <p className="buttons">
            <span role="status">
              {progress === null
                ? tell('The show is being fitted …')
                : tell('{done} of {all} pieces tried on every set …', {
                    done: progress.done,
                    all: progress.of,
                  })}
            </span>
            <button type="button" onClick={stop}>
              {tell('Stop')}
            </button>
          </p>
        )}
      </PlannedFrame>
    );
  }
  return (
    <>
      <FitView
        fit={fit}
        to={to}
        title={title}
        onMove={(from, set) =>
          go(
            {
              ...place,
              moved: writeMoves(withMove(readMoves(place.moved), { from, to: set })),
            },
            { replace: true },
          )
        }
        onPropose={place.moved === null ? null : () => go({ ...place, moved: null })}
      />
      <MakeShow fit={fit} to={to} open={open} />
    </>
  );
};
