/** What goes round every sheet: facts, frame, footer with its code, and the standing cautions. */

import type { SetAssessment } from '#assessment';
import type { House } from '#house';
import { message, phrase } from '#texts';
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
export const notAnOrder = (house: House): Notice => ({
  kind: 'notice',
  degree: 'plain',
  heading: phrase(house, 'NOT AN ORDER OF WORK: DO NOT LOAD BY THIS'),
  words: [],
});

export const CAUTIONS = [
  message('It advises and records; it certifies nothing and commands nothing.'),
  message('Local codes, the house\u2019s own rules and the competent person come first.'),
  message('Flying people is out of its scope.'),
] as const;

/** Of another language than English: see the README of `languages`. */
const UNREAD = message('Its trade words are from memory: no practitioner has read them yet.');

/** What the program has not yet found out about itself goes with the cautions, in a few words. */
const cautionsOf = ({ selfCheck, house }: SheetContext): readonly string[] => {
  const unfinished = sayUnfinished(selfCheck.state);
  const all = unfinished === null ? CAUTIONS : [...CAUTIONS, unfinished];
  // They are the program's own and no words of a trade: the same in any English.
  return house.tongue === undefined ? all : [...all, UNREAD].map((each) => phrase(house, each));
};

const frameWords = (
  { house, show, state, now }: SheetContext,
  isPlanned: boolean,
): string | null => {
  if (now?.call?.isDrill === true) {
    return phrase(house, 'DRILL: for practice, none of this happened');
  }
  const isDemo = house.demo || show?.demo === true || state?.demo === true;
  if (isDemo && isPlanned)
    return phrase(house, 'DEMO and PLANNED: an invented house, not a record');
  if (isPlanned) return phrase(house, 'PLANNED: nobody has recorded this');
  return isDemo ? phrase(house, 'DEMO: an invented house and show') : null;
};

const factsOf = ({ house, show, stamp }: SheetContext): Sheet['facts'] => [
  { term: phrase(house, 'house'), value: house.name },
  { term: phrase(house, 'show'), value: show?.name ?? phrase(house, 'none') },
  { term: phrase(house, 'revision'), value: stamp.revision },
  {
    term: phrase(house, 'printed'),
    value: `${sayMoment(stamp.printedAt, house)}, ${stamp.printedBy}`,
  },
  { term: phrase(house, 'units'), value: unitWords(house.units) },
];

/** The neighbours on either side in rail order, so that a slip of a row is seen. */
export const besideWords = (
  { assessment, show, house }: SheetContext,
  set: SetAssessment,
): string => {
  const index = assessment.sets.findIndex(({ lineSet }) => lineSet.id === set.lineSet.id);
  const next = [index - 1, index + 1].flatMap((each) => {
    const neighbour = assessment.sets[each];
    if (neighbour === undefined) return [];
    const name =
      neighbour.hang === null ? phrase(house, 'empty') : hangName(neighbour, show, house);
    return [`${neighbour.lineSet.id} ${name}`];
  });
  return next.length === 0
    ? phrase(house, 'beside it: nothing')
    : phrase(house, 'beside it: {next}', { next: next.join(', ') });
};

/** The moment after which a touch makes the sheet void: the record of the set, else the print. */
export const voidWords = (context: SheetContext, set: SetAssessment | null): string => {
  const { house, stamp, state } = context;
  const recordedAt = set === null ? (state?.at ?? null) : set.recorded.state.knowledge.at;
  const thing = set === null ? phrase(house, 'any set') : phrase(house, 'the set');
  return phrase(house, 'Void if {thing} is touched after {recordedAt}.', {
    thing,
    recordedAt: sayMoment(recordedAt ?? stamp.printedAt, house),
  });
};

/** The code of a sheet before it is made, for what is printed on parts of it. */
export const codeFor = ({ house, show }: SheetContext, id: string, dependsOn: unknown): string =>
  sheetCode({ id, house: house.id, show: show?.id ?? null, dependsOn });

const worded = (block: Block, house: House): Block =>
  block.kind === 'inkLines' && house.tongue !== undefined
    ? { ...block, words: [phrase(house, 'Ink corrections'), phrase(house, 'initials')] }
    : block;

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
    isPlanned = false,
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
    /** Where the whole sheet shows what somebody intends, and could be taken for a record. */
    readonly isPlanned?: boolean;
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
    blocks: [...selfCheckNotice(context, kind), ...blocks.map((block) => worded(block, house))],
    footer: {
      voidIf,
      code,
      qr: qrDrawing(sheetAddress(house.id, id, code)),
      cautions: cautionsOf(context),
    },
    frame: frameWords(context, isPlanned),
    printedAt: stamp.printedAt,
    ...(house.tongue === undefined ? {} : { tongue: house.tongue }),
    data,
  };
};

/** The same sheet in another language is the same sheet: its code does not hear of it. */
export const writtenHouse = ({ house }: Pick<SheetContext, 'house'>): Omit<House, 'tongue'> => {
  const { tongue, language, ...written } = house;
  return written;
};

/** The house without what no sheet of one set shows: the other sets, seats and keep-outs. */
export const houseFor = (context: SheetContext): unknown => {
  const { lineSets, eyes, keepOuts, openings, remarks, equipment, bays, ...rest } =
    writtenHouse(context);
  return rest;
};

/** What the sheets of one set depend on. */
export const setDependsOn = (context: SheetContext, set: SetAssessment): unknown => ({
  house: houseFor(context),
  lineSet: set.lineSet,
  hang: set.hang,
  state: set.recorded.state,
  bricks: set.plan.known ? set.plan.value.stack.runs : null,
  beside: besideWords({ ...context, house: writtenHouse(context) }, set),
});
