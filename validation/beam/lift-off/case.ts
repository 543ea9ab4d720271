import { exact } from '../../exact.ts';
import type { ValidationCase } from '../../form.ts';
import { unlike } from '../../unlike.ts';
import { answered, battenOf, partsOff, RIGIDITY, solved } from '../asking.ts';
import { digitsOff } from '../even-spans.ts';
import { type ExactBeam, threeMoments } from '../three-moments.ts';

/** Three lines 3 m apart, an overhang of 1.5 m, 40 N/m along all, and a load at the tip. */
const withTip = (force: string): ExactBeam => ({
  left: exact('0'),
  right: exact('7.5'),
  supports: ['0', '3', '6'].map(exact),
  loads: [
    ...[
      ['0', '3'],
      ['3', '6'],
      ['6', '7.5'],
    ].map(([from = '0', to = '0']) => ({
      from: exact(from),
      to: exact(to),
      perLength: exact('40'),
    })),
    { at: exact('7.5'), force: exact(force) },
  ],
});

const linear = () => solved(battenOf(withTip('300')));
const pulling = () => solved({ ...battenOf(withTip('300')), tensionOnly: true });
const [l, a, w, P] = [6, 1.5, 40, 300];
/** One overhang, an even load all along and a load at the tip: each as in AISC table 3-23. */
const tipM =
  ((w * a * (4 * a ** 2 * l - l ** 3 + 3 * a ** 3)) / 24 + (P * a ** 2 * (l + a)) / 3) / RIGIDITY;
const riseM = ((495 * 36) / 16 - (5 * w * l ** 4) / 384) / RIGIDITY;

const codeAt = (force: string): string => {
  const answer = answered({ ...battenOf(withTip(force)), tensionOnly: true });
  return 'unstable' in answer ? answer.unstable.code : 'hangs';
};

export const theCase: ValidationCase = {
  id: 'VAL-BEM-13',
  title: 'A load beyond the last line lifts the batten off the one before',
  calculation: 'beam',
  unit: 'of the load, the load by 1 m, 10 mm',
  tolerance: 1e-9,
  run: () => {
    const [push, pull] = [linear(), pulling()];
    return [
      ...partsOff(push.tensions, threeMoments(withTip('300')).reactions, 600),
      ...partsOff(push.tensions, [86.25, -97.5, 611.25], 600),
      ...partsOff([push.at(3).moment, push.at(6).moment], [78.75, -495], 600),
      ...partsOff(pull.tensions, [37.5, 0, 562.5], 600),
      ...partsOff([pull.at(3).moment, pull.moment.min.value], [-67.5, -495], 600),
      ...partsOff([pull.moment.max.value, pull.moment.max.x], [37.5 ** 2 / 80, 0.9375], 600),
      ...partsOff([-pull.at(3).deflection, pull.at(7.5).deflection], [riseM, tipM], 0.01),
    ];
  },
  also: [
    {
      what: 'as printed',
      unit: 'last digits printed',
      tolerance: 0.51,
      run: () => {
        const { at, moment } = pulling();
        return [
          digitsOff(-at(3).deflection * 1000, '17.008'),
          digitsOff(at(7.5).deflection * 1000, '50.696'),
          digitsOff(moment.max.value, '17.578'),
        ];
      },
    },
    {
      what: 'slack lines, and when it tips',
      unit: 'answers unlike',
      tolerance: 0,
      run: () => [
        unlike(linear().slack, [false, false, false]),
        unlike(pulling().slack, [false, true, false]),
        unlike(codeAt('449.9'), 'hangs'),
        unlike(codeAt('450'), 'tipsOver'),
        unlike(codeAt('450.1'), 'tipsOver'),
      ],
    },
  ],
};
