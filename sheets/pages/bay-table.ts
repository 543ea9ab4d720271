/** Bays of the head-block beam: all that their sets put on them, set by set and together. */

import type { BayTotal, TotalState } from '#assessment';
import type { Bay, House, Known } from '#house';
import { message, phrase } from '#texts';
import { hangName, type SheetContext } from '../context.ts';
import { BODY_WIDTH } from '../page-parts.ts';
import type { Block, Row, Table, Words } from '../sheet.ts';
import { strong } from '../sheet.ts';
import { steelForce, steelUnit } from '../words/say-force.ts';
import { notKnown, withGrounds } from '../words/say-known.ts';
import { groundsWords } from '../words/say-set.ts';
import { forceOr, isPast, left, limitCell, NONE, right, share, spare } from './carrier-cells.ts';
import { fitted } from './column-shares.ts';

const WAYS = ['vertical', 'horizontal'] as const;
type Way = (typeof WAYS)[number];
const WAY_WORDS: Readonly<Record<Way, string>> = {
  vertical: message('down'),
  horizontal: message('sideways'),
};

const limitOf = (bay: Bay, way: Way): Known<number> =>
  way === 'vertical' ? bay.verticalLimit : bay.horizontalLimit;

const totalIn = ({ assessment }: SheetContext, bay: Bay, when: TotalState): BayTotal | undefined =>
  assessment.totals.bays.find((total) => total.bay === bay.id && total.when === when);

const forceOf = (of: BayTotal | undefined, way: Way): number | null => {
  const reckoning = of?.[way];
  return reckoning?.known === true ? reckoning.value.value : null;
};

const movingWords = (planned: BayTotal | undefined, way: Way, house: House): string => {
  if (planned?.moving.known !== true) return notKnown(house);
  const { set, [way]: valueN } = planned.moving.value;
  return `${steelForce(valueN, house)} (${set})`;
};

/** The wire hangs from the beam downward; sideways it is not reckoned by itself. */
const wireOf = (planned: BayTotal | undefined, way: Way): number | null =>
  way === 'vertical' && planned?.wire.known === true ? planned.wire.value : null;

const orOver = (valueN: number | null, limit: Known<number>, house: House): Words => {
  if (valueN === null) return [NONE];
  const said = steelForce(valueN, house);
  return isPast(valueN, limit) ? [strong(phrase(house, '{said} OVER', { said }))] : [said];
};

const summaryRow = (bay: Bay, way: Way, context: SheetContext): Row => {
  const { house } = context;
  const planned = totalIn(context, bay, 'planned');
  const limit = limitOf(bay, way);
  const valueN = forceOf(planned, way);
  const wireN = wireOf(planned, way);
  const withWireN = valueN === null || wireN === null ? null : valueN + wireN;
  const movingN = planned?.moving.known === true ? planned.moving.value[way] : null;
  return {
    cells: [
      [strong(`${bay.id}, ${phrase(house, WAY_WORDS[way])}`)],
      [strong(forceOr(valueN, house))],
      [limitCell(limit, house)],
      [strong(share(valueN, limit, house))],
      [spare(valueN, limit, house)],
      [movingWords(planned, way, house)],
      [way === 'vertical' ? forceOr(wireN, house) : NONE],
      orOver(withWireN, limit, house),
      [forceOr(forceOf(totalIn(context, bay, 'bare'), way), house)],
      [forceOr(forceOf(totalIn(context, bay, 'recorded'), way), house)],
    ],
    rule: [valueN, withWireN, movingN].some((each) => isPast(each, limit)) ? 'thick' : 'hair',
  };
};

const summaryTable = (context: SheetContext): Table => {
  const { house } = context;
  const unit = steelUnit(house);
  return fitted(
    {
      kind: 'table',
      columns: [
        left(phrase(house, 'Bay')),
        right(phrase(house, 'Planned'), unit),
        right(phrase(house, 'Limit'), unit),
        right(phrase(house, 'Of limit')),
        right(phrase(house, 'To spare'), unit),
        right(phrase(house, 'One moving'), unit),
        right(phrase(house, 'Wire'), unit),
        right(phrase(house, 'With wire'), unit),
        right(phrase(house, 'Nothing hung'), unit),
        right(phrase(house, 'Recorded'), unit),
      ],
      rows: house.bays.flatMap((bay) => WAYS.map((way) => summaryRow(bay, way, context))),
    },
    BODY_WIDTH.landscape,
  );
};

const movingShareWords = (house: House): string => {
  const { movingShare } = house.rules;
  if (!movingShare.known) return phrase(house, 'a share that is not known');
  const percent = Math.round(movingShare.value * 1000) / 10;
  return phrase(house, '{percent} % more ({grounds})', {
    percent,
    grounds: groundsWords(movingShare.provenance, house),
  });
};

