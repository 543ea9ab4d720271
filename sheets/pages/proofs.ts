/** The proofs that only a person can give, each with a box and room for what was found. */
import type { SetAssessment } from '#assessment';
import { tradeWord } from '#drawings';
import type { House } from '#house';
import { formatLength, metres } from '#quantities';
import { BODY_WIDTH } from '../page-parts.ts';
import type { Proofs, Words } from '../sheet.ts';
import { blank, box, strong } from '../sheet.ts';
import { sayMeasure } from '../words/say-measure.ts';
import { sayMoment } from '../words/say-moment.ts';
import { forceUnit, lengthUnit } from '../words/say-units.ts';
import { heightOfWords, TEXT } from './measure.ts';

const inchTest = (house: House): Words => [
  box,
  strong(' Inch test'),
  ` before the first flight of each call; ${tradeWord(house, 'bricks')} counted aloud by two.`,
];

/** A pull that the set took by itself is told as such, not with a sign. */
const pullWords = (forceN: number, way: string, house: House): string => {
  const size = sayMeasure({ value: Math.abs(forceN), kind: 'force' }, house);
  return forceN < 0 ? `went ${way} by itself, checked with ${size}` : `${size} to ${way}`;
};

const pullTest = (set: SetAssessment, house: House): Words => {
  const unit = forceUnit(house.units);
  const test = set.recorded.state.pullTest;
  if (test === null) {
    return [
      box,
      strong(' Two-way pull test'),
      ' to go out ',
      blank(7),
      ` ${unit}, to come in `,
      blank(7),
      ` ${unit}, at `,
      blank(7),
      ` ${lengthUnit(house.units)}`,
    ];
  }
  const at = formatLength(metres(test.height), house.units);
  return [
    strong('Pull test on record: '),
    `${pullWords(test.out, 'go out', house)}, ${pullWords(test.in, 'come in', house)}, `,
    `at ${at}, ${sayMoment(test.at)}. `,
    box,
    ' again after any change.',
  ];
};

export const proofsOf = (set: SetAssessment, house: House): Proofs => ({
  kind: 'proofs',
  items: [inchTest(house), pullTest(set, house)],
});

const EDGE = 9;
const GAP = 2;

export const proofsHeight = ({ items }: Proofs): number =>
  items.reduce((sum, words) => sum + heightOfWords(words, TEXT, BODY_WIDTH.portrait) + GAP, EDGE);
