/** Loft wells: what the lines of all sets put on each slot of the grid. */

import type { WellTotal } from '#assessment';
import type { House } from '#house';
import { phrase } from '#texts';
import type { SheetContext } from '../context.ts';
import { BODY_WIDTH } from '../page-parts.ts';
import type { Block, Row, Table, Words } from '../sheet.ts';
import { strong } from '../sheet.ts';
import { sideAndDistance } from '../words/say-across.ts';
import { steelForce, steelUnit } from '../words/say-force.ts';
import { forceOr, isPast, left, limitCell, NONE, right, share, spare } from './carrier-cells.ts';
import { fitted } from './column-shares.ts';

const wellTotalIn = (
  { assessment }: SheetContext,
  well: string,
  when: WellTotal['when'],
): WellTotal | undefined =>
  assessment.totals.wells.find((each) => each.well === well && each.when === when);

const wellForce = (of: WellTotal | undefined): number | null =>
  of?.force.known === true ? of.force.value.value : null;

/** The set that puts most on a well. */
const mostWords = (of: WellTotal | undefined, house: House): string => {
  if (of?.force.known !== true) return NONE;
  const most = of.force.value.sets.reduce<{ readonly set: string; readonly value: number } | null>(
    (worst, each) => (worst === null || each.value > worst.value ? each : worst),
    null,
  );
  return most === null ? NONE : `${steelForce(most.value, house)} (${most.set})`;
};

const wellsTable = (context: SheetContext): Table => {
  const { house } = context;
  const unit = steelUnit(house);
  const rows = house.loftWells.map((well): Row => {
    const planned = wellTotalIn(context, well.id, 'planned');
    const valueN = wellForce(planned);
    return {
      cells: [
        [strong(well.id)],
        [sideAndDistance(well.x, house)],
        [strong(forceOr(valueN, house))],
        [limitCell(well.limit, house)],
        [share(valueN, well.limit, house)],
        [spare(valueN, well.limit, house)],
        [mostWords(planned, house)],
        [forceOr(wellForce(wellTotalIn(context, well.id, 'bare')), house)],
      ],
      rule: isPast(valueN, well.limit) ? 'thick' : 'hair',
    };
  });
  return fitted(
    {
      kind: 'table',
      columns: [
        left(phrase(house, 'Loft well')),
        left(phrase(house, 'From the centre')),
        right(phrase(house, 'As planned'), unit),
        right(phrase(house, 'Limit'), unit),
        right(phrase(house, 'Of limit')),
        right(phrase(house, 'To spare'), unit),
        right(phrase(house, 'Most from a set'), unit),
        right(phrase(house, 'Nothing hung'), unit),
      ],
      rows,
    },
    BODY_WIDTH.landscape,
  );
};

const noWellWords = ({ assessment, house }: SheetContext): readonly Words[] => {
  const counts = new Map<string, number>();
  for (const { set } of assessment.totals.linesOnNoWell) {
    counts.set(set, (counts.get(set) ?? 0) + 1);
  }
  if (counts.size === 0) return [];
  const sets = [...counts].map(([set, count]) =>
    phrase(house, '{count} of set {set}', { count, set }),
  );
  return [
    [
      strong(phrase(house, 'On no well that the house lists: ')),
      phrase(house, 'lines, {sets}. What they put on the grid is in no total.', {
        sets: sets.join(', '),
      }),
    ],
  ];
};

export const wellBlocks = (context: SheetContext): readonly Block[] =>
  context.house.loftWells.length === 0
    ? [
        {
          kind: 'text',
          words: [
            phrase(
              context.house,
              'No loft well is described: what the lines put on the grid is not added up.',
            ),
          ],
        },
      ]
    : [wellsTable(context)];

/** How the figures of the wells come about, and which lines are in none. */
export const wellNotes = (context: SheetContext): readonly Words[] =>
  context.house.loftWells.length === 0
    ? []
    : [
        [
          strong(phrase(context.house, 'Wells: ')),
          phrase(
            context.house,
            'equilibrium of the loft blocks, level runs, each set at its heaviest. ',
          ),
          strong(phrase(context.house, 'Left out: ')),
          phrase(
            context.house,
            'the sideways part (as large, in the plane of the grid), starts and stops.',
          ),
        ],
        ...noWellWords(context),
      ];
