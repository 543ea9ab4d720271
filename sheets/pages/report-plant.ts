/** What a calculation report rests on of the plant: every value with its basis and its source. */

import type { SetStructure } from '#assessment';
import { fromCentre } from '#drawings';
import type { MeasureKind } from '#findings';
import type { House, Block as HouseBlock, Known, LineSet, Termination } from '#house';
import { formatLength } from '#quantities';
import { message, phrase } from '#texts';
import type { Row, Table } from '../sheet.ts';
import { strong } from '../sheet.ts';
import { placesAcross, sideAndDistance } from '../words/say-across.ts';
import { notKnown } from '../words/say-known.ts';
import { sayMeasure } from '../words/say-measure.ts';
import { preciseLength, typedPowers } from '../words/say-precise.ts';
import { groundsWords } from '../words/say-set.ts';
import { inHouseWords } from '../words/trade-translation.ts';
import { fitted } from './column-shares.ts';
import { REPORT_WIDTH } from './report-workings.ts';

type Line = { readonly what: string; readonly value: string; readonly grounds: string };

const END_WORDS: Readonly<Record<Termination, string>> = {
  spelterSocket: message('poured sockets'),
  swagedSocket: message('swaged sockets'),
  mechanicalSplice: message('mechanical splices'),
  handTuckedSplice: message('hand-tucked splices'),
  wedgeSocket: message('wedge sockets'),
  compressionSleeve: message('compression sleeves'),
  clips: message('wire rope clips'),
};

const fine = { style: 'fine' } as const;

const lineOf = (
  what: string,
  known: Known<number>,
  house: House,
  say: (value: number) => string,
): Line =>
  known.known
    ? { what, value: say(known.value), grounds: groundsWords(known.provenance, house) }
    : { what, value: notKnown(house), grounds: known.why ?? '' };

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
    lineOf(phrase(house, 'Batten, its end stage right'), batten.left, house, across),
    lineOf(phrase(house, 'Batten, its end stage left'), batten.right, house, across),
    lineOf(phrase(house, 'Batten with all its fittings'), batten.mass, house, say('mass')),
    lineOf(phrase(house, 'Fittings at each line'), batten.fittingsPerLine, house, say('mass')),
    lineOf(
      phrase(house, 'Second moment of the pipe, I'),
      pipe.secondMoment,
      house,
      say('secondMoment'),
    ),
    lineOf(
      phrase(house, 'Elastic section modulus, S'),
      pipe.sectionModulus,
      house,
      say('sectionModulus'),
    ),
    lineOf(phrase(house, 'Plastic modulus, Z'), pipe.plasticModulus, house, say('sectionModulus')),
    lineOf(phrase(house, 'Modulus of elasticity, E'), pipe.elasticModulus, house, say('pressure')),
    lineOf(phrase(house, 'Yield strength, F_y'), pipe.yieldStrength, house, say('pressure')),
    {
      what: phrase(house, 'Wall that these values are of'),
      value:
        pipe.wall === null ? notKnown(house) : phrase(house, '{wall} wall', { wall: pipe.wall }),
      grounds: phrase(house, 'as the house says'),
    },
    jointsLine(batten.splices, house),
    {
      what: phrase(house, 'Lift lines'),
      value: lineXs === null ? notKnown(house) : `${lineXs.length}: ${placesAcross(lineXs, house)}`,
      grounds: phrase(house, 'as the house says'),
    },
  ];
};

const jointsLine = (splices: LineSet['batten']['splices'], house: House): Line => {
  const what = phrase(house, 'Joints of the pipe');
  if (splices === null)
    return { what, value: notKnown(house), grounds: phrase(house, 'nobody has looked') };
  if (splices.length === 0)
    return { what, value: phrase(house, 'none'), grounds: phrase(house, 'as the house says') };
  const value = splices
    .map(({ x, strength }) => {
      const share = strength.known
        ? phrase(house, 'takes {measure}', {
            measure: sayMeasure({ value: strength.value, kind: 'ratio' }, house, { round: 'down' }),
          })
        : `${notKnown(house)}${strength.why === undefined ? '' : ` (${strength.why})`}`;
      return `${sideAndDistance(x, house)}: ${share}`;
    })
    .join('; ');
  return { what, value, grounds: phrase(house, 'share of the moment of the whole pipe') };
};

