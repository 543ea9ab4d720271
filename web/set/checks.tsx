/** What was worked out, with its limit and source; a figure opens its working in the flow. */
import { useState } from 'react';
import { inHouseWords, sayWorking } from '#sheets';
import { told } from '#texts';
import { Glyph } from '../drawing/glyph-view.tsx';
import { useTell } from '../language/use-tell.ts';
import type { SetReckoning } from '../reckoning/reckon.ts';
import { useWork } from '../reckoning/use-work.ts';
import { type CheckRow, checkRows } from './check-rows.ts';
import { WorkingView } from './working-view.tsx';

const Row = ({ row }: { readonly row: CheckRow }) => {
  const tell = useTell();
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
          {row.source === '' ? null : <small className="source">{told(house, row.source)}</small>}
          {row.isPast ? (
            <span className="signed caution-word past">
              <Glyph name="caution" size={18} />
              {tell('past it')}
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

export const CheckTable = ({ rows }: { readonly rows: readonly CheckRow[] }) => {
  const tell = useTell();
  return (
    <table className="plain check-table">
      <thead>
        <tr>
          <th scope="col">{tell('what')}</th>
          <th scope="col" className="number">
            {tell('value')}
          </th>
          <th scope="col">{tell('limit, and whose')}</th>
        </tr>
      </thead>
      <tbody>
        {rows.map((row) => (
          <Row key={row.title} row={row} />
        ))}
      </tbody>
    </table>
  );
};

export const Checks = ({ each }: { readonly each: SetReckoning }) => {
  const tell = useTell();
  const { house } = useWork();
  const rows = checkRows(each.set, house);
  return (
    <section className="checks" aria-labelledby="checks-head">
      <h2 id="checks-head">{tell('Worked out, each with its working')}</h2>
      {rows.length === 0 ? (
        <p className="quiet">
          {tell('Nothing hangs here in this show, so there is nothing to check.')}
        </p>
      ) : (
        <CheckTable rows={rows} />
      )}
    </section>
  );
};
