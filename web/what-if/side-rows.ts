/** One set beside another, or beside itself as it was: figures of both, and the difference. */
import type { SetAssessment, StructureState } from '#assessment';
import { countWords, tensionWords } from '#drawings';
import type { Measure } from '#findings';
import type { House } from '#house';
import { sayMeasure } from '#sheets';
import { phrase } from '#texts';

export type Side = { readonly set: SetAssessment; readonly house: House };

export type SideRow = {
  readonly what: string;
  readonly before: string;
  readonly after: string;
  /** In words; empty where it is the same, or where one of the two is not known. */
  readonly change: string;
};

const said = (value: Measure | null, reader: House): string =>
  value === null ? phrase(reader, 'not known') : sayMeasure(value, reader, { round: 'nearest' });

const rowOf = (
  what: string,
  [before, after]: readonly [Measure | null, Measure | null],
  reader: House,
): SideRow => {
  const [was, is] = [said(before, reader), said(after, reader)];
  return {
    what,
    before: was,
    after: is,
    change: before === null || after === null || was === is ? '' : moreOf(before, after, reader),
  };
};

const moreOf = (before: Measure, after: Measure, reader: House): string => {
  const apart = after.value - before.value;
  if (after.kind === 'imbalance') return imbalanceMore(apart, reader);
  const say = (value: number, round: 'nearest' | 'up'): string =>
    sayMeasure({ ...after, value }, reader, { round });
  const size = say(Math.abs(apart), 'nearest');
  // Two figures that print apart are not nothing apart.
  const isNothing = size === say(0, 'nearest');
  return moreWords(isNothing ? say(Math.abs(apart), 'up') : size, apart, reader);
};

const moreWords = (size: string, apart: number, reader: House): string =>
  apart > 0 ? phrase(reader, '{size} more', { size }) : phrase(reader, '{size} less', { size });

/** An imbalance has a side and no sign, so has its change. */
const imbalanceMore = (apartN: number, reader: House): string => {
  const size = sayMeasure({ value: Math.abs(apartN), kind: 'force' }, reader);
  return apartN > 0
    ? phrase(reader, '{size} toward batten heavy', { size })
    : phrase(reader, '{size} toward arbor heavy', { size });
};

const planOf = ({ set }: Side) => (set.plan.known ? set.plan.value : null);

const imbalance = (valueN: number): Measure => ({ value: valueN, kind: 'imbalance' });

/** Trims of one name are one row; the height stands with it where both have the same. */
const trimRows = (one: Side, other: Side, reader: House): readonly SideRow[] => {
  const trimsOf = (side: Side) => planOf(side)?.trims ?? [];
  const names = [...trimsOf(one), ...trimsOf(other)].map(({ trim }) => trim.name);
  return [...new Set(names)].flatMap((name) => {
    const find = (side: Side) => trimsOf(side).find(({ trim }) => trim.name === name);
    const [was, is] = [find(one), find(other)];
    const height = (value: typeof was): Measure | null =>
      value === undefined ? null : { value: value.height, kind: 'length' };
    const force = (value: typeof was): Measure | null =>
      value === undefined ? null : imbalance(value.imbalance);
    return [
      rowOf(phrase(reader, 'trim {name}', { name }), [height(was), height(is)], reader),
      rowOf(phrase(reader, 'balance at {name}', { name }), [force(was), force(is)], reader),
    ];
  });
};

/** The largest size along the travel, with its side. */
const worstOf = (side: Side): Measure | null => {
  const plan = planOf(side);
  if (plan === null) return null;
  const values = plan.curve.nodes.flatMap(({ below, above }) => [below, above]);
  return imbalance(
    values.reduce((worst, value) => (Math.abs(value) > Math.abs(worst) ? value : worst), 0),
  );
};

const pullOf = (side: Side, way: 'out' | 'in'): Measure | null => {
  const pulls = planOf(side)?.pulls;
  return pulls?.known ? { value: pulls.value[way], kind: 'force' } : null;
};

const hungOf = ({ set: { hung } }: Side): Measure | null =>
  hung.known ? { value: hung.value.withoutLoom, kind: 'mass' } : null;

const hungStates = ({ set }: Side): readonly StructureState[] =>
  set.structure.known
    ? set.structure.value.states.filter(({ kind, lines }) => kind === 'hung' && lines.length > 0)
    : [];

