/**
 * How the hang list is laid out (`hang-columns.css`): its rows are grids, and a browser may then no
 * longer tell a reader of the screen that they are rows of a table. A role written down is kept.
 */
import type { CSSProperties } from 'react';
import { FOLDED } from '../frame/folded-roles.ts';
import type { Column } from './columns.ts';

export const GRID = { ...FOLDED, cell: { role: 'gridcell' } } as const;

export const overRows = (over: number): CSSProperties => ({ '--over': over }) as CSSProperties;

/** The columns that are shown, by the names that the style sheet has for their widths. */
export const columnTracks = (columns: readonly Column[]): CSSProperties =>
  ({
    '--columns': columns.map((column) => `var(--w-${column})`).join(' '),
    '--least': `calc(${columns.map((column) => `var(--m-${column})`).join(' + ')})`,
  }) as CSSProperties;
