/** Everything of this database in one file: every revision, and what others can open. */
import { useId, useState } from 'react';
import { unreachable } from '#outcome';
import { Notice } from '../frame/notice.tsx';
import { useWork } from '../reckoning/use-work.ts';
import type { Paper } from './gather.ts';
import { type Packing, usePacking } from './use-packing.ts';

export const ArchivePart = () => {
  const id = useId();
  const { kept } = useWork();
  const { packing, make, cancel } = usePacking();
  const [withShows, setShows] = useState(true);
  const [sheets, setSheets] = useState<Paper | ''>('');
  const waits = [kept.house, kept.show, kept.state].some(
    (one) => one !== null && one.save.is !== 'saved',
  );
  return (
    <section aria-labelledby="archive-part" className="take-part">
      <h2 id="archive-part">Everything at once</h2>
      <p className="quiet">
        One file (.zip) with every document of this database in all its revisions. A list in it says
        who made it, when, with which build, and has the SHA-256 of each file: a damaged one is
        found out when it is brought in.
      </p>
      <div className="exchange-fields">
        <label className="tick">
          <input
            type="checkbox"
            checked={withShows}
            onChange={({ target }) => setShows(target.checked)}
          />
          with tables and drawings of every show
        </label>
        <div className="exchange-field">
          <label htmlFor={id}>Sheets as PDF</label>
          <select
            id={id}
            value={sheets}
            onChange={({ target }) =>
              setSheets(target.value === 'a4' || target.value === 'letter' ? target.value : '')
            }
          >
            <option value="">without sheets</option>
            <option value="letter">on Letter paper; takes minutes</option>
            <option value="a4">on A4 paper; takes minutes</option>
          </select>
        </div>
      </div>
      {waits ? (
        <Notice degree="caution" title="some edits are not saved yet">
          <p>The archive is made from what is saved.</p>
        </Notice>
      ) : null}
      <p className="buttons">
        <button
          type="button"
          disabled={packing.is === 'at'}
          onClick={() => void make({ withShows, paper: sheets === '' ? null : sheets })}
        >
          Make the archive
        </button>
      </p>
      <PackingState packing={packing} onCancel={cancel} />
    </section>
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
  switch (packing.is) {
    case 'none':
      return null;
    case 'at':
      return (
        <div className="at-work">
          <p role="status">{packing.words} …</p>
          <progress aria-label={packing.words} value={packing.done} max={packing.of} />
          <span className="quiet">
            {packing.done} of {packing.of}
          </span>
          <button type="button" onClick={onCancel}>
            Cancel
          </button>
        </div>
      );
    case 'ended':
      return <p role="status">{packing.why} Nothing was kept of it.</p>;
    case 'made':
      return (
        <div>
          <p role="status">
            {packing.name} was made: {packing.files} files, {kilobytes(packing.bytes)}.
          </p>
          {packing.leftOut.length === 0 ? null : (
            <ul>
              {packing.leftOut.map(({ what, why }) => (
                <li key={what}>
                  Not in it: {what} ({why}).
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
