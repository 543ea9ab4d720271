/** What a calculation report rests on of the plant: every value with its basis and its source. */
import type { SetStructure } from '#assessment';
import { fromCentre } from '#drawings';
import type { MeasureKind } from '#findings';
import type { House, Block as HouseBlock, Known, LineSet, Termination } from '#house';
import { formatLength } from '#quantities';
import type { Row, Table } from '../sheet.ts';
import { strong } from '../sheet.ts';
import { placesAcross, sideAndDistance } from '../words/say-across.ts';
import { NOT_KNOWN } from '../words/say-known.ts';
import { sayMeasure } from '../words/say-measure.ts';
import { preciseLength, typedPowers } from '../words/say-precise.ts';
import { groundsWords } from '../words/say-set.ts';
import { inHouseWords } from '../words/trade-translation.ts';
import { fitted } from './column-shares.ts';
import { REPORT_WIDTH } from './report-workings.ts';

type Line = { readonly what: string; readonly value: string; readonly grounds: string };

const END_WORDS: Readonly<Record<Termination, string>> = {
  spelterSocket: 'poured sockets',
  swagedSocket: 'swaged sockets',
  mechanicalSplice: 'mechanical splices',
  handTuckedSplice: 'hand-tucked splices',
  wedgeSocket: 'wedge sockets',
  compressionSleeve: 'compression sleeves',
  clips: 'wire rope clips',
};

const fine = { style: 'fine' } as const;

const lineOf = (what: string, known: Known<number>, say: (value: number) => string): Line =>
  known.known
    ? { what, value: say(known.value), grounds: groundsWords(known.provenance) }
    : { what, value: NOT_KNOWN, grounds: known.why ?? '' };

const sayer =
  (house: House) =>
  (kind: MeasureKind) =>
  (value: number): string =>
    sayMeasure({ value, kind }, house, fine);

const battenLines = ({ batten, lineXs }: LineSet, house: House): readonly Line[] => {
  const { pipe } = batten;
  const say = sayer(house);
  const across = (xM: number): string => sideAndDistance(xM, house);
  return [
    lineOf('Batten, its end stage right', batten.left, across),
    lineOf('Batten, its end stage left', batten.right, across),
    lineOf('Batten with all its fittings', batten.mass, say('mass')),
    lineOf('Fittings at each line', batten.fittingsPerLine, say('mass')),
    lineOf('Second moment of the pipe, I', pipe.secondMoment, say('secondMoment')),
    lineOf('Elastic section modulus, S', pipe.sectionModulus, say('sectionModulus')),
    lineOf('Plastic modulus, Z', pipe.plasticModulus, say('sectionModulus')),
    lineOf('Modulus of elasticity, E', pipe.elasticModulus, say('pressure')),
    lineOf('Yield strength, F_y', pipe.yieldStrength, say('pressure')),
    {
      what: 'Wall that these values are of',
      value: pipe.wall === null ? NOT_KNOWN : `${pipe.wall} wall`,
      grounds: 'as the house says',
    },
    jointsLine(batten.splices, house),
    {
      what: 'Lift lines',
      value: lineXs === null ? NOT_KNOWN : `${lineXs.length}: ${placesAcross(lineXs, house)}`,
      grounds: 'as the house says',
    },
  ];
};

const jointsLine = (splices: LineSet['batten']['splices'], house: House): Line => {
  const what = 'Joints of the pipe';
  if (splices === null) return { what, value: NOT_KNOWN, grounds: 'nobody has looked' };
  if (splices.length === 0) return { what, value: 'none', grounds: 'as the house says' };
  const value = splices
    .map(({ x, strength }) => {
      const share = strength.known
        ? `takes ${sayMeasure({ value: strength.value, kind: 'ratio' }, house, { round: 'down' })}`
        : `${NOT_KNOWN}${strength.why === undefined ? '' : ` (${strength.why})`}`;
      return `${sideAndDistance(x, house)}: ${share}`;
    })
    .join('; ');
  return { what, value, grounds: 'share of the moment of the whole pipe' };
};

const cableLines = ({ lift, lineMassPerLength, lineLimit }: LineSet, house: House) => {
  const { cable } = lift;
  const say = sayer(house);
  const lines: readonly Line[] = [
    lineOf('Diameter of the line, d', cable.diameter, (value) => preciseLength(value, house)),
    lineOf('Breaking strength, F', cable.breakingStrength, say('force')),
    lineOf('Stiffness of the rope, EA', cable.axialStiffness, say('force')),
    lineOf('Mass of the line for each length', lineMassPerLength, say('massPerLength')),
    {
      what: 'Ends of the lines',
      value: cable.termination === null ? NOT_KNOWN : END_WORDS[cable.termination],
      grounds: cable.description ?? '',
    },
    lineOf('Limit of a line', lineLimit, (value) =>
      sayMeasure({ value, kind: 'force' }, house, { ...fine, round: 'down' }),
    ),
    {
      what: 'Lines short or long of true',
      value: lift.lineTrims === null ? 'taken as true' : 'as measured, below',
      grounds: lift.lineTrims === null ? 'nobody has measured them' : 'as the house says',
    },
    lineOf('Hand line, whole', lift.handLineMass, say('mass')),
  ];
  return lines;
};

