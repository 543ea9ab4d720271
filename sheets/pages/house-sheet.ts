/** The house sheet: what a visiting production has to know of the house, and what nobody knows. */

import type { SetAssessment } from '#assessment';
import { tradeWord } from '#drawings';
import type { House, Known, LineSet } from '#house';
import { FOOT, formatLength, type Metres, metres, POUND } from '#quantities';
import { phrase } from '#texts';
import type { SheetContext } from '../context.ts';
import { BODY_WIDTH, makeSheet, notAnOrder, voidWords, writtenHouse } from '../page-parts.ts';
import type { Block, Column, Row, Sheet, SheetData, Table, Words } from '../sheet.ts';
import { strong } from '../sheet.ts';
import { notKnown } from '../words/say-known.ts';
import { sayMeasure } from '../words/say-measure.ts';
import { height, kindOfSet } from '../words/say-set.ts';
import { lengthUnit, massUnit } from '../words/say-units.ts';
import { inHouseWords } from '../words/trade-translation.ts';
import { fitted } from './column-shares.ts';
import { houseFacts, keepClear } from './house-facts.ts';
import { keptNotes } from './kept-notes.ts';
import { type Alike, alikeOf, type Fact, factsOf } from './set-facts.ts';

/** `1 to 13, 20`: neighbours along the rail are drawn together. */
export const setsInRailOrder = (sets: readonly LineSet[], house: House): string => {
  const { lineSets } = house;
  const places = sets.map((set) => lineSets.indexOf(set));
  const runs: { first: number; last: number }[] = [];
  for (const place of places) {
    const run = runs.at(-1);
    if (run !== undefined && place === run.last + 1) run.last = place;
    else runs.push({ first: place, last: place });
  }
  const idAt = (place: number): string => lineSets[place]?.id ?? '';
  return runs
    .flatMap(({ first, last }) => {
      if (last - first < 2) return first === last ? [idAt(first)] : [idAt(first), idAt(last)];
      return [phrase(house, '{from} to {to}', { from: idAt(first), to: idAt(last) })];
    })
    .join(', ');
};

/** So many types stand beside one another; more are shared out evenly over tables. */
const TYPES_MOST = 5;
const HEAD_SHARE = 0.16;

const typesTable = (alike: readonly Alike[], facts: readonly Fact[], house: House): Table => {
  const row = (head: string, words: readonly Words[]): Row => ({
    cells: [[strong(head)], ...words],
    rule: 'hair',
  });
  const remarks = alike.map(({ sets }) => remarkOfAll(sets));
  const sets = alike.map(({ sets: own }): Words => [strong(setsInRailOrder(own, house))]);
  return {
    kind: 'table',
    columns: [
      { head: phrase(house, 'Type'), align: 'left', share: HEAD_SHARE },
      ...alike.map(
        ({ name }): Column => ({
          head: name,
          align: 'left',
          share: (1 - HEAD_SHARE) / alike.length,
        }),
      ),
    ],
    rows: [
      row(phrase(house, 'Sets'), sets),
      ...facts.map(({ head }, index) =>
        row(
          head,
          alike.map(({ said }): Words => [said[index]?.words ?? notKnown(house)]),
        ),
      ),
      ...(remarks.some((remark) => remark !== '')
        ? [
            row(
              phrase(house, 'Remarks'),
              remarks.map((remark): Words => [remark]),
            ),
          ]
        : []),
    ],
  };
};

const remarkOfAll = (sets: readonly LineSet[]): string => {
  const [first] = sets;
  const remark = first?.remark;
  return remark !== undefined && sets.every((set) => set.remark === remark) ? remark : '';
};

const typeTables = (alike: readonly Alike[], facts: readonly Fact[], house: House): Block[] => {
  const tables = Math.ceil(alike.length / TYPES_MOST);
  const each = Math.ceil(alike.length / tables);
  return Array.from({ length: tables }, (_, table) =>
    typesTable(alike.slice(table * each, (table + 1) * each), facts, house),
  );
};

const lengthCell = (value: Known<Metres>, house: House): string =>
  value.known ? formatLength(value.value, house) : notKnown(house);

const nextWords = (set: LineSet, next: LineSet | undefined, house: House): string => {
  if (next === undefined) return '–';
  if (!set.y.known || !next.y.known) return notKnown(house);
  return formatLength(metres(next.y.value - set.y.value), house, {
    customaryLength: 'inches',
  });
};

const battenLength = ({ batten }: LineSet): number | null =>
  batten.left.known && batten.right.known ? batten.right.value - batten.left.value : null;

const stateWords = ({ recorded }: SetAssessment, house: House): string => {
  const { service, tag } = recorded.state;
  if (service === 'lockedOut') {
    return tag === null
      ? phrase(house, 'LOCKED OUT')
      : phrase(house, 'LOCKED OUT, tag {number}', { number: tag.number });
  }
  return service === 'deadHung' ? phrase(house, 'now dead-hung') : '';
};

