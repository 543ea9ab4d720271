/** A sheet that may not be printed to work by says so on a page of its own. */

import type { SetAssessment } from '#assessment';
import type { House } from '#house';
import { message, phrase } from '#texts';
import type { AskedOrder } from '../asked-order.ts';
import { hangName, type SheetContext } from '../context.ts';
import { besideWords, houseFor, makeSheet, setDependsOn, voidWords } from '../page-parts.ts';
import type { Block, Sheet, SheetKind, Words } from '../sheet.ts';
import { filled } from '../words/fill-words.ts';
import { sayAssumption } from '../words/say-assumption.ts';
import { sayWhyNoOrder } from '../words/why-no-order.ts';
import type { LeftOut } from './loading-call.ts';
import { leftBlocks } from './loading-notes.ts';
import { GALLERY_SHEETS, type GalleryCall } from './loading-sheet.ts';

/** On top of the page, with the reasons as they were given. */
export const noOrderBlocks = (reasons: readonly string[], house: House): readonly Block[] => [
  {
    kind: 'notice',
    degree: 'danger',
    heading: phrase(house, 'NOT AN ORDER: DO NOT WORK BY THIS'),
    words: [reasons.join(' ')],
  },
];

const LEAVE = message(
  'Ask whoever leads the work. Nobody makes up an order on the floor: change what the reason ' +
    'names, ask again, and print again.',
);

const askedBlocks = (asked: AskedOrder, { house }: SheetContext): readonly Block[] => {
  if ('refusals' in asked) return [];
  const { checked, assumed } = asked.order;
  const tried =
    checked.doubt === 'worst'
      ? phrase(house, 'Every mass at its worst, and people in the path of a fault.')
      : phrase(house, 'Every mass as it is written, and people in the path of a fault.');
  return [
    {
      kind: 'list',
      heading: phrase(house, 'What was asked'),
      items: [
        [filled(tried, house)],
        ...assumed.map((each): Words => [sayAssumption(each, house)]),
      ],
    },
  ];
};

/** For one set: what was asked, and why there is no order. */
export const noOrderSheet = (
  context: SheetContext,
  set: SetAssessment,
  {
    id,
    kind,
    title,
    asked,
    reasons = sayWhyNoOrder(asked, context.house),
  }: {
    readonly id: string;
    readonly kind: SheetKind;
    readonly title: string;
    readonly asked: AskedOrder;
    readonly reasons?: readonly string[];
  },
): Sheet =>
  makeSheet(context, {
    id,
    kind,
    title,
    number: set.lineSet.id,
    name: hangName(set, context.show, context.house),
    beside: besideWords(context, set),
    blocks: [
      ...noOrderBlocks(reasons, context.house),
      ...askedBlocks(asked, context),
      { kind: 'text', words: [phrase(context.house, LEAVE)] },
      { kind: 'inkLines', count: 3 },
    ],
    voidIf: voidWords(context, set),
    dependsOn: { of: setDependsOn(context, set), reasons },
  });

/** For a gallery to which no order comes that may be worked by. */
export const noLoadingSheet = (
  context: SheetContext,
  { gallery, work, left = [] }: GalleryCall,
): Sheet => {
  const { house, show } = context;
  const { kind, title } = GALLERY_SHEETS[work];
  return makeSheet(context, {
    id: `${kind}/${gallery}`,
    kind,
    title: phrase(house, title),
    name: house.galleries.find(({ id }) => id === gallery)?.name ?? gallery,
    beside: show?.name ?? house.name,
    orientation: 'landscape',
    blocks: [
      ...noOrderBlocks([filled('No order has bricks handled here.', house)], house),
      ...leftBlocks(left, house),
      { kind: 'text', words: [phrase(house, LEAVE)] },
      { kind: 'inkLines', count: 3 },
    ],
    voidIf: voidWords(context, null),
    dependsOn: { house: houseFor(context), left },
  });
};

/** For a call of which no order may be worked by. */
export const noBriefingSheet = (
  context: SheetContext,
  kind: 'load' | 'strike',
  left: readonly LeftOut[],
): Sheet => {
  const { house, show } = context;
  return makeSheet(context, {
    id: `briefing/${kind}`,
    kind: 'briefing',
    title: phrase(house, 'Briefing of zones'),
    name: kind === 'load' ? phrase(house, 'Load') : phrase(house, 'Strike'),
    beside: show?.name ?? house.name,
    blocks: [
      ...noOrderBlocks([phrase(house, 'No set has an order to brief a crew for.')], house),
      ...leftBlocks(left, house),
      { kind: 'text', words: [phrase(house, LEAVE)] },
      { kind: 'inkLines', count: 3 },
    ],
    voidIf: voidWords(context, null),
    dependsOn: { house: houseFor(context), left },
  });
};
