/**
 * The note for the next head flyman: what is not as planned, what nobody knows, what holds what,
 * and how old each count is. Made from the record; two people sign it at the rail.
 */
import type { House } from '#house';
import { phrase, phraseCount } from '#texts';
import { hangName, type SheetContext } from '../context.ts';
import { houseFor, makeSheet, notAnOrder, voidWords } from '../page-parts.ts';
import type { Block, Paragraph, Row, Sheet, Table, Words } from '../sheet.ts';
import { strong } from '../sheet.ts';
import { sayMoment } from '../words/say-moment.ts';
import { bricksLost, brickTable } from './handover-bricks.ts';
import { countsData, countTable } from './handover-counts.ts';
import { differenceWords, isNotBegun } from './handover-differences.ts';
import { isCounted, personName, type SetOnRecord, setsOnRecord } from './handover-record.ts';
import { restraintTable, tagTable } from './handover-registers.ts';
import { signLines } from './handover-signed.ts';
import { stopNotices, unheldNotices, unknownNotice, workBlocks } from './handover-work.ts';
import { setsInRailOrder } from './house-sheet.ts';

const heading = (text: string): Block => ({ kind: 'heading', text });

const text = (...words: Words): Paragraph => ({ kind: 'text', words });

/** Where all this comes from: a call that runs, the document, or nothing. */
const sourceBlock = ({ house, now, state }: SheetContext): Block => {
  const call = now?.call ?? null;
  if (call !== null) {
    const at = new Date(call.openedMs).toISOString();
    return text(
      phrase(house, 'Made from the record of the call that was opened at {at}.', {
        at: sayMoment(at, house),
      }),
    );
  }
  if (state === null) {
    return {
      kind: 'notice',
      degree: 'caution',
      heading: phrase(house, 'NOTHING IS RECORDED'),
      words: [phrase(house, 'Nobody has recorded how any set stands. Count and measure first.')],
    };
  }
  return text(
    phrase(house, 'No call is open. Made from the record of {at} by {by}.', {
      at: sayMoment(state.at, house),
      by: state.by,
    }),
  );
};

const listed = (sets: readonly SetOnRecord[], house: House): string =>
  setsInRailOrder(
    sets.map(({ set }) => set.lineSet),
    house,
  );

const differenceTable = (
  { house, show }: SheetContext,
  sets: readonly { readonly on: SetOnRecord; readonly words: readonly string[] }[],
): Table => ({
  kind: 'table',
  columns: [
    { head: phrase(house, 'Set'), align: 'left', share: 0.09 },
    { head: phrase(house, 'Hangs'), align: 'left', share: 0.27 },
    { head: phrase(house, 'Otherwise than the show plans it'), align: 'left', share: 0.64 },
  ],
  rows: sets.map(
    ({ on, words }): Row => ({
      cells: [
        [strong(on.set.lineSet.id)],
        [hangName(on.set, show, house)],
        [`${words.join('; ')}.`],
      ],
      rule: 'hair',
    }),
  ),
});

const planBlocks = (context: SheetContext, sets: readonly SetOnRecord[]): readonly Block[] => {
  const { house } = context;
  const known = sets.filter(({ standing }) => standing !== null);
  const begun = known.filter((on) => !isNotBegun(on));
  const waiting = known.filter(isNotBegun);
  const said = known.map((on) => ({ on, words: differenceWords(on, house) }));
  const other = said.filter(({ words }) => words.length > 0);
  const same = begun.filter(
    (on) => differenceWords(on, house).length === 0 && (on.live?.leave ?? null) === null,
  );
  return [
    heading(phrase(house, 'Sets not as planned')),
    ...(other.length === 0
      ? [text(phrase(house, 'None of those that are known.'))]
      : [differenceTable(context, other)]),
    ...(waiting.length === 0
      ? []
      : [
          text(
            strong(phrase(house, 'Bare, and planned to hang: ')),
            phrase(house, '{sets}.', { sets: listed(waiting, house) }),
          ),
        ]),
    ...(same.length === 0
      ? []
      : [
          text(
            strong(phrase(house, 'As planned: ')),
            phrase(house, '{sets}.', { sets: listed(same, house) }),
          ),
        ]),
  ];
};

