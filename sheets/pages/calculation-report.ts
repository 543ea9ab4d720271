/** The calculation report of one set: every number with its formula, for an engineer's review. */

import {
  type SetAssessment,
  type SetStructure,
  type StructureState,
  structureWorkingsOf,
} from '#assessment';
import { battenLoadsDrawing, type Drawing, group, hangingItems, lettering } from '#drawings';
import type { House } from '#house';
import { phrase, toldEach } from '#texts';
import { hangName, type SheetContext } from '../context.ts';
import {
  BODY_HEIGHT,
  besideWords,
  makeSheet,
  notAnOrder,
  setDependsOn,
  voidWords,
} from '../page-parts.ts';
import type { Block, DrawingBlock, Notice, Row, Sheet, Table, Words } from '../sheet.ts';
import { strong } from '../sheet.ts';
import { afterName } from '../words/say-finding.ts';
import { notKnown } from '../words/say-known.ts';
import { sayMeasure } from '../words/say-measure.ts';
import { height } from '../words/say-set.ts';
import { inHouseWords } from '../words/trade-translation.ts';
import { fitted } from './column-shares.ts';
import { keptNotes } from './kept-notes.ts';
import { lockedOutNotice } from './locked-out.ts';
import { loadBlocks } from './report-loads.ts';
import { freeLengthsTable, plantTable } from './report-plant.ts';
import { stateBlocks } from './report-states.ts';
import { REPORT_WIDTH, workingsTable } from './report-workings.ts';
import { selfCheckNotice } from './self-check-notice.ts';

const reviewNotice = (house: House): Notice => ({
  kind: 'notice',
  degree: 'caution',
  heading: phrase(house, 'FOR AN ENGINEER TO REVIEW'),
  words: [
    phrase(
      house,
      'It certifies nothing and approves nothing. A licensed or competent engineer checks the ' +
        'model, the values and the limits against the house and the local code.',
    ),
  ],
});

/** What every number of the report rests on, whatever the set. */
const modelItems = (house: House, { trimsMeasured, splicesKnown }: SetStructure): Words[] => {
  return [
    [
      strong(phrase(house, 'Model: ')),
      phrase(
        house,
        'one straight pipe on elastic lift lines, an Euler-Bernoulli beam: E · I · d4y/dx4 = q. ' +
          'Lines pull and never push: T = k · (y + s) where tight, s how much shorter than true, ' +
          'else slack, found as the ' +
          'state of least energy with no tension below nothing. Exact for point and spread ' +
          'loads: there is no mesh.',
      ),
    ],
    [
      strong(phrase(house, 'Taken: ')),
      phrase(
        house,
        'small bending; lines upright, their ends at the arbor level and still; a stiff piece ' +
          'shares its mass equally among its picks unless shares are given; what is spread is ' +
          'even; masses as in the take-off; every value of the plant as the house gives it. What ' +
          'is not known is said, and never made up. The summary is rounded up, ' +
          'all other figures to the nearest.',
      ),
    ],
    [
      strong(phrase(house, 'Left out of all: ')),
      phrase(
        house,
        'starts, stops and snatches; bending by shear and sway of the lines (both small beside ' +
          'their stretch); twist from loads that hang up or down stage of the pipe; wear, rust ' +
          'and damage; supports of blocks and steel.',
      ),
    ],
    ...(trimsMeasured
      ? []
      : [
          [
            strong(phrase(house, 'Lengths of the lines: ')),
            phrase(
              house,
              'nobody has measured them against true, and all are taken as true. One that is ' +
                'short or long changes every tension: see the last column of the tensions.',
            ),
          ],
        ]),
    ...(splicesKnown
      ? []
      : [
          [
            strong(phrase(house, 'Joints of the pipe: ')),
            phrase(
              house,
              'not all known; where one is not, the whole pipe is reckoned, which may be too much.',
            ),
          ],
        ]),
  ];
};

/** Drawn larger and taken down: below a width the drawing leaves its figures out. */
const DRAWN_WIDTH = 720;
const DRAWN_LETTER = 13.5;
/** Letters at the right edge of a drawing that is made smaller come out a little wide. */
const AT_EDGE = 8;
const CAPTION = 13;
/** Points that the two standing notices take, any further one, and one row of the summary. */
const STANDING_NOTICES = 130;
const FURTHER_NOTICE = 100;
const SUMMARY_ROW = 21;
const CAPTION_ROOM = 20;

const heaviestOf = ({ states }: SetStructure): StructureState | undefined =>
  states.reduce<StructureState | undefined>(
    (most, state) => (most === undefined || state.mass > most.mass ? state : most),
    undefined,
  );

