import { type BattenCase, type BattenLimits, type Heaviest, heaviestAt } from '#beam';
import { exact } from '../../exact.ts';
import type { ValidationCase } from '../../form.ts';
import { unlike } from '../../unlike.ts';
import { battenOf, GRAVITY } from '../asking.ts';

/** Two lines 6 m apart with 1.5 m beyond either, 100 N/m. */
const twoLines = (): BattenCase => ({
  ...battenOf({
    left: exact('-1.5'),
    right: exact('7.5'),
    supports: [exact('0'), exact('6')],
    loads: [{ from: exact('-1.5'), to: exact('7.5'), perLength: exact('100') }],
  }),
  tensionOnly: true,
});

/** The batten of VAL-BEM-13 without its load: from 450 N at the tip on it tips over. */
const threeLines = (): BattenCase => ({
  ...battenOf({
    left: exact('0'),
    right: exact('7.5'),
    supports: ['0', '3', '6'].map(exact),
    loads: [],
  }),
  loads: [{ from: 0, to: 7.5, mass: 300 / GRAVITY }],
  tensionOnly: true,
});

const strong = (): BattenCase => {
  const the = twoLines();
  return { ...the, pipe: { ...the.pipe, sectionModulus: 5e-6, yieldStrength: 2.4e8 } };
};
const ALLOWED = (2.4e8 * 5e-6) / 1.67;

type Question = {
  readonly the: BattenCase;
  readonly x: number;
  readonly limits: BattenLimits;
  readonly wantedN: number;
  readonly by: Heaviest['stoppedBy'];
};

const questions = (): readonly Question[] => [
  // R = 450 + P·7.5/6 at the near line.
  {
    the: twoLines(),
    x: 7.5,
    limits: { line: 900 },
    wantedN: (900 - 450) / (7.5 / 6),
    by: 'line',
  },
  // In the middle each line takes half.
  { the: twoLines(), x: 3, limits: { line: 900 }, wantedN: 900, by: 'line' },
  // M = 337.5 + P·6/4 in the middle, 112.5 + P·1.5 over the line for one at the tip.
  {
    the: strong(),
    x: 3,
    limits: { utilisation: 1 },
    wantedN: (ALLOWED - 337.5) / 1.5,
    by: 'bending',
  },
  {
    the: strong(),
    x: 7.5,
    limits: { utilisation: 0.5, line: 1e6 },
    wantedN: (ALLOWED / 2 - 112.5) / 1.5,
    by: 'bending',
  },
  { the: threeLines(), x: 7.5, limits: { line: 1e6 }, wantedN: 450, by: 'tipping' },
  {
    the: twoLines(),
    x: 1,
    limits: { liveMass: 100 + 900 / GRAVITY },
    wantedN: 100 * GRAVITY,
    by: 'liveMass',
  },
];

const answerTo = ({ the, x, limits }: Question): Heaviest => {
  const found = heaviestAt(the, x, limits);
  if (!found.ok) throw new Error(JSON.stringify(found.error));
  return found.value;
};

export const theCase: ValidationCase = {
  id: 'VAL-BEM-11',
  title: 'The heaviest load at one place',
  calculation: 'beam',
  unit: 'kg too light',
  tolerance: 1e-3,
  run: () =>
    questions()
      .map((asked) => asked.wantedN / GRAVITY - answerTo(asked).mass)
      .map(notOver),
  also: [
    {
      what: 'what stops it',
      unit: 'answers unlike',
      tolerance: 0,
      run: () => questions().map((asked) => unlike(answerTo(asked).stoppedBy, asked.by)),
    },
  ],
};

/** Too heavy by more than rounding is never near enough. */
const notOver = (tooLightKg: number): number =>
  tooLightKg < -1e-9 ? Number.POSITIVE_INFINITY : Math.abs(tooLightKg);