const cableLines = ({ lift, lineMassPerLength, lineLimit }: LineSet, house: House) => {
  const { cable } = lift;
  const say = sayer(house);
  const lines: readonly Line[] = [
    lineOf(phrase(house, 'Diameter of the line, d'), cable.diameter, house, (value) =>
      preciseLength(value, house),
    ),
    lineOf(phrase(house, 'Breaking strength, F'), cable.breakingStrength, house, say('force')),
    lineOf(phrase(house, 'Stiffness of the rope, EA'), cable.axialStiffness, house, say('force')),
    lineOf(
      phrase(house, 'Mass of the line for each length'),
      lineMassPerLength,
      house,
      say('massPerLength'),
    ),
    {
      what: phrase(house, 'Ends of the lines'),
      value:
        cable.termination === null ? notKnown(house) : phrase(house, END_WORDS[cable.termination]),
      grounds: cable.description ?? '',
    },
    lineOf(phrase(house, 'Limit of a line'), lineLimit, house, (value) =>
      sayMeasure({ value, kind: 'force' }, house, { ...fine, round: 'down' }),
    ),
    {
      what: phrase(house, 'Lines short or long of true'),
      value:
        lift.lineTrims === null
          ? phrase(house, 'taken as true')
          : phrase(house, 'as measured, below'),
      grounds:
        lift.lineTrims === null
          ? phrase(house, 'nobody has measured them')
          : phrase(house, 'as the house says'),
    },
    lineOf(phrase(house, 'Hand line, whole'), lift.handLineMass, house, say('mass')),
  ];
  return lines;
};

const blockLines = (name: string, block: HouseBlock, house: House): readonly Line[] => {
  const say = sayer(house);
  return [
    lineOf(
      phrase(house, 'Sheave of the {name}, at the groove', { name }),
      block.sheaveDiameter,
      house,
      (value) => preciseLength(value, house),
    ),
    lineOf(phrase(house, 'Rating of the {name}', { name }), block.rated, house, (value) =>
      sayMeasure({ value, kind: 'force' }, house, { ...fine, round: 'down' }),
    ),
    lineOf(
      phrase(house, 'Fleet angle at the {name}', { name }),
      block.fleetAngle,
      house,
      say('angle'),
    ),
  ];
};

const houseLines = (house: House): readonly Line[] => {
  const { stage, rules } = house;
  const plainNumber = (value: number): string => String(Math.round(value * 100) / 100);
  const say = sayer(house);
  return [
    lineOf(
      phrase(house, 'Loft blocks above the deck'),
      stage.loftBlockHeight,
      house,
      say('length'),
    ),
    lineOf(
      phrase(house, 'Head blocks above the deck'),
      stage.headBlockHeight,
      house,
      say('length'),
    ),
    lineOf(phrase(house, 'Head blocks from the centre line'), stage.operatingX, house, (xM) =>
      fromCentre(xM, house),
    ),
    lineOf(
      phrase(house, 'Rule: breaking strength over load'),
      rules.lineDesignFactor,
      house,
      plainNumber,
    ),
    lineOf(phrase(house, 'Rule: sheave over line, D/d'), rules.sheaveRatio, house, plainNumber),
    lineOf(phrase(house, 'Rule: fleet angle, at most'), rules.fleetAngleLimit, house, say('angle')),
    lineOf(
      phrase(house, 'Rule: sag between lines over their distance'),
      rules.sagLimit,
      house,
      say('ratio'),
    ),
  ];
};

/** Small, as a list of references is. */
const rowOf = ({ what, value, grounds }: Line, house: House): Row => ({
  cells: [
    [inHouseWords(what, house)],
    [value === notKnown(house) ? strong(value) : typedPowers(value)],
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
    ...blockLines(phrase(house, 'loft blocks'), loftBlock, house),
    ...blockLines(phrase(house, 'head block'), headBlock, house),
  ];
  return {
    kind: 'table',
    columns: [
      { head: phrase(house, 'Of the plant'), align: 'left', share: 0.36 },
      { head: phrase(house, 'Value'), align: 'left', share: 0.24 },
      { head: phrase(house, 'Basis and source'), align: 'left', share: 0.4 },
    ],
    rows: [
      ...group(phrase(house, 'Batten'), battenLines(lineSet, house), house),
      ...group(phrase(house, 'Lift lines'), cableLines(lineSet, house), house),
      ...group(phrase(house, 'Blocks'), blocks, house),
      ...group(phrase(house, 'Heights and rules of the house'), houseLines(house), house),
    ],
  };
};

const trimWords = (trimM: number | undefined, house: House): string => {
  if (trimM === undefined || trimM === 0) return phrase(house, 'true');
  const size = preciseLength(trimM, house);
  return trimM > 0
    ? phrase(house, '{size} short', { size })
    : phrase(house, '{size} long', { size });
};

/** Lines as the beam takes them, from stage right. */
export const freeLengthsTable = (structure: SetStructure, house: House): Table =>
  fitted(
    {
      kind: 'table',
      columns: [
        { head: phrase(house, 'Line'), align: 'left', share: 0 },
        { head: phrase(house, 'Place'), align: 'left', share: 0 },
        { head: phrase(house, 'Free length'), align: 'right', share: 0 },
        { head: phrase(house, 'Stiffness'), align: 'right', share: 0 },
        { head: phrase(house, 'Against true'), align: 'left', share: 0 },
      ],
      rows: structure.lines.map(({ x, stiffness, trim }, index): Row => {
        const length = structure.freeLengths[index];
        return {
          cells: [
            [strong(`${index + 1}`)],
            [sideAndDistance(x, house)],
            [length === undefined ? notKnown(house) : formatLength(length, house)],
            [
              stiffness === null
                ? phrase(house, 'rigid')
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
