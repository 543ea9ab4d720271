import { bayTotals, type SetOnSteel, wellTotals } from '#lines';
import { POUND, POUND_FORCE } from '#quantities';
import type { ValidationCase } from '../../form.ts';

const IMPACT = 0.25;
const ARBORS_LB = [100, 250, 400, 700, 900] as const;

/** Sets 2 and 5 are double purchase. All lines stand on one well. */
const purchaseOf = (index: number): 1 | 2 => (index === 1 || index === 4 ? 2 : 1);

const setsWith = (moving: number): readonly SetOnSteel[] =>
  ARBORS_LB.map((arborLb, index) => ({
    set: `${index}`,
    bay: 'A',
    purchase: purchaseOf(index),
    arborMass: arborLb * POUND,
    handLineMass: 20 * POUND,
    arborWireMass: 0,
    lines: [{ x: 0, tension: (arborLb / purchaseOf(index)) * POUND_FORCE }],
    moving: isMoving(moving, index),
  }));

const isMoving = (moving: number, index: number): boolean =>
  Math.floor(moving / 2 ** index) % 2 === 1;

const errorsWith = (moving: number): readonly number[] => {
  const sets = setsWith(moving);
  const [bay] = bayTotals(sets, { bays: ['A'], movingShare: IMPACT });
  const well = wellTotals(sets, { wells: [{ id: 'W', x: 0, width: 1 }], movingShare: IMPACT });
  const sumLb = (loadLb: (arborLb: number, index: number) => number): number =>
    ARBORS_LB.reduce<number>(
      (sum, arborLb, index) =>
        sum + loadLb(arborLb, index) * (isMoving(moving, index) ? 1 + IMPACT : 1),
      0,
    );
  const sidewaysLb = sumLb((arborLb, index) => arborLb / purchaseOf(index));
  return [
    [bay?.vertical.value, sumLb((arborLb) => arborLb + 20)],
    [bay?.horizontal.value, sidewaysLb],
    [well.wells[0]?.value, sidewaysLb],
  ].map(([foundN = Number.NaN, wantedLb = Number.NaN]) =>
    Math.abs(foundN / (wantedLb * POUND_FORCE) - 1),
  );
};

export const theCase: ValidationCase = {
  id: 'VAL-LIN-02',
  title: 'A quarter more on the beams for what moves',
  calculation: 'lines',
  unit: 'relative',
  tolerance: 1e-12,
  run: () =>
    Array.from({ length: 2 ** ARBORS_LB.length }, (_, moving) => errorsWith(moving)).flat(),
};
