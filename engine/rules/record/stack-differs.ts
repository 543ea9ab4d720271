import { type Finding, type Level, measure } from '#findings';
import type { PlateTag } from '#state';
import { raise } from '../raise.ts';
import type { SetCase, SetRule } from '../rule.ts';

type Counts = Readonly<Record<string, number>>;

/**
 * STA-001: the plates that were counted on an arbor are those of the plan, kind by kind; pipe
 * weight against the house, show bricks against the show. An arbor that has no show brick yet
 * waits to be loaded: a note. Anything else is looked at before the set is touched (C85).
 */
export const stackDiffers: SetRule = (the) => {
  const { stack } = the.set.recorded.state;
  if (stack === null) return [];
  const countsOf = (tag: PlateTag): Counts => sumOf(stack.filter((run) => run.tag === tag));
  const show = countsOf('show');
  const pipe = the.set.lineSet.arbor?.pipeWeight ?? null;
  return [
    ...differ(the, 'Pipe weight', countsOf('pipe'), pipe === null ? null : sumOf(pipe), 'caution'),
    ...differ(the, 'Show bricks', show, plannedShow(the), total(show) === 0 ? 'note' : 'caution'),
  ];
};

const sumOf = (runs: readonly { readonly kind: string; readonly count: number }[]): Counts => {
  const counts: Record<string, number> = {};
  for (const { kind, count } of runs) counts[kind] = (counts[kind] ?? 0) + count;
  return counts;
};

const total = (counts: Counts): number =>
  Object.values(counts).reduce((sum, count) => sum + count, 0);

/** What the show puts on the arbor; null where that is not known, which UNK-001 says. */
const plannedShow = ({ set: { hang, plan } }: SetCase): Counts | null => {
  if (hang === null) return {};
  if (hang.bricks !== null) return hang.bricks.counts;
  if (hang.deadHungAt !== null) return {};
  return plan.known ? sumOf(plan.value.stack.show) : null;
};

const differ = (
  { set: { lineSet } }: SetCase,
  tag: string,
  recorded: Counts,
  planned: Counts | null,
  level: Level,
): readonly Finding[] => {
  if (planned === null) return [];
  const kinds = new Set([...Object.keys(recorded), ...Object.keys(planned)]);
  const isSame = [...kinds].every((kind) => (recorded[kind] ?? 0) === (planned[kind] ?? 0));
  if (isSame) return [];
  return [
    raise('STA-001', {
      at: { set: lineSet.id },
      level,
      measured: measure(total(recorded), 'count'),
      limit: measure(total(planned), 'count'),
      limitSource: 'the plan',
      facts: { tag, recorded: listed(recorded), planned: listed(planned) },
    }),
  ];
};

const listed = (counts: Counts): string =>
  Object.entries(counts)
    .filter(([, count]) => count !== 0)
    .map(([kind, count]) => `${count} ${kind}`)
    .join(', ') || 'none';
