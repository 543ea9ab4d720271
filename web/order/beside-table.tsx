/** The found order and the one changed by hand, row by row. */
import { Fragment } from 'react';
import type { BesideCell, OrdersBeside } from '#sheets';
import { useTell } from '../language/use-tell.ts';

const Cells = ({
  cell,
  isFirst,
}: {
  readonly cell: BesideCell | null;
  readonly isFirst: boolean;
}) => {
  const tell = useTell();
  return cell === null ? (
    <td colSpan={3} className="quiet">
      {tell('no such step')}
    </td>
  ) : (
    <>
      <td>{isFirst ? tell('at {height}', { height: cell.height }) : cell.title}</td>
      <td>{cell.balance}</td>
      <td>
        <span className={cell.isBroken ? 'danger-word' : undefined}>{cell.held}</span>{' '}
        {cell.energy === null ? '' : `${cell.energy}.`}
      </td>
    </>
  );
};

export const BesideTable = ({ beside }: { readonly beside: OrdersBeside }) => {
  const tell = useTell();
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a box that scrolls is reached by keys
    <section className="wide" aria-label={tell('Both orders, table')} tabIndex={0}>
      <table className="plain order-table">
        <thead>
          <tr>
            <td />
            <th scope="colgroup" colSpan={3}>
              {tell('found')}
            </th>
            <th scope="colgroup" colSpan={3}>
              {tell('by hand')}
            </th>
          </tr>
          <tr>
            <th scope="col">{tell('step')}</th>
            {[0, 1].map((side) => (
              <Fragment key={side}>
                <th scope="col">{tell('what')}</th>
                <th scope="col">{tell('balance after it')}</th>
                <th scope="col">{tell('held, and what it could set free')}</th>
              </Fragment>
            ))}
          </tr>
        </thead>
        <tbody>
          {beside.rows.map(({ number, left, right }) => (
            <tr key={number}>
              <th scope="row">{number === 0 ? tell('Now') : number}</th>
              <Cells cell={left} isFirst={number === 0} />
              <Cells cell={right} isFirst={number === 0} />
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
};