const drawingOf = (
  set: SetAssessment,
  structure: SetStructure,
  state: StructureState,
  house: House,
): Drawing => {
  const { lineLimit } = set.lineSet;
  const drawn = battenLoadsDrawing(structure, state, house, {
    width: DRAWN_WIDTH,
    letter: DRAWN_LETTER,
    lineLimitN: lineLimit.known ? lineLimit.value : null,
    items: hangingItems(set).map(({ item }) => item.name),
  });
  const scale = (REPORT_WIDTH - AT_EDGE) / DRAWN_WIDTH;
  const caption = lettering(
    0,
    CAPTION,
    phrase(house, 'As {name}, the heaviest state', {
      name: toldEach(house, state.name),
    }),
    CAPTION,
    {
      weight: 'strong',
    },
  );
  return {
    width: REPORT_WIDTH,
    height: drawn.height * scale + CAPTION_ROOM,
    title: drawn.title,
    shapes: [caption, group(drawn.shapes, { scale, at: { x: 0, y: CAPTION_ROOM } })],
  };
};

/** The line that carries most, its doubt counted in. */
const mostLoaded = ({ lines }: StructureState) =>
  lines.reduce<{ readonly number: number; readonly forceN: number } | null>(
    (most, { top, tension, uncertainty }, index) => {
      const forceN = (top.known ? top.value : tension) + (uncertainty ?? 0);
      return most === null || forceN > most.forceN ? { number: index + 1, forceN } : most;
    },
    null,
  );

const summaryRow = (state: StructureState, set: SetAssessment, house: House): Row => {
  const name: Words = [strong(toldEach(house, state.name))];
  const { beam } = state;
  const most = mostLoaded(state);
  const mass = sayMeasure({ value: state.mass, kind: 'mass' }, house, { round: 'up' });
  if ('unstable' in beam || most === null) {
    return {
      cells: [
        name,
        [height(state.height, house)],
        [mass],
        [strong(phrase(house, 'NOT STABLE'))],
        [''],
        [''],
      ],
      rule: 'thick',
    };
  }
  const { lineLimit } = set.lineSet;
  const share = lineLimit.known
    ? sayMeasure({ value: most.forceN / lineLimit.value, kind: 'ratio' }, house, { round: 'up' })
    : phrase(house, 'limit not known');
  const use =
    beam.utilisation === null
      ? notKnown(house)
      : sayMeasure({ value: beam.utilisation.value, kind: 'ratio' }, house, { round: 'up' });
  const slack = beam.slack.flatMap((each, index) => (each ? [`${index + 1}`] : []));
  const tension = sayMeasure({ value: most.forceN, kind: 'force' }, house, { round: 'up' });
  return {
    cells: [
      name,
      [height(state.height, house)],
      [mass],
      [strong(tension), phrase(house, ' line {number}', { number: most.number })],
      [share],
      [use],
      [slack.length === 0 ? phrase(house, 'none') : strong(slack.join(', '))],
    ],
    rule: slack.length === 0 ? 'hair' : 'thick',
  };
};

const summaryTable = (set: SetAssessment, structure: SetStructure, house: House): Table => {
  const right = (head: string) => ({ head, align: 'right', share: 0 }) as const;
  return fitted(
    {
      kind: 'table',
      columns: [
        { head: phrase(house, 'State'), align: 'left', share: 0 },
        right(phrase(house, 'At')),
        right(phrase(house, 'On the lines')),
        { head: phrase(house, 'Most at a loft block'), align: 'left', share: 0 },
        right(phrase(house, 'Of limit')),
        right(phrase(house, 'Bending')),
        right(phrase(house, 'Slack')),
      ],
      rows: structure.states.map((state) => summaryRow(state, set, house)),
    },
    REPORT_WIDTH,
  );
};

const missingBlocks = (needs: readonly string[], heading: string, house: House): Block[] =>
  needs.length === 0
    ? []
    : [{ kind: 'list', heading, items: needs.map((need): Words => [afterName(need, house)]) }];

