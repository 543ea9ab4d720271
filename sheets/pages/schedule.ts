/** The line set schedule: every set in rail order, the blocked and the spare ones too. */

import type { SetAssessment } from '#assessment';
import { tradeWord } from '#drawings';
import type { House, Known } from '#house';
import { unreachable } from '#outcome';
import { FOOT, formatLength, type Metres, POUND } from '#quantities';
import type { HangFamily, Trim } from '#show';
import { message, phrase } from '#texts';
import { hangName, type SheetContext } from '../context.ts';
import { BODY_WIDTH, makeSheet, notAnOrder, voidWords, writtenHouse } from '../page-parts.ts';
import type { Column, Row, Sheet, SheetData, Words } from '../sheet.ts';
import { strong } from '../sheet.ts';
import { kindOfSet, loadMass } from '../words/say-set.ts';
import { lengthUnit, massUnit } from '../words/say-units.ts';
import { inHouseWords } from '../words/trade-translation.ts';
import { countsOf } from './bricks-words.ts';
import { fitted } from './column-shares.ts';

const NONE = '–';

const columnsOf = (house: House): readonly Column[] => {
  const unit = lengthUnit(house.units);
  const trim = tradeWord(house, 'trim');
  const depthUnit = house.units === 'customary' ? 'in' : unit;
  const heads: readonly Omit<Column, 'share'>[] = [
    { head: phrase(house, 'Set'), align: 'left' },
    { head: phrase(house, 'Position'), unit, align: 'right' },
    { head: phrase(house, 'Item'), align: 'left' },
    { head: phrase(house, 'Kind'), align: 'left' },
    { head: phrase(house, 'In {trim}', { trim }), unit, align: 'right' },
    { head: phrase(house, 'Out {trim}', { trim }), unit, align: 'right' },
    { head: phrase(house, 'Height'), unit, align: 'right' },
    { head: phrase(house, 'Depth \u00B1'), unit: depthUnit, align: 'right' },
    { head: phrase(house, 'Hung'), unit: massUnit(house.units), align: 'right' },
    { head: phrase(house, 'Show bricks'), align: 'left' },
    { head: phrase(house, 'Status'), align: 'left' },
  ];
  return heads.map((head) => ({ ...head, share: 0 }));
};

const lengthCell = (value: Known<Metres> | undefined, house: House, inches = false): string => {
  if (value === undefined) return NONE;
  if (!value.known) return 'unknown';
  return formatLength(value.value, house, {
    customaryLength: inches ? 'inches' : 'feetInches',
  });
};

const heightOf = ({ height }: Trim): number => (height.known ? height.value : 0);

/** The lowest trim and, where there is more than one, the highest. */
const trimsOf = (set: SetAssessment): readonly [Trim | undefined, Trim | undefined] => {
  const sorted = (set.hang?.trims ?? []).toSorted((one, other) => heightOf(one) - heightOf(other));
  return [sorted[0], sorted.length > 1 ? sorted.at(-1) : undefined];
};

/** The tallest piece; that is what has to clear the deck and hide above the opening. */
const tallest = (set: SetAssessment): Known<Metres> | undefined => {
  const drops = (set.hang?.items ?? []).map(({ drop }) => drop);
  const unknown = drops.find((drop) => !drop.known);
  if (unknown !== undefined) return unknown;
  return drops.reduce<Known<Metres> | undefined>(
    (most, drop) => (most?.known === true && drop.known && most.value >= drop.value ? most : drop),
    undefined,
  );
};

const brickWords = (set: SetAssessment, house: House): string => {
  if (!set.plan.known)
    return set.hang === null ? '' : set.lineSet.arbor === null ? phrase(house, 'none') : '';
  const counts = countsOf(set.plan.value.stack.runs, 'show');
  if (counts.length === 0) return phrase(house, 'none');
  const names = counts.map(({ kind, count }) => {
    const brick = house.brickKinds.find(({ id }) => id === kind);
    return `${count} ${brick?.name ?? kind}`;
  });
  return names.join(', ');
};

const FAMILIES: Readonly<Record<HangFamily, string>> = {
  soft: message('soft'),
  hard: message('hard'),
  electric: message('electric'),
  other: message('other'),
};

const statusWords = (set: SetAssessment, house: House): string => {
  const { service, tag, knowledge } = set.recorded.state;
  if (service === 'lockedOut') {
    return tag === null
      ? phrase(house, 'LOCKED OUT')
      : phrase(house, 'LOCKED OUT, tag {number}', { number: tag.number });
  }
  if (service === 'deadHung' || (set.hang !== null && set.hang.deadHungAt !== null)) {
    return tradeWord(house, 'deadHung');
  }
  if (set.lineSet.arbor === null) return kindOfSet(set.lineSet, house);
  switch (knowledge.basis) {
    case 'counted':
      return knowledge.second === null ? phrase(house, 'counted by one') : phrase(house, 'counted');
    case 'pullTested':
      return phrase(house, 'pull-tested');
    case 'weighed':
      return phrase(house, 'weighed');
    case 'carriedOver':
      return phrase(house, 'carried over');
    case 'unknown':
      return phrase(house, 'not recorded');
    default:
      return unreachable(knowledge.basis);
  }
};

