import type { Finding } from '#findings';

/** What the record says of a set is no matter of where a piece goes; service is asked apart. */
const isOfRecord = ({ code }: Finding): boolean => code.startsWith('STA-');

const keyOf = ({ code, at, facts }: Finding): string =>
  JSON.stringify([code, at.set, at.gallery, at.brickKind, facts['carrier']]);

const measuredIn = ({ measured }: Finding): number => measured?.value ?? 0;

/** Sums over a whole house differ in the last binary places with the order of their parts. */
const MORE = 1e-9;

const isWorse = (now: Finding, old: Finding): boolean =>
  Math.abs(measuredIn(now)) - Math.abs(measuredIn(old)) > MORE * Math.abs(measuredIn(old));

/**
 * What the rules say once the piece is on a set. Of that set all counts; of the house and of other
 * sets what was not said before, or is worse by its measure. Unknown values are `newlyUnknown`.
 */
export const raisedBy = (
  set: string,
  before: readonly Finding[],
  after: readonly Finding[],
): readonly Finding[] => {
  const said = new Map(before.map((finding) => [keyOf(finding), finding]));
  return after.filter((finding) => {
    if (isOfRecord(finding) || finding.code === 'UNK-001') return false;
    if (finding.at.set === set) return true;
    const old = said.get(keyOf(finding));
    return old === undefined || old.level !== finding.level || isWorse(finding, old);
  });
};

const unknownsOf = (findings: readonly Finding[], set: string): readonly string[] =>
  findings
    .filter(({ code, at }) => code === 'UNK-001' && (at.set === undefined || at.set === set))
    .flatMap(({ facts }) => String(facts['what']).split('; '));

/** Values that a rule misses once the piece is on the set, and that it did not miss before. */
export const newlyUnknown = (
  set: string,
  before: readonly Finding[],
  after: readonly Finding[],
): readonly string[] => {
  const missed = new Set(unknownsOf(before, set));
  return unknownsOf(after, set).filter((what) => !missed.has(what));
};
