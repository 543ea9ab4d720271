/** What was worked out, with its limit and source; a figure opens its working in the flow. */
import { useState } from 'react';
import { inHouseWords, sayWorking } from '#sheets';
import { Glyph } from '../drawing/glyph-view.tsx';
import type { SetReckoning } from '../reckoning/reckon.ts';
import { useWork } from '../reckoning/use-work.ts';
import { type CheckRow, checkRows } from './check-rows.ts';
import { WorkingView } from './working-view.tsx';

const Row = ({ row }: { readonly row: CheckRow }) => {
  const [isOpen, setOpen] = useState(false);
  const { house } = useWork();
  return (
    <>
      <tr>
        <th scope="row">
          <button
            type="button"
            className="as-words"
            aria-expanded={isOpen}
            onClick={() => setOpen(!isOpen)}
          >
            {inHouseWords(row.title, house)}
          </button>
        </th>
        <td className="number">
          <b>{row.value}</b>
        </td>
        <td>
          {row.limit}
          {row.source === '' ? null : <small className="source">{row.source}</small>}
          {row.isPast ? (
            <span className="signed caution-word past">
              <Glyph name="caution" size={18} />
              past it
            </span>
          ) : null}
        </td>
      </tr>
      {isOpen ? (
        <tr className="opened">
          <td colSpan={3}>
            {row.workings.map((working) => (
              <div key={working.title}>
                {row.workings.length === 1 ? null : <h3>{sayWorking(working, house).title}</h3>}
                <WorkingView working={working} />
              </div>
            ))}
          </td>
        </tr>
      ) : null}
    </>
  );
};

export const CheckTable = ({ rows }: { readonly rows: readonly CheckRow[] }) => (
  <table className="plain check-table">
    <thead>
      <tr>
        <th scope="col">what</th>
        <th scope="col" className="number">
          value
        </th>
        <th scope="col">limit, and whose</th>
      </tr>
    </thead>
    <tbody>
      {rows.map((row) => (
        <Row key={row.title} row={row} />
      ))}
    </tbody>
  </table>
);

export const Checks = ({ each }: { readonly each: SetReckoning }) => {
  const { house } = useWork();
  const rows = checkRows(each.set, house);
  return (
    <section className="checks" aria-labelledby="checks-head">
      <h2 id="checks-head">Worked out, each with its working</h2>
      {rows.length === 0 ? (
        <p className="quiet">Nothing hangs here in this show, so there is nothing to check.</p>
      ) : (
        <CheckTable rows={rows} />
      )}
    </section>
  );
};
