/** Which findings are new, gone, worse or better when two reckonings are laid side by side. */
import { type Finding, LEVELS } from '#findings';

export type FindingChange = {
  readonly is: 'new' | 'gone' | 'worse' | 'better';
  readonly finding: Finding;
  /** As it was; null where it is new. */
  readonly before: Finding | null;
};

/** Sums over a whole house differ in the last binary places with the order of their parts. */
const SAME_SHARE = 1e-6;

const keyOf = ({ code, at, facts }: Finding): string =>
  JSON.stringify([
    code,
    at.set ?? '',
    at.item ?? '',
    at.gallery ?? '',
    at.brickKind ?? '',
    facts['carrier'],
    facts['trim'],
  ]);

/** How far past its limit, as a share; a limit that must be reached is passed downwards. */
const excessOf = ({ measured, limit }: Finding): number | null => {
  if (measured === null) return null;
  const size = Math.abs(measured.value);
  if (limit === null) return size;
  const bound = Math.abs(limit.value);
  return size >= bound ? size - bound : bound - size;
};

const changed = (before: Finding, after: Finding): 'worse' | 'better' | null => {
  const levels = LEVELS.indexOf(after.level) - LEVELS.indexOf(before.level);
  if (levels !== 0) return levels > 0 ? 'worse' : 'better';
  const [old, fresh] = [excessOf(before), excessOf(after)];
  if (old === null || fresh === null) return null;
  if (Math.abs(fresh - old) <= SAME_SHARE * Math.max(Math.abs(old), Math.abs(fresh))) return null;
  return fresh > old ? 'worse' : 'better';
};

const grouped = (findings: readonly Finding[]): ReadonlyMap<string, readonly Finding[]> => {
  const groups = new Map<string, Finding[]>();
  for (const finding of findings) {
    const key = keyOf(finding);
    groups.set(key, [...(groups.get(key) ?? []), finding]);
  }
  return groups;
};

const ORDER: readonly FindingChange['is'][] = ['new', 'worse', 'gone', 'better'];

/** Several of one kind are taken in their order. Unknown values are told apart from findings. */
export const findingsApart = (
  before: readonly Finding[],
  after: readonly Finding[],
): readonly FindingChange[] => {
  const judged = (findings: readonly Finding[]) =>
    grouped(findings.filter(({ code }) => code !== 'UNK-001'));
  const [old, fresh] = [judged(before), judged(after)];
  const changes = [...new Set([...fresh.keys(), ...old.keys()])].flatMap((key) => {
    const [was, is] = [old.get(key) ?? [], fresh.get(key) ?? []];
    return Array.from({ length: Math.max(was.length, is.length) }, (_, index) =>
      changeOf(was[index], is[index]),
    );
  });
  return changes
    .filter((change) => change !== null)
    .toSorted((one, other) => rankOf(one) - rankOf(other));
};

const rankOf = ({ is, finding }: FindingChange): number =>
  ORDER.indexOf(is) * LEVELS.length - LEVELS.indexOf(finding.level);

const changeOf = (
  before: Finding | undefined,
  after: Finding | undefined,
): FindingChange | null => {
  if (after === undefined) {
    return before === undefined ? null : { is: 'gone', finding: before, before };
  }
  if (before === undefined) return { is: 'new', finding: after, before: null };
  const is = changed(before, after);
  return is === null ? null : { is, finding: after, before };
};

/** What a rule misses on one side only. */
export const unknownApart = (
  before: readonly Finding[],
  after: readonly Finding[],
): { readonly fresh: readonly string[]; readonly gone: readonly string[] } => {
  const [old, now] = [unknownsIn(before), unknownsIn(after)];
  return {
    fresh: [...now].filter((what) => !old.has(what)),
    gone: [...old].filter((what) => !now.has(what)),
  };
};

const unknownsIn = (findings: readonly Finding[]): ReadonlySet<string> =>
  new Set(
    findings
      .filter(({ code }) => code === 'UNK-001')
      .flatMap(({ facts }) => String(facts['what']).split('; ')),
  );
