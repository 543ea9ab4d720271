/** The weight take-off: every line of every piece with its source, and the hardware line. */

import type { SetAssessment } from '#assessment';
import { hangingItems } from '#drawings';
import type { House } from '#house';
import { POUND } from '#quantities';
import type { Item } from '#show';
import type { TakeoffLine } from '#takeoff';
import { message, phrase, told } from '#texts';
import type { SheetContext } from '../context.ts';
import { BODY_WIDTH, houseFor, makeSheet, notAnOrder, voidWords } from '../page-parts.ts';
import type { Column, Row, Sheet, SheetData, Words } from '../sheet.ts';
import { strong } from '../sheet.ts';
import { basisWords, brickMass, loadMass, takeoffSource } from '../words/say-set.ts';
import { massUnit } from '../words/say-units.ts';
import { inHouseWords } from '../words/trade-translation.ts';
import { fitted } from './column-shares.ts';

const columnsOf = (house: House): readonly Column[] => {
  const unit = massUnit(house.units);
  return [
    { head: phrase(house, 'Item'), align: 'left', share: 0.28 },
    { head: phrase(house, 'Number'), align: 'right', share: 0.07 },
    { head: phrase(house, 'Each'), unit, align: 'right', share: 0.09 },
    { head: phrase(house, 'Total'), unit, align: 'right', share: 0.09 },
    { head: phrase(house, 'Off by'), unit, align: 'right', share: 0.09 },
    { head: phrase(house, 'Source'), align: 'left', share: 0.28 },
    { head: phrase(house, 'Signed'), align: 'left', share: 0.1, isWritten: true },
  ];
};

const NOT_KNOWN = message('unknown');

const massCell = (massKg: number | null, house: House): Words => [
  massKg === null ? phrase(house, NOT_KNOWN) : brickMass(massKg, house),
];

const lineRow = (line: TakeoffLine, house: House): Row => ({
  cells: [
    [line.name],
    [line.count === null ? phrase(house, NOT_KNOWN) : `${line.count}`],
    massCell(line.eachKg, house),
    massCell(line.totalKg, house),
    line.uncertaintyKg === null
      ? [phrase(house, NOT_KNOWN)]
      : [`± ${loadMass(line.uncertaintyKg, house)}`],
    [takeoffSource(line, house)],
    [''],
  ],
  rule: 'hair',
});

/** The fittings on the batten: part of its own mass, and therefore said and not added. */
const hardwareRow = (set: SetAssessment, house: House): Row => {
  const { batten, lineXs } = set.lineSet;
  const { fittingsPerLine } = batten;
  const count = lineXs?.length ?? null;
  const eachKg = fittingsPerLine.known ? fittingsPerLine.value : null;
  const totalKg = eachKg === null || count === null ? null : eachKg * count;
  return {
    cells: [
      [phrase(house, 'Hardware: fittings and trim chain')],
      [count === null ? phrase(house, NOT_KNOWN) : `${count}`],
      massCell(eachKg, house),
      massCell(totalKg, house),
      [''],
      [inHouseWords('in the batten, not added', house)],
      [''],
    ],
    rule: 'hair',
    isMuted: true,
  };
};

const totalRow = (set: SetAssessment, house: House): Row => {
  const { hung } = set;
  const name = [strong(phrase(house, 'Hung, without loom'))];
  if (!hung.known) {
    return {
      cells: [
        name,
        [''],
        [''],
        [strong(phrase(house, NOT_KNOWN))],
        [''],
        [told(house, hung.needs.join('; '))],
        [''],
      ],
      rule: 'thick',
    };
  }
  const { withoutLoom, loom, uncertainty, uncertaintyRss } = hung.value;
  const rss =
    uncertaintyRss === null
      ? []
      : [
          phrase(house, 'root sum square \u00B1 {uncertaintyRss}', {
            uncertaintyRss: loadMass(uncertaintyRss, house),
          }),
        ];
  const cable =
    loom > 0 ? [phrase(house, 'loom {loom} more', { loom: loadMass(loom, house) })] : [];
  return {
    cells: [
      name,
      [''],
      [''],
      [strong(loadMass(withoutLoom, house))],
      uncertainty === null
        ? [phrase(house, NOT_KNOWN)]
        : [strong(`± ${loadMass(uncertainty, house)}`)],
      [[...cable, ...rss].join('; ')],
      [''],
    ],
    rule: 'thick',
  };
};

