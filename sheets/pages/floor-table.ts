/** Gallery floors: what lies on them now, and with every show brick of the house come back. */

import type { FloorTotal } from '#assessment';
import { tradeWord } from '#drawings';
import type { Reckoned } from '#findings';
import type { Gallery, House, Known } from '#house';
import { message, phrase } from '#texts';
import type { SheetContext } from '../context.ts';
import { BODY_WIDTH } from '../page-parts.ts';
import type { Block, Column, Row, Table, Words } from '../sheet.ts';
import { strong } from '../sheet.ts';
import { notKnown, withGrounds } from '../words/say-known.ts';
import { sayMeasure } from '../words/say-measure.ts';
import { loadMass } from '../words/say-set.ts';
import { massUnit } from '../words/say-units.ts';
import { inHouseWords } from '../words/trade-translation.ts';
import { fitted } from './column-shares.ts';

type FloorKind = 'pressure' | 'forcePerLength' | 'count';

const sayLoad = (value: Reckoned<number>, kind: FloorKind, house: House): string =>
  value.known ? sayMeasure({ value: value.value, kind }, house, { round: 'up' }) : notKnown(house);

const sayLimit = (value: Known<number>, kind: FloorKind, house: House): string =>
  value.known
    ? sayMeasure({ value: value.value, kind }, house, { round: 'down' })
    : notKnown(house);

const whenWords = (when: FloorTotal['when'], house: House): string => {
  return when === 'recorded'
    ? phrase(house, 'as counted')
    : phrase(house, 'every show brick of the house on it');
};

const checksOf = (gallery: Gallery, total: FloorTotal) =>
  [
    { kind: 'pressure', load: total.pressure, limit: gallery.floorLimit },
    { kind: 'forcePerLength', load: total.lineLoad, limit: gallery.lineLoadLimit },
    { kind: 'count', load: total.courses, limit: gallery.coursesAllowed },
  ] as const;

const isPast = (load: Reckoned<number>, limit: Known<number>): boolean =>
  load.known && limit.known && load.value > limit.value;

const totalRow = (gallery: Gallery, total: FloorTotal, house: House): Row => {
  const checks = checksOf(gallery, total);
  const { bricks } = total;
  return {
    cells: [
      [whenWords(total.when, house)],
      [bricks.known ? loadMass(bricks.value, house) : notKnown(house)],
      ...checks.flatMap(({ kind, load, limit }) => {
        const said = sayLoad(load, kind, house);
        return [
          [isPast(load, limit) ? strong(phrase(house, '{said} OVER', { said })) : strong(said)],
          [sayLimit(limit, kind, house)],
        ];
      }),
    ],
    rule: checks.some(({ load, limit }) => isPast(load, limit)) ? 'thick' : 'hair',
  };
};

const galleryRows = (gallery: Gallery, totals: readonly FloorTotal[], house: House) => {
  const people = withGrounds(gallery.peopleAndTools, house, (massKg) => loadMass(massKg, house));
  const group: Row = {
    cells: [
      [
        strong(gallery.name),
        phrase(house, '  people and tools {people} counted in, over the floor', { people }),
      ],
    ],
    rule: 'hair',
    isGroup: true,
  };
  return [group, ...totals.map((total) => totalRow(gallery, total, house))];
};

const floorTable = ({ house, assessment }: SheetContext): Table => {
  const column = (head: string, align: Column['align'] = 'right'): Column => ({
    head,
    align,
    share: 0,
  });
  const bricks = tradeWord(house, 'bricks');
  return fitted(
    {
      kind: 'table',
      columns: [
        column(phrase(house, 'Gallery floor'), 'left'),
        {
          ...column(`${bricks.charAt(0).toUpperCase()}${bricks.slice(1)}`),
          unit: massUnit(house.units),
        },
        column(phrase(house, 'Whole floor')),
        column(phrase(house, 'limit')),
        column(phrase(house, 'Along a row')),
        column(phrase(house, 'limit')),
        column(phrase(house, 'Courses')),
        column(phrase(house, 'limit')),
      ],
      rows: house.galleries.flatMap((gallery) => {
        const own = assessment.totals.floors.filter((total) => total.gallery === gallery.id);
        return galleryRows(gallery, own, house);
      }),
    },
    BODY_WIDTH.landscape,
  );
};

export const floorBlocks = (context: SheetContext): readonly Block[] =>
  context.house.galleries.length === 0
    ? [{ kind: 'text', words: [phrase(context.house, 'No loading gallery is described.')] }]
    : [floorTable(context)];

/** How the figures of the floors come about. */
export const floorNotes = ({ house }: SheetContext): readonly Words[] =>
  house.galleries.length === 0
    ? []
    : [
        [
          strong(phrase(house, 'Floors: ')),
          inHouseWords(
            'g · (bricks + people and tools) / area. Along: one row, as many courses as it ' +
              'needs, the densest kind in all.',
            house,
          ),
        ],
      ];

/** What the floors lack, with why; a gallery by its name. */
export const floorUnknowns = (
  { galleries }: House,
  floors: readonly FloorTotal[],
): readonly string[] => [
  ...galleries.flatMap((gallery) =>
    (
      [
        [message('floor limit'), gallery.floorLimit],
        [message('limit along a row'), gallery.lineLoadLimit],
        [message('courses allowed'), gallery.coursesAllowed],
        [message('people and tools'), gallery.peopleAndTools],
      ] as const
    ).flatMap(([what, known]) =>
      known.known
        ? []
        : [`${gallery.name}: ${what}${known.why === undefined ? '' : ` (${known.why})`}`],
    ),
  ),
  ...floors.flatMap(({ bricks, pressure, courses, lineLoad }) =>
    [bricks, pressure, courses, lineLoad].flatMap((each) => (each.known ? [] : each.needs)),
  ),
];
