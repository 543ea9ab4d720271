import type { ReactNode } from 'react';

/** Inside a grid a cell that nobody types into says so; arrows reach it, to be read. */
const READ_ONLY = { 'data-cell': '', tabIndex: -1, 'aria-readonly': true } as const;

type ReadCellProps = { readonly className?: string; readonly children: ReactNode };

export const ReadCell = ({ className, children }: ReadCellProps) => (
  <td {...READ_ONLY} className={className}>
    {children}
  </td>
);
