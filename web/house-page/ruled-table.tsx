/** A ruled table that scrolls in its own box where the screen is narrow. */
import { type ReactNode, useId } from 'react';

export type RuledColumn = { readonly head: string; readonly isNumber?: boolean };

export type RuledRow = {
  readonly key: string;
  /** The first is the head of the row. */
  readonly cells: readonly ReactNode[];
};

type TableProps = {
  readonly title: string;
  /** A sentence before the table. */
  readonly note?: string;
  readonly columns: readonly RuledColumn[];
  readonly rows: readonly RuledRow[];
  readonly empty: string;
};

const Row = ({ cells, columns }: Pick<TableProps, 'columns'> & Pick<RuledRow, 'cells'>) => (
  <tr>
    {columns.map(({ head, isNumber = false }, index) =>
      index === 0 ? (
        <th key={head} scope="row">
          {cells[index]}
        </th>
      ) : (
        <td key={head} className={isNumber ? 'number' : undefined}>
          {cells[index]}
        </td>
      ),
    )}
  </tr>
);

export const RuledTable = ({ title, note, columns, rows, empty }: TableProps) => {
  const id = useId();
  return (
    <section aria-labelledby={id}>
      <h2 id={id}>{title}</h2>
      {note === undefined ? null : <p className="quiet">{note}</p>}
      {rows.length === 0 ? (
        <p className="empty-words">{empty}</p>
      ) : (
        // biome-ignore lint/a11y/noNoninteractiveTabindex: a box that scrolls is reached by keys
        <section className="wide house-table" aria-label={`${title}, table`} tabIndex={0}>
          <table className="plain">
            <thead>
              <tr>
                {columns.map(({ head, isNumber = false }) => (
                  <th key={head} scope="col" className={isNumber ? 'number' : undefined}>
                    {head}
                  </th>
                ))}
              </tr>
            </thead>
            <tbody>
              {rows.map(({ key, cells }) => (
                <Row key={key} cells={cells} columns={columns} />
              ))}
            </tbody>
          </table>
        </section>
      )}
    </section>
  );
};