/** A drawing that is taller than what is left of the first page stands behind the words. */
const knownBlocks = (
  set: SetAssessment,
  structure: SetStructure,
  house: House,
  noticesHeight: number,
): readonly Block[] => {
  const workings = structureWorkingsOf(set, house);
  const heaviest = heaviestOf(structure);
  const model = [
    keptNotes(phrase(house, 'What every number rests on'), modelItems(house, structure)),
  ];
  const drawn = (heaviest === undefined ? [] : [drawingOf(set, structure, heaviest, house)]).map(
    (drawing): DrawingBlock => ({ kind: 'drawing', drawing }),
  );
  const missing = missingBlocks(
    structure.hungNeeds,
    phrase(house, 'Not reckoned as hung: missing'),
    house,
  );
  const lines =
    structure.states.length + (missing.length === 0 ? 0 : 1 + structure.hungNeeds.length);
  const room = BODY_HEIGHT.portrait - noticesHeight - SUMMARY_ROW * (1 + lines);
  const isDrawnFirst = drawn.every(({ drawing }) => drawing.height <= room);
  const told = structure.states.find(({ beam }) => !('unstable' in beam));
  return [
    summaryTable(set, structure, house),
    ...missing,
    ...(isDrawnFirst ? [...drawn, ...model] : [...model, ...drawn]),
    plantTable(set.lineSet, house),
    freeLengthsTable(structure, house),
    workingsTable(workings.plant, house),
    { kind: 'heading', text: phrase(house, 'Loads') },
    ...loadBlocks(set, structure, house),
    ...structure.states.flatMap((state) =>
      stateBlocks(
        state,
        {
          workings: workings.states.find((each) => each.state === state)?.workings ?? [],
          toldIn: told === undefined || state === told ? null : told.name,
        },
        set.lineSet,
        house,
      ),
    ),
    ...wholeBlocks(structure, workings.whole, house),
  ];
};

const headBlockTable = (headBlock: SetStructure['headBlock'], house: House): readonly Table[] => {
  if (!headBlock.known) return [];
  const { resultant, vertical, horizontal, turn } = headBlock.value;
  const force = (forceN: number): string =>
    sayMeasure({ value: Math.abs(forceN), kind: 'force' }, house, { style: 'fine' });
  const cells: readonly Words[] = [
    [strong(force(resultant))],
    [force(vertical)],
    [force(horizontal)],
    [sayMeasure({ value: turn, kind: 'angle' }, house, { style: 'fine' })],
  ];
  return [
    {
      kind: 'table',
      columns: [
        phrase(house, 'Resultant'),
        phrase(house, 'Down'),
        phrase(house, 'To the loft blocks'),
        phrase(house, 'Turns through, mean'),
      ].map((head) => ({ head, align: 'left', share: 0.25 }) as const),
      rows: [{ cells, rule: 'hair' }],
    },
  ];
};

const wholeBlocks = (
  { headBlock, restrained }: SetStructure,
  workings: ReturnType<typeof structureWorkingsOf>['whole'],
  house: House,
): readonly Block[] => [
  { kind: 'heading', text: inHouseWords('Head block, and the batten held down', house) },
  ...headBlockTable(headBlock, house),
  ...(workings.length === 0 ? [] : [workingsTable(workings, house)]),
  ...missingBlocks(
    [...(headBlock.known ? [] : headBlock.needs), ...(restrained.known ? [] : restrained.needs)],
    phrase(house, 'Not reckoned: missing'),
    house,
  ),
];

const unknownBlocks = (
  set: SetAssessment,
  needs: readonly string[],
  house: House,
): readonly Block[] => [
  {
    kind: 'notice',
    degree: 'note',
    heading: phrase(house, 'Nothing is reckoned: values are missing'),
    words: [phrase(house, 'No number is made up for what nobody has given.')],
  },
  ...missingBlocks(needs, phrase(house, 'Missing'), house),
  plantTable(set.lineSet, house),
];

export const calculationReport = (context: SheetContext, set: SetAssessment): Sheet => {
  const { house, show } = context;
  const { structure } = set;
  const locked = lockedOutNotice(set, house);
  const further = locked.length + selfCheckNotice(context, 'calculation-report').length;
  const noticesHeight = STANDING_NOTICES + FURTHER_NOTICE * further;
  return makeSheet(context, {
    id: `calculation-report/${set.lineSet.id}`,
    kind: 'calculation-report',
    title: inHouseWords('Calculation report: batten, lift lines, blocks', house),
    number: set.lineSet.id,
    name: set.hang === null ? phrase(house, 'Empty') : hangName(set, show, house),
    beside: besideWords(context, set),
    blocks: [
      notAnOrder(house),
      ...locked,
      reviewNotice(house),
      ...(structure.known
        ? knownBlocks(set, structure.value, house, noticesHeight)
        : unknownBlocks(set, structure.needs, house)),
      { kind: 'inkLines', count: 4 },
    ],
    voidIf: voidWords(context, set),
    dependsOn: setDependsOn(context, set),
  });
};
