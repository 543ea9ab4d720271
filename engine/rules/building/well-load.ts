import { measure, reckoned } from '#findings';
import { raise } from '../raise.ts';
import type { HouseRule } from '../rule.ts';
import { setList } from '../set-list.ts';
import { judgeCarrier } from './carried-total.ts';

/** The tensions at the loft blocks have the lines in them already. */
const NO_WIRE = reckoned(0);

/** STL-004 and STL-005: the lines of all sets put no more on a loft well than it may carry. */
export const wellLoad: HouseRule = ({ house, assessment }) =>
  house.loftWells.flatMap((well) =>
    judgeCarrier(
      {
        name: `loft well ${well.id}`,
        totals: assessment.totals.wells
          .filter((one) => one.well === well.id)
          .map(({ when, force }) => ({ when, total: force, wire: NO_WIRE })),
        limit: well.limit,
        limitName: `limit of loft well ${well.id}`,
        formula: 'trade formula C42: Σ pull of the lines at their loft blocks',
      },
      { over: 'STL-004', near: 'STL-005' },
    ),
  );

/** STL-006: lines on no loft well are added to none, and what carries them is not judged. */
export const linesOnNoWell: HouseRule = ({ house, assessment }) => {
  const lines = assessment.totals.linesOnNoWell;
  if (lines.length === 0) return [];
  const ids = new Set(lines.map(({ set }) => set));
  return [
    raise('STL-006', {
      at: {},
      measured: measure(lines.length, 'count'),
      facts: {
        sets: setList(
          house,
          house.lineSets.filter(({ id }) => ids.has(id)),
        ),
      },
    }),
  ];
};
