/** One state of a calculation report: tensions line by line, blocks, bending, and the workings. */

import type { LineState, StructureState } from '#assessment';
import type { BattenSolution } from '#beam';
import type { Reckoned, Working } from '#findings';
import type { House, LineSet } from '#house';
import { message, phrase, told, toldEach } from '#texts';
import type { Block, Row, Table, Words } from '../sheet.ts';
import { strong } from '../sheet.ts';
import { sideAndDistance } from '../words/say-across.ts';
import { lineForce } from '../words/say-force.ts';
import { notKnown } from '../words/say-known.ts';
import { sayMeasure } from '../words/say-measure.ts';
import { decimals, onePartIn, preciseLength, timesWords, turnStep } from '../words/say-precise.ts';
import { height } from '../words/say-set.ts';
import { inHouseWords } from '../words/trade-translation.ts';
import { fitted } from './column-shares.ts';
import { keptNotes } from './kept-notes.ts';
import { REPORT_WIDTH, workingsTable } from './report-workings.ts';

const fine = { style: 'fine' } as const;

/** The name of a table in it, so that no page parts them. */
const named = (words: string): Row => ({
  cells: [[strong(words)]],
  rule: 'hair',
  isGroup: true,
});

const moment = (momentNm: number, house: House): string =>
  sayMeasure({ value: Math.abs(momentNm), kind: 'moment' }, house, fine);

const orNot = <T>(value: Reckoned<T>, house: House, say: (value: T) => string): string =>
  value.known ? say(value.value) : notKnown(house);

const lineRow = (
  line: LineState,
  index: number,
  rigid: ReturnType<BattenSolution['rigid']>,
  house: House,
): Row => {
  const rigidN = rigid?.tensions[index];
  const step = turnStep(house);
  return {
    cells: [
      [strong(`${index + 1}`)],
      [sideAndDistance(line.x, house)],
      [line.slack ? strong(phrase(house, 'SLACK')) : strong(lineForce(line.tension, house))],
      [
        rigidN === undefined
          ? '–'
          : rigid?.slack[index] === true
            ? phrase(house, 'slack')
            : lineForce(rigidN, house),
      ],
      [line.uncertainty === null ? notKnown(house) : `± ${lineForce(line.uncertainty, house)}`],
      [orNot(line.top, house, (valueN) => lineForce(valueN, house))],
      [line.stretch === null ? '–' : preciseLength(line.stretch, house)],
      [line.slack ? '–' : lineForce(line.perTrim * step.lengthM, house)],
    ],
    rule: line.slack ? 'thick' : 'hair',
  };
};

const linesTable = (state: StructureState, beam: BattenSolution, house: House): Table => {
  const rigid = beam.rigid();
  const right = (head: string) => ({ head, align: 'right', share: 0 }) as const;
  return fitted(
    {
      kind: 'table',
      columns: [
        { head: phrase(house, 'Line'), align: 'left', share: 0 },
        { head: phrase(house, 'Place'), align: 'left', share: 0 },
        right(phrase(house, 'Elastic')),
        right(phrase(house, 'Rigid')),
        right(phrase(house, 'Off by')),
        right(phrase(house, 'At loft')),
        right(phrase(house, 'Stretch')),
        right(phrase(house, 'Per {words}', { words: turnStep(house).words })),
      ],
      rows: [
        named(inHouseWords('Tensions of the lift lines', house)),
        ...state.lines.map((line, index) => lineRow(line, index, rigid, house)),
      ],
    },
    REPORT_WIDTH,
  );
};

const factorWords = ({ strength, slack }: LineState, house: House): string => {
  if (slack) return phrase(house, 'slack');
  if (!strength.known) return notKnown(house);
  return strength.value.factor === null ? '–' : timesWords(strength.value.factor, house);
};

