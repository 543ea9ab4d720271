/** The same order in rows: for a screen reader, for a narrow screen, and for who reads tables. */
import type { Moment } from './moments.ts';

type TableProps = { readonly name: string; readonly moments: readonly Moment[] };

export const OrderTable = ({ name, moments }: TableProps) => (
  // biome-ignore lint/a11y/noNoninteractiveTabindex: a box that scrolls is reached by keys
  <section className="wide" aria-label={`${name}, table`} tabIndex={0}>
    <table className="plain order-table">
      <thead>
        <tr>
          <th scope="col">step</th>
          <th scope="col">what</th>
          <th scope="col">who</th>
          <th scope="col">height</th>
          <th scope="col">balance after it</th>
          <th scope="col">held</th>
          <th scope="col">if nothing held it</th>
        </tr>
      </thead>
      <tbody>
        {moments.map(({ number, cell, said }) => (
          <tr key={number}>
            <th scope="row">{number === 0 ? 'Now' : number}</th>
            <td>{number === 0 ? 'How it stands' : cell.title}</td>
            <td>{said?.who ?? ''}</td>
            <td className="number">{cell.height}</td>
            <td>{cell.balance}</td>
            <td className={cell.isBroken ? 'danger-word' : undefined}>{cell.held}</td>
            <td>{cell.energy ?? 'not reckoned'}</td>
          </tr>
        ))}
      </tbody>
    </table>
  </section>
);
