/** What others can open: tables, documents, drawings, and everything at once. */

import type { ShowDocument } from '#documents';
import { writeDocument } from '#documents';
import { tablesOut, writeCsv, writeXlsx } from '#exchange';
import { unreachable } from '#outcome';
import { phrase, type Voice } from '#texts';
import { Link } from '../address/link.tsx';
import { Notice } from '../frame/notice.tsx';
import { TitleBlock } from '../frame/title-block.tsx';
import type { Kept } from '../keeping/kept.ts';
import { useTell, useVoice } from '../language/use-tell.ts';
import { useWork } from '../reckoning/use-work.ts';
import { ArchivePart } from './archive-part.tsx';
import { download } from './download.ts';
import { DrawingsPart } from './drawings-part.tsx';

export const TakeOutPage = ({ at }: { readonly at: string | null }) => {
  const tell = useTell();
  return (
    <>
      <div className="page-head">
        <h1>{tell('Take out')}</h1>
        <p className="quiet">
          {tell(
            'Files that other programs open. They are copies: what is changed in them changes ' +
              'nothing here until it is brought in.',
          )}
        </p>
        <p>
          <Link to={{ kind: 'bringIn' }}>{tell('Bring in instead')}</Link>
        </p>
      </div>
      <div className="take-pair">
        <TablesPart />
        <DocumentsPart />
      </div>
      <DrawingsPart at={at} />
      <ArchivePart />
      <TitleBlock drawing={tell('Take out')} scale={tell('told with each drawing')} />
    </>
  );
};

const TablesPart = () => {
  const tell = useTell();
  const { house, show, kept } = useWork();
  const tables = () => tablesOut(house, { raw: kept.show.document, show } satisfies ShowDocument);
  const csv = (table: 'schedule' | 'takeoff', name: string): void =>
    download(`${show.id}-${name}.csv`, 'csv', writeCsv(tables()[table]));
  const xlsx = (table: 'schedule' | 'takeoff', name: string): void =>
    download(`${show.id}-${name}.xlsx`, 'xlsx', new Uint8Array(writeXlsx(tables()[table])));
  return (
    <section aria-labelledby="tables-part" className="take-part">
      <h2 id="tables-part">{tell('Tables')}</h2>
      <p className="quiet">
        {tell(
          'In the figures and units as they were typed; brought in again they change nothing. ' +
            'Words that a spreadsheet would reckon are marked as words.',
        )}
      </p>
      <div className="take-rows">
        <div className="take-row">
          <span>{tell('Hang list, a row a set')}</span>
          <button type="button" onClick={() => csv('schedule', 'schedule')}>
            <span className="only-said">{tell('Hang list as ')}</span>CSV
          </button>
          <button type="button" onClick={() => xlsx('schedule', 'schedule')}>
            <span className="only-said">{tell('Hang list as ')}</span>XLSX
          </button>
        </div>
        <div className="take-row">
          <span>{tell('Take-off, a row an item')}</span>
          <button type="button" onClick={() => csv('takeoff', 'take-off')}>
            <span className="only-said">{tell('Take-off as ')}</span>CSV
          </button>
          <button type="button" onClick={() => xlsx('takeoff', 'take-off')}>
            <span className="only-said">{tell('Take-off as ')}</span>XLSX
          </button>
        </div>
      </div>
    </section>
  );
};

const fileOf = ({ id, server }: Kept): string =>
  `${id.replace(':', '-')}-revision-${server.revision}.json`;

const nameOf = ({ kind, document }: Kept, voice: Voice): string => {
  const name = String(document['name'] ?? '');
  switch (kind) {
    case 'state':
      return phrase(voice, 'How the sets stand');
    case 'house':
      return phrase(voice, 'The house, {name}', { name });
    case 'show':
      return phrase(voice, 'The show, {name}', { name });
    default:
      return unreachable(kind);
  }
};

const DocumentsPart = () => {
  const tell = useTell();
  const voice = useVoice();
  const { kept } = useWork();
  const all = [kept.house, kept.show, kept.state].flatMap((one) => (one === null ? [] : [one]));
  const unsaved = all.filter(({ save }) => save.is !== 'saved');
  return (
    <section aria-labelledby="json-part" className="take-part">
      <h2 id="json-part">{tell('Documents')}</h2>
      <p className="quiet">
        {tell('JSON, whole, as a person can read it. It is what this program keeps.')}
      </p>
      {unsaved.length === 0 ? null : (
        <Notice degree="caution" title={tell('some edits are not saved yet')}>
          <p>{tell('A file named by a revision has these edits in it too.')}</p>
        </Notice>
      )}
      <div className="take-rows">
        {all.map((one) => (
          <div key={one.id} className="take-row">
            <span>
              {tell('{name}, revision {revision}', {
                name: nameOf(one, voice),
                revision: one.server.revision,
              })}
            </span>
            <button
              type="button"
              onClick={() => download(fileOf(one), 'json', writeDocument(one.document))}
            >
              <span className="only-said">{tell('{name} as ', { name: nameOf(one, voice) })}</span>
              JSON
            </button>
          </div>
        ))}
      </div>
    </section>
  );
};
