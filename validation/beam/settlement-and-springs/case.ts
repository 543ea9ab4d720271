import { exact, over } from '../../exact.ts';
import type { ValidationCase } from '../../form.ts';
import { answered, battenOf, partsOff, RIGIDITY, solved } from '../asking.ts';
import { EI } from '../cables.ts';
import { allLoaded, digitsOff, evenSpans } from '../even-spans.ts';
import { type ExactBeam, threeMoments } from '../three-moments.ts';

const [w, L] = [100, 3];
const TOTAL = 600;
const plain: ExactBeam = { ...evenSpans(allLoaded(2), 'even'), rigidity: EI };

const lowered = (metres: string): ExactBeam => ({
  ...plain,
  lowered: ['0', metres, '0'].map(exact),
});
/** kN/m of the middle support, or of all three. */
const sprung = (kilonewtons: string, all: boolean): ExactBeam => {
  const softness = over(exact('1'), exact(`${kilonewtons}000`));
  const end = all ? softness : exact('0');
  return { ...plain, softness: [end, softness, end] };
};
const halfKilonewton = (kilonewtons: string): ExactBeam => ({
  ...sprung(kilonewtons, true),
  loads: [{ at: exact('1.5'), force: exact('500') }],
});

/** Middle line down by d: R_B = 5wL/4 − 6·E·I·d/L³. */
const settledN = (d: number): number => (5 * w * L) / 4 - (6 * RIGIDITY * d) / L ** 3;
const slackAtM = (5 * w * L ** 4) / (24 * RIGIDITY);

/** R_B on a middle spring, ends rigid; and on three alike. */
const middleN = (k: number): number => slackAtM / (L ** 3 / (6 * RIGIDITY) + 1 / k);
const threeN = (k: number): number =>
  (slackAtM + (w * L) / k) / (L ** 3 / (6 * RIGIDITY) + 3 / (2 * k));

const TABLE: readonly (readonly [string, string, string])[] = [
  ['1', '55.698', '190.885, 218.231, 190.885'],
  ['10', '238.356', '152.955, 294.091, 152.955'],
  ['50', '336.427', '125.340, 349.320, 125.340'],
  ['100', '354.668', '119.428, 361.143, 119.428'],
];

const againstTheorem = (beam: ExactBeam): readonly number[] =>
  partsOff(solved(battenOf(beam)).tensions, threeMoments(beam).reactions, TOTAL);

const middleOf = (beam: ExactBeam): number => solved(battenOf(beam)).tensions[1] ?? NaN;

const printed = (beam: ExactBeam, list: string): readonly number[] => {
  const { tensions } = solved(battenOf(beam));
  return list.split(', ').map((each, i) => digitsOff(tensions[i] ?? NaN, each));
};

/** With lines that only pull, the middle one goes slack where it is as low as the pipe sags. */
const slackOff = (): readonly number[] =>
  [0.999, 1.001].map((share) => {
    const plainCase = battenOf(plain);
    const lines = plainCase.lines.map((line, i) =>
      i === 1 ? { ...line, trim: -slackAtM * share } : line,
    );
    const answer = answered({ ...plainCase, lines, tensionOnly: true });
    if ('unstable' in answer) return 1;
    return answer.slack[1] === share > 1 ? 0 : 1;
  });

/** What must push in the linear answer hangs slack: a lever on the two that are left. */
const pullingOff = (kilonewtons: string): readonly number[] => {
  const { tensions } = solved({ ...battenOf(halfKilonewton(kilonewtons)), tensionOnly: true });
  return partsOff(tensions, [250, 250, 0], 500);
};

export const theCase: ValidationCase = {
  id: 'VAL-BEM-08',
  title: 'A support that settles, supports that give',
  calculation: 'beam',
  unit: 'of the load',
  tolerance: 1e-9,
  run: () => [
    ...[lowered('0.01'), lowered('0.065414')].flatMap(againstTheorem),
    ...['1', '10', '50', '100'].flatMap((k) => [
      ...againstTheorem(sprung(k, false)),
      ...againstTheorem(sprung(k, true)),
      ...partsOff([middleOf(sprung(k, false))], [middleN(Number(k) * 1000)], TOTAL),
      ...partsOff([middleOf(sprung(k, true))], [threeN(Number(k) * 1000)], TOTAL),
    ]),
    ...partsOff([middleOf(lowered('0.01'))], [settledN(0.01)], TOTAL),
    ...['10', '100'].flatMap((k) => [...againstTheorem(halfKilonewton(k)), ...pullingOff(k)]),
  ],
  also: [
    {
      what: 'as printed',
      unit: 'last digits printed',
      tolerance: 0.51,
      run: () => [
        ...printed(lowered('0.01'), '141.164, 317.673, 141.164'),
        digitsOff(solved(battenOf(lowered('0.01'))).at(3).moment, '-26.509'),
        digitsOff(slackAtM * 1000, '65.414'),
        ...TABLE.flatMap(([k, middle, all]) => [
          digitsOff(middleOf(sprung(k, false)), middle),
          ...printed(sprung(k, true), all),
        ]),
        ...printed(halfKilonewton('10'), '244.061, 261.877, -5.939'),
        ...printed(halfKilonewton('100'), '210.136, 329.728, -39.864'),
      ],
    },
    {
      what: 'when the middle line goes slack',
      unit: 'answers unlike',
      tolerance: 0,
      run: slackOff,
    },
  ],
};
