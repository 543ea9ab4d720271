import { type Exact, exact, minus, plus } from '../../exact.ts';
import type { ValidationCase } from '../../form.ts';
import { unlike } from '../../unlike.ts';
import { answered, battenOf, partsOff, RIGIDITY, solved } from '../asking.ts';
import { digitsOff } from '../even-spans.ts';
import type { ExactBeam, ExactLoad } from '../three-moments.ts';

/** A pipe with an overhang of `a` beyond either line, l apart; the left line at 0. */
const hung = (l: string, a: string, loads: (ends: Ends) => readonly ExactLoad[]): ExactBeam => {
  const ends = { left: minus(exact('0'), exact(a)), right: plus(exact(l), exact(a)) };
  return { ...ends, supports: [exact('0'), exact(l)], loads: loads(ends) };
};
type Ends = { readonly left: Exact; readonly right: Exact };

const alongAll =
  (perLength: string) =>
  ({ left, right }: Ends): readonly ExactLoad[] => [
    { from: left, to: right, perLength: exact(perLength) },
  ];

const [w, l, a] = [100, 6, 1.5];
const both = () => solved(battenOf(hung('6', '1.5', alongAll('100'))));
const midDown = (w * l ** 2 * (5 * l ** 2 - 24 * a ** 2)) / (384 * RIGIDITY);
const tipDown = (w * a * (3 * a ** 3 + 6 * a ** 2 * l - l ** 3)) / (24 * RIGIDITY);

/** One overhang of 1 m beyond a span of 3 m. */
const oneSided = (load: ExactLoad): ExactBeam => ({
  left: exact('0'),
  right: exact('4'),
  supports: [exact('0'), exact('3')],
  loads: [load],
});
const tipLoad = oneSided({ at: exact('4'), force: exact('300') });
const overhangLoad = oneSided({ from: exact('3'), to: exact('4'), perLength: exact('300') });

/** 10 m with lines where the moments over and between them are alike: a = (√2 − 1)/2 of it. */
const alike = () => {
  const from = ((Math.SQRT2 - 1) / 2) * 10;
  const plain = battenOf(hung('6', '2', alongAll('100')));
  const lines = [from - 2, 8 - from].map((x) => ({ x, stiffness: null }));
  return { from, beam: solved({ ...plain, lines }) };
};

/** Where tip and middle go down alike, by the two formulas, as a share of the whole length. */
const levelShare = (): number => {
  let [low, high] = [0.2, 0.25];
  for (let step = 0; step < 60; step++) {
    const share = (low + high) / 2;
    const span = 1 - 2 * share;
    const mid = (span ** 2 * (5 * span ** 2 - 24 * share ** 2)) / 384;
    const tip = (share * (3 * share ** 3 + 6 * share ** 2 * span - span ** 3)) / 24;
    if (mid > tip) low = share;
    else high = share;
  }
  return (low + high) / 2;
};

const levelOff = (): readonly number[] => {
  const from = levelShare() * 10;
  const plain = battenOf(hung('6', '2', alongAll('100')));
  const { at } = solved({
    ...plain,
    lines: [from - 2, 8 - from].map((x) => ({ x, stiffness: null })),
  });
  const scale = (100 * 10 ** 4) / RIGIDITY;
  return partsOff(
    [at(-2).deflection, at(8).deflection],
    [at(3).deflection, at(3).deflection],
    scale,
  );
};

/** Review problem: three lines 3 m apart, overhangs x for equal reactions, 300 N/m. */
const equalReactions = () => {
  const x = (-4 / 3 + Math.sqrt(16 / 9 + 14)) / 2;
  const from = { left: -x, right: 6 + x };
  const lines = [0, 3, 6].map((each) => ({ x: each, stiffness: null }));
  const mass = (300 * (6 + 2 * x)) / 9.80665;
  const plain = battenOf(hung('6', '2', () => []));
  const the = { ...plain, ...from, lines, loads: [{ from: from.left, to: from.right, mass }] };
  return { x, beam: solved(the) };
};

