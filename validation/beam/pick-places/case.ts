import { placePicks } from '#beam';
import { exact } from '../../exact.ts';
import type { ValidationCase } from '../../form.ts';
import { battenOf } from '../asking.ts';

const [l, a, w, massKg] = [6, 1.5, 100, 50];
const P = massKg * 9.80665;

/**
 * Two picks d beyond either line: −w·a²/2 − P·d/2 over the lines, w·(l² − 4a²)/8 − P·d/2 between
 * them. Nearer, it sags more; farther, it hogs more; least where both are alike.
 */
const beyondM = (w * (l ** 2 - 8 * a ** 2)) / (8 * P);
const leastNm = (w * a ** 2) / 2 + (P * beyondM) / 2;

const best = () => {
  const the = battenOf({
    left: exact('-1.5'),
    right: exact('7.5'),
    supports: [exact('0'), exact('6')],
    loads: [{ from: exact('-1.5'), to: exact('7.5'), perLength: exact('100') }],
  });
  const places = placePicks(
    { ...the, tensionOnly: true },
    { mass: massKg, centre: 3, count: 2, halfFrom: 0.5, halfTo: 4.4 },
  );
  const [first] = places.ok ? places.value : [];
  if (first === undefined) throw new Error('no place was found');
  return first;
};

export const theCase: ValidationCase = {
  id: 'VAL-BEM-12',
  title: 'Where to pick a piece so that the batten bends least',
  calculation: 'beam',
  unit: 'm',
  tolerance: 1e-3,
  run: () => best().xs.map((x, i) => Math.abs(x - (i === 0 ? -beyondM : l + beyondM))),
  also: [
    {
      what: 'the moment there',
      unit: 'N·m above the least',
      // A millimetre moves the moment by P/2 for each metre.
      tolerance: (P / 2) * 1e-3,
      run: () => [Math.abs(best().largestMoment - leastNm)],
    },
    {
      what: 'the pull of either line there',
      unit: 'N',
      tolerance: 1e-6,
      run: () => [Math.abs(best().largestTension - (w * (l + 2 * a) + P) / 2)],
    },
  ],
};
