/** What goes round every sheet: facts, frame, footer with its code, and the standing cautions. */

import type { SetAssessment } from '#assessment';
import { tradeWord } from '#drawings';
import type { SheetContext } from './context.ts';
import { hangName } from './context.ts';
import { selfCheckNotice } from './pages/self-check-notice.ts';
import { qrDrawing, sheetAddress } from './qr-drawing.ts';
import type { Block, Notice, Sheet, SheetData, SheetKind } from './sheet.ts';
import { sheetCode } from './sheet-code.ts';
import { sayMoment } from './words/say-moment.ts';
import { sayUnfinished } from './words/say-self-check.ts';
import { unitWords } from './words/say-units.ts';

/**
 * Widths that fit Letter and A4 alike, in points; a sheet is laid out once for both papers.
 * Letter is 612 by 792 points, A4 595.28 by 841.89 (ISO 216, rounded).
 */
export const BODY_WIDTH = { portrait: 526, landscape: 720 } as const;
/** Height that is left for the blocks on the lower of the two papers, Letter. */
export const BODY_HEIGHT = { portrait: 604, landscape: 424 } as const;

/** No card may be taken for an order of work. */
export const notAnOrder: Notice = {
  kind: 'notice',
  degree: 'plain',
  heading: 'NOT AN ORDER OF WORK: DO NOT LOAD BY THIS',
  words: [],
};

export const CAUTIONS = [
  'It advises and records; it certifies nothing and commands nothing.',
  'Local codes, the house\u2019s own rules and the competent person come first.',
  'Flying people is out of its scope.',
] as const;

/** What the program has not yet found out about itself goes with the cautions, in a few words. */
const cautionsOf = ({ selfCheck }: SheetContext): readonly string[] => {
  const unfinished = sayUnfinished(selfCheck.state);
  return unfinished === null ? CAUTIONS : [...CAUTIONS, unfinished];
};

const frameWords = ({ house, show, state }: SheetContext): string | null =>
  house.demo || show?.demo === true || state?.demo === true
    ? 'DEMO: an invented house and show'
    : null;

const factsOf = ({ house, show, stamp }: SheetContext): Sheet['facts'] => [
  { term: 'house', value: house.name },
  { term: 'show', value: show?.name ?? 'none' },
  { term: 'revision', value: stamp.revision },
  { term: 'printed', value: `${sayMoment(stamp.printedAt)}, ${stamp.printedBy}` },
  { term: 'units', value: unitWords(house.units) },
];

/** The neighbours on either side in rail order, so that a slip of a row is seen. */
export const besideWords = ({ assessment, show }: SheetContext, set: SetAssessment): string => {
  const index = assessment.sets.findIndex(({ lineSet }) => lineSet.id === set.lineSet.id);
  const next = [index - 1, index + 1].flatMap((each) => {
    const neighbour = assessment.sets[each];
    if (neighbour === undefined) return [];
    const name = neighbour.hang === null ? 'empty' : hangName(neighbour, show);
    return [`${neighbour.lineSet.id} ${name}`];
  });
  return next.length === 0 ? 'beside it: nothing' : `beside it: ${next.join(', ')}`;
};

/** The moment after which a touch makes the sheet void: the record of the set, else the print. */
export const voidWords = (context: SheetContext, set: SetAssessment | null): string => {
  const { house, stamp, state } = context;
  const recordedAt = set === null ? (state?.at ?? null) : set.recorded.state.knowledge.at;
  const thing = set === null ? `any ${tradeWord(house, 'set')}` : `the ${tradeWord(house, 'set')}`;
  return `Void if ${thing} is touched after ${sayMoment(recordedAt ?? stamp.printedAt)}.`;
};

/** The code of a sheet before it is made, for what is printed on parts of it. */
export const codeFor = ({ house, show }: SheetContext, id: string, dependsOn: unknown): string =>
  sheetCode({ id, house: house.id, show: show?.id ?? null, dependsOn });

export const makeSheet = (
  context: SheetContext,
  {
    id,
    kind,
    title,
    number = null,
    name,
    beside = null,
    orientation = 'portrait',
    blocks,
    voidIf,
    dependsOn,
    data = null,
  }: {
    readonly id: string;
    readonly kind: SheetKind;
    readonly title: string;
    readonly number?: string | null;
    readonly name: string;
    readonly beside?: string | null;
    readonly orientation?: Sheet['orientation'];
    readonly blocks: readonly Block[];
    readonly voidIf: string;
    /** Every value of the documents that could change what stands on the sheet. */
    readonly dependsOn: unknown;
    readonly data?: SheetData | null;
  },
): Sheet => {
  const { house, stamp } = context;
  const code = codeFor(context, id, dependsOn);
  return {
    id,
    kind,
    title,
    number,
    name,
    beside,
    orientation,
    facts: factsOf(context),
    blocks: [...selfCheckNotice(context, kind), ...blocks],
    footer: {
      voidIf,
      code,
      qr: qrDrawing(sheetAddress(house.id, id, code)),
      cautions: cautionsOf(context),
    },
    frame: frameWords(context),
    printedAt: stamp.printedAt,
    data,
  };
};

/** The house without what no sheet of one set shows: the other sets, seats and keep-outs. */
export const houseFor = ({ house }: SheetContext): unknown => {
  const { lineSets, eyes, keepOuts, openings, remarks, equipment, bays, ...rest } = house;
  return rest;
};

/** What the sheets of one set depend on. */
export const setDependsOn = (context: SheetContext, set: SetAssessment): unknown => ({
  house: houseFor(context),
  lineSet: set.lineSet,
  hang: set.hang,
  state: set.recorded.state,
  bricks: set.plan.known ? set.plan.value.stack.runs : null,
  beside: besideWords(context, set),
});