/** How the totals come about, and what they leave out. */
export const bayNotes = (house: House): readonly Words[] => {
  return [
    [
      strong(phrase(house, 'The wire is not in the totals: ')),
      phrase(
        house,
        'what hangs of the lift lines on the side of the arbors comes on top. Under "Wire" ' +
          'stands the most that it adds downward, with every batten of the bay on its high stop; ' +
          'sideways it adds no more than that.',
      ),
    ],
    [
      strong(phrase(house, 'Downward: ')),
      phrase(house, 'g · (whole arbor + hand line) of every set of the bay, hung or bare. '),
      strong(phrase(house, 'Sideways: ')),
      phrase(house, 'g · whole arbor / purchase. '),
      strong(phrase(house, 'Of limit, to spare: ')),
      phrase(house, 'as planned, all still, without the wire. '),
      strong(phrase(house, 'One moving: ')),
      phrase(house, 'the heaviest arbor, its set in brackets, starts or stops and counts for '),
      `${movingShareWords(house)}. `,
      strong(phrase(house, 'Source: ')),
      phrase(house, 'equilibrium of arbor and head block. '),
      strong(phrase(house, 'Left out: ')),
      phrase(
        house,
        'pulls on hand lines and what a rope lock holds back; the slope of the runs to the loft ' +
          'blocks; blocks and steel themselves.',
      ),
    ],
  ];
};

/** What one set adds, or nothing where the total of its bay is not known. */
const addedBy = (set: string, planned: BayTotal | undefined): readonly number[] =>
  WAYS.flatMap((way) => {
    const reckoning = planned?.[way];
    if (reckoning?.known !== true) return [];
    const own = reckoning.value.sets.find((each) => each.set === set);
    return own === undefined ? [] : [own.value];
  });

const groupRow = (bay: Bay, house: House): Row => {
  const say = (known: Known<number>): string =>
    withGrounds(known, house, (valueN) => steelForce(valueN, house, 'down'));
  const limits = phrase(house, 'downward {verticalLimit}; sideways {horizontalLimit}', {
    verticalLimit: say(bay.verticalLimit),
    horizontalLimit: say(bay.horizontalLimit),
  });
  return {
    cells: [
      [
        strong(phrase(house, 'Bay {id}', { id: bay.id })),
        phrase(house, '  limits: {limits}', { limits }),
      ],
    ],
    rule: 'hair',
    isGroup: true,
  };
};

const setRows = (bay: Bay, context: SheetContext): readonly Row[] => {
  const { house, show, assessment } = context;
  const planned = totalIn(context, bay, 'planned');
  const sets = assessment.sets.filter(({ lineSet }) => bay.sets.includes(lineSet.id));
  let [sumDownN, sumSideN] = [0, 0];
  return sets.map((set): Row => {
    const { id } = set.lineSet;
    const [downN, sideN] = addedBy(id, planned);
    const isEmpty = set.hang === null;
    const named: readonly Words[] = [[isEmpty ? id : strong(id)], [hangName(set, show, house)]];
    const looks = { rule: 'hair', isMuted: isEmpty } as const;
    if (downN === undefined || sideN === undefined) {
      return { cells: [...named, [NONE], [NONE], [NONE], [NONE], [NONE]], ...looks };
    }
    sumDownN += downN;
    sumSideN += sideN;
    return {
      cells: [
        ...named,
        [steelForce(downN, house)],
        [steelForce(sumDownN, house)],
        [share(sumDownN, bay.verticalLimit, house)],
        [steelForce(sideN, house)],
        [steelForce(sumSideN, house)],
      ],
      ...looks,
    };
  });
};

const bayRows = (bay: Bay, context: SheetContext): readonly Row[] => {
  const { house } = context;
  const rows = setRows(bay, context);
  const planned = totalIn(context, bay, 'planned');
  const [downN, sideN] = [forceOf(planned, 'vertical'), forceOf(planned, 'horizontal')];
  const last: Row = {
    cells: [
      [''],
      [strong(phrase(house, 'All {length} sets of bay {id}', { length: rows.length, id: bay.id }))],
      [''],
      [strong(forceOr(downN, house))],
      [strong(share(downN, bay.verticalLimit, house))],
      [''],
      [strong(forceOr(sideN, house))],
    ],
    rule: 'thick',
  };
  return [groupRow(bay, house), ...rows, last];
};

const setsTable = (context: SheetContext): Table => {
  const unit = steelUnit(context.house);
  return fitted(
    {
      kind: 'table',
      columns: [
        left(phrase(context.house, 'Set')),
        left(phrase(context.house, 'Hangs there')),
        right(phrase(context.house, 'Downward'), unit),
        right(phrase(context.house, 'Running'), unit),
        right(phrase(context.house, 'Of limit')),
        right(phrase(context.house, 'Sideways'), unit),
        right(phrase(context.house, 'Running'), unit),
      ],
      rows: context.house.bays.flatMap((bay) => bayRows(bay, context)),
    },
    BODY_WIDTH.landscape,
  );
};

/** Every bay at one glance. */
export const baySummary = (context: SheetContext): readonly Block[] =>
  context.house.bays.length === 0
    ? [
        {
          kind: 'text',
          words: [
            phrase(
              context.house,
              'No bay of a head-block beam is described: what the sets put on it is unknown.',
            ),
          ],
        },
      ]
    : [{ kind: 'heading', text: phrase(context.house, 'Head-block beam') }, summaryTable(context)];

/** The same set by set, with the running total. */
export const baySets = (context: SheetContext): readonly Block[] =>
  context.house.bays.length === 0 ? [] : [setsTable(context)];
