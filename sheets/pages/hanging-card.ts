/** For the people on the deck who tie things on: where each pick and unit goes, from the centre. */

import type { SetAssessment } from '#assessment';
import type { HangingItem } from '#drawings';
import { battenFrontDrawing, fromCentre, hangingItems, tradeWord } from '#drawings';
import type { House } from '#house';
import { FOOT, formatLength, metres, POUND } from '#quantities';
import { phrase } from '#texts';
import { hangName, type SheetContext } from '../context.ts';
import { BODY_WIDTH, besideWords, makeSheet, voidWords } from '../page-parts.ts';
import type { Row, Sheet, SheetData, Table, Words } from '../sheet.ts';
import { strong } from '../sheet.ts';
import { hungWords, loadMass } from '../words/say-set.ts';
import { lengthUnit, massUnit } from '../words/say-units.ts';
import { inHouseWords } from '../words/trade-translation.ts';
import { fitted } from './column-shares.ts';
import { lockedOutNotice } from './locked-out.ts';
import { cardDependsOn, orderPointer, strikeToWorkBy } from './order-pointer.ts';

const LETTER = 12;

const distances = (xs: readonly number[], house: House): string =>
  xs.map((acrossM) => fromCentre(acrossM, house)).join(', ');

/** Places by side; a house reads stage right first, as the drawing does. */
const placeWords = (xs: readonly number[], house: House): string => {
  const right = xs.filter((acrossM) => acrossM < 0).toSorted((one, other) => other - one);
  const left = xs.filter((acrossM) => acrossM > 0).toSorted((one, other) => one - other);
  const centre = xs.some((acrossM) => acrossM === 0) ? [phrase(house, 'on the centre line')] : [];
  const sides = [
    ...(right.length === 0
      ? []
      : [phrase(house, 'stage right {distances}', { distances: distances(right, house) })]),
    ...centre,
    ...(left.length === 0
      ? []
      : [phrase(house, 'stage left {distances}', { distances: distances(left, house) })]),
  ];
  return sides.join('; ');
};

const whereRows = (hanging: HangingItem, house: House): readonly Words[] => {
  const { parts, span } = hanging;
  if (span !== null) {
    const [from, to] = [span.from, span.to].map((acrossM) => placeWords([acrossM], house));
    return [[phrase(house, 'even, from {from} to {to}', { from: from ?? '', to: to ?? '' })]];
  }
  if (parts.length === 0) return [[phrase(house, 'place not given: ask before tying')]];
  return parts.map(
    ({ name, xs }): Words =>
      parts.length === 1 ? [placeWords(xs, house)] : [`${name}: `, placeWords(xs, house)],
  );
};

const pickWords = ({ item }: HangingItem, house: House): string => {
  if (!item.pick.known) return phrase(house, 'not given');
  return item.pick.value === 0
    ? phrase(house, 'tied direct')
    : formatLength(item.pick.value, house);
};

const tallWords = (dropM: number, house: House): string =>
  dropM === 0 ? '–' : formatLength(metres(dropM), house);

const rowsOf = (set: SetAssessment, house: House): readonly Row[] =>
  hangingItems(set).flatMap((hanging, index) => {
    const total = set.takeoffs[index]?.total;
    const mass =
      total?.known === true ? loadMass(total.value.massKg, house) : phrase(house, 'not known');
    const drop = hanging.item.drop;
    const height = drop.known ? tallWords(drop.value, house) : phrase(house, 'not given');
    return whereRows(hanging, house).map(
      (where, row): Row => ({
        cells:
          row === 0
            ? [
                [strong(hanging.tag)],
                [hanging.item.name],
                where,
                [pickWords(hanging, house)],
                [height],
                [mass],
              ]
            : [[''], [''], where, [''], [''], ['']],
        rule: 'hair',
      }),
    );
  });

