/** How each set and each gallery is known: by what, by whom, when, and how long ago. */
import type { House } from '#house';
import { NO_BREAK_SPACE } from '#quantities';
import { momentMs, momentToJudge } from '#rules';
import { isStale, type Knowledge } from '#state';
import { message, phrase } from '#texts';
import type { SheetContext } from '../context.ts';
import { BODY_WIDTH } from '../page-parts.ts';
import type { Row, SheetData, Table, Words } from '../sheet.ts';
import { strong } from '../sheet.ts';
import { fitted } from './column-shares.ts';
import { galleryOnRecord, isCounted, personName, type SetOnRecord } from './handover-record.ts';
import { setsInRailOrder } from './house-sheet.ts';

const MINUTE_MS = 60_000;
const HOUR_MIN = 60;
const DAY_MIN = 24 * HOUR_MIN;

/** The moment at which a count of that moment is held to be so old. */
type Clock = (at: string | null) => number;

/**
 * The print, for what was counted in the call that runs. What was recorded before is judged as the
 * rest of the program judges it: an invented house stands still at the hour of its record.
 */
const clockOf = ({ house, state, now, stamp }: SheetContext): Clock => {
  const printedMs = momentMs(stamp.printedAt) ?? Number.NaN;
  const recordMs = momentToJudge(house, state, printedMs);
  const openedMs = now?.call?.openedMs ?? Number.POSITIVE_INFINITY;
  return (at) => ((momentOf(at) ?? Number.NaN) >= openedMs ? printedMs : recordMs);
};

const momentOf = (at: string | null): number | null => (at === null ? null : momentMs(at));

/** No line ends inside an age. */
const whole = (words: string): string => words.replaceAll(' ', NO_BREAK_SPACE);

/** `35 min`, `3 h 20 min`, `2 d 4 h`; null where the moment is not known or lies ahead. */
const ageWords = (at: string | null, clock: Clock, house: House): string | null => {
  const ageMs = clock(at) - (momentOf(at) ?? Number.NaN);
  if (!(ageMs >= -MINUTE_MS)) return null;
  const minutes = Math.max(0, Math.floor(ageMs / MINUTE_MS));
  if (minutes < HOUR_MIN) return whole(phrase(house, '{minutes} min', { minutes }));
  if (minutes < DAY_MIN) {
    const names = { hours: Math.floor(minutes / HOUR_MIN), minutes: minutes % HOUR_MIN };
    return whole(phrase(house, '{hours} h {minutes} min', names));
  }
  const hours = Math.floor((minutes % DAY_MIN) / HOUR_MIN);
  const days = Math.floor(minutes / DAY_MIN);
  return whole(phrase(house, '{days} d {hours} h', { days, hours }));
};

const isOld = (at: string | null, clock: Clock, { rules }: House): boolean => {
  const { staleAfterSeconds } = rules;
  return (
    staleAfterSeconds.known &&
    isStale({
      recordedAtMs: momentOf(at),
      nowMs: clock(at),
      staleAfterSeconds: staleAfterSeconds.value,
    })
  );
};

const BASES = {
  counted: message('counted'),
  weighed: message('weighed'),
  pullTested: message('pull-tested'),
  carriedOver: message('carried over'),
  unknown: message('NOT KNOWN'),
} as const satisfies Record<Knowledge['basis'], string>;

const whoWords = (names: readonly (string | null)[], house: House): string => {
  const known = names.filter((name) => name !== null && name !== '');
  return known.length === 0 ? phrase(house, 'not named') : known.join(', ');
};

/** Counted alike, by the same people: their ages stand from the youngest to the oldest. */
type Counted = {
  readonly what: string;
  readonly how: string;
  readonly who: string;
  readonly at: string | null;
};

