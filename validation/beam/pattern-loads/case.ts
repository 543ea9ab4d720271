import { asNumber } from '../../exact.ts';
import type { ValidationCase } from '../../form.ts';
import { battenOf, partsOff, solved } from '../asking.ts';
import { digitsOff, evenSpans, fractions, type Kind, SCALES } from '../even-spans.ts';
import { threeMoments } from '../three-moments.ts';

type Pattern = {
  readonly loaded: string;
  /** Reactions as fractions, or as printed digits. */
  readonly even: string;
  readonly central: string | null;
  /** What lines that only pull make of the even load; the same beam with its raised ends free. */
  readonly pulling: string;
  readonly mostDeflection: string | null;
};

/** Reactions of lines that only pull follow from the spans that are left, by VAL-BEM-01. */
const PATTERNS: readonly Pattern[] = [
  {
    loaded: '1 0',
    even: '7/16, 5/8, -1/16',
    central: '13/32, 11/16, -3/32',
    pulling: '1/2, 1/2, 0',
    mostDeflection: '0.00915',
  },
  {
    loaded: '1 0 0',
    even: '13/30, 13/20, -1/10, 1/60',
    central: '2/5, 29/40, -3/20, 1/40',
    pulling: '1/2, 1/2, 0, 0',
    mostDeflection: null,
  },
  {
    loaded: '1 0 1',
    even: '9/20, 11/20, 11/20, 9/20',
    central: '17/40, 23/40, 23/40, 17/40',
    pulling: '9/20, 11/20, 11/20, 9/20',
    mostDeflection: '0.00992',
  },
  {
    loaded: '0 1 0',
    even: '-1/20, 11/20, 11/20, -1/20',
    central: '-3/40, 23/40, 23/40, -3/40',
    pulling: '0, 1/2, 1/2, 0',
    mostDeflection: null,
  },
  {
    loaded: '1 1 0',
    even: '23/60, 6/5, 9/20, -1/30',
    central: '13/40, 13/10, 17/40, -1/20',
    pulling: '3/8, 5/4, 3/8, 0',
    mostDeflection: '0.00590',
  },
  {
    loaded: '1 0 1 0',
    even: '0.44643, 0.57143, 0.46429, 0.57143, -0.05357',
    central: null,
    pulling: '9/20, 11/20, 11/20, 9/20, 0',
    mostDeflection: '0.00970',
  },
  {
    loaded: '1 1 0 1',
    even: '0.37946, 1.22321, 0.35714, 0.59821, 0.44196',
    central: null,
    pulling: '0.37946, 1.22321, 0.35714, 0.59821, 0.44196',
    mostDeflection: '0.00942',
  },
  {
    loaded: '0 1 1 0',
    even: '-0.03571, 0.46429, 1.14286, 0.46429, -0.03571',
    central: null,
    pulling: '0, 3/8, 5/4, 3/8, 0',
    mostDeflection: null,
  },
  {
    loaded: '1 0 1 0 1',
    even: '0.44737, 0.56579, 0.48684, 0.48684, 0.56579, 0.44737',
    central: null,
    pulling: '0.44737, 0.56579, 0.48684, 0.48684, 0.56579, 0.44737',
    mostDeflection: null,
  },
];

const beamOf = ({ loaded }: Pattern, kind: Kind) =>
  evenSpans(
    loaded.split(' ').map((each) => each === '1'),
    kind,
  );

const isPrinted = (list: string): boolean => list.includes('.');

const exactOff = (pattern: Pattern, kind: Kind, table: string): readonly number[] => {
  const beam = beamOf(pattern, kind);
  const { reaction } = SCALES[kind];
  const { tensions } = solved(battenOf(beam));
  const theorem = partsOff(tensions, threeMoments(beam).reactions, reaction);
  if (isPrinted(table)) return theorem;
  const scaled = fractions(table).map((each) => asNumber(each) * reaction);
  return [...theorem, ...partsOff(tensions, scaled, reaction)];
};

const pullingOff = (pattern: Pattern): readonly number[] => {
  const { reaction } = SCALES.even;
  const { tensions, slack } = solved({ ...battenOf(beamOf(pattern, 'even')), tensionOnly: true });
  const wanted = isPrinted(pattern.pulling)
    ? threeMoments(beamOf(pattern, 'even')).reactions.map((each) => asNumber(each) / reaction)
    : fractions(pattern.pulling).map(asNumber);
  return [
    ...partsOff(
      tensions,
      wanted.map((each) => each * reaction),
      reaction,
    ),
    ...slack.map((each, i) => (each === (wanted[i] === 0) ? 0 : 1)),
  ];
};

const printedOff = (pattern: Pattern): readonly number[] => {
  const { tensions, deflection } = solved(battenOf(beamOf(pattern, 'even')));
  const reactions = isPrinted(pattern.even)
    ? pattern.even
        .split(', ')
        .map((each, i) => digitsOff((tensions[i] ?? NaN) / SCALES.even.reaction, each))
    : [];
  const { mostDeflection } = pattern;
  if (mostDeflection === null) return reactions;
  return [...reactions, digitsOff(deflection.max.value / SCALES.even.deflection, mostDeflection)];
};

export const theCase: ValidationCase = {
  id: 'VAL-BEM-03',
  title: 'Some spans loaded and others not, lines that push and lines that do not',
  calculation: 'beam',
  unit: 'of w·L, P',
  tolerance: 1e-9,
  run: () =>
    PATTERNS.flatMap((pattern) => [
      ...exactOff(pattern, 'even', pattern.even),
      ...(pattern.central === null ? [] : exactOff(pattern, 'central', pattern.central)),
    ]),
  also: [
    {
      what: 'lines that only pull, and which are slack',
      unit: 'of w·L, lines miscounted',
      tolerance: 1e-9,
      run: () => PATTERNS.flatMap(pullingOff),
    },
    {
      what: 'as printed',
      unit: 'last digits printed',
      tolerance: 0.51,
      run: () => PATTERNS.flatMap(printedOff),
    },
  ],
};
