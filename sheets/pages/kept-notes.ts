/** Small notes that no page parts in the middle: each a row, under a head that names them. */
import type { Row, Table, Words } from '../sheet.ts';

export const keptNotes = (head: string, notes: readonly Words[]): Table => ({
  kind: 'table',
  columns: [{ head, align: 'left', share: 1 }],
  rows: notes.map((words): Row => ({ cells: [words], rule: 'hair', isMuted: true })),
});
