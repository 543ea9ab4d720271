import { type BattenCase, turnsToEven, turnsToLevel } from '#beam';
import { asNumber, exact } from '../../exact.ts';
import type { ValidationCase } from '../../form.ts';
import { battenOf, partsOff, solved } from '../asking.ts';
import { EVEN, FREE_LENGTHS, onFive, WITH_POINTS } from '../cables.ts';
import { type ExactLoad, threeMoments } from '../three-moments.ts';

const EA = 1_985_813;
const TOTAL = 2400;

/** The wires of VAL-BEM-07, turned by hand before: some short, some long. */
const askedFor = (loads: readonly ExactLoad[]): BattenCase => {
  const the = { ...battenOf(onFive(loads, true)), tensionOnly: true };
  const trims = [0.001, -0.002, 0.0015, 0, -0.001];
  return { ...the, lines: the.lines.map((line, i) => ({ ...line, trim: trims[i] ?? 0 })) };
};

const turnedBy = (search: typeof turnsToLevel, loads: readonly ExactLoad[]) => {
  const found = search(askedFor(loads));
  if (!found.ok || 'unstable' in found.value) throw new Error('no turns were found');
  return found.value;
};

/** Trims to the femtometre, as fractions: what the theorem makes of them, not the program. */
const byTheorem = (loads: readonly ExactLoad[], trims: readonly number[]): readonly number[] =>
  threeMoments({
    ...onFive(loads, true),
    lowered: trims.map((trim) => exact((-trim).toFixed(15))),
  }).reactions.map(asNumber);

const levelOff = (): readonly number[] => {
  const { trims, after, turns } = turnedBy(turnsToLevel, WITH_POINTS);
  const rigid = threeMoments(onFive(WITH_POINTS, false)).reactions.map(asNumber);
  // Each wire is to be short by its own stretch, less what all are turned together.
  const stretches = rigid.map((each, i) => (each * Number(FREE_LENGTHS[i])) / EA);
  const [first = NaN] = trims;
  return [
    ...partsOff(after.tensions, rigid, TOTAL),
    ...partsOff(byTheorem(WITH_POINTS, trims), rigid, TOTAL),
    ...partsOff(
      trims.map((trim) => trim - first),
      stretches.map((each) => each - (stretches[0] ?? NaN)),
      0.01,
    ),
    ...partsOff([turns.reduce((sum, turn) => sum + turn, 0)], [0], 0.01),
  ];
};

/** 300 N each under the even load; under the other, straight along x by the two balances. */
const evenOff = (): readonly number[] => {
  const even = turnedBy(turnsToEven, EVEN);
  const leaning = turnedBy(turnsToEven, WITH_POINTS);
  // Σ T = 2400 and Σ T·(x − 7.5) = 300·(−5.5) + 600·1.5, over Σ (x − 7.5)² = 122.5.
  const wanted = [-7, -3.5, 0, 3.5, 7].map((x) => 480 - (750 / 122.5) * x);
  return [
    ...partsOff(even.after.tensions, Array(5).fill(300), TOTAL),
    ...partsOff(byTheorem(EVEN, even.trims), Array(5).fill(300), TOTAL),
    ...partsOff(leaning.after.tensions, wanted, TOTAL),
    ...partsOff(byTheorem(WITH_POINTS, leaning.trims), wanted, TOTAL),
  ];
};

export const theCase: ValidationCase = {
  id: 'VAL-BEM-10',
  title: 'Turns that level a batten or even out its lines',
  calculation: 'beam',
  unit: 'of 2400 N, 10 mm',
  tolerance: 1e-9,
  run: () => [...levelOff(), ...evenOff()],
  also: [
    {
      what: 'height of the batten at every line, levelled',
      unit: 'm',
      tolerance: 1e-12,
      run: () => {
        const { trims } = turnedBy(turnsToLevel, WITH_POINTS);
        const the = askedFor(WITH_POINTS);
        const lines = the.lines.map((line, i) => ({ ...line, trim: trims[i] ?? NaN }));
        const { atLines } = solved({ ...the, lines }).deflection;
        return atLines.map((y) => Math.abs(y - (atLines[0] ?? NaN)));
      },
    },
  ],
};
