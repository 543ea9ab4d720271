/** The same order in rows: for a screen reader, for a narrow screen, and for who reads tables. */
import { useTell } from '../language/use-tell.ts';
import type { Moment } from './moments.ts';

type TableProps = { readonly name: string; readonly moments: readonly Moment[] };

export const OrderTable = ({ name, moments }: TableProps) => {
  const tell = useTell();
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a box that scrolls is reached by keys
    <section className="wide" aria-label={tell('{name}, table', { name })} tabIndex={0}>
      <table className="plain order-table">
        <thead>
          <tr>
            <th scope="col">{tell('step')}</th>
            <th scope="col">{tell('what')}</th>
            <th scope="col">{tell('who')}</th>
            <th scope="col">{tell('height')}</th>
            <th scope="col">{tell('balance after it')}</th>
            <th scope="col">{tell('held')}</th>
            <th scope="col">{tell('if nothing held it')}</th>
          </tr>
        </thead>
        <tbody>
          {moments.map(({ number, cell, said }) => (
            <tr key={number}>
              <th scope="row">{number === 0 ? tell('Now') : number}</th>
              <td>{number === 0 ? tell('How it stands') : cell.title}</td>
              <td>{said?.who ?? ''}</td>
              <td className="number">{cell.height}</td>
              <td>{cell.balance}</td>
              <td className={cell.isBroken ? 'danger-word' : undefined}>{cell.held}</td>
              <td>{cell.energy ?? tell('not reckoned')}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
};