const largestPull = (side: Side): Measure | null => {
  const pulls = hungStates(side).flatMap(({ lines }) => lines.map(({ tension }) => tension));
  return pulls.length === 0 ? null : { value: Math.max(...pulls), kind: 'force' };
};

export type BricksApart = readonly { readonly kind: string; readonly count: number }[];

/** More is above zero; null where the bricks of a side are not known. */
export const bricksApart = (one: Side, other: Side): BricksApart | null => {
  const [was, is] = [planOf(one)?.stack.show, planOf(other)?.stack.show];
  if (was === undefined || is === undefined) return null;
  const kinds = [...new Set([...was, ...is].map(({ kind }) => kind))];
  const countIn = (counts: BricksApart, kind: string): number =>
    counts.find((each) => each.kind === kind)?.count ?? 0;
  return kinds
    .map((kind) => ({ kind, count: countIn(is, kind) - countIn(was, kind) }))
    .filter(({ count }) => count !== 0);
};

const brickRow = (one: Side, other: Side, reader: House): SideRow => {
  const words = (side: Side): string => {
    const plan = planOf(side);
    return plan === null
      ? phrase(reader, 'not known')
      : countWords(plan.stack.show, side.house) || phrase(reader, 'none');
  };
  const apart = bricksApart(one, other);
  return {
    what: phrase(reader, 'show bricks'),
    before: words(one),
    after: words(other),
    change:
      apart === null
        ? ''
        : apart
            .map(({ kind, count }) =>
              count > 0
                ? phrase(reader, '{count} {kind} more', { count, kind })
                : phrase(reader, '{count} {kind} fewer', { count: -count, kind }),
            )
            .join(', '),
  };
};

/** Everything of a set that a person weighs when two are compared. */
export const sideRows = (one: Side, other: Side, reader: House): readonly SideRow[] => {
  const stack = (side: Side) => planOf(side)?.stack;
  const arbor = (side: Side): Measure | null => {
    const mass = stack(side)?.arborMass;
    return mass === undefined ? null : { value: mass, kind: 'mass' };
  };
  const height = (side: Side): Measure | null => {
    const tall = stack(side)?.height;
    return tall === undefined ? null : { value: tall, kind: 'length' };
  };
  const both = (of: (side: Side) => Measure | null) => [of(one), of(other)] as const;
  return [
    rowOf(phrase(reader, 'what hangs'), both(hungOf), reader),
    brickRow(one, other, reader),
    rowOf(phrase(reader, 'whole arbor'), both(arbor), reader),
    rowOf(phrase(reader, 'stack'), both(height), reader),
    ...trimRows(one, other, reader),
    rowOf(phrase(reader, 'most on the travel'), both(worstOf), reader),
    rowOf(
      phrase(reader, 'hand pull to start it out'),
      both((side) => pullOf(side, 'out')),
      reader,
    ),
    rowOf(
      phrase(reader, 'hand pull to start it in'),
      both((side) => pullOf(side, 'in')),
      reader,
    ),
    rowOf(phrase(reader, 'largest lift line'), both(largestPull), reader),
  ];
};

export type LineRow = {
  readonly line: number;
  readonly before: string;
  readonly after: string;
  readonly change: string;
};

/** In the state of one name on both sides, else in the first with all that hangs. */
export const lineRows = (
  one: Side,
  other: Side,
  reader: House,
): { readonly state: string; readonly rows: readonly LineRow[] } | null => {
  const [first] = hungStates(other);
  const before = hungStates(one).find(({ name }) => name === first?.name) ?? hungStates(one)[0];
  if (first === undefined || before === undefined) return null;
  const count = Math.max(first.lines.length, before.lines.length);
  const rows = Array.from({ length: count }, (_, index): LineRow => {
    const [was, is] = [before.lines[index], first.lines[index]];
    const pull = (line: typeof was): string =>
      line === undefined
        ? phrase(reader, 'no line')
        : line.slack
          ? phrase(reader, 'slack')
          : tensionWords(reader, line.tension);
    const apartN = was === undefined || is === undefined ? 0 : is.tension - was.tension;
    return {
      line: index + 1,
      before: pull(was),
      after: pull(is),
      change:
        pull(was) === pull(is) || apartN === 0
          ? ''
          : moreWords(tensionWords(reader, Math.abs(apartN)), apartN, reader),
    };
  });
  return { state: first.name, rows };
};