const countedOf = (context: SheetContext, { set, standing, knowledge }: SetOnRecord): Counted => {
  const { house } = context;
  const { basis, at, by, second } = knowledge;
  const isKnown = standing !== null || set.lineSet.arbor === null;
  return {
    what: set.lineSet.id,
    how: phrase(house, BASES[isKnown ? basis : 'unknown']),
    who: whoWords([personName(by, context), second], house),
    at,
  };
};

const galleryCounts = (context: SheetContext): readonly Counted[] => {
  const { house } = context;
  return house.galleries.map(({ id, name }) => {
    const { countedAt = null, countedBy = null } = galleryOnRecord(context, id) ?? {};
    return {
      what: name,
      how: phrase(house, countedAt === null ? 'not counted' : BASES.counted),
      who: whoWords([personName(countedBy, context)], house),
      at: countedAt,
    };
  });
};

const byAge = (one: Counted, other: Counted): number =>
  (momentOf(other.at) ?? 0) - (momentOf(one.at) ?? 0);

const ageCell = (group: readonly Counted[], clock: Clock, house: House): Words => {
  const sorted = group.toSorted(byAge);
  const [young, old] = [sorted[0], sorted.at(-1)].map((each) =>
    ageWords(each?.at ?? null, clock, house),
  );
  const ages =
    young == null || old == null
      ? phrase(house, 'not known')
      : young === old
        ? old
        : phrase(house, '{from} to {to}', { from: young, to: old });
  return group.some(({ at }) => isOld(at, clock, house))
    ? [strong(phrase(house, 'STALE, {age}', { age: ages }))]
    : [ages];
};

const grouped = (
  counts: readonly Counted[],
  clock: Clock,
  house: House,
): readonly (readonly Counted[])[] => {
  const groups = new Map<string, Counted[]>();
  for (const count of counts) {
    const key = JSON.stringify([count.how, count.who, isOld(count.at, clock, house)]);
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [count]);
    else group.push(count);
  }
  return [...groups.values()];
};

const rowOf = (what: string, group: readonly Counted[], clock: Clock, house: House): Row => ({
  cells: [
    [strong(what)],
    [group[0]?.how ?? ''],
    ageCell(group, clock, house),
    [group[0]?.who ?? ''],
  ],
  rule: 'hair',
});

/** Ages are those at the print; the moment itself is in the table for a spreadsheet. */
export const countTable = (context: SheetContext, sets: readonly SetOnRecord[]): Table => {
  const { house } = context;
  const clock = clockOf(context);
  const lineSets = (group: readonly Counted[]) =>
    sets.filter(({ set }) => group.some(({ what }) => what === set.lineSet.id));
  const table: Table = {
    kind: 'table',
    columns: [
      { head: phrase(house, 'Sets, and galleries'), align: 'left', share: 0.36 },
      { head: phrase(house, 'Known by'), align: 'left', share: 0.16 },
      { head: phrase(house, 'Age'), align: 'left', share: 0.22 },
      { head: phrase(house, 'By, and second'), align: 'left', share: 0.26 },
    ],
    rows: [
      ...galleryCounts(context).map((each) => rowOf(each.what, [each], clock, house)),
      ...grouped(
        sets.map((on) => countedOf(context, on)),
        clock,
        house,
      ).map((group) => {
        const names = setsInRailOrder(
          lineSets(group).map(({ set }) => set.lineSet),
          house,
        );
        return rowOf(names, group, clock, house);
      }),
    ],
  };
  return fitted(table, BODY_WIDTH.portrait);
};

export const countsData = (context: SheetContext, sets: readonly SetOnRecord[]): SheetData => ({
  columns: ['set', 'hangs', 'known by', 'at', 'by', 'second', 'held', 'rule'],
  rows: sets.map((on) => {
    const { basis, at, by, second } = on.knowledge;
    return [
      on.set.lineSet.id,
      on.set.hang?.name ?? '',
      on.standing === null && isCounted(on) ? 'unknown' : basis,
      at ?? '',
      personName(by, context) ?? '',
      second ?? '',
      on.held ?? '',
      on.rule ?? '',
    ];
  }),
});