const setRow = (
  set: SetAssessment,
  next: SetAssessment | undefined,
  alike: readonly Alike[],
  house: House,
): Row => {
  const { lineSet } = set;
  const group = alike.find(({ sets }) => sets.includes(lineSet));
  const own = group !== undefined && remarkOfAll(group.sets) === '' ? (lineSet.remark ?? '') : '';
  const state = stateWords(set, house);
  const lengthM = battenLength(lineSet);
  const bay = house.bays.find(({ sets }) => sets.includes(lineSet.id));
  return {
    cells: [
      [strong(lineSet.id)],
      [lengthCell(lineSet.y, house)],
      [nextWords(lineSet, next?.lineSet, house)],
      [group?.name ?? lineSet.typeId],
      // The type says the rest; every row must stay one line high.
      [kindOfSet(lineSet, house).replace(' purchase', '')],
      [lineSet.lineXs === null ? notKnown(house) : `${lineSet.lineXs.length}`],
      [lengthM === null ? notKnown(house) : height(lengthM, house)],
      [lengthCell(lineSet.lowStop.height, house)],
      [lengthCell(lineSet.highStop.height, house)],
      [
        lineSet.liveLimit.known
          ? sayMeasure({ value: lineSet.liveLimit.value, kind: 'mass' }, house, { round: 'down' })
          : notKnown(house),
      ],
      [bay?.id ?? phrase(house, 'none')],
      [...(state === '' ? [] : [strong(state)]), state === '' || own === '' ? own : `; ${own}`],
    ],
    rule: 'hair',
  };
};

const setsTable = ({ house, assessment }: SheetContext, alike: readonly Alike[]): Table => {
  const unit = lengthUnit(house.units);
  const column = (head: string, align: Column['align'], of?: string): Column => ({
    head,
    align,
    share: 0,
    ...(of === undefined ? {} : { unit: of }),
  });
  const batten = tradeWord(house, 'batten');
  return fitted(
    {
      kind: 'table',
      columns: [
        column(phrase(house, 'Set'), 'left'),
        column(phrase(house, 'Position'), 'right', unit),
        column(phrase(house, 'To next'), 'right', house.units === 'customary' ? 'in' : unit),
        column(phrase(house, 'Type'), 'left'),
        column(phrase(house, 'Kind'), 'left'),
        column(phrase(house, 'Lines'), 'right'),
        column(`${batten.charAt(0).toUpperCase()}${batten.slice(1)}`, 'right', unit),
        column(phrase(house, 'Low'), 'right', unit),
        column(phrase(house, 'High'), 'right', unit),
        column(phrase(house, 'Live limit'), 'right', massUnit(house.units)),
        column(phrase(house, 'Bay'), 'left'),
        column(phrase(house, 'Remarks'), 'left'),
      ],
      rows: assessment.sets.map((set, index) =>
        setRow(set, assessment.sets[index + 1], alike, house),
      ),
    },
    BODY_WIDTH.landscape,
  );
};

const howToRead = (house: House): Words => [
  inHouseWords(
    'Positions from the plaster line to the middle of the batten, heights of the batten above ' +
      'the deck. Arbor: what it takes beside its pipe weight, in the heaviest show bricks; the ' +
      'least of mass, rod and reach is the limit. By reach: with the batten between its low stop ' +
      'and its working height. Galleries: batten heights at which a loader reaches the first ' +
      'brick on the pipe weight, and the last that the rod takes. SR and SL: stage right, stage ' +
      'left.',
    house,
  ),
];

const withWhy = (head: string, why: string): string => {
  const name = `${head.charAt(0).toLowerCase()}${head.slice(1)}`;
  return why === '' ? name : `${name} (${why})`;
};

/** One line for the house, and one for the types that lack the same. */
const unknownItems = (
  alike: readonly Alike[],
  facts: readonly Fact[],
  house: House,
): readonly Words[] => {
  const lacking = new Map<string, string[]>();
  facts.forEach(({ head }, index) => {
    const lacks = alike.flatMap(({ name, said }) =>
      [...new Set(said[index]?.unknown ?? [])].map((why) => ({ name, what: withWhy(head, why) })),
    );
    for (const what of new Set(lacks.map((lack) => lack.what))) {
      const names = lacks.filter((lack) => lack.what === what).map(({ name }) => name);
      const key = names.join(', ');
      lacking.set(key, [...(lacking.get(key) ?? []), what]);
    }
  });
  const ofHouse = houseFacts(house).flatMap(({ head, said }) =>
    [...new Set(said.unknown)].map((why) => withWhy(head, why)),
  );
  return [
    ...(ofHouse.length === 0 ? [] : [[strong(phrase(house, 'House: ')), ofHouse.join('; ')]]),
    ...[...lacking].map(([names, whats]): Words => [strong(`${names}: `), whats.join('; ')]),
  ];
};

