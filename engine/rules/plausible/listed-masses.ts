import type { Known, LineSet } from '#house';
import { unreachable } from '#outcome';
import type { Item } from '#show';
import type { BandName } from './plausible-bands.ts';

/** One mass as it stands in a document: what it is, and the band that it belongs in. */
export type ListedMass = {
  readonly what: string;
  readonly value: number;
  readonly band: BandName;
  /**
   * Masses with one key are of like things and should be about alike; null where likeness says
   * nothing, as for two looms.
   */
  readonly like: string | null;
};

const listed = (
  value: Known<number> | null | undefined,
  what: string,
  band: BandName,
  like: string | null = null,
): readonly ListedMass[] =>
  value?.known === true ? [{ what, value: value.value, band, like }] : [];

const keyOf = (of: string, name: string): string => `${of} ${name.trim().toLowerCase()}`;

/** Length of a batten, m; null where an end is not known. */
const battenLength = ({ batten: { left, right } }: LineSet): number | null =>
  left.known && right.known && right.value > left.value ? right.value - left.value : null;

/** Every mass that a line set lists for itself. */
export const massesOfSet = (lineSet: LineSet): readonly ListedMass[] => {
  const { batten, arbor, lineMassPerLength, typeId } = lineSet;
  const lengthM = battenLength(lineSet);
  const whole = batten.mass;
  return [
    ...listed(batten.massPerLength, 'batten per length', 'battenPerLength', 'batten'),
    ...(whole.known && lengthM !== null
      ? [
          {
            what: 'batten with its fittings, per length',
            value: whole.value / lengthM,
            band: 'battenPerLength',
            like: 'batten',
          } as const,
        ]
      : []),
    ...listed(lineMassPerLength, 'lift line per length', 'liftLine', 'lift line'),
    ...listed(
      arbor?.carriageMass,
      'arbor without bricks',
      'carriage',
      keyOf('arbor of type', typeId),
    ),
  ];
};

/** Every mass that the take-off of an item lists. */
export const massesOfItem = (item: Item, lineSet: LineSet): readonly ListedMass[] => {
  const { takeoff, name } = item;
  switch (takeoff.by) {
    case 'mass':
      return [
        ...listed(takeoff.mass, name, 'item'),
        ...(item.kind === 'cloth' ? clothOverBatten(item, takeoff.mass, lineSet) : []),
      ];
    case 'cloth':
      return [
        ...listed(takeoff.areaMass, `cloth of ${name}, per area`, 'cloth'),
        ...listed(takeoff.bottomMassPerLength, `bottom of ${name}, per length`, 'hemPerLength'),
      ];
    case 'units':
      return takeoff.units.flatMap((unit) => [
        ...listed(unit.each, `one ${unit.name}`, 'unit', keyOf('unit', unit.name)),
        ...listed(unit.clampEach, `clamp of ${unit.name}`, 'clamp', keyOf('clamp', unit.name)),
      ]);
    case 'loom':
      return listed(takeoff.massPerLength, `${name}, per length`, 'loom');
    case 'pipe':
      return listed(takeoff.massPerLength, `${name}, per length`, 'pipe');
    case 'hardware':
      return takeoff.lines.flatMap((line) =>
        listed(line.each, `one ${line.name}`, 'hardware', keyOf('hardware', line.name)),
      );
    case 'frame':
      return [
        ...takeoff.members.flatMap((part) =>
          listed(
            part.massPerLength,
            `${part.name}, per length`,
            'member',
            keyOf('member', part.name),
          ),
        ),
        ...takeoff.sheets.flatMap((part) =>
          listed(part.massPerArea, `${part.name}, per area`, 'sheet', keyOf('sheet', part.name)),
        ),
        ...takeoff.hardware.flatMap((part) =>
          listed(part.each, `one ${part.name}`, 'hardware', keyOf('hardware', part.name)),
        ),
      ];
    default:
      return unreachable(takeoff);
  }
};

/** A cloth given whole, spread over the length of its batten: it cannot be wider than that. */
const clothOverBatten = (
  { name, drop }: Item,
  mass: Known<number>,
  lineSet: LineSet,
): readonly ListedMass[] => {
  const lengthM = battenLength(lineSet);
  if (!mass.known || !drop.known || lengthM === null || drop.value <= 0) return [];
  const value = mass.value / (lengthM * drop.value);
  return [
    {
      what: `cloth of ${name}, per area of the batten’s length`,
      value,
      band: 'hungCloth',
      like: null,
    },
  ];
};
