/** A ruled table of a sheet: thick round what a reader must not miss, grey ruling elsewhere. */

import type { Column, Row, Table } from '#sheets';
import { keyAt } from './key-at.ts';
import { WordsView } from './words-view.tsx';

const cellClass = ({ align, isWritten = false }: Column): string =>
  isWritten ? `${align} written` : align;

const RowView = ({ row, columns }: { readonly row: Row; readonly columns: readonly Column[] }) => {
  const { cells, rule, isMuted = false, isGroup = false } = row;
  const className = isMuted ? `${rule} muted` : rule;
  if (isGroup) {
    return (
      <tr className={`${className} group`}>
        <th scope="rowgroup" colSpan={columns.length}>
          <WordsView words={cells[0] ?? []} />
        </th>
      </tr>
    );
  }
  return (
    <tr className={className}>
      {columns.map((column, index) => (
        <td key={keyAt(index)} className={cellClass(column)}>
          <WordsView words={cells[index] ?? []} />
        </td>
      ))}
    </tr>
  );
};

export const TableView = ({ table: { columns, rows } }: { readonly table: Table }) => {
  const whole = columns.reduce((sum, { share }) => sum + share, 0);
  return (
    <table className="leaf-table">
      <colgroup>
        {columns.map(({ share }, index) => (
          <col key={keyAt(index)} style={{ width: `${(share / whole) * 100}%` }} />
        ))}
      </colgroup>
      <thead>
        <tr>
          {columns.map((column, index) => (
            <th key={keyAt(index)} scope="col" className={cellClass(column)}>
              {column.head}
              {column.unit === undefined ? '' : `, ${column.unit}`}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {rows.map((row, index) => (
          <RowView key={keyAt(index)} row={row} columns={columns} />
        ))}
      </tbody>
    </table>
  );
};