const rowOf = (set: SetAssessment, { house, show }: SheetContext): Row => {
  const { lineSet, hang, hung } = set;
  const [inTrim, outTrim] = trimsOf(set);
  const isEmpty = hang === null;
  // A state that overrules the name is never said in small letters.
  const isLockedOut = set.recorded.state.service === 'lockedOut';
  const name = hangName(set, show, house);
  const id = isEmpty ? [lineSet.id] : [strong(lineSet.id)];
  const mass = hung.known ? loadMass(hung.value.withoutLoom, house) : 'unknown';
  return {
    cells: [
      id,
      [lengthCell(lineSet.y, house)],
      [isEmpty ? name : strong(name)],
      [hang === null ? '' : phrase(house, FAMILIES[hang.family])],
      [isEmpty ? '' : lengthCell(inTrim?.height, house)],
      [isEmpty ? '' : lengthCell(outTrim?.height, house)],
      [isEmpty ? '' : lengthCell(tallest(set), house)],
      [isEmpty ? '' : lengthCell(hang.halfDepth, house, true)],
      [isEmpty ? '' : mass],
      [brickWords(set, house)],
      [isLockedOut ? strong(statusWords(set, house)) : statusWords(set, house)],
    ],
    rule: 'hair',
    isMuted: isEmpty && !isLockedOut,
  };
};

/** One remark that many sets share is printed once, with all their numbers. */
const remarkItems = ({ assessment }: SheetContext): readonly Words[] => {
  const remarks = assessment.sets.flatMap(({ lineSet, hang }) =>
    [lineSet.remark, hang?.remark].flatMap((remark) =>
      remark === undefined ? [] : [{ set: lineSet.id, remark }],
    ),
  );
  return [...new Set(remarks.map(({ remark }) => remark))].map((remark): Words => {
    const sets = remarks.filter((each) => each.remark === remark).map(({ set }) => set);
    return [strong(`${sets.join(', ')}: `), remark];
  });
};

const dataOf = (context: SheetContext): SheetData => {
  const { house, assessment, show } = context;
  const [perLength, perMass] = house.units === 'customary' ? [FOOT, POUND] : [1, 1];
  const unit = lengthUnit(house.units);
  const length = (value: Known<Metres> | undefined): number | null =>
    value?.known === true ? Number((value.value / perLength).toFixed(3)) : null;
  const kinds = house.brickKinds.filter(({ serves }) => serves.show);
  return {
    columns: [
      'set',
      `position (${unit})`,
      'item',
      'kind',
      `in ${tradeWord(house, 'trim')} (${unit})`,
      `out ${tradeWord(house, 'trim')} (${unit})`,
      `height (${unit})`,
      `depth each way (${unit})`,
      `hung (${massUnit(house.units)})`,
      ...kinds.map(({ name }) => `show ${tradeWord(house, 'bricks')} ${name} (number)`),
      'status',
      'remarks',
    ],
    rows: assessment.sets.map((set) => {
      const [inTrim, outTrim] = trimsOf(set);
      const { hung, hang, lineSet } = set;
      const counts = set.plan.known ? set.plan.value.stack.show : [];
      return [
        lineSet.id,
        length(lineSet.y),
        hangName(set, show, house),
        hang?.family ?? '',
        length(inTrim?.height),
        length(outTrim?.height),
        length(tallest(set)),
        length(hang?.halfDepth),
        hang !== null && hung.known ? Number((hung.value.withoutLoom / perMass).toFixed(1)) : null,
        ...kinds.map(({ id }) =>
          set.plan.known ? (counts.find(({ kind }) => kind === id)?.count ?? 0) : null,
        ),
        statusWords(set, house),
        [lineSet.remark, hang?.remark].filter((each) => each !== undefined).join(' '),
      ];
    }),
  };
};

/** All sets of the house as they stand along the rail. */
export const scheduleSheet = (context: SheetContext): Sheet => {
  const { house, show, assessment, state } = context;
  const remarks = remarkItems(context);
  const title = tradeWord(house, 'schedule');
  const empty = assessment.sets.filter(({ hang }) => hang === null).length;
  return makeSheet(context, {
    id: 'schedule',
    kind: 'schedule',
    title: `${title.charAt(0).toUpperCase()}${title.slice(1)}`,
    name: show?.name ?? house.name,
    beside: phrase(house, '{length} hung, {empty} empty; {inHouse}', {
      length: assessment.sets.length - empty,
      empty,
      inHouse: inHouseWords('positions from the plaster line', house),
    }),
    orientation: 'landscape',
    blocks: [
      notAnOrder(house),
      fitted(
        {
          kind: 'table',
          columns: columnsOf(house),
          rows: assessment.sets.map((set) => rowOf(set, context)),
        },
        BODY_WIDTH.landscape,
      ),
      ...(remarks.length === 0
        ? []
        : [{ kind: 'list' as const, heading: phrase(house, 'Remarks'), items: remarks }]),
      { kind: 'inkLines', count: 2 },
    ],
    voidIf: voidWords(context, null),
    dependsOn: {
      house: writtenHouse(context),
      show,
      sets: state?.sets ?? null,
      bricks: assessment.bricks,
    },
    data: dataOf(context),
  });
};
