/** Where this server is, which house it is, how a device comes to trust it, and how it is. */

import type { Health } from '#events';
import { Notice } from '../frame/notice.tsx';
import { TitleBlock } from '../frame/title-block.tsx';
import { RuledTable } from '../house-page/ruled-table.tsx';
import { useTell, useVoice } from '../language/use-tell.ts';
import { builtFrom } from '../self-check/use-checks.ts';
import { useHealth } from './health.ts';
import { CAUTION_WORDS, inGroups, rowsOf, stateWords } from './health-words.ts';
import { QrCode } from './qr-code.tsx';
import './this-server.css';

const Addresses = ({ health }: { readonly health: Health }) => {
  const tell = useTell();
  const [first = ''] = health.addresses;
  return (
    <section aria-label={tell('Address')} className="server-part">
      <h2>{tell('Address')}</h2>
      {health.mode === 'loopback' ? (
        <p>
          {tell(
            'Other devices do not reach it. How it is put on the network of the house stands in ' +
              'the guide on running it.',
          )}
        </p>
      ) : null}
      <ul className="server-addresses">
        {health.addresses.map((url) => (
          <li key={url}>
            <a href={url}>{url}</a>
          </li>
        ))}
      </ul>
      {health.mode === 'loopback' ? null : (
        <QrCode text={first} name={tell('Address as QR: {url}', { url: first })} />
      )}
    </section>
  );
};

const Trust = ({ health }: { readonly health: Health }) => {
  const tell = useTell();
  const { certificate, trustAddresses } = health;
  if (certificate === null) return null;
  const [first] = trustAddresses;
  return (
    <section aria-label={tell('Trust')} className="server-part">
      <h2>{tell('Trust')}</h2>
      <p>{tell('Fingerprint (SHA-256). A device shows the same before it trusts this server:')}</p>
      <p className="server-print">{inGroups(certificate.fingerprint)}</p>
      {first === undefined ? null : (
        <>
          <p>{tell('A device that does not trust it yet begins here:')}</p>
          <p>
            <a className="server-way" href={first}>
              {first}
            </a>
          </p>
          <QrCode
            text={first}
            name={tell('Address of the page on trust as QR: {url}', { url: first })}
          />
        </>
      )}
    </section>
  );
};

const Found = ({ health, isOld }: { readonly health: Health; readonly isOld: boolean }) => {
  const tell = useTell();
  const voice = useVoice();
  const [head, says] = [tell('what'), tell('how it is')];
  return (
    <>
      {isOld ? (
        <Notice degree="caution" title={tell('the server does not answer now')} isNews>
          <p>{tell('What stands here is what it said last.')}</p>
        </Notice>
      ) : (
        <p role="status">{stateWords(health, voice)}</p>
      )}
      {health.cautions.map((each) => {
        const { title, says: what, isDanger } = CAUTION_WORDS[each];
        return (
          <Notice key={each} degree={isDanger ? 'danger' : 'caution'} title={tell(title)}>
            <p>{tell(what)}</p>
          </Notice>
        );
      })}
      <div className="server-ways">
        <Addresses health={health} />
        <Trust health={health} />
      </div>
      <RuledTable
        title={tell('How it is')}
        columns={[{ head }, { head: says }]}
        rows={rowsOf(health, builtFrom().build, voice).map((row) => ({
          key: row.key,
          cells: [row.head, row.says],
        }))}
        empty={tell('It says nothing.')}
      />
    </>
  );
};

export const ThisServerPage = () => {
  const tell = useTell();
  const { health, is } = useHealth();
  return (
    <>
      <div className="page-head">
        <h1>{tell('This server')}</h1>
      </div>
      <div className="house-page this-server">
        {health === null ? (
          <p role="status">
            {is === 'unreached' ? tell('The server was not reached.') : tell('Asking the server …')}
          </p>
        ) : (
          <Found health={health} isOld={is === 'unreached'} />
        )}
      </div>
      <TitleBlock drawing={tell('This server')} scale={tell('no drawing')} />
    </>
  );
};