const forcesOff = (): readonly number[] => {
  const two = both();
  const ten = alike();
  const [tip, part] = [solved(battenOf(tipLoad)), solved(battenOf(overhangLoad))];
  const three = equalReactions();
  return [
    ...partsOff(two.tensions, [450, 450], 900),
    ...partsOff([two.moment.min.value, two.moment.max.value], [-112.5, 337.5], 900),
    ...partsOff(ten.beam.tensions, [500, 500], 1000),
    ...partsOff(
      [ten.beam.moment.min.value, ten.beam.moment.max.value],
      [(-100 * ten.from ** 2) / 2, (100 * ten.from ** 2) / 2],
      1000,
    ),
    ...partsOff([...tip.tensions, tip.moment.min.value], [-100, 400, -300], 300),
    ...partsOff([...part.tensions, part.moment.min.value], [-50, 350, -150], 300),
    ...partsOff(three.beam.tensions, Array(3).fill(100 * (6 + 2 * three.x)), 2600),
    ...partsOff(
      [three.beam.at(0).moment, three.beam.at(6).moment],
      Array(2).fill(-150 * three.x ** 2),
      2600,
    ),
  ];
};

const deflectionsOff = (): readonly number[] => {
  const two = both();
  const [tip, part] = [solved(battenOf(tipLoad)), solved(battenOf(overhangLoad))];
  const scale = 0.01;
  return [
    ...partsOff([two.at(3).deflection, two.deflection.max.value], [midDown, midDown], scale),
    ...partsOff([two.at(-1.5).deflection, two.at(7.5).deflection], [tipDown, tipDown], scale),
    ...partsOff([tip.at(4).deflection], [(300 * 1 * 4) / (3 * RIGIDITY)], scale),
    ...partsOff([tip.deflection.min.value], [(-300 * 9) / (9 * Math.sqrt(3) * RIGIDITY)], scale),
    ...partsOff([part.at(4).deflection], [(300 * (4 * 3 + 3)) / (24 * RIGIDITY)], scale),
    ...levelOff(),
  ];
};

const printedOff = (): readonly number[] => {
  const [two, ten, three] = [both(), alike(), equalReactions()];
  const [tip, part] = [solved(battenOf(tipLoad)), solved(battenOf(overhangLoad))];
  const [force = NaN] = three.beam.tensions;
  return [
    digitsOff(two.at(3).deflection * 1000, '45.790'),
    digitsOff(-two.at(-1.5).deflection * 1000, '30.254'),
    digitsOff(ten.beam.moment.max.value, '214.466'),
    digitsOff(ten.from, '2.0711'),
    digitsOff(levelShare(), '0.223149'),
    digitsOff(tip.at(4).deflection * 1000, '15.5055'),
    digitsOff(-tip.deflection.min.value * 1000, '6.7141'),
    digitsOff(tip.deflection.min.x / 3, (1 / Math.sqrt(3)).toFixed(6)),
    digitsOff(part.at(4).deflection * 1000, '7.2682'),
    digitsOff(three.x, '1.3194'),
    digitsOff(force, '863.88'),
    digitsOff(three.beam.at(3).moment, '-206.9'),
    digitsOff(three.beam.at(0).moment, '-261.12'),
  ];
};

const tips = (beam: ExactBeam): unknown => {
  const answer = answered({ ...battenOf(beam), tensionOnly: true });
  return 'unstable' in answer ? answer.unstable.code : answer.tensions;
};

export const theCase: ValidationCase = {
  id: 'VAL-BEM-04',
  title: 'Overhangs',
  calculation: 'beam',
  unit: 'of the load, the load by 1 m',
  tolerance: 1e-9,
  run: forcesOff,
  also: [
    { what: 'deflections', unit: 'of 10 mm, w·L⁴/EI', tolerance: 1e-9, run: deflectionsOff },
    {
      what: 'as printed',
      unit: 'last digits printed',
      tolerance: 0.51,
      run: printedOff,
    },
    {
      what: 'lines that only pull let it tip',
      unit: 'answers unlike',
      tolerance: 0,
      run: () => [unlike(tips(tipLoad), 'tipsOver'), unlike(tips(overhangLoad), 'tipsOver')],
    },
  ],
};