const blockLines = (name: string, block: HouseBlock, house: House): readonly Line[] => {
  const say = sayer(house);
  return [
    lineOf(`Sheave of the ${name}, at the groove`, block.sheaveDiameter, (value) =>
      preciseLength(value, house),
    ),
    lineOf(`Rating of the ${name}`, block.rated, (value) =>
      sayMeasure({ value, kind: 'force' }, house, { ...fine, round: 'down' }),
    ),
    lineOf(`Fleet angle at the ${name}`, block.fleetAngle, say('angle')),
  ];
};

const houseLines = (house: House): readonly Line[] => {
  const { stage, rules } = house;
  const plainNumber = (value: number): string => String(Math.round(value * 100) / 100);
  const say = sayer(house);
  return [
    lineOf('Loft blocks above the deck', stage.loftBlockHeight, say('length')),
    lineOf('Head blocks above the deck', stage.headBlockHeight, say('length')),
    lineOf('Head blocks from the centre line', stage.operatingX, (xM) => fromCentre(xM, house)),
    lineOf('Rule: breaking strength over load', rules.lineDesignFactor, plainNumber),
    lineOf('Rule: sheave over line, D/d', rules.sheaveRatio, plainNumber),
    lineOf('Rule: fleet angle, at most', rules.fleetAngleLimit, say('angle')),
    lineOf('Rule: sag between lines over their distance', rules.sagLimit, say('ratio')),
  ];
};

/** Small, as a list of references is. */
const rowOf = ({ what, value, grounds }: Line, house: House): Row => ({
  cells: [
    [inHouseWords(what, house)],
    [value === NOT_KNOWN ? strong(value) : typedPowers(value)],
    [typedPowers(grounds)],
  ],
  rule: 'hair',
  isMuted: true,
});

const group = (name: string, lines: readonly Line[], house: House): readonly Row[] => [
  { cells: [[strong(inHouseWords(name, house))]], rule: 'hair', isGroup: true },
  ...lines.map((line) => rowOf(line, house)),
];

/** Every value of the plant that a number of the report rests on. */
export const plantTable = (lineSet: LineSet, house: House): Table => {
  const { loftBlock, headBlock } = lineSet.lift;
  const blocks = [
    ...blockLines('loft blocks', loftBlock, house),
    ...blockLines('head block', headBlock, house),
  ];
  return {
    kind: 'table',
    columns: [
      { head: 'Of the plant', align: 'left', share: 0.36 },
      { head: 'Value', align: 'left', share: 0.24 },
      { head: 'Basis and source', align: 'left', share: 0.4 },
    ],
    rows: [
      ...group('Batten', battenLines(lineSet, house), house),
      ...group('Lift lines', cableLines(lineSet, house), house),
      ...group('Blocks', blocks, house),
      ...group('Heights and rules of the house', houseLines(house), house),
    ],
  };
};

const trimWords = (trimM: number | undefined, house: House): string => {
  if (trimM === undefined || trimM === 0) return 'true';
  return `${preciseLength(trimM, house)} ${trimM > 0 ? 'short' : 'long'}`;
};

/** Lines as the beam takes them, from stage right. */
export const freeLengthsTable = (structure: SetStructure, house: House): Table =>
  fitted(
    {
      kind: 'table',
      columns: [
        { head: 'Line', align: 'left', share: 0 },
        { head: 'Place', align: 'left', share: 0 },
        { head: 'Free length', align: 'right', share: 0 },
        { head: 'Stiffness', align: 'right', share: 0 },
        { head: 'Against true', align: 'left', share: 0 },
      ],
      rows: structure.lines.map(({ x, stiffness, trim }, index): Row => {
        const length = structure.freeLengths[index];
        return {
          cells: [
            [strong(`${index + 1}`)],
            [sideAndDistance(x, house)],
            [length === undefined ? NOT_KNOWN : formatLength(length, house.units)],
            [
              stiffness === null
                ? 'rigid'
                : sayMeasure({ value: stiffness, kind: 'forcePerLength' }, house),
            ],
            [trimWords(trim, house)],
          ],
          rule: 'hair',
        };
      }),
    },
    REPORT_WIDTH,
  );
