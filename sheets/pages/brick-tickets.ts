/** Tickets for the arbors: pipe weight and show bricks by kind and number, to be counted. */

import type { SetAssessment, SetPlan } from '#assessment';
import { tradeWord } from '#drawings';
import type { House } from '#house';
import { INCH, POUND } from '#quantities';
import { phrase, phraseCount } from '#texts';
import { hangName, type SheetContext } from '../context.ts';
import { codeFor, houseFor, makeSheet, notAnOrder, voidWords } from '../page-parts.ts';
import type { Block, Sheet, SheetData, Words } from '../sheet.ts';
import { blank, strong } from '../sheet.ts';
import { sayMoment } from '../words/say-moment.ts';
import { brickMass, stackLength } from '../words/say-set.ts';
import { massUnit } from '../words/say-units.ts';
import { inHouseWords } from '../words/trade-translation.ts';
import { countsOf } from './bricks-words.ts';

const PER_ROW = 2;

type Ticketed = { readonly set: SetAssessment; readonly plan: SetPlan };

const ticketedSets = ({ assessment }: SheetContext): readonly Ticketed[] =>
  assessment.sets.flatMap((set) =>
    set.hang !== null && set.hang.deadHungAt === null && set.plan.known
      ? [{ set, plan: set.plan.value }]
      : [],
  );

const kindWords = (
  label: string,
  plan: SetPlan,
  { tag, house }: { readonly tag: 'pipe' | 'show'; readonly house: House },
): Words => {
  const counts = countsOf(plan.stack.runs, tag);
  const massKg = tag === 'pipe' ? plan.stack.pipeMass : plan.stack.showMass;
  const kinds = counts
    .map(({ kind, count }) => {
      const name = house.brickKinds.find(({ id }) => id === kind)?.name ?? kind;
      return `${name} × ${count}`;
    })
    .join(', ');
  return [
    `${label}: `,
    strong(kinds === '' ? phrase(house, 'none') : kinds),
    `, ${brickMass(massKg, house)}\n`,
  ];
};

/** A ticket is cut off its page, and takes what stands at the page's edges with it. */
const edgeWords = (set: SetAssessment, context: SheetContext, code: string): string => {
  const { house, show, stamp } = context;
  const revision = phrase(house, 'rev {revision}, {printedAt}, code {code}', {
    revision: stamp.revision,
    printedAt: sayMoment(stamp.printedAt, house),
    code,
  });
  const source = [house.name, show?.name, revision].filter((each) => each !== undefined);
  return `${source.join(', ')}. ${voidWords(context, set).replace(/ the \S+ is/, '')}`;
};

const ticketOf = (
  { set, plan }: Ticketed,
  context: SheetContext,
  code: string,
): readonly Block[] => {
  const { house, show } = context;
  const bricks = tradeWord(house, 'bricks');
  const { plates, spreaders, height } = plan.stack;
  const spreader =
    spreaders === 0
      ? ''
      : phraseCount(house, spreaders, [', {count} spreader', ', {count} spreaders']);
  return [
    { kind: 'heading', text: `${set.lineSet.id}  ${hangName(set, show, house)}` },
    {
      kind: 'text',
      words: [
        ...kindWords(inHouseWords('Pipe weight', house), plan, { tag: 'pipe', house }),
        ...kindWords(phrase(house, 'Show'), plan, { tag: 'show', house }),
        phrase(house, 'All: '),
        strong(`${plates} ${bricks}`),
        phrase(house, '{spreader}, stack {stackLength}', {
          spreader,
          stackLength: stackLength(height, house),
        }),
      ],
    },
    {
      kind: 'text',
      words: [
        phrase(house, 'Counted '),
        blank(4),
        phrase(house, ' and '),
        blank(4),
        phrase(house, '  date '),
        blank(4),
      ],
    },
    {
      kind: 'text',
      words: [
        strong(phrase(house, 'NOT AN ORDER OF WORK: DO NOT LOAD BY THIS\n')),
        edgeWords(set, context, code),
      ],
      isEdge: true,
    },
  ];
};

const dataOf = (sets: readonly Ticketed[], { house, show }: SheetContext): SheetData => {
  const kinds = house.brickKinds;
  const bricks = tradeWord(house, 'bricks');
  const pipe = tradeWord(house, 'pipeWeight');
  const countIn = ({ plan }: Ticketed, tag: 'pipe' | 'show', id: string): number =>
    countsOf(plan.stack.runs, tag)
      .filter(({ kind }) => kind === id)
      .reduce((sum, { count }) => sum + count, 0);
  const lengthUnit = house.units === 'customary' ? 'in' : 'm';
  const perLength = house.units === 'customary' ? INCH : 1;
  const perMass = house.units === 'customary' ? POUND : 1;
  return {
    columns: [
      'set',
      'item',
      ...kinds.map(({ name }) => `${pipe} ${name} (number)`),
      ...kinds.map(({ name }) => `show ${bricks} ${name} (number)`),
      `all ${bricks} (number)`,
      `stack (${lengthUnit})`,
      `whole ${tradeWord(house, 'arbor')} (${massUnit(house.units)})`,
    ],
    rows: sets.map((each) => [
      each.set.lineSet.id,
      hangName(each.set, show, house),
      ...kinds.map(({ id }) => countIn(each, 'pipe', id)),
      ...kinds.map(({ id }) => countIn(each, 'show', id)),
      each.plan.stack.plates,
      Number((each.plan.stack.height / perLength).toFixed(3)),
      Number((each.plan.stack.arborMass / perMass).toFixed(1)),
    ]),
  };
};

export const brickTickets = (context: SheetContext): Sheet => {
  const { house, show, assessment } = context;
  const sets = ticketedSets(context);
  const id = 'brick-tickets';
  const dependsOn = {
    house: houseFor(context),
    lineSets: house.lineSets,
    stacks: assessment.sets.map(({ plan }) => (plan.known ? plan.value.stack : null)),
  };
  const code = codeFor(context, id, dependsOn);
  return makeSheet(context, {
    id,
    kind: 'brick-tickets',
    title: phrase(house, 'Brick tickets'),
    name: show?.name ?? house.name,
    beside: phrase(house, '{length} tickets to cut apart', { length: sets.length }),
    blocks: [
      notAnOrder(house),
      sets.length === 0
        ? { kind: 'text', words: [phrase(house, 'No set takes show bricks.')] }
        : {
            kind: 'tickets',
            perRow: PER_ROW,
            tickets: sets.map((each) => ticketOf(each, context, code)),
          },
    ],
    voidIf: voidWords(context, null),
    dependsOn,
    data: dataOf(sets, context),
  });
};
