/** A ruled table; on a phone each row is a block, with the label of a column in its cell. */
import { type ReactNode, useId } from 'react';
import { FOLDED } from '../frame/folded-roles.ts';
import { useTell } from '../language/use-tell.ts';

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
  <tr {...FOLDED.row}>
    {columns.map(({ head, isNumber = false }, index) =>
      index === 0 ? (
        <th {...FOLDED.rowHead} key={head} scope="row">
          {cells[index]}
        </th>
      ) : (
        <td
          {...FOLDED.cell}
          key={head}
          data-label={head}
          className={isNumber ? 'number' : columns.length === 2 ? 'whole' : undefined}
        >
          {cells[index]}
        </td>
      ),
    )}
  </tr>
);

export const RuledTable = ({ title, note, columns, rows, empty }: TableProps) => {
  const tell = useTell();
  const id = useId();
  const name = tell('{title}, table', { title });
  return (
    <section aria-labelledby={id}>
      <h2 id={id}>{title}</h2>
      {note === undefined ? null : <p className="quiet">{note}</p>}
      {rows.length === 0 ? (
        <p className="empty-words">{empty}</p>
      ) : (
        // biome-ignore lint/a11y/noNoninteractiveTabindex: a box that scrolls is reached by keys
        <section className="wide house-table" aria-label={name} tabIndex={0}>
          <table
            {...FOLDED.table}
            className={columns.length === 4 ? 'plain folds by-three' : 'plain folds'}
          >
            <thead {...FOLDED.rows}>
              <tr {...FOLDED.row}>
                {columns.map(({ head, isNumber = false }) => (
                  <th
                    {...FOLDED.columnHead}
                    key={head}
                    scope="col"
                    className={isNumber ? 'number' : undefined}
                  >
                    {head}
                  </th>
                ))}
              </tr>
            </thead>
            <tbody {...FOLDED.rows}>
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