/** Pairs side by side, so that the house takes half the height. */
const houseTable = (house: House): Table => {
  const facts = houseFacts(house);
  const half = Math.ceil(facts.length / 2);
  return {
    kind: 'table',
    columns: [
      { head: phrase(house, 'House'), align: 'left', share: 0.17 },
      { head: '', align: 'left', share: 0.33 },
      { head: '', align: 'left', share: 0.17 },
      { head: '', align: 'left', share: 0.33 },
    ],
    rows: facts.slice(0, half).map((fact, index): Row => {
      const beside = facts[half + index];
      return {
        cells: [
          [strong(fact.head)],
          [fact.said.words],
          beside === undefined ? [''] : [strong(beside.head)],
          [beside?.said.words ?? ''],
        ],
        rule: 'hair',
      };
    }),
  };
};

const keepClearBlocks = (house: House): readonly Block[] => {
  const items = keepClear(house);
  return items.length === 0
    ? []
    : [keptNotes(inHouseWords('Keep clear, from the plaster line', house), items)];
};

/** One after another: a house has many, and none of them is long. */
const remarkBlocks = (house: House): readonly Block[] =>
  house.remarks.length === 0
    ? []
    : [keptNotes(phrase(house, 'Remarks on the house'), [[house.remarks.join(' ')]])];

/** By side, as on the sheet: a cell that begins with a sign is taken for a formula. */
const acrossText = (across: number): string => {
  const distance = Number(Math.abs(across).toFixed(3));
  return distance === 0 ? '0' : `${across < 0 ? 'SR' : 'SL'} ${distance}`;
};

const dataOf = ({ house, assessment }: SheetContext, alike: readonly Alike[]): SheetData => {
  const [perLength, perMass] = house.units === 'customary' ? [FOOT, POUND] : [1, 1];
  const unit = lengthUnit(house.units);
  const size = (value: Known<number>, per: number): number | null =>
    value.known ? Number((value.value / per).toFixed(3)) : null;
  return {
    columns: [
      'set',
      `position (${unit})`,
      'type',
      'kind',
      'lines (number)',
      `lines from the centre (${unit})`,
      `${tradeWord(house, 'batten')} length (${unit})`,
      `low (${unit})`,
      `working (${unit})`,
      `high (${unit})`,
      `live limit (${massUnit(house.units)})`,
      'bay',
      'remarks',
    ],
    rows: assessment.sets.map((set) => {
      const { lineSet } = set;
      const lengthM = battenLength(lineSet);
      return [
        lineSet.id,
        size(lineSet.y, perLength),
        alike.find(({ sets }) => sets.includes(lineSet))?.name ?? lineSet.typeId,
        kindOfSet(lineSet, house),
        lineSet.lineXs?.length ?? null,
        lineSet.lineXs?.map((xM) => acrossText(xM / perLength)).join('; ') ?? null,
        lengthM === null ? null : Number((lengthM / perLength).toFixed(3)),
        size(lineSet.lowStop.height, perLength),
        size(lineSet.workingHeight, perLength),
        size(lineSet.highStop.height, perLength),
        size(lineSet.liveLimit, perMass),
        house.bays.find(({ sets }) => sets.includes(lineSet.id))?.id ?? null,
        [stateWords(set, house), lineSet.remark].filter((each) => each !== '').join('; '),
      ];
    }),
  };
};

export const houseSheet = (context: SheetContext): Sheet => {
  const { house, state } = context;
  const facts = factsOf(house);
  const alike = alikeOf(house, facts);
  const unknowns = unknownItems(alike, facts, house);
  return makeSheet(context, {
    id: 'house-sheet',
    kind: 'house-sheet',
    title: phrase(house, 'House sheet'),
    name: house.name,
    beside: phrase(house, 'for visiting productions: {length} sets in rail order', {
      length: house.lineSets.length,
    }),
    orientation: 'landscape',
    blocks: [
      notAnOrder(house),
      houseTable(house),
      keptNotes(
        phrase(house, 'Not known'),
        unknowns.length === 0 ? [[phrase(house, 'Nothing that this sheet asks for.')]] : unknowns,
      ),
      ...keepClearBlocks(house),
      keptNotes(phrase(house, 'How to read this sheet'), [howToRead(house)]),
      ...typeTables(alike, facts, house),
      setsTable(context, alike),
      ...remarkBlocks(house),
      { kind: 'inkLines', count: 2 },
    ],
    voidIf: voidWords(context, null),
    dependsOn: { house: writtenHouse(context), sets: state?.sets ?? null },
    data: dataOf(context, alike),
  });
};
