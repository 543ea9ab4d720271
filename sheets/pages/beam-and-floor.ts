/** What all sets together put on the head-block beam, the gallery floors and the loft wells. */

import type { BayTotal, HouseTotals } from '#assessment';
import type { House, Known } from '#house';
import { phrase } from '#texts';
import type { SheetContext } from '../context.ts';
import { makeSheet, notAnOrder, voidWords, writtenHouse } from '../page-parts.ts';
import { type Sheet, strong, type Words } from '../sheet.ts';
import { afterName } from '../words/say-finding.ts';
import { inHouseWords } from '../words/trade-translation.ts';
import { bayNotes, baySets, baySummary } from './bay-table.ts';
import { beamAndFloorData } from './beam-and-floor-data.ts';
import { floorBlocks, floorNotes, floorUnknowns } from './floor-table.ts';
import { keptNotes } from './kept-notes.ts';
import { wellBlocks, wellNotes } from './well-table.ts';

const because = (name: string, known: Known<unknown>): readonly string[] =>
  known.known ? [] : [known.why === undefined ? name : `${name} (${known.why})`];

/** What keeps a total from being known; what only the record lacks says so. */
const needsOf = ({ bays, wells }: HouseTotals, house: House): readonly string[] => {
  const lacking = (of: readonly BayTotal[]): readonly string[] =>
    of.flatMap(({ vertical, horizontal, wire, moving }) =>
      [vertical, horizontal, wire, moving].flatMap((each) => (each.known ? [] : each.needs)),
    );
  const planned = lacking(bays.filter(({ when }) => when !== 'recorded'));
  const recorded = lacking(bays.filter(({ when }) => when === 'recorded'));
  return [
    ...planned,
    ...recorded
      .filter((need) => !planned.includes(need))
      .map((need) => phrase(house, 'as recorded, {need}', { need })),
    ...wells.flatMap(({ force }) => (force.known ? [] : force.needs)),
  ];
};

const unknownsOf = ({ house, assessment }: SheetContext): readonly string[] => {
  const { totals } = assessment;
  const limits = [
    ...house.bays.flatMap((bay) => [
      ...because(phrase(house, 'downward limit of bay {id}', { id: bay.id }), bay.verticalLimit),
      ...because(phrase(house, 'sideways limit of bay {id}', { id: bay.id }), bay.horizontalLimit),
    ]),
    ...house.loftWells.flatMap(({ id, limit }) =>
      because(phrase(house, 'limit of loft well {id}', { id }), limit),
    ),
    ...because(phrase(house, 'share that moving adds to a load'), house.rules.movingShare),
  ];
  const needs = needsOf(totals, house).map((need) => inHouseWords(need, house));
  const floors = floorUnknowns(house, totals.floors).map((need) => afterName(need, house));
  return [...new Set([...limits, ...needs, ...floors])];
};

/** On the first page: a total is read with what is missing to judge it. */
const unknownWords = (context: SheetContext): Words => {
  const unknowns = unknownsOf(context);
  const said =
    unknowns.length === 0
      ? phrase(context.house, 'nothing that these figures need')
      : unknowns.join('; ');
  return [strong(phrase(context.house, 'Not known: ')), `${said}.`];
};

const rounding = (house: House): Words => [
  strong(phrase(house, 'Rounding: ')),
  phrase(
    house,
    'loads up, limits and margins down, each figure by itself, so that a column may add up to a ' +
      'little more than its total. SR and SL: stage right, stage left.',
  ),
];

export const beamAndFloorSheet = (context: SheetContext): Sheet => {
  const { house, show, state } = context;
  const sets = context.assessment.sets.length;
  const notes = [...floorNotes(context), ...wellNotes(context)];
  return makeSheet(context, {
    id: 'beam-and-floor',
    kind: 'beam-and-floor',
    title: phrase(house, 'Beam and floor sheet'),
    name: show?.name ?? house.name,
    beside: phrase(
      house,
      'what {sets} sets put on the building, hung or bare; for review, it certifies nothing',
      { sets },
    ),
    orientation: 'landscape',
    blocks: [
      notAnOrder(house),
      ...baySummary(context),
      keptNotes(phrase(house, 'How to read this sheet'), [
        unknownWords(context),
        ...bayNotes(house),
        rounding(house),
      ]),
      ...baySets(context),
      ...floorBlocks(context),
      ...wellBlocks(context),
      ...(notes.length === 0
        ? []
        : [keptNotes(phrase(house, 'How floors and wells come about'), notes)]),
      { kind: 'inkLines', count: 2 },
    ],
    voidIf: voidWords(context, null),
    dependsOn: {
      house: writtenHouse(context),
      show,
      sets: state?.sets ?? null,
      galleries: state?.galleries ?? null,
      bricks: context.assessment.bricks,
    },
    data: beamAndFloorData(context),
  });
};
