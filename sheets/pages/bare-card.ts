/** A card for a set that flies nothing by its arbor: empty, on a motor, on steel, or unknown. */

import type { SetAssessment } from '#assessment';
import { balanceDrawing, stackDrawing, suspensionSentence, tradeWord } from '#drawings';
import type { House } from '#house';
import { formatLength } from '#quantities';
import { phrase } from '#texts';
import type { SheetContext } from '../context.ts';
import { hangName } from '../context.ts';
import { BODY_WIDTH } from '../page-parts.ts';
import type { Block, Notice, Paragraph, Words } from '../sheet.ts';
import { strong } from '../sheet.ts';
import { hungWords, loadMass } from '../words/say-set.ts';
import { inHouseWords } from '../words/trade-translation.ts';
import { lookFirst, unknownWords } from './card-notes.ts';
import { lockedOutNotice } from './locked-out.ts';
import { orderPointer, strikeToWorkBy } from './order-pointer.ts';
import { proofsOf } from './proofs.ts';
import { readingsOf, worstOf } from './readings.ts';
import { worstNotice } from './worst-notice.ts';

const DRAWING_HEIGHT = 260;
/** What a notice of lock-out takes from the drawings. */
const LOCKED_OUT_HEIGHT = 60;
const LETTER = 12;
const INK_LINES = 3;

const noteOf = (words: Words): Paragraph => ({ kind: 'text', words, isNote: true });

const deadHungNotice = (set: SetAssessment, house: House): Notice => {
  const at = set.hang?.deadHungAt;
  const where =
    at?.known === true
      ? phrase(house, ' at {length}', { length: formatLength(at.value, house) })
      : '';
  const arbor = tradeWord(house, 'arbor');
  return {
    kind: 'notice',
    degree: 'note',
    heading: phrase(house, 'Steel holds this set{where}', { where }),
    words: [
      phrase(house, 'Its {arbor} does not carry the piece: no bricks are taken. ', { arbor }),
      phrase(house, 'What releasing it needs is for the order of work, not made yet.'),
    ],
  };
};

/** Why there is no planned balance, as the first thing on the card. */
const reasonNotice = (set: SetAssessment, context: SheetContext): Notice => {
  const { house, show } = context;
  if (set.lineSet.arbor === null) {
    return {
      kind: 'notice',
      degree: 'note',
      heading: suspensionSentence(set.lineSet, house),
      words: [phrase(house, 'There is no balance of this set to check.')],
    };
  }
  if (set.hang !== null && set.hang.deadHungAt !== null) return deadHungNotice(set, house);
  if (set.hang === null) {
    const only = inHouseWords('Pipe weight only.', house);
    return {
      kind: 'notice',
      degree: 'note',
      heading: hangName(set, show, house).replace(/^e/, 'E'),
      words: [phrase(house, '{only} Nothing is hung.', { only })],
    };
  }
  const needs = set.plan.known ? [] : set.plan.needs;
  return {
    kind: 'notice',
    degree: 'caution',
    heading: phrase(house, 'Not worked out'),
    words: [
      phrase(house, 'Missing: {inHouse}.', {
        inHouse: inHouseWords(needs.join('; '), house),
      }),
    ],
  };
};

const bareDrawings = (set: SetAssessment, house: House): readonly Block[] => {
  if (!set.bare.known || set.hang !== null) return [];
  const width = BODY_WIDTH.portrait / 2 - 10;
  const isLocked = lockedOutNotice(set, house).length > 0;
  const height = isLocked ? DRAWING_HEIGHT - LOCKED_OUT_HEIGHT : DRAWING_HEIGHT;
  const size = { width, height, letter: LETTER };
  return [
    {
      kind: 'columns',
      shares: [0.5, 0.5],
      columns: [
        [{ kind: 'drawing', drawing: balanceDrawing(set, house, size) }],
        [{ kind: 'drawing', drawing: stackDrawing(set, house, { ...size, of: 'plan' }) }],
      ],
    },
  ];
};

const bareWorst = (set: SetAssessment, house: House): readonly Notice[] => {
  if (!set.bare.known || set.hang !== null) return [];
  const { set: bare, curve } = set.bare.value;
  const worst = worstOf(readingsOf(bare, curve));
  const only = inHouseWords('pipe weight only', house);
  const isDoubtWhole = [
    bare.battenUncertainty,
    bare.carriageUncertainty,
    bare.brickUncertainty,
  ].every((doubt) => doubt !== undefined);
  return worst === null
    ? []
    : [worstNotice(worst, only, { house, lineSet: set.lineSet, isDoubtWhole })];
};

/** What hangs there and at which heights, where no balance says it. */
const hungBlocks = ({ hang, takeoffs, ...set }: SetAssessment, house: House): readonly Block[] => {
  if (hang === null) return [];
  const items = takeoffs.map(({ item, total }) => {
    const mass = total.known
      ? loadMass(total.value.massKg, house)
      : phrase(house, 'mass not known');
    return `${item.name}, ${mass}`;
  });
  const trims = hang.trims.map(({ name, height }) =>
    height.known
      ? `${name} ${formatLength(height.value, house)}`
      : phrase(house, '{name} not known', { name }),
  );
  const hung = hungWords({ hang, takeoffs, ...set }, house);
  return [
    { kind: 'text', words: [strong(phrase(house, 'Hung: ')), `${hung}. ${items.join('; ')}.`] },
    ...(trims.length === 0
      ? []
      : [
          {
            kind: 'text' as const,
            words: [strong(`${inHouseWords('Trims', house)}: `), `${trims.join(', ')}.`],
          },
        ]),
  ];
};

export const bareCardBlocks = (context: SheetContext, set: SetAssessment): readonly Block[] => {
  const { house } = context;
  const isFlown = set.lineSet.arbor !== null && set.hang === null;
  return [
    orderPointer(strikeToWorkBy(context, set), house),
    ...lockedOutNotice(set, house),
    reasonNotice(set, context),
    ...bareWorst(set, house),
    ...bareDrawings(set, house),
    ...hungBlocks(set, house),
    ...lookFirst(context, set, { most: 6, saidAbove: ['STA-003'] }).map(noteOf),
    noteOf(unknownWords(context, set)),
    ...(isFlown ? [proofsOf(set, house)] : []),
    { kind: 'inkLines', count: INK_LINES },
  ];
};
