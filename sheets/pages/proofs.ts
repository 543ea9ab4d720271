/** The proofs that only a person can give, each with a box and room for what was found. */

import type { SetAssessment } from '#assessment';
import type { House } from '#house';
import { formatLength, metres } from '#quantities';
import { phrase } from '#texts';
import { BODY_WIDTH } from '../page-parts.ts';
import type { Proofs, Words } from '../sheet.ts';
import { blank, box, strong } from '../sheet.ts';
import { sayMeasure } from '../words/say-measure.ts';
import { sayMoment } from '../words/say-moment.ts';
import { forceUnit, lengthUnit } from '../words/say-units.ts';
import { heightOfWords, TEXT } from './measure.ts';

const inchTest = (house: House): Words => [
  box,
  strong(phrase(house, ' Inch test')),
  phrase(house, ' before the first flight of each call; bricks counted aloud by two.'),
];

/** A pull that the set took by itself is told as such, not with a sign. */
const pullWords = (forceN: number, way: 'in' | 'out', house: House): string => {
  const size = sayMeasure({ value: Math.abs(forceN), kind: 'force' }, house);
  if (forceN < 0) {
    return way === 'out'
      ? phrase(house, 'went out by itself, checked with {size}', { size })
      : phrase(house, 'came in by itself, checked with {size}', { size });
  }
  return way === 'out'
    ? phrase(house, '{size} to go out', { size })
    : phrase(house, '{size} to come in', { size });
};

const pullTest = (set: SetAssessment, house: House): Words => {
  const unit = forceUnit(house.units);
  const test = set.recorded.state.pullTest;
  if (test === null) {
    return [
      box,
      strong(phrase(house, ' Two-way pull test')),
      phrase(house, ' to go out '),
      blank(7),
      phrase(house, ' {unit}, to come in ', { unit }),
      blank(7),
      phrase(house, ' {unit}, at ', { unit }),
      blank(7),
      ` ${lengthUnit(house.units)}`,
    ];
  }
  const at = formatLength(metres(test.height), house);
  return [
    strong(phrase(house, 'Pull test on record: ')),
    `${pullWords(test.out, 'out', house)}, ${pullWords(test.in, 'in', house)}, `,
    phrase(house, 'at {at}, {at2}. ', { at, at2: sayMoment(test.at, house) }),
    box,
    phrase(house, ' again after any change.'),
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