/**
 * An item of one line goes by its own name; more lines carry it before theirs, but where the set
 * has that name already, which stands above them all.
 */
const lineName = (
  line: TakeoffLine,
  { item, hangName }: { readonly item: Item; readonly hangName: string },
  bodies: readonly TakeoffLine[],
  house: House,
): string => {
  if (item.name === hangName && bodies.length > 1)
    return line.isHem ? phrase(house, 'hem') : told(house, line.name);
  if (line.isHem) return phrase(house, '{name}, hem', { name: item.name });
  return bodies.length === 1 ? item.name : `${item.name}: ${told(house, line.name)}`;
};

const setRows = (set: SetAssessment, house: House): readonly Row[] => {
  if (set.hang === null) return [];
  const hangName = set.hang.name;
  const group: Row = {
    cells: [[strong(`${set.lineSet.id}  ${hangName}`)]],
    rule: 'hair',
    isGroup: true,
  };
  const items = hangingItems(set).flatMap(({ item }, index) => {
    const lines = set.takeoffs[index]?.lines ?? [];
    const bodies = lines.filter(({ isHem }) => !isHem);
    const named = { item, hangName };
    return lines.map((line) =>
      lineRow({ ...line, name: lineName(line, named, bodies, house) }, house),
    );
  });
  return [group, ...items, hardwareRow(set, house), totalRow(set, house)];
};

const dataOf = (sets: readonly SetAssessment[], house: House): SheetData => {
  const unit = massUnit(house.units);
  const perUnit = house.units === 'customary' ? POUND : 1;
  const size = (massKg: number | null): number | null =>
    massKg === null ? null : Number((massKg / perUnit).toFixed(2));
  return {
    columns: [
      'set',
      'hang',
      'item',
      'line',
      'number',
      `each (${unit})`,
      `total (${unit})`,
      `off by (${unit})`,
      'basis',
      'source',
    ],
    rows: sets.flatMap((set) =>
      set.takeoffs.flatMap(({ item, lines }) =>
        lines.map((line) => [
          set.lineSet.id,
          set.hang?.name ?? '',
          item.name,
          line.name,
          line.count,
          size(line.eachKg),
          size(line.totalKg),
          size(line.uncertaintyKg),
          line.basis === null ? null : basisWords(line.basis),
          line.source,
        ]),
      ),
    ),
  };
};

/** Every piece of the show, in rail order, line by line. */
export const takeOffSheet = (context: SheetContext): Sheet => {
  const { house, show, assessment } = context;
  const hung = assessment.sets.filter(({ hang }) => hang !== null);
  const rows = hung.flatMap((set) => setRows(set, house));
  return makeSheet(context, {
    id: 'take-off',
    kind: 'take-off',
    title: phrase(house, 'Weight take-off'),
    name: show?.name ?? house.name,
    orientation: 'landscape',
    blocks: [
      notAnOrder(house),
      rows.length === 0
        ? { kind: 'text', words: [phrase(house, 'Nothing is hung.')] }
        : fitted({ kind: 'table', columns: columnsOf(house), rows }, BODY_WIDTH.landscape),
      {
        kind: 'text',
        isNote: true,
        words: [
          phrase(
            house,
            'Off by: every figure at its worst, added up; every limit is checked with that. ',
          ),
          phrase(house, 'Root sum square is for information: nothing is checked by it.'),
        ],
      },
      { kind: 'inkLines', count: 2 },
    ],
    voidIf: voidWords(context, null),
    dependsOn: { house: houseFor(context), hangs: show?.hangs ?? null },
    data: dataOf(hung, house),
  });
};
