/** The imbalance at every height that matters, from the highest down as on the drawing. */

import type { SetPlan } from '#assessment';
import { heavySide } from '#drawings';
import type { House, Known } from '#house';
import { FOOT, GRAVITY, type Newtons, POUND } from '#quantities';
import { message, phrase } from '#texts';
import type { Row, SheetData, Table } from '../sheet.ts';
import { strong } from '../sheet.ts';
import { height, loadMass } from '../words/say-set.ts';
import { lengthUnit, massUnit } from '../words/say-units.ts';
import type { NamedReading } from './readings.ts';
import { cardReadings } from './readings.ts';

/** What a reading is called that nobody has named. */
const OWN_NAMES: ReadonlySet<string> = new Set([
  message('resting'),
  message('high stop'),
  message('low stop'),
  message('working'),
  message('at'),
]);

const rowName = ({ name, side, heightM }: NamedReading, house: House): string => {
  const words = height(heightM, house);
  if (side === 'below') return phrase(house, 'below {words}', { words });
  if (name === '') return phrase(house, 'above {words}', { words });
  // A trim has the name that the house gave it.
  return `${OWN_NAMES.has(name) ? phrase(house, name) : name} ${words}`;
};

/** Size and side; exactly nothing has no side. */
export const imbalanceCell = (valueN: number, house: House): Row['cells'][number] => {
  const size = loadMass(Math.abs(valueN) / GRAVITY, house);
  return /^0[.0]*\s/.test(size) ? [strong(size)] : [strong(size), ` ${heavySide(house, valueN)}`];
};

const isPast = (valueN: number, lockHold: Known<Newtons>): boolean =>
  lockHold.known && Math.abs(valueN) > lockHold.value;

/** Share of the width for the names of the heights. */
export const AT_SHARE = 0.48;

export const balanceTable = (plan: SetPlan, house: House, lockHold: Known<Newtons>): Table => ({
  kind: 'table',
  columns: [
    { head: phrase(house, 'At'), unit: lengthUnit(house.units), align: 'left', share: AT_SHARE },
    {
      head: phrase(house, 'Imbalance'),
      unit: massUnit(house.units),
      align: 'right',
      share: 1 - AT_SHARE,
    },
  ],
  rows: cardReadings(plan).map((reading) => ({
    cells: [[rowName(reading, house)], imbalanceCell(reading.valueN, house)],
    rule: isPast(reading.valueN, lockHold) ? 'thick' : 'hair',
  })),
});

/** The same for a spreadsheet: size and side in columns of their own, no sign anywhere. */
export const balanceData = (plan: SetPlan, house: House): SheetData => {
  const isPounds = house.units === 'customary';
  const perUnit = GRAVITY * (isPounds ? POUND : 1);
  const perLength = isPounds ? FOOT : 1;
  return {
    columns: [
      'at',
      `height (${lengthUnit(house.units)})`,
      `imbalance (${massUnit(house.units)})`,
      'heavy side',
    ],
    rows: cardReadings(plan).map((reading) => [
      rowName(reading, house),
      Number((reading.heightM / perLength).toFixed(3)),
      Number((Math.abs(reading.valueN) / perUnit).toFixed(1)),
      heavySide(house, reading.valueN),
    ]),
  };
};