const blocksTable = (state: StructureState, house: House): Table => {
  const right = (head: string) => ({ head, align: 'right', share: 0 }) as const;
  return fitted(
    {
      kind: 'table',
      columns: [
        { head: phrase(house, 'Line'), align: 'left', share: 0 },
        right(phrase(house, 'Loft block')),
        right(phrase(house, 'Down')),
        right(phrase(house, 'To head block')),
        right(phrase(house, 'Turns through')),
        right(phrase(house, 'Strength over load')),
      ],
      rows: [
        named(phrase(house, 'Forces on the loft blocks')),
        ...state.lines.map((line, index): Row => {
          const { loftBlock } = line;
          return {
            cells: [
              [strong(`${index + 1}`)],
              [orNot(loftBlock, house, ({ resultant }) => lineForce(resultant, house))],
              [orNot(loftBlock, house, ({ vertical }) => lineForce(vertical, house))],
              [orNot(loftBlock, house, ({ horizontal }) => lineForce(horizontal, house))],
              [
                orNot(loftBlock, house, ({ turn }) =>
                  sayMeasure({ value: turn, kind: 'angle' }, house, fine),
                ),
              ],
              [factorWords(line, house)],
            ],
            rule: 'hair',
          };
        }),
      ],
    },
    REPORT_WIDTH,
  );
};

const METHODS = {
  plastic: message('full plastic moment'),
  firstYield: message('first yield'),
} as const;

/** Above the level of true lines that do not stretch, or below it. */
const levelWords = (deflectionM: number, house: House): string => {
  const size = preciseLength(deflectionM, house);
  return deflectionM >= 0
    ? phrase(house, '{size} below level', { size })
    : phrase(house, '{size} above level', { size });
};

const sagRows = ({ sag }: BattenSolution, house: House): readonly Row[] => {
  if (sag === null || sag.span <= 0) return [];
  const { sagLimit } = house.rules;
  const limit = sagLimit.known
    ? phrase(house, 'limit {share}', { share: onePartIn(sagLimit.value, house) })
    : phrase(house, 'limit not known');
  const share = onePartIn(sag.value / sag.span, house);
  return [
    {
      cells: [
        [phrase(house, 'Sag between two lines')],
        [
          strong(`${preciseLength(sag.value, house)}`),
          phrase(house, ' on {span}: {share}, {limit}', {
            span: height(sag.span, house),
            share,
            limit,
          }),
        ],
        [sideAndDistance(sag.x, house)],
      ],
      rule: 'hair',
    },
  ];
};

const allowedRow = ({ allowable, utilisation }: BattenSolution, wall: string, house: House): Row =>
  allowable === null || utilisation === null
    ? { cells: [[phrase(house, 'Moment allowed')], [strong(notKnown(house))], ['']], rule: 'hair' }
    : {
        cells: [
          [phrase(house, 'Use of the pipe')],
          [
            strong(sayMeasure({ value: utilisation.value, kind: 'ratio' }, house, fine)),
            phrase(house, ' of {allowed}: {method} over {factor}, {wall}', {
              allowed: sayMeasure({ value: utilisation.allowed, kind: 'moment' }, house, {
                ...fine,
                round: 'down',
              }),
              method: phrase(house, METHODS[allowable.method]),
              factor: decimals(allowable.factor, house),
              wall,
            }),
            utilisation.atSplice ? phrase(house, ', at a joint') : '',
          ],
          [sideAndDistance(utilisation.x, house)],
        ],
        rule: utilisation.value > 1 ? 'thick' : 'hair',
      };

