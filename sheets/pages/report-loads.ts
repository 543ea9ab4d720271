/** Loads of a calculation report: what lies where in each state, and where each mass comes from. */

import type { PlacedLoad, SetAssessment, SetStructure, StructureState } from '#assessment';
import { hangingItems } from '#drawings';
import type { House } from '#house';
import { phrase, toldEach } from '#texts';
import type { Block, Row, Table, Words } from '../sheet.ts';
import { strong } from '../sheet.ts';
import { placesAcross, sideAndDistance } from '../words/say-across.ts';
import { notKnown } from '../words/say-known.ts';
import { sayMeasure } from '../words/say-measure.ts';
import { takeoffSource } from '../words/say-set.ts';
import { massUnit } from '../words/say-units.ts';
import { inHouseWords } from '../words/trade-translation.ts';
import { fitted } from './column-shares.ts';
import { REPORT_WIDTH } from './report-workings.ts';

const sayMass = (massKg: number, house: House): string =>
  sayMeasure({ value: massKg, kind: 'mass' }, house, { style: 'fine' });

/** States share a table of loads; more than so many stand in a table of their own. */
const STATES_A_TABLE = 3;

/** What the assessment calls the loads that belong to the batten. */
const FITTINGS = 'fittings at line';

const spotOf = ({ of, load }: PlacedLoad): string =>
  JSON.stringify('x' in load ? [of, load.x] : [of, load.from, load.to]);

/** Loads of one item that weigh alike in every state, and what each of them weighs. */
type Alike = {
  readonly of: string;
  readonly massesKg: readonly (number | null)[];
  readonly doubtKg: number | null;
  readonly loads: readonly PlacedLoad['load'][];
};

/** One place on the batten, followed through the states. */
const followed = (placed: PlacedLoad, states: readonly StructureState[]): Alike => {
  const spot = spotOf(placed);
  const here = states.map(({ loads }) => loads.find((each) => spotOf(each) === spot));
  const doubts = here.flatMap((each) => (each === undefined ? [] : [each.uncertaintyKg]));
  const isUnsaid = doubts.some((each) => each === null);
  return {
    of: placed.of,
    massesKg: here.map((each) => each?.load.mass ?? null),
    doubtKg: isUnsaid ? null : Math.max(...doubts.map((each) => each ?? 0)),
    loads: [placed.load],
  };
};

const alikeLoads = (states: readonly StructureState[]): readonly Alike[] => {
  const spots = new Map(
    states.flatMap(({ loads }) =>
      loads
        .filter(({ of }) => !of.startsWith(FITTINGS))
        .map((placed) => [spotOf(placed), placed] as const),
    ),
  );
  const groups = new Map<string, Alike>();
  for (const placed of spots.values()) {
    const one = followed(placed, states);
    const key = JSON.stringify([one.of, 'x' in placed.load, one.massesKg, one.doubtKg]);
    const loads = [...(groups.get(key)?.loads ?? []), ...one.loads];
    groups.set(key, { ...one, loads });
  }
  return [...groups.values()];
};

const whereWords = ({ loads }: Alike, house: House): string => {
  const xs = loads.flatMap((load) => ('x' in load ? [load.x] : []));
  const spans = loads.flatMap((load) => ('x' in load ? [] : [load]));
  if (xs.length > 0) {
    return placesAcross(
      xs.toSorted((one, other) => one - other),
      house,
    );
  }
  return spans
    .map(({ from, to }) =>
      phrase(house, '{sideAndDistance} to {sideAndDistance2}', {
        sideAndDistance: sideAndDistance(from, house),
        sideAndDistance2: sideAndDistance(to, house),
      }),
    )
    .join(', ');
};

const loadRow = (alike: Alike, house: House): Row => {
  const { of, massesKg, doubtKg, loads } = alike;
  const each =
    loads.length > 1 ? phrase(house, '{of}, each of {length}', { of, length: loads.length }) : of;
  return {
    cells: [
      [each],
      [whereWords(alike, house)],
      ...massesKg.map(
        (massKg): Words => [massKg === null ? phrase(house, 'none') : sayMass(massKg, house)],
      ),
      [doubtKg === null ? notKnown(house) : `± ${sayMass(doubtKg, house)}`],
    ],
    rule: 'hair',
  };
};

const loadTable = (states: readonly StructureState[], house: House): Table => {
  const unit = massUnit(house.units);
  return fitted(
    {
      kind: 'table',
      columns: [
        { head: phrase(house, 'Load'), align: 'left', share: 0 },
        { head: phrase(house, 'Place'), align: 'left', share: 0 },
        ...states.map(
          ({ name }) => ({ head: toldEach(house, name), unit, align: 'right', share: 0 }) as const,
        ),
        { head: phrase(house, 'Off by'), unit, align: 'right', share: 0 },
      ],
      rows: alikeLoads(states).map((alike) => loadRow(alike, house)),
    },
    REPORT_WIDTH,
  );
};

/** One line for each item: its total, and the source of each of its parts. */
const sourceItems = (set: SetAssessment, house: House): readonly Words[] =>
  hangingItems(set).flatMap(({ item }, index) => {
    const takeoff = set.takeoffs[index];
    if (takeoff === undefined) return [];
    const sources = [...new Set(takeoff.lines.map((line) => takeoffSource(line, house)))].join(
      '; ',
    );
    const total = takeoff.total.known
      ? sayMass(takeoff.total.value.massKg, house)
      : notKnown(house);
    return [[strong(`${item.name}, ${total}: `), sources]];
  });

/** The batten by itself: what is even along it, and what lies at each line. */
const battenWords = ({ lineSet }: SetAssessment, structure: SetStructure, house: House): Words => {
  const { pipe, left, right } = structure;
  const pipeKg = pipe.massPerLength * (right - left);
  const { fittingsPerLine } = lineSet.batten;
  const fittings = fittingsPerLine.known ? sayMass(fittingsPerLine.value, house) : notKnown(house);
  return [
    strong(inHouseWords('Batten itself, in every state: ', house)),
    phrase(house, '{mass} even from {sideAndDistance} to ', {
      mass: sayMass(pipeKg, house),
      sideAndDistance: sideAndDistance(left, house),
    }),
    phrase(house, '{sideAndDistance}, and fittings of {fittings} at each line.', {
      sideAndDistance: sideAndDistance(right, house),
      fittings,
    }),
  ];
};

export const loadBlocks = (
  set: SetAssessment,
  structure: SetStructure,
  house: House,
): readonly Block[] => {
  const hung = structure.states.filter(({ kind }) => kind !== 'bare');
  const tables = Array.from({ length: Math.ceil(hung.length / STATES_A_TABLE) }, (_, table) =>
    loadTable(hung.slice(table * STATES_A_TABLE, (table + 1) * STATES_A_TABLE), house),
  );
  const sources = sourceItems(set, house);
  return [
    { kind: 'text', words: battenWords(set, structure, house) },
    ...tables,
    ...(sources.length === 0
      ? []
      : [
          {
            kind: 'list' as const,
            heading: phrase(house, 'Where the masses come from'),
            items: sources,
          },
        ]),
  ];
};