const tableOf = (set: SetAssessment, house: House): Table => {
  const unit = lengthUnit(house.units);
  return {
    kind: 'table',
    columns: [
      { head: '', align: 'left', share: 0.04 },
      { head: phrase(house, 'What'), align: 'left', share: 0.22 },
      { head: phrase(house, 'From the centre line'), unit, align: 'left', share: 0.38 },
      { head: phrase(house, 'Pick'), unit, align: 'right', share: 0.13 },
      { head: phrase(house, 'Height'), unit, align: 'right', share: 0.11 },
      { head: phrase(house, 'Mass'), unit: massUnit(house.units), align: 'right', share: 0.12 },
    ],
    rows: rowsOf(set, house),
  };
};

const dataOf = (set: SetAssessment, house: House): SheetData => {
  const [perLength, perMass] = house.units === 'customary' ? [FOOT, POUND] : [1, 1];
  const unit = lengthUnit(house.units);
  return {
    columns: [
      'letter',
      'item',
      'part',
      `from the centre line (${unit})`,
      'side',
      `pick (${unit})`,
      `item total (${massUnit(house.units)})`,
    ],
    rows: hangingItems(set).flatMap(({ tag, item, parts }, index) => {
      const total = set.takeoffs[index]?.total;
      const mass = total?.known === true ? Number((total.value.massKg / perMass).toFixed(1)) : null;
      const pick = item.pick.known ? Number((item.pick.value / perLength).toFixed(3)) : null;
      return parts.flatMap(({ name, xs }) =>
        xs.map((acrossM) => {
          const side = acrossM === 0 ? 'centre' : acrossM < 0 ? 'stage right' : 'stage left';
          const distance = Number((Math.abs(acrossM) / perLength).toFixed(3));
          return [tag, item.name, name, distance, side, pick, mass];
        }),
      );
    }),
  };
};

const liveWords = ({ lineSet }: SetAssessment, house: House): string => {
  const batten = tradeWord(house, 'batten');
  return lineSet.liveLimit.known
    ? phrase(house, 'live limit of the {batten} {loadMass}', {
        batten,
        loadMass: loadMass(lineSet.liveLimit.value, house),
      })
    : phrase(house, 'live limit of the {batten} not known', { batten });
};

const workingWords = ({ lineSet }: SetAssessment, house: House): string => {
  const { workingHeight } = lineSet;
  const words = inHouseWords('Working height of the batten', house);
  return workingHeight.known
    ? `${words} ${formatLength(workingHeight.value, house)}.`
    : phrase(house, '{words} not known.', { words });
};

export const hangingCard = (context: SheetContext, set: SetAssessment): Sheet => {
  const { house, show } = context;
  const lines = set.lineSet.lineXs?.length ?? null;
  const count = lines === null ? '' : `, ${lines} ${inHouseWords('lift lines', house)}`;
  const strike = strikeToWorkBy(context, set);
  return makeSheet(context, {
    id: `hanging-card/${set.lineSet.id}`,
    kind: 'hanging-card',
    title: phrase(house, 'Hanging card{count}', { count }),
    number: set.lineSet.id,
    name: hangName(set, show, house),
    beside: besideWords(context, set),
    blocks: [
      orderPointer(strike, house),
      ...lockedOutNotice(set, house),
      {
        kind: 'drawing',
        drawing: battenFrontDrawing(set, house, { width: BODY_WIDTH.portrait, letter: LETTER }),
      },
      ...(set.takeoffs.length === 0
        ? [{ kind: 'text' as const, words: [phrase(house, 'Nothing is hung on this set.')] }]
        : [fitted(tableOf(set, house), BODY_WIDTH.portrait)]),
      {
        kind: 'text',
        words: [
          strong(phrase(house, 'Hung: ')),
          `${hungWords(set, house)}; ${liveWords(set, house)}. ${workingWords(set, house)}`,
        ],
      },
      { kind: 'inkLines', count: 3 },
    ],
    voidIf: voidWords(context, set),
    dependsOn: cardDependsOn(context, set, strike),
    data: dataOf(set, house),
  });
};
