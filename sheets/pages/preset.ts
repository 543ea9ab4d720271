/** The preset check: every set as one walks the rail, what is wanted beside what is on record. */
import { textWidth } from '#drawings';
import type { House } from '#house';
import { phrase } from '#texts';
import { hangName, type SheetContext } from '../context.ts';
import { BODY_WIDTH, makeSheet, notAnOrder } from '../page-parts.ts';
import type { Block, Column, Row, Sheet, SheetData, Table, Words } from '../sheet.ts';
import { box, strong } from '../sheet.ts';
import { height } from '../words/say-set.ts';
import { inHouseWords } from '../words/trade-translation.ts';
import { fitted } from './column-shares.ts';
import { recordDependsOn, voidAfter } from './handover.ts';
import { isCounted, type SetOnRecord, setsOnRecord } from './handover-record.ts';
import { signLines } from './handover-signed.ts';
import { NOTE, TEXT } from './measure.ts';
import { isAt, type Preset, presetOf, presetWords } from './preset-trims.ts';

/** Share of the name of what hangs in the room that it has together with what is on record. */
const NAME_SHARE = 0.54;
/** More for the trim than its letters take: a browser sets a cell wider than print does. */
const TRIM_MORE = 0.015;
/** Points beside the words of a cell. */
const PADDING = 9;
/** A box is as wide as three figures. */
const BOX = '000';

const shareOfPoints = (points: number): number => (points + PADDING) / BODY_WIDTH.portrait;

const shareOf = (text: string): number =>
  shareOfPoints(textWidth(text, TEXT.size, { weight: 'strong' }));

const lettersOf = (words: Words): string =>
  words
    .map((each) => (typeof each === 'string' ? each : 'strong' in each ? each.strong : BOX))
    .join('');

/** No word of a record is broken, and a tag stands beside its box. */
const leastOf = ({ columns, rows }: Table, at: number, isWhole: boolean): number => {
  const head = shareOfPoints(textWidth(columns[at]?.head ?? '', NOTE.size));
  const texts = rows
    .map(({ cells }) => lettersOf(cells[at] ?? []))
    .flatMap((text) => (isWhole ? [text] : text.split(' ')));
  return Math.max(head, ...texts.map(shareOf));
};

/** Neither a long name nor a long record takes the room of the other on a part of the pages. */
const shared = (table: Table): Table => {
  const shareAt = (at: number): number => table.columns[at]?.share ?? 0;
  const tag = Math.max(shareAt(7), leastOf(table, 7, true));
  const room = shareAt(1) + shareAt(3) - TRIM_MORE - (tag - shareAt(7));
  const record = Math.max(room * (1 - NAME_SHARE), leastOf(table, 3, false));
  const shares: Readonly<Record<number, number>> = {
    1: room - record,
    2: shareAt(2) + TRIM_MORE,
    3: record,
    7: tag,
  };
  return {
    ...table,
    columns: table.columns.map((column, at) => ({ ...column, share: shares[at] ?? column.share })),
  };
};

/** The name of a rail stands in the head of its table, so that each of its pages has it. */
const columnsOf = (name: string, house: House): readonly Column[] => [
  { head: phrase(house, 'Set'), align: 'left', share: 0.065 },
  { head: name, align: 'left', share: 0.235 },
  { head: inHouseWords('Expected trim', house), align: 'right', share: 0.185 },
  { head: phrase(house, 'On record'), align: 'left', share: 0.195 },
  { head: inHouseWords('Trim', house), align: 'left', share: 0.06 },
  { head: phrase(house, 'Lock'), align: 'left', share: 0.06 },
  { head: phrase(house, 'Ring'), align: 'left', share: 0.06 },
  { head: phrase(house, 'Tag'), align: 'left', share: 0.07 },
  { head: phrase(house, 'Free'), align: 'left', share: 0.07 },
];

const recordedHeight = ({ set, standing }: SetOnRecord): number | null => {
  if (standing !== null) return standing.height;
  const { height: span } = set.recorded.state;
  // A motor has no part in a call: its height is what the document has.
  return set.lineSet.arbor === null && span !== null && span.low === span.high ? span.low : null;
};

/** Words that must not be passed over: they stand strong, and their row is ruled thick. */
const alarms = (on: SetOnRecord, house: House): readonly string[] => [
  ...(on.held === 'unheld' ? [phrase(house, 'NOT HELD')] : []),
  ...(on.standing === null && isCounted(on) ? [phrase(house, 'NOT KNOWN')] : []),
  ...(on.lock === 'open' ? [phrase(house, 'LOCK OPEN')] : []),
  ...(on.ring === 'off' ? [phrase(house, 'RING OFF')] : []),
  ...(on.collar === 'loose' ? [phrase(house, 'COLLAR LOOSE')] : []),
  ...(on.service === 'lockedOut' ? [phrase(house, 'LOCKED OUT')] : []),
  ...(on.service === 'paused' ? [phrase(house, 'work on it is paused')] : []),
];

