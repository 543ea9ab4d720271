/** Screens for when there is nothing to show yet, or nothing that may be shown. */

import { Link } from '../address/link.tsx';
import { goToAddress } from '../address/use-address.ts';
import type { Open } from '../keeping/kept.ts';
import { useKeeper } from '../keeping/use-keeper.ts';
import { useTell } from '../language/use-tell.ts';
import { housesOf } from '../reckoning/in-view.ts';
import type { NotUnderstood } from '../reckoning/reckon.ts';
import { Notice } from './notice.tsx';
import { RefusalsWithPlace } from './refusals.tsx';

export const Loading = () => {
  const tell = useTell();
  return (
    <main className="in-between">
      <p role="status">{tell('Fetching the documents of the house …')}</p>
    </main>
  );
};

type FailedProps = { readonly title: string; readonly unreached: boolean };

export const Failed = ({ title, unreached }: FailedProps) => {
  const tell = useTell();
  const keeper = useKeeper();
  return (
    <main className="in-between">
      <Notice
        degree="caution"
        title={unreached ? tell('the server was not reached') : title}
        isNews
      >
        <p>
          {unreached
            ? tell(
                'Nothing can be shown without its documents. ' +
                  'Is the program running on this machine? ' +
                  'Until then, work from the last printed sheets.',
              )
            : tell(
                'The documents could not be fetched. Nothing was changed. ' +
                  'Until then, work from the last printed sheets.',
              )}
        </p>
        <p className="buttons">
          <button type="button" onClick={() => void keeper.open()}>
            {tell('Try again')}
          </button>
        </p>
      </Notice>
    </main>
  );
};

export const Missing = ({ what, open }: { readonly what: string; readonly open: Open }) => {
  const tell = useTell();
  return (
    <main className="in-between">
      <Notice degree="caution" title={tell('there is no {what} in this database', { what })}>
        <p>
          {tell(
            'The address asks for it, and nothing else is shown in its place. This ' +
              'database is {database}.',
            {
              database: open.databases.inHand === 'demo' ? tell('the demo') : tell('the house'),
            },
          )}
        </p>
        <p className="buttons">
          {housesOf(open).map(({ id, name }) => (
            <button
              key={id}
              type="button"
              onClick={() => goToAddress({ place: { kind: 'hangList' }, house: id, show: null })}
            >
              {tell('Open {name}', { name })}
            </button>
          ))}
        </p>
      </Notice>
    </main>
  );
};

export const NotRead = ({ error }: { readonly error: NotUnderstood }) => {
  const tell = useTell();
  return (
    <main className="in-between">
      <Notice
        degree="caution"
        title={tell('the {document} was not understood', { document: error.document })}
        isNews
      >
        <p>{tell('Nothing is worked out from half a document. What must be mended:')}</p>
        <RefusalsWithPlace refusals={error.refusals} />
      </Notice>
    </main>
  );
};

export const Nowhere = ({ path }: { readonly path: string }) => {
  const tell = useTell();
  return (
    <Notice degree="caution" title={tell('this address leads nowhere')}>
      <p>
        {tell('There is no screen at {path}.', { path })}{' '}
        <Link to={{ kind: 'hangList' }}>{tell('Open the hang list')}</Link>
      </p>
    </Notice>
  );
};