const noteBlocks = (sets: readonly SetOnRecord[], house: House): readonly Block[] => {
  const noted = sets.filter(({ live }) => live !== null && live.notes.length > 0);
  if (noted.length === 0) return [];
  return [
    {
      kind: 'list',
      heading: phrase(house, 'Notes from paper that nobody has settled'),
      items: noted.map(
        ({ set, live }): Words => [
          strong(phrase(house, 'Set {set}: ', { set: set.lineSet.id })),
          phraseCount(house, live?.notes.length ?? 0, ['{count} note', '{count} notes']),
          phrase(house, ', number {numbers} in the record.', {
            numbers: (live?.notes ?? []).join(', '),
          }),
        ],
      ),
    },
  ];
};

/** What two people took upon themselves stays in sight until the call is closed. */
const overrideBlocks = (context: SheetContext, sets: readonly SetOnRecord[]): readonly Block[] => {
  const { house } = context;
  const named = (by: string | null): string =>
    personName(by, context) ?? phrase(house, 'not named');
  const items = sets.flatMap(({ set, live }) =>
    (live?.overrides ?? []).map(
      ({ why, rules, first, second }): Words => [
        strong(phrase(house, 'Set {set}: ', { set: set.lineSet.id })),
        phrase(house, '{rules} set aside by {one} and {other}: {why}', {
          rules: rules.join(', '),
          one: named(first.by),
          other: second.is === 'paper' ? second.name : named(second.by),
          why,
        }),
      ],
    ),
  );
  return items.length === 0
    ? []
    : [{ kind: 'list', heading: phrase(house, 'Rules that two people set aside'), items }];
};

const blocksOf = (context: SheetContext, sets: readonly SetOnRecord[]): readonly Block[] => {
  const { house } = context;
  const counted = sets.filter(isCounted);
  return [
    notAnOrder(house),
    sourceBlock(context),
    ...stopNotices(context),
    ...unheldNotices(counted, house),
    ...unknownNotice(counted, house),
    ...workBlocks(context, counted),
    ...planBlocks(context, sets),
    heading(phrase(house, 'Restraints')),
    ...restraintTable(sets, house),
    heading(phrase(house, 'Tags')),
    ...tagTable(sets, house),
    heading(phrase(house, 'Loose bricks')),
    ...brickTable(context),
    ...bricksLost(context, counted),
    ...noteBlocks(sets, house),
    ...overrideBlocks(context, sets),
    heading(phrase(house, 'What was counted, and when')),
    countTable(context, sets),
    text(phrase(house, 'Oddities, and what no record has:')),
    { kind: 'inkLines', count: 4 },
    ...signLines(house, phrase(house, 'Verified by both at the rail')),
  ];
};

/** The moment of the print, where a call goes on: whatever is touched later is not on it. */
export const voidAfter = (context: SheetContext): string => {
  const { house, now, stamp } = context;
  if (now?.call == null) return voidWords(context, null);
  return phrase(house, 'Void if {thing} is touched after {recordedAt}.', {
    thing: phrase(house, 'any set'),
    recordedAt: sayMoment(stamp.printedAt, house),
  });
};

/** What a record has that could change what stands on either sheet; not when it was printed. */
export const recordDependsOn = (context: SheetContext): unknown => {
  const { now, state, show, assessment } = context;
  return {
    house: houseFor(context),
    hangs: show?.hangs ?? null,
    cues: show?.cues ?? null,
    plans: assessment.sets.map(({ plan }) => (plan.known ? plan.value.stack.runs : null)),
    sets: now?.sets ?? state?.sets ?? null,
    galleries: now?.galleries ?? state?.galleries ?? null,
    zones: now?.zones ?? null,
    stops: now?.stops.map(({ seq, set }) => ({ seq, set })) ?? null,
  };
};

export const handoverSheet = (context: SheetContext): Sheet => {
  const { house, show } = context;
  const sets = setsOnRecord(context);
  return makeSheet(context, {
    id: 'handover',
    kind: 'handover',
    title: phrase(house, 'Handover note'),
    name: show?.name ?? house.name,
    beside: phrase(house, 'for the next head flyperson, from the record'),
    blocks: blocksOf(context, sets),
    voidIf: voidAfter(context),
    dependsOn: recordDependsOn(context),
    data: countsData(context, sets),
  });
};
