/** How this page looks at the list; which columns are hidden outlives it on the device. */
import { useMemo, useState } from 'react';
import { useSameActs } from '../grid/use-same-acts.ts';
import type { SetReckoning } from '../reckoning/reckon.ts';
import type { Telling } from './cell-text.ts';
import type { Column } from './columns.ts';
import { hiddenOnDevice, rememberHidden } from './columns-on-device.ts';
import type { Filter } from './row-filter.ts';
import { nextSort } from './row-sort.ts';
import { RAIL_ORDER, withFilter, withSort } from './sheet-view.ts';

export const useSheetView = (sets: readonly SetReckoning[], telling: Telling) => {
  const [view, setView] = useState(RAIL_ORDER);
  const [hidden, setHidden] = useState(hiddenOnDevice);
  const acts = useSameActs({
    sortBy: (column: Column): void =>
      setView(withSort(view, nextSort(view.sort, column), sets, telling)),
    filterBy: (part: Partial<Filter>): void =>
      setView(withFilter(view, { ...view.filter, ...part }, sets, telling)),
    toRail: (): void => setView(RAIL_ORDER),
    hide: (columns: ReadonlySet<Column>): void => {
      setHidden(columns);
      rememberHidden(columns);
    },
  });
  return useMemo(() => ({ view, hidden, ...acts }), [view, hidden, acts]);
};

export type ViewOfSheet = ReturnType<typeof useSheetView>;