const bendingTable = (beam: BattenSolution, wall: string, house: House): Table => {
  const { moment: peaks, deflection, stress } = beam;
  const peak = (
    head: string,
    { x, value }: { readonly x: number; readonly value: number },
  ): Row => ({
    cells: [[head], [strong(moment(value, house))], [sideAndDistance(x, house)]],
    rule: 'hair',
  });
  const place = (
    head: string,
    { x, value }: { readonly x: number; readonly value: number },
  ): Row => ({
    cells: [[head], [strong(levelWords(value, house))], [sideAndDistance(x, house)]],
    rule: 'hair',
  });
  return {
    kind: 'table',
    columns: [
      { head: phrase(house, 'What'), align: 'left', share: 0.27 },
      { head: phrase(house, 'How much'), align: 'left', share: 0.53 },
      { head: phrase(house, 'Where'), align: 'right', share: 0.2 },
    ],
    rows: [
      named(inHouseWords('Bending of the batten', house)),
      peak(phrase(house, 'Sagging moment, most'), peaks.max),
      peak(phrase(house, 'Hogging moment, most'), peaks.min),
      ...(stress === null
        ? []
        : [
            {
              cells: [
                [phrase(house, 'Bending stress, most')],
                [strong(sayMeasure({ value: stress, kind: 'pressure' }, house, fine))],
                [''],
              ],
              rule: 'hair' as const,
            },
          ]),
      allowedRow(beam, wall, house),
      place(phrase(house, 'Lowest'), deflection.max),
      place(phrase(house, 'Highest'), deflection.min),
      ...sagRows(beam, house),
    ],
  };
};

const heading = ({ name, height: heightM, kind }: StructureState, house: House): Block => ({
  kind: 'heading',
  text:
    kind === 'bare'
      ? phrase(house, 'State: bare, at {heightM}', { heightM: height(heightM, house) })
      : phrase(house, 'State: {name}, reckoned at {heightM}', {
          name: toldEach(house, name),
          heightM: height(heightM, house),
        }),
});

/** What the columns of the tables mean, told once. */
const columnWords = (house: House): Words => {
  const { lineDesignFactor } = house.rules;
  const asked = lineDesignFactor.known
    ? phrase(house, 'the house asks for {times}', {
        times: timesWords(lineDesignFactor.value, house),
      })
    : phrase(house, 'what the house asks for is not known');
  return [
    strong(phrase(house, 'Elastic, rigid: ')),
    phrase(house, 'lines that stretch, which counts, and lines that do not, beside it. '),
    strong(phrase(house, 'Off by: ')),
    phrase(house, 'every mass at its worst for that line. '),
    strong(phrase(house, 'At loft: ')),
    phrase(house, 'at the loft block, the wire below it counted in. '),
    strong(phrase(house, 'Per {words}: ', { words: turnStep(house).words })),
    phrase(
      house,
      'what the line takes more when it alone is made so much shorter; the others give it up. ',
    ),
    strong(phrase(house, 'Strength over load: ')),
    phrase(
      house,
      'what ends and sheaves leave of the breaking strength, over the largest tension; {asked}.',
      { asked },
    ),
  ];
};

/** Signs and sources are told in full once, in the first state; later ones refer to it. */
export const stateBlocks = (
  state: StructureState,
  { workings, toldIn }: { readonly workings: readonly Working[]; readonly toldIn: string | null },
  lineSet: LineSet,
  house: House,
): readonly Block[] => {
  const { beam } = state;
  if ('unstable' in beam) {
    return [
      heading(state, house),
      {
        kind: 'notice',
        degree: 'danger',
        heading: phrase(house, 'NOT STABLE: no number is given'),
        words: [told(house, beam.unstable.reason)],
      },
    ];
  }
  const { wall } = lineSet.batten.pipe;
  const wallWords =
    wall === null ? phrase(house, 'wall not said') : phrase(house, '{wall} wall', { wall });
  return [
    heading(state, house),
    ...(toldIn === null
      ? []
      : [
          {
            kind: 'text',
            isNote: true,
            words: [
              phrase(
                house,
                'Signs, sources and what is left out: as in the state "{toldIn}" above.',
                { toldIn: toldEach(house, toldIn) },
              ),
            ],
          } as const,
        ]),
    linesTable(state, beam, house),
    blocksTable(state, house),
    bendingTable(beam, wallWords, house),
    ...(toldIn === null
      ? [keptNotes(phrase(house, 'How to read these tables'), [columnWords(house)])]
      : []),
    workingsTable(workings, house, { isShort: toldIn !== null }),
  ];
};
