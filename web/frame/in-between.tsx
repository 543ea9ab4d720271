/** Screens for when there is nothing to show yet, or nothing that may be shown. */
import { Link } from '../address/link.tsx';
import { goToAddress } from '../address/use-address.ts';
import type { Open } from '../keeping/kept.ts';
import { useKeeper } from '../keeping/use-keeper.ts';
import { housesOf } from '../reckoning/in-view.ts';
import type { NotUnderstood } from '../reckoning/reckon.ts';
import { Notice } from './notice.tsx';
import { RefusalsWithPlace } from './refusals.tsx';

export const Loading = () => (
  <main className="in-between">
    <p role="status">Fetching the documents of the house …</p>
  </main>
);

type FailedProps = { readonly title: string; readonly unreached: boolean };

export const Failed = ({ title, unreached }: FailedProps) => {
  const keeper = useKeeper();
  return (
    <main className="in-between">
      <Notice degree="caution" title={unreached ? 'the server was not reached' : title} isNews>
        <p>
          {unreached
            ? 'Nothing can be shown without its documents. Is the program running on this machine?'
            : 'The documents could not be fetched. Nothing was changed.'}{' '}
          Until then, work from the last printed sheets.
        </p>
        <p className="buttons">
          <button type="button" onClick={() => void keeper.open()}>
            Try again
          </button>
        </p>
      </Notice>
    </main>
  );
};

export const Missing = ({ what, open }: { readonly what: string; readonly open: Open }) => (
  <main className="in-between">
    <Notice degree="caution" title={`there is no ${what} in this database`}>
      <p>
        The address asks for it, and nothing else is shown in its place. This database is{' '}
        {open.databases.inHand === 'demo' ? 'the demo' : 'the house'}.
      </p>
      <p className="buttons">
        {housesOf(open).map(({ id, name }) => (
          <button
            key={id}
            type="button"
            onClick={() => goToAddress({ place: { kind: 'hangList' }, house: id, show: null })}
          >
            Open {name}
          </button>
        ))}
      </p>
    </Notice>
  </main>
);

export const NotRead = ({ error }: { readonly error: NotUnderstood }) => (
  <main className="in-between">
    <Notice degree="caution" title={`the ${error.document} was not understood`} isNews>
      <p>Nothing is worked out from half a document. What must be mended:</p>
      <RefusalsWithPlace refusals={error.refusals} />
    </Notice>
  </main>
);

export const Nowhere = ({ path }: { readonly path: string }) => (
  <Notice degree="caution" title="this address leads nowhere">
    <p>
      There is no screen at {path}. <Link to={{ kind: 'hangList' }}>Open the hang list</Link>
    </p>
  </Notice>
);
