/** The heads of the columns: each sorts by its column when it is pressed. */

import { memo } from 'react';
import { tradeWord } from '#drawings';
import type { House } from '#house';
import { useTell } from '../language/use-tell.ts';
import { type Column, headsOf } from './columns.ts';
import { GRID } from './grid-layout.ts';
import type { Sort } from './row-sort.ts';

/** The ends of the slices: the arbor is heavy on the side where it hangs. */
const SliceEnds = ({ house }: { readonly house: House }) => {
  const ends = [tradeWord(house, 'arborHeavy'), tradeWord(house, 'battenHeavy')];
  const [left, right] = house.stage.operatingSide === 'stageRight' ? ends : ends.toReversed();
  return (
    <small className="slice-ends">
      <span>{left}</span>
      <span>{right}</span>
    </small>
  );
};

type HeadProps = {
  readonly house: House;
  readonly sort: Sort | null;
  readonly onSort: (column: Column) => void;
};

const SAID = { up: 'ascending', down: 'descending' } as const;

export const HangListHead = memo(({ house, sort, onSort }: HeadProps) => {
  const tell = useTell();
  return (
    <thead {...GRID.rows}>
      <tr {...GRID.row} data-row="">
        {headsOf(house).map(({ column, words, unit, className }) => (
          <th
            {...GRID.columnHead}
            key={column}
            scope="col"
            className={className}
            data-col={column}
            aria-sort={sort?.column === column ? SAID[sort.way] : undefined}
          >
            <button
              type="button"
              className="sorter"
              data-cell=""
              tabIndex={-1}
              title={tell('sort by {words}', { words })}
              onClick={() => onSort(column)}
            >
              <span>{words}</span>
              {unit === undefined ? null : <small>{unit}</small>}
            </button>
            {className === 'slice' ? <SliceEnds house={house} /> : null}
          </th>
        ))}
      </tr>
    </thead>
  );
});
HangListHead.displayName = 'HangListHead';
