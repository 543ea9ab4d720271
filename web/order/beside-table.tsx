/** The found order and the one changed by hand, row by row. */
import type { BesideCell, OrdersBeside } from '#sheets';

const Cells = ({
  cell,
  isFirst,
}: {
  readonly cell: BesideCell | null;
  readonly isFirst: boolean;
}) =>
  cell === null ? (
    <td colSpan={3} className="quiet">
      no such step
    </td>
  ) : (
    <>
      <td>{isFirst ? `at ${cell.height}` : cell.title}</td>
      <td>{cell.balance}</td>
      <td>
        <span className={cell.isBroken ? 'danger-word' : undefined}>{cell.held}</span>{' '}
        {cell.energy === null ? '' : `${cell.energy}.`}
      </td>
    </>
  );

export const BesideTable = ({ beside }: { readonly beside: OrdersBeside }) => (
  // biome-ignore lint/a11y/noNoninteractiveTabindex: a box that scrolls is reached by keys
  <section className="wide" aria-label="Both orders, table" tabIndex={0}>
    <table className="plain order-table">
      <thead>
        <tr>
          <td />
          <th scope="colgroup" colSpan={3}>
            found
          </th>
          <th scope="colgroup" colSpan={3}>
            by hand
          </th>
        </tr>
        <tr>
          <th scope="col">step</th>
          <th scope="col">what</th>
          <th scope="col">balance after it</th>
          <th scope="col">held, and what it could set free</th>
          <th scope="col">what</th>
          <th scope="col">balance after it</th>
          <th scope="col">held, and what it could set free</th>
        </tr>
      </thead>
      <tbody>
        {beside.rows.map(({ number, left, right }) => (
          <tr key={number}>
            <th scope="row">{number === 0 ? 'Now' : number}</th>
            <Cells cell={left} isFirst={number === 0} />
            <Cells cell={right} isFirst={number === 0} />
          </tr>
        ))}
      </tbody>
    </table>
  </section>
);
