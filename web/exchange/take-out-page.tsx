/** What others can open: tables, documents, drawings, and everything at once. */

import type { ShowDocument } from '#documents';
import { writeDocument } from '#documents';
import { tablesOut, writeCsv, writeXlsx } from '#exchange';
import { Link } from '../address/link.tsx';
import { Notice } from '../frame/notice.tsx';
import { TitleBlock } from '../frame/title-block.tsx';
import type { Kept } from '../keeping/kept.ts';
import { useWork } from '../reckoning/use-work.ts';
import { ArchivePart } from './archive-part.tsx';
import { download } from './download.ts';
import { DrawingsPart } from './drawings-part.tsx';

export const TakeOutPage = ({ at }: { readonly at: string | null }) => (
  <>
    <div className="page-head">
      <h1>Take out</h1>
      <p className="quiet">
        Files that other programs open. They are copies: what is changed in them changes nothing
        here until it is brought in.
      </p>
      <p>
        <Link to={{ kind: 'bringIn' }}>Bring in instead</Link>
      </p>
    </div>
    <div className="take-pair">
      <TablesPart />
      <DocumentsPart />
    </div>
    <DrawingsPart at={at} />
    <ArchivePart />
    <TitleBlock drawing="Take out" scale="told with each drawing" />
  </>
);

const TablesPart = () => {
  const { house, show, kept } = useWork();
  const tables = () => tablesOut(house, { raw: kept.show.document, show } satisfies ShowDocument);
  const csv = (table: 'schedule' | 'takeoff', name: string): void =>
    download(`${show.id}-${name}.csv`, 'csv', writeCsv(tables()[table]));
  const xlsx = (table: 'schedule' | 'takeoff', name: string): void =>
    download(`${show.id}-${name}.xlsx`, 'xlsx', new Uint8Array(writeXlsx(tables()[table])));
  return (
    <section aria-labelledby="tables-part" className="take-part">
      <h2 id="tables-part">Tables</h2>
      <p className="quiet">
        In the figures and units as they were typed; brought in again they change nothing. Words
        that a spreadsheet would reckon are marked as words.
      </p>
      <div className="take-rows">
        <div className="take-row">
          <span>Hang list, a row a set</span>
          <button type="button" onClick={() => csv('schedule', 'schedule')}>
            <span className="only-said">Hang list as </span>CSV
          </button>
          <button type="button" onClick={() => xlsx('schedule', 'schedule')}>
            <span className="only-said">Hang list as </span>XLSX
          </button>
        </div>
        <div className="take-row">
          <span>Take-off, a row an item</span>
          <button type="button" onClick={() => csv('takeoff', 'take-off')}>
            <span className="only-said">Take-off as </span>CSV
          </button>
          <button type="button" onClick={() => xlsx('takeoff', 'take-off')}>
            <span className="only-said">Take-off as </span>XLSX
          </button>
        </div>
      </div>
    </section>
  );
};

const fileOf = ({ id, server }: Kept): string =>
  `${id.replace(':', '-')}-revision-${server.revision}.json`;

const nameOf = ({ kind, document }: Kept): string =>
  kind === 'state' ? 'How the sets stand' : `The ${kind}, ${String(document['name'] ?? '')}`;

const DocumentsPart = () => {
  const { kept } = useWork();
  const all = [kept.house, kept.show, kept.state].flatMap((one) => (one === null ? [] : [one]));
  const unsaved = all.filter(({ save }) => save.is !== 'saved');
  return (
    <section aria-labelledby="json-part" className="take-part">
      <h2 id="json-part">Documents</h2>
      <p className="quiet">JSON, whole, as a person can read it. It is what this program keeps.</p>
      {unsaved.length === 0 ? null : (
        <Notice degree="caution" title="some edits are not saved yet">
          <p>A file named by a revision has these edits in it too.</p>
        </Notice>
      )}
      <div className="take-rows">
        {all.map((one) => (
          <div key={one.id} className="take-row">
            <span>
              {nameOf(one)}, revision {one.server.revision}
            </span>
            <button
              type="button"
              onClick={() => download(fileOf(one), 'json', writeDocument(one.document))}
            >
              <span className="only-said">{nameOf(one)} as </span>JSON
            </button>
          </div>
        ))}
      </div>
    </section>
  );
};
