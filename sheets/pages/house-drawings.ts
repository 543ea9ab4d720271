/** Section and plan of the house at one moment, on paper, with the same as a table behind. */
import {
  cueMoment,
  type HouseMoment,
  lowestOf,
  recordedMoment,
  trimMoment,
  trimNames,
} from '#assessment';
import { type Drawing, planDrawing, sectionDrawing, tradeWord, upstageOf } from '#drawings';
import type { House } from '#house';
import { formatLength, metres } from '#quantities';
import { phrase } from '#texts';
import { hangName, type SheetContext } from '../context.ts';
import { BODY_WIDTH, makeSheet, notAnOrder, voidWords, writtenHouse } from '../page-parts.ts';
import type { Row, Sheet } from '../sheet.ts';
import { sayMoment } from '../words/say-moment.ts';
import { lengthUnit } from '../words/say-units.ts';

export const HOUSE_DRAWINGS = ['section', 'plan'] as const;

export type HouseDrawing = (typeof HOUSE_DRAWINGS)[number];

/**
 * A stage house is taller than deep and wider than deep. The rest of the lower paper is for the
 * notice above; the printer makes a drawing smaller where the paper asks for it.
 */
const PAPER = {
  section: { orientation: 'portrait', height: 560 },
  plan: { orientation: 'landscape', height: 376 },
} as const;
const LETTER = 8.5;

type Shown = { readonly moment: HouseMoment; readonly words: string };

const RECORD = 'record';
const TRIM = 'trim:';
const CUE = 'cue:';

/** Moments that a list offers: the record and each trim. A cue is asked for by its number. */
export const momentIds = ({ assessment }: Pick<SheetContext, 'assessment'>): readonly string[] => [
  RECORD,
  ...trimNames(assessment.sets).map((name) => `${TRIM}${name}`),
];

const recorded = ({ house, state, assessment }: SheetContext): Shown => ({
  moment: recordedMoment(assessment.sets),
  words:
    state === null
      ? phrase(house, 'nothing is recorded')
      : phrase(house, 'as recorded {when}', { when: sayMoment(state.at, house) }),
});

/** Undefined where the show has no such trim and no such cue. */
const shownAt = (context: SheetContext, id: string): Shown | undefined => {
  const { house, show, assessment } = context;
  if (id === RECORD) return recorded(context);
  if (id.startsWith(TRIM)) {
    const name = id.slice(TRIM.length);
    if (!trimNames(assessment.sets).includes(name)) return undefined;
    const words = phrase(house, 'planned, {trim} {name}', { trim: tradeWord(house, 'trim'), name });
    return { moment: trimMoment(assessment.sets, name), words };
  }
  const number = id.startsWith(CUE) ? id.slice(CUE.length) : undefined;
  const cues = show?.cues ?? [];
  const last = cues.findLastIndex((cue) => cue.number === number);
  if (number === undefined || last < 0) return undefined;
  return {
    moment: cueMoment(assessment.sets, cues, last + 1),
    words: phrase(house, 'planned, after cue {number}', { number }),
  };
};

const lengthCell = (valueM: number | null, house: House): string =>
  valueM === null ? phrase(house, 'unknown') : formatLength(metres(valueM), house);

const rowsOf = ({ house, show, assessment }: SheetContext, moment: HouseMoment): readonly Row[] =>
  assessment.sets.map((set): Row => {
    const now = moment.sets.get(set.lineSet.id);
    const isEmpty = now?.items?.length === 0;
    const hangs =
      now === undefined || now.items === null
        ? phrase(house, 'unknown')
        : isEmpty
          ? phrase(house, 'nothing')
          : hangName(set, show, house);
    return {
      rule: 'hair',
      isMuted: isEmpty,
      cells: [
        [set.lineSet.id],
        [hangs],
        [lengthCell(upstageOf(set), house)],
        [lengthCell(now?.heightM ?? null, house)],
        [now === undefined ? phrase(house, 'unknown') : lengthCell(lowestOf(set, now), house)],
      ],
    };
  });

const drawn = (
  { house, assessment }: SheetContext,
  kind: HouseDrawing,
  moment: HouseMoment,
): Drawing => {
  const subject = { house, sets: assessment.sets, moment };
  const { orientation, height } = PAPER[kind];
  const paper = { width: BODY_WIDTH[orientation], height, letter: LETTER };
  return kind === 'section' ? sectionDrawing(subject, paper) : planDrawing(subject, paper);
};

/** It stands as the name of the sheet. */
const capital = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}`;

/** `section/record`, `plan/trim:playing`, `section/cue:14`; undefined for another moment. */
export const houseDrawingSheet = (
  context: SheetContext,
  kind: HouseDrawing,
  at: string,
): Sheet | undefined => {
  const shown = shownAt(context, at);
  if (shown === undefined) return undefined;
  const { house, show, state } = context;
  const unit = lengthUnit(house.units);
  const right = (head: string, share: number) => ({ head, unit, align: 'right', share }) as const;
  return makeSheet(context, {
    id: `${kind}/${at}`,
    kind,
    title: kind === 'section' ? phrase(house, 'Section') : phrase(house, 'Plan'),
    name: capital(shown.words),
    orientation: PAPER[kind].orientation,
    isPlanned: shown.moment.is === 'planned',
    blocks: [
      notAnOrder(house),
      { kind: 'drawing', drawing: drawn(context, kind, shown.moment) },
      {
        kind: 'table',
        columns: [
          { head: phrase(house, 'Set'), align: 'left', share: 0.09 },
          { head: phrase(house, 'Hangs there'), align: 'left', share: 0.37 },
          right(phrase(house, 'Upstage of the plaster line'), 0.18),
          right(phrase(house, 'Batten at'), 0.18),
          right(phrase(house, 'Lowest point at'), 0.18),
        ],
        rows: rowsOf(context, shown.moment),
      },
    ],
    voidIf: voidWords(context, null),
    dependsOn: { at, house: writtenHouse(context), show, state },
  });
};
