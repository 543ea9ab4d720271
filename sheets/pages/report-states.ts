/** One state of a calculation report: tensions line by line, blocks, bending, and the workings. */
import type { LineState, StructureState } from '#assessment';
import type { BattenSolution } from '#beam';
import type { Reckoned, Working } from '#findings';
import type { House, LineSet } from '#house';
import type { Block, Row, Table, Words } from '../sheet.ts';
import { strong } from '../sheet.ts';
import { sideAndDistance } from '../words/say-across.ts';
import { lineForce } from '../words/say-force.ts';
import { NOT_KNOWN } from '../words/say-known.ts';
import { sayMeasure } from '../words/say-measure.ts';
import { onePartIn, preciseLength, timesWords, turnStep } from '../words/say-precise.ts';
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

const orNot = <T>(value: Reckoned<T>, say: (value: T) => string): string =>
  value.known ? say(value.value) : NOT_KNOWN;

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
      [line.slack ? strong('SLACK') : strong(lineForce(line.tension, house))],
      [
        rigidN === undefined
          ? '–'
          : rigid?.slack[index] === true
            ? 'slack'
            : lineForce(rigidN, house),
      ],
      [line.uncertainty === null ? NOT_KNOWN : `± ${lineForce(line.uncertainty, house)}`],
      [orNot(line.top, (valueN) => lineForce(valueN, house))],
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
        { head: 'Line', align: 'left', share: 0 },
        { head: 'Place', align: 'left', share: 0 },
        right('Elastic'),
        right('Rigid'),
        right('Off by'),
        right('At loft'),
        right('Stretch'),
        right(`Per ${turnStep(house).words}`),
      ],
      rows: [
        named(inHouseWords('Tensions of the lift lines', house)),
        ...state.lines.map((line, index) => lineRow(line, index, rigid, house)),
      ],
    },
    REPORT_WIDTH,
  );
};

const factorWords = ({ strength, slack }: LineState): string => {
  if (slack) return 'slack';
  if (!strength.known) return NOT_KNOWN;
  return strength.value.factor === null ? '–' : timesWords(strength.value.factor);
};

const blocksTable = (state: StructureState, house: House): Table => {
  const right = (head: string) => ({ head, align: 'right', share: 0 }) as const;
  return fitted(
    {
      kind: 'table',
      columns: [
        { head: 'Line', align: 'left', share: 0 },
        right('Loft block'),
        right('Down'),
        right('To head block'),
        right('Turns through'),
        right('Strength over load'),
      ],
      rows: [
        named('Forces on the loft blocks'),
        ...state.lines.map((line, index): Row => {
          const { loftBlock } = line;
          return {
            cells: [
              [strong(`${index + 1}`)],
              [orNot(loftBlock, ({ resultant }) => lineForce(resultant, house))],
              [orNot(loftBlock, ({ vertical }) => lineForce(vertical, house))],
              [orNot(loftBlock, ({ horizontal }) => lineForce(horizontal, house))],
              [
                orNot(loftBlock, ({ turn }) =>
                  sayMeasure({ value: turn, kind: 'angle' }, house, fine),
                ),
              ],
              [factorWords(line)],
            ],
            rule: 'hair',
          };
        }),
      ],
    },
    REPORT_WIDTH,
  );
};

const METHODS = { plastic: 'full plastic moment', firstYield: 'first yield' } as const;

/** Above the level of true lines that do not stretch, or below it. */
const levelWords = (deflectionM: number, house: House): string =>
  `${preciseLength(deflectionM, house)} ${deflectionM >= 0 ? 'below' : 'above'} level`;

const sagRows = ({ sag }: BattenSolution, house: House): readonly Row[] => {
  if (sag === null || sag.span <= 0) return [];
  const { sagLimit } = house.rules;
  const limit = sagLimit.known ? `limit ${onePartIn(sagLimit.value)}` : `limit ${NOT_KNOWN}`;
  const share = onePartIn(sag.value / sag.span);
  return [
    {
      cells: [
        ['Sag between two lines'],
        [
          strong(`${preciseLength(sag.value, house)}`),
          ` on ${height(sag.span, house)}: ${share}, ${limit}`,
        ],
        [sideAndDistance(sag.x, house)],
      ],
      rule: 'hair',
    },
  ];
};

const allowedRow = ({ allowable, utilisation }: BattenSolution, wall: string, house: House): Row =>
  allowable === null || utilisation === null
    ? { cells: [['Moment allowed'], [strong(NOT_KNOWN)], ['']], rule: 'hair' }
    : {
        cells: [
          ['Use of the pipe'],
          [
            strong(sayMeasure({ value: utilisation.value, kind: 'ratio' }, house, fine)),
            ` of ${sayMeasure({ value: utilisation.allowed, kind: 'moment' }, house, {
              ...fine,
              round: 'down',
            })}: ${METHODS[allowable.method]} over ${allowable.factor}, ${wall}` +
              `${utilisation.atSplice ? ', at a joint' : ''}`,
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
      { head: 'What', align: 'left', share: 0.27 },
      { head: 'How much', align: 'left', share: 0.53 },
      { head: 'Where', align: 'right', share: 0.2 },
    ],
    rows: [
      named(inHouseWords('Bending of the batten', house)),
      peak('Sagging moment, most', peaks.max),
      peak('Hogging moment, most', peaks.min),
      ...(stress === null
        ? []
        : [
            {
              cells: [
                ['Bending stress, most'],
                [strong(sayMeasure({ value: stress, kind: 'pressure' }, house, fine))],
                [''],
              ],
              rule: 'hair' as const,
            },
          ]),
      allowedRow(beam, wall, house),
      place('Lowest', deflection.max),
      place('Highest', deflection.min),
      ...sagRows(beam, house),
    ],
  };
};

const heading = ({ name, height: heightM, kind }: StructureState, house: House): Block => ({
  kind: 'heading',
  text:
    kind === 'bare'
      ? `State: bare, at ${height(heightM, house)}`
      : `State: ${name}, reckoned at ${height(heightM, house)}`,
});

/** What the columns of the tables mean, told once. */
const columnWords = (house: House): Words => {
  const { lineDesignFactor } = house.rules;
  const asked = lineDesignFactor.known
    ? `the house asks for ${timesWords(lineDesignFactor.value)}`
    : 'what the house asks for is not known';
  return [
    strong('Elastic, rigid: '),
    'lines that stretch, which counts, and lines that do not, beside it. ',
    strong('Off by: '),
    'every mass at its worst for that line. ',
    strong('At loft: '),
    'at the loft block, the wire below it counted in. ',
    strong(`Per ${turnStep(house).words}: `),
    'what the line takes more when it alone is made so much shorter; the others give it up. ',
    strong('Strength over load: '),
    `what ends and sheaves leave of the breaking strength, over the largest tension; ${asked}.`,
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
        heading: 'NOT STABLE: no number is given',
        words: [beam.unstable.reason],
      },
    ];
  }
  const { wall } = lineSet.batten.pipe;
  const wallWords = wall === null ? 'wall not said' : `${wall} wall`;
  return [
    heading(state, house),
    ...(toldIn === null
      ? []
      : [
          {
            kind: 'text',
            isNote: true,
            words: [`Signs, sources and what is left out: as in the state "${toldIn}" above.`],
          } as const,
        ]),
    linesTable(state, beam, house),
    blocksTable(state, house),
    bendingTable(beam, wallWords, house),
    ...(toldIn === null ? [keptNotes('How to read these tables', [columnWords(house)])] : []),
    workingsTable(workings, house, { isShort: toldIn !== null }),
  ];
};
