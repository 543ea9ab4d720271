/** Loads of a calculation report: what lies where in each state, and where each mass comes from. */
import type { PlacedLoad, SetAssessment, SetStructure, StructureState } from '#assessment';
import { hangingItems } from '#drawings';
import type { House } from '#house';
import type { Block, Row, Table, Words } from '../sheet.ts';
import { strong } from '../sheet.ts';
import { placesAcross, sideAndDistance } from '../words/say-across.ts';
import { NOT_KNOWN } from '../words/say-known.ts';
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

/** One load and what it weighs in each state; units of one item that weigh alike stand together. */
type Alike = {
  readonly of: string;
  readonly massesKg: readonly (number | null)[];
  readonly doubtKg: number | null;
  readonly xs: number[];
  readonly spans: (readonly [number, number])[];
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
  for (const [spot, { of, load }] of spots) {
    const here = states.map(({ loads }) => loads.find((each) => spotOf(each) === spot));
    const massesKg = here.map((placed) => placed?.load.mass ?? null);
    const doubts = here.flatMap((placed) => (placed === undefined ? [] : [placed.uncertaintyKg]));
    const doubtKg = doubts.some((each) => each === null)
      ? null
      : Math.max(...doubts.map((each) => each ?? 0));
    const key = JSON.stringify([of, 'x' in load, massesKg, doubtKg]);
    const group = groups.get(key) ?? { of, massesKg, doubtKg, xs: [], spans: [] };
    groups.set(key, group);
    if ('x' in load) group.xs.push(load.x);
    else group.spans.push([load.from, load.to]);
  }
  return [...groups.values()];
};

const whereWords = ({ xs, spans }: Alike, house: House): string =>
  xs.length > 0
    ? placesAcross(
        xs.toSorted((one, other) => one - other),
        house,
      )
    : spans
        .map(([from, to]) => `${sideAndDistance(from, house)} to ${sideAndDistance(to, house)}`)
        .join(', ');

const loadRow = (alike: Alike, house: House): Row => {
  const { of, massesKg, doubtKg, xs } = alike;
  const each = xs.length > 1 ? `${of}, each of ${xs.length}` : of;
  return {
    cells: [
      [each],
      [whereWords(alike, house)],
      ...massesKg.map((massKg): Words => [massKg === null ? 'none' : sayMass(massKg, house)]),
      [doubtKg === null ? NOT_KNOWN : `± ${sayMass(doubtKg, house)}`],
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
        { head: 'Load', align: 'left', share: 0 },
        { head: 'Place', align: 'left', share: 0 },
        ...states.map(({ name }) => ({ head: name, unit, align: 'right', share: 0 }) as const),
        { head: 'Off by', unit, align: 'right', share: 0 },
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
    const sources = [...new Set(takeoff.lines.map(takeoffSource))].join('; ');
    const total = takeoff.total.known ? sayMass(takeoff.total.value.massKg, house) : NOT_KNOWN;
    return [[strong(`${item.name}, ${total}: `), sources]];
  });

/** The batten by itself: what is even along it, and what lies at each line. */
const battenWords = ({ lineSet }: SetAssessment, structure: SetStructure, house: House): Words => {
  const { pipe, left, right } = structure;
  const pipeKg = pipe.massPerLength * (right - left);
  const { fittingsPerLine } = lineSet.batten;
  const fittings = fittingsPerLine.known ? sayMass(fittingsPerLine.value, house) : NOT_KNOWN;
  return [
    strong(inHouseWords('Batten itself, in every state: ', house)),
    `${sayMass(pipeKg, house)} even from ${sideAndDistance(left, house)} to `,
    `${sideAndDistance(right, house)}, and fittings of ${fittings} at each line.`,
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
      : [{ kind: 'list' as const, heading: 'Where the masses come from', items: sources }]),
  ];
};
