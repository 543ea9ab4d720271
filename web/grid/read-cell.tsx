import type { ReactNode } from 'react';
import { cellOf } from './cell-of.ts';

/** Inside a grid a cell that nobody types into says so; arrows reach it, to be read. */
const READ_ONLY = { 'data-cell': '', tabIndex: -1, 'aria-readonly': true } as const;

type ReadCellProps = {
  readonly className?: string;
  /** Name of its column, where cells are chosen several at a time. */
  readonly column?: string;
  readonly children?: ReactNode;
};

export const ReadCell = ({ className, column, children }: ReadCellProps) => (
  <td {...READ_ONLY} className={className} {...cellOf(column)}>
    {children}
  </td>
);
