/** For spans in a line, the first row in which each lies clear of those before it. */
export const inRows = (
  spans: readonly { readonly from: number; readonly to: number }[],
): readonly number[] => {
  const ends: number[] = [];
  const order = spans
    .map((span, index) => ({ ...span, index }))
    .toSorted((one, other) => one.from - other.from);
  const rows: number[] = spans.map(() => 0);
  for (const { from, to, index } of order) {
    const free = ends.findIndex((end) => end <= from);
    const row = free === -1 ? ends.length : free;
    ends[row] = to;
    rows[index] = row;
  }
  return rows;
};