const isElsewhere = (heightM: number | null, preset: Preset): boolean =>
  heightM !== null && preset.is === 'at' && !isAt(heightM, [preset.at]);

const recordWords = (on: SetOnRecord, preset: Preset, house: House): Words => {
  const heightM = recordedHeight(on);
  const said = heightM === null ? null : height(heightM, house);
  const others = alarms(on, house);
  const at =
    said === null
      ? []
      : isElsewhere(heightM, preset)
        ? [strong(phrase(house, 'ELSEWHERE: {at}', { at: said }))]
        : [said];
  return [
    ...at,
    ...(others.length === 0 ? [] : [strong(`${at.length === 0 ? '' : ', '}${others.join(', ')}`)]),
    ...(at.length === 0 && others.length === 0 ? [phrase(house, 'not recorded')] : []),
  ];
};

const NOT_THERE: Words = ['–'];

const rowOf = (on: SetOnRecord, { house, show }: SheetContext): Row => {
  const { set, tag, restraints } = on;
  const preset = presetOf(set, show);
  const isEmpty = set.hang === null;
  const isOdd = alarms(on, house).length > 0 || isElsewhere(recordedHeight(on), preset);
  const onSteel = restraints.length > 0 ? [phrase(house, ', restraint')] : [];
  return {
    cells: [
      [isEmpty ? set.lineSet.id : strong(set.lineSet.id)],
      [hangName(set, show, house)],
      [preset.is === 'at' ? strong(presetWords(preset, house)) : presetWords(preset, house)],
      [...recordWords(on, preset, house), ...onSteel],
      isEmpty ? NOT_THERE : [box],
      isCounted(on) ? [box] : NOT_THERE,
      isCounted(on) ? [box] : NOT_THERE,
      tag === null ? [box] : [box, strong(` ${tag.number}`)],
      [box],
    ],
    rule: isOdd ? 'thick' : 'hair',
    isMuted: isEmpty && !isOdd,
  };
};

type Walk = { readonly name: string; readonly sets: readonly SetOnRecord[] };

/** Rail after rail as the house lists them, and along each from down stage up. */
const walks = (sets: readonly SetOnRecord[], house: House): readonly Walk[] => {
  const named = house.rails.map(({ id, name }) => ({
    name,
    sets: sets.filter(({ set }) => set.lineSet.railId === id),
  }));
  const known = new Set(house.rails.map(({ id }) => id));
  const rest = sets.filter(
    ({ set: { lineSet } }) => lineSet.railId === null || !known.has(lineSet.railId),
  );
  return [...named, { name: phrase(house, 'At no rail'), sets: rest }].filter(
    (walk) => walk.sets.length > 0,
  );
};

const blocksOf = (context: SheetContext, all: readonly Walk[]): readonly Block[] => {
  const { house } = context;
  return [
    notAnOrder(house),
    {
      kind: 'text',
      words: [
        strong(phrase(house, 'Walk the rail and look; do not tick from the column beside it. ')),
        phrase(
          house,
          'Trim: the mark of the hand line stands where it is to. Lock closed, ring on. Tag: ' +
            'read it, and none where none is named. Free: nobody and nothing under it.',
        ),
      ],
    },
    ...all.map(({ name, sets }) =>
      shared(
        fitted(
          {
            kind: 'table',
            columns: columnsOf(all.length > 1 ? name : phrase(house, 'Hangs'), house),
            rows: sets.map((on) => rowOf(on, context)),
          },
          BODY_WIDTH.portrait,
        ),
      ),
    ),
    { kind: 'inkLines', count: 2 },
    ...signLines(house, phrase(house, 'Confirmed by both, at the half hour'), [
      phrase(house, 'Rail'),
      phrase(house, 'Head flyperson'),
    ]),
  ];
};

const dataOf = ({ house, show }: SheetContext, all: readonly Walk[]): SheetData => ({
  columns: ['rail', 'set', 'hangs', 'expected', 'on record', 'lock', 'ring', 'tag'],
  rows: all.flatMap(({ name, sets }) =>
    sets.map((on) => {
      const heightM = recordedHeight(on);
      return [
        name,
        on.set.lineSet.id,
        on.set.hang?.name ?? '',
        presetWords(presetOf(on.set, show), house),
        heightM === null ? '' : height(heightM, house),
        on.lock ?? '',
        on.ring ?? '',
        on.tag?.number ?? '',
      ];
    }),
  ),
});

export const presetSheet = (context: SheetContext): Sheet => {
  const { house, show } = context;
  const all = walks(setsOnRecord(context), house);
  return makeSheet(context, {
    id: 'preset-check',
    kind: 'preset-check',
    title: phrase(house, 'Preset check'),
    name: show?.name ?? house.name,
    beside: phrase(house, 'in the order in which one walks the rail'),
    blocks: blocksOf(context, all),
    voidIf: voidAfter(context),
    dependsOn: recordDependsOn(context),
    data: dataOf(context, all),
  });
};
