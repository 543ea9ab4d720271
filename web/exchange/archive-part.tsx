/** Everything of this database in one file: every revision, and what others can open. */
import { useId, useState } from 'react';
import { unreachable } from '#outcome';
import { Notice } from '../frame/notice.tsx';
import { useTell, useVoice } from '../language/use-tell.ts';
import { useWork } from '../reckoning/use-work.ts';
import type { Paper } from './gather.ts';
import { sayGathered } from './say-gathered.ts';
import { type Packing, usePacking } from './use-packing.ts';

export const ArchivePart = () => {
  const tell = useTell();
  const { kept } = useWork();
  const { packing, make, cancel } = usePacking();
  const [withShows, setShows] = useState(true);
  const [sheets, setSheets] = useState<Paper | ''>('');
  const waits = [kept.house, kept.show, kept.state].some(
    (one) => one !== null && one.save.is !== 'saved',
  );
  return (
    <section aria-labelledby="archive-part" className="take-part">
      <h2 id="archive-part">{tell('Everything at once')}</h2>
      <p className="quiet">
        {tell(
          'One file (.zip) with every document of this database in all its revisions. A list in ' +
            'it says who made it, when, with which build, and has the SHA-256 of each file: a ' +
            'damaged one is found out when it is brought in.',
        )}
      </p>
      <div className="exchange-fields">
        <label className="tick">
          <input
            type="checkbox"
            checked={withShows}
            onChange={({ target }) => setShows(target.checked)}
          />
          {tell('with tables and drawings of every show')}
        </label>
        <SheetsChoice sheets={sheets} onSheets={setSheets} />
      </div>
      {waits ? (
        <Notice degree="caution" title={tell('some edits are not saved yet')}>
          <p>{tell('The archive is made from what is saved.')}</p>
        </Notice>
      ) : null}
      <p className="buttons">
        <button
          type="button"
          disabled={packing.is === 'at'}
          onClick={() => void make({ withShows, paper: sheets === '' ? null : sheets })}
        >
          {tell('Make the archive')}
        </button>
      </p>
      <PackingState packing={packing} onCancel={cancel} />
    </section>
  );
};

const SheetsChoice = ({
  sheets,
  onSheets,
}: {
  readonly sheets: Paper | '';
  readonly onSheets: (sheets: Paper | '') => void;
}) => {
  const tell = useTell();
  const id = useId();
  return (
    <div className="exchange-field">
      <label htmlFor={id}>{tell('Sheets as PDF')}</label>
      <select
        id={id}
        value={sheets}
        onChange={({ target }) =>
          onSheets(target.value === 'a4' || target.value === 'letter' ? target.value : '')
        }
      >
        <option value="">{tell('without sheets')}</option>
        <option value="letter">{tell('on Letter paper; takes minutes')}</option>
        <option value="a4">{tell('on A4 paper; takes minutes')}</option>
      </select>
    </div>
  );
};

const kilobytes = (bytes: number): string => `${Math.ceil(bytes / 1000)} kB`;

const PackingState = ({
  packing,
  onCancel,
}: {
  readonly packing: Packing;
  readonly onCancel: () => void;
}) => {
  const tell = useTell();
  const voice = useVoice();
  switch (packing.is) {
    case 'none':
      return null;
    case 'at':
      return (
        <div className="at-work">
          <p role="status">{sayGathered(voice, packing.words)} …</p>
          <progress
            aria-label={sayGathered(voice, packing.words)}
            value={packing.done}
            max={packing.of}
          />
          <span className="quiet">
            {tell('{done} of {all}', { done: packing.done, all: packing.of })}
          </span>
          <button type="button" onClick={onCancel}>
            {tell('Cancel')}
          </button>
        </div>
      );
    case 'ended':
      return <p role="status">{tell('{why} Nothing was kept of it.', { why: packing.why })}</p>;
    case 'made':
      return (
        <div>
          <p role="status">
            {tell('{name} was made: {files} files, {size}.', {
              name: packing.name,
              files: packing.files,
              size: kilobytes(packing.bytes),
            })}
          </p>
          {packing.leftOut.length === 0 ? null : (
            <ul>
              {packing.leftOut.map(({ what, why }) => (
                <li key={what}>
                  {tell('Not in it: {what} ({why}).', {
                    what: sayGathered(voice, what),
                    why: sayGathered(voice, why),
                  })}
                </li>
              ))}
            </ul>
          )}
        </div>
      );
    default:
      return unreachable(packing);
  }
};
